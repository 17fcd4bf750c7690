import type { Hearing } from '../../../core/hearing/hearing.ts';
import type { Pronunciations } from '../../../core/hearing/dictionary.ts';

/** What the page says to the engine's worker. `utterance` counts up; a reset leaves gaps. */
export type ToEngine =
  | { readonly kind: 'load'; readonly modelUrl: string; readonly pronunciations: Pronunciations }
  | { readonly kind: 'setGrammar'; readonly request: number; readonly jsgf: string }
  /** Compile it while there is time; nothing is answered. */
  | { readonly kind: 'warm'; readonly jsgf: string }
  | { readonly kind: 'accept'; readonly utterance: number; readonly samples: Float32Array }
  | { readonly kind: 'finish'; readonly utterance: number }
  | { readonly kind: 'reset' };

/** What the worker answers. */
export type FromEngine =
  | { readonly kind: 'progress'; readonly loadedBytes: number; readonly totalBytes: number }
  | { readonly kind: 'loaded' }
  | { readonly kind: 'loadFailed'; readonly message: string }
  | { readonly kind: 'grammarSet'; readonly request: number }
  | { readonly kind: 'grammarFailed'; readonly request: number; readonly message: string }
  | { readonly kind: 'partial'; readonly utterance: number; readonly words: string }
  | { readonly kind: 'heard'; readonly utterance: number; readonly hearing: Hearing }
  | { readonly kind: 'decodeFailed'; readonly utterance: number; readonly message: string };
