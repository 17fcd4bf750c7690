import { type Token, UNKNOWN } from './tokens.ts';

export const CLASS_MARK = '#';
/** The kind of every word that a grammar does not hold. */
export const OTHER = 0;
/** The kind of what stands behind the last token. */
export const END = 1;

/** A token as automata read it: its kind, and whether the sentence pauses before it. */
export const symbolOf = (kind: number, pause: boolean): number => kind * 2 + (pause ? 1 : 0);
export const kindIn = (symbol: number): number => symbol >> 1;
export const isPaused = (symbol: number): boolean => (symbol & 1) !== 0;
export const END_SYMBOL = symbolOf(END, false);

/**
 * Numbers what a grammar tells apart in tokens: which of its words a token is, and which classes it has. A
 * number is asked about faster than a word, and there are no more of them than the grammar has words.
 */
export class Kinds {
  private readonly numbers = new Map<string, number>();
  /** Of words that a tokeniser has numbered: asked about without their letters. */
  private ofKnown: (number | undefined)[] = [];
  private readonly names: (readonly string[])[] = [[], []];

  get count(): number {
    return this.names.length;
  }

  /** Tells tokens of this word apart from now on. */
  learn(word: string): number {
    return this.numbers.get(word) ?? this.add(word, [word]);
  }

  of({ text, known, classes }: Token): number {
    if (known !== UNKNOWN) return (this.ofKnown[known] ??= this.numbers.get(text) ?? OTHER);
    const word = this.numbers.get(text);
    if (classes.length === 0) return word ?? OTHER;
    const key = (word === undefined ? '' : text) + CLASS_MARK + classes.join(CLASS_MARK);
    const marked = classes.map((name) => CLASS_MARK + name);
    return this.numbers.get(key) ?? this.add(key, word === undefined ? marked : [text, ...marked]);
  }

  /** The word and the classes of a kind, as starters and needs are written. */
  namesOf(kind: number): readonly string[] {
    return this.names[kind] ?? [];
  }

  private add(key: string, names: readonly string[]): number {
    const fresh = this.names.length;
    this.names.push(names);
    this.numbers.set(key, fresh);
    this.ofKnown = [];
    return fresh;
  }
}
