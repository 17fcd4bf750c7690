import type { Passage } from './paragraphs/passage.ts';

/** The phrasing model's second job: a passage of the note in, its sentences out, or nothing. */
export interface PassagePhraser {
  phrasePassage(passage: Passage): Promise<string | null>;
}

/** What is the same of two passages that say the same to the same reader. */
export const passageKey = (passage: Passage): string => JSON.stringify(passage);
