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
    limit: 95.9107,
    centre: 7.1666143,
    halfWidth: 5.3198063,
    coefficients: [
      7.0880783, -1.9111466, -1.1687533, -0.4993539, -0.2686, -0.1116115, -0.049563, -0.0445584,
      -0.0224417,
    ],
  },
  temperature: {
    limit: 8.213877,
    centre: 1.2712195,
    halfWidth: 1.0095422,
    coefficients: [
      26.15365, -90.51369, -6.913944, 15.76378, -3.891213, -1.545979, 1.028874, 0.045854, -0.127387,
    ],
  },
  low: absolutePressure(20.329),
  high: absolutePressure(3447.4521),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 95.9107,
    centre: 7.1666143,
    halfWidth: 5.3198063,
    coefficients: [
      7.0880164, -1.9104917, -1.1695233, -0.5033792, -0.2735949, -0.1134642, -0.0502234, -0.0478547,
      -0.0247023,
    ],
  },
  temperature: {
    limit: 8.213877,
    centre: 1.273328,
    halfWidth: 1.0112176,
    coefficients: [
      25.965194, -90.672767, -6.669815, 15.965816, -3.971078, -1.598614, 1.060197, 0.055531,
      -0.134526,
    ],
  },
  low: absolutePressure(19.981),
  high: absolutePressure(3446.6648),
};

export const r513a: Fluid = {
  id: 'R-513A',
  composition: 'R-1234yf/134a 56/44',
  safetyGroup: 'A1',
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-60), high: temperature(92.5) },
  critical: { temperature: temperature(95.41068), pressure: absolutePressure(3655.094) },
  glide: temperatureDifference(0.104),
  liquidDensity25: 1134.302,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.0059,
    temperature: temperatureDifference(0.00013),
  },
  source:
    'HEOS multi-fluid mixture, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: {
    against: 'boiling points listed for the blend in ANSI/ASHRAE Standard 34, to 0.1 °C',
    pressurePercent: 1.11,
    temperature: differenceF(0.44),
    fromMemory: true,
  },
};
