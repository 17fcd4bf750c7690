import type { CauseId } from '../../terms/causes.ts';
import { CAUSE_IDS } from './cause-ids.ts';
import { rowsOf } from './matrix.ts';
import type { Feed } from './matrix-row.ts';
import { SPEAKS, type Ratios } from './observation.ts';
import { PRIORS, SOMETHING_ELSE } from './priors.ts';

/** What each cause is worth after the evidence; with something no row describes they add up to one. */
export interface Belief {
  readonly shares: ReadonlyMap<CauseId, number>;
  readonly somethingElse: number;
}

type Priors = Readonly<Record<CauseId, number>>;

/**
 * Naive Bayes: each piece of evidence counts by itself, which holds near enough once what shows the same thing
 * twice counts once. What contradicts a cause lowers it against something else, whatever else it lowers.
 */
export function believe(
  evidence: readonly Ratios[],
  feed: Feed | null,
  priors: Priors = PRIORS,
): Belief {
  const candidates = CAUSE_IDS.filter((cause) => {
    const rows = rowsOf(cause, feed);
    const isSpokenFor = evidence.some((each) => (each.get(cause) ?? 1) >= SPEAKS);
    return rows.length > 0 && (isSpokenFor || !rows.every(({ onSight }) => onSight === true));
  });
  const weights = candidates.map((cause) => {
    const weight = evidence.reduce((product, each) => product * (each.get(cause) ?? 1), 1);
    return [cause, priors[cause] * weight] as const;
  });
  const total = weights.reduce((sum, [, weight]) => sum + weight, SOMETHING_ELSE);
  return {
    shares: new Map(weights.map(([cause, weight]) => [cause, weight / total] as const)),
    somethingElse: SOMETHING_ELSE / total,
  };
}

/** Under a twentieth it is hardly worth a look (common practice). */
const POSSIBLE = 0.05;
export const isPossible = (share: number): boolean => share >= POSSIBLE;

/** The likeliest first; equal ones in the order of the closed set. */
export function ranked({ shares }: Belief): readonly (readonly [CauseId, number])[] {
  return [...shares].sort(([, a], [, b]) => comparable(b) - comparable(a));
}

/** Two equal products differ in their last digits by the order of their factors. */
const comparable = (share: number): number => Number(share.toPrecision(10));
