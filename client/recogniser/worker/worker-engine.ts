import type { Opinion } from '../../../core/hearing/second-opinion.ts';
import { createLessonLine } from './lesson-line.ts';
import type { GiveLesson } from './lesson.ts';
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
import { inPortions } from './in-portions.ts';
import type { FromEngine, ToEngine } from './protocol.ts';
import { joined } from '../../../core/hearing/joined.ts';

/** As much of a Worker as an engine uses. */
export interface EngineWorker<Files> {
  readonly post: (message: ToEngine<Files>, transfer?: Transferable[]) => void;
  readonly listen: (onMessage: (message: FromEngine) => void, onCrash: () => void) => void;
  readonly terminate: () => void;
}

export interface WorkerEngineOptions<Files> {
  readonly createWorker: () => EngineWorker<Files>;
  /** What the worker loads, and from where. */
  readonly files: Files;
  /** Runs it later unless the returned function is called. */
  readonly after: (delayMs: number, task: () => void) => () => void;
}

export interface WorkerEngine extends Engine {
  /** Tells nothing where the worker has no detector. */
  readonly watch: (onVoice: OnVoice) => VoiceWatch;
  /** As `finish`, and what another engine makes of the wordings is weighed, where this one gives several. */
  readonly finishWith: (opine: Opine) => Promise<Finished>;
  /** Which of these wordings the sound is likeliest to be, where this engine can choose. */
  readonly choose: Choose;
  /** Time to hear by time heard, of the last utterance or when it loaded; null before, and where nobody measures it. */
  readonly pace: () => number | null;
  /** For an engine that learns a voice; one that hears by a voice goes on so when it had to be loaded anew. */
  readonly giveLesson: GiveLesson;
}

/** Null where none of the wordings was known, undefined where the answer came too late. */
export type Opine = (wordings: readonly string[]) => Promise<Opinion | null | undefined>;

export type Choose = (
  sound: readonly Float32Array[],
  wordings: readonly string[],
) => Promise<Choosing>;

export type Choosing =
  | { readonly kind: 'chosen'; readonly opinion: Opinion | null }
  | { readonly kind: 'failed'; readonly message: string };

/**
 * A download tells every few kilobytes, and compiling the 14 MB of the runtime took 8 s on a machine ten times too busy.
 * Whatever is silent for a minute hangs: a connection that neither delivers nor breaks, a worker that never starts.
 */
const STALLED_MS = 60_000;
const STALLED = 'The speech engine did not come: reload with a connection.';
const CRASHED = 'The speech engine stopped: press to start it again.';

/** An engine in a worker of its own, behind the engine port. */
export function createWorkerEngine<Files>(options: WorkerEngineOptions<Files>): WorkerEngine {
  return new EngineInWorker(options);
}

class EngineInWorker<Files> implements WorkerEngine {
  readonly #options: WorkerEngineOptions<Files>;
  #worker: EngineWorker<Files> | null = null;
  #loading: Promise<EngineOutcome> | null = null;
  #state: EngineState = 'absent';
  #pace: number | null = null;
  #utterance = 1;
  #request = 0;
  #onProgress: (progress: LoadProgress) => void = () => undefined;
  #onPartial: OnPartial | null = null;
  #watch = 0;
  #onVoice: OnVoice | null = null;
  #stopWatching: () => void = () => undefined;
  #answerLoad: (outcome: EngineOutcome) => void = () => undefined;
  readonly #warmed = new Set<string>();
  readonly #grammarWaiting = new Map<number, (outcome: EngineOutcome) => void>();
  readonly #lessons = createLessonLine((message) => {
    this.#worker?.post(message);
    return this.#worker !== null;
  });
  readonly #finishWaiting = new Map<number, (finished: Finished) => void>();
  readonly #opinionWanted = new Map<number, Opine>();
  readonly #choiceWaiting = new Map<number, (choosing: Choosing) => void>();

  constructor(options: WorkerEngineOptions<Files>) {
    this.#options = options;
  }

  readonly state = (): EngineState => this.#state;
  readonly pace = (): number | null => this.#pace;
  readonly giveLesson: GiveLesson = (lesson) => this.#lessons.give(lesson);

  readonly load = (onProgress?: (progress: LoadProgress) => void): Promise<EngineOutcome> => {
    if (onProgress) this.#onProgress = onProgress;
    this.#loading ??= this.#open();
    return this.#loading;
  };

  readonly setGrammar = (jsgf: string): Promise<EngineOutcome> => {
    if (this.#worker === null) return Promise.resolve({ kind: 'failed', message: CRASHED });
    this.#request += 1;
    const request = this.#request;
    this.#utterance += 1;
    this.#worker.post({ kind: 'setGrammar', request, jsgf });
    return new Promise((resolve) => this.#grammarWaiting.set(request, resolve));
  };

  readonly warm = (jsgf: string): void => {
    if (this.#worker === null || this.#warmed.has(jsgf)) return;
    this.#warmed.add(jsgf);
    this.#worker.post({ kind: 'warm', jsgf });
  };

  readonly accept = (samples: Float32Array): void => {
    const copy = samples.slice();
    this.#worker?.post({ kind: 'accept', utterance: this.#utterance, samples: copy }, [
      copy.buffer,
    ]);
  };

  readonly finish = (): Promise<Finished> => this.#finish(null);

  readonly finishWith = (opine: Opine): Promise<Finished> => this.#finish(opine);

  readonly choose: Choose = (sound, wordings) => {
    if (this.#worker === null) return Promise.resolve({ kind: 'failed', message: CRASHED });
    this.#request += 1;
    const request = this.#request;
    const samples = joined(sound);
    this.#worker.post({ kind: 'choose', request, samples, wordings }, [samples.buffer]);
    return new Promise((resolve) => this.#choiceWaiting.set(request, resolve));
  };

  readonly reset = (): void => {
    this.#utterance += 1;
    this.#worker?.post({ kind: 'reset', utterance: this.#utterance });
  };

  readonly listen = (onPartial: OnPartial | null): void => {
    this.#onPartial = onPartial;
  };

  readonly watch = (onVoice: OnVoice): VoiceWatch => {
    this.#watch += 1;
    this.#onVoice = onVoice;
    const watch = this.#watch;
    const post = (fromSample: number, samples: Float32Array): void =>
      this.#worker?.post({ kind: 'watch', watch, fromSample, samples });
    return {
      accept: inPortions(post),
      close: () => {
        if (watch === this.#watch) this.#onVoice = null;
      },
    };
  };

  readonly dispose = (): void => this.#drop(CRASHED);

  #open(): Promise<EngineOutcome> {
    const worker = this.#options.createWorker();
    this.#worker = worker;
    this.#state = 'loading';
    worker.listen(
      (message) => this.#receive(message),
      () => this.#drop(CRASHED),
    );
    worker.post({ kind: 'load', files: this.#options.files });
    this.#watchLoading();
    return new Promise((resolve) => {
      this.#answerLoad = resolve;
    });
  }

  /** However slow it is, it goes on as long as more of it comes. */
  #watchLoading(): void {
    this.#stopWatching();
    this.#stopWatching = this.#options.after(STALLED_MS, () => this.#drop(STALLED));
  }

  #finish(opine: Opine | null): Promise<Finished> {
    const worker = this.#worker;
    if (worker === null) return Promise.resolve({ kind: 'failed', message: CRASHED });
    const utterance = this.#utterance;
    this.#utterance += 1;
    if (opine !== null) this.#opinionWanted.set(utterance, opine);
    worker.post({ kind: 'finish', utterance, awaitsOpinion: opine !== null });
    return new Promise((resolve) => this.#finishWaiting.set(utterance, resolve));
  }

  #receive(message: FromEngine): void {
    switch (message.kind) {
      case 'progress': {
        if (this.#state === 'loading') this.#watchLoading();
        this.#onProgress(message);
        return;
      }
      case 'loaded': {
        this.#stopWatching();
        this.#state = 'ready';
        this.#pace = message.pace;
        this.#answerLoad({ kind: 'ready' });
        this.#lessons.again();
        return;
      }
      case 'loadFailed': {
        this.#drop(message.message);
        return;
      }
      case 'lessonAnswered': {
        this.#lessons.answered(message.request, message.answer);
        return;
      }
      case 'grammarSet': {
        this.#answerGrammar(message.request, { kind: 'ready' });
        return;
      }
      case 'grammarFailed': {
        this.#answerGrammar(message.request, { kind: 'failed', message: message.message });
        return;
      }
      case 'partial':
        if (message.utterance === this.#utterance)
          this.#onPartial?.(message.words, message.standing);
        return;
      case 'voice':
        if (message.watch === this.#watch) this.#onVoice?.(message.chances, message.untilSample);
        return;
      case 'heard': {
        this.#pace = message.pace ?? this.#pace;
        this.#answerFinish(message.utterance, { kind: 'heard', hearing: message.hearing });
        return;
      }
      case 'wordings': {
        void this.#giveOpinion(message.utterance, message.wordings);
        return;
      }
      case 'chosen': {
        this.#answerChoice(message.request, { kind: 'chosen', opinion: message.opinion });
        return;
      }
      // An aborted WASM module answers nothing more: the next load() makes a new one.
      case 'decodeFailed':
        this.#drop(message.message);
        return;
    }
  }

  async #giveOpinion(utterance: number, wordings: readonly string[]): Promise<void> {
    const worker = this.#worker;
    const opinion = await this.#opinionWanted.get(utterance)?.(wordings);
    worker?.post({ kind: 'opinion', utterance, ...(opinion === undefined ? {} : { opinion }) });
  }

  #answerChoice(request: number, choosing: Choosing): void {
    this.#choiceWaiting.get(request)?.(choosing);
    this.#choiceWaiting.delete(request);
  }

  #answerGrammar(request: number, outcome: EngineOutcome): void {
    this.#grammarWaiting.get(request)?.(outcome);
    this.#grammarWaiting.delete(request);
  }

  #answerFinish(utterance: number, finished: Finished): void {
    this.#finishWaiting.get(utterance)?.(finished);
    this.#finishWaiting.delete(utterance);
    this.#opinionWanted.delete(utterance);
  }

  /** Everyone who waits is told; the next load() begins anew. */
  #drop(message: string): void {
    this.#stopWatching();
    this.#worker?.terminate();
    this.#worker = null;
    this.#loading = null;
    this.#warmed.clear();
    this.#state = 'absent';
    this.#answerLoad({ kind: 'failed', message });
    this.#lessons.cut(message);
    for (const request of [...this.#grammarWaiting.keys()]) {
      this.#answerGrammar(request, { kind: 'failed', message });
    }
    for (const request of [...this.#choiceWaiting.keys()]) {
      this.#answerChoice(request, { kind: 'failed', message });
    }
    for (const utterance of [...this.#finishWaiting.keys()]) {
      this.#answerFinish(utterance, { kind: 'failed', message });
    }
  }
}
