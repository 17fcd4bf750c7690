/** What another engine made of the wordings: the same words or others; `alone` where it was not asked. */
export type Second = 'alone' | 'agreed' | 'differed';

/** How sure to be of what was heard, as data. */
export interface Judgement {
  /** Nats by which the other engine's choice makes a wording likelier. */
  readonly opinionWorth: number;
  /** Nats that make one wording e times likelier than another: the network's own scores are too sure where another doubts. */
  readonly temperature: Readonly<Record<Second, number>>;
  /** Log odds that one of the wordings is right where no other sounds fit better at all … */
  readonly perfectFit: number;
  /** … what each nat a sound takes off by which any sounds at all fit better … */
  readonly strangeness: number;
  /** … each such nat of the whole sentence, as a longer one has more places to be wrong in … */
  readonly lost: number;
  /** … and that the other engine chose other words, or none. */
  readonly differed: number;
}

/** What `npm run bench:hearing -- --calibrate ROWS` gave: the model card has on what, and what they do on other sentences. */
export const JUDGEMENT: Judgement = {
  opinionWorth: 1.2,
  temperature: { alone: 1.25, agreed: 1.1, differed: 1.8 },
  perfectFit: 5.5,
  strangeness: -1.5,
  lost: -0.1,
  differed: -1.6,
};

/** Chance below which the talk was not for us. */
export const NOT_FOR_US_BELOW = 0.3;

/** How well words fit what was heard. */
export interface Fit {
  /** Nats a sound by which any sounds at all fit better, and of all sounds together. */
  readonly strangeness: number;
  readonly lost: number;
}

/** Chance that one of the wordings found is what was said, 0..1. */
export function chanceRight(fit: Fit, second: Second, judgement: Judgement = JUDGEMENT): number {
  const logOdds =
    judgement.perfectFit +
    judgement.strangeness * fit.strangeness +
    judgement.lost * fit.lost +
    (second === 'differed' ? judgement.differed : 0);
  return 1 / (1 + Math.exp(-logOdds));
}

/** How the chance divides among wordings of these scores in nats: sums to 1. */
export function shares(
  scores: readonly number[],
  second: Second,
  judgement: Judgement = JUDGEMENT,
): readonly number[] {
  const most = Math.max(...scores);
  const temperature = judgement.temperature[second];
  const weights = scores.map((score) => Math.exp((score - most) / temperature));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => weight / sum);
}
