import type { Context, Expectation } from '../language/context.ts';
import { type KnownNames, NO_NAMES } from '../language/names/known-names.ts';
import { ofEvaporator } from '../language/findings/finding-of.ts';
import { FAN_OF_MOTOR } from '../language/words/fans.ts';
import type { Finding, Question, Reading } from '../language/utterance.ts';
import { isOfRun } from '../terms/reading-events.ts';
import { CLEANING, isPowerPart, type PartId } from '../terms/names.ts';
import {
  type AnswerableId,
  isOnScale,
  isSetting,
  QUANTITIES,
  type QuantityId,
} from '../terms/quantities.ts';
import { mayBeLegVolts } from '../terms/three-phase.ts';
import { convert } from '../units/convert.ts';
import type { VisitEvent } from '../visit/events.ts';
import { isAltered } from '../visit/alterations.ts';
import { leftToDo } from '../visit/agreed.ts';
import { leftOpen } from '../visit/left-open.ts';
import { putBackAskedNow } from '../visit/power-back.ts';
import { toldBefore } from '../visit/told-before.ts';
import type { VisitState } from '../visit/state.ts';
import { isRemote, kindOf } from '../visit/unit-kind.ts';
import { latestAmount, latestReading, openQuestion, type OpenQuestion } from '../visit/views.ts';

/** What the visit so far lends to the reading of the next sentence. */
export function contextOf(state: VisitState, names: KnownNames = NO_NAMES): Context {
  const isStale = isLongAgo(state);
  return {
    units: state.settings.units,
    refrigerant: state.unit.refrigerant,
    equipment: kindOf(state.unit),
    unitTold: isUntouched(state) ? null : state.unit.name,
    isRemote: isRemote(state.unit),
    asked: state.turnedTo?.quantity ?? (isStale ? null : state.wanted),
    askedAbout: askedAbout(state) ?? (isStale ? state.wanted : null),
    holding: holdingOf(state),
    askedPlace: isQuantityNamed(state) ? (state.turnedTo?.place ?? null) : state.wantedPlace,
    sentNow: sentNow(state),
    lastQuantity: state.lastQuantity,
    lastPlace: state.lastPlace,
    lastPart: state.lastPart,
    turnedTo: state.turnedTo && { words: state.turnedTo.words, part: state.turnedTo.part },
    powerIsOff: leftOpen(state).some(({ part }) => isPowerPart(part)),
    lastFan: lastFan(state),
    foundBad: foundBad(state),
    toReplace: leftToDo(state).findLast((agreed) => agreed.do === 'replace')?.part ?? null,
    dirtyCoil: dirtyCoil(state),
    readsDischargeLine:
      latestReading(state, 'dischargeLineTemp') !== null &&
      latestReading(state, 'headPressure') === null,
    isAtCondensingUnit: isAtCondensingUnit(state),
    onlyFan: onlyFan(state),
    stepping: state.steps !== null,
    awaitsDoing: awaitsDoing(state),
    ratedLoadAmps: state.unit.nameplate.ratedLoadAmps?.value ?? null,
    plateCharge: state.unit.nameplate.charge ?? null,
    cylinderLost: cylinderLost(state),
    weighsInOunces: weighsInOunces(state),
    scaleShows: scaleShows(state),
    movedLast: movedLast(state),
    threePhaseVolts: threePhaseVolts(state),
    openLegs: openLegs(state),
    wantsSite: state.unit.site === null && isUntouched(state),
    wantsComplaint: state.turnedTo === null && wantsComplaint(state),
    unitless: unitless(state),
    openNumber: openNumber(state),
    asksYes: asksYes(state) || putBackAskedNow(state).length > 0,
    openFan: openFan(state),
    headPressure: latestAmount(running(state), 'headPressure'),
    suctionPressure: latestAmount(running(state), 'suctionPressure'),
    names,
    told: toldBefore(state),
    workBegun: state.beforeMarkedAt !== null || isAltered(state),
    timing: state.timers.length > 0,
  };
}

/** What was read at rest bounds no suction of a unit that runs. */
const running = (state: VisitState): VisitState => ({
  ...state,
  readings: state.readings.filter(({ reading }) => isOfRun(reading)),
});

const isQuantityNamed = ({ turnedTo }: VisitState): boolean =>
  (turnedTo?.quantity ?? null) !== null;

/** Ours: behind so much else that was told, a bare number is asked about and no more taken for the answer. */
const MOST_BETWEEN = 4;

function isLongAgo({ history, wanted }: VisitState): boolean {
  if (wanted === null) return false;
  const at = history.findLastIndex(({ type }) => type === 'readingWanted');
  return history.slice(at + 1).filter(({ type }) => TOLD.has(type)).length > MOST_BETWEEN;
}
const TOLD: ReadonlySet<VisitEvent['type']> = new Set<VisitEvent['type']>([
  'readingTaken',
  'factStated',
  'findingReported',
  'workDone',
]);

/** Only of the last thing said: a number two sentences later is of something else. */
function askedAbout({ history }: VisitState): QuantityId | null {
  const last = history.at(-1);
  if (last?.type !== 'questionAsked') return null;
  const { question } = last;
  const isOfValue =
    question.ask === 'target' || question.ask === 'value' || question.ask === 'compare';
  if (!isOfValue || question.about === null) return null;
  const { about } = question;
  return isQuantity(about) && !isSetting(about) ? about : null;
}

/** With nothing moved between them that was told. */
function cylinderLost({ readings }: VisitState): Context['cylinderLost'] {
  const weighed = readings.filter(({ reading }) => WEIGHED.has(reading.quantity)).slice(-2);
  const [before, after] = weighed.map(({ reading }) =>
    reading.quantity === 'cylinderWeight' ? inOunces(reading) : null,
  );
  return before == null || after == null ? null : before - after;
}

const inOunces = ({ value, unit }: Reading): number | null =>
  value === undefined || unit === null ? null : (convert({ value, unit }, 'oz')?.value ?? null);

/** More than a pound, told by the ounce. */
const weighsInOunces = ({ readings }: VisitState): boolean =>
  readings.some(
    ({ reading: { quantity, unit, value = 0 } }) =>
      WEIGHED.has(quantity) && unit === 'oz' && value > 16,
  );

function scaleShows({ readings }: VisitState): Context['scaleShows'] {
  const weights = readings.filter(({ reading }) => isOnScale(reading.quantity));
  const unit = weights.at(-1)?.reading.unit;
  if (unit !== 'lb' && unit !== 'kg') return null;
  const tenths = weights.some(
    ({ reading }) => reading.unit === unit && !Number.isInteger(reading.value ?? 0),
  );
  return { unit, tenths };
}

const WEIGHED: ReadonlySet<QuantityId> = new Set<QuantityId>([
  'cylinderWeight',
  'refrigerantAdded',
  'refrigerantRecovered',
]);

/** Nothing that "no refrigerant added" told: more of it there is none. */
function movedLast({ readings }: VisitState): Context['movedLast'] {
  for (const { reading } of readings.toReversed()) {
    const { quantity, unit, value = 0 } = reading;
    const isMoved = quantity === 'refrigerantAdded' || quantity === 'refrigerantRecovered';
    if (isMoved && unit !== null && value > 0) return { quantity, unit };
  }
  return null;
}

/** By the plate of a unit known to have three phases, else by what was read between its legs. */
function threePhaseVolts({ unit, history, readings }: VisitState): number | null {
  const { voltage } = unit.nameplate;
  const isSaid = history.some(
    (event) => event.type === 'factStated' && THREE_PHASE.test(event.fact.words),
  );
  const read = readings.findLast(({ reading: { place } }) => place === 'lineTwoThree')?.reading;
  if (voltage !== undefined) return isSaid || read !== undefined ? voltage.value : null;
  return read?.value ?? null;
}
const THREE_PHASE = /\b(?:three|3) ?-?(?:phase|ph)\b/i;

/** Only of the last thing said. */
function openLegs(state: VisitState): Context['openLegs'] {
  const open = openQuestion(state);
  if (open?.kind !== 'leftOver' || !asksYes(state)) return null;
  const { words } = open.of;
  const values = state.leftOver
    .filter((each) => each.words === words)
    .map(({ digits }) => Number(digits));
  return mayBeLegVolts(values) ? values : null;
}

/** Only by the last reply: what was asked before is long done, or left. */
function awaitsDoing({ history }: VisitState): boolean {
  const last = history.at(-1);
  if (last?.type === 'readingWanted') return true;
  return last?.type === 'questionAsked' && TELLS_TO_DO.has(last.question.ask);
}

const TELLS_TO_DO: ReadonlySet<Question['ask']> = new Set<Question['ask']>([
  'causes',
  'nextCheck',
  'safety',
  'steps',
  'step',
]);

/** Nothing was measured of the unit or done to it yet. */
const isUntouched = ({ readings, work }: VisitState): boolean =>
  work.length === 0 && readings.every(({ reading }) => isSetting(reading.quantity));

const wantsComplaint = (state: VisitState): boolean =>
  isUntouched(state) &&
  state.findings.length === 0 &&
  state.memos.every(({ remark }) => remark === true) &&
  state.doubts.every(({ doubt }) => doubt.why !== 'hearsay');

/** Nothing was told since it was asked for; who asks what next again is sent there again. */
const sentNow = ({ history, wantedPlace, turnedTo }: VisitState): boolean =>
  (turnedTo?.place ?? null) !== null ||
  (wantedPlace !== null &&
    history.findLast(({ type }) => type !== 'questionAsked')?.type === 'readingWanted');

/** The newest of what a test is read by, unless the system was charged, run or read as it runs since. */
function holdingOf({ readings }: VisitState): Context['holding'] {
  const last = readings.findLast(({ reading }) => TESTED_OR_RUN.has(reading.quantity))?.reading;
  if (last?.value === undefined) return null;
  const { quantity, value } = last;
  return quantity === 'testPressure' || quantity === 'vacuum' ? { quantity, value } : null;
}

const TESTED_OR_RUN: ReadonlySet<QuantityId> = new Set<QuantityId>([
  'testPressure',
  'vacuum',
  'headPressure',
  'suctionPressure',
  'refrigerantAdded',
]);

const isQuantity = (about: AnswerableId): about is QuantityId => about in QUANTITIES;

/** "It's ninety one up here", at a condenser that stands apart, until something at the box is told. */
function isAtCondensingUnit({ unit, readings, findings, work }: VisitState): boolean {
  if (!isRemote(unit)) return false;
  const there = readings.findLast(
    ({ reading: { quantity, words } }) => quantity === 'outdoorTemp' && UP_HERE.test(words),
  );
  if (there === undefined) return false;
  const atBox = [
    ...readings.filter(({ reading }) => AT_BOX.has(reading.quantity)),
    ...findings.filter(({ finding }) => ofEvaporator(finding.part)),
    ...work.filter((done) => ofEvaporator(done.work.part)),
  ];
  return atBox.every(({ at }) => at < there.at);
}
const UP_HERE = /\b(?:(?:up|out|over|back) here|on (?:the|this) roof|up top)\b/i;
const AT_BOX: ReadonlySet<QuantityId> = new Set<QuantityId>([
  ...(['boxTemp', 'supplyAirTemp', 'productTemp'] as const),
]);

function onlyFan({ findings, work, preparations }: VisitState): Context['onlyFan'] {
  const parts = [
    ...findings.map(({ finding }) => finding.part),
    ...[...work, ...preparations].map((done) => done.work.part),
  ];
  const kinds = new Set(parts.flatMap((part) => (part === null ? [] : (FAN_OF_MOTOR[part] ?? []))));
  const [only, ...others] = kinds;
  return only !== undefined && others.length === 0 ? only : null;
}

/** By the moment that it was told: nothing was wrong with a fan that was only seen running. */
function lastFan({ findings, work }: VisitState): Context['lastFan'] {
  const told = [
    ...findings
      .filter(({ finding }) => isBad(finding))
      .map(({ at, finding }) => ({ at, part: finding.part })),
    ...work.map(({ at, work: { part } }) => ({ at, part })),
  ];
  const last = told
    .toSorted((one, other) => one.at - other.at)
    .findLast(({ part }) => part !== null && FAN_OF_MOTOR[part] !== undefined);
  return last?.part ? (FAN_OF_MOTOR[last.part] ?? null) : null;
}

function foundBad({ findings, work }: VisitState): Context['foundBad'] {
  const last = findings.findLast(({ finding }) => isBad(finding));
  const part = last?.finding.part;
  if (last === undefined || part === undefined) return null;
  const isReplaced = work.some(({ at, work: done }) => done.did === 'replace' && at >= last.at);
  return isReplaced ? null : part;
}

function dirtyCoil({ findings, work }: VisitState): Context['dirtyCoil'] {
  const last = findings.findLast(({ finding: { part, state } }) => isCoil(part) && isDirty(state));
  const part = last?.finding.part ?? null;
  return work.some(({ work: done }) => CLEANING.has(done.did) && done.part === part) ? null : part;
}

const isCoil = (part: PartId): boolean => part === 'condenser' || part === 'evaporator';
const isDirty = (state: Finding['state']): boolean => state === 'dirty' || state === 'plugged';

const isBad = ({ state }: Finding): boolean => BAD.has(state);
const BAD: ReadonlySet<Finding['state']> = new Set<Finding['state']>([
  ...(['failed', 'burnt', 'notRunning', 'open', 'grounded', 'noisy', 'leaking'] as const),
]);

function unitless(state: VisitState): Context['unitless'] {
  const open = openQuestion(state);
  if (open?.kind !== 'doubt' || open.of.doubt.why !== 'noUnit') return null;
  const { quantity, value } = open.of.doubt;
  return value === undefined ? null : { quantity, value };
}

/** Only of the last thing said, and of one number alone: of two nobody tells which is named. */
function openNumber(state: VisitState): Context['openNumber'] {
  const open = openQuestion(state);
  if (open?.kind !== 'leftOver' || !asksYes(state)) return null;
  const { digits, words } = open.of;
  const together = state.leftOver.filter((each) => each.words === words);
  return together.length === 1 ? Number(digits) : null;
}

/** Only what was asked in the last reply: "that's it" is not about what stands open since. */
function asksYes(state: VisitState): boolean {
  const open = openQuestion(state);
  return open !== null && open.of.id === state.history.at(-1)?.id;
}

function openFan({ findings }: VisitState): Context['openFan'] {
  const last = findings.at(-1)?.finding;
  return last?.unresolved === true ? last.state : null;
}

/** What an open question wants to hear. A choice between two values is answered by one of them. */
export function expectationOf(question: OpenQuestion | null): Expectation {
  if (question?.kind !== 'doubt') return 'anything';
  return question.of.doubt.or === undefined ? 'yesOrNo' : 'number';
}

/**
 * What the reply to these events asks for, which narrows the grammar for the next sentence alone: a question
 * raised now, else a reading wanted now. Older questions wait on the sheet.
 */
export function expectationAfter(events: readonly VisitEvent[], state: VisitState): Expectation {
  // Of a part that is named, its state may be told as well.
  if (events.length > 0 && isQuantityNamed(state) && state.turnedTo?.part === null) return 'number';
  const open = openQuestion(state);
  if (open !== null && events.some(({ id }) => id === open.of.id)) return expectationOf(open);
  return events.some(({ type }) => type === 'readingWanted') ? 'number' : 'anything';
}
