import type { WordedPassage } from '../../visit/events.ts';
import { guardPassage } from '../guard/guard-passage.ts';
import type { Passage } from './passage.ts';
import { passageText } from './sentences.ts';

/**
 * A passage in the words kept with the visit, where they still tell what it tells: they are held against the guard at
 * every reading, so that no log can make a note say what its visit did not.
 */
export function wordedText(passage: Passage, worded: readonly WordedPassage[]): string {
  const kept = worded.find(
    ({ reader, kind, text }) =>
      reader === passage.reader &&
      kind === passage.kind &&
      guardPassage(text, passage).kind === 'passed',
  );
  return kept?.text ?? passageText(passage);
}
