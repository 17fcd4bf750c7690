import type { Token } from '../../grammar/tokens.ts';
import { FILLERS } from './fillers.ts';
import { WordSet } from './word-set.ts';

/** Tokens from one place up to another. */
export interface TokenRange {
  readonly start: number;
  readonly end: number;
}

/** A stretch of a sentence that is looked through for words and wordings. */
export class Clause implements TokenRange {
  readonly tokens: readonly Token[];
  readonly start: number;
  readonly end: number;
  private joined: string | null = null;

  constructor(tokens: readonly Token[], start: number, end: number) {
    this.tokens = tokens;
    this.start = start;
    this.end = end;
  }

  /** Its words, each followed by a space, the first preceded by one. */
  get words(): string {
    return (this.joined ??= this.join());
  }

  holds(set: WordSet): boolean {
    return set.hasAny(this.tokens, this.start, this.end);
  }

  private join(): string {
    let words = ' ';
    for (let at = this.start; at < this.end; at += 1) words += `${this.tokens[at]?.text ?? ''} `;
    return words;
  }
}

/** A pattern over a clause's words, looked for only where one of the words in the pattern is said: most clauses say none. */
export class Wording {
  private readonly pattern: RegExp;
  private readonly within: WordSet;

  constructor(pattern: RegExp) {
    this.pattern = pattern;
    this.within = wordsIn(pattern);
  }

  isIn(clause: Clause): boolean {
    return clause.holds(this.within) && this.pattern.test(clause.words);
  }
}

/** Every word that is written out in a pattern and need be said. Throws where a word has an ending that may be left out. */
function wordsIn({ source }: RegExp): WordSet {
  const [cut] = /(?<!\\)[a-z]+(?:[?*+]|\(\?:)/.exec(source) ?? [];
  if (cut !== undefined) throw new Error(`write out each word of ${cut}… in ${source}`);
  return new WordSet(source.replace(MAY_BE_LEFT_OUT, '').match(/[a-z]+/g) ?? []);
}
const MAY_BE_LEFT_OUT = /\(\?:[^()]*\)[?*]/g;

/** The next place from which the tokens stand behind a pause; the end where there is none. */
export function pauseAfter(tokens: readonly Token[], at: number): number {
  let next = at + 1;
  while (next < tokens.length && tokens[next]?.pause !== true) next += 1;
  return Math.min(next, tokens.length);
}

/** Whether one of the stretches read reaches into this one. */
export function isUnread({ start, end }: TokenRange, read: readonly TokenRange[]): boolean {
  for (const each of read) if (each.start < end && each.end > start) return false;
  return true;
}

/** Two that are no fillers. */
export function saysTwoWords(tokens: readonly Token[], { start, end }: TokenRange): boolean {
  let count = 0;
  for (let at = start; at < end && count < 2; at += 1) {
    const token = tokens[at];
    if (token !== undefined && !FILLERS.has(token)) count += 1;
  }
  return count === 2;
}
