/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  differenceF,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';
import { BOILING_POINTS, MULTI_FLUID, SAFETY_READ, WARMING_BLEND_EU } from '../sources.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 95.9107,
    centre: 7.1666143,
    halfWidth: 5.3198063,
    coefficients: [
      7.088092, -1.9114443, -1.1692592, -0.4948715, -0.2658453, -0.1292198, -0.0541728, -0.0195854,
      -0.0201083, -0.0115748,
    ],
  },
  temperature: {
    limit: 8.213877,
    centre: 1.2712195,
    halfWidth: 1.0095422,
    coefficients: [
      26.153647, -90.513691, -6.913833, 15.763809, -3.891748, -1.546046, 1.029783, 0.045882,
      -0.127884,
    ],
  },
  low: absolutePressure(20.3282),
  high: absolutePressure(3447.4917),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 95.9107,
    centre: 7.1666143,
    halfWidth: 5.3198063,
    coefficients: [
      7.088032, -1.91083, -1.1700964, -0.4982894, -0.2704721, -0.1334517, -0.0554508, -0.019512,
      -0.0220561, -0.0131356,
    ],
  },
  temperature: {
    limit: 8.213877,
    centre: 1.273328,
    halfWidth: 1.0112176,
    coefficients: [
      25.965193, -90.672772, -6.669761, 15.965913, -3.971437, -1.598822, 1.060907, 0.055636,
      -0.13494,
    ],
  },
  low: absolutePressure(19.9801),
  high: absolutePressure(3446.7096),
};

export const r513a: Fluid = {
  id: 'R-513A',
  composition: 'R-1234yf/134a 56/44',
  safetyGroup: 'A1',
  safetyGroupSource: SAFETY_READ,
  range: { low: temperature(-60), high: temperature(92.5) },
  critical: { temperature: temperature(95.41068), pressure: absolutePressure(3655.094) },
  triple: null,
  molarMass: 108.4262,
  gwp: { value: 631.4, source: WARMING_BLEND_EU },
  glide: temperatureDifference(0.104),
  liquidDensity25: 1134.302,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.011,
    temperature: temperatureDifference(0.00019),
  },
  source: MULTI_FLUID,
  chartsDiffer: {
    against: BOILING_POINTS,
    pressurePercent: 1.11,
    temperature: differenceF(0.44),
    fromMemory: true,
    readAt: null,
  },
};
