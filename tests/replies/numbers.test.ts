import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../core/advice/answer.ts';
import type { Known, Verdict } from '../../core/advice/verdict.ts';
import type { Utterance } from '../../core/language/utterance.ts';
import { CAUTION_SENTENCES } from '../../core/replies/caution-sentences.ts';
import { NEED_SENTENCES } from '../../core/replies/refusals.ts';
import { say } from '../../core/replies/say.ts';
import { REFRIGERANTS } from '../../core/terms/refrigerants.ts';
import { formatAmount } from '../../core/units/format-amount.ts';
import { UNITS, type UnitId } from '../../core/units/units.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import { fromUtterance } from '../../core/visit/from-utterance.ts';
import { question, sentences, utterance, visit } from '../advice/random-visits.ts';
import { createStamp } from '../support/stamp.ts';
import { known } from './random-verdicts.ts';

/** Refrigerants apart, every run of digits in a reply, without its sign. */
function numbersOf(text: string): readonly string[] {
  const rest = [...REFRIGERANTS]
    .sort((a, b) => b.length - a.length)
    .reduce((so, id) => so.replaceAll(id, ''), text.replaceAll(':1', ''));
  return rest.match(/\d+(?:\.\d+)?/g) ?? [];
}

/**
 * Every number that data holds, as it may be shown: itself, as each unit rounds it, and each number inside a
 * text of its own (a source's year, a memo's words).
 */
function shownForms(data: unknown): ReadonlySet<string> {
  const forms = new Set<string>();
  const visitNode = (value: unknown): void => {
    if (typeof value === 'number') for (const form of formsOf(value)) forms.add(form);
    else if (typeof value === 'string') for (const part of numbersOf(value)) forms.add(part);
    else if (typeof value === 'object' && value !== null) {
      for (const part of poundsAndOunces(value)) forms.add(part);
      Object.values(value).forEach(visitNode);
    }
  };
  visitNode(data);
  return forms;
}

/** A weight in ounces as a scale shows it. */
function poundsAndOunces(data: object): readonly string[] {
  if (!('unit' in data && data.unit === 'oz' && 'value' in data)) return [];
  const ounces = Math.abs(Number(data.value));
  return [Math.trunc(ounces / 16), Number((ounces % 16).toFixed(2))].map(String);
}

const isUnit = (id: string): id is UnitId => id in UNITS;
const ALL_UNITS = Object.keys(UNITS).filter(isUnit);

function formsOf(value: number): readonly string[] {
  const size = Math.abs(value);
  return [String(size), ...ALL_UNITS.map((unit) => formatAmount({ value: size, unit }).digits)];
}

function foreign(text: string, data: unknown): readonly string[] {
  const own = shownForms(data);
  return numbersOf(text).filter((one) => !own.has(one));
}

describe('no reply holds a number that its verdict or acknowledgement does not', () => {
  const answered = (verdicts: readonly Verdict[]): string =>
    say({ acknowledgements: [], verdicts, nothingHeard: false }, { units: 'us' }).text;

  it('for random questions on random visits', () => {
    fc.assert(
      fc.property(visit, question, question, (state, first, second) => {
        const one = answer(first, state, { lastAnswer: null });
        const lastAnswer: Known | null = one.kind === 'known' ? one : null;
        const two = answer(second, state, { lastAnswer });
        expect(foreign(answered([one, two]), [one, two])).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });

  it('for any verdict at all', () => {
    fc.assert(
      fc.property(known, (verdict) => {
        expect(foreign(answered([verdict]), verdict)).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });

  it('for what random sentences kept', () => {
    fc.assert(
      fc.property(sentences, utterance, (earlier: readonly Utterance[], last) => {
        const stamp = createStamp();
        const state = earlier.reduce(
          (so, each) => fromUtterance(each, so, stamp).state,
          EMPTY_VISIT,
        );
        const { acknowledgements } = fromUtterance(last, state, stamp);
        const { text, large } = say(
          { acknowledgements, verdicts: [], nothingHeard: false },
          state.settings,
        );
        expect(foreign(`${text} ${large?.value ?? ''}`, acknowledgements)).toEqual([]);
        expect(text).not.toMatch(/undefined|NaN|null/);
      }),
      { numRuns: 300 },
    );
  });

  it('sees a number that was slipped in', () => {
    expect(foreign('Head is 192 psi.', { value: 191 })).toEqual(['192']);
    expect(foreign('R-134a at 110 °F: 146 psi.', { given: 110, value: 146.3 })).toEqual([]);
  });
});

describe('fixed sentences', () => {
  it('hold no numbers, in digits or in words', () => {
    const counted =
      /\d|\b(two|three|four|five|six|seven|eight|nine|ten|twenty|hundred|half|twice)\b/i;
    for (const sentence of [
      ...Object.values(CAUTION_SENTENCES),
      ...Object.values(NEED_SENTENCES),
    ]) {
      expect(sentence).not.toMatch(counted);
    }
  });

  it('end as sentences do', () => {
    for (const sentence of [
      ...Object.values(CAUTION_SENTENCES),
      ...Object.values(NEED_SENTENCES),
    ]) {
      expect(sentence).toMatch(/[.]$/);
    }
  });
});
