import type { Tags } from '../../grammar/nodes.ts';
import { isOnScale, type QuantityId } from '../../terms/quantities.ts';
import { amountIn, withMore } from '../numbers/measure.ts';
import { fixed } from '../readings/reading-means.ts';
import { remark } from '../plain-means.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, quantityId, tagsIn } from '../slots.ts';
import type { Command, Reading } from '../utterance.ts';
import { WEIGHTS } from './weighed.ts';

const OUNCES_A_POUND = 16;

/** "Thirteen two" is pounds and ounces where a weight was told so before. */
function isClipped(tags: Tags, { context }: Frame): boolean {
  const pounds = numberIn(tagsIn(tags['pounds'])?.['number']);
  const ounces = numberIn(tagsIn(tags['ounces'])?.['number']);
  if (!context.weighsInOunces || pounds === null || ounces === null) return false;
  // "Twenty six" is one number.
  const isOne = pounds >= 20 && pounds % 10 === 0 && ounces < 10;
  return Number.isInteger(pounds) && ounces < OUNCES_A_POUND && !isOne;
}

/** A weight with its unit, or its pounds and ounces alone. */
function weightOf(tags: Tags, quantity: QuantityId, frame: Frame): Reading | null {
  const { unit } = amountIn(tags);
  if (unit === null || !WEIGHTS.has(unit)) return null;
  const found = fixed(quantity)(tags, frame)?.readings?.[0] ?? null;
  if (UNIT_SAID.test(frame.wordsOf(frame.span))) return found;
  return found && isClipped(tags, frame) ? withMore(found, { unitFrom: 'implied' }) : null;
}
const UNIT_SAID = /\b(?:pounds?|lbs?|ounces?|oz|kilos?|kilograms?|kg|grams?|g)\b/i;

const weighs =
  (quantity: QuantityId): Means =>
  (tags, frame) => {
    // "So that's what, six pounds and, uh": the ounces come with the next sentence.
    if (/\band$/i.test(frame.wordsOf(frame.span))) return remark(tags, frame);
    const found = weightOf(tags, quantity, frame);
    return found && { readings: [found] };
  };

/** "That's six four in", and later "that's eleven four in": all that went that way, of which a part was told before. */
const counted =
  (way: 'refrigerantAdded' | 'refrigerantRecovered' | null): Means =>
  (tags, frame) => {
    const { movedLast } = frame.context;
    const quantity = way ?? movedLast?.quantity;
    if (quantity === undefined) return null;
    if (movedLast?.quantity !== quantity) return weighs(quantity)(tags, frame);
    const found = weightOf(tags, quantity, frame);
    if (found?.value === undefined || found.unit === null) return null;
    const { value, unit } = found;
    const command: Command = { do: 'amend', quantity, value, unit, total: true };
    return { commands: [command] };
  };

/** The bottle was read last, and is watched as it empties or fills. */
const isScaleWatched = ({ context }: Frame): boolean =>
  context.asked === null &&
  ((context.lastQuantity !== null && isOnScale(context.lastQuantity)) ||
    context.told.some(
      (each) => each?.told.of === 'reading' && isOnScale(each.told.reading.quantity),
    ));
const ON_SCALE = { unheard: true, only: isScaleWatched, examples: [] } as const;

/** A pair of figures in such a visit is pounds and ounces, wherever the bottle stands by now. */
const isWeighing = (frame: Frame): boolean => isScaleWatched(frame) || frame.context.weighsInOunces;

/** "Jug weighed twenty four two before and eleven even after": a whole number beside pounds and ounces is pounds. */
const beforeAndAfter: Means = (tags, frame) => {
  if (quantityId(tags['quantity']) !== 'cylinderWeight') return null;
  const readings = ['first', 'last'].flatMap((which) => weighedAs(which, tags, frame) ?? []);
  return readings.length === 2 ? { readings } : null;
};

function weighedAs(which: string, tags: Tags, frame: Frame): Reading | null {
  const told = tagsIn(tags[which]);
  const [pounds, ounces] = [tags[`${which}Pounds`], tags[`${which}Ounces`]];
  if (told === null) {
    return pounds === undefined || ounces === undefined
      ? null
      : weightOf({ pounds, ounces }, 'cylinderWeight', frame);
  }
  if (amountIn(told).unit !== null) return weightOf(told, 'cylinderWeight', frame);
  const isInPounds = /\b(?:pounds?|lbs?)\b/i.test(frame.wordsOf(frame.span));
  if (!isInPounds && !frame.context.weighsInOunces) return null;
  const [found] = fixed('cylinderWeight')({ ...told, unit: 'lb' }, frame)?.readings ?? [];
  return found === undefined ? null : withMore(found, { unitFrom: 'implied' });
}

/** Gas was taken out just now, and nothing weighed since. */
const isRecovering = ({ context: { told } }: Frame): boolean =>
  told.some((each) => each?.told.of === 'work' && each.told.work.did === 'recover');

const LATELY = '[(ok|and|so|now|alright)]';
const WEIGHT = '(<amount>|<short:pounds> <number:ounces>)';
const weight = (which: 'first' | 'last'): string =>
  `(<amount:${which}>|<short:${which}Pounds> <number:${which}Ounces>)`;
const THAT_IS =
  '[(that is|which is|it is|that makes|makes|makes it|call it|we are at|comes to)] [(what|about|like)]';

/** "It weighs thirty one six now": of the bottle that stands on the scale, by its unit or the one that was told before. */
const weighsAlone: Means = (tags, frame) => {
  const { weighsInOunces, scaleShows } = frame.context;
  const found = weightOf(tags, 'cylinderWeight', frame);
  if (found !== null || weighsInOunces || scaleShows === null)
    return found && { readings: [found] };
  const [pounds, tenths] = [tagsIn(tags['pounds']), tagsIn(tags['ounces'])];
  if (pounds === null || tenths === null) return fixed('cylinderWeight')(tags, frame);
  const [whole, rest] = [numberIn(pounds['number']), numberIn(tenths['number'])];
  if (whole === null || rest === null || rest > 9 || !scaleShows.tenths) return null;
  return fixed('cylinderWeight')({ number: whole + rest / 10 }, frame);
};

/** What a scale shows as it is watched, and the gas that is counted by it. */
export const SCALE_WATCHED_RULES: readonly Rule[] = [
  rule(
    `[(the|my|that)] [(virgin|new|full|charging|supply)] <quantity> (weighed|was|started at|went from|scaled) ${weight('first')} [even] [(before|to start|full|when i started|going in|at the start)] [<pause>] [(and|then|and then|and now|now|to)] [(it is|it was|is|was|weighed)] ${weight('last')} [even] (after|now|when i was done|when i finished|at the end|left|coming out)`,
    beforeAndAfter,
    {
      unheard: true,
      examples: ['cylinder weighed twenty pounds before and fifteen pounds after'],
    },
  ),
  rule(
    `${LATELY} [(it is|we are|i am|she is|that is|bottle is|scale says)] (down to|up to|at|down at|now at) ${WEIGHT} [(even|now|on the scale)]`,
    weighs('cylinderWeight'),
    ON_SCALE,
  ),
  rule(
    `${LATELY} [(it|she|the thing)] (weighs|weighed) [(about|right at|in at)] ${WEIGHT} [(even|now|right now|on the scale)]`,
    weighsAlone,
    ON_SCALE,
  ),
  rule(
    `${LATELY} [(it is|we are|that is|make that|it is at)] ${WEIGHT} (on the scale|on my scale|by the scale)`,
    weighs('cylinderWeight'),
    ON_SCALE,
  ),
  rule(`${LATELY} [it is] <short:pounds> <number:ounces> [now]`, weighs('cylinderWeight'), {
    ...ON_SCALE,
    alone: true,
  }),
  rule(
    `${LATELY} ${THAT_IS} ${WEIGHT} (in|gone in|went in|in so far|so far|in now)`,
    counted('refrigerantAdded'),
    { ...ON_SCALE, only: isWeighing },
  ),
  rule(
    `${LATELY} ${THAT_IS} ${WEIGHT} (out|came out|recovered|out of it|that came out)`,
    counted('refrigerantRecovered'),
    ON_SCALE,
  ),
  rule(
    `${LATELY} ${THAT_IS} ${WEIGHT} [(in|out)] (total|in all|all told|all together|altogether|in total)`,
    counted(null),
    { unheard: true, only: ({ context }) => context.movedLast !== null, examples: [] },
  ),
  rule(`${LATELY} [${THAT_IS}] ${WEIGHT} [and]`, weighs('refrigerantRecovered'), {
    unheard: true,
    alone: true,
    only: (frame) => isScaleWatched(frame) && isRecovering(frame),
    examples: [],
  }),
  rule(
    `${LATELY} [(got|still got|need|needs)] [(about|maybe)] (another|an) ounce or two [(to go|more|left)]`,
    remark,
    ON_SCALE,
  ),
];
