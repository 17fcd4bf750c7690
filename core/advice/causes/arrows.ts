/** A reading against what it should be: far means beyond the band by more than `FAR_KELVIN`. */
export const LEVELS = ['farLow', 'low', 'normal', 'high', 'farHigh'] as const;
export type Level = (typeof LEVELS)[number];
export type Levels = Readonly<Record<Level, number>>;

/**
 * As a symptom table prints it: up, down, the same; the same and seldom up; the same or up, as often the one as
 * the other; and what its sources leave open.
 */
export type Arrow = '^' | 'v' | '=' | '=/^' | '=/v' | '=|^' | '=|v' | '?';

/** A reading that a cause says nothing about is as likely at any level: unknown stays unknown. */
export const NEUTRAL = 1 / LEVELS.length;

const levels = (...each: readonly [number, number, number, number, number]): Levels => {
  const [farLow, low, normal, high, farHigh] = each;
  return { farLow, low, normal, high, farHigh };
};

/**
 * How likely each level is under a cause that moves the reading so (from memory: no source gives shares). A
 * symptom is missing in about one case of eight and the opposite of it in one of thirty. What is seldom up is
 * hardly ever far up: a dirty condenser's subcooling may be 3 °F over, at 20 °F over it is liquid stacked up.
 */
export const ARROWS: Readonly<Record<Arrow, Levels>> = {
  '^': levels(0.01, 0.03, 0.11, 0.43, 0.42),
  v: levels(0.42, 0.43, 0.11, 0.03, 0.01),
  '=': levels(0.01, 0.07, 0.84, 0.07, 0.01),
  '=/^': levels(0.01, 0.03, 0.73, 0.2, 0.03),
  '=/v': levels(0.03, 0.2, 0.73, 0.03, 0.01),
  '=|^': levels(0.01, 0.03, 0.46, 0.42, 0.08),
  '=|v': levels(0.08, 0.42, 0.46, 0.03, 0.01),
  '?': levels(NEUTRAL, NEUTRAL, NEUTRAL, NEUTRAL, NEUTRAL),
};

/** The share of the level seen that the arrow allows, where the level itself is uncertain. */
export function likelihood(arrow: Arrow, seen: Levels): number {
  return LEVELS.reduce((sum, level) => sum + seen[level] * ARROWS[arrow][level], 0);
}
