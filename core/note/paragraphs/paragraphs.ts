import type { VisitState } from '../../visit/state.ts';
import { noteFacts } from './facts.ts';
import type { Passage, Reader } from './passage.ts';
import { type Paragraph, planParagraphs } from './plan.ts';
import { passageText } from './sentences.ts';

/** What the note tells one reader, a paragraph each, not yet in words. */
export function paragraphsFor(
  reader: Reader,
  state: VisitState,
  past: readonly VisitState[],
): readonly Paragraph[] {
  return planParagraphs(noteFacts(state, past), reader);
}

/** How a passage is put into words; the template is always there. */
export type WordPassage = (passage: Passage) => string;

export function paragraphLines(
  paragraphs: readonly Paragraph[],
  worded: WordPassage = passageText,
): readonly string[] {
  return paragraphs.map((passages) => passages.map(worded).join(' '));
}
