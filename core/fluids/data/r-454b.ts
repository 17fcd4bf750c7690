/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  differenceF,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';
import { BOILING_POINTS, MULTI_FLUID, SAFETY_READ, WARMING_BLEND_EU } from '../sources.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 78.7802,
    centre: 6.8623872,
    halfWidth: 4.9181136,
    coefficients: [
      7.5412501, -1.7113469, -0.9852407, -0.3792522, -0.1912251, -0.0775553, -0.0311779, -0.0237656,
      -0.0123294,
    ],
  },
  temperature: {
    limit: 8.586237,
    centre: 1.1906967,
    halfWidth: 0.92043949,
    coefficients: [
      17.66071, -78.638607, -8.593105, 12.286594, -1.969999, -1.204756, 0.402611, 0.056868,
    ],
  },
  low: absolutePressure(62.1379),
  high: absolutePressure(4980.0589),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 78.7802,
    centre: 6.8623872,
    halfWidth: 4.9181136,
    coefficients: [
      7.5028531, -1.7322693, -0.9819103, -0.3816113, -0.194411, -0.078371, -0.030757, -0.0256158,
      -0.013742,
    ],
  },
  temperature: {
    limit: 8.586237,
    centre: 1.210175,
    halfWidth: 0.91634604,
    coefficients: [
      17.503945, -78.749329, -8.400924, 12.441698, -2.073751, -1.282966, 0.545223, 0.090582,
      -0.074501,
    ],
  },
  low: absolutePressure(58.2162),
  high: absolutePressure(4914.2784),
};

export const r454b: Fluid = {
  id: 'R-454B',
  composition: 'R-32/1234yf 68.9/31.1',
  safetyGroup: 'A2L',
  safetyGroupSource: SAFETY_READ,
  range: { low: temperature(-60), high: temperature(75) },
  critical: { temperature: temperature(78.28021), pressure: absolutePressure(5304.109) },
  triple: null,
  molarMass: 62.61363,
  gwp: { value: 466.3, source: WARMING_BLEND_EU },
  glide: temperatureDifference(1.21),
  liquidDensity25: 986.2265,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.017,
    temperature: temperatureDifference(0.0019),
  },
  source: MULTI_FLUID,
  chartsDiffer: {
    against: BOILING_POINTS,
    pressurePercent: 2.33,
    temperature: differenceF(0.85),
    fromMemory: true,
    readAt: null,
  },
};
