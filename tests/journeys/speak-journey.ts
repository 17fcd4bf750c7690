import { draftNote } from '../../core/note/draft-note.ts';
import { noteText } from '../../core/note/note-text.ts';
import { ringTimers } from '../../core/turn/ring-timers.ts';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Memory, type Stamp } from '../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { createStamp } from '../support/stamp.ts';
import { type Exchange, SILENCE } from './visit-file.ts';

export interface SpokenJourney {
  /** What was heard back for each sentence, as the voice gets it. */
  readonly heard: readonly string[];
  readonly note: string;
}

interface Now {
  readonly state: VisitState;
  readonly memory: Memory;
}

const MINUTE_MS = 60_000;
const DAY_STARTS_AT = Date.UTC(2026, 0, 5);
const FIRST_MINUTE = 8 * 60;

/** Takes a visit through the same code as the page, from an empty log; where nothing is said, timers ring. */
export function speakJourney(exchanges: readonly Exchange[]): SpokenJourney {
  const stamp = createStamp();
  let minute = FIRST_MINUTE - 1;
  let now: Now = { state: EMPTY_VISIT, memory: EMPTY_MEMORY };
  const heard: string[] = [];
  for (const { clock, said } of exchanges) {
    minute = clock ?? minute + 1;
    const at = DAY_STARTS_AT + minute * MINUTE_MS;
    const input = { ...now, stamp: stampedAt(stamp, at) };
    const turn =
      said === SILENCE ? ringTimers({ ...input, now: at }) : takeTurn({ ...input, words: said });
    heard.push(turn === null || turn.reply.spoken === '' ? SILENCE : turn.reply.spoken);
    now = turn ?? now;
  }
  return { heard, note: noteText(draftNote(now.state)) };
}

/** Ids count up as ever; only the clock is the file's. */
const stampedAt =
  (stamp: Stamp, at: number): Stamp =>
  (body) => ({ ...stamp(body), at });
