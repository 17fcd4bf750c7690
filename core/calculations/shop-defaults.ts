/** What a shop may set otherwise: each default with its band, where it comes from and how far to lean on it. */
import type { EquipmentId } from '../terms/names.ts';
import { differenceF, temperatureDifference } from '../units/quantity-values.ts';
import type { TemperatureDifference } from '../units/quantity-values.ts';
import type { Standing } from './formula.ts';

export interface Band<Value> {
  readonly value: Value;
  readonly low: Value;
  readonly high: Value;
}

export interface Default extends Band<TemperatureDifference> {
  readonly source: string;
  readonly standing: Standing;
  /** The band's own footing: a published value often has none, and the one here is then this product's choice. */
  readonly bandSource: string;
  /** What another source says instead, where two conflict. */
  readonly otherSource?: string;
}

/** Null where no steady target exists or the class says too little. */
export type DefaultTable = Record<EquipmentId, Default | null>;

type Basis = Omit<Default, keyof Band<unknown>>;

const band = ([low, value, high]: readonly [number, number, number], basis: Basis): Default => ({
  value: differenceF(value),
  low: differenceF(low),
  high: differenceF(high),
  ...basis,
});

const CUSTOM = 'common practice';
const OWN_BAND = 'band chosen here, no source';

const SELF_CONTAINED: Basis = {
  source: 'self-contained air-cooled condenser, about 30 °F',
  standing: CUSTOM,
  bandSource: 'band 25 to 35 °F: common practice',
};
const REMOTE_MEDIUM: Basis = {
  source: 'remote medium-temperature air-cooled condenser, about 20 °F',
  standing: CUSTOM,
  bandSource: 'band 15 to 25 °F: common practice',
  otherSource:
    'air-cooled condensers 20 to 35 °F over ambient (air-conditioning-and-refrigeration-guide.com); newer condensing units about 15 °F, older ones up to 40 (plumbingandhvac.ca, The great outdoors); California Energy Code 120.6(b), large food stores: at most 15 °F, from memory',
};
const REMOTE_LOW: Basis = {
  source: 'remote low-temperature air-cooled condenser, between 10 and 15 °F',
  standing: CUSTOM,
  bandSource: 'band 10 to 15 °F: common practice',
  otherSource: 'California Energy Code 120.6(b), large food stores: at most 10 °F, from memory',
};

/** Condensing temperature less the air entering the condenser, at design. */
export const DESIGN_SPLITS: DefaultTable = {
  reachIn: band([25, 30, 35], SELF_CONTAINED),
  prepTable: band([25, 30, 35], SELF_CONTAINED),
  displayCase: band([25, 30, 35], SELF_CONTAINED),
  walkInCooler: band([15, 20, 25], REMOTE_MEDIUM),
  walkInFreezer: band([10, 12.5, 15], REMOTE_LOW),
  remoteCondensingUnit: band([15, 20, 25], REMOTE_MEDIUM),
  iceMachine: null,
};

const SMALL_COIL: Basis = {
  source: 'small forced-air coil in a reach-in box, about 20 °F',
  standing: CUSTOM,
  bandSource: OWN_BAND,
};
const WALK_IN_COIL: Basis = {
  source: 'walk-in unit cooler, about 10 °F',
  standing: CUSTOM,
  bandSource: OWN_BAND,
};
const REMOTE_COIL: Basis = {
  source: 'the unit cooler that a remote condensing unit usually serves, about 10 °F',
  standing: CUSTOM,
  bandSource: OWN_BAND,
};

/** Air entering the evaporator less evaporating temperature, at design load. */
export const DESIGN_TEMPERATURE_DIFFERENCES: DefaultTable = {
  reachIn: band([15, 20, 25], SMALL_COIL),
  prepTable: band([15, 20, 25], SMALL_COIL),
  displayCase: band([15, 20, 25], SMALL_COIL),
  walkInCooler: band([8, 10, 12], WALK_IN_COIL),
  walkInFreezer: band([8, 10, 12], WALK_IN_COIL),
  remoteCondensingUnit: band([8, 10, 12], REMOTE_COIL),
  iceMachine: null,
};

const MEDIUM_SUPERHEAT: Basis = {
  source:
    'hvacrschool.com, TD on refrigeration evaporators: medium temperature about 10 °F; the maker’s value comes first',
  standing: 'published',
  bandSource: 'that page’s band is 3 to 12 °F for all; 6 to 12 chosen here',
  otherSource:
    'refrigeratordiagrams.com, Refrigerator valve settings: forced-air coils 3 to 5 °F, gravity coils 9 to 12',
};
const LOW_SUPERHEAT: Basis = {
  source:
    'hvacrschool.com, TD on refrigeration evaporators: low temperature about 5 °F; the maker’s value comes first',
  standing: 'published',
  bandSource: 'that page’s band is 3 to 12 °F for all; 3 to 8 chosen here',
};

/** Of any kind that keeps things frozen. */
export const LOW_TEMPERATURE_SUPERHEAT: Default = band([3, 5, 8], LOW_SUPERHEAT);

/** At the evaporator outlet, near the box’s design temperature, with an expansion valve. */
export const SUPERHEAT_TARGETS: DefaultTable = {
  reachIn: band([6, 10, 12], MEDIUM_SUPERHEAT),
  prepTable: band([6, 10, 12], MEDIUM_SUPERHEAT),
  displayCase: band([6, 10, 12], MEDIUM_SUPERHEAT),
  walkInCooler: band([6, 10, 12], MEDIUM_SUPERHEAT),
  walkInFreezer: LOW_TEMPERATURE_SUPERHEAT,
  // Of a coil that it says nothing about: a cooler's and a freezer's are 5 °F apart.
  remoteCondensingUnit: null,
  iceMachine: null,
};

const CONDENSER_SUBCOOLING: Basis = {
  source: 'achrnews.com/articles/115055: at least 6 to 8 °F leaving a forced-air condenser',
  standing: 'published',
  bandSource: 'band 6 to 10 °F: common practice',
};

/** Leaving the condenser; at a receiver’s outlet it says nothing about the charge. */
export const SUBCOOLING_TARGET: Default = band([6, 8, 10], CONDENSER_SUBCOOLING);

export type ProductId = 'driesQuickly' | 'about85Percent' | 'upTo80Percent' | 'insensitive';

/** Air entering the coil less evaporating temperature by what is kept: a colder coil dries the air more. */
export const PRODUCT_DIFFERENCES: Record<ProductId, TemperatureDifference> = {
  driesQuickly: temperatureDifference(4),
  about85Percent: temperatureDifference(6),
  upTo80Percent: temperatureDifference(8),
  insensitive: temperatureDifference(10),
};
