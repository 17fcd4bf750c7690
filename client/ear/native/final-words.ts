import type { Alternative } from '../../../core/language/choose-understanding.ts';
import type { NativeResult } from './native-recognition.ts';

/**
 * A browser's figure is no chance, and most of its sentences have one of about 0.9, which would have every value asked
 * about. So one this high tells no more than the order, and what sounds like another value is asked about as ever.
 */
const WELL_HEARD = 0.85;

/**
 * The one sentence of a session, likeliest first. Android names its guesses final, each with the words of the last
 * and more, so whatever the next begins with is dropped; a recogniser that cuts one sentence in pieces is joined. Within
 * one session only: the same reading said twice comes in two, and both count.
 */
export function finalWords(
  results: ArrayLike<NativeResult>,
  mostAlternatives: number,
): readonly Alternative[] {
  const finals = Array.from(results).filter(({ isFinal, length }) => isFinal && length > 0);
  const kept = finals.filter((each, index) => !isBeginningOf(each, finals[index + 1]));
  const [last, ...before] = kept.toReversed();
  if (last === undefined) return [];
  const lead = before.toReversed().map(wordsOf);
  // Android offers five however few were asked for.
  const isWellHeard = (last[0]?.confidence ?? 0) >= WELL_HEARD;
  return Array.from(last)
    .slice(0, mostAlternatives)
    .map(({ transcript, confidence }) => ({
      words: [...lead, transcript.trim()].join(' ').trim(),
      confidence: isWellHeard ? 0 : confidence,
    }))
    .filter(({ words }) => words !== '');
}

function isBeginningOf(result: NativeResult, next: NativeResult | undefined): boolean {
  return next !== undefined && `${wordsOf(next)} `.startsWith(`${wordsOf(result)} `);
}

const wordsOf = (result: NativeResult): string =>
  (result[0]?.transcript ?? '').trim().toLowerCase();
