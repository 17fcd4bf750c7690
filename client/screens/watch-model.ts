import { heldOf } from '../../core/advice/settling/held.ts';
import type { Series } from '../../core/advice/settling/series.ts';
import { watched } from '../../core/advice/settling/settling.ts';
import { SHORT_NAMES } from '../../core/replies/names.ts';
import { timerName } from '../../core/replies/timer-sentences.ts';
import type { QuantityId } from '../../core/terms/quantities.ts';
import { formatAmount } from '../../core/units/format-amount.ts';
import type { VisitState } from '../../core/visit/state.ts';
import type { TimerEntry } from '../../core/visit/timers.ts';

/** A timer as it stands on the field: what is left of it, or that it is up. */
export interface ShownTimer {
  readonly id: string;
  readonly name: string;
  readonly left: string;
  readonly isUp: boolean;
}

/** As many as are read in half a second. */
const MOST_TIMERS = 3;
const MOST_TRENDS = 3;

/** Those that run, the next to ring first, and above them what is up and has not been answered with a reading. */
export function shownTimers(visit: VisitState, now: number): readonly ShownTimer[] {
  if (visit.finishedAt !== null) return [];
  return visit.timers
    .filter((timer) => timer.rangAt === null || isUnanswered(timer.rangAt, visit))
    .toSorted((a, b) => a.endsAt - b.endsAt)
    .slice(0, MOST_TIMERS)
    .map((timer) => shownTimer(timer, now));
}

function isUnanswered(rangAt: number, { readings }: VisitState): boolean {
  return !readings.some(({ at }) => at > rangAt);
}

function shownTimer(timer: TimerEntry, now: number): ShownTimer {
  const { id, endsAt, rangAt } = timer;
  const isUp = rangAt !== null || endsAt <= now;
  return { id, name: timerName(timer), left: isUp ? 'up' : clockText(endsAt - now), isUp };
}

/** "9:59" and "1:05:00": a second begun counts as left. */
export function clockText(ms: number): string {
  const total = Math.max(0, Math.ceil(ms / 1000));
  const [hours, minutes, seconds] = [
    Math.floor(total / 3600),
    Math.floor(total / 60) % 60,
    total % 60,
  ];
  const two = (value: number): string => String(value).padStart(2, '0');
  return hours > 0 ? `${hours}:${two(minutes)}:${two(seconds)}` : `${minutes}:${two(seconds)}`;
}

const ON_THE_FIELD: ReadonlySet<QuantityId> = new Set<QuantityId>([
  'headPressure',
  'suctionPressure',
  'boxTemp',
  'superheat',
]);

/** What was read again since the last change, in a few words each: "head steady 12 min". */
export function shownTrends(visit: VisitState): readonly string[] {
  if (visit.finishedAt !== null) return [];
  return watched(visit)
    .filter(({ about, samples }) => ON_THE_FIELD.has(about) && samples.length > 1)
    .slice(0, MOST_TRENDS)
    .map(trendWords);
}

function trendWords(series: Series): string {
  const name = SHORT_NAMES[series.about];
  const held = heldOf(series);
  const minutes = Math.round(held?.minutes ?? 0);
  if (held?.isSteady) return `${name} steady ${minutes} min`;
  if (held && held.readings > 1) return `${name} holding ${minutes} min`;
  return `${name} ${movedWords(series)}`;
}

function movedWords({ samples, changeUnit }: Series): string {
  const [last, before] = [samples.at(-1), samples.at(-2)];
  if (!last || !before) return '';
  const change = last.value - before.value;
  const { digits, symbol } = formatAmount({ value: Math.abs(change), unit: changeUnit });
  const minutes = Math.max(1, Math.round((last.at - before.at) / 60_000));
  return `${change > 0 ? 'up' : 'down'} ${digits} ${symbol} in ${minutes} min`;
}
