const FIRST_DELAY_MS = 1000;
const LONGEST_DELAY_MS = 300_000;

/** Runs something later; returns how to call it off. */
export type After = (delayMs: number, run: () => void) => () => void;

/** How long to wait before the next try, after the given number of failed ones (from 1): doubles up to 5 min. */
export function backOffMs(attempt: number): number {
  return Math.min(FIRST_DELAY_MS * 2 ** (attempt - 1), LONGEST_DELAY_MS);
}

export function createBackOff(after: After) {
  let attempt = 0;
  let callOff = () => {};
  return {
    start(run: () => Promise<void>) {
      attempt += 1;
      const delayMs = backOffMs(attempt);
      callOff = after(delayMs, () => void run());
      return { attempt, delayMs };
    },
    callOff: () => callOff(),
    reset() {
      attempt = 0;
    },
  };
}
