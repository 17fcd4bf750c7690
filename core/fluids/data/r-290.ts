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
    limit: 97.24,
    centre: 7.3583458,
    halfWidth: 5.1811917,
    coefficients: [
      7.2929077, -1.7273157, -1.0072824, -0.414067, -0.2145584, -0.0876327, -0.0374418, -0.0331652,
      -0.0173754,
    ],
  },
  temperature: {
    limit: 8.364948,
    centre: 1.2207184,
    halfWidth: 0.92658425,
    coefficients: [
      25.635953, -89.267776, -6.927677, 14.282561, -3.161665, -1.282162, 0.795884, 0.017294,
      -0.092537,
    ],
  },
  low: absolutePressure(42.6944),
  high: absolutePressure(3938.0081),
};
const dew = bubble;

export const r290: Fluid = {
  id: 'R-290',
  composition: 'R-290',
  safetyGroup: 'A3',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(92.5) },
  critical: { temperature: temperature(96.74001), pressure: absolutePressure(4251.165) },
  triple: { temperature: temperature(-187.625), pressure: absolutePressure(1.718484e-7) },
  molarMass: 44.09562,
  gwp: { value: 3, source: WARMING_EU },
  glide: temperatureDifference(0.0),
  liquidDensity25: 492.3628,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.018,
    temperature: temperatureDifference(0.00072),
  },
  source: PURE_FLUID,
  chartsDiffer: null,
};
