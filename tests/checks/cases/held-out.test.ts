import { describe, expect, it } from 'vitest';
import { believe, ranked } from '../../../core/advice/causes/belief.ts';
import { CAUSE_IDS } from '../../../core/advice/causes/cause-ids.ts';
import { PRIORS } from '../../../core/advice/causes/priors.ts';
import { SYMPTOMS } from '../../../core/advice/causes/symptom.ts';
import type { CauseId } from '../../../core/terms/causes.ts';
import { PATTERN_CASES } from './pattern-cases.ts';
import { orderFor, placeOf, weighed, type PublishedCase } from './published-case.ts';
import { TRADE_CASES } from './trade-cases.ts';
import { VISIT_CASES } from './visit-cases.ts';

const ALL: readonly PublishedCase[] = [...VISIT_CASES, ...PATTERN_CASES, ...TRADE_CASES];
type Priors = Readonly<Record<CauseId, number>>;

const flat = (): Priors => {
  const even: Record<string, number> = Object.fromEntries(CAUSE_IDS.map((cause) => [cause, 0.05]));
  return { ...PRIORS, ...even };
};

const rate = (count: number): string =>
  `${count} of ${ALL.length} (${((100 * count) / ALL.length).toFixed(0)} %)`;

const firsts = (cases: readonly PublishedCase[], priors: Priors): number =>
  cases.filter((each) => placeOf(each, priors) === 1).length;

/** The same halving and doubling that a person does by hand, from even priors, on these cases alone. */
function tunedOn(cases: readonly PublishedCase[]): Priors {
  let best = flat();
  for (let round = 0; round < 2; round += 1) {
    for (const cause of CAUSE_IDS) {
      const tries = [1, 0.5, 2].map((by) => ({ ...best, [cause]: best[cause] * by }));
      const scores = tries.map((priors) => firsts(cases, priors));
      best = tries[scores.indexOf(Math.max(...scores))] ?? best;
    }
  }
  return best;
}

/** The words before the first comma: two tables of one manual are one source. */
const sourceOf = ({ source }: PublishedCase): string => source.split(',')[0] ?? source;

describe('the published cases, not used to tune what they test', () => {
  it('rank first with even priors, and with priors tuned on every other source', () => {
    const even = flat();
    const untuned = firsts(ALL, even);
    const sources = [...new Set(ALL.map(sourceOf))];
    const places = sources.flatMap((source) => {
      const priors = tunedOn(ALL.filter((each) => sourceOf(each) !== source));
      return ALL.filter((each) => sourceOf(each) === source).map((each) => placeOf(each, priors));
    });
    const held = places.filter((place) => place === 1).length;
    const heldThree = places.filter((place) => place >= 1 && place <= 3).length;
    console.log(
      [
        `first place with the priors of the data file: ${rate(firsts(ALL, PRIORS))}`,
        `  with even priors, nothing tuned:            ${rate(untuned)}`,
        `  each source held out of the tuning:         ${rate(held)}, in three ${rate(heldThree)}`,
      ].join('\n'),
    );
    expect(places).toHaveLength(ALL.length);
    expect(untuned / ALL.length).toBeGreaterThan(0.6);
    expect(held / ALL.length).toBeGreaterThan(0.6);
    expect(heldThree / ALL.length).toBeGreaterThan(0.85);
  }, 60_000);
});

/** The first cause with every likelihood taken as more, or less, than it is: a ratio to a power. */
function firstWith(each: PublishedCase, power: (index: number) => number): CauseId | undefined {
  const { ratios, feed } = weighed(each);
  const bent = ratios.map(
    (one, index) =>
      new Map([...one].map(([cause, ratio]) => [cause, ratio ** power(index)] as const)),
  );
  return ranked(believe(bent, feed, PRIORS))[0]?.[0];
}

describe('the first cause when likelihoods are off', () => {
  const now = ALL.map((each) => orderFor(each)[0]);
  const changed = (power: (index: number) => number): number =>
    ALL.filter((each, at) => firstWith(each, power) !== now[at]).length;

  it('changes seldom with all of them weaker or stronger, more often with one symptom left out', () => {
    const all = [0.6, 0.8, 1.25, 1.6].map((by) => [by, changed(() => by)] as const);
    const without = SYMPTOMS.map((_, left) => changed((index) => (index === left ? 0 : 1)));
    console.log(
      [
        'first cause changed, likelihoods to the power of:',
        ...all.map(([by, count]) => `  ${by}: ${rate(count)}`),
        `  one reading of each case left out: ${without.join(', ')} of ${ALL.length}, by its place`,
      ].join('\n'),
    );
    for (const [, count] of all) expect(count / ALL.length).toBeLessThan(0.2);
    expect(Math.max(...without)).toBeGreaterThan(Math.max(...all.map(([, count]) => count)));
  });
});
