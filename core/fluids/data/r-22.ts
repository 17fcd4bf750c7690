/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';
import { PURE_FLUID, SAFETY_FROM_MEMORY, WARMING_AR4 } from '../sources.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 96.645,
    centre: 7.2758587,
    halfWidth: 5.2399314,
    coefficients: [
      7.424727, -1.8170307, -1.0860363, -0.4535155, -0.2387197, -0.1122327, -0.0462924, -0.0178597,
      -0.0183362, -0.0102254,
    ],
  },
  temperature: {
    limit: 8.525191,
    centre: 1.2473996,
    halfWidth: 0.96635725,
    coefficients: [
      25.68572, -89.814967, -6.663169, 14.920976, -3.629643, -1.382998, 0.996939, 0.02689,
      -0.139913,
    ],
  },
  low: absolutePressure(37.5051),
  high: absolutePressure(4657.371),
};
const dew = bubble;

export const r22: Fluid = {
  id: 'R-22',
  composition: 'R-22',
  safetyGroup: 'A1',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(92.5) },
  critical: { temperature: temperature(96.145), pressure: absolutePressure(4990) },
  triple: { temperature: temperature(-157.42), pressure: absolutePressure(0.0003794747) },
  molarMass: 86.468,
  gwp: { value: 1810, source: WARMING_AR4 },
  glide: temperatureDifference(0.0),
  liquidDensity25: 1190.654,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.0071,
    temperature: temperatureDifference(0.00076),
  },
  source: PURE_FLUID,
  chartsDiffer: null,
};
