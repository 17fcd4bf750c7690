import type { VisitEvent } from '../../core/visit/events.ts';

type Listener = (appended: readonly VisitEvent[]) => void;

/** Who is told of each append. */
export function createListeners() {
  const listeners = new Set<Listener>();
  return {
    tell: (appended: readonly VisitEvent[]): void => {
      for (const listener of listeners) listener(appended);
    },
    onChange: (listener: Listener): (() => void) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
