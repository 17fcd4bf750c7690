import { kept } from './kept.ts';
import type { EquipmentId, PlaceId } from '../../terms/names.ts';

/** A place that is one device of a circuit: the leads go on its two terminals. */
export type DevicePlace = Extract<
  PlaceId,
  | 'highPressureSwitch'
  | 'lowPressureSwitch'
  | 'temperatureControl'
  | 'defrostTimer'
  | 'doorSwitch'
  | 'overload'
  | 'contactor'
  | 'liquidLineSolenoid'
  | 'compressor'
  | 'condenserFan'
  | 'evaporatorFan'
>;

/** What can be at fault: a device, or what has no place of its own. "contactor" is the coil. */
export type SuspectId =
  DevicePlace | 'supply' | 'returnPath' | 'contacts' | 'legOne' | 'legTwo' | 'legThree';

/** A wire: everything joined without a device between. */
export type Point = string;

/** Where power comes from: one leg. In a single-phase circuit the other leg is the fixed reference. */
export interface Supply {
  readonly kind: 'supply';
  readonly id: SuspectId;
  readonly at: Point;
}

/** Passes power or does not. Operated by a load, it is closed only while that load runs. */
export interface Switch {
  readonly kind: 'switch';
  readonly id: SuspectId;
  readonly from: Point;
  readonly to: Point;
  readonly operatedBy?: DevicePlace;
  /** A common wire opens, but has no contact that could burn. */
  readonly isWire?: true;
}

/** Runs on the voltage of the supply. Every path from leg to leg leads through exactly one. */
export interface Load {
  readonly kind: 'load';
  readonly id: DevicePlace;
  readonly from: Point;
  readonly to: Point;
  /** A third leg that feeds it as well. */
  readonly alsoFrom?: SuspectId;
}

export type CircuitPart = Supply | Switch | Load;

export interface Circuit {
  readonly id: string;
  readonly equipment: readonly EquipmentId[];
  /** In the order in which the trade walks them. */
  readonly parts: readonly CircuitPart[];
  /** The legs whose difference is the circuit's voltage, proved first. */
  readonly across: readonly [Point, Point];
  readonly source: string;
}

/** Open: passes nothing. Burnt: a contact that drops part of the voltage. Dead: a leg without voltage. */
export type FaultMode = 'open' | 'burnt' | 'dead';

export interface Fault {
  readonly of: SuspectId;
  readonly mode: FaultMode;
}

export const keyOf = ({ of, mode }: Fault): string => `${of} ${mode}`;

/** Every single fault that a circuit may have, in its own order. */
export function faultsOf({ parts }: Circuit): readonly Fault[] {
  return parts.flatMap((part) => modesOf(part).map((mode) => ({ of: part.id, mode })));
}

function modesOf(part: CircuitPart): readonly FaultMode[] {
  if (part.kind === 'supply') return ['dead'];
  return part.kind === 'load' || part.isWire ? ['open'] : ['open', 'burnt'];
}

/** Asked for some ten thousand times while the pairs of faults are tried: sorted out once. */
export const switchesOf = kept(({ parts }: Circuit): readonly Switch[] =>
  parts.filter((part) => part.kind === 'switch'),
);
export const loadsOf = kept(({ parts }: Circuit): readonly Load[] =>
  parts.filter((part) => part.kind === 'load'),
);
export const suppliesOf = kept(({ parts }: Circuit): readonly Supply[] =>
  parts.filter((part) => part.kind === 'supply'),
);

/** Motors, which start or run on one: a contactor's coil holds no charge. */
const MOTORS: ReadonlySet<PlaceId> = new Set<PlaceId>([
  'compressor',
  'condenserFan',
  'evaporatorFan',
]);

export const hasCapacitor = (place: PlaceId): boolean => MOTORS.has(place);
