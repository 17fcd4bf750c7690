import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { windingSum, windingTerminals } from '../../core/calculations/windings.ts';
import type { WindingReading } from '../../core/calculations/windings.ts';
import { resistance } from '../../core/units/quantity-values.ts';
import { cautionsOf, knownValue } from './known-value.ts';

const terminals = (oneTwo: number, oneThree: number, twoThree: number) =>
  windingTerminals({
    oneTwo: resistance(oneTwo),
    oneThree: resistance(oneThree),
    twoThree: resistance(twoThree),
  });

describe('three unmarked terminals', () => {
  it('are named by rank even where they do not add up, with a warning', () => {
    const found = terminals(7, 6, 8);
    expect(knownValue(found)).toMatchObject({ common: '1', start: '2', run: '3' });
    expect(cautionsOf(found)).toContain('sumDoesNotAdd');
    expect(cautionsOf(terminals(6, 2, 4))).toEqual(['deadAndDisconnected']);
  });

  it('are found however the windings are wired to them', () => {
    const ways = fc.record({
      run: fc.double({ min: 0.5, max: 8, noNaN: true }),
      further: fc.double({ min: 0.3, max: 20, noNaN: true }),
      order: fc.constantFrom(['C', 'R', 'S'], ['R', 'S', 'C'], ['S', 'C', 'R'], ['C', 'S', 'R']),
    });
    fc.assert(
      fc.property(ways, ({ run, further, order }) => {
        const ohms = { CR: run, CS: run + further, RS: 2 * run + further };
        const between = (a: number, b: number): number => {
          const pair = [order[a], order[b]].sort().join('');
          return pair === 'CR' ? ohms.CR : pair === 'CS' ? ohms.CS : ohms.RS;
        };
        const found = knownValue(terminals(between(0, 1), between(0, 2), between(1, 2)));
        const named = [found.common, found.run, found.start].map((id) => order[Number(id) - 1]);
        expect(named).toEqual(['C', 'R', 'S']);
        expect(found.mismatch).toBeCloseTo(0, 9);
      }),
    );
  });

  it('of three alike readings are refused: that is a three-phase motor', () => {
    expect(terminals(1.2, 1.2, 1.2)).toMatchObject({ reason: 'ruleDoesNotApply' });
    expect(terminals(0, 2, 4)).toMatchObject({ reason: 'notPositive' });
  });
});

describe('the sum test', () => {
  const sum = (commonRun: WindingReading, commonStart: WindingReading, runStart: WindingReading) =>
    windingSum({ commonRun, commonStart, runStart });
  const ohm = resistance;

  it.each([
    { what: 'whole windings', read: [ohm(4), ohm(11), ohm(15)], state: 'addsUp' },
    { what: 'a turn or two shorted', read: [ohm(4), ohm(11), ohm(12)], state: 'doesNotAddUp' },
    { what: 'the overload', read: ['open', 'open', ohm(15)], state: 'overloadOpen' },
    { what: 'the start winding', read: [ohm(4), 'open', 'open'], state: 'startOpen' },
    { what: 'the run winding', read: ['open', ohm(11), 'open'], state: 'runOpen' },
    { what: 'everything', read: ['open', 'open', 'open'], state: 'open' },
    { what: 'a slipped probe', read: [ohm(4), ohm(11), 'open'], state: 'contradiction' },
  ] as const)('$what', ({ read: [commonRun, commonStart, runStart], state }) => {
    expect(knownValue(sum(commonRun, commonStart, runStart)).state).toBe(state);
  });

  it('lets a hot compressor cool before it is condemned', () => {
    expect(cautionsOf(sum('open', 'open', ohm(15)))).toContain('overloadMayBeOpen');
    expect(cautionsOf(sum('open', 'open', 'open'))).toContain('overloadMayBeOpen');
    expect(cautionsOf(sum(ohm(4), 'open', 'open'))).not.toContain('overloadMayBeOpen');
  });

  it('allows each reading what the meter resolves', () => {
    const off = (ohms: number) => knownValue(sum(ohm(4), ohm(11), ohm(15 + ohms))).state;
    expect(off(0.3)).toBe('addsUp');
    expect(off(0.31)).toBe('doesNotAddUp');
  });
});
