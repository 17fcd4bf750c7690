import type { SpeechRecognitionPhrase } from './phrase.ts';

interface Weighed {
  readonly words: string;
  readonly confidence: number;
}

/**
 * Each phrase that an alternative holds multiplies the odds of it by e^boost, as a boost is the logarithm of how
 * many times likelier its phrase is. Nothing that the engine did not offer can come of it. Likeliest first.
 */
export function weighByPhrases<Alternative extends Weighed>(
  alternatives: readonly Alternative[],
  phrases: readonly SpeechRecognitionPhrase[],
): readonly Alternative[] {
  const told = phrases.filter(({ phrase }) => phrase.trim() !== '');
  if (told.length === 0) return alternatives;
  return alternatives
    .map((alternative) => ({
      ...alternative,
      confidence: raised(alternative.confidence, boostOf(alternative.words, told)),
    }))
    .sort((one, other) => other.confidence - one.confidence);
}

function boostOf(words: string, phrases: readonly SpeechRecognitionPhrase[]): number {
  const text = spaced(words);
  return phrases
    .filter(({ phrase }) => text.includes(spaced(phrase)))
    .reduce((sum, { boost }) => sum + boost, 0);
}

const raised = (confidence: number, boost: number): number =>
  confidence / (confidence + (1 - confidence) * Math.exp(-boost));

/** Whole words only: "head" is not in "ahead". */
const spaced = (text: string): string => ` ${text.toLowerCase().trim().split(/\s+/).join(' ')} `;
