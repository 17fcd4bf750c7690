import type { VisitState } from '../visit/state.ts';
import type { Known, Refused } from './verdict.ts';

const MS_A_MINUTE = 60_000;
const MINUTES_A_DAY = 1440;

/** How long the visit has gone on, by the moment of the question: core has no clock. */
export function timeHereOf({ openedAt, history, finishedAt }: VisitState): Known | Refused {
  const [first] = history;
  const now = finishedAt ?? history.at(-1)?.at;
  if (openedAt === null || first === undefined || now === undefined) {
    return { kind: 'refused', about: null, reason: 'nothingRecorded' };
  }
  return {
    kind: 'known',
    formula: null,
    inputs: [],
    source: null,
    cautions: [],
    answer: 'timeHere',
    minutes: Math.max(0, Math.round((now - openedAt) / MS_A_MINUTE)),
    since: minuteOfDay(openedAt, first.utcOffset),
  };
}

function minuteOfDay(at: number, utcOffset: number | undefined): number | null {
  if (utcOffset === undefined) return null;
  const minutes = Math.floor(at / MS_A_MINUTE) + utcOffset;
  return ((minutes % MINUTES_A_DAY) + MINUTES_A_DAY) % MINUTES_A_DAY;
}
