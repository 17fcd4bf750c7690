import type { Hearing } from '../../core/hearing/hearing.ts';
import type { Standing } from '../../core/hearing/standing.ts';

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
  /** Called while an utterance grows; null stops it. */
  readonly listen: (onPartial: OnPartial | null) => void;
  /** Listens for a voice in all sound from now on; left out by an engine that cannot. */
  readonly watch?: (onVoice: OnVoice) => VoiceWatch;
  readonly state: () => EngineState;
  /** True of an engine that offers one wording only: there is nothing for `phrases` to choose among. */
  readonly hasOneWording?: boolean;
  readonly dispose: () => void;
}

/** The words so far, and what may follow them; null where the engine does not know. */
export type OnPartial = (words: string, standing: Standing | null) => void;

/** Chances of a voice, 0..1, one a window of 32 ms, the last of them ending at this sample of the watch. */
export type OnVoice = (chances: readonly number[], untilSample: number) => void;

/** Answers come in order, but late, or never where the detector is not loaded or broke. */
export interface VoiceWatch {
  /** Mono samples at 16 kHz in −1..1, from the first one on, whether or not anybody speaks. */
  readonly accept: (samples: Float32Array) => void;
  readonly close: () => void;
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
