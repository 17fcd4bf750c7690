import type { Command, Doubt } from '../language/utterance.ts';
import { timedWorkOf } from '../terms/timed-work.ts';
import type { TakenBack } from './acknowledgement.ts';
import type { VisitEvent } from './events.ts';
import type { Keeping } from './keeping.ts';
import type { VisitState } from './state.ts';
import { isNewer, openQuestion, type OpenQuestion } from './views.ts';

type Undo = Extract<Command, { do: 'undo' }>;

/** "Take that back": the newest thing kept, or the newest reading of the quantity or value named. */
export function takeBack(command: Undo, state: VisitState): Keeping {
  const open = openSinceKept(command, state);
  if (open) return dropped(open);
  const target = targetOf(command, state);
  if (target === undefined) return NOTHING_TO_TAKE_BACK;
  const work = workOfRemark(state, target);
  const what = describe(state, work ?? target);
  if (what === null) return NOTHING_TO_TAKE_BACK;
  const targets = work === undefined ? [target] : [work, target];
  return {
    bodies: targets.map((each) => ({ type: 'entryTakenBack', v: 1, target: each })),
    acknowledgement: { kind: 'takenBack', what },
  };
}

/** "Brazed a sleeve over it" is work, and kept in its words as well: both are what was told last. */
function workOfRemark({ memos, work }: VisitState, id: string): string | undefined {
  const said = memos.find((each) => each.id === id);
  if (said?.remark !== true) return undefined;
  return work.findLast(({ at, work: { words } }) => at === said.at && said.memo.includes(words))
    ?.id;
}

/** So far back "scratch that, suction's fifty one" looks for a suction; else the last thing kept is meant. */
const LATELY = 4;

function targetOf(command: Undo, state: VisitState): string | undefined {
  if (command.ago !== undefined) return state.undoable.at(-1 - command.ago);
  if (command.earlier !== true) return state.undoable.findLast((id) => fits(command, state, id));
  const lately = state.undoable.slice(-LATELY);
  return lately.findLast((id) => fits(command, state, id)) ?? lately.at(-1);
}

/** What is asked about and was said after the last thing kept: that is what "that" is. */
function openSinceKept(command: Undo, state: VisitState): OpenQuestion | null {
  const open = openQuestion(state);
  const isMeant = open?.kind === 'doubt' ? isAboutDoubt(command, open.of.doubt) : isPlain(command);
  if (!isMeant) return null;
  const newest = state.undoable.at(-1);
  return open && (newest === undefined || isNewer(state, open.of.id, newest)) ? open : null;
}

function dropped(open: OpenQuestion): Keeping {
  const target = open.of.id;
  if (open.kind === 'leftOver') {
    return {
      bodies: [{ type: 'leftOverDropped', v: 1, target }],
      acknowledgement: { kind: 'leftOverDropped', digits: open.of.digits },
    };
  }
  return {
    bodies: [{ type: 'doubtSettled', v: 1, target, kept: false }],
    acknowledgement: { kind: 'doubtDropped', doubt: open.of.doubt },
  };
}

const NOTHING_TO_TAKE_BACK: Keeping = {
  bodies: [],
  acknowledgement: { kind: 'nothingToTakeBack' },
};

/** "Not fifty" drops a doubted fifty; "take that back" whatever is asked about. */
function isAboutDoubt(command: Undo, doubt: Doubt): boolean {
  const sameQuantity = command.quantity === undefined || doubt.quantity === command.quantity;
  return sameQuantity && (command.value === undefined || doubt.value === command.value);
}

const isPlain = (command: Undo): boolean =>
  command.quantity === undefined && command.value === undefined;

function fits(command: Undo, state: VisitState, id: string): boolean {
  if (isPlain(command)) return true;
  const reading = state.readings.find((entry) => entry.id === id)?.reading;
  if (!reading) return false;
  const sameQuantity = command.quantity === undefined || reading.quantity === command.quantity;
  const sameValue = command.value === undefined || reading.value === command.value;
  return sameQuantity && sameValue;
}

function describe(state: VisitState, id: string): TakenBack | null {
  const entry = state.readings.find((each) => each.id === id);
  if (entry) return { of: 'reading', reading: entry.reading };
  const event = state.history.find((each) => each.id === id);
  return event ? describeEvent(event) : null;
}

function describeEvent(event: VisitEvent): TakenBack | null {
  switch (event.type) {
    case 'factStated':
      return { of: 'fact', fact: event.fact };
    case 'findingReported':
      return { of: 'finding', finding: event.finding };
    case 'workDone':
      return { of: 'work', work: event.work };
    case 'recommendationMade':
      return { of: 'recommendation', recommendation: event.recommendation };
    case 'settingsChanged':
      return { of: 'settings' };
    case 'memoTaken':
      return { of: 'memo' };
    case 'timerStarted':
      return {
        of: 'timer',
        timer: {
          about: event.about,
          work: event.about === null ? null : timedWorkOf(event.about),
        },
      };
    case 'beforeMarked':
      return { of: 'mark', mark: 'before' };
    case 'afterMarked':
      return { of: 'mark', mark: 'after' };
    default:
      return null;
  }
}
