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
  readonly passes: (text: string) => boolean;
  /** Where it is written for one reader alone. */
  readonly register?: Register;
}

/** Random verdicts that a model may phrase. */
export function randomReplies(count: number, seed: number): readonly Told[] {
  return fc.sample(verdict, { numRuns: count, seed }).flatMap((one) => {
    const record = recordOf(one);
    const passes = (text: string): boolean => guard(text, one).kind === 'passed';
    return record ? [{ record, passes }] : [];
  });
}

/** Every passage of so many random visits' notes. */
export function randomNotes(visits: number, seed: number): readonly Told[] {
  return fc
    .sample(facts, { numRuns: visits, seed })
    .flatMap(passagesOf)
    .map((passage) => ({
      record: noteRecord(passage),
      passes: (text: string): boolean => guardPassage(text, passage).kind === 'passed',
      register: passage.reader,
    }));
}
