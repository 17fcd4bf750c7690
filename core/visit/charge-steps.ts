import type { Fact, Finding, Work } from '../language/utterance.ts';
import type { PartId } from '../terms/names.ts';
import { coilFault } from '../terms/solenoid-coils.ts';
import { factsTold } from './facts-told.ts';
import { VALVES } from './left-open.ts';
import { ONE_BREATH_MS } from './one-breath.ts';
import type { Entry, VisitState } from './state.ts';
import type { ReadingEntry } from './views.ts';

/** What bears on how much refrigerant is in the unit, in the order that it was told. */
export type ChargeStep =
  /** Behind what the charge may stand, shut in: a valve, or the pump-down that sent it there. */
  | { readonly kind: 'shut' | 'opened'; readonly what: PartId | 'pumpDown' }
  /** Pressure in it, or the compressor at work: whatever was recovered before was not all of it. */
  | { readonly kind: 'holdsSome' }
  | { readonly kind: 'foundEmpty' | 'allRecovered' | 'allEvacuated' | 'vacuum' }
  | { readonly kind: 'added' | 'recovered' | 'lost'; readonly entry: ReadingEntry };

/** What was taken back is no longer among the entries. */
export function chargeSteps(state: VisitState): readonly ChargeStep[] {
  const told = new Map<string, readonly ChargeStep[]>([
    ...state.readings.map((entry) => [entry.id, readStep(entry, state)] as const),
    ...[...state.work, ...state.preparations].map((entry) => [entry.id, workSteps(entry)] as const),
    ...factsTold(state).map(({ id, fact }) => [id, toldSteps(fact)] as const),
    ...state.findings.map(({ id, finding }) => [id, foundSteps(finding)] as const),
  ]);
  const steps = state.history.flatMap(({ id, at }) =>
    (told.get(id) ?? []).map((step) => ({ step, at })),
  );
  return steps.reduce(inOrder, []).map(({ step }) => step);
}

interface Timed {
  readonly step: ChargeStep;
  readonly at: number;
}

/** Work is kept behind the readings of its sentence: "evacuated it and weighed in twenty two" came in that order. */
function inOrder(earlier: readonly Timed[], next: Timed): readonly Timed[] {
  if (next.step.kind !== 'allEvacuated') return [...earlier, next];
  const isOfIt = ({ step, at }: Timed): boolean =>
    step.kind === 'added' && Math.abs(next.at - at) < ONE_BREATH_MS;
  const from = earlier.findIndex(isOfIt);
  return from < 0 ? [...earlier, next] : [...earlier.slice(0, from), next, ...earlier.slice(from)];
}

const MOVES: Partial<Record<ReadingEntry['reading']['quantity'], 'added' | 'recovered' | 'lost'>> =
  {
    refrigerantAdded: 'added',
    refrigerantRecovered: 'recovered',
    refrigerantLost: 'lost',
  };

function readStep(entry: ReadingEntry, state: VisitState): readonly ChargeStep[] {
  const { quantity, value } = entry.reading;
  if (entry.reported === true) return [];
  if (quantity === 'vacuum') return [{ kind: 'vacuum' }];
  const kind = MOVES[quantity];
  if (kind !== undefined) return value === 0 ? [] : [{ kind, entry }];
  if (quantity !== 'headPressure' && quantity !== 'suctionPressure') return [];
  if (value !== undefined && value > 0) return [{ kind: 'holdsSome' }];
  return isOtherSideFlat(entry, state) ? [{ kind: 'foundEmpty' }] : [];
}

/** Nothing on either gauge, in one breath: what a pump-down leaves is nothing on one. */
function isOtherSideFlat(entry: ReadingEntry, { readings }: VisitState): boolean {
  if (entry.reading.quantity !== 'suctionPressure' || entry.reading.value !== 0) return false;
  return readings.some(
    ({ reading: { quantity, value }, at }) =>
      quantity === 'headPressure' && value === 0 && Math.abs(at - entry.at) < ONE_BREATH_MS,
  );
}

/** "There is nothing in it" is seen, and proves what both gauges at nothing do. */
const toldSteps = (fact: Fact): readonly ChargeStep[] =>
  fact.fact === 'cause' && fact.empty === true ? [{ kind: 'foundEmpty' }] : [];

/** "Evacuated the system" is all of it; "evacuated it" may be what was opened. */
const ALL_OF_IT = /\b(?:system|unit|charge|refrigerant|gas|everything|circuit|all|whole)\b/i;

function workSteps({
  work: { did, part, words },
}: Entry<{ readonly work: Work }>): readonly ChargeStep[] {
  if (did === 'pumpDown') return [{ kind: 'shut', what: 'pumpDown' }];
  const isAll = part === null && ALL_OF_IT.test(words);
  if (did === 'recover') return isAll ? [{ kind: 'allRecovered' }] : [];
  if (did === 'evacuate') return [{ kind: isAll ? 'allEvacuated' : 'vacuum' }];
  if (part === null || !HOLDS_IT_BACK.has(part)) return [];
  if (did === 'isolate' || did === 'disable') return [{ kind: 'shut', what: part }];
  return did === 'open' || did === 'restore' ? [{ kind: 'opened', what: part }] : [];
}

const HOLDS_IT_BACK: ReadonlySet<PartId> = new Set<PartId>([...VALVES, 'liquidLineSolenoid']);

function foundSteps(finding: Finding): readonly ChargeStep[] {
  const { part, state } = finding;
  if (part === 'compressor' && state === 'running') return [{ kind: 'holdsSome' }];
  if (!HOLDS_IT_BACK.has(part)) return [];
  if (state === 'closed') return [{ kind: 'shut', what: part }];
  return state === 'open' && coilFault(finding) === null ? [{ kind: 'opened', what: part }] : [];
}
