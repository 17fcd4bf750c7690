import { confidence, fit } from './confidence.ts';
import type { DecodedWord, DecoderPort } from './decoder-port.ts';
import { isGarbage } from './garbage.ts';
import type { Alternative, Hearing, WordConfidence } from './hearing.ts';

/** Below it, no right reading was seen in the first measurements of confidence.ts. */
const LEAST_FIT = -4.1;

/** 60 dB below full scale: no microphone's speech peaks lower. */
const LEAST_PEAK = 0.001;

/** Silence, noise and grammar markers: `<sil>`, `[NOISE]`, `(NULL)`. */
const MARKER = /^(<.*>|\[.*\]|\(NULL\))$/;
/** `forty(2)`: the second way to say forty. */
const VARIANT = /\(\d+\)$/;

export const NOTHING: Hearing = { alternatives: [], rejected: 'nothing' };

/** Turns a decoder's timed words into what was heard, or why nothing may be acted on. */
export function toHearing(decoded: readonly DecodedWord[]): Hearing {
  // No path through the grammar was left, not even the phone loop's: sound, but nothing of ours.
  if (decoded.length === 0) return { alternatives: [], rejected: 'notForUs' };
  const words = withoutMarkers(decoded);
  if (words.length === 0) return NOTHING;
  if (words.some(({ word }) => isGarbage(word))) return { alternatives: [], rejected: 'notForUs' };
  const alternative = toAlternative(words);
  return fit(words) < LEAST_FIT
    ? { alternatives: [alternative], rejected: 'unsure' }
    : { alternatives: [alternative] };
}

/** The words of a hypothesis that is still growing, empty when they are not for us. */
export function toPartial(text: string): string {
  const words = text.split(/\s+/).filter((word) => word !== '' && !MARKER.test(word));
  return words.some(isGarbage) ? '' : words.map(withoutVariant).join(' ');
}

/** One whole utterance: mono samples at 16 kHz in −1..1, the grammar already set. */
export function hearSamples(decoder: DecoderPort, samples: Float32Array): Hearing {
  // The phone loop would take even a digital silence for talk that is not for us.
  if (samples.every((sample) => Math.abs(sample) < LEAST_PEAK)) return NOTHING;
  decoder.start();
  decoder.acceptWhole(samples);
  decoder.stop();
  return toHearing(decoder.words());
}

/** What was said, silence and noise left out. */
export const withoutMarkers = (decoded: readonly DecodedWord[]): readonly DecodedWord[] =>
  decoded.filter(({ word }) => !MARKER.test(word));

export const textOf = (words: readonly DecodedWord[]): string =>
  words.map(({ word }) => withoutVariant(word)).join(' ');

const withoutVariant = (word: string): string => word.replace(VARIANT, '');

function toAlternative(words: readonly DecodedWord[]): Alternative {
  return {
    words: textOf(words),
    confidence: confidence(words),
    wordConfidences: words.map(toWordConfidence),
  };
}

function toWordConfidence(decoded: DecodedWord): WordConfidence {
  const { word, startSeconds, durationSeconds } = decoded;
  return {
    word: withoutVariant(word),
    confidence: confidence([decoded]),
    startMs: Math.round(startSeconds * 1000),
    endMs: Math.round((startSeconds + durationSeconds) * 1000),
  };
}
