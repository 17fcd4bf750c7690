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

/** Two values, each told before what it is of. */
export const VALUE_FIRST_RULES: readonly Rule[] = [
  rule('<amount:one> <quantity:first> [and] <amount:two> <quantity:second>', eachBefore, {
    examples: ['ninety one liquid one ten condensing'],
  }),
];
