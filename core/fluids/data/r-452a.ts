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
    limit: 75.599,
    centre: 6.702548,
    halfWidth: 4.9421503,
    coefficients: [
      7.3225622, -1.6705069, -0.9886974, -0.3832013, -0.1938689, -0.0793405, -0.0342882, -0.0240071,
      -0.0119934,
    ],
  },
  temperature: {
    limit: 8.299986,
    centre: 1.1553504,
    halfWidth: 0.93351293,
    coefficients: [17.154845, -77.789806, -9.312355, 12.800069, -2.096287, -1.260141, 0.503754],
  },
  low: absolutePressure(51.247),
  high: absolutePressure(3830.5747),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 75.599,
    centre: 6.702548,
    halfWidth: 4.9421503,
    coefficients: [
      7.2226814, -1.7482054, -1.0060515, -0.395437, -0.2021172, -0.0840262, -0.0351855, -0.0259682,
      -0.0124484,
    ],
  },
  temperature: {
    limit: 8.299986,
    centre: 1.211785,
    halfWidth: 0.92988955,
    coefficients: [
      16.527265, -77.727617, -8.571271, 12.69674, -2.119426, -1.300782, 0.413627, 0.0817,
    ],
  },
  low: absolutePressure(40.9864),
  high: absolutePressure(3716.4181),
};

export const r452a: Fluid = {
  id: 'R-452A',
  composition: 'R-32/125/1234yf 11/59/30',
  safetyGroup: 'A1',
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-60), high: temperature(72.5) },
  critical: { temperature: temperature(75.09897), pressure: absolutePressure(3983.777) },
  glide: temperatureDifference(4.046),
  liquidDensity25: 1123.509,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.0035,
    temperature: temperatureDifference(0.00043),
  },
  source:
    'HEOS multi-fluid mixture, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: {
    against: 'boiling points listed for the blend in ANSI/ASHRAE Standard 34, to 0.1 °C',
    pressurePercent: 1.49,
    temperature: differenceF(0.56),
    fromMemory: true,
  },
};
