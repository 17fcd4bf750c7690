export interface Clock {
  /** Milliseconds since 1970. */
  now(): number;
  /** Minutes that the clock on the wall here is ahead of UTC at that moment. */
  utcOffset(at: number): number;
  /** Runs it once after the time; the returned function calls it off. */
  after(ms: number, run: () => void): () => void;
}

export const browserClock: Clock = {
  now: () => Date.now(),
  // The engine counts from here to UTC; the sum with 0 keeps UTC itself from being minus nought.
  utcOffset: (at) => 0 - new Date(at).getTimezoneOffset(),
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
