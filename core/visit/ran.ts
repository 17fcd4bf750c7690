import type { Finding, Reading } from '../language/utterance.ts';
import type { PartId, WorkKindId } from '../terms/names.ts';
import type { EventId } from './events.ts';
import type { VisitState } from './state.ts';

/** Each thing told that shows a part at work, with the parts that it shows. */
interface Ran {
  readonly id: EventId;
  readonly parts: readonly PartId[];
}

/** Told to run, or with a current through it: whatever was taken off it for a test is back on. */
export function toldRunning({ findings, readings }: VisitState): readonly Ran[] {
  return [
    ...findings
      .filter(({ finding }) => RUNNING.has(finding.state))
      .map(({ id, finding: { part } }) => ({ id, parts: asOne(part) })),
    ...readings
      .filter(({ reading, reported }) => reported === undefined && hasCurrent(reading))
      .map(({ id, reading: { place } }) => ({ id, parts: partsAt(place) })),
  ].filter(({ parts }) => parts.length > 0);
}

const RUNNING: ReadonlySet<Finding['state']> = new Set<Finding['state']>([
  'running',
  'shortCycling',
]);

function hasCurrent({ quantity, value, when }: Reading): boolean {
  return quantity === 'current' && value !== undefined && value > 0 && when !== 'arrival';
}

/** A fan that turns has its motor connected. */
const ONE_THING: readonly (readonly PartId[])[] = [
  ['compressor'],
  ['condenserFan', 'condenserFanMotor'],
  ['evaporatorFan', 'evaporatorFanMotor'],
];

/** What is one thing to whoever repairs it. */
export const asOne = (part: PartId): readonly PartId[] =>
  ONE_THING.find((all) => all.includes(part)) ?? [part];

const partsAt = (place: Reading['place']): readonly PartId[] =>
  ONE_THING.find((all) => all.some((part) => part === place)) ?? [];

/** What keeps a part from running for as long as it stands. */
export const STOPS: ReadonlySet<WorkKindId> = new Set<WorkKindId>(['disable', 'isolate']);

/** Whether a part ran after what kept it from running was done to it. */
export function ranSince(part: PartId, since: EventId, state: VisitState): boolean {
  const order = state.history.map(({ id }) => id);
  return toldRunning(state).some(
    ({ id, parts }) => parts.includes(part) && order.indexOf(id) > order.indexOf(since),
  );
}
