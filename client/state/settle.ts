import type { Expectation } from '../../core/language/context.ts';
import { expectationOf } from '../../core/turn/context-of.ts';
import type { TurnInput } from '../../core/turn/turn.ts';
import type { OpenQuestion } from '../../core/visit/views.ts';
import type { Effect, Step } from './happenings.ts';
import type { EarState, Mode, Session } from './session.ts';

export type SessionStep = Step<Session>;

export const stay = (session: Session): SessionStep => ({ session, effects: [] });

export function go(session: Session, mode: Mode, effects: readonly Effect[] = []): SessionStep {
  return { session: { ...session, mode }, effects };
}

/** Where a busy mode ends: at what the ear is doing, with a question in front of it if one was raised. */
export function settle(session: Session, ear: EarState, asked: OpenQuestion | null): SessionStep {
  const [words, ...waiting] = session.waiting;
  if (words !== undefined) return think({ ...session, waiting }, words, ear);
  return go(session, restOf(ear, asked), earEffects(session, ear, asked));
}

export function think(session: Session, said: TurnInput['words'], ear: EarState): SessionStep {
  const paused = ear.kind === 'paused' && ear.by === 'voice';
  const words = typeof said === 'string' ? said : (said[0]?.words ?? '');
  return go(session, { kind: 'thinking', words, ear, turn: null, asked: null }, [
    { kind: 'gate' },
    { kind: 'takeTurn', words: said, heed: paused ? 'resume' : 'everything' },
  ]);
}

function restOf(ear: EarState, asked: OpenQuestion | null): Mode {
  if (asked && ear.kind !== 'paused') return { kind: 'asking', question: asked, ear };
  return ear.kind === 'open' ? { kind: 'listening' } : ear;
}

function earEffects(
  session: Session,
  ear: EarState,
  asked: OpenQuestion | null,
): readonly Effect[] {
  const hears = ear.kind === 'open' || (ear.kind === 'paused' && ear.by === 'voice');
  return hears
    ? [{ kind: 'listen', expectation: expected(session, asked), names: session.names }]
    : [];
}

/**
 * The narrow grammars hear better but hold few questions: they are for the answer alone. Whoever is not
 * understood once was saying something else; whoever is not understood then either was answering after all.
 */
function expected(session: Session, asked: OpenQuestion | null): Expectation {
  if (session.unclearInARow % 2 === 1) return 'anything';
  return asked === null ? session.expects : expectationOf(asked);
}
