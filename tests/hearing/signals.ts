/** Made-up sound: a fan, a burst that looks like speech, and voices made from recorded people. */
import { readWav } from '../../server/hearing/read-wav.ts';
import { speakWav, type Voice } from '../support/flite.ts';

export const RATE_HZ = 16_000;

/** A fixed series of numbers in −1..1 (a linear congruential generator, Numerical Recipes' constants). */
export function createNoise(seed: number): () => number {
  let value = seed;
  return () => {
    value = (Math.imul(value, 1_664_525) + 1_013_904_223) >>> 0;
    return (value / 2 ** 32) * 2 - 1;
  };
}

/** Rumble, rush, mains hum at 120 Hz and a blade tone at 147 Hz. */
export function fan(seconds: number, seed: number): Float32Array {
  const noise = createNoise(seed);
  let rumble = 0;
  let rush = 0;
  return Float32Array.from({ length: Math.round(seconds * RATE_HZ) }, (_, index) => {
    const white = noise();
    rumble = 0.995 * rumble + 0.05 * white;
    rush = 0.9 * rush + 0.3 * white;
    const turn = (2 * Math.PI * index) / RATE_HZ;
    return rumble + 0.5 * rush + 0.25 * Math.sin(120 * turn) + 0.1 * Math.sin(147 * turn);
  });
}

export function rms(samples: Float32Array): number {
  return Math.sqrt(samples.reduce((sum, sample) => sum + sample * sample, 0) / samples.length);
}

/** The speech in the middle of a fan's noise, `snrDb` above it, with a second before and two after. */
export function besideFan(speech: Float32Array, snrDb: number, seed: number): Float32Array {
  const noise = fan(3 + speech.length / RATE_HZ, seed);
  const gain = rms(speech) / rms(noise) / 10 ** (snrDb / 20);
  return noise.map((sample, index) => sample * gain + (speech[index - RATE_HZ] ?? 0));
}

/** One sentence by one of flite's voices, as the engine takes it. */
export function speak(sentence: string, voice: Voice, stretch = 1): Float32Array {
  const wav = readWav(speakWav(sentence, voice, stretch));
  if (wav.kind === 'unreadable') throw new Error(`flite: ${wav.message}`);
  return wav.samples;
}
