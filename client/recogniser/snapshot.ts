import type { SpeechGrammar } from './grammars.ts';

/** The attributes as they were when start() was called: later changes belong to the next session. */
export interface Snapshot {
  readonly lang: string;
  readonly continuous: boolean;
  readonly interimResults: boolean;
  readonly maxAlternatives: number;
  readonly grammars: readonly SpeechGrammar[];
}
