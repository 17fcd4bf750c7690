import type { EquipmentId, PartId } from '../terms/names.ts';
import type { Context } from './context.ts';

export const FANS: readonly PartId[] = [
  'condenserFan',
  'condenserFanMotor',
  'evaporatorFan',
  'evaporatorFanMotor',
];

/** Machines with one fan only: their evaporator freezes water, or stands somewhere else. */
const CONDENSER_FAN_ONLY: readonly (EquipmentId | null)[] = ['iceMachine', 'remoteCondensingUnit'];

/** An unqualified "fan" is the one last spoken of, where one was, or the only one that there is. */
export function settledFan(part: PartId, { lastPart, equipment }: Context): PartId {
  if (part !== 'fan') return part;
  if (lastPart !== null && FANS.includes(lastPart)) return lastPart;
  return CONDENSER_FAN_ONLY.includes(equipment) ? 'condenserFan' : part;
}
