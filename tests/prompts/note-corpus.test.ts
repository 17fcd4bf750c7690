import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guardPassage } from '../../core/note/guard/guard-passage.ts';
import { fillPassage } from '../../core/note/paragraphs/passage.ts';
import { suits } from '../../prompts/corpus/corpus-line.ts';
import { noteRecord } from '../../prompts/record/note-record.ts';
import { facts, passagesOf } from '../note/paragraphs/random-facts.ts';
import { readCorpus } from '../support/corpus.ts';

const EACH = 12;
const LINES = readCorpus('note');

const TOLD = fc
  .sample(facts, { numRuns: 4000, seed: 8 })
  .flatMap(passagesOf)
  .map((passage) => ({ passage, record: noteRecord(passage) }));

const kinds = [...new Set(LINES.map(({ kind }) => kind))];

describe('the corpus of the note', () => {
  it.each(kinds)('says what the guard lets through: %s', (kind) => {
    const ofKind = TOLD.filter(({ record }) => record.kind === kind);
    const faults = LINES.filter((line) => line.kind === kind).flatMap((line) => {
      const suited = ofKind
        .filter(({ record, passage }) => passage.reader === line.register && suits(line, record))
        .slice(0, EACH);
      if (suited.length === 0) return [`suits no passage: ${line.sentence}`];
      return suited.flatMap(({ passage }) => {
        const text = fillPassage(line.sentence, passage);
        const judged = guardPassage(text, passage);
        return judged.kind === 'passed'
          ? []
          : [`${line.sentence}: ${text} (${judged.why} ${judged.at})`];
      });
    });
    expect(faults).toEqual([]);
  });

  it('has three hundred ways and more, in both registers', () => {
    const written = (register: string) => LINES.filter((line) => line.register === register).length;
    expect(written('customer')).toBeGreaterThan(300);
    expect(written('office')).toBeGreaterThan(300);
  });
});
