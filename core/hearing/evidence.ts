import type { Pronunciations } from './dictionary.ts';
import type { Hypothesis, TimedWord } from './phone-search.ts';

/** What speaks for and against the first of several hypotheses, in nats. */
export interface Evidence {
  /** By how much any sounds at all fit better than these words, for each of their sounds; 0 or more. */
  readonly strangeness: number;
  /** The same of the worst word. */
  readonly worstWord: number;
  /** By how much the first is ahead of the next. */
  readonly margin: number;
  /** Whether another engine heard the same words; null when none was asked. */
  readonly agreed: boolean | null;
}

/** No rival within the beam: as good as this much ahead. */
export const WIDEST_MARGIN = 15;

export interface Weighing {
  readonly pronunciations: Pronunciations;
  readonly agreed: boolean | null;
}

export function weigh(
  ranked: readonly [Hypothesis, ...Hypothesis[]],
  { pronunciations, agreed }: Weighing,
): Evidence {
  const [best, next] = ranked;
  const perWord = best.words.map((word) => strangeness([word], pronunciations));
  return {
    strangeness: strangeness(best.words, pronunciations),
    worstWord: Math.max(0, ...perWord),
    margin: next === undefined ? WIDEST_MARGIN : Math.min(best.score - next.score, WIDEST_MARGIN),
    agreed,
  };
}

/** How much better any sounds fit than these words, a sound of theirs. */
export function strangeness(words: readonly TimedWord[], pronunciations: Pronunciations): number {
  const lost = words.reduce((sum, { free, acoustic }) => sum + free - acoustic, 0);
  const sounds = words.reduce((sum, { word }) => sum + soundsIn(word, pronunciations), 0);
  return lost / Math.max(1, sounds);
}

const soundsIn = (word: string, pronunciations: Pronunciations): number =>
  (pronunciations[word]?.[0] ?? '').split(' ').length;
