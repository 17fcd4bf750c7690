import type { Passage } from '../../core/note/paragraphs/passage.ts';
import { passageText } from '../../core/note/paragraphs/sentences.ts';
import { passageKey, passageOr, type PassagePhraser } from '../../core/note/phrase-note.ts';

/** Puts the note's passages into words: the template's until the phraser has written its own. */
export interface NoteWords {
  readonly word: (passage: Passage) => string;
  /** Called when a passage that was shown has been worded since. */
  readonly onWorded: (listener: () => void) => void;
}

export function createNoteWords(phraser: () => PassagePhraser | null): NoteWords {
  const words = new Map<string, string>();
  let wanted: readonly Passage[] = [];
  let isAtIt = false;
  let told: () => void = () => undefined;

  /** One after the other, so that an answer never waits for more than one; shown when all are there. */
  const work = async (): Promise<void> => {
    isAtIt = true;
    for (let [next] = wanted; next; [next] = wanted) {
      const phrasing =
        (await phraser()
          ?.phrasePassage(next)
          .catch(() => null)) ?? null;
      words.set(passageKey(next), passageOr(next, phrasing));
      wanted = wanted.slice(1);
    }
    isAtIt = false;
    told();
  };

  return {
    word(passage) {
      if (phraser() === null) return passageText(passage);
      const worded = words.get(passageKey(passage));
      const isWanted = wanted.some((other) => passageKey(other) === passageKey(passage));
      if (worded === undefined && !isWanted) wanted = [...wanted, passage];
      if (!isAtIt && wanted.length > 0) void work();
      return worded ?? passageText(passage);
    },
    onWorded(listener) {
      told = listener;
    },
  };
}
