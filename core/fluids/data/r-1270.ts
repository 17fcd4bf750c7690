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
    limit: 91.561,
    centre: 7.1631018,
    halfWidth: 5.1479095,
    coefficients: [
      7.4132472, -1.6674146, -0.9713468, -0.3901289, -0.2031961, -0.0831894, -0.0341323, -0.0298072,
      -0.0160113,
    ],
  },
  temperature: {
    limit: 8.433979,
    centre: 1.1875297,
    halfWidth: 0.91389455,
    coefficients: [
      23.895614, -86.449813, -8.064194, 14.043496, -2.69498, -1.415164, 0.700991, 0.071454,
      -0.087455,
    ],
  },
  low: absolutePressure(55.5909),
  high: absolutePressure(4268.8545),
};
const dew = bubble;

export const r1270: Fluid = {
  id: 'R-1270',
  composition: 'R-1270',
  safetyGroup: 'A3',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(87.5) },
  critical: { temperature: temperature(91.061), pressure: absolutePressure(4554.993) },
  triple: { temperature: temperature(-185.197), pressure: absolutePressure(7.46948e-7) },
  molarMass: 42.07974,
  gwp: { value: 2, source: WARMING_EU },
  glide: temperatureDifference(0.0),
  liquidDensity25: 506.2781,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.018,
    temperature: temperatureDifference(0.00015),
  },
  source: PURE_FLUID,
  chartsDiffer: null,
};
