import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CIRCUITS } from '../../../core/advice/circuit/circuits.ts';
import {
  loadsOf,
  switchesOf,
  type Circuit,
  type SuspectId,
} from '../../../core/advice/circuit/circuit.ts';
import { expectations } from '../../../core/advice/circuit/expected.ts';
import { explanations, type Observation } from '../../../core/advice/circuit/explanations.ts';
import { measurementsOf, type Outcome } from '../../../core/advice/circuit/measurement.ts';
import { doubles, named, SINGLE_PHASE, singles } from './fault-sets.ts';
import { measuredOutcomes } from './numeric-circuit.ts';
import { ohmsOutcomes } from './numeric-ohms.ts';

/** What a load pulls in rests open with power off: its ohms say nothing of it. */
const readable = (circuit: Circuit) => [
  ...loadsOf(circuit),
  ...switchesOf(circuit).filter(({ operatedBy }) => operatedBy === undefined),
];
const ohmsOf = (of: SuspectId) => ({ kind: 'ohms', of }) as const;

describe.each(SINGLE_PHASE)('ohms with power off in $id', (circuit) => {
  const hidden = [[], ...singles(circuit), ...doubles(circuit)];

  it('are expected to show all that a meter can, under none, every one and every two faults', () => {
    const missing = hidden.flatMap((faults) => {
      const ours = expectations(circuit, faults);
      return readable(circuit).flatMap((device) => {
        const mine = ours(ohmsOf(device.id));
        const lost = [...ohmsOutcomes(circuit, faults, device)].filter(
          (one) => !mine.includes(one),
        );
        return lost.map((one) => `${named(faults)}: ${device.id} may show ${one}`);
      });
    });
    expect(missing).toEqual([]);
  });

  it('are expected to show nothing that a meter cannot, but for the way round an open device', () => {
    const extra = hidden.flatMap((faults) => {
      const ours = expectations(circuit, faults);
      return readable(circuit).flatMap((device) => {
        const theirs = ohmsOutcomes(circuit, faults, device);
        const isOpen = faults.some(({ of, mode }) => of === device.id && mode === 'open');
        return ours(ohmsOf(device.id))
          .filter((one) => !theirs.has(one) && !(isOpen && one === 'part'))
          .map((one) => `${named(faults)}: ${device.id} cannot show ${one}`);
      });
    });
    expect(extra).toEqual([]);
  });

  it('read with volts, leave the faults that are there among the explanations', () => {
    const reading = fc.constantFrom(...hidden.slice(1)).chain((faults) => {
      const volts = measuredOutcomes(circuit, faults);
      const seen = [
        ...measurementsOf(circuit).map((measurement) => ({
          measurement,
          shows: [...volts(measurement)],
        })),
        ...readable(circuit).map((device) => ({
          measurement: ohmsOf(device.id),
          shows: [...ohmsOutcomes(circuit, faults, device)],
        })),
      ];
      const some = fc
        .subarray(seen, { minLength: 1, maxLength: 8 })
        .chain((taken) =>
          fc.tuple(
            ...taken.map(({ measurement, shows }) =>
              fc.constantFrom(...shows).map((outcome): Observation => ({ measurement, outcome })),
            ),
          ),
        );
      return some.map((read) => ({ faults, read }));
    });
    fc.assert(
      fc.property(reading, ({ faults, read }) => {
        expect(explanations(circuit, read).map(named)).toContain(named(faults));
      }),
      { numRuns: 40 },
    );
  });
});

describe.each(CIRCUITS)('one more reading in $id', (circuit) => {
  const measurements = [
    ...measurementsOf(circuit),
    ...readable(circuit).map(({ id }) => ohmsOf(id)),
  ];
  const observation = fc
    .tuple(fc.constantFrom(...measurements), fc.constantFrom<Outcome[]>('none', 'part', 'all'))
    .map(([measurement, outcome]): Observation => ({ measurement, outcome }));

  it('of volts or ohms never widens what may be wrong', () => {
    fc.assert(
      fc.property(fc.array(observation, { maxLength: 6 }), observation, (read, more) => {
        const before = explanations(circuit, read).map(named);
        const after = explanations(circuit, [...read, more]).map(named);
        expect(before).toEqual(expect.arrayContaining(after));
      }),
      { numRuns: 100 },
    );
  });
});
