import type { Token } from '../../grammar/tokens.ts';
import type { WordSet } from '../words/word-set.ts';

export const has = (set: WordSet, token: Token | undefined): boolean =>
  token !== undefined && set.has(token);

export function hasPause(tokens: readonly Token[], from: number, to: number): boolean {
  for (let at = from; at < to; at += 1) if (tokens[at]?.pause === true) return true;
  return false;
}
