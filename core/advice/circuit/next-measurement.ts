import type { Circuit } from './circuit.ts';
import { doublesOf, isFitting, singlesOf } from './explanations.ts';
import type { Hypothesis, Observation } from './explanations.ts';
import { measurementKey, measurementsOf, supplyOf, type Measurement } from './measurement.ts';
import { searchOf } from './shortest-search.ts';

/**
 * Where to measure next. The supply comes first: without it every zero means nothing. Then the measurement
 * that leaves the fewest expected further ones, every single fault that still fits being as likely as the
 * next (common practice: nobody publishes how often each control fails). Null when no measurement would tell
 * what is left apart.
 */
export function nextMeasurement(
  circuit: Circuit,
  read: readonly Observation[],
): Measurement | null {
  const done = new Set(read.map(({ measurement }) => measurementKey(measurement)));
  const isOpen = (one: Measurement): boolean => !done.has(measurementKey(one));
  const supply = supplyOf(circuit);
  if (isOpen(supply)) return supply;
  const { bitOf, firstOf } = searchOf(circuit);
  const singles = singlesOf(circuit).filter((one) => isFitting(one, read));
  if (singles.length > 0) {
    const left = singles.reduce((faults, one) => faults | bitOf(one), 0);
    return firstOf(left, isOpen);
  }
  const pairs = doublesOf(circuit).filter((one) => isFitting(one, read));
  return evenestSplit(pairs, measurementsOf(circuit).filter(isOpen));
}

/** For two faults at once: the measurement that leaves the fewest pairs on average. */
function evenestSplit(
  pairs: readonly Hypothesis[],
  open: readonly Measurement[],
): Measurement | null {
  const weighed = open.map((measurement) => ({ measurement, left: leftBy(measurement, pairs) }));
  const fewest = Math.min(...weighed.map(({ left }) => left));
  const isTelling = fewest < pairs.length ** 2;
  return isTelling ? (weighed.find(({ left }) => left === fewest)?.measurement ?? null) : null;
}

function leftBy(measurement: Measurement, pairs: readonly Hypothesis[]): number {
  const shown = pairs.map(({ shows }) => shows(measurement)[0]);
  return (['none', 'part', 'all'] as const)
    .map((outcome) => shown.filter((one) => one === outcome).length ** 2)
    .reduce((sum, each) => sum + each, 0);
}
