import type { Phase } from '../fluids/fluid.ts';
import * as fluids from '../fluids/saturation.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import type {
  AbsolutePressure,
  SaturationTemperature,
  Temperature,
} from '../units/quantity-values.ts';
import { known } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { fluidCautions } from './fluid-cautions.ts';
import type { Formula } from './formula.ts';
import { symbols } from './formula.ts';

const SOURCE =
  "equation-of-state values (CoolProp 8.0.1dev) of each refrigerant, fitted; error stated in the fluid's file";

/** The pressure at which it boils (bubble) or condenses (dew) at that temperature. */
export function saturationPressure(input: {
  readonly refrigerant: RefrigerantId;
  readonly temperature: Temperature;
  readonly phase: Phase;
}): Calculated<AbsolutePressure> {
  const found = fluids.saturationPressure(input.refrigerant, input.temperature, input.phase);
  return found.kind === 'refused' ? found : known(found.value, ...fluidCautions(input.refrigerant));
}

/** The temperature at which it boils (bubble) or condenses (dew) at that pressure; nothing is below no pressure. */
export function saturationTemperature<Line extends Phase>(input: {
  readonly refrigerant: RefrigerantId;
  readonly pressure: AbsolutePressure;
  readonly phase: Line;
}): Calculated<SaturationTemperature<Line>> {
  if (!(input.pressure > 0)) {
    return { kind: 'refused', reason: 'impossibleVacuum', value: input.pressure, unit: 'kPaa' };
  }
  const found = fluids.saturationTemperature(input.refrigerant, input.pressure, input.phase);
  return found.kind === 'refused' ? found : known(found.value, ...fluidCautions(input.refrigerant));
}

const SYMBOLS = symbols(
  ['P', 'saturation pressure, absolute', 'kPa'],
  ['T', 'saturation temperature', '°C'],
  ['T0, P0', 'just above the critical temperature and pressure', '°C, kPa'],
);

export const saturationPressureFormula: Formula = {
  id: 'saturationPressure',
  name: 'saturation pressure',
  equation: 'ln P = polynomial in √(T0 − T); gauge = P − local atmosphere',
  symbols: SYMBOLS,
  range: '−60 °C to within 4.6 K of critical; R-744 from −55.6 °C; refused beyond',
  source: SOURCE,
  standing: 'computed',
  example: {
    inputs: { refrigerant: 'R-134a', temperature: '120F', phase: 'bubble' },
    gives: { value: 172, unit: 'psi' },
    within: 1.5,
    source: 'achrnews.com/articles/133927: 172 psig is 120 °F, a whole-degree chart',
    standing: 'published',
  },
};

export const saturationTemperatureFormula: Formula = {
  id: 'saturationTemperature',
  name: 'saturation temperature',
  equation: 'T = polynomial in √(ln P0 − ln P); P = gauge + local atmosphere',
  symbols: SYMBOLS,
  range: saturationPressureFormula.range,
  source: SOURCE,
  standing: 'computed',
  example: {
    inputs: { refrigerant: 'R-134a', pressure: '20psi', phase: 'dew', altitude: '5000ft' },
    gives: { value: 18.7, unit: 'degF' },
    within: 0.1,
    source: 'the same equation of state worked at 12.23 psia of air',
    standing: 'computed',
  },
};
