import type { PlaceId } from '../../terms/names.ts';
import { amountIn } from '../numbers/measure.ts';
import { isSupply } from '../numbers/nominal-voltages.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { electrical, GOT, NO_VOLTS, noVolts, one } from './electrical.ts';

/** Which side of it: a bare figure that no supply has may be anything. */
const atSide =
  (side: PlaceId): Means =>
  (tags, frame) => {
    const { unit, value } = amountIn(tags);
    const isVolts = unit === 'V' || (unit === null && value !== null && isSupply(value));
    return isVolts ? one(electrical({ ...tags, unit: 'V' }, side, frame)) : null;
  };

/** What turns a unit on and off, and has no name among the parts. */
const SWITCH = 'the [(power|rocker|toggle|on off|main power|light|service)] switch';
const INTO = '[(coming|going)] (into|in to|in at|in on|to)';
const OUT_OF = '[(coming|going)] (out of|leaving|off of|off|out the (back|other side) of)';

/** Power followed through the switch on a cabinet's front. */
export const PLAIN_SWITCH_RULES: readonly Rule[] = [
  rule(`${GOT} <amount> ${OUT_OF} ${SWITCH}`, atSide('loadSide'), {
    unheard: true,
    examples: ['one nineteen coming out of the power switch'],
  }),
  rule(`${GOT} <amount> ${INTO} ${SWITCH}`, atSide('lineSide'), {
    unheard: true,
    examples: ['one nineteen going into the rocker switch'],
  }),
  rule(`${GOT} ${NO_VOLTS} ${OUT_OF} ${SWITCH}`, noVolts('loadSide'), {
    unheard: true,
    examples: ['nothing coming out of the power switch'],
  }),
];
