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
    limit: 78.6145,
    centre: 6.8373249,
    halfWidth: 4.936141,
    coefficients: [
      7.2117908, -1.7184466, -0.9962106, -0.3867216, -0.1964417, -0.08227, -0.0334765, -0.0227599,
      -0.0119307,
    ],
  },
  temperature: {
    limit: 8.252427,
    centre: 1.1902117,
    halfWidth: 0.92849353,
    coefficients: [17.783474, -78.879554, -8.63294, 12.576928, -2.107504, -1.197666, 0.456885],
  },
  low: absolutePressure(43.1004),
  high: absolutePressure(3582.9058),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 78.6145,
    centre: 6.8373249,
    halfWidth: 4.936141,
    coefficients: [
      7.1391884, -1.8069427, -1.0604118, -0.4322473, -0.2247202, -0.1084956, -0.043382, -0.0119183,
      -0.0136707, -0.0090806,
    ],
  },
  temperature: {
    limit: 8.252427,
    centre: 1.2454503,
    halfWidth: 0.95093545,
    coefficients: [
      16.374862, -79.252974, -6.6326, 12.937455, -2.822812, -1.253715, 0.640286, 0.069274,
      -0.059711,
    ],
  },
  low: absolutePressure(30.8247),
  high: absolutePressure(3518.1418),
};

export const r422d: Fluid = {
  id: 'R-422D',
  composition: 'R-125/134a/600a 65.1/31.5/3.4',
  safetyGroup: 'A1',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(75) },
  critical: { temperature: temperature(78.1145), pressure: absolutePressure(3798.75) },
  triple: null,
  molarMass: 109.9351,
  gwp: { value: 2729.1, source: WARMING_BLEND_EU },
  glide: temperatureDifference(5.043),
  liquidDensity25: 1143.516,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.015,
    temperature: temperatureDifference(0.0016),
  },
  source: MULTI_FLUID,
  chartsDiffer: {
    against: BOILING_POINTS,
    pressurePercent: 0.93,
    temperature: differenceF(0.35),
    fromMemory: true,
    readAt: null,
  },
};
