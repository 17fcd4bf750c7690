/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';
import { PURE_FLUID, SAFETY_FROM_MEMORY, WARMING_EU } from '../sources.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 135.16,
    centre: 7.8004592,
    halfWidth: 6.1695086,
    coefficients: [
      7.0843825, -2.0437446, -1.3615621, -0.6442184, -0.3797743, -0.20723, -0.1165848, -0.0444056,
      -0.015979, -0.027426, -0.0168428,
    ],
  },
  temperature: {
    limit: 8.206712,
    centre: 1.3300065,
    halfWidth: 1.115419,
    coefficients: [
      46.32406, -117.820604, -3.85027, 23.957227, -8.298545, -2.374532, 2.412593, -0.012305,
      -0.338007,
    ],
  },
  low: absolutePressure(9.2684),
  high: absolutePressure(3500.5106),
};
const dew = bubble;

export const r600a: Fluid = {
  id: 'R-600a',
  composition: 'R-600a',
  safetyGroup: 'A3',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(132.5) },
  critical: { temperature: temperature(134.66), pressure: absolutePressure(3629) },
  triple: { temperature: temperature(-159.42), pressure: absolutePressure(0.00002289084) },
  molarMass: 58.1222,
  gwp: { value: 3, source: WARMING_EU },
  glide: temperatureDifference(0.0),
  liquidDensity25: 550.6507,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.0089,
    temperature: temperatureDifference(0.00089),
  },
  source: PURE_FLUID,
  chartsDiffer: null,
};
