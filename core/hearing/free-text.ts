import type { Hearing } from './hearing.ts';
import { SAMPLE_RATE_HZ } from './engine-parameters.ts';
import { NOTHING } from './to-hearing.ts';

/** What turns sound into a text of whatever words, as a model without a grammar does. */
export type Transcribe = (samples: Float32Array, mostTokens: number) => Promise<string>;

/** Untold: such a model says nothing of how sure it was, so that what was heard is done and every value read back. */
const CONFIDENCE = 0;

/** 60 dB below full scale: such models write whole sentences of nothing. */
const LEAST_PEAK = 0.001;

/** Moonshine's authors hold it to six a second, against words without end; a short answer is cut off by that. */
const TOKENS_A_SECOND = 6;
const LEAST_TOKENS = 16;

/** Sound that is no speech, as such models write it: [BLANK_AUDIO], (wind blowing), ♪. */
const NO_SPEECH = /\[[^\]]*\]|\([^)]*\)|[♪*]/g;

/** One whole utterance, mono samples at 16 kHz in −1..1, through a model without a grammar: one wording or none. */
export async function hearFreeText(
  samples: Float32Array,
  transcribe: Transcribe,
): Promise<Hearing> {
  if (samples.every((sample) => Math.abs(sample) < LEAST_PEAK)) return NOTHING;
  const seconds = samples.length / SAMPLE_RATE_HZ;
  const mostTokens = LEAST_TOKENS + Math.ceil(seconds * TOKENS_A_SECOND);
  const text = await transcribe(samples, mostTokens);
  const words = text.replace(NO_SPEECH, ' ').split(/\s+/).filter(Boolean).join(' ');
  if (!/[\p{L}\p{N}]/u.test(words)) return NOTHING;
  return { alternatives: [{ words, confidence: CONFIDENCE, wordConfidences: [] }] };
}
