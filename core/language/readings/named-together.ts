import { amountIn } from '../numbers/measure.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { quantityId, tagsIn } from '../slots.ts';
import { reading } from './reading-means.ts';

/** "Head and suction two ten and forty": the first name has the first number. */
const inTheirOrder: Means = (tags, frame) => {
  const unnamed = /\bair\b/i.test(frame.wordsOf(frame.span)) ? COILS_AIR : SIDES;
  const quantities = [tags['first'], tags['second']].map(
    (each, at) => quantityId(tagsIn(each)?.['quantity']) ?? unnamed[at],
  );
  const amounts = [tagsIn(tags['one']) ?? {}, tagsIn(tags['two']) ?? {}] as const;
  const readings = quantities.flatMap((quantity, at) =>
    quantity === undefined ? [] : (reading(quantity, amountIn(amounts[at] ?? {}), frame) ?? []),
  );
  const isEach = quantities[0] !== quantities[1] && readings.length === quantities.length;
  return isEach ? { readings } : null;
};

/** Of a coil's two sides the first is told as the box and the other as what it blows. */
const COILS_AIR = ['boxTemp', 'supplyAirTemp'] as const;
const SIDES = ['headPressure', 'suctionPressure'] as const;

const IN_SHORT = '(air (on and off|in and out|on air off|in air out)|high and [the] low)';
const NAMES = `(<quantity:first> (and|<pause> [and]) [the] <quantity:second>|${IN_SHORT})`;
const ARE =
  '[(is|are|at|were|reads|read|shows|running|sitting at|are (at|running|reading|sitting [at])|is (at|running))]';

/** Two names in one breath, and their numbers behind them. */
export const NAMED_TOGETHER_RULES: readonly Rule[] = [
  rule(
    `[the] ${NAMES} ${ARE} <amount:one> (and|over|<pause> and) <amount:two> [(now|right now)]`,
    inTheirOrder,
    { unheard: true, examples: ['head and suction two ten and forty'] },
  ),
];
