import { isSetting, type QuantityId } from '../../terms/quantities.ts';
import { amountIn } from '../numbers/measure.ts';
import { type Means, type Rule, rule } from '../rule.ts';

/** Weighed once, however often it is said. */
const WEIGHED: ReadonlySet<QuantityId> = new Set<QuantityId>([
  ...([
    'refrigerantAdded',
    'refrigerantRecovered',
    'refrigerantLost',
    'refrigerantCharge',
  ] as const),
]);

/** "Charge is five point three ounces." "Five point three.": the same, said again to whoever did not hear it. */
const sameAgain: Means = (tags, frame) => {
  const { told, asked, askedAbout } = frame.context;
  const last = told[0]?.told;
  const { value, unit } = amountIn(tags);
  if (asked !== null || askedAbout !== null || value === null || last === undefined) return null;
  if (last.of === 'fact')
    return last.fact.fact === 'nameplate' && last.fact.value === value ? {} : null;
  if (last.of !== 'reading' || last.reading.value !== value) return null;
  const { reading } = last;
  if (unit !== null && unit !== reading.unit) return null;
  const isOnce = isSetting(reading.quantity) || WEIGHED.has(reading.quantity);
  return isOnce ? {} : { readings: [{ ...reading, words: frame.wordsOf(frame.span) }] };
};

/** What was told last, and is told once more by its number alone. */
export const SAID_AGAIN_RULES: readonly Rule[] = [
  rule(
    '[(yeah|yes|yep|ok|so|and|right|again)] [(it is|that is)] [(still|right at|at)] <amount> [(again|yeah|right)]',
    sameAgain,
    { unheard: true, alone: true, only: ({ context }) => context.told.length > 0, examples: [] },
  ),
];
