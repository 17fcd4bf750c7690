import { amountIn } from '../numbers/measure.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import type { PartId } from '../../terms/names.ts';
import { partId, tagsIn } from '../slots.ts';
import { startsClause } from '../words/clause-start.ts';
import { isThermal, throughPart } from './through-part.ts';

/** "Drier's in at ninety four, out at eighty nine": the liquid line before it and behind it. */
const bothEnds: Means = (tags, frame) => {
  const named = [tags, tagsIn(tags['into']), tagsIn(tags['from'])]
    .map((each) => partId(each?.['part']))
    .filter((part) => part !== null);
  const [part, ...others] = new Set(named);
  const isOne = others.length === 0 && (part === 'filterDrier' || isAirs(part, frame));
  return isOne && startsClause(frame) ? throughPart(part ?? 'filterDrier', tags, frame) : null;
};

/** "Condenser in at eighty three, out at ninety six": what goes through it is air, where it may not be water. */
const isAirs = (part: PartId | undefined, frame: Frame): boolean =>
  part === 'condenser' &&
  frame.context.equipment !== 'iceMachine' &&
  /\bcond/i.test(frame.wordsOf(frame.span));

/** By how much the two differ has no row on the sheet: kept as it was told, of the drier. */
const drop: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  const isDrop = isThermal(amountIn(tags)) || unit === 'psi' || unit === 'pounds' || unit === 'bar';
  const isOfDrier = partId(tags['part']) === 'filterDrier' && value !== null;
  return isOfDrier && isDrop && startsClause(frame)
    ? { remarks: [frame.wordsOf(frame.span)], names: 'filterDrier' }
    : null;
};

/** "One oh three both sides of the drier": as warm behind it as before it, which is why it is told. */
const alike: Means = (tags, frame) => {
  const { part, ...amount } = tags;
  const isDrier = partId(part) === 'filterDrier' && startsClause(frame);
  const ends = isDrier
    ? throughPart('filterDrier', { in: amount, out: amount }, frame)?.readings
    : undefined;
  return ends === undefined
    ? null
    : { readings: ends.slice(0, 1), remarks: [frame.wordsOf(frame.span)] };
};

/** "Warm going in and cold coming out": which is the finding, the sentence tells whole. */
const coolsThrough: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part !== null && CHOKES.has(part) && startsClause(frame)
    ? { remarks: [frame.wordsOf(frame.span)], names: part }
    : null;
};
/** In these liquid may boil where it is choked. */
const CHOKES: ReadonlySet<PartId> = new Set<PartId>([
  ...(['filterDrier', 'liquidLine', 'strainer', 'liquidLineSolenoid', 'kingValve'] as const),
]);
const COLD = '(cold|cool|cooler|colder|freezing|ice cold|frosted|frosting|sweating|frozen|icing)';
const FIRST =
  '(going in|coming in|in|into it|before it|ahead of it|on one (side|end)|(at|on) the (inlet|first|upstream) [(side|end)]|(before|into|ahead of|to|up to) <the> <part:into>)';
const LAST =
  '(coming out|going out|out|out of it|after|after it|behind it|past it|beyond|downstream|on the other [(side|end)]|(at|on) the (outlet|far) [(side|end)]|(after|past|behind|out of) <the> <part:from>)';

const GOT =
  '[(i have|i have got|i got|got|there is|it is|i am (getting|reading|seeing)|getting|only|about|maybe)] [(only|about|a|an)]';
const AT = '[(is|is at|at|reads|was|got)]';
const AND = '[<pause>] [(and|but)] [(it is|i got|i have)]';
const IN = '(going in|coming in|in|inlet|entering|on the inlet|at the inlet|in side|inlet side)';
const OUT =
  '(going out|coming out|out|outlet|leaving|on the outlet|at the outlet|out side|outlet side)';
const INTO =
  '(into|before|ahead of|going into|entering|in to|(at|on) the (inlet|in) [side] (of|to))';
const BEHIND =
  '(out|after|behind|past it|after it|out of it|coming out|coming out of it|behind it|leaving it|[(at|on)] the (outlet|out) [side]|(at|on) the other (side|end))';
const BOTH = '(both|either) (sides|ends|side|end)';
const FELL = '(drop|temp drop|temperature drop|pressure drop|difference|split|delta|delta t)';
const OVER = '(across|through|over)';

/** What a thermometer shows at both ends of a filter drier, or of a condenser. */
export const DRIER_RULES: readonly Rule[] = [
  rule(
    `<the> <part> [is] ${IN} ${AT} <amount:in> ${AND} [[the] <part:from>] ${OUT} ${AT} <amount:out>`,
    bothEnds,
    { unheard: true, examples: ['dryer is in at ninety four out at eighty nine'] },
  ),
  rule(
    `[[the] liquid [line] [(temp|temperature)] ${AT}] ${GOT} <amount:in> ${INTO} <the> <part:into> ${AND} <amount:out> ${BEHIND} [[of] <the> <part:from>]`,
    bothEnds,
    { unheard: true, examples: ['ninety four into the dryer eighty nine out'] },
  ),
  rule(
    `${GOT} <amount:in> [(at|on)] <the> <part:into> (inlet|in) [side] ${AND} <amount:out> ${BEHIND}`,
    bothEnds,
    { unheard: true, examples: ['ninety four at the dryer inlet and eighty nine coming out'] },
  ),
  rule(
    `<the> <part> [(is|was|feels|felt|gets)] (warm|hot|warmer) [${FIRST}] [<pause>] [(and|but|then)] [(it is|is|it gets|gets|feels)] ${COLD} [${LAST}]`,
    coolsThrough,
    { unheard: true, examples: ['the dryer is warm going in and cold coming out'] },
  ),
  rule(`${GOT} <amount> [(at|on)] ${BOTH} of <the> <part>`, alike, {
    unheard: true,
    examples: ['it is one oh three both sides of the dryer'],
  }),
  rule(`<the> <part> ${AT} <amount> [(at|on)] ${BOTH}`, alike, {
    unheard: true,
    examples: ['dryer is one oh three on both sides'],
  }),
  rule(
    `(${BOTH}|[the] same [(temp|temperature)] [on] ${BOTH}) of <the> <part> [(are|read|reads|both)] ${AT} [<pause>] [both] <amount>`,
    alike,
    { unheard: true, examples: ['both sides of the dryer are one oh three'] },
  ),
  rule(`${GOT} <amount> [${FELL}] ${OVER} <the> <part>`, drop, {
    unheard: true,
    examples: ['five degrees across the dryer'],
  }),
  rule(`[(the|a|my)] ${FELL} ${OVER} <the> <part> ${AT} <amount>`, drop, {
    unheard: true,
    examples: ['temp drop across the dryer is five'],
  }),
  rule(
    `<the> <part> (has|has got|is got|got|is showing|shows) ${GOT} <amount> ${FELL} [${OVER} it]`,
    drop,
    { unheard: true, examples: ['dryer has a five degree split'] },
  ),
];
