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
    limit: 71.8441,
    centre: 6.7832945,
    halfWidth: 4.6990441,
    coefficients: [
      7.435134, -1.687599, -0.9403161, -0.3530979, -0.1598821, -0.0660773, -0.0456024, -0.0198017,
    ],
  },
  temperature: {
    limit: 8.507242,
    centre: 1.1933096,
    halfWidth: 0.89105183,
    coefficients: [13.10753, -73.583979, -8.017317, 10.762689, -1.687695, -0.928914, 0.347585],
  },
  low: absolutePressure(64.2484),
  high: absolutePressure(4518.3823),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 71.8441,
    centre: 6.7832945,
    halfWidth: 4.6990441,
    coefficients: [
      7.4319965, -1.6884071, -0.9391672, -0.3536093, -0.1604393, -0.0661095, -0.0458525, -0.0200385,
    ],
  },
  temperature: {
    limit: 8.507242,
    centre: 1.1948313,
    halfWidth: 0.89058209,
    coefficients: [13.094384, -73.616095, -7.998493, 10.810529, -1.701447, -0.944705, 0.355684],
  },
  low: absolutePressure(63.9673),
  high: absolutePressure(4512.9301),
};

export const r410a: Fluid = {
  id: 'R-410A',
  composition: 'R-32/125 50/50',
  safetyGroup: 'A1',
  safetyGroupSource: 'ANSI/ASHRAE Standard 34, from memory: verify',
  range: { low: temperature(-60), high: temperature(67.5) },
  critical: { temperature: temperature(71.3441), pressure: absolutePressure(4901.231) },
  glide: temperatureDifference(0.079),
  liquidDensity25: 1058.621,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.0086,
    temperature: temperatureDifference(0.00083),
  },
  source:
    'HEOS multi-fluid mixture, CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)',
  chartsDiffer: {
    against: "an equipment maker's printed R-410A saturation table, −22 to 104 °F",
    pressurePercent: 1.35,
    temperature: differenceF(0.59),
    fromMemory: false,
  },
};
