import type { EquipmentId } from '../terms/names.ts';
import { difference, differenceF, lower, raise, temperature } from '../units/quantity-values.ts';
import type { Temperature, TemperatureDifference } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated, Caution } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';
import {
  DESIGN_SPLITS,
  DESIGN_TEMPERATURE_DIFFERENCES,
  SUBCOOLING_TARGET,
  LOW_TEMPERATURE_SUPERHEAT,
  SUPERHEAT_TARGETS,
} from './shop-defaults.ts';
import type { Band, Default, DefaultTable } from './shop-defaults.ts';

/** A difference as given for this unit, or its class, whose default is looked up. */
export type Design =
  | { readonly kind: 'given'; readonly difference: TemperatureDifference }
  | { readonly kind: 'class'; readonly equipment: EquipmentId };

/** A target with its band, and the default it was built on: null where the difference was given. */
export interface Target<Value> extends Band<Value> {
  readonly from: Default | null;
}

function lookUp(design: Design, table: DefaultTable): Calculated<Target<TemperatureDifference>> {
  if (design.kind === 'class') return byClass(table[design.equipment]);
  const value = design.difference;
  return known({ value, low: value, high: value, from: null });
}

function byClass(found: Default | null): Calculated<Target<TemperatureDifference>> {
  if (found === null) return refused('noTargetKnown');
  const { value, low, high } = found;
  return known({ value, low, high, from: found }, 'designTableOnly');
}

/**
 * What the condensing temperature should be: the air entering the condenser plus the design split, or what a
 * head pressure control holds it at where that is higher: R-404A held at 82 °F on a 20 °F day has a "split" of
 * 62 °F and nothing wrong with it.
 */
export function condensingTarget(input: {
  readonly ambient: Temperature;
  readonly design: Design;
  readonly headControl?: Temperature;
}): Calculated<Target<Temperature>> {
  const design = lookUp(input.design, DESIGN_SPLITS);
  if (design.kind === 'refused') return design;
  const floor = input.headControl ?? temperature(-Infinity);
  const above = (split: TemperatureDifference): Temperature =>
    temperature(Math.max(floor, raise(input.ambient, split)));
  const { value, low, high, from } = design.value;
  return known(
    { value: above(value), low: above(low), high: above(high), from },
    ...design.cautions,
  );
}

/** An expansion valve follows the box as it is now; a fixed restriction holds its design point only at design. */
export type Metered =
  | {
      readonly metering: 'txv' | 'eev';
      readonly box: Temperature;
      readonly setpoint?: Temperature;
    }
  | { readonly metering: 'capTube' | 'orifice'; readonly setpoint: Temperature };

/** Further above the set point than this the box is still pulling down, and the difference is larger. */
const PULL_DOWN = differenceF(10);

function meteredAir(metered: Metered): { air: Temperature; cautions: Caution[] } {
  if (!('box' in metered)) {
    return { air: metered.setpoint, cautions: ['designLoadOnly'] };
  }
  const { box, setpoint } = metered;
  const pullingDown = setpoint !== undefined && difference(box, setpoint) > PULL_DOWN;
  return { air: box, cautions: pullingDown ? ['pullDown'] : [] };
}

/** What the evaporating temperature should be: box (valve) or set point (fixed restriction) less the difference. */
export function evaporatingTarget(
  input: Metered & { readonly design: Design },
): Calculated<Target<Temperature>> {
  const design = lookUp(input.design, DESIGN_TEMPERATURE_DIFFERENCES);
  if (design.kind === 'refused') return design;
  const { air, cautions } = meteredAir(input);
  const { value, low, high, from } = design.value;
  return known(
    { value: lower(air, value), low: lower(air, high), high: lower(air, low), from },
    ...design.cautions,
    ...cautions,
  );
}

/** At the evaporator outlet with an expansion valve; a fixed restriction has none: its superheat floats. */
export function superheatTarget(input: {
  readonly equipment: EquipmentId;
  readonly isFreezer?: boolean;
}): Calculated<Target<TemperatureDifference>> {
  const byKind = SUPERHEAT_TARGETS[input.equipment];
  return byClass(byKind !== null && input.isFreezer ? LOW_TEMPERATURE_SUPERHEAT : byKind);
}

/** Leaving a forced-air condenser. */
export function subcoolingTarget(): Calculated<Target<TemperatureDifference>> {
  return byClass(SUBCOOLING_TARGET);
}

export const condensingTargetFormula: Formula = {
  id: 'condensingTarget',
  name: 'condensing temperature target',
  equation: 'SCT = max(Tair + split, Tcontrol)',
  symbols: symbols(
    ['Tair', 'air entering the condenser', '°C'],
    ['split', 'condensing temperature less entering air, at design', 'K'],
    ['Tcontrol', 'condensing temperature that a head pressure control holds', '°C'],
  ),
  range: 'air-cooled condensers with a clean coil and full airflow',
  source:
    'achrnews.com/articles/91887 (split is to the air entering); default splits by class are common practice',
  standing: 'published',
  example: {
    inputs: { ambientTemp: '75F', equipment: 'reachIn' },
    gives: { value: 105, unit: 'degF' },
    within: 0.01,
    source: 'ambient 75 °F plus the customary 30 °F of a self-contained reach-in',
    standing: 'common practice',
  },
};

export const evaporatingTargetFormula: Formula = {
  id: 'evaporatingTarget',
  name: 'evaporating temperature target',
  equation: 'SST = Tbox − TD (txv, eev); SST = Tset − TD (capTube, orifice)',
  symbols: symbols(
    ['Tbox', 'air entering the evaporator now', '°C'],
    ['Tset', 'set point of the box', '°C'],
    ['TD', 'air entering the coil less evaporating temperature', 'K'],
  ),
  range:
    'valve: near the set point (during pull-down the difference is larger, and a valve with a pressure limit holds it down); fixed restriction: at design load and head only',
  source:
    'hvacrschool.com, TD on refrigeration evaporators; which box temperature: common practice',
  standing: 'published',
  example: {
    inputs: { metering: 'txv', boxTemp: '35F', temperatureDifference: '10dF' },
    gives: { value: 25, unit: 'degF' },
    within: 0.01,
    source: 'hvacexperts.neocities.org, walk-in humidity: box 35 °F, coil 25 °F, difference 10 °F',
    standing: 'published',
  },
};

export const superheatTargetFormula: Formula = {
  id: 'superheatTarget',
  name: 'superheat target',
  equation: 'looked up by equipment class',
  symbols: [],
  range: 'evaporator outlet, expansion valve, box near its design temperature',
  source: 'hvacrschool.com, TD on refrigeration evaporators; the maker’s value comes first',
  standing: 'published',
  example: {
    inputs: { equipment: 'walkInFreezer' },
    gives: { value: 5, unit: 'dF' },
    within: 0.01,
    source: 'hvacrschool.com, TD on refrigeration evaporators: low temperature about 5 °F',
    standing: 'published',
  },
};

export const subcoolingTargetFormula: Formula = {
  id: 'subcoolingTarget',
  name: 'subcooling target',
  equation: 'one default, band 6 to 10 °F',
  symbols: [],
  range: 'leaving a forced-air condenser; not at a receiver’s outlet',
  source: SUBCOOLING_TARGET.source,
  standing: 'published',
  example: {
    inputs: {},
    gives: { value: 8, unit: 'dF' },
    within: 2,
    source: 'achrnews.com/articles/115055: at least 6 to 8 °F',
    standing: 'published',
  },
};
