import type { ReadingEvent } from '../terms/reading-events.ts';
import type { CauseId } from '../terms/causes.ts';
import type { MonthId, PeriodId, WeekdayId } from '../terms/calendar.ts';
import type { JudgedId } from '../terms/judged.ts';
import type {
  CondenserId,
  CondensingUnitId,
  EquipmentId,
  FindingStateId,
  HeadControlId,
  HeaterId,
  MeteringId,
  PartId,
  PlaceId,
  SightGlassId,
  WorkKindId,
} from '../terms/names.ts';
import type { Explains } from '../terms/explained-parts.ts';
import type { GuideId, LackedId } from '../terms/guides.ts';
import type { ChargeDoubtId, ProcedureTaskId, ValveKindId } from '../terms/procedures.ts';
import type { AnswerableId, QuantityId } from '../terms/quantities.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import type { Amount } from '../units/amount.ts';
import type { UnitId } from '../units/units.ts';

/** What one sentence meant, as data. Each part keeps the words it came from. */
export interface Utterance {
  /** What was given, unchanged. */
  readonly text: string;
  readonly readings: readonly Reading[];
  readonly facts: readonly Fact[];
  readonly findings: readonly Finding[];
  readonly work: readonly Work[];
  readonly recommendations: readonly Recommendation[];
  readonly questions: readonly Question[];
  readonly commands: readonly Command[];
  readonly memos: readonly string[];
  /** What was seen or said on the job and has no name of its own, word for word: never why we were called. */
  readonly remarks: readonly string[];
  /** Numbers that no rule claimed, as digits: they are shown and asked about, never dropped. */
  readonly unclaimed: readonly string[];
  readonly doubts: readonly Doubt[];
}

/** Whether the unit was said, comes from the visit's habit or the quantity itself, or is not known. */
export type UnitFrom = 'said' | 'implied' | 'unknown';

export interface Reading {
  readonly quantity: QuantityId;
  /** As said, in the unit said. Absent for a range and for a meter over its limit. */
  readonly value?: number;
  readonly low?: number;
  readonly high?: number;
  readonly unit: UnitId | null;
  readonly unitFrom: UnitFrom;
  readonly place: PlaceId | null;
  readonly words: string;
  /** Said with "about" or "around". */
  readonly hedged?: true;
  /** The meter showed OL, over limit or infinite. */
  readonly overlimit?: true;
  readonly event?: ReadingEvent;
  readonly when?: 'arrival';
  readonly afterMinutes?: number;
  readonly gasTemp?: Amount;
  readonly refrigerant?: RefrigerantId;
}

export type Fact = { readonly words: string } & (
  | { readonly fact: 'refrigerant'; readonly value: RefrigerantId }
  | { readonly fact: 'metering'; readonly value: MeteringId }
  | { readonly fact: 'sightGlass'; readonly value: SightGlassId }
  | { readonly fact: 'condenser'; readonly value: CondenserId }
  | { readonly fact: 'condensingUnit'; readonly value: CondensingUnitId }
  | { readonly fact: 'headControl'; readonly value: HeadControlId }
  /** What the technician holds to be wrong. */
  | {
      readonly fact: 'cause';
      readonly value: CauseId;
      /** Of a charge: nothing at all is left in the system, as seen on this visit. */
      readonly empty?: true;
    }
  | { readonly fact: 'valves'; readonly value: ValveKindId }
  /** What this visit is for, where it was agreed before it. */
  | { readonly fact: 'cameTo'; readonly do: WorkKindId; readonly value: PartId }
  /** What is in it is known to be mixed, or not known at all. */
  | { readonly fact: 'chargeDoubt'; readonly value: ChargeDoubtId }
  | {
      readonly fact: 'equipment';
      readonly value: EquipmentId;
      readonly doors?: number;
      /** Whether it keeps things frozen, where the words say so and the kind itself does not. */
      readonly freezer?: boolean;
    }
  | {
      readonly fact: 'nameplate';
      readonly item: NameplateItem;
      readonly value: number;
      readonly unit: UnitId;
    }
  /** What is printed on a heater itself. */
  | {
      readonly fact: 'heaterRating';
      readonly heater: HeaterId;
      readonly value: number;
      readonly unit: 'W' | 'A';
    }
  | { readonly fact: 'unit'; readonly value: string }
  /** In minutes, as the technician counts them for the office. */
  | { readonly fact: 'timeOnSite' | 'labor' | 'travel'; readonly value: number }
  /** By the clock on the wall, "9:30". */
  | { readonly fact: 'hereSince'; readonly value: string }
  | { readonly fact: 'site'; readonly value: string }
);

export type NameplateItem =
  | 'charge'
  | 'voltage'
  /** The upper one of two that a plate names: 208-230. */
  | 'upperVoltage'
  | 'ratedLoadAmps'
  | 'lockedRotorAmps'
  | 'minimumCircuitAmps'
  | 'maximumFuse'
  | 'highSide'
  | 'lowSide';

export interface Finding {
  readonly part: PartId;
  readonly state: FindingStateId;
  /** An unqualified "fan" that nothing before it settled. */
  readonly unresolved?: true;
  readonly words: string;
}

export interface Work {
  readonly did: WorkKindId;
  readonly part: PartId | null;
  /** The very part, by the name that it is listed under. */
  readonly called?: string;
  /** Switched off with a lock on it. */
  readonly locked?: true;
  readonly words: string;
}

export interface Recommendation {
  readonly do: WorkKindId;
  readonly part: PartId | null;
  /** The very part, by the name that it is listed under. */
  readonly called?: string;
  /** Why, as it was said: "it is pitted", "to check the charge". */
  readonly reason?: string;
  readonly by?: Due;
  /** Over and over, at this distance. */
  readonly every?: TimeSpan;
  readonly words: string;
}

export interface TimeSpan {
  readonly amount: number;
  readonly unit: PeriodId;
}

/** When something is to be done, counted from the day that it was said on: at the latest, or on the very day. */
export type Due = { readonly said: 'by' | 'on' } & (
  | ({ readonly kind: 'in' } & TimeSpan)
  /** `next`: that of the week to come, which begins on a Monday. */
  | { readonly kind: 'weekday'; readonly weekday: WeekdayId; readonly next?: true }
  | { readonly kind: 'dayOfMonth'; readonly day: number }
  | { readonly kind: 'date'; readonly month: MonthId; readonly day: number }
  /** A season or the like: it has no day, and is kept as it was said. */
  | { readonly kind: 'words'; readonly words: string }
);

/** "…at ninety five outside": what is asked of a day that need not be this one. */
export interface Supposed {
  readonly quantity: 'ambientTemp';
  readonly value: number;
  readonly unit: UnitId;
}

export type Question =
  | {
      readonly ask: 'target' | 'value' | 'compare';
      readonly about: AnswerableId | null;
      /** Of a target alone. */
      readonly supposed?: Supposed;
      /** "What should those be": of each that was told in the last breath. */
      readonly each?: true;
    }
  | {
      readonly ask: 'saturation';
      readonly value: number;
      readonly unit: UnitId;
      readonly refrigerant: RefrigerantId | null;
    }
  /** What stood there before the work: of one quantity where one is named. */
  | { readonly ask: 'before'; readonly about?: AnswerableId }
  | { readonly ask: 'margin'; readonly about: AnswerableId | null }
  | { readonly ask: 'switch'; readonly about: PlaceId | null }
  | { readonly ask: 'limit'; readonly about: 'testPressure' | 'cylinderFill' | 'charge' }
  /** Whether a part, a test or a control is as it should be. */
  | { readonly ask: 'judge'; readonly about: JudgedId }
  | { readonly ask: 'safety'; readonly about: SafetyTopic }
  | {
      readonly ask: 'eta';
      readonly about: QuantityId;
      readonly value?: number;
      readonly unit?: UnitId;
    }
  /** A job told step by step, and moving among its steps. */
  | { readonly ask: 'steps'; readonly about: ProcedureTaskId }
  | { readonly ask: 'step'; readonly to: StepTo }
  | { readonly ask: 'trend'; readonly about: QuantityId | null }
  /** The last visit here; whether what was found today was found then; when a thing was last done. */
  | {
      readonly ask: 'history';
      readonly about?: 'again';
      readonly did?: WorkKindId;
      readonly part?: PartId;
    }
  /** Told whole; what a part does or where it sits, of none the one last asked about; what to check without something. */
  | { readonly ask: 'guide'; readonly about: GuideId }
  | {
      readonly ask: 'part';
      readonly about: PartId | 'nameplate' | null;
      readonly of: Explains;
    }
  | { readonly ask: 'nextWithout'; readonly about: LackedId }
  | { readonly ask: PlainQuestion };

export type StepTo = 'next' | 'back' | 'again' | 'which';

export type PlainQuestion =
  | 'causes'
  | 'nextCheck'
  | 'hottestDay'
  /** What a condenser at rest should stand at. */
  | 'standing'
  | 'beforeAfter'
  | 'readback'
  | 'note'
  | 'working'
  | 'timeLeft'
  | 'timeHere'
  | 'leftOpen'
  | 'moved'
  /** What it means that was told last; what stopped the unit. */
  | 'meaning'
  | 'whatStopped'
  /** How it all stands against what it should be; how long to wait. */
  | 'overall'
  | 'wait'
  /** What there is to come back for, and what the customer is told. */
  | 'comeBack'
  | 'tellCustomer'
  /** A figure that only the maker knows: gallons a minute, torque, a size. */
  | 'makersFigure';

export type SafetyTopic =
  | 'brazing'
  | 'opening'
  | 'charging'
  | 'venting'
  | 'resetting'
  | 'bypassing'
  | 'energising'
  | 'underVacuum'
  | 'nitrogen'
  | 'capacitor'
  | 'terminals'
  | 'cylinder'
  | 'air'
  | 'touching'
  | 'lockOut'
  | 'handling';

export type Command =
  | {
      readonly do: 'timer' | 'extendTimer';
      readonly minutes: number;
      readonly about: string | null;
    }
  | { readonly do: 'stopTimer'; readonly about: string | null }
  /** Named, and nothing told of it: the next sentence tells, and a bare number is of the quantity. */
  | {
      readonly do: 'turnTo';
      readonly part: PartId | null;
      readonly quantity: QuantityId | null;
      readonly place: PlaceId | null;
      readonly words: string;
    }
  | {
      readonly do: 'amend';
      readonly quantity: QuantityId | null;
      /** With a quantity: where it was metered. */
      readonly place?: PlaceId;
      readonly value: number;
      readonly unit?: UnitId;
      /** All of it, of which a part was kept before: the rest is what is new. */
      readonly total?: true;
    }
  | {
      readonly do: 'undo';
      readonly quantity?: QuantityId;
      readonly value?: number;
      /** What was kept before this sentence is meant, and nothing that it says itself. */
      readonly earlier?: true;
      /** Of what was kept before, how many things were kept after it. */
      readonly ago?: number;
    }
  /** Answers "fifteen, or fifty?". */
  | { readonly do: 'choose'; readonly which: 'first' | 'second' }
  /** "Use bar and Celsius": of a kind of value each. */
  | { readonly do: 'useUnits'; readonly units: readonly UnitId[] }
  | { readonly do: PlainCommand };

export type PlainCommand =
  | 'markBefore'
  | 'markAfter'
  | 'repeat'
  | 'pause'
  | 'resume'
  | 'yes'
  | 'no'
  | 'newVisit'
  | 'finish'
  | 'finishAnyway'
  | 'leaveSteps'
  /** What was said in the same breath is not meant. */
  | 'leaveOut'
  | 'help';

/** Understood, but implausible or incomplete: not recorded until it is confirmed. */
export interface Doubt extends Reading {
  readonly why: DoubtReason;
  /** With `soundsLike` and `saidTwoWays`: the other value that may have been said. */
  readonly or?: number;
}

/**
 * `soundsLike` comes from how the sentence was heard, never from its words; `saidTwoWays` from words that two values are
 * said in, and `expected` from words that tell what should be as well as put right what was said to be.
 */
export type DoubtReason =
  | 'outOfRange'
  | 'againstSibling'
  | 'noUnit'
  | 'hearsay'
  | 'soundsLike'
  | 'saidTwoWays'
  | 'expected';
