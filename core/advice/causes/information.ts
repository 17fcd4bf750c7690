import type { CauseId } from '../../terms/causes.ts';
import { NEUTRAL } from './arrows.ts';
import type { Belief } from './belief.ts';

/** How likely each outcome of a check is under each cause; something else is in the list as null. */
export type Outcomes = (cause: CauseId | null) => readonly number[];

interface Share {
  readonly cause: CauseId | null;
  readonly share: number;
}

function sharesOf({ shares, somethingElse }: Belief): readonly Share[] {
  const each = [...shares].map(([cause, share]) => ({ cause, share }));
  return [...each, { cause: null, share: somethingElse }];
}

/** In bits: what is left open among the causes. */
function entropy(shares: readonly number[]): number {
  return shares.reduce((sum, share) => (share > 0 ? sum - share * Math.log2(share) : sum), 0);
}

/** The bits that a check is expected to settle: never negative, none where every cause gives the same outcomes. */
export function expectedInformation(belief: Belief, outcomes: Outcomes): number {
  const all = sharesOf(belief);
  const before = entropy(all.map(({ share }) => share));
  const count = outcomes(null).length;
  const after = Array.from({ length: count }, (_, outcome) => {
    const joint = all.map(({ cause, share }) => share * (outcomes(cause)[outcome] ?? 0));
    const chance = joint.reduce((sum, each) => sum + each, 0);
    return chance > 0 ? chance * entropy(joint.map((each) => each / chance)) : 0;
  });
  return Math.max(0, before - after.reduce((sum, each) => sum + each, 0));
}

const WORTH_NAMING = 5;

/** The two likely causes that it tells apart best, the likelier first. */
export function toldApart(belief: Belief, outcomes: Outcomes): readonly CauseId[] {
  const likely = [...belief.shares]
    .filter(([cause]) => cause !== 'nothingWrong')
    .sort(([, a], [, b]) => b - a)
    .slice(0, WORTH_NAMING);
  const pairs = likely.flatMap(([one, a], index) =>
    likely.slice(index + 1).map(([other, b]) => ({
      pair: [one, other] as const,
      worth: a * b * distance(outcomes(one), outcomes(other)),
    })),
  );
  const best = pairs.toSorted((a, b) => b.worth - a.worth)[0];
  return best && best.worth > 0 ? best.pair : [];
}

function distance(one: readonly number[], other: readonly number[]): number {
  return one.reduce((sum, each, index) => sum + Math.abs(each - (other[index] ?? 0)), 0);
}

/** A check that either finds what it looks for or does not. */
export const findsOrNot = (chance: number): readonly number[] => [chance, 1 - chance];

/** A reading under a cause that says nothing about it. */
export const ANY_LEVEL: readonly number[] = Array.from({ length: 5 }, () => NEUTRAL);
