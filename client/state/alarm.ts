import { runningTimers } from '../../core/visit/timers.ts';
import type { Ports } from './ports.ts';
import type { Session } from './session.ts';

export interface Alarm {
  /** Told of every session: it rings when the visit's next timer is up and nothing else is being said. */
  watch(session: Session): void;
}

/** A browser's timer takes no more than 2^31 ms, and runs at once beyond that. */
const LONGEST_MS = 2_000_000_000;
/** One that is still up after it rang could not be told: at once it would ring without end. */
const AGAIN_MS = 60_000;

/**
 * One alarm for the timer that is up next. What is being kept or said comes first: the page settles again after
 * it, and the alarm is set anew. After a reload, and after a phone slept through it, what is overdue rings at once.
 */
export function createAlarm(
  { clock, writes }: Pick<Ports, 'clock' | 'writes'>,
  ring: () => void,
): Alarm {
  let setFor: number | null = null;
  let rangFor: number | null = null;
  let callOff: () => void = () => undefined;
  return {
    watch(session) {
      const isOurs = writes() && !isBusy(session);
      const next = !isOurs ? null : (runningTimers(session.visit)[0]?.endsAt ?? null);
      if (next === setFor) return;
      callOff();
      setFor = next;
      if (next === null) return;
      const left = next - clock.now();
      const due = next === rangFor ? AGAIN_MS : 0;
      callOff = clock.after(left > 0 ? Math.min(left, LONGEST_MS) : due, () => {
        setFor = null;
        rangFor = next;
        ring();
      });
    },
  };
}

function isBusy({ mode }: Session): boolean {
  return mode.kind === 'thinking' || mode.kind === 'speaking';
}
