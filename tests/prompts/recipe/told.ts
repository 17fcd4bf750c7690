import fc from 'fast-check';
import { guardPassage } from '../../../core/note/guard/guard-passage.ts';
import { guard } from '../../../core/replies/guard/guard.ts';
import { noteRecord } from '../../../prompts/record/note-record.ts';
import type { PhraseRecord, Register } from '../../../prompts/record/phrase-record.ts';
import { recordOf } from '../../../prompts/record/record-of.ts';
import { facts, passagesOf } from '../../note/paragraphs/random-facts.ts';
import { verdict } from '../../replies/random-verdicts.ts';

/** Something to be phrased, and the guard that holds a sentence against it. */
export interface Told {
  readonly record: PhraseRecord;
  /** In which ways it may be said. */
  readonly registers: readonly Register[];
  readonly passes: (text: string) => boolean;
}

/** Random verdicts that a model may phrase. */
export function randomReplies(count: number, seed: number): readonly Told[] {
  return fc.sample(verdict, { numRuns: count, seed }).flatMap((one): readonly Told[] => {
    const record = recordOf(one);
    if (record === null) return [];
    return [
      {
        record,
        registers: ['short', 'reason'],
        passes: (text) => guard(text, one).kind === 'passed',
      },
    ];
  });
}

/** Passages of random notes. */
export function randomNotes(count: number, seed: number): readonly Told[] {
  const passages = fc.sample(facts, { numRuns: count, seed }).flatMap(passagesOf);
  return passages.map((passage) => ({
    record: noteRecord(passage),
    registers: [passage.reader],
    passes: (text) => guardPassage(text, passage).kind === 'passed',
  }));
}
