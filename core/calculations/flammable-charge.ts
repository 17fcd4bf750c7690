import { FLUIDS } from '../fluids/fluids.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { mass } from '../units/quantity-values.ts';
import type { Mass } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { LOWER_FLAMMABLE_LIMITS } from './exposure-limits.ts';
import { fluidCautions } from './fluid-cautions.ts';
import { symbols } from './formula.ts';
import type { Formula, Standing } from './formula.ts';

export const CHARGE_RULES = ['usListed', 'iec2019', 'before2019'] as const;
/** By US listing, by IEC 60335-2-89:2019, or by what governed before both: 150 g. */
export type ChargeRule = (typeof CHARGE_RULES)[number];
export const CABINETS = ['closed', 'open'] as const;
export type Cabinet = (typeof CABINETS)[number];

interface Cap {
  readonly grams: number;
  readonly source: string;
  readonly standing: Standing;
}

/** Doors or drawers against open fronts; each circuit. */
const US_LISTED: Record<Cabinet, Cap> = {
  closed: {
    grams: 300,
    source: 'achrnews.com/articles/166073: 300 g of R-290 in a closed appliance',
    standing: 'published',
  },
  open: {
    grams: 500,
    source: 'achrnews.com/articles/166073: 500 g of R-290 in an open appliance',
    standing: 'published',
  },
};

const BEFORE: Cap = {
  grams: 150,
  source: 'refrige.com, January 2012, the 150 g of the first US listing',
  standing: 'published',
};

/** IEC 60335-2-89:2019: thirteen times the lower flammable limit in a cubic metre for A3, 1.2 kg for A2 and A2L. */
const TIMES_LIMIT = 13;
const MILD_CAP: Cap = {
  grams: 1200,
  source: 'ior.org.uk, flammable refrigerant charge size limits increased (IEC 60335-2-89:2019)',
  standing: 'published',
};

function iecCap(refrigerant: RefrigerantId): Cap | null {
  if (FLUIDS[refrigerant].safetyGroup !== 'A3') return MILD_CAP;
  const limit = LOWER_FLAMMABLE_LIMITS[refrigerant];
  if (limit === undefined) return null;
  return {
    grams: TIMES_LIMIT * limit.gPerM3,
    source: `hydrocarbons21.com and ior.org.uk: 13 × LFL (IEC 60335-2-89:2019); LFL ${limit.source}`,
    standing: limit.standing,
  };
}

function capFor(refrigerant: RefrigerantId, rule: ChargeRule, cabinet: Cabinet): Cap | null {
  if (rule === 'iec2019') return iecCap(refrigerant);
  if (FLUIDS[refrigerant].safetyGroup !== 'A3') return null;
  if (rule === 'before2019') return BEFORE;
  return refrigerant === 'R-290' ? US_LISTED[cabinet] : null;
}

export interface FlammableCharge {
  readonly limit: Mass;
  readonly source: string;
  readonly standing: Standing;
}

/** What a circuit may have been designed for. A cap of design, never of service: the nameplate rules. */
export function flammableChargeLimit(input: {
  readonly refrigerant: RefrigerantId;
  readonly rule: ChargeRule;
  readonly cabinet: Cabinet;
}): Calculated<FlammableCharge> {
  const { refrigerant, rule, cabinet } = input;
  if (!['A2L', 'A2', 'A3'].includes(FLUIDS[refrigerant].safetyGroup)) {
    return refused('ruleDoesNotApply');
  }
  const cap = capFor(refrigerant, rule, cabinet);
  if (cap === null) return refused('noTargetKnown');
  const { grams, ...rest } = cap;
  return known(
    { limit: mass(grams), ...rest },
    ...fluidCautions(refrigerant),
    'chargeByNameplate',
    'verifyWithAuthority',
  );
}

export const flammableChargeLimitFormula: Formula = {
  id: 'flammableChargeLimit',
  name: 'charge cap of a flammable circuit',
  equation:
    'US listed R-290: 300 g closed, 500 g open; IEC: 13 · LFL · 1 m³ for A3, 1.2 kg for A2L and A2; before: 150 g',
  symbols: symbols(['LFL', 'lower flammable limit', 'g/m³']),
  range:
    'each circuit of listed commercial equipment; caps of design: older listings of 150 g stay as they are, and the nameplate is the limit in service',
  source:
    'achrnews.com/articles/166073; IEC 60335-2-89:2019 as given by ior.org.uk, read 2026-11: verify with the authority',
  standing: 'published',
  example: {
    inputs: { refrigerant: 'R-290', rule: 'usListed', cabinet: 'closed' },
    gives: { value: 300, unit: 'g' },
    within: 0.001,
    source: 'achrnews.com/articles/166073',
    standing: 'published',
  },
};
