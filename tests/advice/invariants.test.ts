import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../core/advice/answer.ts';
import { CAUTIONS } from '../../core/advice/caution-data.ts';
import { cautionsFor } from '../../core/advice/cautions.ts';
import { sheet } from '../../core/advice/sheet.ts';
import { question, visit } from './random-visits.ts';

const NOTHING_BEFORE = { lastAnswer: null };

function numbersIn(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
}

describe('on random visits', () => {
  it('answers every question, with finite numbers, the same for the same state', () => {
    fc.assert(
      fc.property(visit, question, (state, asked) => {
        const verdict = answer(asked, state, NOTHING_BEFORE);
        expect(numbersIn(verdict).filter((each) => !Number.isFinite(each))).toEqual([]);
        expect(answer(asked, state, NOTHING_BEFORE)).toEqual(verdict);
      }),
      { numRuns: 1500 },
    );
  });

  it('gives no number without what it was worked from', () => {
    fc.assert(
      fc.property(visit, question, (state, asked) => {
        const verdict = answer(asked, state, NOTHING_BEFORE);
        if (verdict.kind !== 'known' || verdict.answer !== 'compare') return;
        expect(verdict.inputs.length).toBeGreaterThan(0);
        // A box is held against its set point: that was stated, not worked out.
        if (verdict.about === 'boxTemp') return;
        expect(verdict.source).not.toBeNull();
        expect(verdict.formula).not.toBeNull();
      }),
      { numRuns: 1500 },
    );
  });

  it('never leaves a flammable refrigerant’s caution off a number', () => {
    fc.assert(
      fc.property(visit, question, (state, asked) => {
        const verdict = answer(asked, state, NOTHING_BEFORE);
        if (verdict.kind !== 'known') return;
        const due = cautionsFor(state).filter((id) => id === 'flammable' || id === 'toxicAmmonia');
        expect(verdict.cautions).toEqual(expect.arrayContaining(due));
      }),
      { numRuns: 1000 },
    );
  });

  it('keeps the sheet’s change to what its two columns show', () => {
    fc.assert(
      fc.property(visit, (state) => {
        for (const { before, after, change } of sheet(state)) {
          if (change === null) expect(before === null || after === null).toBe(true);
          else expect(Math.abs((after ?? 0) - (before ?? 0) - change)).toBeLessThan(1.01);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('the cautions', () => {
  it('each have what to do and a source', () => {
    for (const { detail, source } of Object.values(CAUTIONS)) {
      expect(detail.length).toBeGreaterThan(20);
      expect(source.length).toBeGreaterThan(5);
    }
  });
});
