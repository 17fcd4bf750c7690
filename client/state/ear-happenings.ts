import {
  afterNoise,
  type Earshot,
  isTooLoud,
  type RoomNoise,
  UNMEASURED,
} from '../../core/hearing/earshot.ts';
import type { Reply } from '../../core/replies/reply.ts';
import type { Deafness } from '../ear/deafness.ts';
import type { EarNews, EngineChanged } from '../ear/ear.ts';
import type { Happening, Saying } from './happenings.ts';
import { earOf, type EarState, type Mode, type Session } from './session.ts';
import { go, settle, stay, type SessionStep } from './settle.ts';

type EarHappening = Extract<
  Happening,
  {
    kind:
      | 'hearing'
      | 'guessed'
      | 'unclear'
      | 'noise'
      | 'earOpened'
      | 'earDeaf'
      | 'soundBack'
      | 'engineChanged'
      | 'earNews'
      | 'loading';
  }
>;

export function reduceEar(session: Session, happening: EarHappening): SessionStep {
  switch (happening.kind) {
    case 'hearing':
      return stay({ ...session, hearing: true });
    case 'guessed':
      return stay({ ...session, soFar: listens(session.mode) ? happening.words : '' });
    case 'unclear':
      return unclear(session);
    case 'noise':
      return noise(session, happening.noise);
    case 'earOpened':
      return opened(session);
    case 'earDeaf':
      return deafened(session, happening.why);
    case 'soundBack':
      return hearsAgain(session);
    case 'engineChanged':
      return engineChanged(session, happening);
    case 'earNews':
      return earNews(session, happening.news);
    case 'loading':
      return stay({ ...session, loaded: happening.fraction });
  }
}

/** Told at once while nobody speaks; a sentence on its way is answered first, and its reply tells. */
function engineChanged(session: Session, { to, midSentence }: EngineChanged): SessionStep {
  const told: Session = { ...session, notice: { kind: 'engineChanged', to } };
  if (midSentence || !listens(session.mode)) return stay({ ...told, untold: to });
  return sayBetween({ ...told, untold: null }, { engine: to });
}

/** Said aloud only where whoever works with closed hands must do something about it. */
function earNews(session: Session, news: EarNews): SessionStep {
  const told: Session = { ...session, notice: { kind: 'earNews', news } };
  if (!listens(session.mode)) return stay(told);
  if (news === 'rests') return go(told, { kind: 'paused', by: 'press' }, [{ kind: 'gate' }]);
  if (news !== 'back') return sayBetween(told, { engine: null, news });
  return { session: told, effects: [{ kind: 'earcon', which: 'listening' }] };
}

/** Said once for each time that it gets too loud: with the next reply, or between two sentences. */
function noise(session: Session, told: RoomNoise | null): SessionStep {
  const earshot = told === null ? UNMEASURED : afterNoise(session.earshot, told);
  const next = withEarshot(session, earshot);
  // The words of a sentence are still on their way.
  const isLater = told?.sentence === true || !listens(session.mode);
  return isLater || !next.untoldNoise ? stay(next) : tellOfNoise(next);
}

export function withEarshot(session: Session, earshot: Earshot): Session {
  if (!isTooLoud(earshot)) return { ...session, earshot, untoldNoise: false };
  const isNews = session.untoldNoise || !isTooLoud(session.earshot);
  // Whoever has the keys before him need not be told of them.
  return { ...session, earshot, untoldNoise: isNews && session.tab !== 'keys' };
}

/** Shown it is by the field's foot, for as long as it lasts. */
function tellOfNoise(session: Session): SessionStep {
  const told: Session = { ...session, untoldNoise: false, notice: null };
  return sayBetween(told, { engine: null, news: 'tooLoud' });
}

const listens = (mode: Mode): boolean =>
  mode.kind === 'listening' || (mode.kind === 'asking' && mode.ear.kind === 'open');

/** The page's own sentence between two of the person's: the ear closes for it and opens again. */
function sayBetween(session: Session, told: Pick<Saying, 'engine' | 'news'>): SessionStep {
  const { mode } = session;
  const number = session.speeches + 1;
  const asked = mode.kind === 'asking' ? mode.question : null;
  const saying: Saying = { ...told, reply: NO_REPLY, notKept: null, reopens: true };
  return go(
    { ...session, speeches: number },
    { kind: 'speaking', number, ear: earOf(mode), then: null, asked },
    [{ kind: 'gate' }, { kind: 'say', number, saying }],
  );
}

const NO_REPLY: Reply = { text: '', spoken: '', large: null, earcon: 'none' };

/** Two falling tones tell that it should be said again; a noisy room must not make the page beep on. */
const BEEPS_IN_A_ROW = 2;

function unclear(session: Session): SessionStep {
  const { mode } = session;
  if (mode.kind === 'paused') return settle(session, mode, null);
  if (mode.kind !== 'listening' && mode.kind !== 'asking') return stay(session);
  const unclearInARow = session.unclearInARow + 1;
  if (session.untoldNoise) return tellOfNoise({ ...session, unclearInARow });
  const said: Session = { ...session, unclearInARow, notice: { kind: 'unclear' } };
  const asked = mode.kind === 'asking' ? mode.question : null;
  const { session: next, effects } = settle(said, earOf(mode), asked);
  if (unclearInARow > BEEPS_IN_A_ROW) return { session: next, effects };
  return { session: next, effects: [{ kind: 'earcon', which: 'again' }, ...effects] };
}

/** The microphone came after the person thought better of it: let it go again. */
function opened(session: Session): SessionStep {
  const ear = earOf(session.mode);
  if (ear.kind === 'opening') return withEar(session, { kind: 'open' });
  return ear.kind === 'asleep' ? { session, effects: [{ kind: 'closeEar' }] } : stay(session);
}

function deafened(session: Session, why: Deafness): SessionStep {
  const ear = earOf(session.mode);
  const isOnHold = ear.kind === 'paused' && ear.by === 'voice';
  return withEar(session, { kind: 'deaf', why, ...(isOnHold && { onHold: true }) });
}

/** These pass without a press. */
const PASSING: ReadonlySet<Deafness> = new Set<Deafness>(['interrupted', 'soundHeldBack']);

/** Goes on where it was; whoever was put on hold still is. */
function hearsAgain(session: Session): SessionStep {
  const ear = earOf(session.mode);
  if (ear.kind !== 'deaf' || !PASSING.has(ear.why)) return stay(session);
  const told: Session = { ...session, notice: { kind: 'earNews', news: 'soundBack' } };
  const step = withEar(told, ear.onHold ? { kind: 'paused', by: 'voice' } : { kind: 'open' });
  if (!listens(step.session.mode)) return step;
  return { ...step, effects: [{ kind: 'earcon', which: 'listening' }, ...step.effects] };
}

function withEar(session: Session, ear: EarState): SessionStep {
  const { mode } = session;
  if (mode.kind === 'thinking' || mode.kind === 'speaking') return go(session, { ...mode, ear });
  return settle(session, ear, mode.kind === 'asking' ? mode.question : null);
}
