import { FRAME_MS } from './endpointer.ts';

/** How loud the room is and how far above it the voice, of the last seconds. */
export interface NoiseMeter {
  /** Takes the next frame of 20 ms. */
  readonly accept: (frame: Float32Array) => void;
  readonly measure: () => NoiseMeasure;
}

export interface NoiseMeasure {
  /** The room without a voice, dB below full scale. */
  readonly noiseDb: number;
  /** Voice above the room in dB; null where nothing stood out of it. */
  readonly snrDb: number | null;
}

/** Long enough to hold a sentence and the room around it. */
const KEPT_FRAMES = 6000 / FRAME_MS;
/** 80 ms: a fan's own flutter then stays within 2 dB. */
const SMOOTHED_FRAMES = 4;
/** Even within speech a fifth of the frames are closures and breaths. */
const NOISE_SHARE = 0.2;
/** The quietest fifth of a steady noise lies by so much below its mean. */
const QUIETEST_BELOW = 10 ** -0.1;
/** What stands out of the noise by so much is a voice: flutter does not. */
const STANDS_OUT_DB = 4;
/** Shorter than a word it is a knock, or flutter. */
const LEAST_VOICE_FRAMES = 300 / FRAME_MS;
const LEAST_POWER = 1e-10;

export function createNoiseMeter(): NoiseMeter {
  let recent: readonly number[] = [];
  let powers: readonly number[] = [];
  return {
    accept: (frame) => {
      recent = [...recent, meanSquare(frame)].slice(-SMOOTHED_FRAMES);
      powers = [...powers, mean(recent)].slice(-KEPT_FRAMES);
    },
    measure: () => measureOf(powers),
  };
}

function measureOf(powers: readonly number[]): NoiseMeasure {
  const sorted = powers.toSorted((one, other) => one - other);
  const quietest = sorted.slice(0, Math.max(1, Math.ceil(sorted.length * NOISE_SHARE)));
  const noise = Math.max(mean(quietest) / QUIETEST_BELOW, LEAST_POWER);
  const voice = sorted.filter((power) => toDb(power / noise) > STANDS_OUT_DB);
  const heard = voice.length >= LEAST_VOICE_FRAMES;
  return { noiseDb: toDb(noise), snrDb: heard ? toDb(mean(voice) / noise - 1) : null };
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

function meanSquare(frame: Float32Array): number {
  let sum = 0;
  for (const sample of frame) sum += sample * sample;
  return sum / Math.max(1, frame.length);
}

const toDb = (power: number): number => 10 * Math.log10(power + LEAST_POWER);
