import type { EquipmentId, FindingStateId, PartId, PlaceId } from '../terms/names.ts';
import type { QuantityId } from '../terms/quantities.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import type { Amount } from '../units/amount.ts';
import type { UnitId } from '../units/units.ts';
import type { UnitHabit } from '../units/shown-unit.ts';
import type { ToldItem } from './settle/same-but-one.ts';
import { type KnownNames, NO_NAMES } from './names/known-names.ts';

/** Something that was told before, in the words that it was told in. */
export interface ToldBefore {
  readonly words: string;
  readonly told: ToldItem;
}

export interface Holding {
  readonly quantity: 'testPressure' | 'vacuum';
  readonly value: number;
}

/** Gas that was weighed, and in which unit. */
export interface Moved {
  readonly quantity: 'refrigerantAdded' | 'refrigerantRecovered';
  readonly unit: UnitId;
}

/** The unit that a scale was read in, and whether it shows tenths of it. */
export interface ScaleShows {
  readonly unit: 'lb' | 'kg';
  readonly tenths: boolean;
}

/** What was settled before this sentence and decides how it is read. */
export interface Context {
  readonly units: UnitHabit;
  readonly refrigerant: RefrigerantId | null;
  readonly equipment: EquipmentId | null;
  /** What the unit is called of which something was told on this visit: another one's name begins another visit. */
  readonly unitTold: string | null;
  /** Its condenser stands apart from its box. */
  readonly isRemote: boolean;
  /** The quantity the product has just asked for: a bare number answers it. */
  readonly asked: QuantityId | null;
  /** What the last sentence asked about: a bare number behind it may be its value, and is asked about. */
  readonly askedAbout: QuantityId | null;
  /** What a pressure test or a vacuum that still stands was last read at: "still two fifty" is of that. */
  readonly holding: Holding | null;
  /** Where it was to be metered. */
  readonly askedPlace: PlaceId | null;
  /** The last reply sent a meter there: "nothing" answers it. */
  readonly sentNow: boolean;
  readonly lastQuantity: QuantityId | null;
  readonly lastPlace: PlaceId | null;
  readonly lastPart: PartId | null;
  /** What was named just now and nothing told of since, in its words, and the part that it is. */
  readonly turnedTo: { readonly words: string; readonly part: PartId | null } | null;
  /** The power was told off and not on again. */
  readonly powerIsOff: boolean;
  /** The fan that was found bad or worked on last: what is told of a fan behind the work is told of that. */
  readonly lastFan: PartId | null;
  /** What was found bad last and is not replaced yet: "the new one's in" is that. */
  readonly foundBad: PartId | null;
  /** What he came to replace and has not replaced yet. */
  readonly toReplace: PartId | null;
  /** The coil that was found dirty last and is not cleaned yet: "blew it out" is of that and of no fan before it. */
  readonly dirtyCoil: PartId | null;
  /** The discharge line's temperature was read, and no head: "discharge" is the line. */
  readonly readsDischargeLine: boolean;
  /** He reads the air where the condensing unit stands, and told of nothing at the box since: a "fan" is the condenser's. */
  readonly isAtCondensingUnit: boolean;
  /** The only fan that was spoken of on this visit: a "fan" is that one. */
  readonly onlyFan: PartId | null;
  /** A job is being told step by step: "next" is its next step. */
  readonly stepping: boolean;
  /** It was told just now what to check or read: "done" is said of that. */
  readonly awaitsDoing: boolean;
  /** Nothing was read or done yet, and it is not known where: the name of a business alone is that. */
  readonly wantsSite: boolean;
  /** Nothing was read, found or done yet, and no complaint told: what is wrong is why they called. */
  readonly wantsComplaint: boolean;
  /** What the plate of a unit says that is built for three phases. */
  readonly threePhaseVolts: number | null;
  /** Three numbers of which it was asked just now whether they are volts between the legs. */
  readonly openLegs: readonly number[] | null;
  /** What the plate says that the compressor draws. */
  readonly ratedLoadAmps: number | null;
  /** What the last two weights of the cylinder differ by, in ounces: below zero where it went into the tank. */
  readonly cylinderLost: number | null;
  /** What the plate says goes in, in its own unit. */
  readonly plateCharge: Amount | null;
  /** Refrigerant was weighed in pounds and ounces: "thirty six twelve" is so, too. */
  readonly weighsInOunces: boolean;
  /** What the scale was last read in, where that is no ounce: a weight without its unit is in that, too. */
  readonly scaleShows: ScaleShows | null;
  /** What was weighed in or out last: "another three ounces" is more of that. */
  readonly movedLast: Moved | null;
  /** A value of which the unit was asked: a unit alone answers. */
  readonly unitless: { readonly quantity: QuantityId; readonly value: number } | null;
  /** A number of which it was asked just now what it is of: a name alone answers. */
  readonly openNumber: number | null;
  /** Something that "yes" answers was asked just now. */
  readonly asksYes: boolean;
  /** What was said of a fan without saying which: the product has asked, and a coil's name answers. */
  readonly openFan: FindingStateId | null;
  /** The pair that doubts each other: suction cannot lie above head. */
  readonly headPressure: Amount | null;
  readonly suctionPressure: Amount | null;
  /** Sites and units of earlier visits, known by name. */
  readonly names: KnownNames;
  /** What was kept last, the newest first, `null` where it is of a kind that no few words put right. */
  readonly told: readonly (ToldBefore | null)[];
  /** Its before is marked, or something was done to it. */
  readonly workBegun: boolean;
  /** Something is being timed, or just was: "five more minutes" is about that. */
  readonly timing: boolean;
}

export const EMPTY_CONTEXT: Context = {
  units: 'us',
  refrigerant: null,
  equipment: null,
  unitTold: null,
  isRemote: false,
  asked: null,
  askedAbout: null,
  holding: null,
  askedPlace: null,
  sentNow: false,
  lastQuantity: null,
  lastPlace: null,
  lastPart: null,
  turnedTo: null,
  powerIsOff: false,
  lastFan: null,
  foundBad: null,
  toReplace: null,
  dirtyCoil: null,
  readsDischargeLine: false,
  isAtCondensingUnit: false,
  onlyFan: null,
  stepping: false,
  awaitsDoing: false,
  threePhaseVolts: null,
  openLegs: null,
  ratedLoadAmps: null,
  plateCharge: null,
  cylinderLost: null,
  weighsInOunces: false,
  scaleShows: null,
  movedLast: null,
  wantsSite: false,
  wantsComplaint: false,
  unitless: null,
  openNumber: null,
  asksYes: false,
  openFan: null,
  headPressure: null,
  suctionPressure: null,
  names: NO_NAMES,
  told: [],
  workBegun: false,
  timing: false,
};

/** What the dialogue expects next: it narrows the grammar that the recogniser is given. */
export type Expectation = 'anything' | 'number' | 'yesOrNo';
