import type { PhraseRecord, Register } from '../record/phrase-record.ts';
import { fits } from '../record/fill.ts';

/** One way to put one kind of answer, with slots by role: `{about} is {difference} over.` */
export interface CorpusLine {
  readonly kind: string;
  /** What must hold of a record before this may be said of it. */
  readonly needs: readonly string[];
  readonly register: Register;
  readonly sentence: string;
}

/** Whether a line may be said of a record: all it needs holds, and its slots are the record's. */
export function suits({ kind, needs, sentence }: CorpusLine, record: PhraseRecord): boolean {
  return (
    kind === record.kind &&
    needs.every((field) => record.fields.includes(field)) &&
    fits(sentence, record)
  );
}
