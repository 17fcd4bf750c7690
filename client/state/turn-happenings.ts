import type { Alternative } from '../../core/language/choose-understanding.ts';
import { afterWords, heardThere } from '../../core/hearing/earshot.ts';
import type { Comparison } from '../../core/advice/verdict.ts';
import type { Reply } from '../../core/replies/reply.ts';
import type { Turn } from '../../core/turn/turn.ts';
import { applyEvents } from '../../core/visit/apply.ts';
import type { VisitEvent } from '../../core/visit/events.ts';
import { openQuestion, type OpenQuestion } from '../../core/visit/views.ts';
import { openVisit } from './choices.ts';
import { withEarshot } from './ear-happenings.ts';
import type { Happening } from './happenings.ts';
import type { NotKeptReason } from './notice.ts';
import { withVisit } from './past-visits.ts';
import { afterSpeech } from './press.ts';
import { earOf, type Mode, type Session, type Tab } from './session.ts';
import { go, settle, stay, think, type SessionStep } from './settle.ts';

type TurnHappening = Extract<
  Happening,
  {
    kind:
      | 'typed'
      | 'heard'
      | 'turnTaken'
      | 'phrased'
      | 'noteWorded'
      | 'turnIgnored'
      | 'turnBroke'
      | 'ringBroke'
      | 'kept'
      | 'notKept';
  }
>;
type Thinking = Extract<Mode, { kind: 'thinking' }>;

export function reduceTurn(session: Session, happening: TurnHappening): SessionStep {
  if (happening.kind === 'typed') return typed(session, happening.words);
  if (happening.kind === 'heard') return heard(session, happening.alternatives);
  const { mode } = session;
  if (mode.kind !== 'thinking') return stay(session);
  switch (happening.kind) {
    case 'turnTaken':
      return turnTaken(session, mode, happening.turn);
    case 'phrased':
      return stay({ ...session, mode: phrased(mode, happening.reply) });
    case 'noteWorded':
      return stay({ ...session, mode: noteWorded(mode, happening.event) });
    case 'turnIgnored':
      return settle(session, mode.ear, mode.asked);
    case 'turnBroke':
      return broke(session, mode);
    case 'ringBroke':
      return ringBroke(session, mode);
    case 'kept':
      return mode.turn ? answer({ ...session, unkept: 0 }, mode, null) : stay(session);
    case 'notKept':
      return mode.turn
        ? answer({ ...session, unkept: happening.held }, mode, happening.why)
        : stay(session);
  }
}

/** Typed words may come at any moment. */
function typed(session: Session, words: string): SessionStep {
  const { mode } = session;
  if (words.trim() === '') return stay(session);
  const later: Session = { ...session, waiting: [...session.waiting, words] };
  if (mode.kind === 'thinking') return stay(later);
  if (mode.kind !== 'speaking') return think(session, words, earOf(mode));
  const hushed = afterSpeech(later, mode);
  return { ...hushed, effects: [{ kind: 'hush' }, ...hushed.effects] };
}

/** Heard ones only count while the page listens. */
function heard(session: Session, alternatives: readonly Alternative[]): SessionStep {
  const { mode } = session;
  const heeds =
    mode.kind === 'listening' ||
    (mode.kind === 'asking' && mode.ear.kind === 'open') ||
    (mode.kind === 'paused' && mode.by === 'voice');
  if (!heeds || alternatives.length === 0) return stay(session);
  const earshot = afterWords(session.earshot, alternatives[0]?.confidence ?? 0);
  const measured = withEarshot(session, earshot);
  return think(measured, heardThere(earshot, alternatives), earOf(mode));
}

function turnTaken(session: Session, mode: Thinking, turn: Turn): SessionStep {
  const next: Thinking = { ...mode, turn };
  if (turn.events.length === 0) return answer(session, next, null);
  return go(session, next, [{ kind: 'keep', events: turn.events }]);
}

function phrased(mode: Thinking, reply: Reply): Thinking {
  const { turn } = mode;
  if (!turn) return mode;
  return { ...mode, turn: { ...turn, reply, memory: { ...turn.memory, lastReply: reply } } };
}

function noteWorded(mode: Thinking, event: VisitEvent): Thinking {
  const { turn } = mode;
  return turn ? { ...mode, turn: { ...turn, state: applyEvents([event], turn.state) } } : mode;
}

/** A bug in understanding must not make the page deaf: it says so, shows the words, and listens on. */
function broke(session: Session, mode: Thinking): SessionStep {
  const notice = { kind: 'broke', words: mode.words } as const;
  const { session: next, effects } = settle({ ...session, notice }, mode.ear, null);
  return { session: next, effects: [{ kind: 'earcon', which: 'again' }, ...effects] };
}

/** It is up all the same, and is heard to be; the alarm tries again. */
function ringBroke(session: Session, mode: Thinking): SessionStep {
  const told: Session = { ...session, notice: { kind: 'ringBroke' } };
  const { session: next, effects } = settle(told, mode.ear, mode.asked);
  return { session: next, effects: [{ kind: 'earcon', which: 'timeUp' }, ...effects] };
}

function answer(session: Session, mode: Thinking, notKept: NotKeptReason | null): SessionStep {
  const { turn } = mode;
  if (!turn) return stay(session);
  const number = session.speeches + 1;
  const asked = raisedBy(turn) ?? mode.asked;
  const tellsOfNoise = session.untoldNoise && mode.ear.kind === 'open';
  const answered: Session = {
    ...session,
    // After a finished visit the first thing to keep has opened the next.
    past:
      turn.state.visit === session.visit.visit
        ? session.past
        : withVisit(session.past, session.visit),
    visit: turn.state,
    memory: turn.memory,
    notice: notKept === null ? null : { kind: 'notKept', why: notKept },
    untoldNoise: session.untoldNoise && !tellsOfNoise,
    compared: comparedIn(turn),
    // A question raised has the same tone, and is no failure to understand: its answer is listened for.
    unclearInARow: turn.reply.earcon === 'again' && asked === null ? session.unclearInARow + 1 : 0,
    expects: asked === null ? turn.expects : 'anything',
    speeches: number,
    untold: null,
    tab: tabAfter(turn, session.tab),
    tall: tallAfter(turn, session),
    notUnderstood: isLost(turn) ? turn.utterance.text : null,
    raised: asked,
    lastEffect: turn.effect,
  };
  const speaking: Mode = { kind: 'speaking', number, ear: mode.ear, then: turn.effect, asked };
  const saying = {
    reply: turn.reply,
    notKept,
    engine: session.untold,
    ...(tellsOfNoise ? { news: 'tooLoud' as const } : {}),
    reopens: mode.ear.kind === 'open' && turn.effect !== 'finish',
  };
  return started(go(answered, speaking, [{ kind: 'say', number, saying }]), turn);
}

/** A new visit opens before its greeting is over, so that nothing said next can land in the old one. */
function started(step: SessionStep, turn: Turn): SessionStep {
  if (turn.effect !== 'newVisit') return step;
  const opened = openVisit(step.session, turn.state.settings, turn.carried);
  return {
    session: { ...opened.session, memory: turn.memory },
    effects: [...opened.effects, ...step.effects],
  };
}

function comparedIn({ verdicts }: Turn): Comparison | null {
  const known = verdicts.filter((verdict) => verdict.kind === 'known');
  return known.findLast((verdict) => verdict.answer === 'compare') ?? null;
}

const TAB_AFTER: Record<NonNullable<Turn['effect']>, Tab | null> = {
  pause: null,
  resume: null,
  readNote: 'note',
  newVisit: 'sheet',
  finish: 'note',
};

function tabAfter(turn: Turn, tab: Tab): Tab {
  return (turn.effect && TAB_AFTER[turn.effect]) ?? tab;
}

function isLost({ reply, events }: Turn): boolean {
  return reply.earcon === 'again' && events.length === 0;
}

/** The note opens wide when it is read or finished, and gives way again to the next sentence. */
function tallAfter({ effect }: Turn, { tall, lastEffect }: Session): boolean {
  return showsNote(effect) || (tall && !showsNote(lastEffect));
}

function showsNote(effect: Turn['effect']): boolean {
  return effect !== null && TAB_AFTER[effect] === 'note';
}

/** Only what this sentence raised is asked about at once; older doubts wait on the sheet. */
function raisedBy(turn: Turn): OpenQuestion | null {
  const asked = openQuestion(turn.state);
  return asked && turn.events.some(({ id }) => id === asked.of.id) ? asked : null;
}
