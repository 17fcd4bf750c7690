/** Leak thresholds and deadlines by jurisdiction, as data: each to be verified with the authority. */
import { FLUIDS } from '../fluids/fluids.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { carbonDioxideEquivalent, ratio } from '../units/quantity-values.ts';
import type { CarbonDioxideEquivalent, Mass, Ratio } from '../units/quantity-values.ts';
import { andThen, known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula, Standing } from './formula.ts';

const GRAMS_PER_LB = 453.59237;

export const LEAK_USES = [
  'commercialRefrigeration',
  'industrialProcess',
  'comfortCooling',
] as const;
export type LeakUse = (typeof LEAK_USES)[number];

interface Statutory<Value> {
  readonly value: Value;
  readonly source: string;
  readonly standing: Standing;
  readonly read: string;
}

const READ = '2026-11';

/** US federal: over the threshold repair is due. The 35 and 15 % of before 2019 are gone. */
export const LEAK_THRESHOLDS: Record<LeakUse, Statutory<Ratio>> = {
  commercialRefrigeration: {
    value: ratio(0.2),
    source: '40 CFR 82.157 (compliancecosmos.org) and an EPA fact sheet (nepis.epa.gov P100PI79)',
    standing: 'published',
    read: READ,
  },
  industrialProcess: {
    value: ratio(0.3),
    source: '40 CFR 82.157 (compliancecosmos.org) and an EPA fact sheet (nepis.epa.gov P100PI79)',
    standing: 'published',
    read: READ,
  },
  comfortCooling: {
    value: ratio(0.1),
    source: '40 CFR 82.157 (compliancecosmos.org) and an EPA fact sheet (nepis.epa.gov P100PI79)',
    standing: 'published',
    read: READ,
  },
};

/** Days: from the addition that showed it, and from the initial verification. */
export const REPAIR_DEADLINES = {
  repair: {
    value: 30,
    source: 'hvacrschool.com, EPA’s 15-pound threshold in 2026; 40 CFR 82.157(d), 84.106(d)',
    standing: 'published',
    read: READ,
  },
  repairWithShutdown: {
    value: 120,
    source: '40 CFR 82.157(d), industrial process shutdown',
    standing: 'from memory',
    read: READ,
  },
  followUpAfterInitial: {
    value: 10,
    source: '40 CFR 82.157(e), 84.106(e), follow-up verification under normal conditions',
    standing: 'from memory',
    read: READ,
  },
  retrofitPlan: {
    value: 30,
    source: '40 CFR 82.157(h), plan after a failed repair',
    standing: 'from memory',
    read: READ,
  },
  retrofitDone: {
    value: 365,
    source: '40 CFR 82.157(h), plan carried out',
    standing: 'from memory',
    read: READ,
  },
} as const satisfies Record<string, Statutory<number>>;

/** Ozone depleters among the refrigerants known here; every other blend in the list is free of them. */
const OZONE_DEPLETING: ReadonlySet<RefrigerantId> = new Set<RefrigerantId>(['R-12', 'R-22']);
const SUBSTITUTE_FROM_GWP = 53;

export type LeakVerdict = 'overThreshold' | 'within' | 'notCovered';

export interface LeakJudged {
  readonly threshold: Ratio;
  readonly verdict: LeakVerdict;
  readonly rule: '82.157' | '84.106' | 'none';
  readonly repairDays: number | null;
  readonly source: string;
}

/** ODS from 50 lb by 82.157; HFC and substitutes of a GWP above 53 from 15 lb by 84.106, since 1 January 2026. */
function ruleFor(refrigerant: RefrigerantId, charge: Mass): LeakJudged['rule'] {
  if (OZONE_DEPLETING.has(refrigerant)) return charge >= 50 * GRAMS_PER_LB ? '82.157' : 'none';
  const counts = FLUIDS[refrigerant].gwp.value > SUBSTITUTE_FROM_GWP;
  return counts && charge >= 15 * GRAMS_PER_LB ? '84.106' : 'none';
}

/** Whether a leak rate calls for a repair in US federal law, and by when. Exactly at the threshold is not over. */
export function leakThreshold(input: {
  readonly refrigerant: RefrigerantId;
  readonly charge: Mass;
  readonly use: LeakUse;
  readonly rate: Ratio;
}): Calculated<LeakJudged> {
  const { refrigerant, charge, use, rate } = input;
  if (!(charge > 0 && rate >= 0)) return refused('notPositive');
  const { value: threshold, source } = LEAK_THRESHOLDS[use];
  const rule = ruleFor(refrigerant, charge);
  const isOver = rate > threshold + 1e-12;
  const verdict = rule === 'none' ? 'notCovered' : isOver ? 'overThreshold' : 'within';
  const repairDays = verdict === 'overThreshold' ? REPAIR_DEADLINES.repair.value : null;
  return known({ threshold, verdict, rule, repairDays, source }, 'verifyWithAuthority');
}

/** Tonnes of carbon dioxide that would warm as much: kilograms by the warming potential. */
export function equivalentOf(input: {
  readonly refrigerant: RefrigerantId;
  readonly charge: Mass;
}): Calculated<CarbonDioxideEquivalent> {
  if (!(input.charge >= 0)) return refused('notPositive');
  const { value } = FLUIDS[input.refrigerant].gwp;
  return known(carbonDioxideEquivalent((input.charge / 1e6) * value), 'verifyWithAuthority');
}

/** EU 517/2014, kept by 2024/573 (from memory), and the UK: months between checks from so many tonnes. */
export const CHECK_INTERVALS: readonly { readonly from: number; readonly months: number }[] = [
  { from: 500, months: 3 },
  { from: 50, months: 6 },
  { from: 5, months: 12 },
];
/** A hermetically sealed unit needs none below this many tonnes. */
const HERMETIC_FROM = 10;

export interface CheckInterval {
  readonly equivalent: CarbonDioxideEquivalent;
  /** Null where no interval is set. */
  readonly months: number | null;
}

/** How often the EU and the UK have a leak check made. The tonnes rule: the printed kilograms are rounded. */
export function leakCheckInterval(input: {
  readonly refrigerant: RefrigerantId;
  readonly charge: Mass;
  readonly hermetic: boolean;
  /** A fixed leak detection system doubles the interval (from memory). */
  readonly detection: boolean;
}): Calculated<CheckInterval> {
  return andThen(equivalentOf(input), (equivalent) => {
    const row = CHECK_INTERVALS.find(({ from }) => equivalent >= from);
    const exempt = row === undefined || (input.hermetic && equivalent < HERMETIC_FROM);
    const months = exempt ? null : row.months * (input.detection ? 2 : 1);
    return known({ equivalent, months });
  });
}

export const leakThresholdFormula: Formula = {
  id: 'leakThreshold',
  name: 'whether a leak rate calls for a repair, US federal',
  equation:
    'over while LR > threshold (20 % commercial refrigeration, 30 % industrial process, 10 % comfort)',
  symbols: symbols(['LR', 'leak rate by either method', '1']),
  range:
    'ozone depleters from 50 lb (40 CFR 82.157); HFC and substitutes of a GWP above 53 from 15 lb since 1 January 2026 (84.106), residential and light commercial air conditioning apart; not after a new fill, a retrofit or a seasonal variance',
  source:
    '40 CFR 82.157 as printed at compliancecosmos.org; 84.106: hvacrschool.com, the 15-pound threshold in 2026; read 2026-11: verify with the authority',
  standing: 'published',
  example: {
    inputs: {
      ...{ refrigerant: 'R-404A', charge: '100lb' },
      ...{ use: 'commercialRefrigeration', rate: '20.28%' },
    },
    gives: { value: 20, unit: 'percent' },
    within: 0.001,
    source: '40 CFR 82.157(c)(2) and 84.106: 20 % for commercial refrigeration',
    standing: 'published',
  },
};

export const carbonDioxideEquivalentFormula: Formula = {
  id: 'carbonDioxideEquivalent',
  name: 'carbon dioxide equivalent of a charge',
  equation: 'tCO₂e = m · GWP / 1000',
  symbols: symbols(
    ['m', 'charge', 'kg'],
    ['GWP', 'warming potential over 100 years, IPCC AR4', '1'],
  ),
  range: 'by the AR4 values of EU 517/2014 and 40 CFR 98; other reports of the IPCC differ',
  source:
    'gov.uk, Calculate the carbon dioxide equivalent quantity of an F gas, read 2026-11: verify with the authority',
  standing: 'published',
  example: {
    inputs: { refrigerant: 'R-404A', charge: '10kg' },
    gives: { value: 39.2, unit: 'tCO2e' },
    within: 0.05,
    source: 'gov.uk, the page’s own example: 10 kg of HFC 404A are 39.2 t',
    standing: 'published',
  },
};

export const leakCheckIntervalFormula: Formula = {
  id: 'leakCheckInterval',
  name: 'leak check interval, EU and UK',
  equation: '12 months from 5 t, 6 from 50 t, 3 from 500 t; hermetic below 10 t none',
  symbols: symbols(['t', 'tonnes of carbon dioxide equivalent', 't CO₂e']),
  range: 'fluorinated gases; fixed leak detection doubles the interval (from memory)',
  source:
    'gov.uk, Checking F gas equipment for leaks (517/2014), read 2026-11: verify with the authority',
  standing: 'published',
  example: {
    inputs: { refrigerant: 'R-404A', charge: '12.8kg' },
    gives: { value: 50.2, unit: 'tCO2e' },
    within: 0.05,
    source: '12.8 kg × 3.922 by hand: over 50 t, although the page prints 13 kg for that limit',
    standing: 'computed',
  },
};
