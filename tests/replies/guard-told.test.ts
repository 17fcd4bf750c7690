import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guard } from '../../core/replies/guard/guard.ts';
import { suits, type CorpusLine } from '../../prompts/corpus/corpus-line.ts';
import { fill } from '../../prompts/record/fill.ts';
import { recordOf } from '../../prompts/record/record-of.ts';
import { readCorpus } from '../support/corpus.ts';
import { known } from './random-verdicts.ts';
import { SPOILERS } from './spoilers.ts';
import { TOLD } from './wrong-told.ts';

const WRONG = TOLD.flatMap(({ verdict, wrong }) =>
  wrong.map((sentence) => ({ sentence, verdict })),
);
const RIGHT = TOLD.flatMap(({ verdict, right }) =>
  right.map((sentence) => ({ sentence, verdict })),
);

describe('the guard, on sentences by hand', () => {
  it.each(WRONG)('turns away "$sentence"', ({ sentence, verdict }) => {
    expect(guard(sentence, verdict).kind).toBe('rejected');
  });

  it.each(RIGHT)('lets "$sentence" through', ({ sentence, verdict }) => {
    expect(guard(sentence, verdict)).toEqual({ kind: 'passed' });
  });

  it('turns away the right sentence of every other verdict', () => {
    const blends = TOLD.flatMap(({ verdict, right }) =>
      TOLD.filter((other) => other.verdict !== verdict).flatMap((other) =>
        right.flatMap((sentence) => [
          { sentence, verdict: other.verdict },
          ...other.right.map((own) => ({ sentence: `${own} ${sentence}`, verdict: other.verdict })),
        ]),
      ),
    );
    expect(blends.length).toBeGreaterThan(300);
    expect(blends.filter((one) => guard(one.sentence, one.verdict).kind === 'passed')).toEqual([]);
  });
});

const LINES = readCorpus('replies');
const VERDICTS = fc.sample(known, { numRuns: 500, seed: 41 }).flatMap((verdict) => {
  const record = recordOf(verdict);
  return record ? [{ verdict, record, lines: LINES.filter((line) => suits(line, record)) }] : [];
});

/** Another line for each verdict, all of them in turn. */
const lineFor = (lines: readonly CorpusLine[], nth: number): CorpusLine | undefined =>
  lines[(nth * 7) % Math.max(1, lines.length)];

const SENTENCES = VERDICTS.flatMap(({ verdict, record, lines }, nth) => {
  const line = lineFor(lines, nth);
  const said = line ? fill(line.sentence, record) : null;
  return said ? [{ sentence: said.text, verdict }] : [];
});

describe('the guard, on sentences of the corpus', () => {
  it('lets the right ones through, and of the spoiled ones none', () => {
    const passed = SENTENCES.filter((one) => guard(one.sentence, one.verdict).kind === 'passed');
    const spoiled = passed.flatMap(({ sentence, verdict }) =>
      Object.entries(SPOILERS).flatMap(([by, spoil]) =>
        spoil(sentence).map((wrong) => ({ by, sentence, wrong, verdict })),
      ),
    );
    const through = spoiled.filter((one) => guard(one.wrong, one.verdict).kind === 'passed');
    console.log(
      `guard: ${passed.length} of ${SENTENCES.length} right sentences of the corpus passed; ` +
        `${through.length} of ${spoiled.length} spoiled ones, ${WRONG.length} wrong ones by hand turned away`,
    );
    expect(through.map(({ by, sentence, wrong }) => ({ by, sentence, wrong }))).toEqual([]);
    expect(passed.length / SENTENCES.length).toBeGreaterThanOrEqual(0.98);
    expect(SENTENCES.length).toBeGreaterThanOrEqual(300);
    expect(spoiled.length).toBeGreaterThan(10_000);
  }, 60_000);

  it.each(Object.entries(SPOILERS))(
    'are spoiled by %s in many places, never left as they were',
    (_, spoil) => {
      const spoiled = SENTENCES.flatMap(({ sentence }) =>
        spoil(sentence).map((wrong) => ({ sentence, wrong })),
      );
      expect(spoiled.length).toBeGreaterThan(20);
      expect(spoiled.filter(({ sentence, wrong }) => sentence === wrong)).toEqual([]);
    },
  );
});
