/** How much a heard value can be trusted: typed, or by the chance that it was said; untold where no chance is told. */
export type Certainty = 'typed' | 'certain' | 'unsure' | 'untold';

/**
 * Whether another value may have been said: `none` that the quantity could have, `possible` where one could be, and
 * `offered` where the recogniser itself holds it for nearly as likely.
 */
export type Rivalry = 'none' | 'possible' | 'offered';

/**
 * `keep`: nothing is asked and nothing need be checked. `readBack`: the acknowledgement says the value, as it does
 * of every one kept, and that is the check. `confirm`: "Head 192? Say yes to keep it." `askWhich`: "fifteen, or
 * fifty?". Of the last two nothing is kept until answered.
 */
export type ReadBack = 'keep' | 'readBack' | 'confirm' | 'askWhich';

/**
 * Ours: a question costs a breath beside a fan, a wrong value costs the diagnosis. So a value is asked about wherever
 * it was not surely said; all else is said back.
 */
export const READ_BACK_POLICY: Record<Certainty, Record<Rivalry, ReadBack>> = {
  typed: { none: 'keep', possible: 'keep', offered: 'keep' },
  certain: { none: 'readBack', possible: 'readBack', offered: 'askWhich' },
  unsure: { none: 'confirm', possible: 'askWhich', offered: 'askWhich' },
  untold: { none: 'readBack', possible: 'askWhich', offered: 'askWhich' },
};

/**
 * Chance of having been said, chosen on one half of the hearing benchmark (core/hearing/judgement.ts). Of what
 * was between 0.85 and 0.97 six in a hundred were wrong, and not teens and tens alone: "forty" for "ninety", "fifty" for
 * "eighty", "suction" for "subcooling". Asked about, one of 600 sentences at 5 dB was kept wrong instead of five, for
 * four questions more in a hundred.
 */
const CERTAIN = 0.97;

/** What holds no value cannot be read back before it is done: less likely than this it is not done. */
export const DONE_FROM = 0.85;

/** By the sound alone: a sentence less likely than this was not heard at all. */
export const HEARD_FROM = 0.4;

/**
 * By the sound alone: no value of a sentence less likely than this is kept unasked. A tune or clatter beside a fan makes
 * sentences of numbers; of 900 such stretches of noise six came to a sentence likelier than 0.5, one to 0.65.
 */
export const SENTENCE_FROM = 0.65;

export function certaintyOf(confidence: number): Certainty {
  if (confidence === 0) return 'untold';
  return confidence >= CERTAIN ? 'certain' : 'unsure';
}

/** Ours: an alternative that trails by more than this is not one that the recogniser holds for nearly as likely. */
export const CLOSE_BEHIND = 0.15;

/** Ours: a value this likely is worth offering in a question that is asked anyway. */
export const WORTH_OFFERING = 0.05;
