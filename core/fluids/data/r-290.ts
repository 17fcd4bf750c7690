/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 97.24,
    centre: 7.3583458,
    halfWidth: 5.1811917,
    coefficients: [
      7.2929099, -1.7272747, -1.0074115, -0.4145018, -0.2136187, -0.0866002, -0.0393618, -0.0337979,
      -0.0162694,
    ],
  },
  temperature: {
    limit: 8.364948,
    centre: 1.2207184,
    halfWidth: 0.92658425,
    coefficients: [
      25.635947, -89.267871, -6.927268, 14.283487, -3.164331, -1.284237, 0.800832, 0.018517,
      -0.095182,
    ],
  },
  low: absolutePressure(42.6946),
  high: absolutePressure(3937.9797),
};
const dew = bubble;

export const r290: Fluid = {
  id: 'R-290',
  composition: 'R-290',
  safetyGroup: 'A3',
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-60), high: temperature(92.5) },
  critical: { temperature: temperature(96.74001), pressure: absolutePressure(4251.165) },
  glide: temperatureDifference(0.0),
  liquidDensity25: 492.3628,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.0039,
    temperature: temperatureDifference(0.00024),
  },
  source:
    'HEOS pure fluid, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: null,
};
