import type { Reply } from '../../core/replies/reply.ts';
import type { EngineChanged } from '../ear/ear.ts';
import type { Happening, Saying } from './happenings.ts';
import { earOf, type EarState, type Session } from './session.ts';
import { go, settle, stay, type SessionStep } from './settle.ts';

type EarHappening = Extract<
  Happening,
  { kind: 'hearing' | 'unclear' | 'earOpened' | 'earDeaf' | 'engineChanged' | 'loading' }
>;

export function reduceEar(session: Session, happening: EarHappening): SessionStep {
  switch (happening.kind) {
    case 'hearing':
      return stay({ ...session, hearing: true });
    case 'unclear':
      return unclear(session);
    case 'earOpened':
      return opened(session);
    case 'earDeaf':
      return withEar(session, { kind: 'deaf', why: happening.why });
    case 'engineChanged':
      return engineChanged(session, happening);
    case 'loading':
      return stay({ ...session, loaded: happening.fraction });
  }
}

/** Told at once while nobody speaks; a sentence on its way is answered first, and its reply tells. */
function engineChanged(session: Session, { to, midSentence }: EngineChanged): SessionStep {
  const { mode } = session;
  const ear = earOf(mode);
  const told: Session = { ...session, notice: { kind: 'engineChanged', to } };
  const listens = mode.kind === 'listening' || (mode.kind === 'asking' && ear.kind === 'open');
  if (midSentence || !listens) return stay({ ...told, untold: to });
  const number = session.speeches + 1;
  const asked = mode.kind === 'asking' ? mode.question : null;
  const saying: Saying = { reply: NO_REPLY, notKept: null, engine: to, reopens: true };
  return go(
    { ...told, speeches: number, untold: null },
    { kind: 'speaking', number, ear, then: null, asked },
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

function withEar(session: Session, ear: EarState): SessionStep {
  const { mode } = session;
  if (mode.kind === 'thinking' || mode.kind === 'speaking') return go(session, { ...mode, ear });
  return settle(session, ear, mode.kind === 'asking' ? mode.question : null);
}
