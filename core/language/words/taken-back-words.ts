import type { Token } from '../../grammar/tokens.ts';
import { ARTICLES } from './clause-tokens.ts';
import type { Phrases } from './phrases-at.ts';

/** "Fifteen, not fifteen, fifty": what was said is said once more to take it back. */
export const DENIES = 'not';

/** How many words that take back stand there, one such phrase behind the other. */
export function taking(tokens: readonly Token[], at: number, phrases: readonly Phrases[]): number {
  let end = at;
  for (;;) {
    const length = Math.max(...phrases.map((each) => each.at(tokens, end)?.length ?? 0));
    if (length === 0) return end - at;
    end += length;
  }
}

interface Said {
  readonly from: number;
  readonly to: number;
}

/** Past a "not the relay" of what was said before; the place itself where that does not stand there. */
export function deniedTo(tokens: readonly Token[], at: number, { from, to }: Said): number {
  if (tokens[at]?.text !== DENIES || from === to) return at;
  const article = tokens[at + 1];
  const start = article !== undefined && ARTICLES.has(article) ? at + 2 : at + 1;
  for (let index = 0; index < to - from; index += 1) {
    if (tokens[start + index]?.text !== tokens[from + index]?.text) return at;
  }
  return start + to - from;
}
