import { ringTimers } from '../../core/turn/ring-timers.ts';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Stamp, type Turn } from '../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import { dueTimers } from '../../core/visit/timers.ts';
import { DEVICE, ulidOf, VISIT } from './stamp.ts';

const START = 1_700_000_000_000;

/** A visit by the clock: each sentence at its minute, and whatever rings before it. */
export interface TimedVisit {
  /** All that was said and rung, in order. */
  readonly turns: readonly Turn[];
  /** What the visit said by itself. */
  readonly rung: readonly Turn[];
  readonly last: Turn;
}

export type TimedLine = readonly [minute: number, words: string | null];

/** A line without words only lets the time pass. */
export function timedVisit(...lines: readonly TimedLine[]): TimedVisit {
  const clock = { at: START };
  const stamp = createStamp(clock);
  const turns: Turn[] = [];
  const rung: Turn[] = [];
  const sofar = (): Pick<Turn, 'state' | 'memory'> =>
    turns.at(-1) ?? { state: EMPTY_VISIT, memory: EMPTY_MEMORY };
  for (const [minute, words] of lines) {
    const now = START + minute * 60_000;
    for (const { endsAt } of dueTimers(sofar().state, now)) {
      clock.at = endsAt;
      const turn = ringTimers({ ...sofar(), stamp, now: endsAt });
      if (turn) rung.push(turn);
      if (turn) turns.push(turn);
    }
    clock.at = now;
    if (words !== null) turns.push(takeTurn({ ...sofar(), words, stamp }));
  }
  const last = turns.at(-1);
  if (!last) throw new Error('say at least one sentence');
  return { turns, rung, last };
}

function createStamp(clock: { readonly at: number }): Stamp {
  let seq = 0;
  return (body) => {
    seq += 1;
    return { ...body, id: ulidOf(1000 + seq), device: DEVICE, visit: VISIT, seq, at: clock.at };
  };
}
