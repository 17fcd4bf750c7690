import type { Tags } from '../../grammar/nodes.ts';
import type { PartId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { type Amounted, amountIn } from '../numbers/measure.ts';
import { isPlausible } from '../numbers/plausible.ts';
import { isSupply } from '../numbers/nominal-voltages.ts';
import { leftToAsk, reading } from './reading-means.ts';
import type { Frame, Meaning } from '../rule.ts';
import { tagsIn } from '../slots.ts';
import type { Reading } from '../utterance.ts';

export const isThermal = ({ unit }: Amounted): boolean =>
  unit === null || unit === 'degrees' || unit === 'degF' || unit === 'degC';

/** A temperature that the quantity can have; what it cannot is left to other rules. */
export function degrees(quantity: QuantityId, tags: Tags | null, frame: Frame): Reading | null {
  if (tags === null || !isThermal(amountIn(tags))) return null;
  const found = reading(quantity, amountIn(tags), frame);
  if (found?.value === undefined || found.unit === null) return null;
  const { value, unit } = found;
  return isPlausible(quantity, { value, unit }, frame.context.refrigerant) ? found : null;
}

type Ends = readonly [QuantityId, QuantityId];

const DRIER: Ends = ['liquidLineTemp', 'liquidLineTemp'];

/** What is metered before and behind a part that something flows through: air on and air off, by its coil. */
const ENDS: Partial<Record<PartId, Ends>> = {
  evaporator: ['boxTemp', 'supplyAirTemp'],
  condenser: ['ambientTemp', 'condenserLeavingAirTemp'],
  filterDrier: DRIER,
  liquidLine: DRIER,
};

/** A condenser warms what goes through it; whatever else does the other way about was a meter's. */
const mayBe = (part: PartId, on: number, off: number): boolean =>
  part === 'condenser' ? off >= on : off <= on;

/** `null` where no such part is meant, or where what is told cannot be its temperatures. */
export function throughPart(part: PartId, tags: Tags, frame: Frame): Meaning | null {
  const ends = ENDS[part];
  if (ends === undefined) return null;
  const on = degrees(ends[0], tagsIn(tags['in']), frame);
  const off = degrees(ends[1], tagsIn(tags['out']), frame);
  if (on?.value === undefined || off?.value === undefined) return null;
  return mayBe(part, on.value, off.value) ? { readings: [on, off] } : null;
}

/** What is read behind what something flows through, by what was read before it. */
const BEHIND: Partial<Record<QuantityId, QuantityId>> = {
  liquidLineTemp: 'liquidLineTemp',
  ambientTemp: 'condenserLeavingAirTemp',
  enteringWaterTemp: 'leavingWaterTemp',
};
const BEFORE: Partial<Record<QuantityId, QuantityId>> = {
  liquidLineTemp: 'liquidLineTemp',
  condenserLeavingAirTemp: 'ambientTemp',
  leavingWaterTemp: 'enteringWaterTemp',
};

/**
 * "And sixty coming out", behind "liquid line's eighty one going into the drier": a bare number goes on with what was
 * read last. One that may be a supply's volts as well is asked about, and so is one that no supply has.
 *
 * @returns `null` where it may be volts and nothing else.
 */
export function otherEnd(side: 'in' | 'out', tags: Tags, frame: Frame): Meaning | null {
  const { unit, value } = amountIn(tags);
  const { lastQuantity } = frame.context;
  if (unit !== null || value === null || value === 0) return null;
  const warm = lastQuantity === null ? undefined : (side === 'out' ? BEHIND : BEFORE)[lastQuantity];
  if (warm === undefined)
    return isSupply(value) || lastQuantity === 'voltage' ? null : leftToAsk(tags);
  const found = isSupply(value) ? null : degrees(warm, tags, frame);
  return found === null ? leftToAsk(tags) : { readings: [found] };
}
