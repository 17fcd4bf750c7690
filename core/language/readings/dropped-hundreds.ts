import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { amountIn, withMore } from '../numbers/measure.ts';
import { reading } from './reading-means.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { numberIn, quantityId, tagsIn } from '../slots.ts';

/**
 * "Head one sixty, no, sixty five" puts right the sixty of 160, or all of it: a figure of two places behind one of three
 * is asked about. "One fifteen, no, fifteen" takes the hundred back.
 */
const putRight: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const wrong = numberIn(tagsIn(tags['wrong'])?.['number']);
  const right = amountIn(tags).value;
  if (quantity === null || isElectrical(quantity) || wrong === null || right === null) return null;
  if (wrong < 100 || right < 10 || right >= 100 || wrong % 100 === right) return null;
  const found = reading(quantity, amountIn(tags), frame);
  if (found === null) return null;
  const value = Math.floor(wrong / 100) * 100 + right;
  return { doubts: [withMore(found, { value, why: 'saidTwoWays', or: right })] };
};

/** "Fourteen, fourteen and a half": begun, and begun again; nobody reads 1,414 and a half off a gauge. */
const begunAgain: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const found =
    quantity === null || isElectrical(quantity) ? null : reading(quantity, amountIn(tags), frame);
  return found === null ? null : { readings: [found] };
};

/** "Head one seventy, I mean suction seventeen": the first was named and read wrong. */
const meantTheOther: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const found =
    quantity === null || isElectrical(quantity) ? null : reading(quantity, amountIn(tags), frame);
  return found === null ? null : { readings: [found] };
};

export const DROPPED_HUNDRED_RULES: readonly Rule[] = [
  rule(
    '[the] <quantity> <link> <amount:wrong> [(no|wait)] that is (the|their|an) [(old|wall|dial|cheap)] (thermometer|gage|gages|display|meter) [<pause>] [but] mine (says|reads|shows|is at) <amount>',
    meantTheOther,
    {
      unheard: true,
      examples: ['box is at eleven no that is the old thermometer mine says fourteen'],
    },
  ),
  rule(
    '[the] <quantity:other> <link> <amount:wrong> [(no|sorry)] (i mean|i meant) [the] <quantity> <link> <amount>',
    meantTheOther,
    { examples: ['head one seventy i mean suction seventeen'] },
  ),
  rule('[the] <quantity> <link> <restarted> [<unit>]', begunAgain, {
    examples: ['suction is fourteen fourteen and a half'],
  }),
  rule(
    '[(i have|i got|i am getting|it is|reading|got|showing|i see)] <restarted> [<unit>] (on|at|for|of) <the> <quantity>',
    begunAgain,
    { examples: ['fourteen fourteen and a half on the suction'] },
  ),
  rule('[the] <quantity> <link> <short:wrong> <correction> <short> [<unit>]', putRight, {
    examples: ['head one sixty no sixty five'],
  }),
];
