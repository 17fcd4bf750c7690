import type { Said } from '../../core/replies/said.ts';

/**
 * What a model is told in place of a verdict or of the facts of a note: no number, no unit, no name. Where a
 * sentence needs one it writes a slot by its role, `{measured}`, and `fill` puts the words in.
 */
export interface PhraseRecord {
  /** Which answer it is: the corpus file it learns from has this name. */
  readonly kind: string;
  /** Closed words for all that is true of it and no number: `over`, `inBand`, `glide`. */
  readonly fields: readonly string[];
  readonly slots: Readonly<Record<string, PhraseSlot>>;
  /** Said word for word after whatever was written: which rule holds today, the hottest day. */
  readonly tail?: Said;
}

/** What stands in a sentence where its role was written. */
export interface PhraseSlot extends Said {
  /** A required one is said exactly once, any other at most once. */
  readonly required: boolean;
  /** Without its unit: used from the second number of the same unit on, where that is understood. */
  readonly bare?: Bare;
}

export interface Bare extends Said {
  /** As written: the unit counts as said once a slot of the same one was filled. */
  readonly unit: string;
}

/** How it is to be said: the shortest way, with the reason, or written for one of two readers. */
export const REGISTERS = ['short', 'reason', 'customer', 'office'] as const;
export type Register = (typeof REGISTERS)[number];
