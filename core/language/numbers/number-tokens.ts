import type { Token } from '../../grammar/tokens.ts';
import { ONES, TEENS, TENS } from './number-words.ts';
import { WordSet } from '../words/word-set.ts';

const NUMBER_WORDS = new WordSet([
  ...[...ONES, ...TEENS, ...TENS],
  ...[
    'zero',
    'oh',
    'hundred',
    'thousand',
    'million',
    'billion',
    'dozen',
    'point',
    'minus',
    'negative',
    'half',
  ],
]);

/** Whether a token is of a number, by itself. */
export const isNumber = (token: Token | undefined): boolean =>
  token !== undefined && (token.value !== null || NUMBER_WORDS.has(token));
