/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 101.562,
    centre: 7.3630723,
    halfWidth: 5.3476319,
    coefficients: [
      7.1165397, -2.0125883, -1.2362566, -0.5462936, -0.2951994, -0.1236107, -0.057203, -0.0524475,
      -0.0261622,
    ],
  },
  temperature: {
    limit: 8.31876,
    centre: 1.3213909,
    halfWidth: 1.0348856,
    coefficients: [
      27.449564, -93.457174, -5.102928, 16.098337, -4.647775, -1.349947, 1.181401, -0.041361,
      -0.130258,
    ],
  },
  low: absolutePressure(15.9073),
  high: absolutePressure(3776.8991),
};
const dew = bubble;

export const r134a: Fluid = {
  id: 'R-134a',
  composition: 'R-134a',
  safetyGroup: 'A1',
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-60), high: temperature(97.5) },
  critical: { temperature: temperature(101.062), pressure: absolutePressure(4059.276) },
  glide: temperatureDifference(0.0),
  liquidDensity25: 1206.712,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.0061,
    temperature: temperatureDifference(0.00037),
  },
  source:
    'HEOS pure fluid, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: null,
};
