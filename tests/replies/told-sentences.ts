import type { Known } from '../../core/advice/verdict.ts';

/** One verdict with sentences by hand that say something else, and some that say the same. */
export interface Told {
  readonly verdict: Known;
  readonly wrong: readonly string[];
  readonly right: readonly string[];
}
