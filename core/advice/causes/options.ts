import type { CauseId } from '../../terms/causes.ts';
import type { VisitState } from '../../visit/state.ts';
import type { Needs, NextCheck } from '../verdict.ts';
import { ARROWS, LEVELS } from './arrows.ts';
import { CAUSE_IDS } from './cause-ids.ts';
import { condensing } from '../measured.ts';
import { CHEAP_READ, READ_COSTS, RISKS } from './check-costs.ts';
import { CHECKS, FALSE_FIND, type Check } from './checks.ts';
import type { Gathered } from './gather.ts';
import { ANY_LEVEL, findsOrNot, type Outcomes } from './information.ts';
import { judgedSymptom } from './judged-symptoms.ts';
import { feedOf, rowsOf } from './matrix.ts';
import type { Feed } from './matrix-row.ts';
import type { SymptomId } from './symptom.ts';

type Does =
  | Omit<Extract<NextCheck, { next: 'check' }>, 'between'>
  | Omit<Extract<NextCheck, { next: 'read' }>, 'between'>;

/** Something that can be done next: what it costs in minutes of looking, and what it may show. */
export interface Option {
  readonly does: Does;
  readonly cost: number;
  readonly outcomes: Outcomes;
  /** What it shows outright where it is there. */
  readonly confirms: readonly CauseId[];
}

export function optionsFor(gathered: Gathered, state: VisitState): readonly Option[] {
  const feed = feedOf(state.unit.metering);
  return [
    ...CHECKS.filter((check) => isOpen(check, state, feed)).map(checkOption),
    ...gathered.missing.flatMap((symptom) => readOption(symptom, state, feed)),
  ];
}

function isOpen(
  { check, parts, doneBy, feed: only }: Check,
  state: VisitState,
  feed: Feed | null,
): boolean {
  if (only !== undefined && feed !== null && only !== feed) return false;
  if (check === 'lookSightGlass' && state.unit.sightGlass !== null) return false;
  if (check === 'checkInletAir' && state.readings.some(isInletAir)) return false;
  if (state.work.some(({ work }) => work.did === doneBy)) return false;
  return !state.findings.some(({ finding }) => parts.includes(finding.part));
}

const isInletAir = ({ reading }: VisitState['readings'][number]): boolean =>
  reading.quantity === 'ambientTemp';

/** What a hint is not: it finds the fault more often than not. */
const CONFIRMS = 0.6;

function checkOption({ check, minutes, risk, finds }: Check): Option {
  const chance = (cause: CauseId | null): number =>
    (cause === null ? undefined : finds[cause]) ?? FALSE_FIND;
  return {
    does: { next: 'check', check },
    cost: minutes * RISKS[risk],
    outcomes: (cause) => findsOrNot(chance(cause)),
    confirms: CAUSE_IDS.filter((cause) => (finds[cause] ?? 0) >= CONFIRMS),
  };
}

/** Amps say something only against a plate: without it they are not asked for. */
function readOption(symptom: SymptomId, state: VisitState, feed: Feed | null): readonly Option[] {
  const found = judgedSymptom(symptom, state);
  if (found.kind !== 'needs') return [];
  // Without a condensing temperature it says only that it is too hot: the gauges come first.
  if (symptom === 'dischargeLineTemp' && condensing(state).kind !== 'known') return [];
  if (symptom === 'current' && state.unit.nameplate.ratedLoadAmps === undefined) return [];
  const { minutes, risk } = CHEAP.has(found.need) ? CHEAP_READ : READ_COSTS[symptom];
  const seen = new Map(
    CAUSE_IDS.map((cause) => [cause, levelsUnder(cause, symptom, feed)] as const),
  );
  return [
    {
      does: { next: 'read', need: found.need },
      cost: minutes * RISKS[risk],
      outcomes: (cause) => (cause === null ? undefined : seen.get(cause)) ?? ANY_LEVEL,
      confirms: [],
    },
  ];
}

const CHEAP: ReadonlySet<Needs['need']> = new Set<Needs['need']>([
  'ambientTemp',
  'boxTemp',
  'setpointTemp',
  'refrigerant',
  'metering',
  'equipment',
]);

function levelsUnder(cause: CauseId, symptom: SymptomId, feed: Feed | null): readonly number[] {
  const rows = rowsOf(cause, feed);
  if (rows.length === 0) return ANY_LEVEL;
  return LEVELS.map(
    (level) => rows.reduce((sum, row) => sum + ARROWS[row.arrows[symptom]][level], 0) / rows.length,
  );
}
