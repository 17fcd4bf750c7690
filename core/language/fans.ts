import type { PartId } from '../terms/names.ts';
import type { Context } from './context.ts';

export const FANS: readonly PartId[] = [
  'condenserFan',
  'condenserFanMotor',
  'evaporatorFan',
  'evaporatorFanMotor',
];

/** An unqualified "fan" is the one last spoken of, where one was. */
export function settledFan(part: PartId, { lastPart }: Context): PartId {
  return part === 'fan' && lastPart !== null && FANS.includes(lastPart) ? lastPart : part;
}
