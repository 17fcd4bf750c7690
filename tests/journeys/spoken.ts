import { expect } from 'vitest';
import { ringTimers } from '../../core/turn/ring-timers.ts';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Turn } from '../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import { dueTimers } from '../../core/visit/timers.ts';
import { createClockedStamp } from '../support/stamp.ts';

/** What was said, and what is heard back; "@ 10" lets ten minutes pass, and what rings meanwhile is heard. */
export type Exchange = readonly [said: string, heard: string];

type Spoken = Pick<Turn, 'state' | 'memory'>;

/** Speaks a visit line by line, holds each reply to its line, and gives the last turn back. */
export function speakVisit(exchanges: readonly Exchange[]): Turn {
  const { stamp, now, pass } = createClockedStamp();
  const turns: Turn[] = [];
  const before = (): Spoken => turns.at(-1) ?? { state: EMPTY_VISIT, memory: EMPTY_MEMORY };
  const ring = (): readonly string[] =>
    dueTimers(before().state, now()).flatMap(() => {
      const turn = ringTimers({ ...before(), stamp, now: now() });
      if (turn) turns.push(turn);
      return turn ? [turn.reply.spoken] : [];
    });
  for (const [words, heard] of exchanges) {
    const [, minutes] = /^@ (\d+)$/.exec(words) ?? [];
    if (minutes === undefined) {
      const turn = takeTurn({ ...before(), words, stamp });
      turns.push(turn);
      expect({ words, heard: turn.reply.spoken }).toEqual({ words, heard });
    } else {
      pass(Number(minutes));
      expect({ words, heard: ring().join(' ') }).toEqual({ words, heard });
    }
  }
  const last = turns.at(-1);
  if (!last) throw new Error('say at least one line');
  return last;
}
