import type { Finding, Reading } from '../language/utterance.ts';
import { isPowerPart, type PartId, type PlaceId, type PowerPart } from '../terms/names.ts';
import type { EventBody } from './events.ts';
import type { Keeping } from './keeping.ts';
import { type LeftOpen, leftOpen } from './left-open.ts';
import type { VisitState } from './state.ts';

/**
 * What is told to be off stays off until it is told back on, in words that are heard. Where the unit was told to run
 * after that, one of the two is no longer so: that is asked, and never written down as how it was left.
 */
export function maybeBackOn(state: VisitState): readonly LeftOpen[] {
  const fed = lastOf(state, powerTold(state));
  return leftOpen(state).filter(
    ({ part, id }) => isPowerPart(part) && fed > Math.max(placeOf(state, id), denied(state, part)),
  );
}

/** What is left open for all that is known. */
export function surelyLeftOpen(state: VisitState): readonly LeftOpen[] {
  const doubted = new Set(maybeBackOn(state).map(({ id }) => id));
  return leftOpen(state).filter(({ id }) => !doubted.has(id));
}

const placeOf = ({ history }: VisitState, id: string): number =>
  history.findIndex((event) => event.id === id);

const lastOf = (state: VisitState, ids: ReadonlySet<string>): number =>
  state.history.findLastIndex(({ id }) => ids.has(id));

function denied({ history }: VisitState, part: PowerPart): number {
  return history.findLastIndex(
    (event) => event.type === 'putBackDenied' && event.parts.includes(part),
  );
}

/** Each thing told that takes power. */
function powerTold({ findings, readings, history }: VisitState): ReadonlySet<string> {
  return new Set([
    // Readings are marked as after of a unit that runs.
    ...history.filter(({ type }) => type === 'afterMarked').map(({ id }) => id),
    ...findings.filter(({ finding }) => isRunning(finding)).map(({ id }) => id),
    ...readings.filter(({ reading }) => takesPower(reading)).map(({ id }) => id),
  ]);
}

const isRunning = ({ part, state }: Finding): boolean =>
  RUNS.has(part) && (state === 'running' || state === 'shortCycling' || state === 'humming');

const RUNS: ReadonlySet<PartId> = new Set<PartId>([
  'compressor',
  'fan',
  'condenserFan',
  'condenserFanMotor',
  'evaporatorFan',
  'evaporatorFanMotor',
  'waterPump',
]);

/** Ours: what a meter of high impedance shows on a dead wire beside a live one is mostly less. */
const LEAST_FED_VOLTS = 90;

function takesPower({ quantity, place, value, when }: Reading): boolean {
  if (value === undefined || when === 'arrival') return false;
  if (quantity === 'current') return value > 0;
  return quantity === 'voltage' && place !== null && LOADS.has(place) && value >= LEAST_FED_VOLTS;
}

/** Where no voltage stands with the disconnect open: the line side of a contactor may be fed past it. */
const LOADS: ReadonlySet<PlaceId> = new Set<PlaceId>([
  'loadSide',
  'compressor',
  'condenserFan',
  'evaporatorFan',
  'defrostHeater',
  'drainHeater',
  'doorHeater',
  'crankcaseHeater',
]);

const partsOf = (left: readonly LeftOpen[]): readonly PowerPart[] =>
  left.map(({ part }) => part).filter(isPowerPart);

/** Asked once: what was asked and not answered stands among the open questions. */
export function askPutBack(state: VisitState): Keeping {
  if (state.finishedAt !== null) return { bodies: [], acknowledgement: null };
  const parts = partsOf(maybeBackOn(state).filter(({ part, id }) => !wasAsked(state, part, id)));
  return parts.length === 0 ? { bodies: [], acknowledgement: null } : asking(parts);
}

function wasAsked(state: VisitState, part: PartId, since: string): boolean {
  return state.history
    .slice(placeOf(state, since))
    .some((event) => event.type === 'putBackAsked' && event.parts.some((asked) => asked === part));
}

const asking = (parts: readonly PowerPart[]): Keeping => ({
  bodies: [{ type: 'putBackAsked', v: 1, parts }],
  acknowledgement: { kind: 'putBackAsked', parts },
});

/** Asked to finish, it is asked again: it keeps the visit from ending. */
export function holdFinish(state: VisitState): Keeping {
  const asked = partsOf(maybeBackOn(state));
  return {
    bodies: [
      { type: 'finishHeld', v: 1 },
      ...(asked.length === 0 ? [] : [{ type: 'putBackAsked', v: 1, parts: asked } as const]),
    ],
    acknowledgement: { kind: 'finishHeld', left: surelyLeftOpen(state), asked },
  };
}

/** What "yes" would be about, where nothing was told since it was asked. */
export function putBackAskedNow({ history }: VisitState): readonly PowerPart[] {
  const last = history.findLast(({ type }) => !PASSES.has(type));
  return last?.type === 'putBackAsked' ? last.parts : [];
}

/** What the same reply may ask besides. */
const PASSES: ReadonlySet<EventBody['type']> = new Set<EventBody['type']>([
  'readingWanted',
  'questionAsked',
]);

/** "Yes" is as good as "the disconnect is back on". */
export function answerPutBack(isBack: boolean, parts: readonly PowerPart[]): Keeping {
  if (!isBack) {
    return {
      bodies: [{ type: 'putBackDenied', v: 1, parts }],
      acknowledgement: { kind: 'leftSo', parts },
    };
  }
  return {
    bodies: parts.map((part) => ({
      type: 'workDone',
      v: 1,
      work: { did: 'restore', part, words: 'yes' },
    })),
    acknowledgement: { kind: 'putBack', parts },
  };
}
