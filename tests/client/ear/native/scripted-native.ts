import type {
  NativeClass,
  NativePhrase,
  NativeRecognition,
  NativeResult,
} from '../../../../client/ear/native/native-recognition.ts';

/** `said('head 192', 0.9)` is a final; a confidence of null makes it a guess. */
export function said(transcript: string, confidence: number | null = 0.9): NativeResult {
  return Object.assign([{ transcript, confidence: confidence ?? 0 }], {
    isFinal: confidence !== null,
  });
}

export interface ScriptedNative {
  readonly native: NativeClass;
  /** Every object that was made, in order; those that start() was called on are sessions. */
  readonly made: Scripted[];
  readonly last: () => Scripted;
  /** How many have started and not ended: a browser allows one. */
  readonly running: () => number;
}

/** A browser's recogniser that does what a test says, in the order of the test, and nothing of its own. */
export class Scripted implements NativeRecognition {
  lang = '';
  continuous = true;
  interimResults = true;
  maxAlternatives = 1;
  processLocally?: boolean;
  phrases?: readonly NativePhrase[];
  readonly calls: string[] = [];
  readonly #listeners = new Map<string, ((event: never) => void)[]>();
  running = false;

  start(): void {
    if (this.running) throw new DOMException('already started', 'InvalidStateError');
    this.calls.push('start');
    this.running = true;
  }

  abort(): void {
    this.calls.push('abort');
  }

  addEventListener(type: string, listener: (event: never) => void): void {
    this.#listeners.set(type, [...(this.#listeners.get(type) ?? []), listener]);
  }

  fire(type: string, event: object = {}): void {
    if (type === 'end') this.running = false;
    for (const listener of this.#listeners.get(type) ?? []) {
      Reflect.apply(listener, this, [event]);
    }
  }

  opens(): void {
    this.fire('start');
    this.fire('audiostart');
  }

  results(...results: readonly NativeResult[]): void {
    this.fire('result', { results });
  }

  fails(error: string): void {
    this.fire('error', { error });
    this.fire('end');
  }
}

export function scriptedNative(available?: NativeClass['available']): ScriptedNative {
  const made: Scripted[] = [];
  class Made extends Scripted {
    constructor() {
      super();
      made.push(this);
    }
  }
  return {
    native: available ? Object.assign(Made, { available }) : Made,
    made,
    last: () => {
      const last = made.at(-1);
      if (last === undefined) throw new Error('none was made yet');
      return last;
    },
    running: () => made.filter(({ running }) => running).length,
  };
}
