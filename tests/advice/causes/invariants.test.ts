import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../core/advice/answer.ts';
import { LEVELS, type Levels } from '../../../core/advice/causes/arrows.ts';
import { believe, ranked, type Belief } from '../../../core/advice/causes/belief.ts';
import { expectedInformation, findsOrNot } from '../../../core/advice/causes/information.ts';
import { nextCheckOf } from '../../../core/advice/causes/next-check-of.ts';
import { ratiosOfSeen, speaksAgainst } from '../../../core/advice/causes/observation.ts';
import { SYMPTOMS } from '../../../core/advice/causes/symptom.ts';
import type { CauseId } from '../../../core/terms/causes.ts';
import { visit } from '../random-visits.ts';

const NOTHING_BEFORE = { lastAnswer: null };

/** A reading that is surely at one level: the sharpest evidence there is. */
const certain = fc.constantFrom(...LEVELS).map((level): Levels => ({
  ...{ farLow: 0, low: 0, normal: 0, high: 0, farHigh: 0 },
  [level]: 1,
}));
const soft = fc
  .array(fc.integer({ min: 1, max: 100 }), { minLength: 5, maxLength: 5 })
  .map(([a = 1, b = 1, c = 1, d = 1, e = 1]): Levels => {
    const total = a + b + c + d + e;
    return {
      farLow: a / total,
      low: b / total,
      normal: c / total,
      high: d / total,
      farHigh: e / total,
    };
  });
const seen = fc
  .tuple(fc.constantFrom(...SYMPTOMS), fc.oneof(certain, soft))
  .map(([symptom, levels]) => ({ symptom, levels }));
const feed = fc.constantFrom('valve' as const, 'fixed' as const, null);

const odds = ({ shares, somethingElse }: Belief, cause: CauseId): number =>
  (shares.get(cause) ?? 0) / somethingElse;

describe('evidence against a cause', () => {
  it('never raises it against something else, nor lifts it over a cause that it does not contradict', () => {
    fc.assert(
      fc.property(fc.array(seen, { maxLength: 6 }), seen, feed, (before, added, feeding) => {
        const ratios = before.map((each) => ratiosOfSeen(each, feeding));
        const more = ratiosOfSeen(added, feeding);
        const [without, withIt] = [believe(ratios, feeding), believe([...ratios, more], feeding)];
        const order = ranked(without).map(([cause]) => cause);
        const after = ranked(withIt).map(([cause]) => cause);
        for (const cause of order.filter((each) => speaksAgainst(more, each))) {
          expect(odds(withIt, cause)).toBeLessThan(odds(without, cause));
          const above = order.slice(0, order.indexOf(cause));
          const spared = above.filter((each) => (more.get(each) ?? 1) >= (more.get(cause) ?? 1));
          for (const other of spared) {
            expect(after.indexOf(other)).toBeLessThan(after.indexOf(cause));
          }
        }
      }),
      { numRuns: 500 },
    );
  });

  it('counts the same in any order', () => {
    fc.assert(
      fc.property(fc.array(seen, { maxLength: 6 }), feed, (each, feeding) => {
        const ratios = each.map((one) => ratiosOfSeen(one, feeding));
        const forwards = believe(ratios, feeding).shares;
        const backwards = believe(ratios.toReversed(), feeding).shares;
        for (const [cause, share] of forwards) {
          expect(backwards.get(cause)).toBeCloseTo(share, 9);
        }
      }),
      { numRuns: 200 },
    );
  });
});

describe('on random visits', () => {
  it('gives causes only with what they were worked from, the same for the same state', () => {
    fc.assert(
      fc.property(visit, (state) => {
        const verdict = answer({ ask: 'causes' }, state, NOTHING_BEFORE);
        expect(answer({ ask: 'causes' }, state, NOTHING_BEFORE)).toEqual(verdict);
        if (verdict.kind !== 'known' || verdict.answer !== 'causes') return;
        const wasSeen = state.findings.length > 0 || state.unit.sightGlass !== null;
        expect(verdict.inputs.length > 0 || wasSeen).toBe(true);
        expect(verdict.source).not.toBeNull();
        for (const { standing, for: speaking } of verdict.causes) {
          if (standing === 'leading') expect(speaking.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('always has a next check, the same for the same state', () => {
    fc.assert(
      fc.property(visit, (state) => {
        const check = nextCheckOf(state);
        expect(check.kind).toBe('known');
        expect(nextCheckOf(state)).toEqual(check);
      }),
      { numRuns: 200 },
    );
  });
});

describe('expected information', () => {
  const two = (share: number): Belief => ({
    shares: new Map<CauseId, number>([
      ['undercharge', share],
      ['overcharge', 1 - share],
    ]),
    somethingElse: 0,
  });
  const sure = (cause: CauseId | null): readonly number[] =>
    findsOrNot(cause === 'undercharge' ? 1 : 0);

  it('is one bit for a sure check between two equal causes, as the definition has it', () => {
    expect(expectedInformation(two(0.5), sure)).toBeCloseTo(1, 9);
    // 0.9 to 0.1 leaves 0.469 bits (by hand: -0.9 log2 0.9 - 0.1 log2 0.1).
    expect(expectedInformation(two(0.9), sure)).toBeCloseTo(0.469, 3);
  });

  it('is nothing where every cause gives the same outcomes', () => {
    expect(expectedInformation(two(0.5), () => findsOrNot(0.3))).toBeCloseTo(0, 9);
  });
});
