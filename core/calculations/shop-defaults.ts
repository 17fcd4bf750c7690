/** What a shop may set otherwise: each default with its band, where it comes from and how far to lean on it. */
import type { EquipmentId } from '../terms/names.ts';
import { differenceF } from '../units/quantity-values.ts';
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
}

/** Null where no steady target exists or the class says too little. */
export type DefaultTable = Record<EquipmentId, Default | null>;

interface Basis {
  readonly source: string;
  readonly standing: Standing;
}

const band = (
  [low, value, high]: readonly [number, number, number],
  { source, standing }: Basis,
): Default => ({
  value: differenceF(value),
  low: differenceF(low),
  high: differenceF(high),
  source,
  standing,
});

const CUSTOM = 'common practice';

const SELF_CONTAINED: Basis = {
  source: 'self-contained air-cooled condenser, about 30 °F',
  standing: CUSTOM,
};
const REMOTE_MEDIUM: Basis = {
  source: 'remote medium-temperature air-cooled condenser, 15 to 25 °F',
  standing: CUSTOM,
};
const REMOTE_LOW: Basis = {
  source: 'remote low-temperature air-cooled condenser, 10 to 15 °F',
  standing: CUSTOM,
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
};
const WALK_IN_COIL: Basis = { source: 'walk-in unit cooler, about 10 °F', standing: CUSTOM };

/** Air entering the evaporator less evaporating temperature, at design load. */
export const DESIGN_TEMPERATURE_DIFFERENCES: DefaultTable = {
  reachIn: band([15, 20, 25], SMALL_COIL),
  prepTable: band([15, 20, 25], SMALL_COIL),
  displayCase: band([15, 20, 25], SMALL_COIL),
  walkInCooler: band([8, 10, 12], WALK_IN_COIL),
  walkInFreezer: band([8, 10, 12], WALK_IN_COIL),
  remoteCondensingUnit: null,
  iceMachine: null,
};

const MEDIUM_SUPERHEAT: Basis = {
  source:
    'hvacrschool.com, TD on refrigeration evaporators: medium temperature about 10 °F, band 3 to 12; another text gives forced-air coils 3 to 5 °F: the maker’s value comes first',
  standing: 'published',
};
const LOW_SUPERHEAT: Basis = {
  source:
    'hvacrschool.com, TD on refrigeration evaporators: low temperature about 5 °F; the maker’s value comes first',
  standing: 'published',
};

/** At the evaporator outlet, near the box’s design temperature, with an expansion valve. */
export const SUPERHEAT_TARGETS: DefaultTable = {
  reachIn: band([6, 10, 12], MEDIUM_SUPERHEAT),
  prepTable: band([6, 10, 12], MEDIUM_SUPERHEAT),
  displayCase: band([6, 10, 12], MEDIUM_SUPERHEAT),
  walkInCooler: band([6, 10, 12], MEDIUM_SUPERHEAT),
  walkInFreezer: band([3, 5, 8], LOW_SUPERHEAT),
  remoteCondensingUnit: null,
  iceMachine: null,
};

const CONDENSER_SUBCOOLING: Basis = {
  source:
    'achrnews.com/articles/115055: at least 6 to 8 °F leaving a forced-air condenser; 6 to 10 °F typical (common practice)',
  standing: 'published',
};

/** Leaving the condenser; at a receiver’s outlet it says nothing about the charge. */
export const SUBCOOLING_TARGET: Default = band([6, 8, 10], CONDENSER_SUBCOOLING);
