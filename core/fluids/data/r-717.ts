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
    limit: 132.91,
    centre: 7.7975383,
    halfWidth: 6.0916661,
    coefficients: [
      8.1536007, -2.1559676, -1.4287703, -0.6712407, -0.3849684, -0.2077023, -0.1244368, -0.0487702,
      -0.0090311, -0.0222113, -0.0168387,
    ],
  },
  temperature: {
    limit: 9.348152,
    centre: 1.3662358,
    halfWidth: 1.1366618,
    coefficients: [
      44.859995, -115.684557, -3.872562, 22.780776, -7.804125, -2.00498, 2.028119, -0.091445,
      -0.211507,
    ],
  },
  low: absolutePressure(21.8382),
  high: absolutePressure(10888.3371),
};
const dew = bubble;

export const r717: Fluid = {
  id: 'R-717',
  composition: 'R-717',
  safetyGroup: 'B2L',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(130) },
  critical: { temperature: temperature(132.41), pressure: absolutePressure(11363.39) },
  triple: { temperature: temperature(-77.655), pressure: absolutePressure(6.055814) },
  molarMass: 17.03052,
  gwp: { value: 0, source: WARMING_EU },
  glide: temperatureDifference(0.0),
  liquidDensity25: 602.96,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.011,
    temperature: temperatureDifference(0.002),
  },
  source: PURE_FLUID,
  chartsDiffer: null,
};
