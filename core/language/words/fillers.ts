import { WordSet } from './word-set.ts';

/** Words that carry nothing for us and may stand around what does. */
export const FILLERS = new WordSet(
  'uh um er ah hm hmm okay ok so alright alrighty well now then and please hey like right also got yeah oh ' +
    'the a an just here there all see let us you know i have mean think guess looks it is that at ' +
    'is reading readings good great cool thanks thank man',
);
