/** What is known of the voice that speaks here, when nobody teaches. */
export type VoiceKnown =
  | { readonly kind: 'none' }
  | { readonly kind: 'learnt' }
  /** Something is kept that cannot be used: it is left alone until it is taught anew or forgotten. */
  | { readonly kind: 'damaged' }
  | { readonly kind: 'otherModel' };

/** How the sentence before went, shown beside the one to be read. */
export type LastReading = 'none' | 'learnt' | 'again' | 'skipped' | 'silence';

export type Conclusion = 'better' | 'noBetter' | 'tooFew' | 'notKept';

export type Trouble = 'noMicrophone' | 'learnsNothing' | 'broke';

/** What the page shows of the lessons. */
export type Lessons =
  | { readonly kind: 'closed' }
  | { readonly kind: 'opening' }
  | {
      readonly kind: 'reading';
      /** Which prompt, from 0. */
      readonly at: number;
      readonly hearing: boolean;
      readonly last: LastReading;
    }
  | { readonly kind: 'working' }
  | { readonly kind: 'concluded'; readonly conclusion: Conclusion }
  | { readonly kind: 'trouble'; readonly trouble: Trouble };

export interface TeachingState {
  readonly known: VoiceKnown;
  readonly lessons: Lessons;
  /** The prompt to go on with after a stop; 0 begins. */
  readonly resumesAt: number;
}
