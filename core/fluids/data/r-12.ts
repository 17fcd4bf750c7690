/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';
import { PURE_FLUID, SAFETY_FROM_MEMORY, WARMING_BULLETIN } from '../sources.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 112.47,
    centre: 7.6810665,
    halfWidth: 5.4517169,
    coefficients: [
      7.1830609, -1.8921042, -1.1472151, -0.5006081, -0.2712101, -0.1360195, -0.0568798, -0.0220133,
      -0.0246241, -0.0137649,
    ],
  },
  temperature: {
    limit: 8.337525,
    centre: 1.2921504,
    halfWidth: 0.99234415,
    coefficients: [
      32.158076, -99.029856, -4.681782, 16.65538, -4.711451, -1.355009, 1.097505, -0.02058,
      -0.112396,
    ],
  },
  low: absolutePressure(22.6151),
  high: absolutePressure(3818.6102),
};
const dew = bubble;

export const r12: Fluid = {
  id: 'R-12',
  composition: 'R-12',
  safetyGroup: 'A1',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(107.5) },
  critical: { temperature: temperature(111.97), pressure: absolutePressure(4136.166) },
  triple: { temperature: temperature(-157.051), pressure: absolutePressure(0.0002425508) },
  molarMass: 120.913,
  gwp: { value: 10900, source: WARMING_BULLETIN },
  glide: temperatureDifference(0.0),
  liquidDensity25: 1311.03,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.0095,
    temperature: temperatureDifference(0.00031),
  },
  source: PURE_FLUID,
  chartsDiffer: null,
};
