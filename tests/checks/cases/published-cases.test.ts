import { describe, expect, it } from 'vitest';
import { answer } from '../../../core/advice/answer.ts';
import { CAUSE_IDS } from '../../../core/advice/causes/cause-ids.ts';
import { familyOf } from '../../../core/advice/causes/families.ts';
import { PRIORS } from '../../../core/advice/causes/priors.ts';
import { PATTERN_CASES } from './pattern-cases.ts';
import { orderFor, placeOf, type PublishedCase } from './published-case.ts';
import { TRADE_CASES } from './trade-cases.ts';
import { VISIT_CASES } from './visit-cases.ts';

const ALL: readonly PublishedCase[] = [...VISIT_CASES, ...PATTERN_CASES, ...TRADE_CASES];

/** First place changes when that prior is halved or doubled: the readings given leave two faults close. */
const SENSITIVE: readonly string[] = [
  'undercharge by 0.5: low back pressure and low head',
  'overcharge by 0.5: over charge',
  'overcharge by 0.5: overcharge with a capillary tube: both pressures high',
  'dirtyCondenser by 2: normal',
  'dirtyCondenser by 2: over charge',
  'dirtyCondenser by 2: overcharge with a capillary tube: both pressures high',
  'nonCondensables by 2: restriction in the liquid line: high head, low suction',
  'nonCondensables by 2: restricted capillary tube: suction in a vacuum',
  'valveFlooding by 2: mild low outdoor air flow',
  'valveFlooding by 2: compressor may be bad',
  'valveFlooding by 2: expansion valve open',
  'capillaryBlocked by 0.5: restriction in the liquid line: high head, low suction',
  'capillaryBlocked by 0.5: restricted capillary tube: suction in a vacuum',
  'icedCoil by 2: low back pressure and low head',
  'leakyValves by 0.5: compressor may be bad',
  'leakyValves by 0.5: expansion valve open',
  'heavyLoad by 2: dirty coil, overcharge or fan: high head, high or normal suction',
  'heavyLoad by 2: high head and high back pressure',
  'openBox by 2: high head and high back pressure',
  'nothingWrong by 0.5: normal',
];

function leads(each: PublishedCase, priors = PRIORS): boolean {
  const family = each.named.map(familyOf);
  const [first] = orderFor(each, priors);
  return first !== undefined && [...each.named, ...family.flat()].includes(first);
}

describe('the published cases', () => {
  it('rank the fault that the source names first, unless other sources contradict it', () => {
    const missed = ALL.filter((each) => placeOf(each) !== 1);
    expect(missed.filter(({ disputed }) => disputed === undefined).map(titled)).toEqual([]);
  });

  it('are at least as many as promised, and their rates are told', () => {
    const places = ALL.map((each) => placeOf(each));
    const first = places.filter((place) => place === 1).length;
    const topThree = places.filter((place) => place >= 1 && place <= 3).length;
    console.log(
      [
        `published cases of faults: ${ALL.length}`,
        `  named fault first      ${first}  (${percent(first)} %)`,
        `  within the first three ${topThree}  (${percent(topThree)} %)`,
        ...ALL.filter((each) => placeOf(each) !== 1).map(
          (each) => `  place ${placeOf(each)}: ${titled(each)} (${each.disputed ?? ''})`,
        ),
      ].join('\n'),
    );
    expect(ALL.length).toBeGreaterThanOrEqual(30);
    expect(first / ALL.length).toBeGreaterThan(0.85);
    expect(topThree / ALL.length).toBeGreaterThan(0.9);
  });

  it('keep their first place when any prior is halved or doubled, but for those listed', () => {
    const led = ALL.map((each) => leads(each));
    const changed = CAUSE_IDS.flatMap((cause) =>
      [0.5, 2].flatMap((by) => {
        const priors = { ...PRIORS, [cause]: PRIORS[cause] * by };
        return ALL.filter((each, index) => led[index] !== leads(each, priors)).map(
          (each) => `${cause} by ${by}: ${each.title}`,
        );
      }),
    );
    expect(changed).toEqual(SENSITIVE);
  });

  it('are answered so to a technician who reads them out', () => {
    for (const { visit, named } of VISIT_CASES) {
      const verdict = answer({ ask: 'causes' }, visit, { lastAnswer: null });
      expect(verdict).toMatchObject({ kind: 'known', answer: 'causes' });
      if (verdict.kind === 'known' && verdict.answer === 'causes')
        expect(named).toContain(verdict.causes[0]?.cause);
    }
  });

  it('each carry where they were read', () => {
    for (const { source } of ALL) expect(source.length).toBeGreaterThan(10);
  });
});

const titled = ({ title, source }: PublishedCase): string => `${title}, ${source}`;
const percent = (count: number): string => ((100 * count) / ALL.length).toFixed(0);
