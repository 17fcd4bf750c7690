import type { Utterance } from '../utterance.ts';

/** What is meant by a sentence or a part of one, without the words it was said in: the same meaning is the same text. */
export function meaningOf(said: Utterance | Utterance[keyof Utterance][number]): string {
  return JSON.stringify(said, (key, value: unknown) =>
    key === 'words' || key === 'text' ? undefined : value,
  );
}
