import type { Work } from '../language/utterance.ts';
import type { PartId, WorkKindId } from '../terms/names.ts';
import { isSetting, type QuantityId } from '../terms/quantities.ts';
import type { EventId } from './events.ts';
import { isPreparation } from './preparations.ts';
import type { VisitState } from './state.ts';

/** Something after which the unit runs otherwise than it did. */
export interface Change {
  readonly id: EventId;
  readonly at: number;
  readonly of: 'work' | 'charge' | 'setting' | 'restart';
  readonly part: PartId | null;
  /** Refrigerant moved or a valve turned: two of them at once, and nobody can tell which did what. */
  readonly isTuning: boolean;
}

const CHANGES_NOTHING: ReadonlySet<WorkKindId> = new Set<WorkKindId>(['leakCheck', 'pressureTest']);
const CHARGE: ReadonlySet<QuantityId> = new Set<QuantityId>([
  'refrigerantAdded',
  'refrigerantRecovered',
]);

/** Getting at the unit and looking for a leak change nothing. */
export function changesTheUnit(work: Work): boolean {
  return !CHANGES_NOTHING.has(work.did) && !isPreparation(work);
}

/** Work, charge moved, settings set anew, and what ran again after it had stood: in the order they happened. */
export function changes(state: VisitState): readonly Change[] {
  const all = [...workOf(state), ...chargeOf(state), ...settingsOf(state), ...restartsOf(state)];
  const place = new Map(state.history.map(({ id }, index) => [id, index]));
  return all.toSorted((a, b) => (place.get(a.id) ?? 0) - (place.get(b.id) ?? 0));
}

export function lastChange(state: VisitState): Change | null {
  return changes(state).at(-1) ?? null;
}

const TUNED: ReadonlySet<PartId> = new Set<PartId>([
  'expansionValve',
  'evaporatorPressureRegulator',
  'headPressureValve',
]);
const isTuned = ({ did, part }: Work): boolean =>
  did === 'adjust' && part !== null && TUNED.has(part);

function workOf({ work }: VisitState): readonly Change[] {
  return work
    .filter((entry) => changesTheUnit(entry.work))
    .map(({ id, at, work }) => ({ id, at, of: 'work', part: work.part, isTuning: isTuned(work) }));
}

function chargeOf({ readings }: VisitState): readonly Change[] {
  return readings
    .filter(({ reading }) => CHARGE.has(reading.quantity))
    .map(({ id, at, reading: { value } }) => ({
      id,
      at,
      of: 'charge',
      part: null,
      isTuning: value !== 0,
    }));
}

/** A setting read for the first time is only read. */
function settingsOf({ readings }: VisitState): readonly Change[] {
  return readings.flatMap(({ id, at, reading: { quantity, value } }, index) => {
    if (!isSetting(quantity)) return [];
    const earlier = readings
      .slice(0, index)
      .findLast(({ reading }) => reading.quantity === quantity);
    const isSetAnew = earlier !== undefined && earlier.reading.value !== value;
    return isSetAnew ? [{ id, at, of: 'setting' as const, part: null, isTuning: false }] : [];
  });
}

function restartsOf({ findings }: VisitState): readonly Change[] {
  return findings.flatMap(({ id, at, finding: { part, state } }, index) => {
    if (part !== 'compressor' || state !== 'running') return [];
    const earlier = findings.slice(0, index).findLast(({ finding }) => finding.part === part);
    const stood = earlier?.finding.state === 'notRunning' || earlier?.finding.state === 'tripped';
    return stood ? [{ id, at, of: 'restart' as const, part, isTuning: false }] : [];
  });
}
