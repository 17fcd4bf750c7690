import type { PartId } from '../terms/names.ts';
import type { QuantityId } from '../terms/quantities.ts';
import type { Amount } from '../units/amount.ts';
import { convert } from '../units/convert.ts';
import type { UnitId } from '../units/units.ts';
import { type ChargeStep, chargeSteps } from './charge-steps.ts';
import type { VisitState } from './state.ts';
import { amountOf, latestAmount, type ReadingEntry } from './views.ts';

export interface ChargeBalance {
  /** What the plate says that it holds. */
  readonly nameplate: Amount | null;
  /** Recovered before it was evacuated whole: all that was left in it, in the plate's unit. */
  readonly takenOut: Amount | null;
  /** All that is in it by the scale, in the plate's unit. Null where it was never shown to be empty, or something moved without a weight. */
  readonly charged: Amount | null;
  /** Weighed in since the last vacuum, less what came out again; null where nothing was. */
  readonly addedSince: Amount | null;
  /** What that was made of. */
  readonly since: readonly ReadingEntry[];
  /** Evacuated whole, and nothing let in since. */
  readonly isEmpty: boolean;
}

/**
 * What the scale says is in the unit. A vacuum alone does not show that it was empty: a charge that was pumped down
 * stands in the receiver meanwhile, and if it counted as gone the next one here would weigh it in twice.
 */
export function chargeBalance(state: VisitState): ChargeBalance {
  const nameplate = state.unit.nameplate.charge ?? latestAmount(state, 'refrigerantCharge');
  const held = chargeSteps(state).reduce(after, UNTOUCHED);
  const unit = nameplate?.unit ?? held.added.at(-1)?.reading.unit ?? 'oz';
  if (held.vacuum === null || held.added.length === 0) {
    const isEmpty = held.vacuum === 'whole';
    return { nameplate, takenOut: null, charged: null, addedSince: null, since: [], isEmpty };
  }
  const added = sum(held.added, unit);
  const out = sum(held.out, unit);
  const addedSince = added && out && { ...added, value: added.value - out.value };
  const isKnown = held.vacuum === 'whole' && held.isWeighed;
  return {
    nameplate,
    takenOut: isKnown && held.takenBefore.length > 0 ? sum(held.takenBefore, unit) : null,
    charged: isKnown ? addedSince : null,
    addedSince,
    since: [...held.added, ...held.out],
    isEmpty: false,
  };
}

/**
 * By what share the charge that was weighed in misses the plate: above zero it is over. Less than the plate is a miss
 * only once weighing is over, as a charge goes in bottle by bottle: something else was told since, or it is finished.
 */
export function plateMissed(state: VisitState): number | null {
  const { charged, nameplate, since } = chargeBalance(state);
  if (charged === null || nameplate === null || nameplate.value <= 0) return null;
  const off = (charged.value - nameplate.value) / nameplate.value;
  return off > 0 || isWeighingOver(state, since) ? off : null;
}

function isWeighingOver({ history }: VisitState, since: readonly ReadingEntry[]): boolean {
  const last = history.findLastIndex(({ id }) => since.some((entry) => entry.id === id));
  return history.slice(last + 1).some((event) => {
    if (event.type === 'readingTaken') return RUNS.has(event.reading.quantity);
    if (event.type === 'findingReported') return event.finding.state === 'running';
    return event.type === 'afterMarked' || event.type === 'visitFinished';
  });
}

/** Read of a unit that runs on what was weighed in. */
const RUNS: ReadonlySet<QuantityId> = new Set<QuantityId>([
  ...(['headPressure', 'suctionPressure', 'superheat', 'subcooling', 'boxTemp'] as const),
  ...(['suctionLineTemp', 'liquidLineTemp', 'dischargeLineTemp'] as const),
]);

interface Held {
  /** Behind what the charge may stand, where no hose reaches it. */
  readonly shut: ReadonlySet<PartId | 'pumpDown'>;
  /** Recovered or found flat with nothing shut, and nothing let in since. */
  readonly isOut: boolean;
  /** What the last one was pulled on: all of it, or nobody knows how much. */
  readonly vacuum: 'whole' | 'part' | null;
  /** False where something came out without a weight since. */
  readonly isWeighed: boolean;
  /** Recovered up to that vacuum. */
  readonly takenBefore: readonly ReadingEntry[];
  /** Recovered since, before anything went in. */
  readonly taken: readonly ReadingEntry[];
  readonly added: readonly ReadingEntry[];
  /** Recovered or lost of what went in. */
  readonly out: readonly ReadingEntry[];
}

const UNTOUCHED: Held = {
  shut: new Set(),
  isOut: false,
  vacuum: null,
  isWeighed: true,
  takenBefore: [],
  taken: [],
  added: [],
  out: [],
};

function after(held: Held, step: ChargeStep): Held {
  switch (step.kind) {
    case 'shut':
      return { ...held, shut: new Set([...held.shut, step.what]), isOut: false };
    case 'opened':
      return { ...held, shut: withoutShut(held, step.what), isOut: false };
    case 'holdsSome':
      return { ...held, isOut: false };
    case 'foundEmpty':
      return { ...held, isOut: held.shut.size === 0 };
    case 'allRecovered':
      return { ...held, isOut: held.shut.size === 0, isWeighed: false };
    case 'allEvacuated':
      return evacuated(held, held.isOut || (held.added.length === 0 && held.shut.size === 0));
    case 'vacuum':
      return evacuated(held, held.isOut);
    case 'added':
      return { ...held, isOut: false, added: [...held.added, step.entry] };
    case 'recovered':
      return recovered(held, step.entry);
    case 'lost':
      return held.added.length === 0 ? held : { ...held, out: [...held.out, step.entry] };
  }
}

/** Nothing comes out of a vacuum: told behind it, it was recovered before. */
function recovered(held: Held, entry: ReadingEntry): Held {
  if (held.added.length > 0) {
    return { ...held, isOut: held.shut.size === 0, out: [...held.out, entry] };
  }
  if (held.vacuum === 'whole') return { ...held, takenBefore: [...held.takenBefore, entry] };
  return { ...held, isOut: held.shut.size === 0, taken: [...held.taken, entry] };
}

/** What a pump-down shut in is let out by the valve behind the receiver, whatever it was called. */
const LETS_IT_OUT: ReadonlySet<PartId | 'pumpDown'> = new Set<PartId>([
  'kingValve',
  'serviceValve',
  'liquidLineSolenoid',
]);

function withoutShut({ shut }: Held, opened: PartId | 'pumpDown'): Held['shut'] {
  return new Set(
    [...shut].filter(
      (what) => what !== opened && !(what === 'pumpDown' && LETS_IT_OUT.has(opened)),
    ),
  );
}

/** Pulled again before anything went in, it shows nothing new. */
function evacuated(held: Held, isWhole: boolean): Held {
  if (held.vacuum === 'whole' && held.added.length === 0) return held;
  return {
    ...UNTOUCHED,
    shut: held.shut,
    vacuum: isWhole ? 'whole' : 'part',
    takenBefore: (held.added.length === 0 ? held.taken : held.out).filter(
      ({ reading }) => reading.quantity === 'refrigerantRecovered',
    ),
  };
}

/** Null where something was moved without a weight. */
function sum(entries: readonly ReadingEntry[], unit: UnitId): Amount | null {
  const values = entries.flatMap(({ reading }) => {
    const amount = amountOf(reading);
    return (amount && convert(amount, unit)?.value) ?? [];
  });
  if (values.length < entries.length) return null;
  return { value: values.reduce((so, each) => so + each, 0), unit };
}
