/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 112.47,
    centre: 7.6810665,
    halfWidth: 5.4517169,
    coefficients: [
      7.1830465, -1.8917345, -1.1466975, -0.5060885, -0.2739616, -0.1147583, -0.052366, -0.0518917,
      -0.0268737,
    ],
  },
  temperature: {
    limit: 8.337525,
    centre: 1.2921504,
    halfWidth: 0.99234415,
    coefficients: [
      32.158081, -99.029821, -4.682009, 16.655068, -4.710069, -1.354336, 1.094927, -0.020957,
      -0.110968,
    ],
  },
  low: absolutePressure(22.6163),
  high: absolutePressure(3818.5296),
};
const dew = bubble;

export const r12: Fluid = {
  id: 'R-12',
  composition: 'R-12',
  safetyGroup: 'A1',
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-60), high: temperature(107.5) },
  critical: { temperature: temperature(111.97), pressure: absolutePressure(4136.166) },
  glide: temperatureDifference(0.0),
  liquidDensity25: 1311.03,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.0065,
    temperature: temperatureDifference(0.00016),
  },
  source:
    'HEOS pure fluid, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: null,
};
