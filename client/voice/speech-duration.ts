/** Synthesisers say about fourteen letters a second at rate 1 (unverified, by ear); digits take longer. */
const MS_PER_LETTER = 75;
const MS_PER_DIGIT = 320;
const START_MS = 400;

/** About how long a sentence takes to say, in milliseconds. */
export function speechDurationMs(text: string, rate: number): number {
  const digits = text.replace(/\D/g, '').length;
  return START_MS + (digits * MS_PER_DIGIT + (text.length - digits) * MS_PER_LETTER) / rate;
}
