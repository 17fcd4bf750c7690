import type { VisitState } from '../../visit/state.ts';
import { noteFacts } from './facts.ts';
import type { Reader } from './passage.ts';
import { type Paragraph, planParagraphs } from './plan.ts';
import { wordedText } from './worded.ts';

/** What the note tells one reader, a paragraph each, not yet in words. */
export function paragraphsFor(
  reader: Reader,
  state: VisitState,
  past: readonly VisitState[],
): readonly Paragraph[] {
  return planParagraphs(noteFacts(state, past), reader);
}

/** The paragraphs in the words kept with the visit, and in the templates' where there are none. */
export function paragraphLines(
  reader: Reader,
  state: VisitState,
  past: readonly VisitState[],
): readonly string[] {
  return paragraphsFor(reader, state, past).map((passages) =>
    passages.map((passage) => wordedText(passage, state.worded)).join(' '),
  );
}
