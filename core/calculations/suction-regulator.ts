import { absolutePressure } from '../units/quantity-values.ts';
import type {
  AbsolutePressure,
  PressureDifference,
  Temperature,
} from '../units/quantity-values.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { andThen, known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { REGULATOR_LINE_DROP } from './control-defaults.ts';
import { glideCaution } from './fluid-cautions.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';
import { saturationPressure } from './saturation.ts';

/** What an evaporator pressure regulator at the far end of a suction line is set to: the coil's less the drop. */
export function regulatorSetting(input: {
  readonly refrigerant: RefrigerantId;
  readonly evaporating: Temperature;
  readonly lineDrop?: PressureDifference;
}): Calculated<AbsolutePressure> {
  const { refrigerant, evaporating, lineDrop = REGULATOR_LINE_DROP.value } = input;
  if (!(lineDrop >= 0)) return refused('notPositive');
  const coil = saturationPressure({ refrigerant, temperature: evaporating, phase: 'dew' });
  return andThen(coil, (pressure) => {
    const found = absolutePressure(pressure - lineDrop);
    return found > 0
      ? known(found, ...glideCaution(refrigerant))
      : { kind: 'refused', reason: 'impossibleVacuum', value: found, unit: 'kPaa' };
  });
}

export const regulatorSettingFormula: Formula = {
  id: 'regulatorSetting',
  name: 'evaporator pressure regulator setting',
  equation: 'Pset = Pdew(SST) − ΔP',
  symbols: symbols(
    ['SST', 'evaporating temperature wanted in the coil', '°C'],
    ['ΔP', 'drop of the suction line up to the regulator', 'kPa'],
  ),
  range: 'regulator in the machine room; the air or product temperature has the last word',
  source:
    'a display-case maker’s control settings, August 1996, page 8-2: the line’s drop is taken off',
  standing: 'published',
  example: {
    inputs: { refrigerant: 'R-404A', evaporatingTemp: '25F', lineDrop: '2psi' },
    gives: { value: 60, unit: 'psi' },
    within: 0.5,
    source: 'a display-case maker’s control settings, page 8-2: 25 °F, 60 psig',
    standing: 'published',
  },
};
