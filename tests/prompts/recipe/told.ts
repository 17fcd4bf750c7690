import fc from 'fast-check';
import { guard } from '../../../core/replies/guard/guard.ts';
import type { PhraseRecord } from '../../../prompts/record/phrase-record.ts';
import { recordOf } from '../../../prompts/record/record-of.ts';
import { verdict } from '../../replies/random-verdicts.ts';

/** Something to be phrased, and the guard that holds a sentence against it. */
export interface Told {
  readonly record: PhraseRecord;
  readonly passes: (text: string) => boolean;
}

/** Random verdicts that a model may phrase. */
export function randomReplies(count: number, seed: number): readonly Told[] {
  return fc.sample(verdict, { numRuns: count, seed }).flatMap((one) => {
    const record = recordOf(one);
    const passes = (text: string): boolean => guard(text, one).kind === 'passed';
    return record ? [{ record, passes }] : [];
  });
}
