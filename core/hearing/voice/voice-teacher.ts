import { type AcousticModel, createListener } from '../listener.ts';
import type { Sounds } from '../sound-graph.ts';
import { type Correction } from './correct-frame.ts';
import { fitCorrection, type FitSettings, type Lesson, logChanceOf } from './fit-correction.ts';
import { soundLattice } from './sound-lattice.ts';
import { profileShape, type VoiceProfile } from './voice-profile.ts';

/** Learns one voice from sentences that are known beforehand. Keeps no sound. One call at a time. */
export interface VoiceTeacher {
  /** Hears a sentence that was to be read aloud: mono samples in −1..1 at 16 kHz, its whole utterance. */
  readonly learn: (words: string, samples: Float32Array) => Promise<LessonHeard>;
  readonly learnt: () => number;
  /** What the lessons so far make of the voice. */
  readonly conclude: () => Conclusion;
}

/** learnt: it counts. unlike: something else was said, or nothing. unteachable: this model or sentence is for no lesson. */
export type LessonHeard = 'learnt' | 'unlike' | 'unteachable';

export type Conclusion =
  | { readonly kind: 'better'; readonly profile: VoiceProfile; readonly gain: VoiceGain }
  /** On the sentences held back it was heard no better than before: it stays as it was. */
  | { readonly kind: 'noBetter'; readonly gain: VoiceGain }
  | { readonly kind: 'tooFew'; readonly least: number };

/** Of sentences that the correction did not learn from: nats a sound by which the model missed what was said. */
export interface VoiceGain {
  readonly before: number;
  readonly after: number;
}

export interface TeacherSettings {
  readonly model: AcousticModel;
  readonly pronunciations: Sounds['pronunciations'];
}

/** Nats a sound: the sentence may be there all the same, but as likely it is another. */
const MOST_MISSED = 3;
/** Under this many the fifth that is held back says nothing. */
const FEWEST_LESSONS = 10;
/** Every fourth is held back: of twenty, five check what fifteen taught. */
const HELD_BACK = 4;
/** Nats a sound on the sentences held back, of which most must not lose as much. */
const LEAST_GAIN = 0.01;

/** A restraint of 3 did best of 1, 3, 10 and 30 on sentences of three voices that were no lessons. */
const FIT: FitSettings = { restraint: 3, restraintOfConstants: 1, rounds: 2, steps: 12 };

export function createVoiceTeacher(settings: TeacherSettings): VoiceTeacher {
  return new Teacher(settings);
}

interface Learnt extends Lesson {
  readonly soundCount: number;
}

class Teacher implements VoiceTeacher {
  readonly #settings: TeacherSettings;
  readonly #lessons: Learnt[] = [];

  constructor(settings: TeacherSettings) {
    this.#settings = settings;
  }

  readonly learn = async (words: string, samples: Float32Array): Promise<LessonHeard> => {
    const { model, pronunciations } = this.#settings;
    const said = words.split(' ');
    const lattice = soundLattice(said, { pronunciations, phones: model.description.phones });
    if (lattice === null || profileShape(model.description) === null) return 'unteachable';
    const soundCount = said.reduce(
      (sum, word) => sum + (pronunciations[word]?.[0] ?? '').split(' ').length,
      0,
    );
    const lesson = { ...(await this.#hear(samples)), lattice, soundCount };
    if (missed([lesson], null) > MOST_MISSED) return 'unlike';
    this.#lessons.push(lesson);
    return 'learnt';
  };

  readonly learnt = (): number => this.#lessons.length;

  readonly conclude = (): Conclusion => {
    const lessons = this.#lessons;
    if (lessons.length < FEWEST_LESSONS) return { kind: 'tooFew', least: FEWEST_LESSONS };
    const isHeldBack = (_: Learnt, at: number): boolean => at % HELD_BACK === HELD_BACK - 1;
    const heldBack = lessons.filter(isHeldBack);
    const taught = this.#fit(lessons.filter((lesson, at) => !isHeldBack(lesson, at)));
    const gain = { before: missed(heldBack, null), after: missed(heldBack, taught) };
    const worse = heldBack.filter(
      (lesson) => missed([lesson], taught) > missed([lesson], null) + LEAST_GAIN,
    );
    const isBetter = gain.before - gain.after >= LEAST_GAIN && 2 * worse.length < heldBack.length;
    return isBetter
      ? { kind: 'better', profile: this.#profile(this.#fit(lessons)), gain }
      : { kind: 'noBetter', gain };
  };

  /** As a recording is heard: once for its loudness. */
  async #hear(samples: Float32Array): Promise<Pick<Lesson, 'frames' | 'inners'>> {
    const listener = createListener(this.#settings.model);
    await listener.accept(samples);
    listener.reset();
    const inners: Float32Array[] = [];
    listener.through((frame, inner) => {
      inners.push(inner);
      return frame;
    });
    const frames = [...(await listener.accept(samples)), ...(await listener.flush())];
    // The first ones speak of the time before the sound: they have no frame.
    return { frames, inners: inners.slice(inners.length - frames.length) };
  }

  #fit(lessons: readonly Lesson[]): Correction {
    const { phones, innerSize } = this.#settings.model.description;
    return fitCorrection(lessons, { sounds: phones.length, inner: innerSize }, FIT);
  }

  #profile({ weights, sounds, inner }: Correction): VoiceProfile {
    const { edition } = this.#settings.model.description;
    const correction = Array.from({ length: sounds }, (_, sound) =>
      Array.from(weights.slice(sound * (inner + 1), (sound + 1) * (inner + 1)), rounded),
    );
    return { version: 1, edition, correction };
  }
}

/** Of weights that are a few hundredths, four decimals are enough. */
const rounded = (weight: number): number => Math.round(weight * 1e4) / 1e4;

/** Nats a sound. */
function missed(lessons: readonly Learnt[], correction: Correction | null): number {
  const sounds = lessons.reduce((sum, { soundCount }) => sum + soundCount, 0);
  return -logChanceOf(lessons, correction) / Math.max(1, sounds);
}
