import { createFramer } from './framer.ts';
import { FRAME_MS } from './frame.ts';

/** How loud the room is and how far above it the voice, of the last seconds. */
export interface NoiseMeter {
  /** Takes the next frame of 20 ms. */
  readonly accept: (frame: Float32Array) => void;
  /** What stands out for less than `leastVoiceMs` is no voice. */
  readonly measure: (leastVoiceMs?: number) => NoiseMeasure;
}

export interface NoiseMeasure {
  /** The room without a voice, dB below full scale. */
  readonly noiseDb: number;
  /**
   * Voice above the room in dB; null where nothing stood out of it. A voice is measured by its louder frames, so a low
   * one is overstated: at 10 dB by 2, at 5 by 2.5, at 0 by 4, and at −5 dB nothing of it stands out.
   */
  readonly snrDb: number | null;
}

/** Long enough to hold a sentence and the room around it. */
export const MEASURED_MS = 6000;
/** 80 ms: a fan's own flutter then stays within 2 dB. */
const SMOOTHED_FRAMES = 4;
/** Even within speech a fifth of the frames are closures and breaths. */
const NOISE_SHARE = 0.2;
/** The quietest fifth of a steady noise lies by so much below its mean. */
const QUIETEST_BELOW = 10 ** -0.1;
/** What stands out of the noise by so much is a voice: flutter does not. */
export const STANDS_OUT_DB = 4;
/** Shorter than a word it is a knock, or flutter. */
const LEAST_VOICE_MS = 300;
/** Where a sentence is known to be it is a voice however short: "no" lasts 200 ms. */
export const LEAST_SENTENCE_MS = 100;
const LEAST_POWER = 1e-10;

/** A headset that gates its own noise gives zeros, as a muted one does: they are not the room. */
export const isDigitalSilence = (frame: Float32Array): boolean =>
  frame.every((sample) => sample === 0);

/** Fifty frames a second pass through it on a phone: nothing is allocated for one, and only a measure sorts. */
export function createNoiseMeter(keptFrames = MEASURED_MS / FRAME_MS): NoiseMeter {
  const recent = new Float64Array(SMOOTHED_FRAMES);
  const powers = new Float64Array(keptFrames);
  let taken = 0;
  return {
    accept: (frame) => {
      if (isDigitalSilence(frame)) return;
      recent[taken % SMOOTHED_FRAMES] = meanSquare(frame);
      powers[taken % keptFrames] = sumOf(recent) / Math.min(taken + 1, SMOOTHED_FRAMES);
      taken += 1;
    },
    measure: (leastVoiceMs = LEAST_VOICE_MS) =>
      measureOf(powers.slice(0, Math.min(taken, keptFrames)).sort(), leastVoiceMs),
  };
}

/** Of a recording of one sentence, however long: mono samples at 16 kHz. */
export function measureRecording(samples: Float32Array): NoiseMeasure {
  const frames = createFramer()(samples);
  const meter = createNoiseMeter(Math.max(1, frames.length));
  for (const frame of frames) meter.accept(frame);
  return meter.measure(LEAST_SENTENCE_MS);
}

function measureOf(sorted: Float64Array, leastVoiceMs: number): NoiseMeasure {
  const quietest = sorted.subarray(0, Math.max(1, Math.ceil(sorted.length * NOISE_SHARE)));
  const noise = Math.max(meanOf(quietest) / QUIETEST_BELOW, LEAST_POWER);
  const voice = sorted.filter((power) => toDb(power / noise) > STANDS_OUT_DB);
  const heard = voice.length > 0 && voice.length * FRAME_MS >= leastVoiceMs;
  return { noiseDb: toDb(noise), snrDb: heard ? toDb(meanOf(voice) / noise - 1) : null };
}

const sumOf = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0);
const meanOf = (values: Float64Array): number => sumOf(values) / Math.max(1, values.length);

function meanSquare(frame: Float32Array): number {
  let sum = 0;
  for (const sample of frame) sum += sample * sample;
  return sum / Math.max(1, frame.length);
}

const toDb = (power: number): number => 10 * Math.log10(power + LEAST_POWER);
