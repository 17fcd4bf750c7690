import type { CauseId } from '../terms/causes.ts';
import type {
  Doubt,
  Finding,
  NameplateItem,
  Reading,
  Recommendation,
  Work,
} from '../language/utterance.ts';
import type {
  CondenserId,
  CondensingUnitId,
  EquipmentId,
  HeadControlId,
  HeaterId,
  MeteringId,
  PartId,
  PlaceId,
  SightGlassId,
} from '../terms/names.ts';
import type { ChargeDoubtId, ProcedureId, ValveKindId } from '../terms/procedures.ts';
import type { QuantityId } from '../terms/quantities.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import type { TimedWorkId } from '../terms/timed-work.ts';
import type { Amount } from '../units/amount.ts';
import type { CivilDate } from '../units/civil-date.ts';
import type { EventId, TurnedTo, VisitEvent, VisitSettings, WordedPassage } from './events.ts';

/** Something kept, with the event that keeps it and the moment it was said. */
export type Entry<Of> = Of & { readonly id: EventId; readonly at: number };

/** Where in the visit a thing was said: decides the column of the sheet it stands in. */
export type Phase = 'before' | 'work' | 'after';

/** What the events so far add up to. Everything shown, answered and written is computed from this. */
export interface VisitState {
  /** Every event of the visit so far: taking something back replays what is left. */
  readonly history: readonly VisitEvent[];
  readonly visit: string | null;
  readonly openedAt: number | null;
  /** The day that it was opened on, where the device was. */
  readonly openedOn: CivilDate | null;
  readonly finishedAt: number | null;
  readonly settings: VisitSettings;
  readonly unit: UnitFacts;
  /** In the order said; taken-back ones are gone, amended ones carry their new value. */
  readonly readings: readonly Entry<{
    readonly reading: Reading;
    readonly phase: Phase;
    /** Somebody else's word that was kept as a reading: nobody measured it on this visit. */
    readonly reported?: true;
  }>[];
  readonly findings: readonly Entry<{ readonly finding: Finding }>[];
  readonly work: readonly Entry<{ readonly work: Work }>[];
  /** Getting at the unit and away from it: gauges, caps, panel, power. No work on it, so no line of a bill. */
  readonly preparations: readonly Entry<{ readonly work: Work }>[];
  readonly recommendations: readonly Entry<{
    readonly recommendation: Recommendation;
    /** The day that its "by" came to, from the day that it was said on. */
    readonly due: CivilDate | null;
  }>[];
  readonly memos: readonly Entry<{ readonly memo: string; readonly remark?: true }>[];
  /** Said but not settled: they are asked about and stand in the note as open. */
  readonly doubts: readonly Entry<{ readonly doubt: Doubt }>[];
  readonly leftOver: readonly Entry<{ readonly digits: string; readonly words: string }>[];
  /** Running and rung, in the order started; stopped ones are gone. */
  readonly timers: readonly Entry<Timer>[];
  readonly beforeMarkedAt: number | null;
  readonly afterMarkedAt: number | null;
  /** The job that is being told step by step, and the step it is at, from 1. */
  readonly steps: { readonly procedure: ProcedureId; readonly number: number } | null;
  /** Asked to finish with something still open, which it said instead. */
  readonly finishHeld: boolean;
  /** Newest last: what "take that back" takes back. */
  readonly undoable: readonly EventId[];
  /** How the note is worded, from its finish on; what no longer fits the visit is written by the templates. */
  readonly worded: readonly WordedPassage[];
  readonly lastQuantity: QuantityId | null;
  readonly lastPlace: PlaceId | null;
  readonly lastPart: PartId | null;
  /** Named just now: what is told next is about it. */
  readonly turnedTo: TurnedTo | null;
  readonly wanted: QuantityId | null;
  readonly wantedPlace: PlaceId | null;
}

export interface Timer {
  readonly about: string | null;
  readonly work: TimedWorkId | null;
  /** All that it was given, later minutes included. */
  readonly minutes: number;
  readonly endsAt: number;
  readonly rangAt: number | null;
}

export interface UnitFacts {
  readonly refrigerant: RefrigerantId | null;
  readonly metering: MeteringId | null;
  /** The class of the box: what is known of a unit by its condensing unit alone stands in `condensingUnit`. */
  readonly equipment: EquipmentId | null;
  /** A kind that may be either is known to be a freezer. */
  readonly freezer: boolean;
  readonly doors: number | null;
  /** What the technician holds to be wrong. */
  readonly cause: CauseId | null;
  readonly valves: ValveKindId | null;
  readonly chargeDoubt: ChargeDoubtId | null;
  readonly sightGlass: SightGlassId | null;
  readonly condenser: CondenserId | null;
  readonly condensingUnit: CondensingUnitId | null;
  readonly headControl: HeadControlId | null;
  readonly name: string | null;
  readonly site: string | null;
  readonly nameplate: Partial<Record<NameplateItem, Amount>>;
  /** What is printed on each, in watts or amps. */
  readonly heaters: Partial<Record<HeaterId, Amount>>;
}
