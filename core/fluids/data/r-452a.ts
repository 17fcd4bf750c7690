/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  differenceF,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';
import { BOILING_POINTS, MULTI_FLUID, SAFETY_FROM_MEMORY, WARMING_BLEND_EU } from '../sources.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 75.599,
    centre: 6.702548,
    halfWidth: 4.9421503,
    coefficients: [
      7.3225604, -1.6705472, -0.9885931, -0.3827581, -0.194687, -0.0804277, -0.0325289, -0.0233254,
      -0.0130368,
    ],
  },
  temperature: {
    limit: 8.299986,
    centre: 1.1553504,
    halfWidth: 0.93351293,
    coefficients: [17.154875, -77.78966, -9.313032, 12.799354, -2.09404, -1.259649, 0.502217],
  },
  low: absolutePressure(51.2469),
  high: absolutePressure(3830.5858),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 75.599,
    centre: 6.702548,
    halfWidth: 4.9421503,
    coefficients: [
      7.2226914, -1.7484049, -1.0064304, -0.3924046, -0.2000037, -0.0960464, -0.03879, -0.0087947,
      -0.0105972, -0.0080004,
    ],
  },
  temperature: {
    limit: 8.299986,
    centre: 1.211785,
    halfWidth: 0.92988955,
    coefficients: [
      16.527236, -77.727401, -8.570467, 12.694268, -2.122062, -1.294678, 0.415441, 0.077925,
    ],
  },
  low: absolutePressure(40.9855),
  high: absolutePressure(3716.4386),
};

export const r452a: Fluid = {
  id: 'R-452A',
  composition: 'R-32/125/1234yf 11/59/30',
  safetyGroup: 'A1',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(72.5) },
  critical: { temperature: temperature(75.09897), pressure: absolutePressure(3983.777) },
  triple: null,
  molarMass: 103.5109,
  gwp: { value: 2140.4, source: WARMING_BLEND_EU },
  glide: temperatureDifference(4.046),
  liquidDensity25: 1123.509,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.015,
    temperature: temperatureDifference(0.0015),
  },
  source: MULTI_FLUID,
  chartsDiffer: {
    against: BOILING_POINTS,
    pressurePercent: 1.49,
    temperature: differenceF(0.56),
    fromMemory: true,
    readAt: null,
  },
};
