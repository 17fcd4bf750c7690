import type { Heard } from '../ear/ear.ts';
import { createAlarm } from './alarm.ts';
import type { Happening } from './happenings.ts';
import { createKeeper } from './keeper.ts';
import { createLater } from './later.ts';
import { perform, type Hands } from './perform.ts';
import type { Ports } from './ports.ts';
import { reduce } from './reduce.ts';
import type { Session } from './session.ts';
import { createStamps } from './stamps.ts';

export interface Runner {
  session(): Session;
  send(happening: Happening): void;
  subscribe(listener: (session: Session) => void): () => void;
}

/** Runs the session: reduces each happening, does its effects, and feeds back what came of them. */
export function createRunner(ports: Ports, start: Session): Runner {
  let session = start;
  const listeners = new Set<(session: Session) => void>();
  const later = createLater(() => session);
  const send = inOrder((happening: Happening) => {
    if (later.holds(happening)) return;
    const step = reduce(session, happening);
    session = step.session;
    for (const listener of listeners) tell(listener, session);
    for (const effect of step.effects) {
      later.began(effect);
      perform(hands, effect);
    }
    later.release(send);
    alarm.watch(session);
  });
  const alarm = createAlarm(ports, () => send({ kind: 'timeUp' }));
  const hands: Hands = {
    ...ports,
    session: () => session,
    send,
    keeper: createKeeper({ ...ports, onHeldKept: () => send({ kind: 'heldKept' }) }),
    stampFor: createStamps(ports),
  };
  ports.ear.onHeard((heard) => send(fromEar(heard)));
  ports.ear.onProgress((fraction) => send({ kind: 'loading', fraction }));
  alarm.watch(session);
  return {
    session: () => session,
    send,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** A screen that breaks must not lose the reading that it was to show. */
function tell(listener: (session: Session) => void, session: Session): void {
  try {
    listener(session);
  } catch (error) {
    console.error(error);
  }
}

/** A happening caused by an effect waits until the effects beside it are done. */
function inOrder(handle: (happening: Happening) => void): (happening: Happening) => void {
  const queue: Happening[] = [];
  let draining = false;
  return (happening) => {
    queue.push(happening);
    if (draining) return;
    draining = true;
    try {
      for (let next = queue.shift(); next; next = queue.shift()) handle(next);
    } finally {
      draining = false;
    }
  };
}

function fromEar(heard: Heard): Happening {
  switch (heard.kind) {
    case 'words':
      return { kind: 'heard', alternatives: heard.alternatives };
    case 'guess':
      return { kind: 'guessed', words: heard.words };
    case 'hearing':
    case 'unclear':
    case 'noise':
    case 'soundBack':
    case 'engineChanged':
      return heard;
    case 'news':
      return { kind: 'earNews', news: heard.news };
    case 'deaf':
      return { kind: 'earDeaf', why: heard.why };
  }
}
