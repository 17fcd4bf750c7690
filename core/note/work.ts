import { recommended } from '../replies/recommendation-sentences.ts';
import type { Work } from '../language/utterance.ts';
import { workDoneAt } from '../replies/work-words.ts';
import type { WorkKindId } from '../terms/names.ts';
import { VALVES } from '../visit/left-open.ts';
import { ranSince, STOPS } from '../visit/ran.ts';
import type { VisitState } from '../visit/state.ts';
import { sumOf, timesTold, timeTold } from '../visit/time-told.ts';
import { doneAsSaid } from './kept-as-said.ts';
import { sentence } from './wording.ts';

export function workLines(state: VisitState): readonly string[] {
  const { work, recommendations, readings } = state;
  const done = work.filter((made) => !isValveTurned(made.work) && !isForNew(made.work, state));
  const told = doneAsSaid(state).map(({ memo }) => sentence(memo));
  if (done.length + told.length > 0) {
    const jobs = done.filter(
      (entry, at) =>
        !isToldAgain(
          entry.work,
          done.slice(0, at).map((made) => made.work),
        ),
    );
    return [...jobs.map((made) => jobLine(made, state)), ...new Set(told), ...timeLines(state)];
  }
  const isEmpty = recommendations.length === 0 && readings.length === 0;
  const isTold = timesTold(state).length > 0;
  return isEmpty ? [] : ['No work was recorded.', ...(isTold ? timeLines(state) : [])];
}

/** What was disconnected to be tested, and ran after that, was not left so. */
function jobLine({ id, work }: VisitState['work'][number], state: VisitState): string {
  const { did, part } = work;
  const ran = part !== null && STOPS.has(did) && ranSince(part, id, state);
  return sentence(ran ? `${workDoneAt(work)}; it ran again after that` : workDoneAt(work));
}

/** "Cut the old drier out, put in a new one": one job. */
export const isForNew = ({ did, part }: Work, { work }: VisitState): boolean =>
  did === 'remove' &&
  part !== null &&
  work.some(({ work: made }) => made.did === 'replace' && made.part === part);

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

/** What the office bills by: what the technician says that it took, and from the first thing said to the finish. */
function timeLines(state: VisitState): readonly string[] {
  const { onSite, labor, travel, since } = timeTold(state);
  const minutes = minutesOnVisit(state);
  const isTold = timesTold(state).length > 0;
  return [
    ...(onSite === null ? [] : [`On site, as told: ${timeText(onSite)}.`]),
    ...(since === null ? [] : [`On site since ${since}, as told.`]),
    ...summed('Labor', labor),
    ...summed('Travel', travel),
    ...(minutes === null
      ? []
      : [`On the visit${isTold ? ', by the clock' : ''}: ${timeText(minutes)}.`]),
  ];
}

const summed = (what: string, minutes: readonly number[]): readonly string[] =>
  minutes.length === 0 ? [] : [`${what}, as told: ${timeText(sumOf(minutes))}${partsOf(minutes)}.`];

/** " (2 h 0 min and 1 h 30 min)", where there was more than one. */
function partsOf(minutes: readonly number[]): string {
  return minutes.length < 2 ? '' : ` (${minutes.map(timeText).join(' and ')})`;
}

/** The same in one piece, behind "on the visit for". */
export function timeWords(state: VisitState): string | null {
  const { onSite, labor, travel, since } = timeTold(state);
  const minutes = minutesOnVisit(state);
  const byClock = minutes === null ? null : timeText(minutes);
  const [first, ...rest] = [
    onSite === null ? null : `${timeText(onSite)} as told`,
    onSite === null ? byClock : byClock && `${byClock} by the clock`,
    billed(labor, 'labor'),
  ].filter((piece) => piece !== null);
  if (first === undefined) return null;
  const beside = [
    ...rest,
    ...(travel.length === 0 ? [] : [billed(travel, 'travel')]),
    ...(since === null ? [] : [`since ${since} as told`]),
  ];
  return beside.length === 0 ? first : `${first} (${beside.join(', ')})`;
}

const billed = (minutes: readonly number[], what: string): string | null =>
  minutes.length === 0 ? null : `${timeText(sumOf(minutes))} of ${what} as told`;

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
