/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 96.645,
    centre: 7.2758587,
    halfWidth: 5.2399314,
    coefficients: [
      7.4247157, -1.8167581, -1.0856248, -0.4575681, -0.240926, -0.096471, -0.0426499, -0.0400431,
      -0.0201608,
    ],
  },
  temperature: {
    limit: 8.525191,
    centre: 1.2473996,
    halfWidth: 0.96635725,
    coefficients: [
      25.685702, -89.815076, -6.662527, 14.922099, -3.633418, -1.385611, 1.003704, 0.028474,
      -0.143482,
    ],
  },
  low: absolutePressure(37.5064),
  high: absolutePressure(4657.3156),
};
const dew = bubble;

export const r22: Fluid = {
  id: 'R-22',
  composition: 'R-22',
  safetyGroup: 'A1',
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-60), high: temperature(92.5) },
  critical: { temperature: temperature(96.145), pressure: absolutePressure(4990) },
  glide: temperatureDifference(0.0),
  liquidDensity25: 1190.654,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.0047,
    temperature: temperatureDifference(0.00027),
  },
  source:
    'HEOS pure fluid, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: null,
};
