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

/** As it is but for this; of one shape with all others, as tokens are looked at more often than anything else. */
export function changed(token: Token, fresh: Partial<Token>): Token {
  const { text, known, start, end, pause, value, classes } = { ...token, ...fresh };
  return { text, known, start, end, pause, value, classes };
}
