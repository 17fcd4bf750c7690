import { go, settle, stay, type SessionStep } from './settle.ts';
import type { EarState, Mode, Session } from './session.ts';

/** What pressing the field does, whatever the page is doing. */
export function press(session: Session): SessionStep {
  const { mode } = session;
  switch (mode.kind) {
    case 'asleep':
    case 'paused':
    case 'deaf':
      return wake(session);
    case 'opening':
      return go(session, { kind: 'asleep' }, [{ kind: 'closeEar' }]);
    case 'listening':
      return go(session, PAUSED, [{ kind: 'gate' }]);
    case 'asking':
      return mode.ear.kind === 'open' ? go(session, PAUSED, [{ kind: 'gate' }]) : wake(session);
    case 'thinking':
      return stay(session);
    case 'speaking':
      return cutOff(session, mode);
  }
}

/** As pressed while it hears; what is being said is cut off, and what is being kept goes on without an ear. */
export function lendEar(session: Session): SessionStep {
  const { mode } = session;
  switch (mode.kind) {
    case 'asleep':
    case 'deaf':
      return stay(session);
    case 'opening':
      return go(session, { kind: 'asleep' }, [{ kind: 'closeEar' }]);
    case 'listening':
    case 'paused':
    case 'asking':
      return go(session, PAUSED, [{ kind: 'gate' }]);
    case 'thinking':
      return go(session, { ...mode, ear: LENT }, [{ kind: 'gate' }]);
    case 'speaking':
      return go(session, PAUSED, [{ kind: 'hush' }, { kind: 'gate' }]);
  }
}

const LENT: EarState = { kind: 'paused', by: 'press' };
const PAUSED: Mode = { kind: 'paused', by: 'press' };

function wake(session: Session): SessionStep {
  return go({ ...session, loaded: 0 }, { kind: 'opening' }, [{ kind: 'openEar' }]);
}

/**
 * A press while the page speaks means "I have heard enough", not "stop listening": it listens once the echo is over, as
 * 0.3 s of its own voice were once heard as "no", which took a reading back.
 */
function cutOff(session: Session, { number }: Extract<Mode, { kind: 'speaking' }>): SessionStep {
  return { session, effects: [{ kind: 'hush' }, { kind: 'awaitEcho', number }] };
}

/** Speech is over: do what the sentence asked of the session, then rest. */
export function afterSpeech(
  session: Session,
  mode: Extract<Mode, { kind: 'speaking' }>,
): SessionStep {
  switch (mode.then) {
    case 'pause':
      return mode.ear.kind === 'open'
        ? settle(session, { kind: 'paused', by: 'voice' }, null)
        : settle(session, mode.ear, null);
    case 'resume':
      return mode.ear.kind === 'paused' ? wake(session) : settle(session, mode.ear, mode.asked);
    case 'finish':
      return finish(session, mode);
    case 'readNote':
    case 'newVisit':
    case null:
      return settle(session, mode.ear, mode.asked);
  }
}

function finish(session: Session, mode: Extract<Mode, { kind: 'speaking' }>): SessionStep {
  if (mode.ear.kind === 'deaf') return settle(session, mode.ear, null);
  const asleep = settle(session, { kind: 'asleep' }, null);
  return { ...asleep, effects: [{ kind: 'closeEar' }, ...asleep.effects] };
}
