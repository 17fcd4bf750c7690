import { amountIn, readingOf } from '../numbers/measure.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { convert } from '../../units/convert.ts';
import { remark } from '../plain-means.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';

/** Ours: scales show whole ounces or tenths, and heads round. */
const MOST_OFF = 1;

/** "So that's three pounds four ounces", where the tank weighs so much less, or more, than before: worked out from it. */
const thatMuch: Means = (tags, frame) => {
  const { cylinderLost } = frame.context;
  if (cylinderLost === null) return null;
  const quantity: QuantityId = cylinderLost < 0 ? 'refrigerantRecovered' : 'refrigerantAdded';
  const found = readingOf(quantity, amountIn(tags), { place: null, frame });
  if (found?.value === undefined || found.unit === null) return null;
  const moved = convert({ value: found.value, unit: found.unit }, 'oz');
  const isIt = moved !== null && Math.abs(moved.value - Math.abs(cylinderLost)) <= MOST_OFF;
  return isIt ? { readings: [found] } : null;
};

const wasWeighed = ({ context }: Frame): boolean => context.cylinderLost !== null;
/** All that is in it by now: kept as it was said, since it was put in by more than one. */
const hasMoved = ({ context }: Frame): boolean =>
  context.movedLast !== null || context.cylinderLost !== null;

/** What the scale comes to, once a cylinder was weighed twice. */
export const OFF_THE_SCALE_RULES: readonly Rule[] = [
  rule(
    '[(so|and|ok|which|that)] (that is|is|makes|that makes|that makes it|comes to|it took|took|it got|used|so) [(about|right at|a total of)] <amount> [(in|out|of gas|went in|total|so far)] [then]',
    thatMuch,
    { unheard: true, apart: true, only: wasWeighed, examples: [] },
  ),
  rule(
    '[(so|and)] [(the|that is a|our|your)] total [charge] (is|comes to|comes out to|now is|is now) <number> [(pounds|pound)] [<number:ounces>] [(ounces|ounce)] [(then|now|in it|in there)]',
    remark,
    { unheard: true, apart: true, only: hasMoved, examples: [] },
  ),
];
