import { applyEvents } from '../../visit/apply.ts';
import { changes, lastChange, type Change } from '../../visit/changes.ts';
import type { EventId, VisitEvent } from '../../visit/events.ts';
import type { VisitState } from '../../visit/state.ts';
import { TIMED_WORK, type TimedWorkId } from '../../terms/timed-work.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { fromBase } from '../../units/convert.ts';
import { differenceF } from '../../units/quantity-values.ts';
import type { TimerEntry } from '../../visit/timers.ts';
import { timerOf } from '../../visit/timers.ts';
import { latestReading } from '../../visit/views.ts';
import { temperatureOf } from '../current.ts';
import { both, needing, worked, type Found } from '../found.ts';
import { OF_THE_CYCLE, SETTLING_MINUTES } from './bands.ts';
import { heldOf } from './held.ts';
import { pressureTestOf } from './pressure-test.ts';
import { inputsOf, minutesBetween, seriesOf, type Series } from './series.ts';
import type {
  PressureTestAnswer,
  SecondChangeAnswer,
  SettledAnswer,
  SettledRow,
  SettlingNext,
  TooSoonAnswer,
  VacuumHoldAnswer,
} from './settling-verdict.ts';
import { movedSince, settlesNow, settlingNext, watched } from './settling.ts';
import { bandSource, nowOf } from './trend.ts';
import { vacuumHoldOf } from './vacuum-hold.ts';

export type Unasked =
  SettledAnswer | TooSoonAnswer | SecondChangeAnswer | VacuumHoldAnswer | PressureTestAnswer;

/** What one more sentence gives reason to say about settling and timed work, though nobody asked. */
export function unasked(before: VisitState, after: VisitState): readonly Found<Unasked>[] {
  const fresh = after.history.slice(before.history.length);
  return [
    ...secondChange(before, after),
    ...tooSoon(before, after),
    ...settled(after, idsOf(fresh)),
    ...judgedByTime(after, fresh),
    ...startUnread(after, fresh),
  ];
}

const idsOf = (events: readonly VisitEvent[]): ReadonlySet<EventId> =>
  new Set(events.flatMap((event) => ('target' in event ? [event.id, event.target] : [event.id])));

function settled(state: VisitState, fresh: ReadonlySet<EventId>): readonly Found<SettledAnswer>[] {
  const change = lastChange(state);
  if (change === null || state.finishedAt !== null) return [];
  const now = watched(state).filter(
    (series) => fresh.has(series.samples.at(-1)?.id ?? '') && settlesNow(series),
  );
  const rows = now.flatMap((series) => rowOf(series, change, state));
  if (rows.length === 0) return [];
  return [
    worked(
      { answer: 'settled', rows, next: nextAfter(change, state) },
      {
        inputs: now.flatMap(inputsOf),
        sources: [...new Set(now.flatMap(({ about }) => bandSource(about)))],
      },
    ),
  ];
}

/** An after that was marked too soon is to be read again; one that was not stands. */
function nextAfter(change: Change, state: VisitState): SettlingNext {
  const { afterMarkedAt } = state;
  const stands =
    afterMarkedAt !== null && minutesBetween(change.at, afterMarkedAt) >= SETTLING_MINUTES;
  return stands ? { kind: 'nothing' } : settlingNext({ ...state, afterMarkedAt: null });
}

function rowOf(series: Series, change: Change, state: VisitState): readonly SettledRow[] {
  const held = heldOf(series);
  if (held === null) return [];
  const { about, place, changeUnit } = series;
  const whole = { ...series, samples: seriesWithBefore(series, state) };
  return [
    {
      about,
      place,
      within: held.within,
      changeUnit,
      minutes: held.minutes,
      sinceChange: movedSince(whole, change, state),
    },
  ];
}

/** The watched series begins after the change; how far it moved is told from before it. */
function seriesWithBefore({ about }: Series, state: VisitState): Series['samples'] {
  return seriesOf(state, about)?.samples ?? [];
}

/** Marked within minutes of the last change, or while a pressure still moves. */
function tooSoon(before: VisitState, after: VisitState): readonly Found<TooSoonAnswer>[] {
  const change = lastChange(after);
  const { afterMarkedAt: markedAt } = after;
  if (markedAt === null || before.afterMarkedAt !== null || change === null) return [];
  if (settlingNext(before).kind !== 'readAgain') return [];
  const minutes = minutesBetween(change.at, markedAt);
  const moving = stillMoving(after);
  const isEarly = minutes < SETTLING_MINUTES;
  if (!isEarly && moving === null) return [];
  return [worked({ answer: 'tooSoon', minutes, moving: isEarly ? null : moving })];
}

/** While the box comes down the pressures follow it: the box is named, not they. */
function stillMoving(state: VisitState): QuantityId | null {
  const series = watched(state);
  const box = series.find(({ about }) => about === 'boxTemp');
  if (box && isPullingOn(box, state)) return 'boxTemp';
  return series.find(isMoving)?.about ?? null;
}

/** A thermostat lets the box swing so far between cut-in and cut-out (common practice). */
const BOX_SWING = differenceF(3);

/** On its way still, and not at its set point. */
function isPullingOn({ samples, changeUnit }: Series, state: VisitState): boolean {
  const [last, earlier] = [samples.at(-1), samples.at(-2)];
  if (!last || !earlier) return false;
  const swing = fromBase(BOX_SWING, changeUnit).value;
  const box = deviationOfBox(state);
  return Math.abs(last.value - earlier.value) > swing && (box === null || box > BOX_SWING);
}

/** How far from its set point, either way. */
function deviationOfBox(state: VisitState): number | null {
  const air = both(temperatureOf(state, 'boxTemp'), temperatureOf(state, 'setpointTemp'));
  return air.kind === 'known' ? Math.abs(air.value[0] - air.value[1]) : null;
}

/** One reading alone moves nowhere; two that each may be out by the band lie twice as far apart and mean the same. */
function isMoving(series: Series): boolean {
  const [last, earlier] = [series.samples.at(-1), series.samples.at(-2)];
  const held = heldOf(series);
  if (!last || !earlier || !held || !OF_THE_CYCLE.includes(series.about)) return false;
  return Math.abs(last.value - earlier.value) > 2 * held.within;
}

/** Told at the first of them on a visit. With the circuit open nothing runs that could settle. */
function secondChange(before: VisitState, after: VisitState): readonly Found<SecondChangeAnswer>[] {
  const earlier = changes(before);
  const added = changes(after).slice(earlier.length);
  const crowds = added.some((change) => isCrowded(change, earlier, before));
  if (!crowds || isOpened(after)) return [];
  const wasTold = earlier.some((change, index) =>
    isCrowded(change, earlier.slice(0, index), stateBefore(before, change)),
  );
  return wasTold ? [] : [worked({ answer: 'secondChange' })];
}

/** Two failed parts replaced are no tuning: only refrigerant and valves, one upon the other, hide what each did. */
function isCrowded(change: Change, earlier: readonly Change[], then: VisitState): boolean {
  const isSecond = change.isTuning && earlier.some(({ isTuning }) => isTuning);
  return isSecond && settlingNext(then).kind === 'readAgain';
}

function stateBefore({ history }: VisitState, { id }: Change): VisitState {
  return applyEvents(
    history.slice(
      0,
      history.findIndex((event) => event.id === id),
    ),
  );
}

const OPENS = new Set<string>(['recover', 'evacuate', 'isolate']);
const READ_OPEN = new Set<string>(['refrigerantRecovered', 'vacuum', 'testPressure']);

function isOpened({ work, readings }: VisitState): boolean {
  return (
    work.some((entry) => OPENS.has(entry.work.did)) ||
    readings.some(({ reading }) => READ_OPEN.has(reading.quantity))
  );
}

type Judged = VacuumHoldAnswer | PressureTestAnswer;
type JudgedWork = 'vacuumHold' | 'pressureTest';

const JUDGES: Record<JudgedWork, (state: VisitState) => Found<Judged>> = {
  vacuumHold: vacuumHoldOf,
  pressureTest: pressureTestOf,
};
const JUDGED: readonly JudgedWork[] = ['vacuumHold', 'pressureTest'];

/** The reading that a timer was for, once its time is up. */
function judgedByTime(state: VisitState, fresh: readonly VisitEvent[]): readonly Found<Judged>[] {
  return JUDGED.filter((work) => isRead(TIMED_WORK[work].asks, fresh)).flatMap((work) => {
    const timer = timerOf(state, work);
    if (!timer) return [];
    const found = JUDGES[work](state);
    const minutes = found.kind === 'known' ? found.value.minutes : 0;
    return isUp(timer, minutes, state) ? [found] : [];
  });
}

function isRead(quantity: QuantityId, fresh: readonly VisitEvent[]): boolean {
  return fresh.some(
    (event) => event.type === 'readingTaken' && event.reading.quantity === quantity,
  );
}

/** By the clock, or by what was said: "four hundred microns, ten minutes in". */
function isUp(timer: TimerEntry, minutes: number, state: VisitState): boolean {
  return timer.rangAt !== null || nowOf(state) >= timer.endsAt || minutes >= timer.minutes;
}

/** Older than this a reading is not where the test began. */
const START_MINUTES = 10;

/** A hold or a test is judged from its start: without a reading of that it is asked for. */
function startUnread(state: VisitState, fresh: readonly VisitEvent[]): readonly Found<never>[] {
  const isStarted = (work: TimedWorkId): boolean =>
    fresh.some(({ id, type }) => type === 'timerStarted' && timerOf(state, work)?.id === id);
  return JUDGED.filter(isStarted).flatMap((work) => {
    const quantity = TIMED_WORK[work].asks;
    const start = latestReading(state, quantity);
    const isFresh = start !== null && minutesBetween(start.at, nowOf(state)) <= START_MINUTES;
    return isFresh ? [] : [needing(quantity)];
  });
}
