/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';
import { PURE_FLUID, SAFETY_FROM_MEMORY, WARMING_EU } from '../sources.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 95.2,
    centre: 7.0505484,
    halfWidth: 5.4073808,
    coefficients: [
      7.0629096, -1.8684764, -1.155421, -0.4854369, -0.2666604, -0.1324799, -0.0545803, -0.0185184,
      -0.0214945, -0.0130355,
    ],
  },
  temperature: {
    limit: 8.136924,
    centre: 1.2444953,
    halfWidth: 1.0116356,
    coefficients: [
      27.230825, -91.151728, -8.15291, 16.657604, -3.722674, -1.88101, 1.034285, 0.125138,
      -0.139537,
    ],
  },
  low: absolutePressure(21.048),
  high: absolutePressure(3237.9656),
};
const dew = bubble;

export const r1234yf: Fluid = {
  id: 'R-1234yf',
  composition: 'R-1234yf',
  safetyGroup: 'A2L',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(92.5) },
  critical: { temperature: temperature(94.7), pressure: absolutePressure(3384.374) },
  triple: { temperature: temperature(-151.55), pressure: absolutePressure(0.0004127) },
  molarMass: 114.0416,
  gwp: { value: 4, source: WARMING_EU },
  glide: temperatureDifference(0.0),
  liquidDensity25: 1091.739,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.012,
    temperature: temperatureDifference(0.0011),
  },
  source: PURE_FLUID,
  chartsDiffer: null,
};
