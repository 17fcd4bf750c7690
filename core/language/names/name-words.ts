import { everyWordOf } from '../../grammar/vocabulary.ts';
import { HOLES } from '../holes.ts';

/** Every word in the names of what is measured, of places, parts and units. */
export const NAME_WORDS: readonly string[] = ['quantity', 'place', 'part', 'equipment'].flatMap(
  (hole) => {
    const node = HOLES[hole];
    return node === undefined ? [] : everyWordOf(node);
  },
);
