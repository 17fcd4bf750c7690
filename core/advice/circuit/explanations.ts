import { faultsOf, keyOf, type Circuit, type Fault, type Switch } from './circuit.ts';
import { expectations, staysClosed, type Outcomes } from './expected.ts';
import { kept } from './kept.ts';
import { measurementKey, type Measurement, type Outcome } from './measurement.ts';

/** One measurement and what it showed. */
export interface Observation {
  readonly measurement: Measurement;
  readonly outcome: Outcome;
}

/** Faults that together explain what was read. */
export type Explanation = readonly Fault[];

export interface Hypothesis {
  readonly faults: Explanation;
  readonly shows: (measurement: Measurement) => Outcomes;
}

export const singlesOf = kept((circuit: Circuit) =>
  faultsOf(circuit).map((fault) => hypothesis(circuit, [fault])),
);

export const doublesOf = kept((circuit: Circuit) => {
  const faults = faultsOf(circuit);
  return faults.flatMap((one, index) =>
    faults
      .slice(index + 1)
      .filter(({ of }) => of !== one.of)
      .map((other) => hypothesis(circuit, [one, other])),
  );
});

function hypothesis(circuit: Circuit, faults: Explanation): Hypothesis {
  let expected: ReturnType<typeof expectations> | null = null;
  const shown = new Map<string, Outcomes>();
  return {
    faults,
    shows: (measurement) => {
      const key = measurementKey(measurement);
      expected ??= expectations(circuit, faults);
      const outcomes = shown.get(key) ?? expected(measurement);
      shown.set(key, outcomes);
      return outcomes;
    },
  };
}

export const isFitting = ({ shows }: Hypothesis, read: readonly Observation[]): boolean =>
  read.every(({ measurement, outcome }) => shows(measurement).includes(outcome));

const fitting = (all: readonly Hypothesis[], read: readonly Observation[]): Explanation[] =>
  all.filter((one) => isFitting(one, read)).map(({ faults }) => faults);

export const singleFaults = (
  circuit: Circuit,
  read: readonly Observation[],
): readonly Explanation[] => fitting(singlesOf(circuit), read);

/** Every one and every two faults that can explain the readings: one more reading never adds to them. */
export const explanations = (
  circuit: Circuit,
  read: readonly Observation[],
): readonly Explanation[] => [...singleFaults(circuit, read), ...fitting(doublesOf(circuit), read)];

/** Whether a circuit without a fault would read like this. */
export const isSound = (circuit: Circuit, read: readonly Observation[]): boolean =>
  isFitting(hypothesis(circuit, []), read);

export type Suspicion =
  | { readonly kind: 'faults'; readonly faults: readonly Fault[]; readonly together: boolean }
  | { readonly kind: 'sound' }
  | { readonly kind: 'contradiction' };

/**
 * What the readings leave under suspicion: the single faults that explain them; where none does, nothing if a
 * sound circuit reads so, else every fault of the pairs that do.
 */
export function suspicion(circuit: Circuit, read: readonly Observation[]): Suspicion {
  const singles = singleFaults(circuit, read).flat();
  if (singles.length > 0) return { kind: 'faults', faults: singles, together: false };
  if (isSound(circuit, read)) return { kind: 'sound' };
  const paired = new Map(
    fitting(doublesOf(circuit), read)
      .flat()
      .map((fault) => [keyOf(fault), fault]),
  );
  if (paired.size === 0) return { kind: 'contradiction' };
  return { kind: 'faults', faults: [...paired.values()], together: true };
}

/**
 * Whether a switch is closed however the other readings are explained, by one fault, by two, or by none. What
 * was read across it does not count: a zero there is no proof, with three faults at once not even of two.
 */
export function isPassing(circuit: Circuit, part: Switch, read: readonly Observation[]): boolean {
  const others = read.filter(
    ({ measurement }) => measurement.kind !== 'across' || measurement.of !== part.id,
  );
  const every = [...explanations(circuit, others), ...(isSound(circuit, others) ? [[]] : [])];
  return every.length > 0 && every.every((faults) => staysClosed(circuit, part, faults));
}
