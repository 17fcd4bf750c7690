import type {
  Command,
  Doubt,
  Fact,
  Finding,
  Reading,
  Recommendation,
  Utterance,
} from '../language/utterance.ts';
import type { UnitId } from '../units/units.ts';
import { asFaultFound } from './stuck-closed.ts';
import { unreachable } from '../unreachable.ts';
import type { Acknowledgement } from './acknowledgement.ts';
import { amend } from './amend.ts';
import { applyEvent } from './apply.ts';
import { isAltered, isAlteration } from './alterations.ts';
import { hasBaseline } from './baseline.ts';
import { answeringChoice, chooseValue } from './choice.ts';
import { dayOf, dueDate } from './due-date.ts';
import type { EventBody, VisitEvent } from './events.ts';
import type { Keeping } from './keeping.ts';
import { leftOpen, meantWork } from './left-open.ts';
import { markAfter, markBefore } from './phases.ts';
import {
  answerPutBack,
  askPutBack,
  holdFinish,
  maybeBackOn,
  putBackAskedNow,
  surelyLeftOpen,
} from './power-back.ts';
import { isPreparation } from './preparations.ts';
import type { VisitState } from './state.ts';
import { takeBack } from './take-back.ts';
import { factKept, timesTold } from './time-told.ts';
import { keepTimer, runningTimers, stopTimers } from './timers.ts';
import { isHalf, turnTo } from './turn-to.ts';
import { habitOf, unitsTurned } from './unit-habit.ts';
import { wholeRemarks } from './whole-remarks.ts';
import { mayBeLegVolts } from '../terms/three-phase.ts';
import { isCompared, openQuestion, sheetRows } from './views.ts';

/** What one sentence adds to the visit, and what of it is to be said back. */
export interface Addition {
  readonly events: readonly VisitEvent[];
  readonly state: VisitState;
  readonly acknowledgements: readonly Acknowledgement[];
}

/** Turns an utterance into events, in the order: facts, what was seen and read, work, then commands. */
export function fromUtterance(
  said: Utterance,
  before: VisitState,
  stamp: (body: EventBody) => VisitEvent,
): Addition {
  const utterance = answeringChoice(said, before);
  const keepers = [
    opening(utterance),
    ...utterance.commands.filter(isOfBefore).map(obeying),
    ...utterance.facts.map(keepFact),
    ...utterance.readings.map(keepReading),
    ...findingsNow(utterance, before)
      .map(asFaultFound)
      .map((finding) =>
        always({ type: 'findingReported', v: 1, finding }, { kind: 'finding', finding }),
      ),
    ...utterance.work.map(keepWork),
    countDown(before),
    ...utterance.recommendations.map(keepRecommendation),
    ...utterance.memos.map((memo) =>
      always({ type: 'memoTaken', v: 1, memo }, { kind: 'memo', memo }),
    ),
    ...wholeRemarks(utterance).map((memo) =>
      always({ type: 'memoTaken', v: 1, memo, remark: true }, { kind: 'memo', memo }),
    ),
    ...utterance.doubts.map(keepDoubt),
    ...keepLeftOvers(utterance),
    timersEnding(utterance.commands, before),
    ...utterance.commands.filter((command) => !isOfBefore(command)).map(answering(before)),
    ...(putBackAskedNow(before).length > 0 ? [countDown(before)] : []),
    askPutBack,
    ...utterance.questions.map((question) =>
      always({ type: 'questionAsked', v: 1, question }, null),
    ),
  ];
  const kept = keepers.reduce<Addition>((so, keeper) => extend(so, keeper(so.state), stamp), {
    events: [],
    state: before,
    acknowledgements: [],
  });
  return withUnitsTurned(kept, before);
}

/** Told behind the work, what happened is the story of it: the fan that died turns again, and stands in those words alone. */
function findingsNow({ findings, remarks }: Utterance, before: VisitState): readonly Finding[] {
  const isStory = remarks.some((words) => STORY.test(words));
  return isStory && isAltered(before) ? [] : findings;
}
const STORY = /^what happened (?:\w+ ){0,2}(?:was|is)\b/i;

/** Once a kind of value is told in another unit than the visit's, bare numbers of it are in that: said once. */
function withUnitsTurned(kept: Addition, before: VisitState): Addition {
  const units = unitsTurned(before.settings.units, kept.state.settings.units);
  const isTold = kept.acknowledgements.some(({ kind }) => kind === 'unitsTaken');
  if (units.length === 0 || isTold) return kept;
  return { ...kept, acknowledgements: [...kept.acknowledgements, { kind: 'unitsTaken', units }] };
}

type Keeper = (state: VisitState) => Keeping;

const obeying =
  (command: Command): Keeper =>
  (state) =>
    obey(command, state);

/** What the last reply asked is answered first; a doubt that stands longer waits for the next "yes". */
function answering(before: VisitState): (command: Command) => Keeper {
  const asked = putBackAskedNow(before);
  return (command) => {
    const isAnswer = command.do === 'yes' || command.do === 'no';
    return isAnswer && asked.length > 0
      ? () => answerPutBack(command.do === 'yes', asked)
      : obeying(command);
  };
}

/** "Scratch that, suction's fifty one" takes back what was kept before it was said. */
const isOfBefore = (command: Command): boolean =>
  command.do === 'leaveOut' || (command.do === 'undo' && command.earlier === true);

function extend(so: Addition, keeping: Keeping, stamp: (body: EventBody) => VisitEvent): Addition {
  const events = keeping.bodies.map(stamp);
  const { acknowledgement: told } = keeping;
  const acknowledgement = typeof told === 'function' ? told(events) : told;
  return {
    events: [...so.events, ...events],
    state: events.reduce(applyEvent, so.state),
    acknowledgements: acknowledgement
      ? [...so.acknowledgements, acknowledgement]
      : so.acknowledgements,
  };
}

const NOTHING: Keeping = { bodies: [], acknowledgement: null };

function always(body: EventBody, acknowledgement: Acknowledgement | null): Keeper {
  return () => ({ bodies: [body], acknowledgement });
}

/** The first sentence that keeps anything opens the visit; small talk does not, and nor does its end. */
function opening(utterance: Utterance): Keeper {
  const { text, ...said } = utterance;
  const parts = { ...said, commands: said.commands.filter(keepsAnything) };
  const keepsSomething = Object.values(parts).some((list) => list.length > 0);
  return (state) =>
    state.visit !== null || !keepsSomething
      ? NOTHING
      : {
          bodies: [{ type: 'visitOpened', v: 1, settings: state.settings }],
          acknowledgement: null,
        };
}

/** "In two weeks" is said back as a day, which only the moment of the event gives. */
function keepRecommendation(recommendation: Recommendation): Keeper {
  const told = ([event]: readonly VisitEvent[]): Acknowledgement | null => {
    if (event === undefined) return null;
    const today = dayOf(event);
    return {
      kind: 'recommendation',
      recommendation,
      due: dueDate(recommendation, today),
      today,
    };
  };
  return () => ({
    bodies: [{ type: 'recommendationMade', v: 1, recommendation }],
    acknowledgement: told,
  });
}

/** Saying a doubted reading again, plainly, answers the doubt. */
function keepReading(reading: Reading): Keeper {
  return (state) => ({
    bodies: [...dropDoubts(state, reading), { type: 'readingTaken', v: 1, reading }],
    acknowledgement: { kind: 'reading', reading },
  });
}

function dropDoubts(state: VisitState, about: Reading): readonly EventBody[] {
  return state.doubts
    .filter(({ doubt }) => doubt.quantity === about.quantity && doubt.place === about.place)
    .map(({ id }) => ({ type: 'doubtSettled', v: 1, target: id, kept: false }));
}

const keepWork =
  (said: Utterance['work'][number]): Keeper =>
  (state) => {
    const work = meantWork(said, state);
    const isFirst = !isAltered(state) && !hasBaseline(state);
    const beforeBaseline = isFirst && isAlteration(work) && !isPreparation(work);
    return {
      bodies: [{ type: 'workDone', v: 1, work }],
      acknowledgement: { kind: 'work', work, beforeBaseline },
    };
  };

function keepDoubt(doubt: Doubt): Keeper {
  return (state) => ({
    bodies: [...dropDoubts(state, doubt), { type: 'doubtRaised', v: 1, doubt }],
    acknowledgement: { kind: 'doubt', doubt },
  });
}

const keepFact =
  (fact: Fact): Keeper =>
  (state) => ({
    bodies: [{ type: 'factStated', v: 1, fact }],
    acknowledgement: factKept(fact, timesTold(state)),
  });

/** Each is asked about; three that may be volts between the legs of a supply are one question. */
function keepLeftOvers({ unclaimed, text }: Utterance): readonly Keeper[] {
  const areLegs = mayBeLegVolts(unclaimed.map(Number));
  return unclaimed.map((digits, at) => {
    const each: Acknowledgement = { kind: 'leftOver', digits };
    const together: Acknowledgement | null =
      at === 0 ? { kind: 'legsLeftOver', digits: unclaimed } : null;
    return always({ type: 'numberLeftOver', v: 1, digits, words: text }, areLegs ? together : each);
  });
}

function obey(command: Command, state: VisitState): Keeping {
  switch (command.do) {
    case 'amend':
      return amend(command, state);
    case 'undo':
      return takeBack(command, state);
    case 'choose':
      return chooseValue(command, state);
    case 'markBefore':
      return mark('before', state);
    case 'markAfter':
      return mark('after', state);
    case 'yes':
    case 'no':
      return settle(command.do === 'yes', state);
    case 'finish':
    case 'finishAnyway':
      return end(command.do, state);
    case 'turnTo':
      return turnTo(command, state);
    case 'leaveSteps':
      return {
        bodies: [{ type: 'stepsLeft', v: 1 }],
        acknowledgement: { kind: 'stepsLeft' },
      };
    case 'leaveOut':
      return { bodies: [], acknowledgement: { kind: 'leftOut' } };
    case 'newVisit':
      return { bodies: [], acknowledgement: { kind: 'opened' } };
    case 'timer':
    case 'extendTimer':
    case 'stopTimer':
      return keepTimer(command, state);
    case 'pause':
      return { bodies: [], acknowledgement: { kind: 'paused' } };
    case 'resume':
      return { bodies: [], acknowledgement: { kind: 'resumed' } };
    case 'help':
      return { bodies: [], acknowledgement: { kind: 'help' } };
    case 'useUnits':
      return useUnits(command.units, state);
    case 'repeat':
      return NOTHING;
    default:
      return unreachable(command);
  }
}

function useUnits(units: readonly UnitId[], state: VisitState): Keeping {
  const settings = { ...state.settings, units: habitOf(state.settings.units, units) };
  return {
    bodies: [{ type: 'settingsChanged', v: 1, settings }],
    acknowledgement: { kind: 'unitsTaken', units },
  };
}

/**
 * A timer is for the unit of its visit: on the next one it would ask for a reading that is written down under the
 * wrong unit. So it stops with its visit, and that is said.
 */
function timersEnding(commands: readonly Command[], before: VisitState): Keeper {
  const isEnd = commands.some((command) => ends(command, before));
  return (state) => (isEnd ? stopTimers(runningTimers(state)) : NOTHING);
}

function ends(command: Command, before: VisitState): boolean {
  const isHeld = command.do === 'finish' && leftOpen(before).length > 0;
  return ENDING.has(command.do) && !isHeld;
}

const ENDING: ReadonlySet<Command['do']> = new Set<Command['do']>([
  'newVisit',
  'finish',
  'finishAnyway',
]);

const keepsAnything = (command: Command): boolean =>
  !isFinish(command) && command.do !== 'leaveOut' && !(command.do === 'turnTo' && isHalf(command));

const isFinish = ({ do: what }: Command): boolean => what === 'finish' || what === 'finishAnyway';

/** A finished visit is not finished again: one more was opened for that, and stood empty in front of the note. */
function end(how: 'finish' | 'finishAnyway', state: VisitState): Keeping {
  if (state.visit === null) return { bodies: [], acknowledgement: { kind: 'nothingToFinish' } };
  if (state.finishedAt !== null)
    return { bodies: [], acknowledgement: { kind: 'alreadyFinished' } };
  return how === 'finish' ? finish(state) : finished(state);
}

/** What was opened and not closed is said before the visit may end: forgotten, a bypass stays in for years. */
function finish(state: VisitState): Keeping {
  return leftOpen(state).length === 0 ? finished(state) : holdFinish(state);
}

function finished(state: VisitState): Keeping {
  const left = surelyLeftOpen(state);
  return {
    bodies: [{ type: 'visitFinished', v: 1 }],
    acknowledgement:
      left.length > 0
        ? { kind: 'finishedAnyway', left }
        : { kind: 'finished', open: openCount(state) },
  };
}

const openCount = (state: VisitState): number =>
  state.doubts.length + state.leftOver.length + maybeBackOn(state).length;

/** On the way out each thing put back is answered with what is left. */
function countDown(before: VisitState): Keeper {
  return (state) => {
    const isAsBefore = leftOpen(before).length === leftOpen(state).length;
    if (!before.finishHeld || isAsBefore) return NOTHING;
    return { bodies: [], acknowledgement: { kind: 'stillOpen', left: surelyLeftOpen(state) } };
  };
}

/** How many things stand in the column now: one read twice is one, what is only set or weighed is none. */
function mark(which: 'before' | 'after', state: VisitState): Keeping {
  const body: EventBody = { type: which === 'before' ? 'beforeMarked' : 'afterMarked', v: 1 };
  const marked = which === 'before' ? markBefore(state, 0) : markAfter(state, 0);
  const claimed = sheetRows(marked).filter(
    (row) => isCompared(row.quantity) && row[which]?.phase === which,
  );
  return {
    bodies: [body],
    acknowledgement: { kind: 'marked', mark: which, readings: claimed.length },
  };
}

/** "Yes" and "no" answer the newest thing that was asked; "no" to nothing in particular is only talk. */
function settle(kept: boolean, state: VisitState): Keeping {
  const open = openQuestion(state);
  if (!open) return { bodies: [], acknowledgement: { kind: 'nothingToConfirm' } };
  if (open.kind === 'leftOver') return settleLeftOver(kept, open.of, state);
  const { id, doubt } = open.of;
  const { why, or, ...reading } = doubt;
  return {
    bodies: [{ type: 'doubtSettled', v: 1, target: id, kept }],
    acknowledgement: kept ? { kind: 'reading', reading } : { kind: 'doubtDropped', doubt },
  };
}

/** A left-over number cannot be kept by "yes" alone: it is still not known what it is of. */
function settleLeftOver(
  kept: boolean,
  leftOver: VisitState['leftOver'][number],
  state: VisitState,
): Keeping {
  const { digits, words } = leftOver;
  if (kept) return { bodies: [], acknowledgement: { kind: 'leftOver', digits } };
  const told = state.leftOver.filter((each) => each.words === words);
  const areLegs = mayBeLegVolts(told.map((each) => Number(each.digits)));
  const dropped = areLegs ? told : [leftOver];
  return {
    bodies: dropped.map(({ id }) => ({ type: 'leftOverDropped', v: 1, target: id })),
    acknowledgement: {
      kind: 'leftOverDropped',
      digits: dropped.map((each) => each.digits).join(', '),
    },
  };
}
