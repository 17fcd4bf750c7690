import type { Circuit } from './circuit.ts';
import { singlesOf, type Hypothesis } from './explanations.ts';
import { kept } from './kept.ts';
import { measurementsOf, type Measurement, type Outcome } from './measurement.ts';

/** A set of single faults, one bit each. */
type Faults = number;

/** One measurement by its outcomes: the faults that most likely show each, and all that may. */
interface Sieve {
  readonly measurement: Measurement;
  readonly outcomes: readonly { readonly likely: Faults; readonly possible: Faults }[];
}

export interface Search {
  readonly bitOf: (one: Hypothesis) => Faults;
  /** The measurement to begin with, for the fewest in all; null where none tells these faults apart. */
  readonly firstOf: (
    left: Faults,
    among: (measurement: Measurement) => boolean,
  ) => Measurement | null;
  /** How many measurements it takes on average until nothing more can be told apart. */
  readonly stepsFor: (left: Faults) => number;
}

/**
 * The best of all decision trees over the single faults of a circuit, all equally likely. Each set of faults
 * left over is searched once; a measurement that could leave all of them is passed over.
 */
export const searchOf = kept((circuit: Circuit): Search => {
  const singles = singlesOf(circuit);
  const sieves = measurementsOf(circuit).map((measurement) => sieveOf(measurement, singles));
  const known = new Map<Faults, number>();
  const stepsFor = (left: Faults): number => {
    const before = known.get(left);
    if (before !== undefined) return before;
    const least = Math.min(...sieves.map((sieve) => stepsWith(sieve, left)));
    const steps = Number.isFinite(least) ? least : 0;
    known.set(left, steps);
    return steps;
  };
  const stepsWith = ({ outcomes }: Sieve, left: Faults): number => {
    const met = outcomes.filter(({ likely }) => (likely & left) !== 0);
    if (met.some(({ possible }) => (possible & left) === left)) return Number.POSITIVE_INFINITY;
    const further = met.map(
      ({ likely, possible }) => countOf(likely & left) * stepsFor(possible & left),
    );
    return 1 + further.reduce((sum, each) => sum + each, 0) / countOf(left);
  };
  return {
    bitOf: (one) => 1 << singles.indexOf(one),
    stepsFor,
    firstOf: (left, among) => {
      const steps = sieves
        .filter(({ measurement }) => among(measurement))
        .map((sieve) => ({ sieve, steps: stepsWith(sieve, left) }));
      const least = Math.min(...steps.map((each) => each.steps));
      if (!Number.isFinite(least)) return null;
      return steps.find((each) => each.steps === least)?.sieve.measurement ?? null;
    },
  };
});

const OUTCOMES: readonly Outcome[] = ['none', 'part', 'all'];

function sieveOf(measurement: Measurement, singles: readonly Hypothesis[]): Sieve {
  const shown = singles.map(({ shows }) => shows(measurement));
  const bits = (is: (index: number) => boolean): Faults =>
    shown.reduce((faults, _outcomes, index) => (is(index) ? faults | (1 << index) : faults), 0);
  return {
    measurement,
    outcomes: OUTCOMES.map((outcome) => ({
      likely: bits((index) => shown[index]?.[0] === outcome),
      possible: bits((index) => shown[index]?.includes(outcome) ?? false),
    })),
  };
}

function countOf(faults: Faults): number {
  let count = 0;
  for (let rest = faults; rest !== 0; rest &= rest - 1) count += 1;
  return count;
}
