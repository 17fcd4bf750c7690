import type { VisitState } from '../../visit/state.ts';
import { runningTimers } from '../../visit/timers.ts';
import { worked, type Found } from '../found.ts';
import { minutesBetween } from './series.ts';
import type { TimeLeftAnswer } from './settling-verdict.ts';
import { nowOf } from './trend.ts';

export function timeLeftOf(state: VisitState): Found<TimeLeftAnswer> {
  const running = runningTimers(state);
  if (running.length === 0) return { kind: 'refused', about: null, reason: 'noTimer' };
  const timers = running.map(({ about, work, endsAt }) => ({
    timer: { about, work },
    minutes: Math.max(0, minutesBetween(nowOf(state), endsAt)),
  }));
  return worked({ answer: 'timeLeft', timers });
}
