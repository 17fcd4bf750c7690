import { difference } from '../units/quantity-values.ts';
import type {
  AbsolutePressure,
  Temperature,
  TemperatureDifference,
} from '../units/quantity-values.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { andThen, known } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { NON_CONDENSABLE_EXCESS } from './control-defaults.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';
import { saturationTemperature } from './saturation.ts';

export type NonCondensableVerdict =
  | 'none'
  | 'suspected'
  | 'present'
  /** Below saturation: no liquid there, not settled, or a probe off. */
  | 'testFailed';

export interface NonCondensables {
  /** The pressure's bubble temperature above the coil's. */
  readonly excess: TemperatureDifference;
  readonly verdict: NonCondensableVerdict;
}

/**
 * Air in a condenser at rest: compressor off, liquid in the condenser, its fan on until entering air, leaving air
 * and coil are one temperature. Compared in degrees against bubble, since there is liquid. A wrong or mixed
 * refrigerant shows the same.
 */
export function nonCondensables(input: {
  readonly refrigerant: RefrigerantId;
  readonly standing: AbsolutePressure;
  readonly coil: Temperature;
}): Calculated<NonCondensables> {
  const { refrigerant, standing, coil } = input;
  const at = saturationTemperature({ refrigerant, pressure: standing, phase: 'bubble' });
  return andThen(at, (bubble) => {
    const excess = difference(bubble, coil);
    return known({ excess, verdict: verdictOf(excess) }, 'fanStaysLive', 'trappedLiquid');
  });
}

function verdictOf(excess: TemperatureDifference): NonCondensableVerdict {
  const { suspected, present } = NON_CONDENSABLE_EXCESS.value;
  if (excess + suspected < 0) return 'testFailed';
  if (excess <= suspected) return 'none';
  return excess > present ? 'present' : 'suspected';
}

export const nonCondensablesFormula: Formula = {
  id: 'nonCondensables',
  name: 'non-condensables from standstill pressure',
  equation: 'excess = Tbubble(P) − Tcoil',
  symbols: symbols(
    ['P', 'condenser pressure at rest, absolute', 'kPa'],
    ['Tcoil', 'coil, entering and leaving air alike', '°C'],
  ),
  range:
    'liquid in the condenser, the cold evaporator shut off or equalised; compressor circuit off, fan running',
  source: 'iheatcool.com, How to diagnose non-condensables; ref-wiki.com, Non-condensible gases',
  standing: 'published',
  example: {
    inputs: { refrigerant: 'R-134a', pressure: '104.3psi', coilTemp: '80F' },
    gives: { value: 10, unit: 'dF' },
    within: 0.05,
    source: 'CoolProp 8.0: 104.3 psig of R-134a is 90 °F',
    standing: 'computed',
  },
};
