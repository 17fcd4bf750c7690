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
    limit: 109.863,
    centre: 7.6191856,
    halfWidth: 5.4139645,
    coefficients: [
      6.9508377, -2.0776936, -1.2775537, -0.5700087, -0.3140241, -0.1615648, -0.0676797, -0.0239412,
      -0.0286194, -0.0168892,
    ],
  },
  temperature: {
    limit: 8.208329,
    centre: 1.3580204,
    halfWidth: 1.0493597,
    coefficients: [
      30.136279, -97.819546, -3.560253, 16.684387, -5.154508, -1.322865, 1.185704, -0.042004,
      -0.107237,
    ],
  },
  low: absolutePressure(11.1658),
  high: absolutePressure(3337.7704),
};
const dew = bubble;

export const r1234zee: Fluid = {
  id: 'R-1234zeE',
  composition: 'R-1234ze(E)',
  safetyGroup: 'A2L',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(105) },
  critical: { temperature: temperature(109.363), pressure: absolutePressure(3634.871) },
  triple: { temperature: temperature(-104.53), pressure: absolutePressure(0.2186549) },
  molarMass: 114.0416,
  gwp: { value: 7, source: WARMING_EU },
  glide: temperatureDifference(0.0),
  liquidDensity25: 1163.09,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.012,
    temperature: temperatureDifference(0.00036),
  },
  source: PURE_FLUID,
  chartsDiffer: null,
};
