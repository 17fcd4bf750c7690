import type { DecayVerdict } from '../../calculations/vacuum-decay.ts';
import type { TestVerdict } from '../../calculations/nitrogen-test.ts';
import type { PlaceId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import type { Amount } from '../../units/amount.ts';
import type { UnitId } from '../../units/units.ts';
import type { TimerName } from '../../visit/acknowledgement.ts';

/** How far a series moved, below zero for down, and in how long. */
export interface Moved {
  readonly change: number;
  readonly minutes: number;
}

/** The readings up to the last one that lie within the band. */
export interface Held {
  readonly within: number;
  readonly minutes: number;
  readonly readings: number;
  readonly isSteady: boolean;
  /** How long it must hold to be called steady. */
  readonly wantedMinutes: number;
}

/** What a quantity is doing: where it is, where it came from, and whether it holds. */
export interface TrendAnswer {
  readonly answer: 'trend';
  readonly about: QuantityId;
  readonly place: PlaceId | null;
  readonly value: number;
  readonly unit: UnitId;
  readonly changeUnit: UnitId;
  /** Since the reading before the last. */
  readonly recent: Moved;
  /** Since the last reading before the last change. */
  readonly sinceChange: Moved | null;
  /** Null where no one says what steady is for it. */
  readonly held: Held | null;
  /** How long ago it was read. */
  readonly agoMinutes: number;
  readonly next: SettlingNext;
}

/** What settling still waits for. */
export type SettlingNext =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'takeAfter' }
  /** Not shown to hold yet. */
  | { readonly kind: 'readAgain'; readonly about: QuantityId };

/** Said unasked, at the reading that makes it so. */
export interface SettledAnswer {
  readonly answer: 'settled';
  readonly rows: readonly SettledRow[];
  readonly next: SettlingNext;
}

export interface SettledRow {
  readonly about: QuantityId;
  readonly place: PlaceId | null;
  readonly within: number;
  readonly changeUnit: UnitId;
  readonly minutes: number;
  readonly sinceChange: Moved | null;
}

/** The after was marked before the unit had settled. */
export interface TooSoonAnswer {
  readonly answer: 'tooSoon';
  /** Since the last change. */
  readonly minutes: number;
  /** What still moves; null where it is only too early to tell. */
  readonly moving: QuantityId | null;
}

/** A second change while the first had not settled: what did what can no longer be told. */
export interface SecondChangeAnswer {
  readonly answer: 'secondChange';
}

export interface EtaAnswer {
  readonly answer: 'eta';
  readonly about: QuantityId;
  readonly target: number;
  readonly unit: UnitId;
  readonly minutes: number;
  /** Either way; null where the time is the earliest it can be. */
  readonly uncertainty: number | null;
  readonly readings: number;
}

export interface TimeLeftAnswer {
  readonly answer: 'timeLeft';
  readonly timers: readonly { readonly timer: TimerName; readonly minutes: number }[];
}

export interface TimeUpAnswer {
  readonly answer: 'timeUp';
  readonly timers: readonly { readonly timer: TimerName; readonly minutes: number }[];
}

/** A vacuum with the pump valved off. */
export interface VacuumHoldAnswer {
  readonly answer: 'vacuumHold';
  /** `holdingSoFar`: low enough, and not for long enough. */
  readonly verdict: DecayVerdict | 'holdingSoFar';
  readonly from: number;
  readonly to: number;
  readonly unit: 'micron';
  readonly minutes: number;
  readonly readings: number;
}

/** A standing pressure test, with the change of temperature taken off where the gas temperature was read. */
export interface PressureTestAnswer {
  readonly answer: 'pressureTest';
  readonly verdict: TestVerdict | 'temperatureNotRead';
  readonly from: Amount;
  readonly to: Amount;
  readonly fromTemp: Amount | null;
  readonly toTemp: Amount | null;
  /** What it should have become at the new temperature; null where that is not known. */
  readonly expected: Amount | null;
  readonly minutes: number;
}

export type SettlingAnswer =
  | TrendAnswer
  | SettledAnswer
  | TooSoonAnswer
  | SecondChangeAnswer
  | EtaAnswer
  | TimeLeftAnswer
  | TimeUpAnswer
  | VacuumHoldAnswer
  | PressureTestAnswer;
