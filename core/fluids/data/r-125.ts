/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';
import { PURE_FLUID, SAFETY_FROM_MEMORY, WARMING_CFR } from '../sources.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 66.5273,
    centre: 6.6276244,
    halfWidth: 4.620811,
    coefficients: [
      7.1646514, -1.6393542, -0.9108203, -0.3375445, -0.1641682, -0.0681784, -0.0259654, -0.0156271,
      -0.0081209,
    ],
  },
  temperature: {
    limit: 8.203753,
    centre: 1.1736574,
    halfWidth: 0.87790162,
    coefficients: [10.485994, -70.663518, -7.999671, 10.286704, -1.514095, -0.873609, 0.277565],
  },
  low: absolutePressure(54.3189),
  high: absolutePressure(3348.5437),
};
const dew = bubble;

export const r125: Fluid = {
  id: 'R-125',
  composition: 'R-125',
  safetyGroup: 'A1',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(62.5) },
  critical: { temperature: temperature(66.02728), pressure: absolutePressure(3618.276) },
  triple: { temperature: temperature(-100.63), pressure: absolutePressure(2.914046) },
  molarMass: 120.0214,
  gwp: { value: 3500, source: WARMING_CFR },
  glide: temperatureDifference(0.0),
  liquidDensity25: 1189.353,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.012,
    temperature: temperatureDifference(0.0017),
  },
  source: PURE_FLUID,
  chartsDiffer: null,
};
