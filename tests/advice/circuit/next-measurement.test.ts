import { describe, expect, it } from 'vitest';
import { CIRCUITS } from '../../../core/advice/circuit/circuits.ts';
import type { Circuit } from '../../../core/advice/circuit/circuit.ts';
import {
  singlesOf,
  type Hypothesis,
  type Observation,
} from '../../../core/advice/circuit/explanations.ts';
import {
  measurementsOf,
  supplyOf,
  type Measurement,
} from '../../../core/advice/circuit/measurement.ts';
import { nextMeasurement } from '../../../core/advice/circuit/next-measurement.ts';
import { named } from './fault-sets.ts';

const likeliest = ({ shows }: Hypothesis, measurement: Measurement) =>
  shows(measurement)[0] ?? 'none';

/** How many measurements the suggestions take, for one fault, until they end. */
function stepsFor(circuit: Circuit, hidden: Hypothesis): number {
  const read: Observation[] = [];
  for (;;) {
    const next = nextMeasurement(circuit, read);
    if (next === null) return read.length;
    read.push({ measurement: next, outcome: likeliest(hidden, next) });
    expect(read.length).toBeLessThan(15);
  }
}

/**
 * The fewest on average over the faults still possible, by trying every measurement at every turn: what it most
 * likely shows under each fault, and every fault that may show the same. Written apart from the planner, on
 * lists and not on sets of bits.
 */
function fewest(circuit: Circuit): number {
  const seen = new Map<string, number>();
  const measurements = measurementsOf(circuit);
  const onAverage = (left: readonly Hypothesis[]): number => {
    const key = left.map(({ faults }) => named(faults)).join();
    const known = seen.get(key);
    if (known !== undefined) return known;
    const costs = measurements.flatMap((measurement) => {
      const rest = left.map((hidden) =>
        left.filter(({ shows }) => shows(measurement).includes(likeliest(hidden, measurement))),
      );
      if (rest.some(({ length }) => length === left.length)) return [];
      return [1 + rest.map(onAverage).reduce((sum, each) => sum + each, 0) / left.length];
    });
    const best = costs.length === 0 ? 0 : Math.min(...costs);
    seen.set(key, best);
    return best;
  };
  return onAverage(singlesOf(circuit));
}

describe.each(CIRCUITS)('the suggested measurements in $id', (circuit) => {
  it('find each single fault in the fewest on average, or within one of it', () => {
    const all = singlesOf(circuit);
    const ours = all.map((hidden) => stepsFor(circuit, hidden)).reduce((sum, n) => sum + n, 0);
    const best = fewest(circuit);
    expect(ours / all.length).toBeGreaterThanOrEqual(best - 1e-9);
    expect(ours / all.length - best).toBeLessThanOrEqual(1);
  });

  it('begin with the supply, and never ask for the same twice', () => {
    expect(nextMeasurement(circuit, [])).toEqual(supplyOf(circuit));
    for (const hidden of singlesOf(circuit)) {
      const asked = new Set<string>();
      const read: Observation[] = [];
      for (;;) {
        const next = nextMeasurement(circuit, read);
        if (next === null) break;
        expect(asked.has(JSON.stringify(next))).toBe(false);
        asked.add(JSON.stringify(next));
        read.push({ measurement: next, outcome: likeliest(hidden, next) });
      }
    }
  });
});
