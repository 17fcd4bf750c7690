import { liquidDensity } from '../fluids/properties.ts';
import { absolutePressure, difference, pressureDifference } from '../units/quantity-values.ts';
import type {
  Length,
  PressureDifference,
  Temperature,
  TemperatureDifference,
} from '../units/quantity-values.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { andThen, known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { fluidCautions } from './fluid-cautions.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';
import { saturationPressure, saturationTemperature } from './saturation.ts';

const GRAVITY = 9.80665; // m/s², standard
const PA_PER_KPA = 1000;

interface Riser {
  readonly refrigerant: RefrigerantId;
  readonly rise: Length;
  /** At the bottom. */
  readonly liquid: Temperature;
}

/** The pressure that a column of liquid loses on its way up, friction apart. */
export function riserLoss({ refrigerant, rise, liquid }: Riser): Calculated<PressureDifference> {
  if (!(rise > 0)) return refused('notPositive');
  const density = liquidDensity(refrigerant, liquid);
  if (density.kind === 'refused') return density;
  const lost = pressureDifference((density.value * GRAVITY * rise) / PA_PER_KPA);
  return known(lost, ...fluidCautions(refrigerant));
}

/** The subcooling needed at the bottom so that the liquid arrives at the top without flashing. */
export function riserSubcooling(riser: Riser): Calculated<TemperatureDifference> {
  const { refrigerant, liquid: temperature } = riser;
  return andThen(riserLoss(riser), (lost) =>
    andThen(saturationPressure({ refrigerant, temperature, phase: 'bubble' }), (bottom) => {
      const top = absolutePressure(bottom - lost);
      const at = saturationTemperature({ refrigerant, pressure: top, phase: 'bubble' });
      return andThen(at, (bubble) => known(difference(temperature, bubble)));
    }),
  );
}

const SYMBOLS = symbols(
  ['ρ', 'density of the liquid at the bottom', 'kg/m³'],
  ['g', 'standard gravity', 'm/s²'],
  ['h', 'rise', 'm'],
);
const RANGE = 'vertical line full of liquid, friction, drier and fittings apart';
const SOURCE = 'hydrostatics, density from the equation of state';
const TABLE = 'a condensing-unit maker’s K90-KPCS manual, page 7, liquid risers at 110 °F';

export const riserLossFormula: Formula = {
  id: 'riserLoss',
  name: 'pressure lost in a liquid riser',
  equation: 'ΔP = ρ · g · h',
  symbols: SYMBOLS,
  range: RANGE,
  source: SOURCE,
  standing: 'computed',
  example: {
    inputs: { refrigerant: 'R-134a', rise: '30ft', liquidTemp: '110F' },
    gives: { value: 14.7, unit: 'psi' },
    within: 0.05,
    source: `${TABLE}: R-134a, 30 ft, 14.7 psi`,
    standing: 'published',
  },
};

export const riserSubcoolingFormula: Formula = {
  id: 'riserSubcooling',
  name: 'subcooling lost in a liquid riser',
  equation: 'ΔT = T − Tbubble(Pbubble(T) − ρ · g · h)',
  symbols: [...SYMBOLS, ...symbols(['T', 'liquid temperature at the bottom', '°C'])],
  range: RANGE,
  source: SOURCE,
  standing: 'computed',
  example: {
    inputs: { refrigerant: 'R-134a', rise: '30ft', liquidTemp: '110F' },
    gives: { value: 6.3, unit: 'dF' },
    within: 0.25,
    source: `${TABLE}: R-134a, 30 ft, 6.3 °F (half a psi of its chart is 0.25 °F)`,
    standing: 'published',
  },
};
