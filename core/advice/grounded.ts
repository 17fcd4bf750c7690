import type { PlaceId } from '../terms/names.ts';
import { convert } from '../units/convert.ts';
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
  const { readings, work } = state;
  const last = readings.findLast(
    ({ reading }) => reading.place !== null && TO_GROUND.has(reading.place),
  );
  const amount = last && amountOf(last.reading);
  const megohms = amount ? convert(amount, 'Mohm') : null;
  if (!last || !amount || megohms === null || megohms.value >= LEAST_MEGOHMS) return null;
  const isReplaced = work.some(
    ({ id, work: { did, part } }) =>
      did === 'replace' && part === 'compressor' && isNewer(state, id, last.id),
  );
  const { quantity, place } = last.reading;
  if (isReplaced || place === null) return null;
  return { name: quantity, ...amount, place, from: 'read', at: last.at };
}

export const isGrounded = (state: VisitState): boolean => groundFault(state) !== null;
