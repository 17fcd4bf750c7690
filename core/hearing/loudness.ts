import { FRAME_MS } from './frame.ts';

/** How loud it is, and how loud the room is beneath. */
export interface Loudness {
  readonly accept: (frame: Float32Array) => void;
  /** Of the last frame, in dB below full scale. */
  readonly levelDb: () => number;
  /** What the room sounds like without speech, in a measure of its own that leaves hum out. */
  readonly floorDb: () => number;
  /** Of the last tenth of a second, in the same measure. */
  readonly smoothedDb: () => number;
}

/** Hum and fan rumble lie low: the difference to the last sample takes 20 dB off below 120 Hz. */
const PRE_EMPHASIS = 0.95;
/** Frames that are averaged: 100 ms keep a fan's own flutter within 2 dB. */
const SMOOTHED_FRAMES = 5;
/** By so much the averaging lengthens every sound. */
export const SMEAR_MS = SMOOTHED_FRAMES * FRAME_MS;
/** The floor is the least of the last three seconds: nobody speaks that long without a closure. */
const FLOOR_FRAMES = 3000 / FRAME_MS;
/** A digital silence would make any whisper speech. */
const LEAST_FLOOR_DB = -70;

/** Begins with a floor that is known from before, where there is one. */
export function createLoudness(startFloorDb?: number): Loudness {
  let recent: readonly number[] = [];
  let minima: readonly number[] = startFloorDb === undefined ? [] : [startFloorDb];
  let last = 0;
  let levelDb = -Infinity;
  let smoothedDb = -Infinity;
  const floorDb = (): number =>
    minima.length === 0 ? LEAST_FLOOR_DB : Math.max(LEAST_FLOOR_DB, Math.min(...minima));
  return {
    accept: (frame) => {
      recent = [...recent, emphasisedPower(frame, last)].slice(-SMOOTHED_FRAMES);
      smoothedDb = toDb(mean(recent));
      minima = [...minima, smoothedDb].slice(-FLOOR_FRAMES);
      last = frame.at(-1) ?? 0;
      levelDb = toDb(mean(frame.map((sample) => sample * sample)));
    },
    levelDb: () => levelDb,
    floorDb,
    smoothedDb: () => smoothedDb,
  };
}

function emphasisedPower(frame: Float32Array, before: number): number {
  let sum = 0;
  let last = before;
  for (const sample of frame) {
    sum += (sample - PRE_EMPHASIS * last) ** 2;
    last = sample;
  }
  return sum / Math.max(frame.length, 1);
}

function mean(values: Float32Array | readonly number[]): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum / Math.max(values.length, 1);
}

const toDb = (power: number): number => 10 * Math.log10(power + 1e-10);
