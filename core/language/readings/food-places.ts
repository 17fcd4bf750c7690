import type { QuantityId } from '../../terms/quantities.ts';
import { amountIn } from '../numbers/measure.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { KEPT } from '../words/food-words.ts';
import { startsClause } from '../words/clause-start.ts';
import { fixed, leftToAsk } from './reading-means.ts';

/** What was probed has a temperature; pounds of it have none. */
const probed: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  const isWarmth = unit === null || unit === 'degrees' || unit === 'degF' || unit === 'degC';
  return isWarmth ? fixed('productTemp')(tags, frame) : null;
};

/** "Edges about twenty nine": of the food that was probed just before, and of nothing else. */
const otherPlace: Means = (tags, frame) => {
  // "On the left one" points, and tells no temperature.
  if (/\bone$/i.test(frame.wordsOf(frame.span)) && amountIn(tags).value === 1) return null;
  const found =
    startsClause(frame) || AND.test(frame.wordsOf(frame.span)) ? probed(tags, frame) : null;
  if (found === null) return null;
  const means = (last: QuantityId) => (last === 'productTemp' ? found : null);
  const isNext = frame.span.from === 0 && frame.context.lastQuantity === 'productTemp';
  return { ofThat: { means, otherwise: isNext ? found : leftToAsk(tags) } };
};
const AND = /^and\b/i;

const BIT =
  '(middle|center|core|very (middle|center)|dead center|thickest part|edge|edges|sides|surface|rim|outer (edge|edges)|skin|(bottom|top|middle|back|front|upper|lower) (shelf|rack|layer|row|box|case|tray|pan))';
const PLACE = `(${BIT.slice(1, -1)}|side|top|bottom|front|back|end|ends|corner|corners|outside|inside|left|right)`;
const IN = '(in|at|on|near|around|toward|along|by|from)';
const OF = `(of|in) [(the|that|their|a|one|some)] [(box|case|pan|tub|block|piece|stack|tray|bag|slab)] [of] [(the|their)] ${KEPT}`;
const TEMP =
  '[(i|we|just|and|i have|i got|got|getting|i am getting)] [(the|a)] [(product|food|core|meat|internal)] [(temp|temperature|reading)]';
const SHOWS =
  '[(is|are|was|were|reads|read|says|shows|measures|came (out|in) at|checks|is (at|reading|sitting at)|are (at|sitting at|reading)|sitting at|at|temps|temped|probes|probed)]';

/** Food that is not as warm at its edge as in its middle, and the places that tell so. */
export const FOOD_PLACE_RULES: readonly Rule[] = [
  rule(`${TEMP} [${IN}] [the] ${PLACE} ${OF} ${SHOWS} <amount>`, probed, {
    unheard: true,
    only: startsClause,
    examples: ['product temp in the middle of the meat is twenty six'],
  }),
  rule(
    `[(the|their|that|all the|this)] ${KEPT} [(temp|temperature)] ${SHOWS} <amount> (${IN} [the] ${PLACE}|on top|up top|down low) [of (it|the (pan|case|box|tray|stack))]`,
    probed,
    { unheard: true, only: startsClause, examples: ['meat is twenty six in the middle'] },
  ),
  rule(
    `[(and|but)] [${IN}] [the] ${BIT} [(is|are|was|were|is at|are at|at|reads|read|more like)] <amount>`,
    otherPlace,
    { unheard: true, examples: [] },
  ),
  rule(
    `[(and|but)] ${IN} [the] ${PLACE} [(it is|is|are|was|is at|at|reads|i got|i get)] <amount>`,
    otherPlace,
    { unheard: true, examples: [] },
  ),
  rule(
    `[(and|but)] [(more like|it is)] <amount> (${IN} [the] ${PLACE}|on top|up top|down low)`,
    otherPlace,
    { unheard: true, examples: [] },
  ),
];
