import { expect } from 'vitest';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Turn } from '../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import { createStamp } from '../support/stamp.ts';

/** What was said, and what is heard back. */
export type Exchange = readonly [said: string, heard: string];

/** Speaks a visit line by line, holds each reply to its line, and gives the last turn back. */
export function speakVisit(exchanges: readonly Exchange[]): Turn {
  const stamp = createStamp();
  const start: Pick<Turn, 'state' | 'memory'> = { state: EMPTY_VISIT, memory: EMPTY_MEMORY };
  const turns = exchanges.reduce<readonly Turn[]>((before, [words, heard]) => {
    const { state, memory } = before.at(-1) ?? start;
    const turn = takeTurn({ state, memory, words, stamp });
    expect({ words, heard: turn.reply.spoken }).toEqual({ words, heard });
    return [...before, turn];
  }, []);
  const last = turns.at(-1);
  if (!last) throw new Error('say at least one line');
  return last;
}
