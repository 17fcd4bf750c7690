import type { Tags } from '../../grammar/nodes.ts';
import type { PartId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { type Amounted, amountIn } from '../numbers/measure.ts';
import { isPlausible } from '../numbers/plausible.ts';
import { reading } from './reading-means.ts';
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
