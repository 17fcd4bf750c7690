/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  differenceF,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';
import { BOILING_POINTS, MULTI_FLUID, SAFETY_READ, WARMING_BLEND } from '../sources.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 72.6202,
    centre: 6.5673938,
    halfWidth: 4.9486906,
    coefficients: [
      7.251198, -1.6644004, -0.9728556, -0.3707727, -0.1904417, -0.0782918, -0.030535, -0.0232846,
      -0.0131009,
    ],
  },
  temperature: {
    limit: 8.235473,
    centre: 1.1568704,
    halfWidth: 0.92350811,
    coefficients: [
      16.259326, -76.330848, -9.909023, 12.615094, -1.755208, -1.347595, 0.405014, 0.063419,
    ],
  },
  low: absolutePressure(49.7751),
  high: absolutePressure(3572.4764),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 72.6202,
    centre: 6.5673938,
    halfWidth: 4.9486906,
    coefficients: [
      7.2413066, -1.6761254, -0.9814, -0.3752604, -0.1921179, -0.0902767, -0.0372337, -0.0097999,
      -0.0113208, -0.007951,
    ],
  },
  temperature: {
    limit: 8.235473,
    centre: 1.1650939,
    halfWidth: 0.92671286,
    coefficients: [
      16.02397, -76.440248, -9.607663, 12.724316, -1.826458, -1.354564, 0.410291, 0.070581,
    ],
  },
  low: absolutePressure(47.4568),
  high: absolutePressure(3564.0315),
};

export const r404a: Fluid = {
  id: 'R-404A',
  composition: 'R-125/143a/134a 44/52/4',
  safetyGroup: 'A1',
  safetyGroupSource: SAFETY_READ,
  range: { low: temperature(-60), high: temperature(70) },
  critical: { temperature: temperature(72.12019), pressure: absolutePressure(3734.888) },
  triple: null,
  molarMass: 97.6038,
  gwp: { value: 3921.6, source: WARMING_BLEND },
  glide: temperatureDifference(0.751),
  liquidDensity25: 1044.054,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.019,
    temperature: temperatureDifference(0.0017),
  },
  source: MULTI_FLUID,
  chartsDiffer: {
    against: BOILING_POINTS,
    pressurePercent: 1.8,
    temperature: differenceF(0.68),
    fromMemory: true,
    readAt: null,
  },
};
