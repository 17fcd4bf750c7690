import { raise } from '../units/quantity-values.ts';
import type { Temperature, TemperatureDifference } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { WATER_APPROACH } from './control-defaults.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

/** What a clean water-cooled condenser with full flow should condense at. */
export function waterCondensingTarget(input: {
  readonly leavingWater: Temperature;
  /** As the maker gives it. */
  readonly approach?: TemperatureDifference;
}): Calculated<Temperature> {
  const { leavingWater, approach } = input;
  if (approach === undefined) {
    return known(raise(leavingWater, WATER_APPROACH.value), 'designTableOnly');
  }
  return approach > 0 ? known(raise(leavingWater, approach)) : refused('notPositive');
}

export const waterCondensingTargetFormula: Formula = {
  id: 'waterCondensingTarget',
  name: 'condensing temperature target, water-cooled',
  equation: 'SCT = Twater + approach',
  symbols: symbols(
    ['Twater', 'water leaving the condenser', '°C'],
    ['approach', 'condensing temperature less leaving water', 'K'],
  ),
  range: 'clean tubes, full flow, water warming by about 10 °F on a tower, 20 °F on city water',
  source: 'civilengineeringhandbook.tk, Condenser load, table 36-1',
  standing: 'published',
  example: {
    inputs: { leavingWaterTemp: '95F' },
    gives: { value: 105, unit: 'degF' },
    within: 0.001,
    source:
      'civilengineeringhandbook.tk, Condenser load, table 36-1 (a chiller maker’s): 85 °F in, 95 °F out, 105 °F condensing',
    standing: 'published',
  },
};
