import type { Fact } from '../../core/language/utterance.ts';
import type { QuantityId } from '../../core/terms/quantities.ts';
import { EMPTY_MEMORY } from '../../core/turn/turn.ts';
import type { EventBody, VisitSettings } from '../../core/visit/events.ts';
import { runningTimers, stopTimers } from '../../core/visit/timers.ts';
import type { Happening } from './happenings.ts';
import { withNamesOf } from './known-names.ts';
import type { Notice } from './notice.ts';
import { withVisit } from './past-visits.ts';
import { freshVisit, type Session } from './session.ts';
import { stay, type SessionStep } from './settle.ts';

type Chosen = Extract<
  Happening,
  { kind: 'readingWanted' | 'settingsChosen' | 'newVisitChosen' | 'visitRead' }
>;

/** While a sentence is being kept its own visit stays in front; the press can be made again. */
export function choose(session: Session, happening: Chosen): SessionStep {
  if (session.mode.kind === 'thinking') return stay(session);
  switch (happening.kind) {
    case 'readingWanted':
      return wanted(session, happening.quantity);
    case 'settingsChosen':
      return isRunning(session)
        ? committing(session, [{ type: 'settingsChanged', v: 1, settings: happening.settings }])
        : openVisit(session, happening.settings);
    case 'newVisitChosen':
      return leave({ ...session, tab: 'sheet' });
    case 'visitRead':
      return stay({ ...session, visit: happening.visit, notice: noticeOf(session, happening) });
  }
}

/** As by voice: what was timed on the visit before stops with it, and that is told. */
function leave(session: Session): SessionStep {
  const { visit } = session;
  const timers = runningTimers(visit);
  const opened = openVisit(session, visit.settings);
  if (timers.length === 0) return opened;
  const leaving = { visit, bodies: stopTimers(timers).bodies };
  return {
    session: { ...opened.session, notice: { kind: 'timersStopped', timers } },
    effects: opened.effects.map((effect) =>
      effect.kind === 'commit' ? { ...effect, leaving } : effect,
    ),
  };
}

/** A timer of the visit that is looked away from rings when it is opened again. */
function noticeOf(
  { visit }: Session,
  { visit: read, notice }: Extract<Chosen, { kind: 'visitRead' }>,
): Notice | null {
  const timers = visit.visit === read.visit ? [] : runningTimers(visit);
  if (timers.length === 0 || notice?.kind === 'damaged') return notice;
  return { kind: 'timersWait', timers };
}

function isRunning({ visit }: Session): boolean {
  return visit.visit !== null && visit.finishedAt === null;
}

function wanted(session: Session, quantity: QuantityId): SessionStep {
  if (session.visit.finishedAt !== null) return stay(session);
  const asking: EventBody = { type: 'readingWanted', v: 1, quantity };
  return committing(
    session,
    isRunning(session) ? [asking] : [opening(session.visit.settings), asking],
  );
}

/** `facts`: what was already said of the unit it is about. */
export function openVisit(
  session: Session,
  settings: VisitSettings,
  facts: readonly Fact[] = [],
): SessionStep {
  const stated = facts.map((fact): EventBody => ({ type: 'factStated', v: 1, fact }));
  const fresh = {
    ...session,
    names: withNamesOf(session.names, session.visit.unit),
    past: withVisit(session.past, session.visit),
    visit: freshVisit(settings),
    memory: EMPTY_MEMORY,
    notice: null,
    compared: null,
  };
  return committing(fresh, [opening(settings), ...stated]);
}

function opening(settings: VisitSettings): EventBody {
  return { type: 'visitOpened', v: 1, settings };
}

function committing(session: Session, bodies: readonly EventBody[]): SessionStep {
  return { session, effects: [{ kind: 'commit', bodies }] };
}
