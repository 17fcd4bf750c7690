import { difference } from '../units/quantity-values.ts';
import type { Temperature, TemperatureDifference } from '../units/quantity-values.ts';
import { known } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

/** Condensing temperature less the air entering the condenser (not the air leaving it). */
export function split(input: {
  readonly condensing: Temperature;
  readonly ambient: Temperature;
}): Calculated<TemperatureDifference> {
  return known(difference(input.condensing, input.ambient));
}

/** Air entering the evaporator less evaporating temperature (not the air's own fall across the coil). */
export function temperatureDifference(input: {
  readonly box: Temperature;
  readonly evaporating: Temperature;
}): Calculated<TemperatureDifference> {
  return known(difference(input.box, input.evaporating));
}

export const splitFormula: Formula = {
  id: 'split',
  name: 'condenser split',
  equation: 'split = SCT − Tair',
  symbols: symbols(
    ['SCT', 'condensing temperature, middle of bubble and dew', '°C'],
    ['Tair', 'air entering the condenser', '°C'],
  ),
  range: 'air-cooled, subcritical',
  source: 'achrnews.com/articles/91887, Restricted condenser airflow',
  standing: 'published',
  example: {
    inputs: { refrigerant: 'R-134a', headPressure: '172psi', ambientTemp: '70F' },
    gives: { value: 50, unit: 'dF' },
    within: 0.6,
    source: 'achrnews.com/articles/133927: 172 psig (120 °F) with 70 °F air',
    standing: 'published',
  },
};

export const temperatureDifferenceFormula: Formula = {
  id: 'temperatureDifference',
  name: 'temperature difference',
  equation: 'TD = Tbox − SST',
  symbols: symbols(
    ['Tbox', 'air entering the evaporator', '°C'],
    ['SST', 'evaporating temperature, middle of bubble and dew', '°C'],
  ),
  range: 'forced-air evaporators, subcritical',
  source: 'hvacrschool.com, TD on refrigeration evaporators',
  standing: 'published',
  example: {
    inputs: { refrigerant: 'R-134a', suctionPressure: '15psi', boxTemp: '35F' },
    gives: { value: 20, unit: 'dF' },
    within: 0.6,
    source: 'achrnews.com/articles/142973: 15 psig (15 °F) under a 35 °F box',
    standing: 'published',
  },
};
