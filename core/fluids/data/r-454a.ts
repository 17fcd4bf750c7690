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
    limit: 84.0643,
    centre: 7.0093449,
    halfWidth: 4.993334,
    coefficients: [
      7.456659, -1.7003846, -1.0030799, -0.3938377, -0.2009727, -0.0822354, -0.0330817, -0.0259679,
      -0.0141695,
    ],
  },
  temperature: {
    limit: 8.469554,
    centre: 1.1809913,
    halfWidth: 0.93245213,
    coefficients: [20.005514, -81.730431, -8.170024, 12.915202, -2.335877, -1.184867, 0.500464],
  },
  low: absolutePressure(54.7583),
  high: absolutePressure(4481.8035),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 84.0643,
    centre: 7.0093449,
    halfWidth: 4.993334,
    coefficients: [
      7.2981887, -1.821568, -1.0338047, -0.4218194, -0.2188462, -0.0908385, -0.0365206, -0.0307949,
      -0.0160183,
    ],
  },
  temperature: {
    limit: 8.469554,
    centre: 1.2671641,
    halfWidth: 0.93319939,
    coefficients: [
      19.070393, -81.972628, -6.880757, 13.182476, -2.772637, -1.314192, 0.691271, 0.104315,
      -0.108286,
    ],
  },
  low: absolutePressure(37.6366),
  high: absolutePressure(4264.242),
};

export const r454a: Fluid = {
  id: 'R-454A',
  composition: 'R-32/1234yf 35/65',
  safetyGroup: 'A2L',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(80) },
  critical: { temperature: temperature(83.56428), pressure: absolutePressure(4719.952) },
  triple: null,
  molarMass: 80.46775,
  gwp: { value: 238.8, source: WARMING_BLEND_EU },
  glide: temperatureDifference(6.689),
  liquidDensity25: 1023.695,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.019,
    temperature: temperatureDifference(0.00099),
  },
  source: MULTI_FLUID,
  chartsDiffer: {
    against: BOILING_POINTS,
    pressurePercent: 1.47,
    temperature: differenceF(0.55),
    fromMemory: true,
    readAt: null,
  },
};
