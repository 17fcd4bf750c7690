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
    limit: 113.761,
    centre: 7.5605867,
    halfWidth: 5.6212569,
    coefficients: [
      7.2328089, -2.0421004, -1.2828772, -0.5718557, -0.3188679, -0.1653675, -0.0689741, -0.023899,
      -0.0314638, -0.0192182,
    ],
  },
  temperature: {
    limit: 8.425548,
    centre: 1.3301645,
    halfWidth: 1.0609395,
    coefficients: [
      34.252687, -101.6986, -5.017306, 18.308025, -5.445412, -1.577307, 1.346611, -0.032171,
      -0.13661,
    ],
  },
  low: absolutePressure(15.002),
  high: absolutePressure(4243.1734),
};
const dew = bubble;

export const r152a: Fluid = {
  id: 'R-152a',
  composition: 'R-152a',
  safetyGroup: 'A2',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(110) },
  critical: { temperature: temperature(113.261), pressure: absolutePressure(4516.75) },
  triple: { temperature: temperature(-118.59), pressure: absolutePressure(0.06413865) },
  molarMass: 66.051,
  gwp: { value: 124, source: WARMING_CFR },
  glide: temperatureDifference(0.0),
  liquidDensity25: 899.4655,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.015,
    temperature: temperatureDifference(0.00037),
  },
  source: PURE_FLUID,
  chartsDiffer: null,
};
