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
    limit: 101.562,
    centre: 7.3630723,
    halfWidth: 5.3476319,
    coefficients: [
      7.1165549, -2.0129449, -1.2368032, -0.5409779, -0.2922721, -0.144328, -0.0620381, -0.0232411,
      -0.0237388, -0.0134805,
    ],
  },
  temperature: {
    limit: 8.31876,
    centre: 1.3213909,
    halfWidth: 1.0348856,
    coefficients: [
      27.449578, -93.456989, -5.103714, 16.096613, -4.642678, -1.346068, 1.171841, -0.043663,
      -0.125083,
    ],
  },
  low: absolutePressure(15.9065),
  high: absolutePressure(3776.9614),
};
const dew = bubble;

export const r134a: Fluid = {
  id: 'R-134a',
  composition: 'R-134a',
  safetyGroup: 'A1',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(97.5) },
  critical: { temperature: temperature(101.062), pressure: absolutePressure(4059.276) },
  triple: { temperature: temperature(-103.3), pressure: absolutePressure(0.3895638) },
  molarMass: 102.032,
  gwp: { value: 1430, source: WARMING_CFR },
  glide: temperatureDifference(0.0),
  liquidDensity25: 1206.712,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.0097,
    temperature: temperatureDifference(0.0013),
  },
  source: PURE_FLUID,
  chartsDiffer: null,
};
