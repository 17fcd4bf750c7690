import type { Evidence } from './evidence.ts';

/** When what was heard may be acted on: data, fitted as tests/hearing/bench/README.md says. */
export const JUDGEMENT = {
  /** Nats: the other engine's words are taken when they are no further behind. */
  opinionWithin: 4,
  /** Nats: further behind, they are not even an alternative. */
  alternativeWithin: 15,
  /** Nats a sound by which any sounds fit better: above it the talk was not for us. */
  notForUsAbove: 1.2,
  /** Chance of being right below which nothing is acted on. */
  unsureBelow: 0.5,
} as const;

/** Logistic regression of being right on the evidence. */
const WEIGHTS = { one: 3, strangeness: -4, worstWord: -0.3, margin: 0.4, agreed: 2, differed: -1 };

/** The chance that the words are right, 0..1. */
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
