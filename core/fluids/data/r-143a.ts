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
    limit: 73.207,
    centre: 6.6661718,
    halfWidth: 4.8753619,
    coefficients: [
      7.2370559, -1.6518163, -0.944591, -0.3568309, -0.1789938, -0.071802, -0.0287004, -0.0215081,
      -0.0112711,
    ],
  },
  temperature: {
    limit: 8.242658,
    centre: 1.1629507,
    halfWidth: 0.90372015,
    coefficients: [
      15.698383, -75.800083, -9.381228, 11.957662, -1.69256, -1.21307, 0.375588, 0.055586,
    ],
  },
  low: absolutePressure(53.0663),
  high: absolutePressure(3552.6778),
};
const dew = bubble;

export const r143a: Fluid = {
  id: 'R-143a',
  composition: 'R-143a',
  safetyGroup: 'A2L',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(70) },
  critical: { temperature: temperature(72.707), pressure: absolutePressure(3761.818) },
  triple: { temperature: temperature(-111.81), pressure: absolutePressure(1.074945) },
  molarMass: 84.041,
  gwp: { value: 4470, source: WARMING_CFR },
  glide: temperatureDifference(0.0),
  liquidDensity25: 930.223,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.014,
    temperature: temperatureDifference(0.002),
  },
  source: PURE_FLUID,
  chartsDiffer: null,
};
