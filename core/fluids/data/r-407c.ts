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
    limit: 86.6379,
    centre: 7.0717983,
    halfWidth: 5.0376154,
    coefficients: [
      7.383589, -1.7774134, -1.0452254, -0.4181716, -0.2135714, -0.087536, -0.0373209, -0.0286344,
      -0.0149818,
    ],
  },
  temperature: {
    limit: 8.45232,
    centre: 1.2134607,
    halfWidth: 0.95255183,
    coefficients: [21.264031, -83.454034, -7.982031, 13.479739, -2.627103, -1.27536, 0.595345],
  },
  low: absolutePressure(42.9799),
  high: absolutePressure(4377.5519),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 86.6379,
    centre: 7.0717983,
    halfWidth: 5.0376154,
    coefficients: [
      7.2510731, -1.9072859, -1.112973, -0.4640446, -0.2406936, -0.1152383, -0.0479273, -0.0162233,
      -0.0160774, -0.0095624,
    ],
  },
  temperature: {
    limit: 8.45232,
    centre: 1.2958369,
    halfWidth: 0.96939548,
    coefficients: [
      19.760711, -83.642379, -5.892642, 13.546428, -3.313034, -1.174483, 0.777688, 0.020408,
      -0.082734,
    ],
  },
  low: absolutePressure(27.6893),
  high: absolutePressure(4212.2672),
};

export const r407c: Fluid = {
  id: 'R-407C',
  composition: 'R-32/125/134a 23/25/52',
  safetyGroup: 'A1',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(82.5) },
  critical: { temperature: temperature(86.13788), pressure: absolutePressure(4639.305) },
  triple: null,
  molarMass: 86.20364,
  gwp: { value: 1773.8, source: WARMING_BLEND },
  glide: temperatureDifference(6.998),
  liquidDensity25: 1137.496,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.016,
    temperature: temperatureDifference(0.0014),
  },
  source: MULTI_FLUID,
  chartsDiffer: {
    against:
      "a supplier's 11.7 bar at 77 °F; an equipment maker's printed liquid table, 40 to 120 °F, is up to 1.08 °F off",
    pressurePercent: 1.74,
    temperature: differenceF(1.14),
    fromMemory: false,
    readAt: 'mutkar.com/en/r407c-2; office.manualsonline.com/manuals/mfg/liebert/itr.html?p=63',
  },
};
