import type { SpeechGrammar } from './grammars.ts';
import type { SpeechRecognitionPhrase } from './phrase.ts';

/** The attributes as they were when start() was called: later changes belong to the next session. */
export interface Snapshot {
  /** '' where neither the object nor the document names one. */
  readonly lang: string;
  readonly continuous: boolean;
  readonly interimResults: boolean;
  readonly maxAlternatives: number;
  readonly processLocally: boolean;
  readonly grammars: readonly SpeechGrammar[];
  /** The one attribute that may change while a session runs. */
  readonly phrases: () => readonly SpeechRecognitionPhrase[];
}
