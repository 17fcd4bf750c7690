import type { Evidence } from './evidence.ts';

/**
 * When what was heard may be acted on, as data. On the sentences of seed 1 of `npm run bench:hearing` (30, five voices,
 * clean to 5 dB, both bands; all heard right) any sounds fitted better by at most 0.9 nats a sound; on 16 sentences of
 * stray talk, where a sentence of ours was found at all, by 2.2 or more; on a fan by 2.3.
 */
export const JUDGEMENT = {
  /** Nats a sound by which any sounds fit better: above it the talk was not for us. */
  notForUsAbove: 1.5,
  /** Chance of being right below which nothing is acted on. */
  unsureBelow: 0.5,
  /**
   * Nats: the other engine's words are taken when they are no further behind. A trial model on real speakers' digits
   * gained with 6, their words being right where the made-up voices' model was in doubt; made-up voices cannot show it.
   */
  opinionWithin: 4,
  /** Nats: further behind, they are not even an alternative. */
  alternativeWithin: 15,
} as const;

/**
 * An order made by hand, not yet a calibrated chance: there were no errors to fit it to.
 */
const WEIGHTS = { one: 3, strangeness: -4, worstWord: -0.3, margin: 0.4, agreed: 2, differed: -1 };

/** How likely the words are right, 0..1. */
export function chanceRight({ strangeness, worstWord, margin, agreed }: Evidence): number {
  const opinion = agreed === null ? 0 : agreed ? WEIGHTS.agreed : WEIGHTS.differed;
  const sum =
    WEIGHTS.one +
    WEIGHTS.strangeness * strangeness +
    WEIGHTS.worstWord * worstWord +
    WEIGHTS.margin * margin +
    opinion;
  return 1 / (1 + Math.exp(-sum));
}
