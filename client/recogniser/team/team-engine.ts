import type { Opinion } from '../../../core/hearing/second-opinion.ts';
import type {
  Engine,
  EngineOutcome,
  EngineState,
  Finished,
  LoadProgress,
  OnPartial,
  OnVoice,
  VoiceWatch,
} from '../engine.ts';
import type { GiveLesson } from '../worker/lesson.ts';
import type { Choose, WorkerEngine } from '../worker/worker-engine.ts';
import type { EngineAlone, EngineUse, EngineWish } from './engine-use.ts';
import { createKeptSound } from './kept-sound.ts';

/** Hears by itself, and chooses among what another engine found. */
export interface SecondEngine extends Engine {
  readonly choose: Choose;
}

/** An engine that failed, and what hears instead. */
export interface EngineChange {
  readonly from: EngineUse;
  readonly to: EngineAlone;
  readonly why: string;
  /** In the middle of a sentence, which is heard from its beginning by the other one. */
  readonly midSentence: boolean;
}

export interface TeamOptions {
  readonly neural: WorkerEngine;
  readonly embedded: SecondEngine;
  readonly wish: () => EngineWish;
  /** What the device affords, once the neural engine is there and its pace known. */
  readonly afforded: (pace: number | null) => EngineUse;
  readonly onChange: (change: EngineChange) => void;
  /** Runs it later unless the returned function is called. */
  readonly after: (delayMs: number, task: () => void) => () => void;
}

export interface TeamEngine extends Engine {
  /** What hears; null until something was loaded. */
  readonly use: () => EngineUse | null;
  /** Gives an engine that failed another chance at the next load: somebody asked for it. */
  readonly forgive: () => void;
  /** Teaches the neural engine a voice, where it is loaded. */
  readonly giveLesson: GiveLesson;
}

/**
 * Words must come within 150 ms of the end: an opinion that is not there by then is not waited for. On a busy server it
 * took 18 ms a second of sound, so 60 ms for a sentence and its pauses.
 */
const OPINION_PATIENCE_MS = 100;
/** All but the last half second of a sentence is heard by its end, even where hearing takes as long as speaking. */
const PATIENCE_MS = 8000;

/**
 * Two engines as one. The neural one hears, decides and is loaded first. The embedded one chooses among the wordings that
 * the neural one found, where the device affords it, and takes over where it fails, with all that was said of the sentence.
 */
export function createTeamEngine(options: TeamOptions): TeamEngine {
  return new Team(options);
}

interface FallBack {
  readonly midSentence?: boolean;
  readonly onProgress?: (progress: LoadProgress) => void;
}

class Team implements TeamEngine {
  readonly #options: TeamOptions;
  readonly #kept = createKeptSound();
  readonly #warmed = new Set<string>();
  #use: EngineUse | null = null;
  /** The wish that what hears was loaded by. */
  #wish: EngineWish | null = null;
  #loading: Promise<EngineOutcome> | null = null;
  #neuralFailed = false;
  #secondFailed = false;
  /** While a sentence is heard again, what is said next waits. */
  #hearingAgain = false;
  #grammar = '';
  #onPartial: OnPartial | null = null;

  constructor(options: TeamOptions) {
    this.#options = options;
  }

  readonly use = (): EngineUse | null => this.#use;
  readonly giveLesson: GiveLesson = (lesson) => this.#options.neural.giveLesson(lesson);
  readonly state = (): EngineState => this.#lead().state();
  readonly forgive = (): void => {
    if (!this.#neuralFailed && !this.#secondFailed) return;
    this.#neuralFailed = false;
    this.#secondFailed = false;
    this.#wish = null;
  };

  readonly load = (onProgress?: (progress: LoadProgress) => void): Promise<EngineOutcome> => {
    if (this.#loading === null) {
      this.#loading = this.#open(onProgress).finally(() => {
        this.#loading = null;
      });
    }
    return this.#loading;
  };

  readonly setGrammar = async (jsgf: string): Promise<EngineOutcome> => {
    if (this.#use === null) return UNLOADED;
    this.#kept.forget();
    this.#grammar = jsgf;
    this.#warmed.add(jsgf);
    const outcome = await this.#lead().setGrammar(jsgf);
    // A grammar that cannot be heard leaves its engine as it was.
    if (outcome.kind === 'ready' || this.#lead().state() === 'ready') return outcome;
    return this.#fallBack(outcome.message);
  };

  readonly warm = (jsgf: string): void => {
    this.#warmed.add(jsgf);
    this.#lead().warm(jsgf);
  };

  readonly accept = (samples: Float32Array): void => {
    this.#kept.keep(samples);
    if (this.#hearingAgain) return;
    this.#lead().accept(samples);
  };

  readonly finish = async (): Promise<Finished> => {
    const said = this.#kept.all();
    this.#kept.forget();
    if (this.#use === null) return UNLOADED;
    if (this.#use === 'embedded') return this.#options.embedded.finish();
    const { neural } = this.#options;
    const finished = await this.#inTime(
      this.#hasSecond()
        ? neural.finishWith((wordings) => this.#opinion(said, wordings))
        : neural.finish(),
    );
    return finished.kind === 'heard' ? finished : this.#hearAgain(said, finished);
  };

  readonly reset = (): void => {
    this.#kept.forget();
    this.#lead().reset();
  };

  readonly listen = (onPartial: OnPartial | null): void => {
    this.#onPartial = onPartial;
    this.#lead().listen(onPartial);
  };

  /** The detector is the neural engine's: where that is not there, nothing is told. */
  readonly watch = (onVoice: OnVoice): VoiceWatch => this.#options.neural.watch(onVoice);

  readonly dispose = (): void => {
    this.#options.neural.dispose();
    this.#options.embedded.dispose();
    this.#use = null;
    this.#wish = null;
  };

  #lead(): Engine {
    return this.#use === 'embedded' ? this.#options.embedded : this.#options.neural;
  }

  #hasSecond(): boolean {
    return this.#use === 'both' && this.#options.embedded.state() === 'ready';
  }

  async #open(onProgress?: (progress: LoadProgress) => void): Promise<EngineOutcome> {
    const wish = this.#options.wish();
    const stands = this.#use !== null && this.#wish === wish;
    if (stands && this.#lead().state() === 'ready') {
      this.#reconsider(wish);
      return READY;
    }
    if (wish === 'embedded' || this.#neuralFailed) return this.#openEmbedded(wish, onProgress);
    // It was there and is not any more: it broke between two sentences.
    if (stands && this.#use !== 'embedded') return this.#fallBack(BROKE);
    const outcome = await this.#options.neural.load(onProgress);
    if (outcome.kind === 'failed') {
      this.#use ??= 'neural';
      return this.#fallBack(outcome.message, onProgress && { onProgress });
    }
    this.#become(wish === 'automatic' ? this.#options.afforded(this.#options.neural.pace()) : wish);
    this.#wish = wish;
    if (this.#use === 'both') void this.#openSecond();
    return READY;
  }

  /** The pace was measured while the page and all its files were loading: what it was while hearing is truer. */
  #reconsider(wish: EngineWish): void {
    if (wish !== 'automatic' || this.#use !== 'neural' || this.#secondFailed) return;
    if (this.#options.afforded(this.#options.neural.pace()) !== 'both') return;
    this.#become('both');
    void this.#openSecond();
  }

  async #openEmbedded(
    wish: EngineWish,
    onProgress?: (progress: LoadProgress) => void,
  ): Promise<EngineOutcome> {
    const outcome = await this.#options.embedded.load(onProgress);
    if (outcome.kind === 'failed') return outcome;
    this.#become('embedded');
    this.#wish = wish;
    this.#options.neural.dispose();
    return outcome;
  }

  /** Begins once the first engine is there, so that it never delays it. */
  async #openSecond(): Promise<void> {
    const outcome = await this.#options.embedded.load();
    if (outcome.kind === 'ready') return;
    this.#secondFailed = true;
    if (this.#use === 'both') this.#become('neural');
  }

  #become(use: EngineUse): void {
    this.#lead().listen(null);
    this.#use = use;
    this.#lead().listen(this.#onPartial);
  }

  /** The neural engine failed: the embedded one hears from now on, the grammar in use included. */
  async #fallBack(
    why: string,
    { midSentence = false, onProgress }: FallBack = {},
  ): Promise<EngineOutcome> {
    const from = this.#use ?? 'neural';
    this.#neuralFailed = true;
    const loaded = await this.#openEmbedded(this.#options.wish(), onProgress);
    if (loaded.kind === 'failed') return loaded;
    this.#options.onChange({ from, to: 'embedded', why, midSentence });
    if (this.#grammar === '') return READY;
    const set = await this.#options.embedded.setGrammar(this.#grammar);
    for (const jsgf of this.#warmed) this.#options.embedded.warm(jsgf);
    return set;
  }

  /** Nothing that was said is lost: it is heard from the beginning. */
  async #hearAgain(said: readonly Float32Array[], failed: Finished): Promise<Finished> {
    const why = failed.kind === 'failed' ? failed.message : '';
    this.#hearingAgain = true;
    const ready = await this.#fallBack(why, { midSentence: true });
    if (ready.kind === 'failed') {
      this.#hearingAgain = false;
      return ready;
    }
    const finished = this.#repeat(said);
    this.#hearingAgain = false;
    for (const samples of this.#kept.all()) this.#options.embedded.accept(samples);
    return finished;
  }

  #repeat(said: readonly Float32Array[]): Promise<Finished> {
    for (const samples of said) this.#options.embedded.accept(samples);
    return this.#options.embedded.finish();
  }

  /** A worker that hangs answers nothing and breaks nothing: without an end it would leave the page deaf and unaware. */
  #inTime(finishing: Promise<Finished>): Promise<Finished> {
    return new Promise((resolve) => {
      const callOff = this.#options.after(PATIENCE_MS, () => {
        this.#options.neural.dispose();
        resolve(HANGS);
      });
      void finishing.then((finished) => {
        callOff();
        resolve(finished);
      });
    });
  }

  /** Which wording the second engine chose; undefined where it takes too long or breaks. */
  #opinion(
    said: readonly Float32Array[],
    wordings: readonly string[],
  ): Promise<Opinion | null | undefined> {
    return new Promise((resolve) => {
      const callOff = this.#options.after(OPINION_PATIENCE_MS, () => resolve(undefined));
      void this.#options.embedded.choose(said, wordings).then((choosing) => {
        callOff();
        resolve(choosing.kind === 'chosen' ? choosing.opinion : undefined);
        if (choosing.kind === 'failed') this.#loseSecond(choosing.message);
      });
    });
  }

  #loseSecond(why: string): void {
    if (this.#use !== 'both') return;
    this.#secondFailed = true;
    this.#become('neural');
    this.#options.onChange({ from: 'both', to: 'neural', why, midSentence: false });
  }
}

const READY: EngineOutcome = { kind: 'ready' };
const UNLOADED = { kind: 'failed', message: 'No engine is loaded.' } as const;
const HANGS = { kind: 'failed', message: 'The neural engine does not answer.' } as const;
const BROKE = 'The neural engine stopped between two sentences.';
