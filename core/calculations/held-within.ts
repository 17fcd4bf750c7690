import { duration } from '../units/quantity-values.ts';
import type { Duration } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

/** A value in whatever unit the band has too. */
export interface TimedValue {
  readonly minutes: number;
  readonly value: number;
}

export interface HeldWithin {
  readonly minutes: Duration;
  /** How many of the last readings lie in the band. */
  readonly readings: number;
  /** Highest less lowest of them. */
  readonly spread: number;
}

/** Since when a series has not left a band: by its own last readings, wherever the band then lies. */
export function heldWithin({
  readings,
  within,
}: {
  readonly readings: readonly TimedValue[];
  readonly within: number;
}): Calculated<HeldWithin> {
  const last = readings.at(-1);
  if (last === undefined) return refused('tooFewReadings');
  const isInOrder = readings.every(
    ({ minutes }, at) => minutes >= (readings[at - 1]?.minutes ?? -Infinity),
  );
  if (!isInOrder || !(within > 0)) return refused('readingsDoNotFit');
  let [low, high, count] = [last.value, last.value, 0];
  for (const { value } of readings.toReversed()) {
    const [lower, higher] = [Math.min(low, value), Math.max(high, value)];
    if (higher - lower > within + SAME) break;
    [low, high, count] = [lower, higher, count + 1];
  }
  const first = readings.at(-count) ?? last;
  return known({
    minutes: duration(last.minutes - first.minutes),
    readings: count,
    spread: high - low,
  });
}

/** 74.2 less 72.2 is 2.0000000000000142. */
const SAME = 1e-9;

export const heldWithinFormula: Formula = {
  id: 'heldWithin',
  name: 'how long a reading has held',
  equation: 'held = t(n) − t(k), k the first of the last readings with max − min ≤ band',
  symbols: symbols(
    ['t(n)', 'time of the last reading', 'min'],
    ['t(k)', 'time of the first reading that still lies in the band', 'min'],
    ['band', 'how far apart they may lie', 'psi'],
  ),
  range: 'between readings nobody looks: three readings or more before it is called steady',
  source: 'the definition',
  standing: 'computed',
  example: {
    inputs: { readings: '0min:190psi,4min:176psi,8min:175psi,14min:174psi', within: '2psi' },
    gives: { value: 10, unit: 'min' },
    within: 0.001,
    source: '176 to 174 psi lie within 2 psi, 190 does not: 14 less 4 min by hand',
    standing: 'computed',
  },
};
