/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  differenceF,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';
import { MULTI_FLUID, SAFETY_FROM_MEMORY, WARMING_BLEND } from '../sources.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 71.8441,
    centre: 6.7832945,
    halfWidth: 4.6990441,
    coefficients: [
      7.4350815, -1.6877405, -0.9383967, -0.351876, -0.1703381, -0.0685734, -0.0279275, -0.0184042,
      -0.0091318,
    ],
  },
  temperature: {
    limit: 8.507242,
    centre: 1.1933096,
    halfWidth: 0.89105183,
    coefficients: [13.107501, -73.584096, -8.016635, 10.763171, -1.68978, -0.929147, 0.34893],
  },
  low: absolutePressure(64.2443),
  high: absolutePressure(4518.2567),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 71.8441,
    centre: 6.7832945,
    halfWidth: 4.6990441,
    coefficients: [
      7.4319426, -1.688553, -0.9372022, -0.3523521, -0.1711453, -0.0686775, -0.0277489, -0.0186006,
      -0.009356,
    ],
  },
  temperature: {
    limit: 8.507242,
    centre: 1.1948313,
    halfWidth: 0.89058209,
    coefficients: [
      13.09438, -73.617322, -7.998261, 10.820959, -1.702359, -0.966234, 0.356309, 0.012631,
    ],
  },
  low: absolutePressure(63.9631),
  high: absolutePressure(4512.8015),
};

export const r410a: Fluid = {
  id: 'R-410A',
  composition: 'R-32/125 50/50',
  safetyGroup: 'A1',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(67.5) },
  critical: { temperature: temperature(71.3441), pressure: absolutePressure(4901.231) },
  triple: null,
  molarMass: 72.58541,
  gwp: { value: 2087.5, source: WARMING_BLEND },
  glide: temperatureDifference(0.079),
  liquidDensity25: 1058.621,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.013,
    temperature: temperatureDifference(0.0018),
  },
  source: MULTI_FLUID,
  chartsDiffer: {
    against: "an equipment maker's printed R-410A saturation table, −22 to 104 °F",
    pressurePercent: 1.35,
    temperature: differenceF(0.59),
    fromMemory: false,
    readAt: 'www.easymanua.ls/fujitsu/auxb12ga-h/manual?p=223',
  },
};
