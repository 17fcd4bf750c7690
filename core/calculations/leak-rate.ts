import { ratio } from '../units/quantity-values.ts';
import type { Duration, Mass, Ratio } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

const MINUTES_A_DAY = 1440;
const DAYS_A_YEAR = 365;

/** The share of the full charge lost in a year, from one addition and the days since the one before. */
export function leakRate(input: {
  readonly added: Mass;
  readonly charge: Mass;
  readonly since: Duration;
}): Calculated<Ratio> {
  const days = input.since / MINUTES_A_DAY;
  if (!(input.charge > 0 && input.added >= 0)) return refused('notPositive');
  // Two additions for one leak count as one: on the same day there is no rate, not an infinite one.
  if (days < 1) return refused('ruleDoesNotApply');
  const year = Math.min(days, DAYS_A_YEAR) / DAYS_A_YEAR;
  return known(ratio(input.added / input.charge / year), 'verifyWithAuthority');
}

export interface Addition {
  readonly daysAgo: number;
  readonly added: Mass;
}

/** The share of the full charge added over the last 365 days, or since the last repair that was verified. */
export function rollingLeakRate(input: {
  readonly additions: readonly Addition[];
  readonly charge: Mass;
  readonly verifiedDaysAgo?: number;
}): Calculated<Ratio> {
  const { additions, charge, verifiedDaysAgo = DAYS_A_YEAR } = input;
  if (!(charge > 0) || additions.some(({ added, daysAgo }) => !(added >= 0 && daysAgo >= 0))) {
    return refused('notPositive');
  }
  const window = Math.min(DAYS_A_YEAR, verifiedDaysAgo);
  const counted = additions.filter(({ daysAgo }) => daysAgo <= window);
  const total = counted.reduce((sum, { added }) => sum + added, 0);
  return known(ratio(total / charge), 'verifyWithAuthority');
}

const READ = 'as given in open-exam-prep.com course notes, read 2026-11: verify with the authority';

export const leakRateFormula: Formula = {
  id: 'leakRate',
  name: 'annualised leak rate',
  equation: 'LR = (added / charge) / (min(d, 365) / 365)',
  symbols: symbols(
    ['added', 'refrigerant added', 'g'],
    ['charge', 'full charge', 'g'],
    ['d', 'days since the last addition', 'd'],
  ),
  range:
    'each addition of a covered appliance; not after a new fill or retrofit; d of at least 1; one method for a whole facility',
  source: `40 CFR 82.152 and 84.102, annualizing method, ${READ}`,
  standing: 'published',
  example: {
    inputs: { added: '10lb', charge: '100lb', days: '180' },
    gives: { value: 20.28, unit: 'percent' },
    within: 0.005,
    source: '0.1 × 365 / 180 by hand',
    standing: 'computed',
  },
};

export const rollingLeakRateFormula: Formula = {
  id: 'rollingLeakRate',
  name: 'rolling average leak rate',
  equation: 'LR = Σ added over the last min(365, v) days / charge',
  symbols: symbols(
    ['added', 'each addition', 'g'],
    ['v', 'days since the last successful follow-up verification', 'd'],
    ['charge', 'full charge', 'g'],
  ),
  range:
    'one method for a whole facility; that a verification starts the count anew is from memory',
  source: `40 CFR 82.152 and 84.102, rolling average method, ${READ}`,
  standing: 'published',
  example: {
    inputs: { additions: '200day:12lb,10day:9lb', charge: '100lb' },
    gives: { value: 21, unit: 'percent' },
    within: 0.001,
    source: '12 and 9 lb of 100 lb by hand',
    standing: 'computed',
  },
};
