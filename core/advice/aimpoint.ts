import type { Formula } from '../calculations/formula.ts';
import type { Default, DefaultTable } from '../calculations/shop-defaults.ts';
import type { Target } from '../calculations/targets.ts';
import type { EquipmentId } from '../terms/names.ts';
import { fromBase } from '../units/convert.ts';
import { difference, differenceF, temperature } from '../units/quantity-values.ts';
import type { VisitState } from '../visit/state.ts';
import { equipmentOf, shownUnit, temperatureOf } from './current.ts';
import { andThen, both, worked, type Found } from './found.ts';
import type { Input, Refused, TargetBasis } from './verdict.ts';

/** A target in base units with its band, and what it was built on. */
export interface Aimpoint {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly basis: TargetBasis;
}

/** An ice machine freezes and harvests: nothing it shows has one right value. */
export const CYCLES: Refused = {
  kind: 'refused',
  about: null,
  reason: 'targetChangesWithTheCycle',
};
export const NO_TARGET: Refused = { kind: 'refused', about: null, reason: 'noTargetKnown' };

export function steadyEquipment(state: VisitState): Found<EquipmentId> {
  return andThen(equipmentOf(state), (equipment) =>
    equipment === 'iceMachine' ? CYCLES : worked(equipment),
  );
}

/** The table's row becomes an input of its own, marked as assumed, and its source comes along. */
export function aimpoint<Value extends number>(
  found: Found<Target<Value>>,
  basis: TargetBasis,
  assumed: readonly Input[] = [],
): Found<Aimpoint> {
  return andThen(found, ({ value, low, high, from }) =>
    worked(
      { value, low, high, basis },
      { inputs: assumed, sources: from === null ? [] : [from.source] },
    ),
  );
}

export function assumedInput(
  name: 'designSplit' | 'temperatureDifference' | 'waterApproach',
  row: Pick<Default, 'value'> | null,
  state: VisitState,
): readonly Input[] {
  if (row === null) return [];
  const unit = shownUnit('temperatureDifference', state) ?? 'dC';
  return [{ name, ...fromBase(row.value, unit), from: 'assumed' }];
}

export function designRow(
  table: DefaultTable,
  equipment: EquipmentId,
  formula: Formula,
): Found<Aimpoint> {
  const row = table[equipment];
  if (row === null) return NO_TARGET;
  const { value, low, high, source } = row;
  return worked(
    { value, low, high, basis: 'table' },
    { formula, cautions: ['designTableOnly'], sources: [source] },
  );
}

/** Further above its set point than this a box is still pulling down (common practice). */
const PULL_DOWN = differenceF(10);

/** A box far above its set point: more load than any design figure is for. */
export function isPullingDown(state: VisitState): boolean {
  const air = both(temperatureOf(state, 'boxTemp'), temperatureOf(state, 'setpointTemp'));
  if (air.kind !== 'known') return false;
  const [box, setpoint] = air.value;
  return difference(temperature(box), temperature(setpoint)) > PULL_DOWN;
}
