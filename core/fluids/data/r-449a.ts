/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import {
  absolutePressure,
  differenceF,
  temperature,
  temperatureDifference,
} from '../../units/quantity-values.ts';
import type { Fluid, SaturationLine } from '../fluid.ts';
import { MULTI_FLUID, SAFETY_FROM_MEMORY, WARMING_BLEND_EU } from '../sources.ts';

const bubble: SaturationLine = {
  logPressure: {
    limit: 82.9853,
    centre: 6.8427241,
    halfWidth: 5.114922,
    coefficients: [
      7.4341952, -1.7217327, -1.0376174, -0.4107968, -0.2131374, -0.0877149, -0.0366662, -0.0288295,
      -0.0160403,
    ],
  },
  temperature: {
    limit: 8.425497,
    centre: 1.1726902,
    halfWidth: 0.95894298,
    coefficients: [21.322471, -82.616568, -9.47468, 14.041798, -2.455996, -1.425014, 0.608361],
  },
  low: absolutePressure(48.5046),
  high: absolutePressure(4358.1713),
};
const dew: SaturationLine = {
  logPressure: {
    limit: 82.9853,
    centre: 6.8427241,
    halfWidth: 5.114922,
    coefficients: [
      7.3105733, -1.8321508, -1.0818018, -0.442692, -0.2326812, -0.1131591, -0.0471263, -0.0139294,
      -0.0157767, -0.0107012,
    ],
  },
  temperature: {
    limit: 8.425497,
    centre: 1.2484918,
    halfWidth: 0.96621963,
    coefficients: [
      20.076778, -82.835603, -7.775432, 14.210661, -2.968561, -1.458554, 0.761291, 0.083483,
      -0.094076,
    ],
  },
  low: absolutePressure(33.8031),
  high: absolutePressure(4212.5347),
};

export const r449a: Fluid = {
  id: 'R-449A',
  composition: 'R-32/125/1234yf/134a 24.3/24.7/25.3/25.7',
  safetyGroup: 'A1',
  safetyGroupSource: SAFETY_FROM_MEMORY,
  range: { low: temperature(-60), high: temperature(80) },
  critical: { temperature: temperature(82.4853), pressure: absolutePressure(4516.518) },
  triple: null,
  molarMass: 87.2129,
  gwp: { value: 1397, source: WARMING_BLEND_EU },
  glide: temperatureDifference(6.049),
  liquidDensity25: 1097.357,
  lines: { bubble, dew },
  maxError: {
    pressurePercent: 0.016,
    temperature: temperatureDifference(0.0017),
  },
  source: MULTI_FLUID,
  chartsDiffer: {
    against: "the refrigerant maker's mixing parameters in NIST REFPROP, −40 to 32 °F",
    pressurePercent: 0.84,
    temperature: differenceF(0.31),
    fromMemory: false,
    readAt: 'github.com/CoolProp/CoolProp/issues/921',
  },
};
