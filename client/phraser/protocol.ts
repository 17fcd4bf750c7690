import type { Verdict } from '../../core/advice/verdict.ts';
import type { Passage } from '../../core/note/paragraphs/passage.ts';
import type { Manner } from '../../core/replies/phrasing.ts';
import type { Said } from '../../core/replies/said.ts';

/** What the page says to the phrasing model's worker. */
export type ToPhraser =
  | { readonly kind: 'load'; readonly modelUrl: string }
  | {
      readonly kind: 'phrase';
      readonly request: number;
      readonly verdict: Verdict;
      readonly manner: Manner;
    }
  | { readonly kind: 'phrasePassage'; readonly request: number; readonly passage: Passage };

/** What the worker answers. */
export type FromPhraser =
  | { readonly kind: 'loaded' }
  | { readonly kind: 'loadFailed'; readonly message: string }
  /** Null where no sentence passed. */
  | { readonly kind: 'phrased'; readonly request: number; readonly said: Said | null };
