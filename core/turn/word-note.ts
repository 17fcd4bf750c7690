import { guardPassage } from '../note/guard/guard-passage.ts';
import { paragraphsFor } from '../note/paragraphs/paragraphs.ts';
import type { Reader } from '../note/paragraphs/passage.ts';
import type { PassagePhraser } from '../note/phrase-note.ts';
import type { EventBody, WordedPassage } from '../visit/events.ts';
import type { VisitState } from '../visit/state.ts';

interface Finished {
  readonly state: VisitState;
  /** Earlier visits. */
  readonly past: readonly VisitState[];
}

const READERS: readonly Reader[] = ['customer', 'office'];

/**
 * The note of a finished visit in a model's words, as the event that keeps them: from then on the screen, the copy and
 * the server have the same. What the model has not worded when `budget` settles, and what the guard turns down, stays
 * with the templates; null where that is all of it.
 */
export async function wordNote(
  { state, past }: Finished,
  phraser: PassagePhraser | null,
  budget: Promise<unknown>,
): Promise<EventBody | null> {
  if (phraser === null || state.finishedAt === null) return null;
  const passages = READERS.flatMap((reader) => paragraphsFor(reader, state, past).flat());
  const worded: WordedPassage[] = [];
  const time = { isUp: false };
  const up = (): null => {
    time.isUp = true;
    return null;
  };
  const late = budget.then(up, up);
  for (const passage of passages) {
    const writing = phraser.phrasePassage(passage).catch(() => null);
    const text = await Promise.race([writing, late]);
    if (time.isUp) break;
    if (text !== null && guardPassage(text, passage).kind === 'passed') {
      worded.push({ reader: passage.reader, kind: passage.kind, text });
    }
  }
  return worded.length === 0 ? null : { type: 'noteWorded', v: 1, passages: worded };
}
