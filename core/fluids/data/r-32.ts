/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 78.605,
    centre: 6.8358731,
    halfWidth: 4.9371894,
    coefficients: [
      7.6123118, -1.7290782, -0.990098, -0.3806138, -0.1928761, -0.0781265, -0.0315307, -0.0239574,
      -0.0123183,
    ],
  },
  temperature: {
    limit: 8.672616,
    centre: 1.1977828,
    halfWidth: 0.92328272,
    coefficients: [
      17.913672, -78.738516, -8.888487, 12.451159, -1.986731, -1.292215, 0.526025, 0.079563,
      -0.064482,
    ],
  },
  low: absolutePressure(64.9561),
  high: absolutePressure(5416.8222),
};
const dew = bubble;

export const r32: Fluid = {
  id: 'R-32',
  composition: 'R-32',
  safetyGroup: 'A2L',
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-60), high: temperature(75) },
  critical: { temperature: temperature(78.105), pressure: absolutePressure(5782.645) },
  triple: { temperature: temperature(-136.81), pressure: absolutePressure(0.04799989) },
  molarMass: 52.024,
  gwp: {
    value: 675,
    source:
      '40 CFR 98 Table A-1 (IPCC AR4), read in a copy from before its amendment of 25 April 2024 at govregs.com/regulations/title40_chapterI-i22_part98_subpartA_appendix',
  },
  glide: temperatureDifference(0.0),
  liquidDensity25: 961.0081,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.015,
    temperature: temperatureDifference(0.000082),
  },
  source:
    'HEOS pure fluid, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: null,
};
