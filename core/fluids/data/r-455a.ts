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
    limit: 86.1347,
    centre: 6.9975538,
    halfWidth: 5.0910648,
    coefficients: [
      7.5207231, -1.6122344, -0.9666216, -0.3716444, -0.1901198, -0.0768786, -0.0321755, -0.0238902,
      -0.0131232,
    ],
  },
  temperature: {
    limit: 8.444226,
    centre: 1.1270479,
    halfWidth: 0.92483183,
    coefficients: [
      22.588526, -83.400274, -9.755472, 13.55082, -2.082091, -1.514522, 0.41715, 0.260059, 0.081776,
      -0.146087,
    ],
  },
  low: absolutePressure(68.995),
  high: absolutePressure(4461.9029),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 86.1347,
    centre: 6.9975538,
    halfWidth: 5.0910648,
    coefficients: [
      7.2534956, -1.8528596, -1.0602031, -0.4407529, -0.2296943, -0.0950456, -0.0411935, -0.0348275,
      -0.016257,
    ],
  },
  temperature: {
    limit: 8.444226,
    centre: 1.282984,
    halfWidth: 0.94448023,
    coefficients: [
      20.548209, -83.836536, -6.843769, 13.842279, -3.102741, -1.378903, 0.78427, 0.123093,
      -0.135973,
    ],
  },
  low: absolutePressure(32.5462),
  high: absolutePressure(4144.8974),
};

export const r455a: Fluid = {
  id: 'R-455A',
  composition: 'R-744/32/1234yf 3/21.5/75.5',
  safetyGroup: 'A2L',
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-60), high: temperature(82.5) },
  critical: { temperature: temperature(85.63473), pressure: absolutePressure(4601.905) },
  glide: temperatureDifference(13.542),
  liquidDensity25: 1032.463,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.0041,
    temperature: temperatureDifference(0.00066),
  },
  source:
    'HEOS multi-fluid mixture, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: {
    against: 'boiling points listed for the blend in ANSI/ASHRAE Standard 34, to 0.1 °C',
    pressurePercent: 2.6,
    temperature: differenceF(0.99),
    fromMemory: true,
  },
};
