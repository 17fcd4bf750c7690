import type { Turn, TurnInput } from '../../core/turn/turn.ts';
import type { VisitEvent } from '../../core/visit/events.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { unreachable } from '../../core/unreachable.ts';
import type { EarconId } from '../voice/voice.ts';
import { waitFor } from './clock.ts';
import type { Effect, Happening, Saying } from './happenings.ts';
import type { Keeper } from './keeper.ts';
import { withVisit } from './past-visits.ts';
import type { Ports } from './ports.ts';
import { freshVisit, type Session } from './session.ts';
import type { StampFor } from './stamps.ts';

/** What an effect needs to be done with. */
export interface Hands extends Ports {
  readonly session: () => Session;
  readonly send: (happening: Happening) => void;
  readonly keeper: Keeper;
  readonly stampFor: StampFor;
}

export function perform(hands: Hands, effect: Effect): void {
  switch (effect.kind) {
    case 'openEar':
      void openEar(hands);
      break;
    case 'closeEar':
      hands.ear.close();
      break;
    case 'gate':
      hands.ear.gate();
      break;
    case 'listen':
      hands.ear.listen(effect.expectation, effect.names);
      break;
    case 'takeTurn':
      takeTurn(hands, effect);
      break;
    case 'ringTimers':
      ringTimers(hands);
      break;
    case 'keep':
      void keep(hands, effect.events);
      break;
    case 'commit':
      void commit(hands, effect);
      break;
    case 'catchUp':
      void catchUp(hands);
      break;
    case 'say':
      void say(hands, effect.number, effect.saying);
      break;
    case 'hush':
      hands.voice.hush();
      break;
    case 'awaitEcho':
      void awaitEcho(hands, effect.number);
      break;
    case 'earcon':
      void hands.earcons.play(effect.which);
      break;
    default:
      unreachable(effect);
  }
}

/** Called within a press: only then may a page ask for the microphone, sound and speech for the first time. */
async function openEar({ voice, earcons, ear, send }: Hands): Promise<void> {
  try {
    voice.unlock();
    earcons.unlock();
    const opening = await ear.open();
    if (opening.kind === 'open') await earcons.play('listening');
    send(opening.kind === 'open' ? { kind: 'earOpened' } : { kind: 'earDeaf', why: opening.why });
  } catch (error) {
    console.error(error);
    send({ kind: 'earDeaf', why: 'recogniserFailed' });
  }
}

function takeTurn(hands: Hands, { words, heed }: Extract<Effect, { kind: 'takeTurn' }>): void {
  hands.earcons.unlock(); // typed words come with a press of their own
  try {
    const turn = turnFor(hands, words);
    if (heed === 'resume' && turn.effect !== 'resume') {
      hands.send({ kind: 'turnIgnored' });
      return;
    }
    hands.send({ kind: 'turnTaken', turn });
  } catch (error) {
    console.error(error);
    hands.send({ kind: 'turnBroke' });
  }
}

/** What is up by now is told; an alarm that a clock set back rang early tells nothing. */
function ringTimers({ session, stampFor, clock, send, ringTimers: ring }: Hands): void {
  const { visit: state, memory } = session();
  try {
    const turn = ring({ state, memory, stamp: stampFor(state), now: clock.now() });
    send(turn === null ? { kind: 'turnIgnored' } : { kind: 'turnTaken', turn });
  } catch (error) {
    console.error(error);
    send({ kind: 'ringBroke' });
  }
}

/** A finished visit still answers questions; the first thing to keep after it starts the next one. */
function turnFor(hands: Hands, words: TurnInput['words']): Turn {
  const { visit } = hands.session();
  const first = turnOn(hands, visit, words);
  const adds = first.events.some(({ type }) => type !== 'questionAsked');
  if (visit.finishedAt === null || !adds) return first;
  return turnOn(hands, freshVisit(visit.settings), words);
}

function turnOn(hands: Hands, state: VisitState, words: TurnInput['words']): Turn {
  const { memory, names, past, visit } = hands.session();
  const earlier = withVisit(past, visit);
  const stamp = hands.stampFor(state);
  return hands.takeTurn({ state, memory, words, names, past: earlier, stamp });
}

/**
 * Answers are worded while their events go to the disk. Nobody waits longer than this for the wording: half of
 * them take 60 ms on a slow machine, and a quarter of a second before an answer begins is not yet a pause.
 */
const PHRASING_MS = 250;

async function keep(hands: Hands, events: readonly VisitEvent[]): Promise<void> {
  const [keeping, , worded] = await Promise.all([
    hands.keeper.keep(events),
    orNull(phrase(hands)),
    orNull(noteWorded(hands)),
  ]);
  if (worded === null) {
    hands.send(keeping);
    return;
  }
  hands.send({ kind: 'noteWorded', event: worded });
  hands.send(await hands.keeper.keep([worded]));
}

/** What only words better must never stand between a reading and what is said of it. */
async function orNull<Result>(wording: Promise<Result>): Promise<Result | null> {
  try {
    return await wording;
  } catch (error) {
    console.error(error);
    return null;
  }
}

/**
 * A note has a dozen passages, at 20 to 60 ms each on a slow machine. It is worded before "Finished" is said and shown
 * with it, so that it never changes under whoever reads it.
 */
const NOTE_MS = 1_500;

/** The words of the note of a visit that this turn finished, as the event that keeps them with it. */
async function noteWorded(hands: Hands): Promise<VisitEvent | null> {
  const { session, clock, stampFor } = hands;
  const { mode, past } = session();
  const passages = hands.passages();
  if (passages === null || mode.kind !== 'thinking' || mode.turn?.effect !== 'finish') return null;
  const { state } = mode.turn;
  const budget = waitFor(clock, NOTE_MS);
  const code = await fetched(import('../../core/turn/word-note.ts'), budget);
  const worded = code && (await code.wordNote({ state, past }, passages, budget));
  return worded && stampFor(state)(worded);
}

async function phrase({ phraser, session, clock, send }: Hands): Promise<void> {
  const { mode } = session();
  const words = phraser();
  if (words === null || mode.kind !== 'thinking' || mode.turn === null) return;
  const budget = waitFor(clock, PHRASING_MS);
  const code = await fetched(import('../../core/turn/phrase-reply.ts'), budget);
  const said = await code?.phraseReply(mode.turn, words, budget);
  if (said?.phrased) send({ kind: 'phrased', reply: said.turn.reply });
}

/** What checks a wording is not in the first load (64 kB of it): where it does not come, templates do. */
function fetched<Code>(code: Promise<Code>, budget: Promise<unknown>): Promise<Code | null> {
  return Promise.race([code.catch(() => null), budget.then(() => null)]);
}

type Commit = Extract<Effect, { kind: 'commit' }>;

async function commit(hands: Hands, { bodies, leaving }: Commit): Promise<void> {
  const left = leaving?.bodies.map(hands.stampFor(leaving.visit)) ?? [];
  const events = bodies.map(hands.stampFor(hands.session().visit));
  const keeping = await hands.keeper.keep([...left, ...events]);
  hands.send({ kind: 'committed', events });
  if (keeping.kind === 'notKept') hands.send({ ...keeping, kind: 'choiceNotKept' });
}

/** What was held here first: then one reading of the log has it all, in order. */
async function catchUp({ log, keeper, session, send }: Hands): Promise<void> {
  try {
    await keeper.retry();
    const visit = session().visit.visit ?? (await log.openVisit());
    if (visit === null) return;
    const { events } = await log.readVisit(visit);
    send({ kind: 'caughtUp', events });
  } catch (error) {
    console.error(error);
    send({ kind: 'unread', what: 'otherTab' });
  }
}

/** A reply that answers needs no tone of its own, unless the tone is all that will be heard. */
const TONE_OF: Record<Saying['reply']['earcon'], EarconId | null> = {
  kept: 'kept',
  again: 'again',
  answer: null,
  timeUp: 'timeUp',
  none: null,
};

/** The room's echo of the last word must be over before the ear opens again. */
const TAIL_MS = 250;

/** Whatever sounds and voices do, the ear behind them opens again. */
async function say(hands: Hands, number: number, saying: Saying): Promise<void> {
  try {
    await sound(hands, number, saying);
  } catch (error) {
    console.error(error);
  }
  hands.send({ kind: 'spoken', number });
}

async function sound(hands: Hands, number: number, saying: Saying): Promise<void> {
  const { voice, earcons, clock } = hands;
  const trouble = saying.notKept && hands.sayNotKept(saying.notKept);
  const tone = trouble ? 'again' : TONE_OF[saying.reply.earcon];
  const audible = voice.canSpeak();
  const words = [
    saying.news && hands.sayEarNews(saying.news),
    saying.engine && hands.sayEngineChanged(saying.engine),
    spokenOf(saying, trouble),
  ]
    .filter(Boolean)
    .join(' ');
  const isSilent = words === '';
  if (tone ?? !(audible || isSilent)) await earcons.play(tone ?? 'kept');
  if (audible && isCurrent(hands, number)) await voice.speak(words);
  if (audible && isCurrent(hands, number)) await waitFor(clock, TAIL_MS);
  if (saying.reopens && isCurrent(hands, number)) await earcons.play('listening');
}

/** A voice that is slow to hush ends the speech no later. */
async function awaitEcho({ clock, send }: Hands, number: number): Promise<void> {
  await waitFor(clock, TAIL_MS);
  send({ kind: 'spoken', number });
}

/** An answer stands whether or not the question could be kept; "kept" must not be said of what was not. */
function spokenOf({ reply }: Saying, trouble: string | null): string {
  if (trouble === null) return reply.spoken;
  return reply.earcon === 'answer' ? `${trouble} ${reply.spoken}` : trouble;
}

function isCurrent({ session }: Hands, number: number): boolean {
  const { mode } = session();
  return mode.kind === 'speaking' && mode.number === number;
}
