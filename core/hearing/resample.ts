import { SAMPLE_RATE_HZ } from './engine-parameters.ts';
import { joined } from './joined.ts';

/** Takes portions of a stream at one rate, gives them back at 16 kHz. */
export type Resampler = (samples: Float32Array) => Float32Array;

/**
 * A streaming resampler for one mono channel. Going down, each output is the mean of the inputs it
 * covers: a box filter, 11 dB down at 12.3 kHz, the lowest that folds below 3.7 kHz, where the
 * engine's filter bank ends. Going up, it interpolates linearly.
 */
export function createResampler(fromHz: number): Resampler {
  if (fromHz === SAMPLE_RATE_HZ) return (samples) => samples;
  const step = fromHz / SAMPLE_RATE_HZ;
  let kept = new Float32Array(0);
  let position = 0;
  return (samples) => {
    const input = joined([kept, samples]);
    const output: number[] = [];
    const reach = Math.max(step, 1);
    while (position + reach < input.length) {
      output.push(step > 1 ? meanOver(input, position, step) : between(input, position));
      position += step;
    }
    const used = Math.min(Math.floor(position), input.length);
    kept = input.slice(used);
    position -= used;
    return Float32Array.from(output);
  };
}

function between(input: Float32Array, position: number): number {
  const index = Math.floor(position);
  const before = input[index] ?? 0;
  return before + (position - index) * ((input[index + 1] ?? before) - before);
}

/** Mean over `width` inputs from `position`, those at both ends counted by the part that is covered. */
function meanOver(input: Float32Array, position: number, width: number): number {
  const end = position + width;
  let sum = 0;
  for (let index = Math.floor(position); index < end; index += 1) {
    const covered = Math.min(index + 1, end) - Math.max(index, position);
    sum += covered * (input[index] ?? 0);
  }
  return sum / width;
}
