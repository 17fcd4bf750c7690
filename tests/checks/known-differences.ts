import type { SaturationPair } from './published-saturation.ts';

export interface KnownDifference {
  readonly pair: SaturationPair;
  /** Our temperature at the printed pressure less the printed temperature. */
  readonly offK: number;
}

const ROWS: readonly (readonly [...SaturationPair, number])[] = [
  // Refrigerant, line, °C and kPa absolute as printed, K that we are above it.
  ['R-134a', 'bubble', -37.07, 60, 0.14],
  ['R-134a', 'bubble', -18.8, 140, 0.04],
  ['R-407C', 'bubble', 4.444, 645.33, -0.45],
  ['R-407C', 'bubble', 21.111, 1055.3, -0.5],
  ['R-407C', 'bubble', 48.889, 2130.3, -0.6],
  ['R-407C', 'bubble', -43.8, 101.33, 0.17],
  ['R-410A', 'bubble', -30, 273.52, 0.29],
  ['R-410A', 'bubble', -10, 578.93, 0.22],
  ['R-410A', 'dew', -30, 273.02, 0.33],
  ['R-448A', 'dew', -40, 101.35, 0.34],
  ['R-290', 'bubble', -50, 70.398, -0.05],
  ['R-290', 'bubble', -17.778, 270.25, 0.59],
  ['R-290', 'bubble', 21.111, 859.75, -0.06],
  ['R-32', 'bubble', -50, 110.6, 0.08],
  ['R-32', 'bubble', 10, 1108.1, 0.04],
  ['R-134a', 'bubble', 8.86, 400, 0.07],
  ['R-134a', 'bubble', 15.68, 500, 0.05],
  ['R-134a', 'bubble', 46.36, 1200, -0.05],
  ['R-600a', 'bubble', 50, 677.8, -0.42],
  ['R-1270', 'bubble', -47.69, 101.325, 0.07],
  ['R-1234yf', 'bubble', 21.1, 606.7, -0.24],
  ['R-1234yf', 'bubble', 54.4, 1420.3, -0.72],
  ['R-404A', 'bubble', -46.6, 101.33, 0.38],
  ['R-407A', 'bubble', -45.2, 101.33, 0.19],
  ['R-410A', 'bubble', -51.6, 101.33, 0.16],
  ['R-422D', 'bubble', -43.2, 101.33, -0.19],
  ['R-448A', 'bubble', -45.9, 101.33, -0.28],
  ['R-454A', 'bubble', -48.4, 101.33, 0.31],
  ['R-454C', 'bubble', -46, 101.33, 0.63],
  ['R-455A', 'bubble', -51.6, 101.33, -0.55],
  ['R-507A', 'bubble', -47.1, 101.33, 0.36],
  ['R-404A', 'dew', -45.8, 101.33, 0.33],
  ['R-452A', 'dew', -43.2, 101.33, 0.31],
  ['R-454B', 'dew', -50, 101.33, 0.47],
  ['R-454C', 'dew', -37.8, 101.33, 0.62],
  ['R-455A', 'dew', -39.1, 101.33, 0.5],
  ['R-507A', 'dew', -47.1, 101.33, 0.36],
  ['R-600a', 'bubble', -40, 28.89, 0.13],
  ['R-1270', 'bubble', -40, 142.47, 0.17],
  ['R-1270', 'bubble', 0, 593.04, 0.51],
  ['R-1270', 'bubble', 40, 1662.7, 0.38],
  ['R-407C', 'bubble', 25, 1170, -0.64],
];

/**
 * Printed and remembered pairs further from the curves than the print's rounding and the equation's own uncertainty
 * allow. They stay as rows with their figure: a technician who holds the answer against that print sees this much.
 */
export const KNOWN_DIFFERENCES: readonly KnownDifference[] = ROWS.map(
  ([refrigerant, phase, tempC, kPa, offK]) => ({ pair: [refrigerant, phase, tempC, kPa], offK }),
);
