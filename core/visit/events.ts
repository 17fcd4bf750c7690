import type {
  Doubt,
  Fact,
  Finding,
  Question,
  Reading,
  Recommendation,
  Work,
} from '../language/utterance.ts';
import type { PartId, PlaceId, PowerPart } from '../terms/names.ts';
import type { ProcedureId } from '../terms/procedures.ts';
import type { QuantityId } from '../terms/quantities.ts';
import type { UnitHabit } from '../units/shown-unit.ts';

/**
 * What happened on a visit, past tense, append-only. A body never changes its meaning: a new meaning is a
 * new version beside the old one. Undo and amendment are events like any other.
 */
export type EventBody =
  | { readonly type: 'visitOpened'; readonly v: 1; readonly settings: VisitSettings }
  | { readonly type: 'settingsChanged'; readonly v: 1; readonly settings: VisitSettings }
  | { readonly type: 'readingTaken'; readonly v: 1; readonly reading: Reading }
  | { readonly type: 'factStated'; readonly v: 1; readonly fact: Fact }
  | { readonly type: 'findingReported'; readonly v: 1; readonly finding: Finding }
  | { readonly type: 'workDone'; readonly v: 1; readonly work: Work }
  | { readonly type: 'recommendationMade'; readonly v: 1; readonly recommendation: Recommendation }
  | {
      readonly type: 'memoTaken';
      readonly v: 1;
      readonly memo: string;
      /** Seen or said on the job: no complaint. */
      readonly remark?: true;
    }
  | { readonly type: 'doubtRaised'; readonly v: 1; readonly doubt: Doubt }
  | {
      readonly type: 'doubtSettled';
      readonly v: 1;
      readonly target: EventId;
      readonly kept: boolean;
    }
  | {
      readonly type: 'numberLeftOver';
      readonly v: 1;
      readonly digits: string;
      readonly words: string;
    }
  | { readonly type: 'leftOverDropped'; readonly v: 1; readonly target: EventId }
  | { readonly type: 'entryTakenBack'; readonly v: 1; readonly target: EventId }
  | {
      readonly type: 'readingAmended';
      readonly v: 1;
      readonly target: EventId;
      readonly reading: Reading;
    }
  | { readonly type: 'questionAsked'; readonly v: 1; readonly question: Question }
  | {
      readonly type: 'readingWanted';
      readonly v: 1;
      readonly quantity: QuantityId;
      /** Where the leads go for it. */
      readonly place?: PlaceId;
    }
  /** Named, and nothing told of it yet: the next sentence is about it. */
  | ({ readonly type: 'turnedTo'; readonly v: 1 } & TurnedTo)
  | {
      readonly type: 'timerStarted';
      readonly v: 1;
      readonly minutes: number;
      /** What it is for, as it was said. */
      readonly about: string | null;
    }
  | {
      readonly type: 'timerExtended';
      readonly v: 1;
      readonly target: EventId;
      readonly minutes: number;
    }
  | { readonly type: 'timerStopped'; readonly v: 1; readonly target: EventId }
  /** Its time was up, and that was said. */
  | { readonly type: 'timerRang'; readonly v: 1; readonly target: EventId }
  | { readonly type: 'beforeMarked'; readonly v: 1 }
  | { readonly type: 'afterMarked'; readonly v: 1 }
  | { readonly type: 'stepsBegun'; readonly v: 1; readonly procedure: ProcedureId }
  /** Counted from 1. */
  | { readonly type: 'stepReached'; readonly v: 1; readonly step: number }
  | { readonly type: 'stepsLeft'; readonly v: 1 }
  /** Told off and told running since: asked whether they are back, and told that they are not. */
  | {
      readonly type: 'putBackAsked' | 'putBackDenied';
      readonly v: 1;
      readonly parts: readonly PowerPart[];
    }
  /** Asked to finish, it told what was still open instead. */
  | { readonly type: 'finishHeld'; readonly v: 1 }
  | { readonly type: 'visitFinished'; readonly v: 1 }
  /** The note's passages as a model worded them at the finish. */
  | {
      readonly type: 'noteWorded';
      readonly v: 1;
      readonly passages: readonly WordedPassage[];
    };

export interface WordedPassage {
  readonly reader: 'customer' | 'office';
  readonly kind: string;
  readonly text: string;
}

export interface TurnedTo {
  readonly part: PartId | null;
  readonly quantity: QuantityId | null;
  readonly place: PlaceId | null;
  readonly words: string;
}

/** A ULID: sorts by the moment it was made, unique without asking anyone. */
export type EventId = string;

export interface Envelope {
  readonly id: EventId;
  /** The device that wrote it, and its place in that device's log: from 1, without gaps. */
  readonly device: string;
  readonly seq: number;
  readonly visit: string;
  /** Milliseconds since 1970, by the device's clock. */
  readonly at: number;
  /** Minutes that the device's own clock was ahead of UTC: which day it was there. */
  readonly utcOffset?: number;
}

export type VisitEvent = Envelope & EventBody;

export interface VisitSettings {
  readonly units: UnitHabit;
  /** Feet or metres above the sea, turned to metres. */
  readonly altitudeM: number;
  /** What a barometer beside the gauge reads, in kPa: where there is one it comes before the altitude. */
  readonly barometerKpa?: number;
}

export const DEFAULT_SETTINGS: VisitSettings = { units: 'us', altitudeM: 0 };
