import type { QuantityId } from '../../terms/quantities.ts';
import { lastChange, type Change } from '../../visit/changes.ts';
import type { EventId } from '../../visit/events.ts';
import type { VisitState } from '../../visit/state.ts';
import { isNewer } from '../../visit/views.ts';
import { BANDS, OF_THE_CYCLE } from './bands.ts';
import { heldOf } from './held.ts';
import { minutesBetween, seriesOf, since, type Series } from './series.ts';
import type { Moved, SettlingNext } from './settling-verdict.ts';

const isWatched = (id: string): id is QuantityId => id in BANDS;
const WATCHED: readonly QuantityId[] = Object.keys(BANDS).filter(isWatched);

/** What was read again since the last change, of what can be called steady. */
export function watched(state: VisitState): readonly Series[] {
  const change = lastChange(state);
  if (change === null) return [];
  return WATCHED.flatMap((about) => {
    const series = seriesOf(state, about);
    const recent = series && since(series, change.id, state);
    return recent && recent.samples.length > 0 ? [recent] : [];
  });
}

/** From the last reading before the change to the last of all. */
export function movedSince(series: Series, change: Change, state: VisitState): Moved | null {
  const last = series.samples.at(-1);
  const before = series.samples.findLast(({ id }) => !isNewer(state, id, change.id));
  if (!last || !before || before.id === last.id) return null;
  return { change: last.value - before.value, minutes: minutesBetween(change.at, last.at) };
}

/** Pressures that were ever read on this visit, by whichever scale of the gauge. */
function cycleOf(state: VisitState): readonly QuantityId[] {
  return OF_THE_CYCLE.filter((about) => seriesOf(state, about) !== null);
}

/** Whether the after can be read: every pressure of the cycle holds since the change. */
export function settlingNext(state: VisitState): SettlingNext {
  const change = lastChange(state);
  const cycle = cycleOf(state);
  if (change === null || state.afterMarkedAt !== null || cycle.length === 0) {
    return { kind: 'nothing' };
  }
  const waiting = cycle.find((about) => !isSteadySince(state, about, change.id));
  return waiting === undefined ? { kind: 'takeAfter' } : { kind: 'readAgain', about: waiting };
}

export function isSteadySince(state: VisitState, about: QuantityId, from: EventId): boolean {
  const series = seriesOf(state, about);
  return series !== null && heldOf(since(series, from, state))?.isSteady === true;
}

/** One reading to say it, and none before it: a thing that has settled is told once. */
export function settlesNow(series: Series): boolean {
  const isSteady = (count: number): boolean =>
    heldOf({ ...series, samples: series.samples.slice(0, count) })?.isSteady === true;
  const counts = series.samples.map((_, index) => index + 1);
  return counts.findIndex(isSteady) === counts.length - 1 && counts.length > 0;
}
