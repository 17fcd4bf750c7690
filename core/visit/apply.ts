import type { Fact, Finding, Reading } from '../language/utterance.ts';
import { HEATERS, type PartId } from '../terms/names.ts';
import type { QuantityId } from '../terms/quantities.ts';
import { dayOf, dueDate } from './due-date.ts';
import { EMPTY_VISIT } from './empty-visit.ts';
import type { EventBody, EventId, VisitEvent } from './events.ts';
import { applyFact } from './facts.ts';
import { markAfter, markBefore, phaseOf } from './phases.ts';
import { isPreparation } from './preparations.ts';
import type { VisitState } from './state.ts';
import { applyTimer, wantedWithout } from './timers.ts';
import { habitAfter } from './unit-habit.ts';
import type { ReadingEntry } from './views.ts';

/**
 * Invariants:
 * 1. The state is a function of the events alone, in their order.
 * 2. An event seen before (same id) changes nothing.
 * 3. Taking back or amending replays what remains: nothing of the old value is left anywhere.
 */
export function applyEvents(events: readonly VisitEvent[], from = EMPTY_VISIT): VisitState {
  return events.reduce(applyEvent, from);
}

export function applyEvent(state: VisitState, event: VisitEvent): VisitState {
  if (state.history.some((earlier) => earlier.id === event.id)) return state;
  const history = [...state.history, event];
  if (event.type !== 'entryTakenBack' && event.type !== 'readingAmended') {
    return { ...step(state, event), history };
  }
  const replayed = effective(history).reduce(
    (so, each) => ({ ...step(so, each), history: [...so.history, each] }),
    EMPTY_VISIT,
  );
  return { ...replayed, history };
}

/** The history as it now counts: without what was taken back, amended readings in their latest form. */
function effective(history: readonly VisitEvent[]): readonly VisitEvent[] {
  const gone = new Set<EventId>();
  const amended = new Map<EventId, Reading>();
  for (const event of history) {
    if (event.type === 'entryTakenBack') gone.add(event.target);
    if (event.type === 'readingAmended') amended.set(event.target, event.reading);
  }
  return history.flatMap((event) => {
    if (gone.has(event.id)) return [];
    const reading = amended.get(event.id);
    return [reading ? withReading(event, reading) : event];
  });
}

/** A doubt that was kept and then amended is a reading like any other. */
function withReading(event: VisitEvent, reading: Reading): VisitEvent {
  if (event.type === 'readingTaken') return { ...event, reading };
  if (event.type === 'doubtRaised') return { ...event, doubt: { ...event.doubt, ...reading } };
  return event;
}

/** A system that somebody here emptied is empty for no cause of the call. */
function factStated(state: VisitState, fact: Fact): VisitState {
  const isEmptiedHere =
    state.readings.some(({ reading: { quantity } }) => EMPTIED.has(quantity)) ||
    state.work.some(({ work: { did } }) => did === 'recover' || did === 'evacuate');
  const isNoCause = fact.fact === 'cause' && fact.empty === true && isEmptiedHere;
  return isNoCause ? state : { ...state, unit: applyFact(state.unit, fact) };
}
const EMPTIED: ReadonlySet<QuantityId> = new Set<QuantityId>([
  'refrigerantRecovered',
  'testPressure',
  'vacuum',
]);

type Step<Type extends EventBody['type']> = (
  state: VisitState,
  event: Extract<VisitEvent, { type: Type }>,
) => VisitState;

/** The first event that can be read opens the visit: a damaged opening must not split what follows in two. */
function step(state: VisitState, event: VisitEvent): VisitState {
  const opened =
    state.visit === null
      ? { ...state, visit: event.visit, openedAt: event.at, openedOn: dayOf(event) }
      : state;
  const next = settle(TELLS.has(event.type) ? { ...opened, turnedTo: null } : opened, event);
  return UNDOABLE.has(event.type) ? { ...next, undoable: [...next.undoable, event.id] } : next;
}

/** What a part or a quantity was named for is told with these. */
const TELLS: ReadonlySet<EventBody['type']> = new Set([
  'readingTaken',
  'readingAmended',
  'factStated',
  'findingReported',
  'workDone',
  'recommendationMade',
  'doubtRaised',
  'numberLeftOver',
  'beforeMarked',
  'afterMarked',
  'visitFinished',
]);

const UNDOABLE: ReadonlySet<EventBody['type']> = new Set([
  'readingTaken',
  'factStated',
  'findingReported',
  'workDone',
  'recommendationMade',
  'memoTaken',
  'settingsChanged',
  'timerStarted',
  'beforeMarked',
  'afterMarked',
]);

function settle(state: VisitState, event: VisitEvent): VisitState {
  switch (event.type) {
    case 'visitOpened':
    case 'settingsChanged':
      return { ...state, settings: event.settings };
    case 'readingTaken':
      return takeReading(state, event, event.reading);
    case 'factStated':
      return factStated(state, event.fact);
    case 'findingReported':
      return findingReported(state, event);
    case 'workDone':
      return workDone(state, event);
    case 'recommendationMade':
      return recommendationMade(state, event);
    case 'memoTaken':
      return memoTaken(state, event);
    case 'doubtRaised':
      return doubtRaised(state, event);
    case 'doubtSettled':
      return doubtSettled(state, event);
    case 'numberLeftOver':
      return numberLeftOver(state, event);
    case 'leftOverDropped':
      return { ...state, leftOver: state.leftOver.filter(({ id }) => id !== event.target) };
    case 'readingWanted':
      return { ...state, wanted: event.quantity, wantedPlace: event.place ?? null };
    case 'turnedTo':
      return turnedTo(state, event);
    case 'timerStopped':
      return { ...state, ...wantedWithout(state, event), timers: applyTimer(state.timers, event) };
    case 'timerStarted':
    case 'timerExtended':
    case 'timerRang':
      return { ...state, timers: applyTimer(state.timers, event) };
    case 'beforeMarked':
      return markBefore(state, event.at);
    case 'afterMarked':
      return markAfter(state, event.at);
    case 'stepsBegun':
      return { ...state, steps: { procedure: event.procedure, number: 1 } };
    case 'stepReached':
      return { ...state, steps: state.steps && { ...state.steps, number: event.step } };
    case 'stepsLeft':
      return { ...state, steps: null };
    case 'finishHeld':
      return { ...state, finishHeld: true };
    case 'visitFinished':
      return { ...state, finishedAt: event.at, finishHeld: false, steps: null };
    case 'noteWorded':
      return { ...state, worded: event.passages };
    case 'questionAsked':
    case 'putBackAsked':
    case 'putBackDenied':
    case 'entryTakenBack':
    case 'readingAmended':
      return state;
  }
}

function kept<Of extends object>(event: VisitEvent, of: Of): Of & { id: EventId; at: number } {
  return { ...of, id: event.id, at: event.at };
}

function takeReading(state: VisitState, event: VisitEvent, reading: Reading): VisitState {
  return {
    ...state,
    readings: [...state.readings, kept(event, { reading, phase: phaseOf(reading, state) })],
    leftOver: state.leftOver.filter(({ digits }) => Number(digits) !== reading.value),
    settings: { ...state.settings, units: habitAfter(state, reading) },
    lastQuantity: reading.quantity,
    lastPlace: reading.place ?? state.lastPlace,
    lastPart: meteredPart(reading) ?? state.lastPart,
    ...(state.wanted === reading.quantity ? { wanted: null, wantedPlace: null } : {}),
  };
}

/**
 * What is marked on a can and read off it, or off heaters, is told with the leads on it: "so that's junk" is that one, and
 * "the top one's open" is one of those.
 */
function meteredPart({ place }: Reading): PartId | null {
  if (place === 'startCapacitor' || place === 'runCapacitor') return place;
  return HEATERS.find((heater) => heater === place) ?? null;
}

const memoTaken: Step<'memoTaken'> = (state, event) => {
  const { memo, remark } = event;
  const entry = kept(event, remark === undefined ? { memo } : { memo, remark });
  return { ...state, memos: [...state.memos, entry] };
};

/** A fan that was named takes the place of the one that was asked after. */
const findingReported: Step<'findingReported'> = (state, event) => ({
  ...state,
  findings: [
    ...state.findings.filter(({ finding }) => !isAnsweredBy(finding, event.finding)),
    kept(event, { finding: event.finding }),
  ],
  lastPart: event.finding.part,
});

const FANS: ReadonlySet<PartId> = new Set<PartId>([
  'condenserFan',
  'condenserFanMotor',
  'evaporatorFan',
  'evaporatorFanMotor',
]);

const isAnsweredBy = (open: Finding, by: Finding): boolean =>
  open.unresolved === true && open.state === by.state && FANS.has(by.part);

const recommendationMade: Step<'recommendationMade'> = (state, event) => ({
  ...state,
  recommendations: [
    ...state.recommendations,
    kept(event, {
      recommendation: event.recommendation,
      due: dueDate(event.recommendation, dayOf(event)),
    }),
  ],
});

/** Gauges come off at the end of every call: "it" is still what was worked on. */
const isToolOrNothing = (part: PartId | null): boolean => part === null || part === 'gauges';

/** Work after the after was marked opens the question again: those readings no longer describe the unit. */
const workDone: Step<'workDone'> = (state, event) => {
  const entry = kept(event, { work: event.work });
  const lastPart = isToolOrNothing(event.work.part) ? state.lastPart : event.work.part;
  if (isPreparation(event.work)) {
    return { ...state, preparations: [...state.preparations, entry], lastPart };
  }
  return { ...state, work: [...state.work, entry], lastPart, afterMarkedAt: null };
};

const numberLeftOver: Step<'numberLeftOver'> = (state, event) => ({
  ...state,
  leftOver: [...state.leftOver, kept(event, { digits: event.digits, words: event.words })],
});

const turnedTo: Step<'turnedTo'> = (state, { part, quantity, place, words }) => ({
  ...state,
  turnedTo: { part, quantity, place, words },
  lastPart: part ?? state.lastPart,
  lastPlace: place ?? state.lastPlace,
  lastQuantity: quantity ?? state.lastQuantity,
});

const doubtRaised: Step<'doubtRaised'> = (state, event) => ({
  ...state,
  doubts: [...state.doubts, kept(event, { doubt: event.doubt })],
  lastQuantity: event.doubt.quantity,
});

const markedAs =
  (id: EventId) =>
  (entry: ReadingEntry): ReadingEntry =>
    entry.id === id ? { ...entry, reported: true } : entry;

/** A kept doubt becomes a reading under the doubt's own id: taking it back or amending it goes by that. */
const doubtSettled: Step<'doubtSettled'> = (state, event) => {
  const doubted = state.doubts.find(({ id }) => id === event.target);
  if (!doubted) return state;
  const settled = { ...state, doubts: state.doubts.filter(({ id }) => id !== event.target) };
  if (!event.kept) return settled;
  const { why, or, ...reading } = doubted.doubt;
  const taken = takeReading(settled, { ...event, id: doubted.id }, reading);
  const undoable = [...taken.undoable, doubted.id];
  if (why !== 'hearsay') return { ...taken, undoable };
  const { settings } = settled;
  return { ...taken, undoable, settings, readings: taken.readings.map(markedAs(doubted.id)) };
};
