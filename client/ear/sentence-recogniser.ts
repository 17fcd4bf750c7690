import type { WeightedGrammar } from '../../core/hearing/jsgf.ts';
import type { Alternative } from '../../core/language/choose-understanding.ts';

/** One sentence of a track, heard against grammars: the part of a speech recogniser that the ear uses. */
export interface SentenceRecogniser {
  /** Ready to start; rejects where it cannot be had. */
  load(): Promise<void>;
  /** Throws while an earlier sentence has not ended. */
  start(sentence: {
    /** Null for one that has a microphone of its own. */
    readonly track: MediaStreamTrack | null;
    readonly grammars: readonly WeightedGrammar[];
    readonly report: (report: RecogniserReport) => void;
  }): void;
  /** Stops at once and delivers nothing; `ended` still comes. */
  abort(): void;
}

export type RecogniserReport =
  | { readonly kind: 'hearing' }
  /** What it takes the sentence for so far. */
  | { readonly kind: 'guess'; readonly words: string }
  /** Likeliest first. */
  | { readonly kind: 'words'; readonly alternatives: readonly Alternative[] }
  | { readonly kind: 'noMatch' }
  | { readonly kind: 'error'; readonly error: string }
  /** Always the last one, whatever happened. */
  | { readonly kind: 'ended' };
