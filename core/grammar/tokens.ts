/** One word of a sentence as a tokeniser delivers it. */
export interface Token {
  readonly text: string;
  /** Where it stood in the sentence as given. */
  readonly start: number;
  readonly end: number;
  /** Punctuation stood before it. */
  readonly pause: boolean;
  /** What a written number is worth. */
  readonly value: number | null;
  readonly classes: readonly string[];
}
