import { longer } from '../../grammar/longer.ts';
import { type Token, UNKNOWN } from '../../grammar/tokens.ts';

/** All sets that there are: what a word is asked of one set it will be asked of others. */
const SETS: WordSet[] = [];
/** A cell holds as many sets, and that they were asked. */
const SETS_A_CELL = 30;
const ASKED = 1 << SETS_A_CELL;
const FEWEST_WORDS = 256;

/** Of each word by the tokeniser's number for it, side by side: the cells that tell which sets hold it. */
let cells = 0;
let rows = new Int32Array(0);

/** Words that a token may be one of: asked of every token of a sentence, so that what it came to is kept by the word's number. */
export class WordSet {
  private readonly words: ReadonlySet<string>;
  private readonly cell = Math.floor(SETS.length / SETS_A_CELL);
  private readonly bit = 1 << (SETS.length % SETS_A_CELL);

  /** Of the words themselves, or of a text in which they stand apart. */
  constructor(words: Iterable<string> | string) {
    this.words = new Set(typeof words === 'string' ? words.split(' ') : words);
    SETS.push(this);
    cells = this.cell + 1;
    rows = new Int32Array(0);
  }

  static ofAll(sets: readonly WordSet[]): WordSet {
    return new WordSet(sets.flatMap(({ words }) => [...words]));
  }

  hasWord(word: string): boolean {
    return this.words.has(word);
  }

  has(token: Token): boolean {
    const { known } = token;
    if (known === UNKNOWN) return this.words.has(token.text);
    const found = rows[known * cells + this.cell] ?? 0;
    return ((found === 0 ? this.learn(token) : found) & this.bit) !== 0;
  }

  /** Whether one of the tokens from there up to there is. */
  hasAny(tokens: readonly Token[], from = 0, to = tokens.length): boolean {
    for (let at = from; at < to; at += 1) {
      const token = tokens[at];
      if (token !== undefined && this.has(token)) return true;
    }
    return false;
  }

  /** What all sets say of a word; the cell of this one. */
  private learn({ known, text }: Token): number {
    const from = known * cells;
    if (from + cells > rows.length)
      rows = longer(rows, Math.max(known + 1, FEWEST_WORDS) * cells - 1);
    rows.fill(ASKED, from, from + cells);
    for (const set of SETS) {
      if (set.hasWord(text)) rows[from + set.cell] = (rows[from + set.cell] ?? ASKED) | set.bit;
    }
    return rows[from + this.cell] ?? ASKED;
  }
}
