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
    limit: 105.8792,
    centre: 7.358835,
    halfWidth: 5.5205749,
    coefficients: [
      7.1131096, -2.0143456, -1.2680627, -0.5685335, -0.3161386, -0.1333278, -0.0615408, -0.0614033,
      -0.0320745,
    ],
  },
  temperature: {
    limit: 8.277989,
    centre: 1.3129082,
    halfWidth: 1.0578264,
    coefficients: [
      30.706158, -97.31482, -5.529445, 17.705204, -5.11524, -1.61362, 1.328645, -0.026864,
      -0.140124,
    ],
  },
  low: absolutePressure(14.2631),
  high: absolutePressure(3688.2347),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 105.8792,
    centre: 7.358835,
    halfWidth: 5.5205749,
    coefficients: [
      7.0985595, -2.0263049, -1.2709663, -0.5704178, -0.3173228, -0.1339324, -0.0618054, -0.0623173,
      -0.0325749,
    ],
  },
  temperature: {
    limit: 8.277989,
    centre: 1.3204686,
    halfWidth: 1.0575874,
    coefficients: [
      30.625172, -97.308033, -5.438836, 17.684329, -5.108209, -1.610159, 1.314453, -0.016257,
      -0.142574,
    ],
  },
  low: absolutePressure(13.7758),
  high: absolutePressure(3673.3617),
};

export const r450a: Fluid = {
  id: 'R-450A',
  composition: 'R-134a/1234ze(E) 42/58',
  safetyGroup: 'A1',
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-60), high: temperature(102.5) },
  critical: { temperature: temperature(105.3792), pressure: absolutePressure(3897.103) },
  glide: temperatureDifference(0.585),
  liquidDensity25: 1179.744,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.008,
    temperature: temperatureDifference(0.00033),
  },
  source:
    'HEOS multi-fluid mixture, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: {
    against: 'boiling points listed for the blend in ANSI/ASHRAE Standard 34, to 0.1 °C',
    pressurePercent: 1.1,
    temperature: differenceF(0.44),
    fromMemory: true,
  },
};
