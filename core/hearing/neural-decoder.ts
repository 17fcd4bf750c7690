import type { Pronunciations } from './dictionary.ts';
import { createGrammarGraphs } from './grammar-graphs.ts';
import type { Hearing } from './hearing.ts';
import { type AcousticModel, createListener, type FrameChange, type Listener } from './listener.ts';
import { neuralHearing, wordingOf } from './neural-hearing.ts';
import {
  createPhoneSearch,
  type Hypothesis,
  type PhoneSearch,
  type SearchSettings,
} from './phone-search.ts';
import type { SoundGraph, Sounds } from './sound-graph.ts';
import type { Opinion } from './second-opinion.ts';
import type { Standing } from './standing.ts';
import { NOTHING } from './to-hearing.ts';
import { correctFrame, toCorrection } from './voice/correct-frame.ts';
import { fitsModel, type VoiceProfile } from './voice/voice-profile.ts';
import { createVoiceTeacher, type VoiceTeacher } from './voice/voice-teacher.ts';

/** A search over an acoustic model, one utterance between `start` and `finish`. One call at a time. */
export interface NeuralDecoder {
  /** Under 50 ms for a grammar that was set or warmed before. It holds for the utterances that start after it. */
  readonly setGrammar: (jsgf: string) => GrammarSet;
  /** Builds a grammar that will be set later; what is wrong with it is told then. */
  readonly warm: (jsgf: string) => void;
  /** Forgets what is open and begins an utterance. */
  readonly start: () => void;
  /** Learns from a sound how loud the voice is, before an utterance; what was known of it is forgotten. */
  readonly attune: (samples: Float32Array) => Promise<void>;
  /** Mono samples in −1..1 at 16 kHz, in any portions. */
  readonly accept: (samples: Float32Array) => Promise<void>;
  /** The best words so far, and whether they could be all. */
  readonly words: () => string;
  readonly standing: () => Standing;
  /** No more sound comes: gives the wordings found, best first, for another engine to choose among. */
  readonly close: () => Promise<readonly string[]>;
  /** Ends the utterance. `opinion` is what another engine made of the wordings; null when it knew none. */
  readonly finish: (opinion?: Opinion | null) => Promise<Hearing>;
  /** Hears by what was taught of a voice from the next sound on, or by none; false where it is for another model. */
  readonly suit: (voice: VoiceProfile | null) => boolean;
  /** For a voice that is to be learnt from sentences it reads. */
  readonly teacher: () => VoiceTeacher;
  /** As `finish`, before anything is judged: for measurements. */
  readonly rank: (opinion?: Opinion | null) => Promise<Ranking>;
}

export type GrammarSet =
  | { readonly kind: 'set' }
  | { readonly kind: 'unknownWords'; readonly words: readonly string[] }
  | { readonly kind: 'malformed'; readonly message: string };

/** The wordings of one utterance, best first. */
export interface Ranking {
  readonly hypotheses: readonly Hypothesis[];
  /** What another engine made of them; null when it knew none, or was not asked. */
  readonly opinion: Opinion | null;
  /** Whether another engine was asked. */
  readonly asked: boolean;
  /** Loudest sample. */
  readonly peak: number;
  /** Whether any sound of speech was heard, whatever it meant. */
  readonly voiced: boolean;
}

/**
 * Over a trial model, whole grammar, six voices clean and at 10 dB: a beam of 15 found all that 25 found, at a
 * third of the time; a bonus of 2 to 3 nats a sound was best, less drops short words ("three" for "eight"). Of 100
 * sentences at 5 dB what was said is among 8 wordings 98 times, among 4 ("is", "was", "at" and "the" take them up) 96.
 * Without a bound 10 of 20 sentences at 5 dB had more than 4,000 tokens at once, one 57,000; with it all of them were
 * heard the same, 37 of 40 with the same alternatives in the same order. Noise of half a minute has so many at almost all
 * times, and grew the graph to 475,000 arcs: unbounded, it filled 4 GB. A sentence of the rarer kind grows it by 8,000; of
 * 60 such the search took 0.066 of the sound's time where nothing was forgotten, 0.074 where half of 80,000 arcs stayed.
 */
export const SEARCH_SETTINGS: SearchSettings = {
  beam: 15,
  phoneBonus: 2.5,
  wordings: 8,
  tokens: 4000,
  paths: 200_000,
  arcs: 80_000,
};

/** Of a grammar that another has taken the place of: a dialogue goes back and forth. */
const MOST_ARCS_IDLE = 10_000;

/** 60 dB below full scale: no microphone's speech peaks lower. */
const LEAST_PEAK = 0.001;

export interface NeuralSettings {
  readonly model: AcousticModel;
  readonly pronunciations: Pronunciations;
}

export function createNeuralDecoder(settings: NeuralSettings): NeuralDecoder {
  return new GrammarDecoder(settings);
}

class GrammarDecoder implements NeuralDecoder {
  readonly #sounds: Sounds;
  readonly #graphs: ReturnType<typeof createGrammarGraphs>;
  readonly #listener: Listener;
  readonly #settings: NeuralSettings;
  #graph: SoundGraph | null = null;
  /** That of the last utterance. */
  #searched: SoundGraph | null = null;
  #search: PhoneSearch | null = null;
  #voiced = false;
  #peak = 0;
  /** The wordings of an utterance that is closed. */
  #found: readonly Hypothesis[] | null = null;

  constructor(settings: NeuralSettings) {
    const { model, pronunciations } = settings;
    this.#settings = settings;
    this.#sounds = { pronunciations, phones: model.description.phones };
    this.#graphs = createGrammarGraphs(this.#sounds);
    this.#listener = createListener(model);
  }

  readonly setGrammar = (jsgf: string): GrammarSet => {
    const outcome = this.#graphs(jsgf);
    if (outcome.kind !== 'graph') return outcome;
    this.#graph = outcome.graph;
    return { kind: 'set' };
  };

  readonly warm = (jsgf: string): void => void this.#graphs(jsgf);

  readonly start = (): void => {
    this.#listener.reset();
    this.#found = null;
    this.#voiced = false;
    this.#peak = 0;
    if (this.#searched !== this.#graph) this.#searched?.trim(MOST_ARCS_IDLE);
    this.#searched = this.#graph;
    this.#search = this.#graph === null ? null : createPhoneSearch(this.#graph, SEARCH_SETTINGS);
  };

  readonly attune = async (samples: Float32Array): Promise<void> => {
    this.#listener.forget();
    await this.#listener.accept(samples);
  };

  readonly accept = async (samples: Float32Array): Promise<void> => {
    this.#peak = samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), this.#peak);
    this.#take(await this.#listener.accept(samples));
  };

  readonly suit = (voice: VoiceProfile | null): boolean => {
    const fits = voice !== null && fitsModel(voice, this.#settings.model.description);
    this.#listener.through(fits ? changeBy(voice) : null);
    return voice === null || fits;
  };

  readonly teacher = (): VoiceTeacher => createVoiceTeacher(this.#settings);

  readonly words = (): string =>
    (this.#search?.best()?.words ?? []).map(({ word }) => word).join(' ');

  readonly standing = (): Standing => this.#search?.standing() ?? 'incomplete';

  readonly close = async (): Promise<readonly string[]> =>
    toldApart(await this.#close()).map(wordingOf);

  readonly finish = async (opinion?: Opinion | null): Promise<Hearing> => {
    const ranking = await this.rank(opinion);
    if (ranking.peak < LEAST_PEAK) return NOTHING;
    return neuralHearing(ranking, this.#sounds.pronunciations);
  };

  readonly rank = async (opinion?: Opinion | null): Promise<Ranking> => ({
    hypotheses: await this.#close(),
    opinion: opinion ?? null,
    asked: opinion !== undefined,
    peak: this.#peak,
    voiced: this.#voiced,
  });

  async #close(): Promise<readonly Hypothesis[]> {
    if (this.#found !== null) return this.#found;
    this.#take(await this.#listener.flush());
    this.#found = (this.#search?.finish() ?? []).filter(({ words }) => words.length > 0);
    this.#search = null;
    return this.#found;
  }

  #take(frames: readonly Float32Array[]): void {
    for (const frame of frames) {
      this.#voiced ||= isVoiced(frame);
      this.#search?.accept(frame);
    }
  }
}

/**
 * In nats. Of 71 wordings further behind that another engine chose, one was what was said; of 48 nearer ones 15 were.
 */
const WORTH_ASKING = 5;

/**
 * Without what lies far behind, and without what sounds as a better one does, which the grammar alone can tell from it:
 * "to" for "two".
 */
function toldApart(hypotheses: readonly Hypothesis[]): readonly Hypothesis[] {
  const least = (hypotheses[0]?.score ?? 0) - WORTH_ASKING;
  const sounds = new Set<string>();
  return hypotheses.filter(({ acoustic, score }) => {
    if (score < least) return false;
    const sound = acoustic.toFixed(6);
    const isNew = !sounds.has(sound);
    sounds.add(sound);
    return isNew;
  });
}

function changeBy({ correction: rows }: VoiceProfile): FrameChange {
  const correction = toCorrection(rows);
  return (frame, inner) => correctFrame(correction, frame, inner);
}

/** Whether some phone is likelier than the blank. */
const isVoiced = ([blank = 0, ...phones]: Float32Array): boolean =>
  phones.some((phone) => phone > blank);
