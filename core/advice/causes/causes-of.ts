import type { CauseId, CauseStanding } from '../../terms/causes.ts';
import { CAUSES } from '../../terms/causes.ts';
import type { AnswerableId } from '../../terms/quantities.ts';
import type { VisitState } from '../../visit/state.ts';
import { GROUND_SOURCE, groundFault } from '../grounded.ts';
import { currentReading, meteringOf } from '../current.ts';
import { circuitStep } from '../circuit/circuit-step.ts';
import { andThen, needing, worked, type Found } from '../found.ts';
import type { CauseRow, EvidenceRow, Input, Needs, NextCheck, Refused } from '../verdict.ts';
import { believe, isPossible, ranked, type Belief } from './belief.ts';
import { nextCautions } from './check-costs.ts';
import { outsideDefrost } from './defrost-state.ts';
import { leadingOf } from './families.ts';
import { gather, type Gathered } from './gather.ts';
import { feedOf, rowsOf } from './matrix.ts';
import { nextOf } from './next-of.ts';
import { isLeftSealed, SEALED_SOURCE } from './sealed.ts';
import { speaksAgainst, speaksFor, type Evidence } from './observation.ts';

export interface CausesFound {
  readonly causes: readonly CauseRow[];
  readonly notRead: readonly AnswerableId[];
  readonly next: NextCheck;
}

/**
 * The causes, the likeliest first, from what was read against what it should be and from what was seen. Before
 * anything can be weighed it is the first reading that is missing, or the reason why no target exists.
 */
export function causesOf(visit: VisitState): Found<CausesFound> {
  const state = outsideDefrost(visit);
  const step = circuitStep(state);
  if (step) return beforeCauses(step);
  const gathered = gather(state);
  if (gathered.evidence.length === 0) {
    const grounded = groundFault(state);
    if (grounded) return byOhms(grounded);
    return isLeftSealed(state) ? lookedAt(gathered, state) : firstLack(gathered, state);
  }
  const belief = beliefOf(gathered, state);
  const order = ranked(belief);
  const all = [...gathered.evidence, ...gathered.around];
  const leading = leadingOf(belief);
  const standingOf = (cause: CauseId, share: number): CauseStanding => {
    if (leading.includes(cause)) return 'leading';
    return isPossible(share) ? 'possible' : 'unlikely';
  };
  const causes = order.map(([cause, share]) => causeRow(cause, standingOf(cause, share), all));
  const next = nextOf(gathered, belief, { state });
  const value = { causes, notRead: unread(gathered), next };
  return worked(value, {
    inputs: inputsOf(all),
    sources: sourcesOf(order, state),
    cautions: nextCautions(next),
  });
}

/** A compressor that gets too little voltage shows nothing of its charge. */
const beforeCauses = (step: Found<NextCheck>): Found<CausesFound> =>
  andThen(step, (next) => worked({ causes: [], notRead: [], next }));

/** No gauge goes on for a start: what can be seen and felt comes first. */
function lookedAt(gathered: Gathered, state: VisitState): Found<CausesFound> {
  const next = nextOf(gathered, beliefOf(gathered, state), { state });
  return andThen(meteringOf(state), () =>
    worked({ causes: [], notRead: [], next }, { sources: [SEALED_SOURCE] }),
  );
}

/** Ohms found it: the pressures of a compressor that must not start are not asked for. */
const byOhms = (reading: Input): Found<CausesFound> =>
  worked(
    { causes: [], notRead: [], next: { next: 'step', step: 'keepOff' } },
    { inputs: [reading], sources: [GROUND_SOURCE] },
  );

export function beliefOf({ evidence, around }: Gathered, state: VisitState): Belief {
  const ratios = [...evidence, ...around].map((each) => each.ratios);
  return believe(ratios, feedOf(state.unit.metering));
}

/** Amps and the discharge line are extra: their absence is not held against the answer. */
function unread({ missing }: Gathered): readonly AnswerableId[] {
  return missing.filter((symptom) => symptom !== 'current' && symptom !== 'dischargeLineTemp');
}

/** What speaks for it and against it: what was seen, then what is off, then what is right, the strongest first. */
function causeRow(cause: CauseId, standing: CauseStanding, all: readonly Evidence[]): CauseRow {
  const ratio = (each: Evidence): number => each.ratios.get(cause) ?? 1;
  const weight = (each: Evidence): number => Math.abs(Math.log(ratio(each)));
  const told = all.toSorted(
    (a, b) => tellingOf(a.shown) - tellingOf(b.shown) || weight(b) - weight(a),
  );
  return {
    cause,
    standing,
    for: rowsOnce(told.filter((each) => speaksFor(each.ratios, cause))),
    against: rowsOnce(told.filter((each) => speaksAgainst(each.ratios, cause))),
  };
}

/** What counts by itself and together with something else is told once. */
const rowsOnce = (told: readonly Evidence[]): readonly EvidenceRow[] => [
  ...new Map(told.map(({ shown }) => [JSON.stringify(shown), shown])).values(),
];

function tellingOf(row: EvidenceRow): number {
  if (row.kind === 'finding' || row.kind === 'sightGlass') return 0;
  return row.kind === 'deviation' && row.direction === 'on' ? 2 : 1;
}

function inputsOf(all: readonly Evidence[]): Evidence['inputs'] {
  const inputs = all.flatMap((each) => each.inputs);
  return inputs.filter(
    ({ name, value }, index) =>
      inputs.findIndex((other) => other.name === name && other.value === value) === index,
  );
}

/** Where the rows of the first three come from, and what the weights are. */
function sourcesOf(
  order: readonly (readonly [CauseId, number])[],
  state: VisitState,
): readonly string[] {
  const feed = feedOf(state.unit.metering);
  const rows = order.slice(0, 3).flatMap(([cause]) => rowsOf(cause, feed));
  const each = rows.map(({ cause, source }) => `${CAUSES[cause]}: ${source}`);
  return [...new Set(each), 'how often each is found: from memory'];
}

/** Before any pressure, head: the most faults show in it. Then whatever that needs to be judged. */
function firstLack({ lacks }: Gathered, state: VisitState): Needs | Refused {
  const hasPressure = (['headPressure', 'suctionPressure', 'condensingTemp'] as const).some(
    (quantity) => currentReading(state, quantity) !== null,
  );
  if (lacks === null || lacks.kind === 'known') return needing('headPressure');
  if (lacks.kind === 'refused') return lacks;
  return hasPressure ? lacks : needing('headPressure');
}
