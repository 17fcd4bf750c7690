import { FLUIDS } from '../fluids/fluids.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import type { Amount } from '../units/amount.ts';
import { fromTemperatureDifference } from '../units/branding.ts';
import type { UnitSystem } from '../units/units.ts';

/** How far a print lies from the curves for this refrigerant, at most, and which print that is. */
export interface ShownChartDifference {
  readonly upTo: Amount;
  readonly against: string;
  readonly readAt: string | null;
  readonly fromMemory: boolean;
}

const DIFFERENCE_UNITS = { us: 'dF', si: 'dC' } as const satisfies Record<UnitSystem, string>;

/** Null where no print is known to differ. To a tenth of a degree: the prints say no more. */
export function chartDifference(
  id: RefrigerantId,
  system: UnitSystem,
): ShownChartDifference | null {
  const found = FLUIDS[id].chartsDiffer;
  if (found === null) return null;
  const { value, unit } = fromTemperatureDifference(found.temperature, DIFFERENCE_UNITS[system]);
  return {
    upTo: { value: Number(value.toFixed(1)), unit },
    against: found.against,
    readAt: found.readAt,
    fromMemory: found.fromMemory,
  };
}
