import type { Pronunciations } from './dictionary.ts';
import type { Fit } from './judgement.ts';
import type { TimedWord } from './phone-search.ts';

/** How much better any sounds at all fit than these words: in all, and a sound of theirs. */
export function fitOf(words: readonly TimedWord[], pronunciations: Pronunciations): Fit {
  const lost = words.reduce((sum, { free, acoustic }) => sum + free - acoustic, 0);
  const sounds = words.reduce((sum, { word }) => sum + soundsIn(word, pronunciations), 0);
  return { lost, strangeness: lost / Math.max(1, sounds) };
}

const soundsIn = (word: string, pronunciations: Pronunciations): number =>
  (pronunciations[word]?.[0] ?? '').split(' ').length;
