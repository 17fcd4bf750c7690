import type { PlaceId } from '../../terms/names.ts';
import type { Fault } from './circuit.ts';

/** Whether a switch is open, or a load gets its voltage, by what was read across it. */
export interface SwitchAnswer {
  readonly answer: 'switch';
  readonly place: PlaceId;
  readonly state: SwitchState;
  readonly across: number;
  readonly supply: number;
  readonly unit: 'V';
  /** Through it, where it was read with power off and not over the meter's limit. */
  readonly ohms?: number;
  readonly next: LeadsAt | null;
}

export type SwitchState =
  | 'open'
  /** What is behind it gets its voltage: more than its own zero says so. */
  | 'passing'
  /** Nothing across it, and an open one elsewhere would read the same. */
  | 'undetermined'
  /** A burnt contact, or a ghost on the meter. */
  | 'partial'
  | 'noSupply'
  /** By ohms, power off: no path through it, a path, or a winding's own ohms. */
  | 'noPath'
  | 'path'
  | 'ohmsRead'
  /** A load, with its voltage and without. */
  | 'fed'
  | 'notFed';

/** Where the fault still can be, and where the leads go next. */
export interface NextPlaceAnswer {
  readonly answer: 'nextPlace';
  readonly found: 'searching' | 'suspects' | 'sound' | 'contradiction';
  readonly suspects: readonly Fault[];
  /** No single fault explains the readings: two of these do, together. */
  readonly together: boolean;
  readonly next: LeadsAt | null;
}

export interface LeadsAt {
  readonly how:
    | 'across'
    | 'at'
    /** Looked at, or clamped. */
    | 'runs';
  readonly place: PlaceId;
}
