import { describe, expect, it } from 'vitest';
import { CIRCUITS } from '../../../core/advice/circuit/circuits.ts';
import { expectations } from '../../../core/advice/circuit/expected.ts';
import { measurementKey, measurementsOf } from '../../../core/advice/circuit/measurement.ts';
import { doubles, named, SINGLE_PHASE, singles } from './fault-sets.ts';
import { measuredOutcomes } from './numeric-circuit.ts';

describe.each(SINGLE_PHASE)('$id against ohms and volts', (circuit) => {
  it('expects exactly what the circuit can show, under none, every one and every two faults', () => {
    const wrong = [[], ...singles(circuit), ...doubles(circuit)].flatMap((faults) => {
      const ours = expectations(circuit, faults);
      const theirs = measuredOutcomes(circuit, faults);
      return measurementsOf(circuit).flatMap((measurement) => {
        const [one, other] = [ours, theirs].map((of) => [...of(measurement)].sort().join(' or '));
        if (one === other) return [];
        return [`${named(faults)}: ${measurementKey(measurement)} ${one}, but ${other}`];
      });
    });
    expect(wrong).toEqual([]);
  });
});

describe.each(CIRCUITS)('the data of $id', ({ parts, across, source }) => {
  const of = (kind: 'load' | 'switch') => parts.filter((part) => part.kind === kind);

  it('joins every device to both legs, each path through one load', () => {
    const ends = (start: string, kind: 'from' | 'to'): readonly string[] => {
      const on = of('switch').filter((part) => part.kind === 'switch' && part[kind] === start);
      const next = kind === 'from' ? 'to' : 'from';
      return [
        start,
        ...on.flatMap((part) => (part.kind === 'switch' ? ends(part[next], kind) : [])),
      ];
    };
    for (const load of of('load')) {
      if (load.kind !== 'load') continue;
      expect(ends(load.from, 'to')).toContain(across[0]);
      expect(ends(load.to, 'from')).toContain(across[1]);
    }
  });

  it('names every part once, and where it comes from', () => {
    expect(new Set(parts.map(({ id }) => id)).size).toBe(parts.length);
    expect(source).toContain('wiring diagram comes first');
  });
});
