/** How much a heard value can be trusted: typed, or by the recogniser's confidence in its sentence. */
export type Certainty = 'typed' | 'sure' | 'fair' | 'poor';

/**
 * Whether another value sounds like it: `none` that the quantity could have, `possible` where one could be, and
 * `offered` where the recogniser itself holds it for nearly as likely.
 */
export type Rivalry = 'none' | 'possible' | 'offered';

/**
 * `keep`: nothing is asked and nothing need be checked. `readBack`: the acknowledgement says the value, as it does
 * of every one kept, and that is the check. `askWhich`: "fifteen, or fifty?", and nothing is kept until answered.
 */
export type ReadBack = 'keep' | 'readBack' | 'askWhich';

/**
 * Ours: a question costs a breath beside a fan, a wrong value costs the diagnosis. So a value is asked about only
 * where the recogniser was unsure of it and there is another that it could have been; all else is said back.
 */
export const READ_BACK_POLICY: Record<Certainty, Record<Rivalry, ReadBack>> = {
  typed: { none: 'keep', possible: 'keep', offered: 'keep' },
  sure: { none: 'readBack', possible: 'readBack', offered: 'askWhich' },
  fair: { none: 'readBack', possible: 'readBack', offered: 'askWhich' },
  poor: { none: 'readBack', possible: 'askWhich', offered: 'askWhich' },
};

/**
 * The embedded recogniser's own bounds (core/hearing/confidence.ts): right readings in quiet lay at 0.73 and
 * above, and at 0.5 right and stray ones meet. Another recogniser's figures are taken for the same.
 */
const SURE = 0.73;
const FAIR = 0.5;

export function certaintyOf(confidence: number): Certainty {
  if (confidence >= SURE) return 'sure';
  return confidence >= FAIR ? 'fair' : 'poor';
}

/** Ours: an alternative that trails by more than this is not one that the recogniser holds for nearly as likely. */
export const CLOSE_BEHIND = 0.15;
