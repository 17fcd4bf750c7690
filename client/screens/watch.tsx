import { useEffect, useState } from 'preact/hooks';
import type { VisitState } from '../../core/visit/state.ts';
import { shownTimers, shownTrends } from './watch-model.ts';

interface WatchProps {
  readonly visit: VisitState;
  readonly now: () => number;
}

/** What runs by the clock, and what is being watched until it holds: over everything else on the field. */
export function Watch({ visit, now }: WatchProps) {
  const timers = shownTimers(visit, now());
  const trends = shownTrends(visit);
  useSeconds(timers.some(({ isUp }) => !isUp));
  if (timers.length === 0 && trends.length === 0) return null;
  return (
    <div class="watch" data-testid="watch">
      {timers.map(({ id, name, left, isUp }) => (
        <p key={id} class="timer" data-up={isUp ? '' : undefined} data-testid="timer">
          <b>{left}</b> <span>{name}</span>
        </p>
      ))}
      {trends.length > 0 && (
        <p class="trends" data-testid="trends">
          {trends.map((words) => (
            <span key={words}>{words}</span>
          ))}
        </p>
      )}
    </div>
  );
}

/** Draws anew each second while something counts. */
function useSeconds(isCounting: boolean): void {
  const [, count] = useState(0);
  useEffect(() => {
    if (!isCounting) return undefined;
    const ticking = setInterval(() => count((seconds) => seconds + 1), 1000);
    return () => clearInterval(ticking);
  }, [isCounting]);
}
