import { expect, it } from 'vitest';
import { listCalculations } from '../../core/calculations/catalogue.ts';
import { REFRIGERANTS } from '../../core/terms/refrigerants.ts';
import { ALL_CHECKS } from './all-checks.ts';
import { isValueCheck } from './check-row.ts';
import { FEW_PAIRS, WITHOUT, countOf, coverageReport, pairsOf } from './coverage.ts';

it('leaves no calculation of the catalogue without a check, or says why', () => {
  const checked = new Set(ALL_CHECKS.flatMap((row) => (isValueCheck(row) ? [] : [row.name])));
  const without = listCalculations().filter(({ name }) => !checked.has(name));
  expect(without.map(({ name }) => name)).toEqual(Object.keys(WITHOUT));
});

it('names every check after an entry of the catalogue', () => {
  const names = new Set(listCalculations().map(({ name }) => name));
  const rows = ALL_CHECKS.flatMap((row) => (isValueCheck(row) ? [] : [row.name]));
  expect(rows.filter((name) => !names.has(name))).toEqual([]);
});

it('has 250 and more, of them 100 and more published', () => {
  expect(ALL_CHECKS.length).toBeGreaterThanOrEqual(250);
  expect(countOf('published')).toBeGreaterThanOrEqual(100);
});

it('has three printed saturation pairs of each refrigerant, or says what there is', () => {
  const few = REFRIGERANTS.filter((id) => pairsOf(id, 'published') < 3);
  expect(few.toSorted()).toEqual(Object.keys(FEW_PAIRS).toSorted());
});

it('prints what is covered', () => {
  console.log(coverageReport());
  expect(coverageReport()).toContain('values from outside the project');
});
