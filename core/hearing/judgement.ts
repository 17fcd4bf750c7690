/**
 * When what was heard may be acted on, as data. The first four are what `npm run bench:hearing -- --calibrate ROWS` makes
 * of the sentences of even number of `npm run bench:hearing -- --full --held-out --rows ROWS` (seed 2: 7,458 utterances
 * of ours, 995 stretches of talk and noise): the model card has what they do on other sentences.
 */
export const JUDGEMENT = {
  /**
   * Nats by which the other engine's vote makes its words likelier. On the same sentences 2 to 4 were alike; 6 lost 1 %
   * of the clean ones to it. A trial model on real speakers' digits gained with 6.
   */
  opinionWorth: 3,
  /** Nats that make one wording e times likelier than another: the network's own scores are too sure. */
  temperature: 1.5,
  /** Log odds that one of the wordings is right where no other sounds fit better at all … */
  perfectFit: 12,
  /** … and what each nat a sound takes off by which any sounds at all fit better. */
  strangeness: -7.8,
  /**
   * Chance below which the talk was not for us: 1.65 nats a sound. Of sentences of ours that were heard right one in
   * 200 lies beyond, of talk that was heard as words of ours 95 %.
   */
  notForUsBelow: 0.3,
  /** Nats: another engine's words further behind than this are not even an alternative. */
  alternativeWithin: 15,
} as const;

/** Chance that one of the wordings found is what was said, 0..1. */
export function chanceRight(strangeness: number): number {
  return 1 / (1 + Math.exp(-(JUDGEMENT.perfectFit + JUDGEMENT.strangeness * strangeness)));
}

/** How the chance divides among wordings of these scores in nats: sums to 1. */
export function shares(scores: readonly number[]): readonly number[] {
  const most = Math.max(...scores);
  const weights = scores.map((score) => Math.exp((score - most) / JUDGEMENT.temperature));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => weight / sum);
}
