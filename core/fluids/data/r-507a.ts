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
    limit: 71.1158,
    centre: 6.6760532,
    halfWidth: 4.7745275,
    coefficients: [
      7.1971363, -1.6620143, -0.9398314, -0.3547824, -0.1769468, -0.0721177, -0.027954, -0.0199336,
      -0.0106804,
    ],
  },
  temperature: {
    limit: 8.227406,
    centre: 1.1747585,
    halfWidth: 0.89757019,
    coefficients: [
      13.702587, -74.069878, -8.623258, 11.386862, -1.673845, -1.119438, 0.344615, 0.052526,
    ],
  },
  low: absolutePressure(51.0535),
  high: absolutePressure(3465.3597),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 71.1158,
    centre: 6.6760532,
    halfWidth: 4.7745275,
    coefficients: [
      7.1962687, -1.6618714, -0.9389627, -0.3544481, -0.1769425, -0.071987, -0.0279329, -0.0203415,
      -0.010946,
    ],
  },
  temperature: {
    limit: 8.227406,
    centre: 1.1751588,
    halfWidth: 0.89717929,
    coefficients: [
      13.697928, -74.078588, -8.628946, 11.395479, -1.661014, -1.120107, 0.342145, 0.053293,
    ],
  },
  low: absolutePressure(51.0515),
  high: absolutePressure(3463.8384),
};

export const r507a: Fluid = {
  id: 'R-507A',
  composition: 'R-125/143a 50/50',
  safetyGroup: 'A1',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(67.5) },
  critical: { temperature: temperature(70.61579), pressure: absolutePressure(3704.879) },
  triple: null,
  molarMass: 98.85916,
  gwp: { value: 3985, source: WARMING_BLEND },
  glide: temperatureDifference(0.001),
  liquidDensity25: 1047.9,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.015,
    temperature: temperatureDifference(0.00079),
  },
  source: MULTI_FLUID,
  chartsDiffer: {
    against: BOILING_POINTS,
    pressurePercent: 1.72,
    temperature: differenceF(0.65),
    fromMemory: true,
    readAt: null,
  },
};
