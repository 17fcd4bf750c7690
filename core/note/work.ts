import { recommended } from '../replies/recommendation-sentences.ts';
import { workDoneAt } from '../replies/work-words.ts';
import type { VisitState } from '../visit/state.ts';
import { sentence } from './wording.ts';

export function workLines(state: VisitState): readonly string[] {
  const { work, recommendations, readings } = state;
  if (work.length > 0) {
    const done = work.map((made) => sentence(workDoneAt(made.work)));
    // "Cleaned the condenser, brushed it": one job; a switch that was reset again later is two.
    const jobs = done.filter((line, at) => line !== done[at - 1]);
    return [...jobs, ...timeLines(state)];
  }
  const isEmpty = recommendations.length === 0 && readings.length === 0;
  return isEmpty ? [] : ['No work was recorded.'];
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
