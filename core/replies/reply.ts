/** What the technician hears and sees for one sentence said. */
export interface Reply {
  /** Numbers as digits, units as symbols: for the screen, the log of the visit and `replay`. */
  readonly text: string;
  /** The same sentence for a speech synthesiser: units, signs and designations written as they are spoken. */
  readonly spoken: string;
  /** One thing large on the screen, or nothing. */
  readonly large: Large | null;
  /** None where nothing was for us: talk is answered with silence. */
  readonly earcon: 'kept' | 'again' | 'answer' | 'timeUp' | 'none';
}

export interface Large {
  readonly name: string;
  /** Already formatted: the value's digits, and its unit's symbol. */
  readonly value: string;
  readonly unit: string;
}
