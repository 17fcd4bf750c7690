/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 135.16,
    centre: 7.8004592,
    halfWidth: 6.1695086,
    coefficients: [
      7.0843626, -2.0438526, -1.3603946, -0.6425537, -0.3903293, -0.2138643, -0.0841108, -0.0349374,
      -0.055871, -0.0318052,
    ],
  },
  temperature: {
    limit: 8.206712,
    centre: 1.3300065,
    halfWidth: 1.115419,
    coefficients: [
      46.324048, -117.820672, -3.849917, 23.958005, -8.300543, -2.376472, 2.416152, -0.01108,
      -0.33985,
    ],
  },
  low: absolutePressure(9.2687),
  high: absolutePressure(3500.5316),
};
const dew = bubble;

export const r600a: Fluid = {
  id: 'R-600a',
  composition: 'R-600a',
  safetyGroup: 'A3',
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-60), high: temperature(132.5) },
  critical: { temperature: temperature(134.66), pressure: absolutePressure(3629) },
  glide: temperatureDifference(0.0),
  liquidDensity25: 550.6507,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.004,
    temperature: temperatureDifference(0.00055),
  },
  source:
    'HEOS pure fluid, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: null,
};
