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
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-60), high: temperature(75) },
  critical: { temperature: temperature(78.1145), pressure: absolutePressure(3798.75) },
  triple: null,
  molarMass: 109.9351,
  gwp: {
    value: 2729.1,
    source:
      '40 CFR 98 Table A-1 (IPCC AR4), read in a copy from before its amendment of 25 April 2024 at govregs.com/regulations/title40_chapterI-i22_part98_subpartA_appendix; EU 517/2014 Annexes II and IV, from memory: verify; weighed by mass',
  },
  glide: temperatureDifference(5.043),
  liquidDensity25: 1143.516,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.015,
    temperature: temperatureDifference(0.0016),
  },
  source:
    'HEOS multi-fluid mixture, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: {
    against: 'boiling points listed for the blend in ANSI/ASHRAE Standard 34, to 0.1 °C',
    pressurePercent: 0.93,
    temperature: differenceF(0.35),
    fromMemory: true,
    readAt: null,
  },
};
