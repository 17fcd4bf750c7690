/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';
import { MULTI_FLUID, SAFETY_FROM_MEMORY, WARMING_BLEND } from '../sources.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 83.1037,
    centre: 6.862164,
    halfWidth: 5.1004319,
    coefficients: [
      7.4628798, -1.7417939, -1.0414796, -0.4120421, -0.2130089, -0.0872149, -0.0372223, -0.0288434,
      -0.0156401,
    ],
  },
  temperature: {
    limit: 8.475737,
    centre: 1.1833811,
    halfWidth: 0.95907673,
    coefficients: [21.197976, -82.512416, -9.378772, 13.937838, -2.431227, -1.425147, 0.612217],
  },
  low: absolutePressure(48.6978),
  high: absolutePressure(4561.5749),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 83.1037,
    centre: 6.862164,
    halfWidth: 5.1004319,
    coefficients: [
      7.3451277, -1.8588804, -1.1011623, -0.4529953, -0.2373465, -0.1152612, -0.0484728, -0.014565,
      -0.0161325, -0.0107356,
    ],
  },
  temperature: {
    limit: 8.475737,
    centre: 1.2590397,
    halfWidth: 0.97393255,
    coefficients: [
      19.797459, -82.772493, -7.41512, 14.101571, -3.069876, -1.380068, 0.771381, 0.050975,
      -0.083845,
    ],
  },
  low: absolutePressure(32.772),
  high: absolutePressure(4422.4588),
};

export const r407f: Fluid = {
  id: 'R-407F',
  composition: 'R-32/125/134a 30/30/40',
  safetyGroup: 'A1',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(80) },
  critical: { temperature: temperature(82.6037), pressure: absolutePressure(4749.228) },
  triple: null,
  molarMass: 82.05827,
  gwp: { value: 1824.5, source: WARMING_BLEND },
  glide: temperatureDifference(6.397),
  liquidDensity25: 1116.928,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.017,
    temperature: temperatureDifference(0.0016),
  },
  source: MULTI_FLUID,
  chartsDiffer: null,
};
