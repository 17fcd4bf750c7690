import type { Passage } from '../../core/note/paragraphs/passage.ts';
import type { PhraseRecord } from './phrase-record.ts';
import { name, slots } from './slots.ts';

/** What a model is told of a passage of the note: its reader is the register it is to be written in. */
export function noteRecord({ kind, fields, slots: words }: Passage): PhraseRecord {
  const named = Object.entries(words).map(([role, text]) => [role, name(text)] as const);
  return { kind: `note.${kind}`, fields, slots: slots(Object.fromEntries(named)) };
}
