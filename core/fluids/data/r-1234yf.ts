/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 95.2,
    centre: 7.0505484,
    halfWidth: 5.4073808,
    coefficients: [
      7.0628933, -1.8681507, -1.1548082, -0.4903846, -0.2700498, -0.1128825, -0.0488387, -0.0465022,
      -0.024427,
    ],
  },
  temperature: {
    limit: 8.136924,
    centre: 1.2444953,
    halfWidth: 1.0116356,
    coefficients: [
      27.230838, -91.15156, -8.153674, 16.655742, -3.717341, -1.876523, 1.023687, 0.12239,
      -0.133537,
    ],
  },
  low: absolutePressure(21.0489),
  high: absolutePressure(3237.9303),
};
const dew = bubble;

export const r1234yf: Fluid = {
  id: 'R-1234yf',
  composition: 'R-1234yf',
  safetyGroup: 'A2L',
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-60), high: temperature(92.5) },
  critical: { temperature: temperature(94.7), pressure: absolutePressure(3384.374) },
  glide: temperatureDifference(0.0),
  liquidDensity25: 1091.739,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.0058,
    temperature: temperatureDifference(0.00023),
  },
  source:
    'HEOS pure fluid, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: null,
};
