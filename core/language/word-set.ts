import { type Token, UNKNOWN } from '../grammar/tokens.ts';

/** What was found out of a word, by the tokeniser's number for it. */
const [NOT_ASKED, HELD, NOT_HELD] = [0, 1, 2];
const ROOM = 256;

/** Words that a token may be one of: asked of every token of a sentence, so that what it came to is kept by the word's number. */
export class WordSet {
  private readonly words: ReadonlySet<string>;
  private found = new Uint8Array(ROOM);

  /** Of the words themselves, or of a text in which they stand apart. */
  constructor(words: Iterable<string> | string) {
    this.words = new Set(typeof words === 'string' ? words.split(' ') : words);
  }

  hasWord(word: string): boolean {
    return this.words.has(word);
  }

  has(token: Token): boolean {
    const { known } = token;
    if (known === UNKNOWN) return this.words.has(token.text);
    const found = this.found[known] ?? NOT_ASKED;
    return found === NOT_ASKED ? this.learn(token) : found === HELD;
  }

  /** Whether one of the tokens from there up to there is. */
  hasAny(tokens: readonly Token[], from = 0, to = tokens.length): boolean {
    for (let at = from; at < to; at += 1) {
      const token = tokens[at];
      if (token !== undefined && this.has(token)) return true;
    }
    return false;
  }

  private learn({ known, text }: Token): boolean {
    const holds = this.words.has(text);
    if (known >= this.found.length) {
      const longer = new Uint8Array(Math.max(known + 1, this.found.length * 2));
      longer.set(this.found);
      this.found = longer;
    }
    this.found[known] = holds ? HELD : NOT_HELD;
    return holds;
  }
}
