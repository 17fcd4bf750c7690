import type { Levels } from './arrows.ts';

/** A value against its band, all in one unit. */
export interface Against {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** One standard deviation of what the instruments and the target's table leave open. */
  readonly spread: number;
  /** How far beyond the band is far. */
  readonly far: number;
}

/** Scales the logistic curve to within 0.01 of the normal distribution (Bowling and others, 2009: 1.702). */
const LOGISTIC_SCALE = 1.702;

/**
 * The probability of each level: a superheat of 13 °F against 6 to 12 is hardly more high than normal, and no
 * threshold turns it from one into the other.
 */
export function levelsOf({ value, low, high, spread, far }: Against): Levels {
  const below = (edge: number): number =>
    1 / (1 + Math.exp((-LOGISTIC_SCALE * (edge - value)) / spread));
  const edges = [low - far, low, high, high + far].map(below);
  const [farLow = 0, toLow = 0, toHigh = 0, toFarHigh = 1] = edges;
  return {
    farLow,
    low: toLow - farLow,
    normal: toHigh - toLow,
    high: toFarHigh - toHigh,
    farHigh: 1 - toFarHigh,
  };
}

/** With head held up on purpose, above the target is as it should be. */
export function overIsNormal(levels: Levels): Levels {
  const { farLow, low, normal, high, farHigh } = levels;
  return { farLow, low, normal: normal + high + farHigh, high: 0, farHigh: 0 };
}
