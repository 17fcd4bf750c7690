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
    limit: 88.1434,
    centre: 6.9721905,
    halfWidth: 5.1992269,
    coefficients: [
      7.4286701, -1.6984888, -1.0411527, -0.4177697, -0.2207781, -0.0915757, -0.0361444, -0.0307475,
      -0.0184356,
    ],
  },
  temperature: {
    limit: 8.392624,
    centre: 1.1652302,
    halfWidth: 0.96058058,
    coefficients: [
      23.616723, -85.621229, -9.032604, 14.61436, -2.78465, -1.59464, 0.813411, 0.210973, -0.210217,
      -0.109455, 0.097343,
    ],
  },
  low: absolutePressure(48.1142),
  high: absolutePressure(4233.3165),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 88.1434,
    centre: 6.9721905,
    halfWidth: 5.1992269,
    coefficients: [
      7.2460753, -1.8512938, -1.0858932, -0.4499224, -0.2385326, -0.1153589, -0.0476833, -0.0166726,
      -0.0163125, -0.0101392,
    ],
  },
  temperature: {
    limit: 8.392624,
    centre: 1.2669261,
    halfWidth: 0.96429829,
    coefficients: [
      22.508928, -85.839402, -7.470368, 14.759658, -3.248371, -1.568034, 0.861297, 0.147735,
      -0.151511,
    ],
  },
  low: absolutePressure(30.3946),
  high: absolutePressure(4028.0619),
};

export const r454c: Fluid = {
  id: 'R-454C',
  composition: 'R-32/1234yf 21.5/78.5',
  safetyGroup: 'A2L',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(85) },
  critical: { temperature: temperature(87.64336), pressure: absolutePressure(4370.46) },
  triple: null,
  molarMass: 90.77572,
  gwp: { value: 148.3, source: WARMING_BLEND_EU },
  glide: temperatureDifference(8.188),
  liquidDensity25: 1045.029,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.017,
    temperature: temperatureDifference(0.002),
  },
  source: MULTI_FLUID,
  chartsDiffer: {
    against: BOILING_POINTS,
    pressurePercent: 2.93,
    temperature: differenceF(1.13),
    fromMemory: true,
    readAt: null,
  },
};
