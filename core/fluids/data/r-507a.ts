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
    limit: 71.1158,
    centre: 6.6760532,
    halfWidth: 4.7745275,
    coefficients: [
      7.197197, -1.6618401, -0.9420591, -0.3562905, -0.1647657, -0.0690296, -0.0485962, -0.0216652,
    ],
  },
  temperature: {
    limit: 8.227406,
    centre: 1.1747585,
    halfWidth: 0.89757019,
    coefficients: [
      13.7026, -74.069978, -8.623589, 11.387926, -1.672762, -1.121966, 0.343864, 0.054048,
    ],
  },
  low: absolutePressure(51.0574),
  high: absolutePressure(3465.4626),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 71.1158,
    centre: 6.6760532,
    halfWidth: 4.7745275,
    coefficients: [
      7.1963308, -1.6616934, -0.9412449, -0.355989, -0.1644587, -0.0688314, -0.049089, -0.0221109,
    ],
  },
  temperature: {
    limit: 8.227406,
    centre: 1.1751588,
    halfWidth: 0.89717929,
    coefficients: [
      13.697949, -74.07872, -8.629382, 11.396762, -1.65968, -1.123087, 0.341245, 0.055077,
    ],
  },
  low: absolutePressure(51.0555),
  high: absolutePressure(3463.9433),
};

export const r507a: Fluid = {
  id: 'R-507A',
  composition: 'R-125/143a 50/50',
  safetyGroup: 'A1',
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-60), high: temperature(67.5) },
  critical: { temperature: temperature(70.61579), pressure: absolutePressure(3704.879) },
  glide: temperatureDifference(0.001),
  liquidDensity25: 1047.9,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.0099,
    temperature: temperatureDifference(0.0003),
  },
  source:
    'HEOS multi-fluid mixture, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: {
    against: 'boiling points listed for the blend in ANSI/ASHRAE Standard 34, to 0.1 °C',
    pressurePercent: 1.72,
    temperature: differenceF(0.65),
    fromMemory: true,
  },
};
