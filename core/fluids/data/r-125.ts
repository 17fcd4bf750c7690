/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 66.5273,
    centre: 6.6276244,
    halfWidth: 4.620811,
    coefficients: [
      7.1646976, -1.6392222, -0.9125166, -0.3386888, -0.1548983, -0.0658276, -0.0416681, -0.0169493,
    ],
  },
  temperature: {
    limit: 8.203753,
    centre: 1.1736574,
    halfWidth: 0.87790162,
    coefficients: [10.48601, -70.66345, -8.000015, 10.286398, -1.513081, -0.873468, 0.276972],
  },
  low: absolutePressure(54.3218),
  high: absolutePressure(3348.6164),
};
const dew = bubble;

export const r125: Fluid = {
  id: 'R-125',
  composition: 'R-125',
  safetyGroup: 'A1',
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-60), high: temperature(62.5) },
  critical: { temperature: temperature(66.02728), pressure: absolutePressure(3618.276) },
  glide: temperatureDifference(0.0),
  liquidDensity25: 1189.353,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.0077,
    temperature: temperatureDifference(0.00081),
  },
  source:
    'HEOS pure fluid, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: null,
};
