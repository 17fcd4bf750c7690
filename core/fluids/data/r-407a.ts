/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  differenceF,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';
import { BOILING_POINTS, MULTI_FLUID, SAFETY_FROM_MEMORY, WARMING_BLEND } from '../sources.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 82.7469,
    centre: 6.8025254,
    halfWidth: 5.145148,
    coefficients: [
      7.4292648, -1.7377019, -1.0505854, -0.417392, -0.2181629, -0.0894762, -0.037901, -0.0299956,
      -0.0167456,
    ],
  },
  temperature: {
    limit: 8.424915,
    centre: 1.1770876,
    halfWidth: 0.96618939,
    coefficients: [21.538011, -82.798137, -9.701573, 14.31001, -2.488991, -1.511561, 0.652753],
  },
  low: absolutePressure(46.1226),
  high: absolutePressure(4360.9082),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 82.7469,
    centre: 6.8025254,
    halfWidth: 5.145148,
    coefficients: [
      7.3130119, -1.8564484, -1.1125301, -0.4592601, -0.2424676, -0.1188454, -0.0499104, -0.0142408,
      -0.0166324, -0.0114911,
    ],
  },
  temperature: {
    limit: 8.424915,
    centre: 1.2525717,
    halfWidth: 0.98209452,
    coefficients: [
      20.153947, -83.067219, -7.717416, 14.458603, -3.15167, -1.452425, 0.803721, 0.061036,
      -0.088574,
    ],
  },
  low: absolutePressure(30.9132),
  high: absolutePressure(4237.6206),
};

export const r407a: Fluid = {
  id: 'R-407A',
  composition: 'R-32/125/134a 20/40/40',
  safetyGroup: 'A1',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(80) },
  critical: { temperature: temperature(82.24687), pressure: absolutePressure(4513.894) },
  triple: null,
  molarMass: 90.11073,
  gwp: { value: 2107, source: WARMING_BLEND },
  glide: temperatureDifference(6.414),
  liquidDensity25: 1145.107,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.019,
    temperature: temperatureDifference(0.0018),
  },
  source: MULTI_FLUID,
  chartsDiffer: {
    against: BOILING_POINTS,
    pressurePercent: 0.93,
    temperature: differenceF(0.35),
    fromMemory: true,
    readAt: null,
  },
};
