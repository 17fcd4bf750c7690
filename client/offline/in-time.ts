import type { After } from './back-off.ts';

/** Ours: an old phone reads 20,000 records in about a second. */
const OVERDUE_MS = 10_000;

/**
 * What does not answer is taken for broken: Safari 14.1 left the opening of a database unanswered until the page was
 * reloaded (WebKit bug 226547), and nothing was ever drawn.
 */
export function inTime<Result>(work: Promise<Result>, after: After): Promise<Result> {
  return new Promise((resolve, reject) => {
    const late = new Error(`The storage did not answer for ${OVERDUE_MS / 1000} seconds.`);
    const callOff = after(OVERDUE_MS, () => reject(late));
    work.then(resolve, reject).finally(callOff);
  });
}
