import { applyEvents } from '../../core/visit/apply.ts';
import type { VisitEvent } from '../../core/visit/events.ts';
import type { VisitState } from '../../core/visit/state.ts';
import type { Session } from './session.ts';

/** The session with what another tab wrote: also in a sentence that is being kept just now. */
export function caughtUp(session: Session, logged: readonly VisitEvent[]): Session {
  const visit = withLogged(session.visit, logged);
  const { mode } = session;
  if (mode.kind !== 'thinking' || !mode.turn) return { ...session, visit };
  const turn = { ...mode.turn, state: withLogged(mode.turn.state, logged) };
  return { ...session, visit, mode: { ...mode, turn } };
}

/** The log's events in the log's order, then those that are on their way into it. */
function withLogged(visit: VisitState, logged: readonly VisitEvent[]): VisitState {
  const isSame = visit.visit === null || visit.visit === logged[0]?.visit;
  return isSame ? applyEvents([...logged, ...visit.history]) : visit;
}
