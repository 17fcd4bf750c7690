import type { WordStep } from './word-states.ts';

/** Sounds with which the words at a node of a net begin: those that begin alike share them. */
export interface Beginnings {
  readonly next: ReadonlyMap<number, BeginningsBehind>;
}

/** What a sound leads to. */
export interface BeginningsBehind {
  /** Words that are over with it. */
  readonly whole: readonly SpokenStep[];
  /** Longer ones; null where there are none. */
  readonly longer: Beginnings | null;
  /** The word that all longer ones are, −1 where there are several, and the weight of the likeliest. */
  readonly only: number;
  readonly logWeight: number;
}

/** A word by its index, and the node of the net that it leads to. */
export interface SpokenStep {
  readonly word: number;
  readonly to: number;
  readonly logWeight: number;
}

/** A word's index, and each way to say it as phones. */
export interface Spoken {
  readonly index: number;
  readonly ways: readonly (readonly number[])[];
}

export function beginningsOf(
  steps: readonly WordStep[],
  spoken: ReadonlyMap<string, Spoken>,
): Beginnings {
  const sayings = steps.flatMap(({ word, to, logWeight }) => {
    const { index = 0, ways = [] } = spoken.get(word) ?? {};
    return ways.map((way) => ({ word: index, to, logWeight, way }));
  });
  return branch(sayings, 0);
}

interface Saying extends SpokenStep {
  readonly way: readonly number[];
}

function branch(sayings: readonly Saying[], said: number): Beginnings {
  const groups = grouped(sayings, ({ way }) => way[said] ?? 0);
  return {
    next: new Map([...groups].map(([phone, group]) => [phone, behind(group, said + 1)])),
  };
}

function behind(sayings: readonly Saying[], said: number): BeginningsBehind {
  const longer = sayings.filter(({ way }) => way.length > said);
  const [first] = longer;
  return {
    whole: sayings
      .filter(({ way }) => way.length === said)
      .map(({ word, to, logWeight }) => ({ word, to, logWeight })),
    longer: first === undefined ? null : branch(longer, said),
    only: first !== undefined && longer.every(({ word }) => word === first.word) ? first.word : -1,
    logWeight: Math.max(...longer.map(({ logWeight }) => logWeight)),
  };
}

export function grouped<Each>(
  all: readonly Each[],
  keyOf: (each: Each) => number,
): ReadonlyMap<number, readonly Each[]> {
  const groups = new Map<number, Each[]>();
  for (const each of all) {
    const group = groups.get(keyOf(each));
    if (group === undefined) groups.set(keyOf(each), [each]);
    else group.push(each);
  }
  return groups;
}
