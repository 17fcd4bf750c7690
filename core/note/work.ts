import { recommended } from '../replies/recommendation-sentences.ts';
import type { Work } from '../language/utterance.ts';
import { workDoneAt } from '../replies/work-words.ts';
import type { WorkKindId } from '../terms/names.ts';
import { VALVES } from '../visit/left-open.ts';
import type { VisitState } from '../visit/state.ts';
import { sentence } from './wording.ts';

export function workLines(state: VisitState): readonly string[] {
  const { work, recommendations, readings } = state;
  const done = work.map((made) => made.work).filter((made) => !isValveTurned(made));
  if (done.length > 0) {
    const jobs = done.filter((made, at) => !isToldAgain(made, done.slice(0, at)));
    return [...jobs.map((made) => sentence(workDoneAt(made))), ...timeLines(state)];
  }
  const isEmpty = recommendations.length === 0 && readings.length === 0;
  return isEmpty ? [] : ['No work was recorded.'];
}

const TURNED: ReadonlySet<WorkKindId> = new Set<WorkKindId>(['open', 'isolate', 'restore']);

/** Valves are turned for the gauges and to move refrigerant: the job itself is what is billed. */
export const isValveTurned = ({ did, part }: Work): boolean =>
  part !== null && VALVES.has(part) && TURNED.has(did);

/** What is done over again on one visit, a line each time. */
const DONE_AGAIN: ReadonlySet<WorkKindId> = new Set<WorkKindId>([
  ...(['reset', 'adjust', 'evacuate', 'pressureTest', 'leakCheck'] as const),
  ...(['bypass', 'disable', 'isolate', 'open', 'restore', 'setForTest'] as const),
]);

/** "Cleaned the condenser, brushed it": one job; a switch that was reset again later is two. */
function isToldAgain(made: Work, earlier: readonly Work[]): boolean {
  const isSame = (other: Work | undefined): boolean =>
    other !== undefined && workDoneAt(other) === workDoneAt(made);
  return DONE_AGAIN.has(made.did) ? isSame(earlier.at(-1)) : earlier.some(isSame);
}

const MINUTE_MS = 60_000;

/** What the office bills by: from the first thing said to the finish. */
function timeLines(state: VisitState): readonly string[] {
  const minutes = minutesOnVisit(state);
  return minutes === null ? [] : [`On the visit: ${timeText(minutes)}.`];
}

export function minutesOnVisit({ openedAt, finishedAt }: VisitState): number | null {
  if (openedAt === null || finishedAt === null) return null;
  return Math.round((finishedAt - openedAt) / MINUTE_MS);
}

export function timeText(minutes: number): string {
  const [hours, rest] = [Math.trunc(minutes / 60), minutes % 60];
  return `${hours === 0 ? '' : `${String(hours)} h `}${String(rest)} min`;
}

export function recommendationLines({ recommendations }: VisitState): readonly string[] {
  return recommendations.map((made) => sentence(recommended(made)));
}
