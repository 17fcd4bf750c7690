import { readdirSync, readFileSync } from 'node:fs';
import { ringTimers } from '../../../core/turn/ring-timers.ts';
import { takeTurn } from '../../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Turn } from '../../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../../core/visit/empty-visit.ts';
import type { VisitState } from '../../../core/visit/state.ts';
import { parseJourney, SILENCE } from '../../journeys/visit-file.ts';
import { createStamp } from '../../support/stamp.ts';

export interface Journey {
  readonly name: string;
  readonly turns: readonly Turn[];
  readonly state: VisitState;
}

const FOLDER = new URL('../../journeys/', import.meta.url);
const MINUTE_MS = 60_000;
const DAY_STARTS_AT = Date.UTC(2026, 0, 5);
const FIRST_MINUTE = 8 * 60;

/** The journeys' visits once more, turn by turn. */
export function readJourneys(): readonly Journey[] {
  const files = readdirSync(FOLDER).filter((file) => file.endsWith('.visit'));
  return files.map((file) => journeyOf(file));
}

function journeyOf(file: string): Journey {
  const stampNow = createStamp();
  const turns: Turn[] = [];
  let minute = FIRST_MINUTE - 1;
  let now = { state: EMPTY_VISIT, memory: EMPTY_MEMORY };
  for (const { clock, said } of parseJourney(readFileSync(new URL(file, FOLDER), 'utf8'))
    .exchanges) {
    minute = clock ?? minute + 1;
    const at = DAY_STARTS_AT + minute * MINUTE_MS;
    const stamp: typeof stampNow = (body) => ({ ...stampNow(body), at });
    const input = { ...now, stamp };
    const turn =
      said === SILENCE ? ringTimers({ ...input, now: at }) : takeTurn({ ...input, words: said });
    if (turn === null) continue;
    turns.push(turn);
    now = turn;
  }
  return { name: file.replace('.visit', ''), turns, state: now.state };
}
