import fc from 'fast-check';
import { guardPassage } from '../../../core/note/guard/guard-passage.ts';
import { guard } from '../../../core/replies/guard/guard.ts';
import { verdictSaid } from '../../../core/replies/verdict-said.ts';
import { formatNumber } from '../../../core/units/format-amount.ts';
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
  /** Every number that may be in a sentence about it, as digits: found without slots, claims or guard. */
  readonly numbers: ReadonlySet<string>;
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
        numbers: new Set([...numbersAnywhere(one), ...digitsIn(verdictSaid(one).text)]),
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
    numbers: new Set(Object.values(passage.slots).flatMap(digitsIn)),
  }));
}

const digitsIn = (text: string): readonly string[] => text.match(/\d+(?:\.\d+)?/g) ?? [];

/** The numbers of a verdict, wherever they stand in it, to the decimals that any unit is told in. */
function numbersAnywhere(value: unknown): readonly string[] {
  if (typeof value === 'number') {
    return [0, 1, 2, 3].map((decimals) => formatNumber(Math.abs(value), decimals));
  }
  return typeof value === 'object' && value !== null
    ? Object.values(value).flatMap(numbersAnywhere)
    : [];
}
