import type { Amount } from '../units/amount.ts';

/** How far a source can be leant on. */
export type Standing =
  /** Read in a standard, a handbook, a maker's or a trade publication. */
  | 'published'
  /** Follows from an equation of state or from arithmetic. */
  | 'computed'
  /** Trade custom without a source. */
  | 'common practice'
  /** Recalled: look it up before leaning on it. */
  | 'from memory';

/** A value that a shop may set otherwise, with what it leans on. */
export interface Sourced<Value> {
  readonly value: Value;
  readonly source: string;
  readonly standing: Standing;
  /** What another source says instead. */
  readonly otherSource?: string;
}

export interface FormulaSymbol {
  readonly symbol: string;
  readonly meaning: string;
  readonly unit: string;
}

/** What stands beside every calculation: enough to check it by hand. */
export interface Formula {
  readonly id: string;
  readonly name: string;
  readonly equation: string;
  readonly symbols: readonly FormulaSymbol[];
  /** Where it holds. */
  readonly range: string;
  readonly source: string;
  readonly standing: Standing;
  /** In the form the command line takes; a test runs it. */
  readonly example: Example;
}

export interface Example {
  readonly inputs: Readonly<Record<string, string>>;
  readonly gives: Amount;
  /** How far off the value may be, in its own unit, and why. */
  readonly within: number;
  readonly source: string;
  readonly standing: Standing;
}

/** Rows of symbol, meaning and unit, so that a formula's record reads as a list. */
export function symbols(...rows: readonly (readonly [string, string, string])[]): FormulaSymbol[] {
  return rows.map(([symbol, meaning, unit]) => ({ symbol, meaning, unit }));
}
