import { bareAmount } from './readings.ts';
import { amountIn } from './measure.ts';
import { type Frame, type Means, type Rule, rule } from './rule.ts';
import { tagsIn } from './slots.ts';

/** What stands around the number tells nothing of it. */
const wasAsked = ({ context }: Frame): boolean => context.asked !== null;
const ONLY_ANSWERS = { alone: true, only: wasAsked, examples: [] };

/** Further apart, two figures are two answers. */
const NEAR = 10;

/** "Eighteen, maybe nineteen": between the two. */
const between: Means = (tags, frame) => {
  const low = amountIn(tagsIn(tags['low']) ?? {}).value;
  const high = amountIn(tagsIn(tags['high']) ?? {}).value;
  const isNear = low !== null && high !== null && high > low && high - low <= NEAR;
  return isNear ? bareAmount(tags, frame) : null;
};

const LEAD =
  '[(still|well|about|call it|let us say|let us call it|say|only|just|maybe|now|i am at|i have|i got|looks like|it is|it is at|it is still|sitting at|right at|right around)] [(at|about|around|right at|only|just|still|like)]';
const GOING =
  '(climbing|rising|dropping|falling|holding|steady|holding steady|coming (up|down)|going (up|down)|still (climbing|rising|dropping|falling|moving|coming (up|down)|going (up|down))|it is (climbing|rising|dropping|falling|still moving))';

/** A number that was asked for, with more around it than the number. */
export const ANSWER_RULES: readonly Rule[] = [
  rule(
    `${LEAD} <amount> [<pause>] [(and|but)] ${GOING} [(now|slow|slowly|fast|a little)]`,
    bareAmount,
    ONLY_ANSWERS,
  ),
  rule(
    `${LEAD} <amount> [(right now|now|at the moment|i think|i guess|maybe|i would say|if that|tops|on the nose|exactly|even|last i looked|on my (gage|meter|thermometer|gages))]`,
    bareAmount,
    ONLY_ANSWERS,
  ),
  rule(
    `${LEAD} <number:low> (or|to|maybe|or maybe|<pause> [(or|maybe|or maybe)]) <number:high>`,
    between,
    ONLY_ANSWERS,
  ),
];
