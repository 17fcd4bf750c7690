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
    limit: 86.1347,
    centre: 6.9975538,
    halfWidth: 5.0910648,
    coefficients: [
      7.520722, -1.6122606, -0.9665502, -0.371361, -0.1906708, -0.0775653, -0.0310082, -0.0234633,
      -0.0138094,
    ],
  },
  temperature: {
    limit: 8.444226,
    centre: 1.1270479,
    halfWidth: 0.92483183,
    coefficients: [
      22.588308, -83.399608, -9.743618, 13.534993, -2.182392, -1.415176, 0.706277, 0.018359,
      -0.251976, 0.101413, 0.133393, -0.089987,
    ],
  },
  low: absolutePressure(68.9949),
  high: absolutePressure(4461.9163),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 86.1347,
    centre: 6.9975538,
    halfWidth: 5.0910648,
    coefficients: [
      7.2535059, -1.853088, -1.0605783, -0.437327, -0.227662, -0.1084497, -0.0445737, -0.015891,
      -0.0145542, -0.0087478,
    ],
  },
  temperature: {
    limit: 8.444226,
    centre: 1.282984,
    halfWidth: 0.94448023,
    coefficients: [
      20.548221, -83.836424, -6.844359, 13.84103, -3.098861, -1.375836, 0.776785, 0.121178,
      -0.131819,
    ],
  },
  low: absolutePressure(32.5453),
  high: absolutePressure(4144.9302),
};

export const r455a: Fluid = {
  id: 'R-455A',
  composition: 'R-744/32/1234yf 3/21.5/75.5',
  safetyGroup: 'A2L',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(82.5) },
  critical: { temperature: temperature(85.63473), pressure: absolutePressure(4601.905) },
  triple: null,
  molarMass: 87.4526,
  gwp: { value: 148.2, source: WARMING_BLEND_EU },
  glide: temperatureDifference(13.542),
  liquidDensity25: 1032.463,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.011,
    temperature: temperatureDifference(0.0012),
  },
  source: MULTI_FLUID,
  chartsDiffer: {
    against: BOILING_POINTS,
    pressurePercent: 2.6,
    temperature: differenceF(0.99),
    fromMemory: true,
    readAt: null,
  },
};
