export interface Clock {
  /** Milliseconds since 1970. */
  now(): number;
  /** Runs it once after the time; the returned function calls it off. */
  after(ms: number, run: () => void): () => void;
}

export const browserClock: Clock = {
  now: () => Date.now(),
  after: (ms, run) => {
    const timer = setTimeout(run, ms);
    return () => clearTimeout(timer);
  },
};

export function waitFor(clock: Clock, ms: number): Promise<void> {
  return new Promise((resolve) => {
    clock.after(ms, resolve);
  });
}
