import { expect, it } from 'vitest';
import { listCalculations } from '../../core/calculations/catalogue.ts';
import type { Standing } from '../../core/calculations/formula.ts';
import { ALL_CHECKS } from './all-checks.ts';
import { isValueCheck } from './check-row.ts';
import { PUBLISHED_SATURATION } from './published-saturation.ts';

const STANDINGS: readonly Standing[] = ['published', 'computed', 'common practice', 'from memory'];

/** Entries that nothing outside can be held against, each with the reason. */
const WITHOUT: Readonly<Record<string, string>> = {};

const countOf = (standing: Standing): number =>
  ALL_CHECKS.filter((row) => row.standing === standing).length;

/** The catalogue's entries, each with how many of its checks stand how. */
function report(): string {
  const rows = ALL_CHECKS.filter((row) => !isValueCheck(row));
  const entries = listCalculations().map(({ name }) => {
    const own = rows.filter((row) => !isValueCheck(row) && row.name === name);
    const counts = STANDINGS.map((each) => own.filter(({ standing }) => standing === each).length);
    return `  ${name.padEnd(32)}${counts.map((count) => String(count).padStart(4)).join('')}`;
  });
  const without = Object.entries(WITHOUT).map(([name, why]) => `  ${name}: ${why}`);
  return [
    `checks from outside: ${ALL_CHECKS.length}`,
    ...STANDINGS.map((each) => `  ${each.padEnd(32)}${String(countOf(each)).padStart(4)}`),
    `entries: ${STANDINGS.join(', ')}`,
    ...entries,
    ...(without.length === 0 ? ['entries without a check: none'] : ['without:', ...without]),
  ].join('\n');
}

it('leaves no calculation of the catalogue without a check, or says why', () => {
  const checked = new Set(ALL_CHECKS.flatMap((row) => (isValueCheck(row) ? [] : [row.name])));
  const without = listCalculations().filter(({ name }) => !checked.has(name));
  expect(without.map(({ name }) => name)).toEqual(Object.keys(WITHOUT));
  console.log(report());
});

it('has as many as were promised, published ones counted apart', () => {
  expect(ALL_CHECKS.length).toBeGreaterThanOrEqual(100);
  expect(countOf('published')).toBeGreaterThanOrEqual(60);
});

const FIRST_FIVE = ['R-134a', 'R-404A', 'R-448A', 'R-449A', 'R-290'] as const;

it.each(FIRST_FIVE)('has a printed saturation pair of %s, not only a remembered one', (id) => {
  const published = PUBLISHED_SATURATION.filter(({ standing }) => standing === 'published');
  expect(published.flatMap(({ pairs }) => pairs).some(([each]) => each === id)).toBe(true);
});
