import type { Dimension } from './dimensions.ts';

/** One row a unit: a value in it becomes `value × factor + offset` in the dimension's base unit. */
export interface UnitRow {
  readonly dimension: Dimension;
  /** As printed beside a number. */
  readonly symbol: string;
  /** As a speech synthesiser is given it, after one and after any other number ("psi" is read "sigh"). */
  readonly spoken: { readonly one: string; readonly many: string };
  readonly factor: number;
  readonly offset: number;
  /** The most decimals worth showing: what the instrument in that unit resolves. */
  readonly decimals: number;
  /** How it may be written after a number on the command line. */
  readonly written: readonly string[];
}
