import type { Hearing } from '../../core/hearing/hearing.ts';

/** What turns sound into words, behind one face: one utterance at a time. */
export interface Engine {
  /** Loads once, however often it is called; after a failure the next call tries again. */
  readonly load: (onProgress?: (progress: LoadProgress) => void) => Promise<EngineOutcome>;
  /** Takes JSGF text with one public rule; it holds for the utterances after it. */
  readonly setGrammar: (jsgf: string) => Promise<EngineOutcome>;
  /** Prepares a grammar that will be set later, beside what is being heard. Once each. */
  readonly warm: (jsgf: string) => void;
  /** Mono samples at 16 kHz in −1..1; the first ones begin an utterance. */
  readonly accept: (samples: Float32Array) => void;
  /** Ends the utterance. Samples accepted afterwards belong to the next one. */
  readonly finish: () => Promise<Finished>;
  /** Forgets the utterance: nothing of it is delivered any more. */
  readonly reset: () => void;
  /** Called with the words so far while an utterance grows; null stops it. */
  readonly listen: (onPartial: ((words: string) => void) | null) => void;
  readonly state: () => EngineState;
  /** True of an engine that offers one wording only: there is nothing for `phrases` to choose among. */
  readonly hasOneWording?: boolean;
  readonly dispose: () => void;
}

export type EngineState = 'absent' | 'loading' | 'ready';

export interface LoadProgress {
  readonly loadedBytes: number;
  readonly totalBytes: number;
}

export type EngineOutcome =
  { readonly kind: 'ready' } | { readonly kind: 'failed'; readonly message: string };

export type Finished =
  | { readonly kind: 'heard'; readonly hearing: Hearing }
  | { readonly kind: 'failed'; readonly message: string };
