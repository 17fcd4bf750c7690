import type { Pronunciations } from '../../../../core/hearing/dictionary.ts';
import { sampleHeard } from '../sentences.ts';

const SEED = 77;
const POOL = 3000;
const FEWEST_WORDS = 5;
const MOST_WORDS = 9;

/** What a sound or a number is worth that was in so many prompts before: the first few times count. */
const worth = (before: number): number => 1 / (1 + before) ** 1.5;
/** The pairs that are mistaken for one another most. */
const TEENS_AND_TENS =
  /^(thir|four|fif|six|seven|eigh|nine)teen$|^(thir|for|fif|six|seven|eigh|nine)ty$/;
const OF_A_NUMBER = 3;

/**
 * Sentences of the grammar that hold, a few each, as many of its sounds and of the confused numbers as they can: one
 * after the other the one that adds most for its length.
 */
export function drawPrompts(count: number, pronunciations: Pronunciations): readonly string[] {
  const pool = [...new Set(sampleHeard(POOL, SEED))].filter(isReadable);
  const units = new Map(pool.map((sentence) => [sentence, unitsOf(sentence, pronunciations)]));
  const had = new Map<string, number>();
  const gain = (sentence: string): number => {
    const all = units.get(sentence) ?? [];
    const distinct = [...new Set(all)];
    const sum = distinct.reduce(
      (total, unit) =>
        total + worth(had.get(unit) ?? 0) * (TEENS_AND_TENS.test(unit) ? OF_A_NUMBER : 1),
      0,
    );
    return sum / all.length ** 0.25;
  };
  return Array.from({ length: count }, () => {
    const best = pool.reduce((one, other) => (gain(other) > gain(one) ? other : one));
    for (const unit of units.get(best) ?? []) had.set(unit, (had.get(unit) ?? 0) + 1);
    pool.splice(pool.indexOf(best), 1);
    return best;
  });
}

function isReadable(sentence: string): boolean {
  const words = sentence.split(' ');
  return words.length >= FEWEST_WORDS && words.length <= MOST_WORDS;
}

function unitsOf(sentence: string, pronunciations: Pronunciations): readonly string[] {
  return sentence.split(' ').flatMap((word) => {
    const phones = (pronunciations[word]?.[0] ?? '').split(' ');
    return TEENS_AND_TENS.test(word) ? [...phones, word] : phones;
  });
}
