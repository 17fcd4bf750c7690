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
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(75) },
  critical: { temperature: temperature(78.105), pressure: absolutePressure(5782.645) },
  triple: { temperature: temperature(-136.81), pressure: absolutePressure(0.04799989) },
  molarMass: 52.024,
  gwp: { value: 675, source: WARMING_CFR },
  glide: temperatureDifference(0.0),
  liquidDensity25: 961.0081,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.015,
    temperature: temperatureDifference(0.000082),
  },
  source: PURE_FLUID,
  chartsDiffer: null,
};
