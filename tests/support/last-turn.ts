import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Turn } from '../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import { createStamp } from './stamp.ts';

/** The turn of the last sentence, said behind the others on one visit, a minute apart. */
export function last(first: string, ...more: readonly string[]): Turn {
  const stamp = createStamp();
  const turn = takeTurn({ state: EMPTY_VISIT, memory: EMPTY_MEMORY, words: first, stamp });
  return more.reduce<Turn>(
    ({ state, memory }, words) => takeTurn({ state, memory, words, stamp }),
    turn,
  );
}
