import { isSetting, type QuantityId } from '../terms/quantities.ts';
import type { VisitState } from './state.ts';

/** Weighed, tested, or read of the weather: none of it shows how the unit ran. */
const NO_BASELINE: ReadonlySet<QuantityId> = new Set<QuantityId>([
  'refrigerantAdded',
  'refrigerantRecovered',
  'refrigerantCharge',
  'cylinderWeight',
  'testPressure',
  'vacuum',
  'ambientTemp',
  'outdoorTemp',
]);

/** Whether anything was read that shows how the unit was before it was touched. */
export function hasBaseline({ readings }: VisitState): boolean {
  return readings.some(
    ({ phase, reading }) =>
      phase === 'before' && !isSetting(reading.quantity) && !NO_BASELINE.has(reading.quantity),
  );
}
