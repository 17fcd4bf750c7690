/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';
import { PURE_FLUID, SAFETY_FROM_MEMORY, WARMING_CFR } from '../sources.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 31.4782,
    centre: 5.7295775,
    halfWidth: 3.5997419,
    coefficients: [
      8.120366, -1.1022497, -0.5065505, -0.1390835, -0.0528328, -0.0160928, -0.0074404, -0.0029491,
    ],
  },
  temperature: {
    limit: 8.916163,
    centre: 0.9696635,
    halfWidth: 0.64990439,
    coefficients: [-6.653312, -45.390466, -7.575458, 4.436272, -0.128482, -0.295891, 0.049212],
  },
  low: absolutePressure(540.8636),
  high: absolutePressure(6727.2209),
};
const dew = bubble;

export const r744: Fluid = {
  id: 'R-744',
  composition: 'R-744',
  safetyGroup: 'A1',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-55.558), high: temperature(26.942) },
  critical: { temperature: temperature(30.9782), pressure: absolutePressure(7377.298) },
  triple: { temperature: temperature(-56.558), pressure: absolutePressure(517.9643) },
  molarMass: 44.0098,
  gwp: { value: 1, source: WARMING_CFR },
  glide: null,
  liquidDensity25: null,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.0052,
    temperature: temperatureDifference(0.0015),
  },
  source: PURE_FLUID,
  chartsDiffer: null,
};
