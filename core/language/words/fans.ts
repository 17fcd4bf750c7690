import type { EquipmentId, PartId, PlaceId } from '../../terms/names.ts';
import type { Context } from '../context.ts';

export const FANS: readonly PartId[] = [
  'condenserFan',
  'condenserFanMotor',
  'evaporatorFan',
  'evaporatorFanMotor',
];

/** The fan that is told of, whether it or its motor is named. */
export const FAN_OF_MOTOR: Partial<Record<PartId, PartId>> = {
  condenserFan: 'condenserFan',
  condenserFanMotor: 'condenserFan',
  evaporatorFan: 'evaporatorFan',
  evaporatorFanMotor: 'evaporatorFan',
};

/** The motor of a fan, whether it or the fan is named. */
export const MOTOR_OF: Partial<Record<PartId, PartId>> = {
  condenserFan: 'condenserFanMotor',
  condenserFanMotor: 'condenserFanMotor',
  evaporatorFan: 'evaporatorFanMotor',
  evaporatorFanMotor: 'evaporatorFanMotor',
};

/** What turns, and stands still when it is dead; anything else has failed then. */
export const TURNS: readonly PartId[] = [...FANS, 'fan', 'compressor'];

/** Machines with one fan only: their evaporator freezes water, or stands somewhere else. */
const CONDENSER_FAN_ONLY: readonly (EquipmentId | null)[] = ['iceMachine', 'remoteCondensingUnit'];

/** An unqualified "fan" is that of the coil that one stands at, the one last spoken of, or the only one that there is, or that of the coil spoken of. */
export function settledFan(part: PartId, context: Context): PartId {
  const { lastPart, lastFan, onlyFan, equipment } = context;
  if (part !== 'fan') return part;
  if (context.isAtCondensingUnit) return 'condenserFan';
  if (lastPart !== null && FANS.includes(lastPart)) return lastPart;
  if (onlyFan !== null) return onlyFan;
  if (lastPart === 'condenser') return 'condenserFan';
  if (lastPart === 'evaporator') return 'evaporatorFan';
  if (lastFan !== null) return lastFan;
  return CONDENSER_FAN_ONLY.includes(equipment) ? 'condenserFan' : part;
}

/** "Replaced the fan motor and blade": beside its blade it is the motor. */
export function fanBeside(named: readonly PartId[], part: PartId, context: Context): PartId {
  const fan = settledFan(part, context);
  return part === 'fan' && named.includes('fanBlade') ? (MOTOR_OF[fan] ?? fan) : fan;
}

const PLACE_OF: Partial<Record<PartId, PlaceId>> = {
  condenserFan: 'condenserFan',
  condenserFanMotor: 'condenserFan',
  evaporatorFan: 'evaporatorFan',
  evaporatorFanMotor: 'evaporatorFan',
};

/** Where an unqualified "fan" was metered, where anything tells which one it is. */
export function fanPlace(context: Context): PlaceId | null {
  const { lastPlace, lastPart } = context;
  const last =
    FANS.find((fan) => fan === lastPart) ?? FANS.find((fan) => fan === lastPlace) ?? null;
  return PLACE_OF[settledFan('fan', { ...context, lastPart: last })] ?? null;
}
