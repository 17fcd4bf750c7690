/** What is held against a value from outside, how such values stand, and what is not: text for the tests' output. */
import { listCalculations } from '../../core/calculations/catalogue.ts';
import type { Standing } from '../../core/calculations/formula.ts';
import { REFRIGERANTS } from '../../core/terms/refrigerants.ts';
import { ALL_CHECKS } from './all-checks.ts';
import { isValueCheck } from './check-row.ts';
import { KNOWN_DIFFERENCES } from './known-differences.ts';
import { KNOWN_PROPERTY_DIFFERENCES } from './property-checks.ts';
import { SATURATION_SOURCES } from './saturation-checks.ts';

export const STANDINGS: readonly Standing[] = [
  'published',
  'computed',
  'common practice',
  'from memory',
];

/** Entries that nothing outside can be held against, each with the reason. */
export const WITHOUT: Readonly<Record<string, string>> = {};

/** Refrigerants with fewer than three saturation pairs read in print, each with what was found instead. */
export const FEW_PAIRS: Readonly<Record<string, string>> = {
  'R-125': 'the boiling point alone; a handbook’s Antoine equation computed',
  'R-143a': 'the measured boiling point alone; a handbook’s Wagner equation computed',
  'R-152a': 'none read; a handbook’s equation computed at three temperatures',
  'R-407F': 'both points at one atmosphere, from memory',
  'R-422D': 'both points at one atmosphere, from memory',
  'R-450A': 'both points at one atmosphere, from memory',
  'R-452A': 'both points at one atmosphere, from memory',
  'R-454A': 'both points at one atmosphere, from memory',
  'R-454B': 'the maker’s boiling point; the dew point from memory',
  'R-454C': 'both points at one atmosphere, from memory',
  'R-455A': 'both points at one atmosphere, from memory',
  'R-507A': 'the boiling point by two sources; both points at one atmosphere from memory',
  'R-513A': 'both points at one atmosphere, from memory',
  'R-1234yf': 'two pairs of a safety sheet, both known to differ',
  'R-1234zeE': 'the boiling point alone',
  'R-1270': 'the boiling point alone; three handbook equations computed',
};

const column = (counts: readonly number[]): string =>
  counts.map((count) => String(count).padStart(6)).join('');

export const countOf = (standing: Standing): number =>
  ALL_CHECKS.filter((row) => row.standing === standing).length;

export function pairsOf(refrigerant: string, standing: Standing): number {
  return SATURATION_SOURCES.filter((group) => group.standing === standing)
    .flatMap(({ pairs }) => pairs)
    .filter(([id]) => id === refrigerant).length;
}

function entryLine(name: string): string {
  const own = ALL_CHECKS.filter((row) => !isValueCheck(row) && row.name === name);
  const counts = STANDINGS.map((each) => own.filter(({ standing }) => standing === each).length);
  return `  ${name.padEnd(34)}${column(counts)}`;
}

const listed = (reasons: Readonly<Record<string, string>>): string[] =>
  Object.entries(reasons).map(([name, why]) => `  ${name}: ${why}`);

const without = (): string[] => (Object.keys(WITHOUT).length === 0 ? ['  none'] : listed(WITHOUT));

export function coverageReport(): string {
  const differ = KNOWN_DIFFERENCES.length + Object.keys(KNOWN_PROPERTY_DIFFERENCES).length;
  return [
    `values from outside the project: ${ALL_CHECKS.length}, and ${differ} known to differ, with their figures`,
    ...STANDINGS.map((each) => `  ${each.padEnd(34)}${column([countOf(each)])}`),
    `the catalogue's entries by standing: ${STANDINGS.join(', ')}`,
    ...listCalculations().map(({ name }) => entryLine(name)),
    'entries without such a value:',
    ...without(),
    'saturation pairs of each refrigerant: published, computed, from memory',
    ...REFRIGERANTS.map((id) => {
      const counts = (['published', 'computed', 'from memory'] as const).map((each) =>
        pairsOf(id, each),
      );
      return `  ${id.padEnd(34)}${column(counts)}`;
    }),
    'refrigerants with fewer than three printed pairs:',
    ...listed(FEW_PAIRS),
  ].join('\n');
}
