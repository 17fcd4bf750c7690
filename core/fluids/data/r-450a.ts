/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  differenceF,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';
import { BOILING_POINTS, MULTI_FLUID, SAFETY_FROM_MEMORY, WARMING_BLEND_EU } from '../sources.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 105.8792,
    centre: 7.358835,
    halfWidth: 5.5205749,
    coefficients: [
      7.1131297, -2.014796, -1.2688043, -0.5617683, -0.3121112, -0.1598531, -0.0682579, -0.0238302,
      -0.0286852, -0.0174042,
    ],
  },
  temperature: {
    limit: 8.277989,
    centre: 1.3129082,
    halfWidth: 1.0578264,
    coefficients: [
      30.706174, -97.314735, -5.530048, 17.704181, -5.111534, -1.61111, 1.321772, -0.028412,
      -0.136408,
    ],
  },
  low: absolutePressure(14.2622),
  high: absolutePressure(3688.3073),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 105.8792,
    centre: 7.358835,
    halfWidth: 5.5205749,
    coefficients: [
      7.0985805, -2.0267702, -1.2717365, -0.5634296, -0.31315, -0.1613322, -0.0687553, -0.0235072,
      -0.029071, -0.0179762,
    ],
  },
  temperature: {
    limit: 8.277989,
    centre: 1.3204686,
    halfWidth: 1.0575874,
    coefficients: [
      30.625189, -97.307852, -5.439642, 17.682508, -5.103013, -1.605932, 1.304584, -0.018803,
      -0.137162,
    ],
  },
  low: absolutePressure(13.7749),
  high: absolutePressure(3673.4374),
};

export const r450a: Fluid = {
  id: 'R-450A',
  composition: 'R-134a/1234ze(E) 42/58',
  safetyGroup: 'A1',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(102.5) },
  critical: { temperature: temperature(105.3792), pressure: absolutePressure(3897.103) },
  triple: null,
  molarMass: 108.6694,
  gwp: { value: 604.7, source: WARMING_BLEND_EU },
  glide: temperatureDifference(0.585),
  liquidDensity25: 1179.744,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.014,
    temperature: temperatureDifference(0.0012),
  },
  source: MULTI_FLUID,
  chartsDiffer: {
    against: BOILING_POINTS,
    pressurePercent: 1.1,
    temperature: differenceF(0.44),
    fromMemory: true,
    readAt: null,
  },
};
