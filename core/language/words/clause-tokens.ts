import type { Token } from '../../grammar/tokens.ts';
import { FILLERS } from './fillers.ts';
import { WordSet } from './word-set.ts';

export const ARTICLES = new WordSet('the a an my our');
/** What else stands before a name where an article may. */
export const DESCRIBES = new WordSet('new bad another old other this that dead');

/** What begins to tell of the thing that is named before it. */
export const FINITE = new WordSet(
  'is are was were has have had will would can could do does did need needs keep keeps look looks went got',
);

/**
 * Whether nothing but fillers stands before the token in its clause: "replaced the relay the relay was burnt" are two
 * clauses, but "so the relay the relay was burnt" is one.
 */
export function opensClause(tokens: readonly Token[], at: number): boolean {
  for (let place = at; place > 0; place -= 1) {
    if (tokens[place]?.pause === true) return true;
    const before = tokens[place - 1];
    if (before === undefined || !FILLERS.has(before)) return false;
  }
  return true;
}
