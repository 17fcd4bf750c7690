import type { VisitState } from '../visit/state.ts';
import { guardPassage } from './guard/guard-passage.ts';
import type { Passage } from './paragraphs/passage.ts';
import { paragraphsFor, type WordPassage } from './paragraphs/paragraphs.ts';
import { passageText } from './paragraphs/sentences.ts';

/** The phrasing model's second job: a passage of the note in, its sentences out, or nothing. */
export interface PassagePhraser {
  phrasePassage(passage: Passage): Promise<string | null>;
}

/** The phraser's words if it has any that the guard lets through, the template's otherwise. */
export function passageOr(passage: Passage, phrasing: string | null): string {
  return phrasing !== null && guardPassage(phrasing, passage).kind === 'passed'
    ? phrasing
    : passageText(passage);
}

/** What is the same of two passages that say the same to the same reader. */
export const passageKey = (passage: Passage): string => JSON.stringify(passage);

/** Every passage of a visit's note, put into words one after the other; a phraser that fails leaves the template. */
export async function phraseNote(
  state: VisitState,
  past: readonly VisitState[],
  phraser: PassagePhraser,
): Promise<WordPassage> {
  const readers = ['customer', 'office'] as const;
  const passages = readers.flatMap((reader) => paragraphsFor(reader, state, past).flat());
  const words = new Map<string, string>();
  for (const passage of passages) {
    const phrasing = await phraser.phrasePassage(passage).catch(() => null);
    words.set(passageKey(passage), passageOr(passage, phrasing));
  }
  return (passage) => words.get(passageKey(passage)) ?? passageText(passage);
}
