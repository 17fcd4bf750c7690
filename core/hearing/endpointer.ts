import { ENDPOINTER_SETTINGS, type EndpointerSettings } from './endpointing-policy.ts';
import { FRAME_MS } from './frame.ts';
import { createLoudness, type Loudness } from './loudness.ts';
import type { Standing } from './standing.ts';
import { WINDOW_MS } from './voice-detector.ts';

/**
 * Where speech starts and ends: by what a voice detector tells, and by energy above a noise floor that follows the
 * room wherever the detector is silent or late. How long a rest ends the sentence depends on what was said.
 */
export interface Endpointer {
  /** Takes the next frame of FRAME_SAMPLES samples. */
  readonly accept: (frame: Float32Array) => EndpointEvent | null;
  /** Chances of a voice, one a window in order, the last window ending so long after the first frame began. */
  readonly hearVoice: (chances: readonly number[], untilMs: number) => void;
  /** What may follow the words so far of the sentence that is being said; null where nobody knows. */
  readonly understand: (standing: Standing | null) => void;
  /** Loudness of the last frame in dB below full scale. */
  readonly levelDb: () => number;
  /** What the room sounds like without speech, in a measure of its own. */
  readonly floorDb: () => number;
}

/**
 * speechEnded comes after a rest or at the longest sentence; noSpeech once, when nothing began in time: the caller
 * decides whether to go on.
 */
export type EndpointEvent = 'speechStarted' | 'speechEnded' | 'noSpeech';

/** Sound goes to the detector in portions of 0.1 s: up to here it tells as soon as it can, and nothing waits for it. */
const ON_TIME_MS = 150;
/** By then it does not come: it is not loaded, it broke, or the device is too slow. */
const LOST_MS = 600;
/** A window's, and the averaging after it. */
const WINDOW_FRAMES = 4;
/** How loud it was is kept for as long as windows may be told late. */
const KEPT_LEVELS = 1000 / FRAME_MS;

/** One way to tell speech: how long it has lasted by now, and until when it did. */
interface Trace {
  readonly onMs: number;
  readonly lastMs: number;
}

const NOTHING_YET: Trace = { onMs: 0, lastMs: 0 };

/**
 * Begins with the floor of the session before, where there is one: a session that opens in the middle
 * of a word would otherwise take the word for the room.
 */
export function createEndpointer(
  settings: EndpointerSettings = ENDPOINTER_SETTINGS,
  startFloorDb?: number,
): Endpointer {
  return new SpeechEndpointer(settings, startFloorDb);
}

class SpeechEndpointer implements Endpointer {
  readonly #settings: EndpointerSettings;
  readonly #loudness: Loudness;
  /** Of the last frames. */
  #levelsDb: readonly number[] = [];
  /** Of every window with a voice since speech began. */
  #voicesDb: number[] = [];
  #voice = NOTHING_YET;
  #energy = NOTHING_YET;
  /** Up to when the detector told; before its first word, never. */
  #toldMs = -Infinity;
  #nowMs = 0;
  /** When speech began, or ended, or the session began. */
  #sinceMs = 0;
  #speaking = false;
  #standing: Standing | null = null;

  constructor(settings: EndpointerSettings, startFloorDb?: number) {
    this.#settings = settings;
    this.#loudness = createLoudness(startFloorDb);
  }

  readonly levelDb = (): number => this.#loudness.levelDb();
  readonly floorDb = (): number => this.#loudness.floorDb();

  readonly understand = (standing: Standing | null): void => {
    this.#standing = standing;
  };

  readonly hearVoice = (chances: readonly number[], untilMs: number): void => {
    const { on, off } = this.#settings.voice;
    const fromMs = untilMs - chances.length * WINDOW_MS;
    // Of what was said before it knows nothing.
    if (fromMs - this.#toldMs > LOST_MS) this.#voice = { onMs: 0, lastMs: fromMs };
    for (const [index, chance] of chances.entries()) {
      const atMs = untilMs - (chances.length - 1 - index) * WINDOW_MS;
      const isOn = this.#speaking ? chance > off && this.#isOurs(atMs) : chance > on;
      this.#voice = follow(this.#voice, isOn, { atMs, lengthMs: WINDOW_MS });
    }
    this.#toldMs = untilMs;
  };

  readonly accept = (frame: Float32Array): EndpointEvent | null => {
    this.#loudness.accept(frame);
    this.#nowMs += FRAME_MS;
    this.#levelsDb = [...this.#levelsDb, this.#loudness.smoothedDb()].slice(-KEPT_LEVELS);
    const { on, off } = this.#settings.energy;
    const aboveDb = this.#loudness.smoothedDb() - this.#loudness.floorDb();
    const isOn = aboveDb > (this.#speaking ? off : on);
    this.#energy = follow(this.#energy, isOn, { atMs: this.#nowMs, lengthMs: FRAME_MS });
    const event = this.#speaking ? this.#end() : this.#start();
    if (event === 'speechStarted' || event === 'speechEnded') this.#turn();
    return event;
  };

  #start(): EndpointEvent | null {
    const { voice, energy, noSpeechMs } = this.#settings;
    const begun = this.#isTold()
      ? this.#voice.onMs >= voice.leastMs
      : this.#energy.onMs >= energy.leastMs;
    if (begun) return 'speechStarted';
    return this.#nowMs - this.#sinceMs === noSpeechMs ? 'noSpeech' : null;
  }

  #end(): EndpointEvent | null {
    const { waitMs, longestSpeechMs } = this.#settings;
    if (this.#nowMs - this.#sinceMs >= longestSpeechMs) return 'speechEnded';
    const { lastMs } = this.#isTold() ? this.#voice : this.#energy;
    // Silence that the detector has not heard yet may be a word.
    const isLate = this.#isTold() && this.#nowMs - this.#toldMs > ON_TIME_MS;
    const restMs = (isLate ? this.#toldMs : this.#nowMs) - Math.max(lastMs, this.#sinceMs);
    return restMs >= waitMs[this.#standing ?? 'unknown'] ? 'speechEnded' : null;
  }

  /** Whether the voice in the window that ends then is as loud as the one that speaks. */
  #isOurs(atMs: number): boolean {
    const framesAgo = Math.floor((this.#nowMs - atMs) / FRAME_MS);
    const levels = this.#levelsDb.slice(
      Math.max(0, this.#levelsDb.length - framesAgo - WINDOW_FRAMES / 2),
    );
    const levelDb = Math.max(...levels.slice(0, WINDOW_FRAMES));
    this.#voicesDb.push(levelDb);
    return levelDb > medianOf(this.#voicesDb) - this.#settings.voice.softerDb;
  }

  #isTold(): boolean {
    return this.#nowMs - this.#toldMs <= LOST_MS;
  }

  /** From its beginning and from its end, speech and silence are timed anew. */
  #turn(): void {
    this.#speaking = !this.#speaking;
    this.#standing = null;
    this.#voicesDb = [];
    this.#sinceMs = this.#nowMs;
    this.#voice = { ...this.#voice, onMs: 0 };
    this.#energy = { ...this.#energy, onMs: 0 };
  }
}

/** Not the loudest: a wrench that falls beside the first word would make all that follows a whisper. */
function medianOf(values: readonly number[]): number {
  return values.toSorted((one, other) => one - other)[values.length >> 1] ?? -Infinity;
}

function follow(
  before: Trace,
  isOn: boolean,
  { atMs, lengthMs }: { readonly atMs: number; readonly lengthMs: number },
): Trace {
  return isOn ? { onMs: before.onMs + lengthMs, lastMs: atMs } : { ...before, onMs: 0 };
}
