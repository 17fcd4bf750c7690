import { SAMPLE_RATE_HZ } from './engine-parameters.ts';

/** Where speech starts and ends, by energy above a noise floor that follows the room. */
export interface Endpointer {
  /** Takes the next frame of FRAME_SAMPLES samples. */
  readonly accept: (frame: Float32Array) => EndpointEvent | null;
  /** Loudness of the last frame in dB below full scale. */
  readonly levelDb: () => number;
  /** What the room sounds like without speech, in the same measure. */
  readonly floorDb: () => number;
}

/**
 * speechEnded comes after the trailing silence or at the longest sentence; noSpeech once, when
 * nothing began in time: the caller decides whether to go on.
 */
export type EndpointEvent = 'speechStarted' | 'speechEnded' | 'noSpeech';

export interface EndpointerSettings {
  /** Shorter sounds are clicks and knocks; a tenth of a second is the shortest vowel of a number. */
  readonly minimumSpeechMs: number;
  /** Callers pause between the digits of a reading: 0.5 s, as browsers wait, cuts them in two. */
  readonly trailingSilenceMs: number;
  readonly longestSpeechMs: number;
  /** Chromium's own wait. */
  readonly noSpeechMs: number;
  /** Speech begins above the floor by `onDb` and lasts until below it by `offDb`. */
  readonly onDb: number;
  readonly offDb: number;
}

export const ENDPOINTER_SETTINGS: EndpointerSettings = {
  minimumSpeechMs: 60,
  trailingSilenceMs: 900,
  longestSpeechMs: 15_000,
  noSpeechMs: 8_000,
  onDb: 7.5,
  offDb: 5,
};

export const FRAME_MS = 20;
export const FRAME_SAMPLES = (SAMPLE_RATE_HZ * FRAME_MS) / 1000;

/** Hum and fan rumble lie low: the difference to the last sample takes 20 dB off below 120 Hz. */
const PRE_EMPHASIS = 0.95;
/** Frames that are averaged: 100 ms keep a fan's own flutter within 2 dB. */
const SMOOTHED_FRAMES = 5;
/** By so much the averaging lengthens every sound. */
const SMEAR_MS = SMOOTHED_FRAMES * FRAME_MS;
/** The floor is the least of the last three seconds: nobody speaks that long without a closure. */
const FLOOR_FRAMES = 3000 / FRAME_MS;
/** A digital silence would make any whisper speech. */
const LEAST_FLOOR_DB = -70;

interface State {
  readonly recent: readonly number[];
  readonly minima: readonly number[];
  readonly last: number;
  readonly levelDb: number;
  readonly speaking: boolean;
  readonly loudMs: number;
  readonly quietMs: number;
  readonly elapsedMs: number;
}

/**
 * Begins with the floor of the session before, where there is one: a session that opens in the middle
 * of a word would otherwise take the word for the room.
 */
export function createEndpointer(
  settings: EndpointerSettings = ENDPOINTER_SETTINGS,
  startFloorDb?: number,
): Endpointer {
  let state: State = {
    recent: [],
    minima: startFloorDb === undefined ? [] : [startFloorDb],
    last: 0,
    levelDb: -Infinity,
    speaking: false,
    loudMs: 0,
    quietMs: 0,
    elapsedMs: 0,
  };
  return {
    accept: (frame) => {
      const measured = measure(state, frame);
      const event = decide(measured, settings);
      state = event === null ? measured : settle(measured, event);
      return event;
    },
    levelDb: () => state.levelDb,
    floorDb: () => floorOf(state),
  };

  function measure(before: State, frame: Float32Array): State {
    const recent = [...before.recent, emphasisedPower(frame, before.last)].slice(-SMOOTHED_FRAMES);
    const smoothedDb = toDb(recent.reduce((sum, power) => sum + power, 0) / recent.length);
    const minima = [...before.minima, smoothedDb].slice(-FLOOR_FRAMES);
    const aboveDb = smoothedDb - floorOf({ minima });
    const loud = aboveDb > (before.speaking ? settings.offDb : settings.onDb);
    return {
      ...before,
      recent,
      minima,
      last: frame.at(-1) ?? 0,
      levelDb: toDb(meanSquare(frame)),
      loudMs: loud ? before.loudMs + FRAME_MS : 0,
      quietMs: loud ? 0 : before.quietMs + FRAME_MS,
      elapsedMs: before.elapsedMs + FRAME_MS,
    };
  }
}

function decide(state: State, settings: EndpointerSettings): EndpointEvent | null {
  if (!state.speaking && state.loudMs >= settings.minimumSpeechMs + SMEAR_MS) {
    return 'speechStarted';
  }
  if (!state.speaking) return state.elapsedMs === settings.noSpeechMs ? 'noSpeech' : null;
  const over =
    state.quietMs >= settings.trailingSilenceMs || state.elapsedMs >= settings.longestSpeechMs;
  return over ? 'speechEnded' : null;
}

/** From its beginning and from its end, speech and silence are timed anew. */
function settle(state: State, event: EndpointEvent): State {
  if (event === 'noSpeech') return state;
  return {
    ...state,
    speaking: event === 'speechStarted',
    loudMs: 0,
    quietMs: 0,
    elapsedMs: 0,
  };
}

function floorOf({ minima }: Pick<State, 'minima'>): number {
  return Math.max(LEAST_FLOOR_DB, minima.length === 0 ? LEAST_FLOOR_DB : Math.min(...minima));
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

function meanSquare(frame: Float32Array): number {
  return frame.reduce((sum, sample) => sum + sample * sample, 0) / Math.max(frame.length, 1);
}

const toDb = (power: number): number => 10 * Math.log10(power + 1e-10);
