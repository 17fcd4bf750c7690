import type { Amount } from './amount.ts';
import { fromGaugePressure } from './branding.ts';
import type { GaugePressure } from './quantity-values.ts';
import type { UnitId, UnitSystem } from './units.ts';

/** The unit each kind of computed value is shown in. */
export const SHOWN_UNITS = {
  us: {
    gaugePressure: 'psi',
    temperature: 'degF',
    temperatureDifference: 'dF',
    mass: 'lb',
    absolutePressure: 'psia',
  },
  si: {
    gaugePressure: 'bar',
    temperature: 'degC',
    temperatureDifference: 'dC',
    mass: 'kg',
    absolutePressure: 'bara',
  },
} as const satisfies Record<UnitSystem, Record<string, UnitId>>;

/** As a dial of that habit shows it: below the atmosphere a US gauge is marked in inches of mercury. */
export function dialAmount(p: GaugePressure, system: UnitSystem): Amount {
  return fromGaugePressure(
    p,
    system === 'us' && p < 0 ? 'inHg' : SHOWN_UNITS[system].gaugePressure,
  );
}
