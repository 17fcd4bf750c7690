import type { Caution } from '../calculations/calculated.ts';
import type { SafetyTopic, Supposed } from '../language/utterance.ts';
import type { CauseId, CauseStanding } from '../terms/causes.ts';
import type { PlaceId, SightGlassId } from '../terms/names.ts';
import type { ProcedureId, ProcedureStepId, StepBarId } from '../terms/procedures.ts';
import type { PartSeen } from '../terms/solenoid-coils.ts';
import type { AnswerableId, QuantityId } from '../terms/quantities.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import type { Amount } from '../units/amount.ts';
import type { UnitId } from '../units/units.ts';
import type { CylinderWeights } from '../visit/cylinder-weights.ts';
import type { LeftOpen } from '../visit/left-open.ts';
import type { AccountSums } from '../visit/refrigerant-account.ts';
import type { HottestDayAnswer, LimitAnswer } from './limits-verdict.ts';
import type { JudgedAnswer } from './judged/judged-verdict.ts';
import type { NextPlaceAnswer, SwitchAnswer } from './circuit/circuit-verdict.ts';
import type { HistoryAnswer } from './history-verdict.ts';
import type { LedAnswer } from './led-verdict.ts';
import type { SettlingAnswer } from './settling/settling-verdict.ts';

/** The answer to a question, as data: no wording and no formatting. */
export type Verdict = Known | Refused | Needs;

/** What every known answer carries: a number with its unit, and where it comes from. */
export interface Working {
  /** The calculation's id in the catalogue; absent where the value was simply read. */
  readonly formula: string | null;
  /** Its equation, for the eye. */
  readonly equation?: string;
  readonly inputs: readonly Input[];
  readonly source: string | null;
  readonly cautions: readonly CautionId[];
}

export interface Input {
  readonly name:
    | AnswerableId
    | 'refrigerant'
    | 'metering'
    | 'equipment'
    | 'designSplit'
    | 'altitude'
    | 'frequency'
    | 'gasTemp'
    | 'headControl'
    | 'condenser'
    | 'waterApproach'
    | 'cutOutMargin'
    | 'nameplateCharge'
    | 'nameplateVoltage'
    | 'nameplateAmps'
    | 'nameplateHighSide'
    | 'nameplateLowSide'
    | 'barometer';
  readonly value: number | string;
  readonly unit: UnitId | null;
  /** Read by the technician, set for the visit, taken from the product's own table, or computed. */
  readonly from: 'read' | 'set' | 'assumed' | 'computed';
  /** Where the leads or the clamp were. */
  readonly place?: PlaceId;
  /** When it was read. */
  readonly at?: number;
}

export type Known = { readonly kind: 'known' } & Working &
  (
    | {
        readonly answer: 'target';
        readonly about: AnswerableId;
        readonly value: number;
        readonly unit: UnitId;
        readonly basis: TargetBasis;
        /** Anything between is as it should be. */
        readonly low?: number;
        readonly high?: number;
        /** The saturated temperature a pressure target was worked from, and how far off the reading is. */
        readonly through?: Figure;
        readonly reading?: Deviation;
        /** It is for this, and not for what was read. */
        readonly supposed?: Supposed;
      }
    | {
        readonly answer: 'value';
        readonly about: AnswerableId;
        readonly value: number;
        readonly unit: UnitId;
        readonly place: PlaceId | null;
        /** The food that was probed, as it was called. */
        readonly of?: string;
        /** When it was read; null where it was worked out. */
        readonly at: number | null;
      }
    | Comparison
    | {
        readonly answer: 'saturation';
        readonly refrigerant: RefrigerantId;
        readonly given: { readonly value: number; readonly unit: UnitId };
        readonly value: number;
        readonly unit: UnitId;
        readonly phase: 'dew' | 'bubble';
        /** The other end of the glide, for a blend that has one. */
        readonly bubble?: number;
      }
    | {
        readonly answer: 'margin';
        readonly about: 'highCutoutPressure' | 'lowCutoutPressure';
        readonly measured: number;
        readonly limit: number;
        readonly value: number;
        readonly unit: UnitId;
        readonly side: 'inside' | 'past';
        /** On the hottest day, where it was told. */
        readonly hottest?: {
          readonly head: number;
          readonly limit: number;
          readonly room: number;
          readonly side: 'inside' | 'past';
        };
      }
    | { readonly answer: 'beforeAfter'; readonly rows: readonly BeforeAfterRow[] }
    | { readonly answer: 'before'; readonly rows: readonly ReadRow[] }
    | JudgedAnswer
    | LimitAnswer
    | HottestDayAnswer
    | SwitchAnswer
    | NextPlaceAnswer
    | { readonly answer: 'readback'; readonly rows: readonly ReadRow[] }
    | {
        readonly answer: 'causes';
        /** The likeliest first. */
        readonly causes: readonly CauseRow[];
        /** What would say more, had it been read. */
        readonly notRead: readonly AnswerableId[];
        readonly next: NextCheck;
      }
    | ({ readonly answer: 'nextCheck' } & NextCheck)
    | SettlingAnswer
    | HistoryAnswer
    /** `for`: the part of it that the customer gets. */
    | { readonly answer: 'note'; readonly for?: 'customer' }
    | LedAnswer
    | {
        /** How long the visit has gone on, which is what the office bills by. */
        readonly answer: 'timeHere';
        readonly minutes: number;
        /** The minute of the day that it began in, where the device was; null where that is not known. */
        readonly since: number | null;
      }
    | {
        readonly answer: 'step';
        readonly procedure: ProcedureId;
        readonly step: ProcedureStepId;
        /** Its place, from 1, and how many there are. */
        readonly number: number;
        readonly of: number;
        /** Said before it, every time. */
        readonly caution: CautionId | null;
        readonly told: 'begun' | 'moved' | 'asked';
      }
    | { readonly answer: 'stepsDone'; readonly procedure: ProcedureId }
    | {
        readonly answer: 'leftOpen';
        readonly left: readonly LeftRow[];
        /** Doubts and numbers without a meaning that are not settled. */
        readonly questions: number;
      }
    | {
        readonly answer: 'moved';
        readonly rows: readonly MovedRow[];
        /** What the nameplate says the unit holds. */
        readonly charge: Amount | null;
        readonly cylinder: CylinderWeights;
      }
    | {
        readonly answer: 'working';
        readonly of: Known;
        /** Whole minutes since each input was read; null where it was told, assumed or worked out. */
        readonly ages?: readonly (number | null)[];
      }
  );

/** A part that is not as it belongs, and how. */
export type LeftRow = Pick<LeftOpen, 'part' | 'as'>;

/** The sums of one refrigerant; `net` is in less out and lost. */
export interface MovedRow extends AccountSums {
  readonly refrigerant: RefrigerantId | null;
  readonly unweighed: number;
}

/** One cause with what speaks for it and against it. */
export interface CauseRow {
  readonly cause: CauseId;
  readonly standing: CauseStanding;
  readonly for: readonly EvidenceRow[];
  readonly against: readonly EvidenceRow[];
}

/** Something read or seen that a cause is weighed by. */
export type EvidenceRow =
  | {
      readonly kind: 'deviation';
      readonly about: AnswerableId;
      readonly value: number;
      readonly unit: UnitId;
      readonly direction: Direction;
      /** The same deviation by its other name: a head that is over is a split that is over. */
      readonly alongside?: Figure;
    }
  | {
      readonly kind: 'reading';
      readonly about: AnswerableId;
      readonly value: number;
      readonly unit: UnitId;
    }
  | ({ readonly kind: 'finding' } & PartSeen)
  | { readonly kind: 'sightGlass'; readonly state: SightGlassId };

/** What to do next: a step of the standing order, a check, or one reading that is missing. */
export type NextCheck =
  | { readonly next: 'step'; readonly step: StepId }
  | { readonly next: 'check'; readonly check: CheckId; readonly between: readonly CauseId[] }
  | { readonly next: 'read'; readonly need: Needs['need']; readonly between: readonly CauseId[] };

/** The standing order, before any cause is chased. */
export type StepId =
  | 'keepOff'
  | 'lineOneLost'
  | 'lineTwoLost'
  | 'lineThreeLost'
  | 'readPoles'
  | 'readCoil'
  | 'makeSafe'
  | 'lookFirst'
  | 'waitOutDefrost'
  | 'mendLeak'
  | 'chargeFirst'
  | 'baselineNow'
  | 'letItSettle'
  | 'confirmAfter'
  | 'mendFound'
  | 'dealWithIt'
  | 'nothingTellsMore';

/** A look, a touch or a test that tells causes apart. */
export type CheckId =
  | 'lookCondenser'
  | 'lookCondenserFan'
  | 'lookEvaporator'
  | 'lookEvaporatorFan'
  | 'lookDoors'
  | 'lookSightGlass'
  | 'feelDrier'
  | 'checkFanControl'
  | 'checkInletAir'
  | 'searchLeaks'
  | 'checkChargeRecord'
  | 'warmBulb'
  | 'checkBulb'
  | 'defrostHeaters'
  | 'compressorTest'
  | 'standstillTest'
  | 'suctionDrop'
  | 'equaliseTime'
  | 'supplyAtStart'
  | 'iceBulb'
  | 'lookDefrost'
  | 'timeRise'
  | 'testStartGear'
  | 'coolOverload';

/** A number that has a name: what it is of. */
export interface Figure {
  readonly about: AnswerableId;
  readonly value: number;
  readonly unit: UnitId;
}

export type Direction = 'over' | 'under' | 'on';

/** How far a reading is from its target: never negative, the direction says which way. */
export interface Deviation {
  readonly measured: number;
  readonly value: number;
  readonly unit: UnitId;
  readonly direction: Direction;
}

/** Measured against what it should be: `value` is how far off, always positive, `direction` says which way. */
export interface Comparison {
  readonly answer: 'compare';
  readonly about: AnswerableId;
  readonly measured: number;
  readonly target: number;
  readonly measuredUnit: UnitId;
  readonly value: number;
  readonly unit: UnitId;
  readonly direction: Direction;
  readonly basis: TargetBasis;
  readonly low?: number;
  readonly high?: number;
  /** A pressure's distance in degrees saturated. */
  readonly alongside?: {
    readonly about: AnswerableId;
    readonly value: number;
    readonly unit: UnitId;
    readonly direction: Direction;
  };
}

export type TargetBasis =
  | 'ambientPlusSplit'
  | 'boxLessTemperatureDifference'
  | 'setpointLessTemperatureDifference'
  | 'setpoint'
  | 'table'
  /** Water-cooled: the air has no say. */
  | 'leavingWaterPlusApproach'
  /** A remote condenser by the day's temperature: the air at its coil was not read. */
  | 'outdoorPlusSplit'
  /** Held up in cold air by a valve or a slowed fan; anywhere between off and on by a cycled one. */
  | 'headControl'
  | 'fanCycling'
  /** Far above its set point: only the ends of the band hold. */
  | 'pullDown'
  | 'hottestDayHead'
  /** Where a condenser fan's control is usually set. */
  | 'usualFanPair'
  | 'coilClearOfFrost';

export interface BeforeAfterRow {
  readonly about: AnswerableId;
  readonly place: PlaceId | null;
  readonly before: number | null;
  readonly after: number | null;
  readonly unit: UnitId;
  readonly change: number | null;
  readonly changeUnit: UnitId;
}

export interface ReadRow {
  readonly about: QuantityId;
  readonly place: PlaceId | null;
  /** The food that was probed, as it was called. */
  readonly of?: string;
  readonly value: number;
  readonly unit: UnitId;
}

/** The answer cannot be given, and why; the numbers its sentence needs come along. */
export type Refused = {
  readonly kind: 'refused';
  readonly about: AnswerableId | null;
  /** What must be heard whatever the answer is. */
  readonly cautions?: readonly CautionId[];
} & Refusal;

export type Refusal =
  | {
      readonly reason: 'aboveCritical' | 'belowTriple' | 'belowRange' | 'aboveRange';
      readonly refrigerant: RefrigerantId;
      readonly limit: number;
      readonly unit: UnitId;
    }
  | { readonly reason: 'targetChangesWithTheCycle' }
  | { readonly reason: 'unknownRefrigerant'; readonly refrigerant: RefrigerantId }
  | { readonly reason: 'noTargetKnown' }
  | { readonly reason: 'suctionAboveHead' }
  | {
      readonly reason: 'belowZeroSuperheat' | 'belowZeroSubcooling' | 'impossibleVacuum';
      readonly value: number;
      readonly unit: UnitId;
    }
  | { readonly reason: 'nothingRecorded' }
  | { readonly reason: 'nothingAnsweredYet' }
  | { readonly reason: 'whichQuantity' }
  /** A capillary tube or orifice holds no superheat. */
  | { readonly reason: 'superheatFloats' }
  | { readonly reason: 'pullingDown' }
  | { readonly reason: 'endsThePumpDown' }
  | { readonly reason: 'headFollowsTheWater' }
  /** Readings that cannot all be true of one thing. */
  | { readonly reason: 'readingsDoNotFit' }
  /** Between the hottest day's head and the lowest rating there is no room for a cut-out. */
  | {
      readonly reason: 'noSettingServes';
      readonly lowest: number;
      readonly limit: number;
      readonly unit: UnitId;
    }
  | { readonly reason: 'noFillRule'; readonly refrigerant: RefrigerantId }
  /** Only a condenser at rest shows air in it. */
  | { readonly reason: 'notAtRest' }
  | { readonly reason: 'noTimer' }
  /** So many readings of it so far, of so many that the answer takes. */
  | { readonly reason: 'seriesTooShort'; readonly readings: number; readonly wanted: number }
  /** A time can be given for a temperature alone. */
  | { readonly reason: 'noTimeFor' }
  | { readonly reason: 'notGettingNearer'; readonly target: number; readonly unit: UnitId }
  | {
      readonly reason: 'alreadyThere';
      readonly target: number;
      readonly unit: UnitId;
      readonly value: number;
    }
  | { readonly reason: 'noCircuitKnown' }
  | { readonly reason: 'notASwitch' }
  | { readonly reason: 'noStepsRunning' }
  /** There are no words for that part. */
  | { readonly reason: 'partNotExplained' }
  | {
      readonly reason: 'stepsBarred';
      readonly procedure: ProcedureId;
      readonly bar: StepBarId;
      readonly source: string;
    }
  | { readonly reason: 'deferredToTheCode'; readonly topic: SafetyTopic }
  /** Earlier visits are found by the unit's name, or by the site's. */
  | { readonly reason: 'unitNotNamed' }
  /** Units of this name are kept at more than one site. */
  | { readonly reason: 'whichSite' }
  | { readonly reason: 'noEarlierVisit' };

/** One reading or fact is missing: the most useful one first. */
export interface Needs {
  readonly kind: 'needs';
  readonly about: AnswerableId | null;
  readonly need:
    | QuantityId
    | 'refrigerant'
    | 'metering'
    | 'equipment'
    | 'headControl'
    | 'before'
    | 'after'
    | 'valves'
    | 'supplyVoltage'
    /** The same of a compressor that stands still, before anything of the refrigeration. */
    | 'powerFirst'
    | 'voltageAcross'
    | 'whichSwitch'
    | 'nameplateCharge'
    | 'nameplateVoltage'
    | 'nameplateAmps'
    | 'nameplateHighSide'
    | 'nameplateLowSide'
    /** The pressure at which a control was seen to open. */
    | 'highTripPressure'
    | 'lowTripPressure'
    /** The temperature of the nitrogen, said with its pressure. */
    | 'gasTemp';
  /** Where the leads go for it. */
  readonly place?: PlaceId;
  /** Steps wait for it, and it was asked before. */
  readonly again?: true;
  /** What must be heard before anyone reaches for it. */
  readonly cautions?: readonly CautionId[];
}

/** Those of the calculations, and those that go with a state of the visit or with a question. */
export type CautionId =
  | Caution
  | 'wetOrWrongRefrigerant'
  | 'liquidAboveBubble'
  | 'brazing'
  | 'openingTheSystem'
  | 'noVenting'
  | 'repeatedReset'
  | 'noBypass'
  | 'workBeforeBaseline'
  | 'coldHeadStarves'
  | 'resetAgain'
  | 'liquidBurns'
  | 'liquidToCompressor'
  | 'lockOut'
  | 'frontSeatedDischarge'
  | 'airDisplaced'
  | 'compressorTerminals'
  | 'openUnderVacuum'
  | 'heatedCylinder'
  | 'neverOxygen'
  | 'bypassedSafety'
  | 'chargeOffPlate';
