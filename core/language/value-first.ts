import type { Tags } from '../grammar/nodes.ts';
import { startsClause } from './clause-start.ts';
import { isElectrical } from './electrical-quantities.ts';
import { amountIn } from './measure.ts';
import { isPlausible } from './plausible.ts';
import { reading } from './reading-means.ts';
import { type Frame, type Means, type Rule, rule } from './rule.ts';
import { quantityId, tagsIn } from './slots.ts';
import type { Reading } from './utterance.ts';

const FIGURE =
  /^(?:\d|-\d|(?:zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)$|\w+teen$|\w+ty$|minus$)/i;

/** Behind a quantity a number is that quantity's, and before one it may be the last one's. */
function standsAlone(frame: Frame): boolean {
  const { to } = frame.span;
  const next = frame.wordsOf({ from: to, to: to + 1 });
  return startsClause(frame) && (frame.endsAtPause || !FIGURE.test(next));
}

function readAs(amount: Tags | null, quantity: Tags | null, frame: Frame): Reading | null {
  const named = quantityId(quantity?.['quantity']);
  if (amount === null || named === null || isElectrical(named)) return null;
  const found = reading(named, amountIn(amount), frame);
  if (found?.value === undefined || found.unit === null) return null;
  const { value, unit } = found;
  return isPlausible(named, { value, unit }, frame.context.refrigerant) ? found : null;
}

/** "Ninety one liquid one ten condensing": each value before its quantity, from the first to the last. */
const eachBefore: Means = (tags, frame) => {
  if (!standsAlone(frame)) return null;
  const one = readAs(tagsIn(tags['one']), tagsIn(tags['first']), frame);
  const two = readAs(tagsIn(tags['two']), tagsIn(tags['second']), frame);
  return one === null || two === null ? null : { readings: [one, two] };
};

/** "One ninety head", "one ninety is the head": a clause of its own, or the number may be what stands before it. */
const before: Means = (tags, frame) => {
  const found = COOLER.test(frame.wordsOf(frame.span)) ? null : readAs(tags, tags, frame);
  return found === null ? null : { readings: [found] };
};
/** "It's two degrees cooler" */
const COOLER = /\bdegrees? cooler$/i;

const HAVE =
  '[(i have|i got|i have got|i am getting|i am reading|i am seeing|i see|we have|we got|we have got|there is|reading|getting|seeing|showing|got)] [(a|an|only|about a)]';

/** Values told before what they are of. */
export const VALUE_FIRST_RULES: readonly Rule[] = [
  rule('<amount:one> <quantity:first> [and] <amount:two> <quantity:second>', eachBefore, {
    examples: ['ninety one liquid one ten condensing'],
  }),
  rule(`${HAVE} <amount> (<quantity>|(is|was) [(the|my|your|our)] <quantity>)`, before, {
    apart: true,
    examples: ['one ninety head', 'i have one ninety head', 'one ninety is the head'],
  }),
  rule(
    '[(for|on)] [the] <quantity> (i|we) (got|read|see|have got|am getting|am reading|am seeing|are getting|are reading|are seeing) [a] <amount>',
    before,
    { examples: ['suction i got thirty eight'] },
  ),
];

/** What is dictated: no memo, as it has a row of its own. */
export const DICTATED_RULES: readonly Rule[] = [
  rule(
    '((write|jot|mark|note|put|take) down|write in|log|record) [me] (<amount> (for|on|as) [the] <quantity>|[the] <quantity> [(is|at|as|of)] <amount>)',
    before,
    { alone: true, examples: ['write down one ninety for head', 'log suction at thirty eight'] },
  ),
];
