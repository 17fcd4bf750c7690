/** One word of a sentence as a tokeniser delivers it. */
export interface Token {
  readonly text: string;
  /** The number by which the tokeniser tells a word without classes from others; `UNKNOWN` where it gives none. */
  readonly known: number;
  /** Where it stood in the sentence as given. */
  readonly start: number;
  readonly end: number;
  /** Punctuation stood before it. */
  readonly pause: boolean;
  /** What a written number is worth. */
  readonly value: number | null;
  readonly classes: readonly string[];
}

export const UNKNOWN = -1;
