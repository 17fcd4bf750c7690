import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { amountIn } from '../numbers/measure.ts';
import { reading } from './reading-means.ts';
import { isOfColdRoom } from './cold-rooms.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { quantityId, tagsIn } from '../slots.ts';
import type { Tags } from '../../grammar/nodes.ts';
import type { Reading } from '../utterance.ts';

function readOf(quantity: QuantityId | null, amount: Tags, frame: Frame): Reading | null {
  if (quantity === null || isElectrical(quantity)) return null;
  return reading(quantity, amountIn(amount), frame);
}

/** "Superheat's better, eighteen as opposed to thirty": what stood there before was read, too. */
const insteadOf: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const now = readOf(quantity, tags, frame);
  const before = readOf(quantity, tagsIn(tags['before']) ?? {}, frame);
  return now === null || before === null ? null : { readings: [before, now] };
};

/** "Box is fifty four, it should be thirty six": a box is kept at what it is set for. */
const boxAndSetting: Means = (tags, frame) => {
  const read = readOf('boxTemp', tagsIn(tags['read']) ?? {}, frame);
  const set = readOf('setpointTemp', tags, frame);
  if (read === null || set === null) return null;
  const isBox = tags['quantity'] === 'boxTemp' || isKeptRoom(tags, frame);
  return isBox ? { readings: [read, set] } : null;
};

/** "Room is at eleven, should be three": what should be so cold is kept cold, whatever the unit is. */
function isKeptRoom(tags: Tags, frame: Frame): boolean {
  const wanted = reading('ambientTemp', amountIn(tags), frame);
  const isKept = tags['quantity'] === 'ambientTemp' && wanted !== null;
  return isKept && isOfColdRoom({ ...wanted, quantity: 'ambientTemp' }, frame.context, COOLED);
}
const COOLED = ['walkInCooler', 'walkInFreezer', null] as const;

/** What is read beside what was, or beside what ought to be. */
export const INSTEAD_RULES: readonly Rule[] = [
  rule(
    '[the] <quantity> (is|looks|has got|got) [(way|much|a lot|a little|some)] (better|worse|lower|higher|down|up|good) [now] [<pause>] [(at|it is|it is at|i am at)] <amount> (as opposed to|instead of|rather than|compared to|versus|from|against) [the] <amount:before> [(before|earlier|i had (before|earlier))]',
    insteadOf,
    { unheard: true, examples: ['superheat is better eighteen as opposed to thirty'] },
  ),
  rule(
    '[the] <quantity> <link> <amount> [now] (as opposed to|instead of) [the] <amount:before> [(before|earlier|i had (before|earlier))]',
    insteadOf,
    { unheard: true, examples: ['superheat is eighteen now as opposed to thirty'] },
  ),
  rule(
    '[the] <quantity> <link> <amount:read> [(now|right now|at the moment)] [<pause>] [(and|but)] [(it|that|she)] (should be|is supposed to be|supposed to be|~~(supposed to run|is meant to run|is supposed to run)|ought to be|is set for|is set at|needs to be|is meant to be) [(at|down at|around)] <amount>',
    boxAndSetting,
    { unheard: true, examples: ['box is fifty four it should be thirty six'] },
  ),
];
