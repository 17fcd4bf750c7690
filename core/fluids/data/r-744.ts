/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 31.4782,
    centre: 5.7295775,
    halfWidth: 3.5997419,
    coefficients: [
      8.1203771, -1.1025274, -0.5067634, -0.1366607, -0.0522717, -0.0211619, -0.0077914,
    ],
  },
  temperature: {
    limit: 8.916163,
    centre: 0.9696635,
    halfWidth: 0.64990439,
    coefficients: [-6.653273, -45.390225, -7.576484, 4.43511, -0.125157, -0.295032, 0.046927],
  },
  low: absolutePressure(540.8817),
  high: absolutePressure(6727.1079),
};
const dew = bubble;

export const r744: Fluid = {
  id: 'R-744',
  composition: 'R-744',
  safetyGroup: 'A1',
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-55.558), high: temperature(26.942) },
  critical: { temperature: temperature(30.9782), pressure: absolutePressure(7377.298) },
  glide: null,
  liquidDensity25: null,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.005,
    temperature: temperatureDifference(0.00041),
  },
  source:
    'HEOS pure fluid, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: null,
};
