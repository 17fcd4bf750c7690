/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  differenceF,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 86.6379,
    centre: 7.0717983,
    halfWidth: 5.0376154,
    coefficients: [
      7.383591, -1.7773723, -1.0453444, -0.4186112, -0.2126862, -0.0864809, -0.0391612, -0.0292868,
      -0.0139108,
    ],
  },
  temperature: {
    limit: 8.45232,
    centre: 1.2134607,
    halfWidth: 0.95255183,
    coefficients: [21.264035, -83.454031, -7.982175, 13.479743, -2.626617, -1.275398, 0.595004],
  },
  low: absolutePressure(42.98),
  high: absolutePressure(4377.5287),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 86.6379,
    centre: 7.0717983,
    halfWidth: 5.0376154,
    coefficients: [
      7.2510622, -1.9070325, -1.1125802, -0.467824, -0.2428038, -0.1005134, -0.0444361, -0.0369643,
      -0.0178298,
    ],
  },
  temperature: {
    limit: 8.45232,
    centre: 1.2958369,
    halfWidth: 0.96939548,
    coefficients: [
      19.760696, -83.642548, -5.891842, 13.548185, -3.31837, -1.17864, 0.787992, 0.022941,
      -0.088459,
    ],
  },
  low: absolutePressure(27.6901),
  high: absolutePressure(4212.2259),
};

export const r407c: Fluid = {
  id: 'R-407C',
  composition: 'R-32/125/134a 23/25/52',
  safetyGroup: 'A1',
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-60), high: temperature(82.5) },
  critical: { temperature: temperature(86.13788), pressure: absolutePressure(4639.305) },
  glide: temperatureDifference(6.998),
  liquidDensity25: 1137.496,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.0044,
    temperature: temperatureDifference(0.00067),
  },
  source:
    'HEOS multi-fluid mixture, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: {
    against: "an equipment maker's printed R-407C liquid table, 40 to 120 °F",
    pressurePercent: 1.43,
    temperature: differenceF(1.08),
    fromMemory: false,
  },
};
