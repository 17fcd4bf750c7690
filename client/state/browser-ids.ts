import { monotonicFactory } from 'ulid';
import type { Ids } from './stamps.ts';

/** Two events of one millisecond still sort in the order they were made. */
export function createIds(): Ids {
  const next = monotonicFactory();
  return { next: (now) => next(now) };
}
