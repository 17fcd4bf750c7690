/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  differenceF,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';
import { MULTI_FLUID, SAFETY_READ, WARMING_BLEND_EU } from '../sources.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 83.2909,
    centre: 6.8922507,
    halfWidth: 5.078167,
    coefficients: [
      7.4382294, -1.7253606, -1.0315233, -0.4080765, -0.2099496, -0.0862794, -0.036588, -0.0280281,
      -0.0151275,
    ],
  },
  temperature: {
    limit: 8.444937,
    centre: 1.1804445,
    halfWidth: 0.95208048,
    coefficients: [20.874891, -82.335579, -9.012785, 13.691836, -2.454011, -1.355946, 0.592082],
  },
  low: absolutePressure(49.269),
  high: absolutePressure(4415.0993),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 83.2909,
    centre: 6.8922507,
    halfWidth: 5.078167,
    coefficients: [
      7.3049328, -1.8446928, -1.0802367, -0.4429417, -0.2311005, -0.1121419, -0.046572, -0.0138187,
      -0.0153013, -0.0102169,
    ],
  },
  temperature: {
    limit: 8.444937,
    centre: 1.2604731,
    halfWidth: 0.96146994,
    coefficients: [
      19.637888, -82.594244, -7.290931, 13.885629, -2.99561, -1.356092, 0.729954, 0.064697, -0.0813,
    ],
  },
  low: absolutePressure(33.3784),
  high: absolutePressure(4253.6568),
};

export const r448a: Fluid = {
  id: 'R-448A',
  composition: 'R-32/125/1234yf/134a/1234ze(E) 26/26/20/21/7',
  safetyGroup: 'A1',
  safetyGroupSource: SAFETY_READ,
  range: { low: temperature(-60), high: temperature(80) },
  critical: { temperature: temperature(82.7909), pressure: absolutePressure(4605.181) },
  triple: null,
  molarMass: 86.28345,
  gwp: { value: 1387.1, source: WARMING_BLEND_EU },
  glide: temperatureDifference(6.515),
  liquidDensity25: 1097.462,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.016,
    temperature: temperatureDifference(0.0015),
  },
  source: MULTI_FLUID,
  chartsDiffer: {
    against: 'a transcribed R-448A dew chart, −40 to 140 °F',
    pressurePercent: 1.65,
    temperature: differenceF(0.61),
    fromMemory: false,
    readAt: 'app.unpkg.com/coolprop-node@1.0.20/files/src/refData.js',
  },
};
