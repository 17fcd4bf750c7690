import { FLUIDS } from '../fluids/fluids.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { mass, ratio } from '../units/quantity-values.ts';
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

/** Water at 60 °F weighs 999.02 kg/m³ (IAPWS-95): what specific gravity is counted against. */
const WATER_DENSITY = 999.02;
const FILL_SHARE = 0.8;

export interface CylinderFill {
  readonly net: Mass;
  /** What the scale shows when full: net and tare. */
  readonly gross: Mass;
  readonly specificGravity: Ratio;
}

/** The most refrigerant a refillable cylinder may hold. Carbon dioxide is refused: critical at 88 °F. */
export function cylinderFill(input: {
  readonly refrigerant: RefrigerantId;
  readonly waterCapacity: Mass;
  readonly tare: Mass;
  readonly specificGravity?: Ratio;
}): Calculated<CylinderFill> {
  const density = FLUIDS[input.refrigerant].liquidDensity25;
  if (density === null) return refused('ruleDoesNotApply');
  if (!(input.waterCapacity > 0 && input.tare >= 0)) return refused('notPositive');
  const specificGravity = input.specificGravity ?? ratio(density / WATER_DENSITY);
  const net = mass(FILL_SHARE * input.waterCapacity * specificGravity);
  return known({ net, gross: mass(net + input.tare), specificGravity }, 'neverOverfill');
}

export const leakRateFormula: Formula = {
  id: 'leakRate',
  name: 'annualised leak rate',
  equation: 'LR = (added / charge) / (min(d, 365) / 365)',
  symbols: symbols(
    ['added', 'refrigerant added', 'g'],
    ['charge', 'full charge', 'g'],
    ['d', 'days since the last addition', 'd'],
  ),
  range: 'each addition of a covered appliance; not after a new fill or retrofit; d of at least 1',
  source:
    '40 CFR 82.152 and 84.102, annualizing method, as given in open-exam-prep.com course notes: verify with the authority',
  standing: 'published',
  example: {
    inputs: { added: '10lb', charge: '100lb', days: '180' },
    gives: { value: 20.28, unit: 'percent' },
    within: 0.005,
    source: '0.1 × 365 / 180 by hand',
    standing: 'computed',
  },
};

export const cylinderFillFormula: Formula = {
  id: 'cylinderFill',
  name: 'recovery cylinder fill',
  equation: 'gross = 0.80 · WC · SG + TW',
  symbols: symbols(
    ['WC', 'water capacity stamped on the cylinder', 'g'],
    ['SG', 'liquid’s specific gravity at 77 °F', '1'],
    ['TW', 'tare weight stamped on the cylinder', 'g'],
  ),
  range: 'refillable cylinders, refrigerants that are liquid at 77 °F; not carbon dioxide',
  source:
    'AHRI Guideline K as given in achrnews.com/articles/111771; SG from the equation of state',
  standing: 'published',
  example: {
    inputs: {
      refrigerant: 'R-22',
      waterCapacity: '1000lb',
      tare: '380lb',
      specificGravity: '1.197',
    },
    gives: { value: 1337.6, unit: 'lb' },
    within: 0.05,
    source: 'achrnews.com/articles/111771: SG 1.197, net 957.6, gross 1,337.6 lb',
    standing: 'published',
  },
};
