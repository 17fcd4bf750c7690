import type { Pronunciations } from '../../../core/hearing/dictionary.ts';
import type { Engine, EngineOutcome, EngineState, Finished, LoadProgress } from '../engine.ts';
import type { FromEngine, ToEngine } from './protocol.ts';

/** As much of a Worker as the engine uses. */
export interface EngineWorker {
  readonly post: (message: ToEngine, transfer?: Transferable[]) => void;
  readonly listen: (onMessage: (message: FromEngine) => void, onCrash: () => void) => void;
  readonly terminate: () => void;
}

export interface EmbeddedEngineOptions {
  readonly createWorker: () => EngineWorker;
  /** Folder of the model files. */
  readonly modelUrl: string;
  /** Words that the model's dictionary lacks. */
  readonly pronunciations: Pronunciations;
}

const CRASHED = 'The speech engine stopped: press to start it again.';

/** The embedded finite-state engine behind the engine port, in a worker of its own. */
export function createEmbeddedEngine(options: EmbeddedEngineOptions): Engine {
  return new EmbeddedEngine(options);
}

class EmbeddedEngine implements Engine {
  readonly #options: EmbeddedEngineOptions;
  #worker: EngineWorker | null = null;
  #loading: Promise<EngineOutcome> | null = null;
  #state: EngineState = 'absent';
  #utterance = 1;
  #request = 0;
  #onProgress: (progress: LoadProgress) => void = () => undefined;
  #onPartial: ((words: string) => void) | null = null;
  #answerLoad: (outcome: EngineOutcome) => void = () => undefined;
  readonly #warmed = new Set<string>();
  readonly #grammarWaiting = new Map<number, (outcome: EngineOutcome) => void>();
  readonly #finishWaiting = new Map<number, (finished: Finished) => void>();

  constructor(options: EmbeddedEngineOptions) {
    this.#options = options;
  }

  readonly state = (): EngineState => this.#state;

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

  readonly finish = (): Promise<Finished> => {
    if (this.#worker === null) return Promise.resolve({ kind: 'failed', message: CRASHED });
    const utterance = this.#utterance;
    this.#utterance += 1;
    this.#worker.post({ kind: 'finish', utterance });
    return new Promise((resolve) => this.#finishWaiting.set(utterance, resolve));
  };

  readonly reset = (): void => {
    this.#utterance += 1;
    this.#worker?.post({ kind: 'reset' });
  };

  readonly listen = (onPartial: ((words: string) => void) | null): void => {
    this.#onPartial = onPartial;
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
    const { modelUrl, pronunciations } = this.#options;
    worker.post({ kind: 'load', modelUrl, pronunciations });
    return new Promise((resolve) => {
      this.#answerLoad = resolve;
    });
  }

  #receive(message: FromEngine): void {
    switch (message.kind) {
      case 'progress': {
        this.#onProgress(message);
        return;
      }
      case 'loaded':
        this.#state = 'ready';
        {
          this.#answerLoad({ kind: 'ready' });
          return;
        }
      case 'loadFailed': {
        this.#drop(message.message);
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
        if (message.utterance === this.#utterance) this.#onPartial?.(message.words);
        return;
      case 'heard': {
        this.#answerFinish(message.utterance, message);
        return;
      }
      // An aborted WASM module answers nothing more: the next load() makes a new one.
      case 'decodeFailed':
        this.#drop(message.message);
        return;
    }
  }

  #answerGrammar(request: number, outcome: EngineOutcome): void {
    this.#grammarWaiting.get(request)?.(outcome);
    this.#grammarWaiting.delete(request);
  }

  #answerFinish(utterance: number, finished: Finished): void {
    this.#finishWaiting.get(utterance)?.(finished);
    this.#finishWaiting.delete(utterance);
  }

  /** Everyone who waits is told; the next load() begins anew. */
  #drop(message: string): void {
    this.#worker?.terminate();
    this.#worker = null;
    this.#loading = null;
    this.#warmed.clear();
    this.#state = 'absent';
    this.#answerLoad({ kind: 'failed', message });
    for (const request of [...this.#grammarWaiting.keys()]) {
      this.#answerGrammar(request, { kind: 'failed', message });
    }
    for (const utterance of [...this.#finishWaiting.keys()]) {
      this.#answerFinish(utterance, { kind: 'failed', message });
    }
  }
}
