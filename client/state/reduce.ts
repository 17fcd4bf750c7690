import { applyEvents } from '../../core/visit/apply.ts';
import type { VisitEvent } from '../../core/visit/events.ts';
import { openQuestion } from '../../core/visit/views.ts';
import { unreachable } from '../../core/unreachable.ts';
import { caughtUp } from './catch-up.ts';
import { choose } from './choices.ts';
import { reduceEar } from './ear-happenings.ts';
import type { Effect, Happening, Unsynced } from './happenings.ts';
import { afterSpeech, lendEar, press } from './press.ts';
import { earOf, type Mode, type Session, type Tab } from './session.ts';
import { go, settle, stay, type SessionStep } from './settle.ts';
import { reduceTurn } from './turn-happenings.ts';

/** The session after a happening, and what is to be done about it. Every happening, in every mode. */
export function reduce(session: Session, happening: Happening): SessionStep {
  const step = transition(session, happening);
  if (!step.effects.some(({ kind }) => DEAFENING.has(kind))) return step;
  return { ...step, session: { ...step.session, hearing: false, soFar: '' } };
}

/** Until the recogniser says that it hears again, it does not. */
const DEAFENING: ReadonlySet<Effect['kind']> = new Set(['listen', 'gate', 'closeEar']);

function transition(session: Session, happening: Happening): SessionStep {
  switch (happening.kind) {
    case 'pressed':
    case 'earLent':
      return happening.kind === 'pressed' ? press(session) : lendEar(session);
    case 'timeUp':
      return ringing(session);
    case 'typed':
    case 'heard':
    case 'turnTaken':
    case 'phrased':
    case 'noteWorded':
    case 'turnIgnored':
    case 'turnBroke':
    case 'ringBroke':
    case 'kept':
    case 'notKept':
      return reduceTurn(session, happening);
    case 'hearing':
    case 'guessed':
    case 'unclear':
    case 'noise':
    case 'earOpened':
    case 'earDeaf':
    case 'soundBack':
    case 'engineChanged':
    case 'earNews':
    case 'loading':
      return reduceEar(session, happening);
    case 'spoken':
      return spoken(session, happening.number);
    case 'heldKept':
    case 'choiceNotKept':
    case 'choiceForgotten':
    case 'typedTooLong':
    case 'unread':
      return stay(noticed(session, happening));
    case 'committed':
      return committed(session, happening.events);
    case 'becameWriter':
      return { session, effects: [{ kind: 'catchUp' }] };
    case 'caughtUp':
      return stay(caughtUp(session, happening.events));
    case 'questionLeft':
    case 'questionTakenUp':
      return happening.kind === 'questionLeft' ? leaveQuestion(session) : takeUp(session);
    case 'unsynced':
    case 'namesKnown':
    case 'pastKnown':
    case 'tabChosen':
      return stay(informed(session, happening));
    case 'readingWanted':
    case 'settingsChosen':
    case 'newVisitChosen':
    case 'visitRead':
      return choose(session, happening);
    default:
      return unreachable(happening);
  }
}

type Noticed = Extract<
  Happening,
  { kind: 'heldKept' | 'choiceNotKept' | 'choiceForgotten' | 'typedTooLong' | 'unread' }
>;

function noticed(session: Session, happening: Noticed): Session {
  switch (happening.kind) {
    case 'heldKept':
      return { ...session, unkept: 0, notice: { kind: 'keptAtLast' } };
    case 'choiceNotKept': {
      const { held, why } = happening;
      return { ...session, unkept: held, notice: { kind: 'notKept', why } };
    }
    case 'choiceForgotten':
      return session.toldForgotten
        ? session
        : { ...session, toldForgotten: true, notice: happening };
    case 'typedTooLong':
      return { ...session, notice: { ...happening, kind: 'tooLong' } };
    case 'unread':
      return isOlderNews(session, happening) ? session : { ...session, notice: happening };
  }
}

/** What is read behind the page's opening takes no place from what that had to tell. */
function isOlderNews(
  { notice }: Session,
  { what }: Extract<Happening, { kind: 'unread' }>,
): boolean {
  return what === 'past' && notice !== null && notice.kind !== 'resumed';
}

type Informed = Extract<Happening, { kind: 'unsynced' | 'namesKnown' | 'pastKnown' | 'tabChosen' }>;

/** What the page comes to know, or to show, beside what is said. */
function informed(session: Session, happening: Informed): Session {
  switch (happening.kind) {
    case 'unsynced':
      return sent(session, happening);
    case 'namesKnown':
      return { ...session, names: happening.names };
    case 'pastKnown':
      return { ...session, past: happening.past };
    case 'tabChosen':
      return tabChosen(session, happening.tab);
  }
}

/** A refusal is told once, and stands in the strip for as long as it lasts. */
function sent(session: Session, { events, leftOut, trouble, refused }: Unsynced): Session {
  const next: Session = {
    ...session,
    unsynced: events,
    leftOut,
    sendTrouble: trouble,
    refused,
  };
  if (refused === null || session.refused !== null) return next;
  return { ...next, notice: { kind: 'refused' } };
}

function leaveQuestion(session: Session): SessionStep {
  const { mode } = session;
  return mode.kind === 'asking' ? settle(session, mode.ear, null) : stay(session);
}

/** A timer speaks whatever the ear is doing, awake or not; a question that stood open comes back after it. */
function ringing(session: Session): SessionStep {
  const { mode } = session;
  if (mode.kind === 'thinking' || mode.kind === 'speaking') return stay(session);
  const asked = mode.kind === 'asking' ? mode.question : null;
  const thinking: Mode = { kind: 'thinking', words: '', ear: earOf(mode), turn: null, asked };
  return go(session, thinking, [{ kind: 'gate' }, { kind: 'ringTimers' }]);
}

/** The open tab, pressed again, gives the field its room back; so do the keys when they are put away. */
function tabChosen(session: Session, tab: Tab): Session {
  const isTall = session.tab !== 'keys' && (tab !== session.tab || !session.tall);
  return { ...session, tab, tall: isTall };
}

/** The newest open question, asked again; it waits while a sentence is being kept or said. */
function takeUp(session: Session): SessionStep {
  const question = openQuestion(session.visit);
  const { mode } = session;
  if (!question || mode.kind === 'thinking' || mode.kind === 'speaking') return stay(session);
  const ear = earOf(mode);
  const { effects } = settle(session, ear, question);
  const asked: Session = { ...session, notice: null, compared: null };
  return go(asked, { kind: 'asking', question, ear }, effects);
}

function spoken(session: Session, number: number): SessionStep {
  const { mode } = session;
  return mode.kind === 'speaking' && mode.number === number
    ? afterSpeech(session, mode)
    : stay(session);
}

/** A press on the sheet while a sentence is being kept must not be undone by that sentence's own state. */
function committed(session: Session, events: readonly VisitEvent[]): SessionStep {
  const visit = applyEvents(events, session.visit);
  const wants = events.some(({ type }) => type === 'readingWanted');
  const mode = withCommitted(session.mode, events);
  const next: Session = { ...session, visit, mode, expects: wants ? 'number' : session.expects };
  return wants && mode.kind === 'listening' ? settle(next, { kind: 'open' }, null) : stay(next);
}

function withCommitted(mode: Mode, events: readonly VisitEvent[]): Mode {
  if (mode.kind !== 'thinking' || !mode.turn) return mode;
  return { ...mode, turn: { ...mode.turn, state: applyEvents(events, mode.turn.state) } };
}
