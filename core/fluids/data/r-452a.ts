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
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-60), high: temperature(72.5) },
  critical: { temperature: temperature(75.09897), pressure: absolutePressure(3983.777) },
  triple: null,
  molarMass: 103.5109,
  gwp: {
    value: 2140.4,
    source:
      '40 CFR 98 Table A-1 (IPCC AR4), read in a copy from before its amendment of 25 April 2024 at govregs.com/regulations/title40_chapterI-i22_part98_subpartA_appendix; EU 517/2014 Annexes II and IV, from memory: verify; weighed by mass',
  },
  glide: temperatureDifference(4.046),
  liquidDensity25: 1123.509,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.015,
    temperature: temperatureDifference(0.0015),
  },
  source:
    'HEOS multi-fluid mixture, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: {
    against: 'boiling points listed for the blend in ANSI/ASHRAE Standard 34, to 0.1 °C',
    pressurePercent: 1.49,
    temperature: differenceF(0.56),
    fromMemory: true,
    readAt: null,
  },
};
