/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 91.561,
    centre: 7.1631018,
    halfWidth: 5.1479095,
    coefficients: [
      7.4132492, -1.6673721, -0.9714699, -0.3905857, -0.2022716, -0.0820903, -0.0360635, -0.0304871,
      -0.0148842,
    ],
  },
  temperature: {
    limit: 8.433979,
    centre: 1.1875297,
    halfWidth: 0.91389455,
    coefficients: [
      23.895619, -86.449806, -8.064312, 14.043384, -2.694204, -1.414873, 0.699505, 0.071282,
      -0.086626,
    ],
  },
  low: absolutePressure(55.5911),
  high: absolutePressure(4268.8306),
};
const dew = bubble;

export const r1270: Fluid = {
  id: 'R-1270',
  composition: 'R-1270',
  safetyGroup: 'A3',
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-60), high: temperature(87.5) },
  critical: { temperature: temperature(91.061), pressure: absolutePressure(4554.993) },
  glide: temperatureDifference(0.0),
  liquidDensity25: 506.2781,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.0034,
    temperature: temperatureDifference(0.000077),
  },
  source:
    'HEOS pure fluid, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: null,
};
