import type { PlaceId } from '../terms/names.ts';
import { convert } from '../units/convert.ts';
import type { EventId } from '../visit/events.ts';
import type { VisitState } from '../visit/state.ts';
import { amountOf, isNewer } from '../visit/views.ts';
import type { Input } from './verdict.ts';

const TO_GROUND: ReadonlySet<PlaceId> = new Set<PlaceId>([
  'commonGround',
  'startGround',
  'runGround',
]);

const LEAST_MEGOHMS = 0.5;
export const GROUND_SOURCE =
  'scribd.com/document/744615901, a compressor maker’s bulletin AE-1294: condemned under half a megohm at 208 to 230 V';

/** The newest reading to ground, where it is under what a compressor may run with and it was not replaced since. */
export function groundFault(state: VisitState): Input | null {
  const { readings } = state;
  const last = readings.findLast(
    ({ reading }) => reading.place !== null && TO_GROUND.has(reading.place),
  );
  const amount = last && amountOf(last.reading);
  const megohms = amount ? convert(amount, 'Mohm') : null;
  if (!last || !amount || megohms === null || megohms.value >= LEAST_MEGOHMS) return null;
  const { quantity, place } = last.reading;
  if (isReplacedSince(state, last.id) || place === null) return null;
  return { name: quantity, ...amount, place, from: 'read', at: last.at };
}

/** Metered, or said outright: who says that it is grounded has metered it. */
export const isGrounded = (state: VisitState): boolean =>
  groundFault(state) !== null || isSaidGrounded(state);

function isSaidGrounded(state: VisitState): boolean {
  const said = state.findings.findLast(({ finding }) => finding.part === 'compressor');
  return said?.finding.state === 'grounded' && !isReplacedSince(state, said.id);
}

const isReplacedSince = (state: VisitState, since: EventId): boolean =>
  state.work.some(
    ({ id, work: { did, part } }) =>
      did === 'replace' && part === 'compressor' && isNewer(state, id, since),
  );
