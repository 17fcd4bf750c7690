import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CIRCUITS } from '../../../core/advice/circuit/circuits.ts';
import { switchesOf, type Circuit, type Fault } from '../../../core/advice/circuit/circuit.ts';
import {
  explanations,
  isPassing,
  suspicion,
  type Observation,
} from '../../../core/advice/circuit/explanations.ts';
import {
  measurementKey,
  measurementsOf,
  supplyOf,
  type Outcome,
} from '../../../core/advice/circuit/measurement.ts';
import { doubles, named, SINGLE_PHASE, singles } from './fault-sets.ts';
import { measuredOutcomes } from './numeric-circuit.ts';

const outcome = fc.constantFrom<Outcome[]>('none', 'part', 'all');

/** Readings of a circuit with these faults, as ohms and volts give them: each measurement is one of what it may show. */
function readings(
  circuit: Circuit,
  faults: readonly Fault[],
): fc.Arbitrary<readonly Observation[]> {
  const shows = measuredOutcomes(circuit, faults);
  return fc
    .subarray([...measurementsOf(circuit)], { minLength: 1 })
    .chain((some) =>
      fc.tuple(
        ...some.map((measurement) =>
          fc
            .constantFrom(...shows(measurement))
            .map((shown): Observation => ({ measurement, outcome: shown })),
        ),
      ),
    );
}

describe.each(SINGLE_PHASE)('the explanations of readings in $id', (circuit) => {
  const hidden = [...singles(circuit), ...doubles(circuit)];
  const table = hidden.map((faults) => {
    const shows = measuredOutcomes(circuit, faults);
    const shown = measurementsOf(circuit).map((one) => [measurementKey(one), shows(one)] as const);
    return { name: named(faults), shown: new Map(shown) };
  });

  it('are exactly those of an enumeration of all single and double faults', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...hidden).chain((faults) => readings(circuit, faults)),
        (read) => {
          const possible = table.filter(({ shown }) =>
            read.every(({ measurement, outcome: one }) =>
              shown.get(measurementKey(measurement))?.has(one),
            ),
          );
          expect(explanations(circuit, read).map(named).sort()).toEqual(
            possible.map(({ name }) => name).sort(),
          );
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe.each(CIRCUITS)('the candidates in $id', (circuit) => {
  const observation = fc
    .tuple(fc.constantFrom(...measurementsOf(circuit)), outcome)
    .map(([measurement, one]): Observation => ({ measurement, outcome: one }));

  it('never grow with one more reading, and are the same for the same readings', () => {
    fc.assert(
      fc.property(fc.array(observation, { maxLength: 6 }), observation, (read, more) => {
        const before = explanations(circuit, read).map(named);
        const after = explanations(circuit, [...read, more]).map(named);
        expect(before).toEqual(expect.arrayContaining(after));
        expect(explanations(circuit, read).map(named)).toEqual(before);
      }),
      { numRuns: 150 },
    );
  });

  it('never lose an open switch to its own zero: nothing is closed by that alone', () => {
    const supply: Observation = { measurement: supplyOf(circuit), outcome: 'all' };
    const switches = switchesOf(circuit).filter(({ isWire }) => isWire !== true);
    for (const part of switches) {
      const zero: Observation = { measurement: { kind: 'across', of: part.id }, outcome: 'none' };
      expect(isPassing(circuit, part, [supply, zero])).toBe(false);
      expect(isPassing(circuit, part, [zero])).toBe(false);
    }
  });

  it('hold a single fault wherever one explains the readings', () => {
    fc.assert(
      fc.property(fc.array(observation, { maxLength: 5 }), (read) => {
        const found = suspicion(circuit, read);
        const sizes = explanations(circuit, read).map(({ length }) => length);
        if (sizes.includes(1)) expect(found).toMatchObject({ kind: 'faults', together: false });
        else expect(found).not.toMatchObject({ together: false });
      }),
      { numRuns: 150 },
    );
  });
});
