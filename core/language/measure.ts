import type { Data, Tags } from '../grammar/nodes.ts';
import { QUANTITIES, type QuantityId } from '../terms/quantities.ts';
import type { Dimension } from '../units/dimensions.ts';
import { type UnitId, UNITS, type UnitSystem } from '../units/units.ts';
import { numberIn, tagsIn } from './slots.ts';
import type { Reading, UnitFrom } from './utterance.ts';
import { LOOSE_UNITS, type SpokenUnit } from './vocabulary/unit-names.ts';

/** What was said of a value, before any quantity gives it a unit. */
export interface Amounted {
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly unit: SpokenUnit | null;
  readonly hedged: boolean;
  readonly overlimit: boolean;
}

const SPOKEN_UNITS: ReadonlySet<unknown> = new Set([...Object.keys(UNITS), ...LOOSE_UNITS]);
const isUnit = (data: Data | undefined): data is SpokenUnit => SPOKEN_UNITS.has(data);
export const spokenUnit = (data: Data | undefined): SpokenUnit | null =>
  isUnit(data) ? data : null;

export function amountIn(tags: Tags): Amounted {
  const pounds = numberIn(tagsIn(tags['pounds'])?.['number']);
  const ounces = numberIn(tagsIn(tags['ounces'])?.['number']);
  const compound = pounds !== null && ounces !== null;
  const grams = gramsIn(tags);
  const whole = numberIn(tags['number']);
  const number = whole === null ? null : whole + (numberIn(tags['over']) ?? 0);
  const sign = tags['negative'] === true ? -1 : 1;
  return {
    value: grams ?? (compound ? pounds * 16 + ounces : number === null ? null : number * sign),
    low: numberIn(tagsIn(tags['low'])?.['number']),
    high: numberIn(tagsIn(tags['high'])?.['number']),
    unit: grams !== null ? 'g' : compound ? 'oz' : spokenUnit(tags['unit']),
    hedged: tags['hedged'] === true,
    overlimit: tags['overlimit'] === true,
  };
}

/** "One kilo two hundred" is 1,200 g. */
function gramsIn(tags: Tags): number | null {
  const kilos = numberIn(tagsIn(tags['kilos'])?.['number']);
  const grams = numberIn(tagsIn(tags['grams'])?.['number']);
  return kilos === null || grams === null ? null : kilos * 1000 + grams;
}

/** The unit a bare number has in each system; `null`: it has none of its own and must be said. */
const HABIT: Record<Dimension, Record<UnitSystem, UnitId | null>> = {
  gaugePressure: { us: 'psi', si: 'bar' },
  absolutePressure: { us: 'micron', si: 'micron' },
  temperature: { us: 'degF', si: 'degC' },
  temperatureDifference: { us: 'dF', si: 'dC' },
  voltage: { us: 'V', si: 'V' },
  current: { us: 'A', si: 'A' },
  resistance: { us: 'ohm', si: 'ohm' },
  capacitance: { us: 'uF', si: 'uF' },
  power: { us: 'W', si: 'W' },
  apparentPower: { us: 'VA', si: 'VA' },
  mass: { us: null, si: null },
  duration: { us: 'min', si: 'min' },
  frequency: { us: 'Hz', si: 'Hz' },
  length: { us: 'ft', si: 'm' },
  volume: { us: null, si: null },
  concentration: { us: 'gPerM3', si: 'gPerM3' },
  carbonDioxideEquivalent: { us: 'tCO2e', si: 'tCO2e' },
  ratio: { us: null, si: null },
};

/** Where the habit of the dimension is another: nobody counts a leak's days in minutes. */
const OWN_UNIT: Partial<Record<QuantityId, UnitId>> = {
  insulationResistance: 'Mohm',
  sinceLastCharge: 'day',
};

/** What a unit word is, said of a value of this kind; `null` when it cannot be said of it. */
export function unitFor(said: SpokenUnit, dimension: Dimension, units: UnitSystem): UnitId | null {
  if (said === 'degrees') return isThermal(dimension) ? HABIT[dimension][units] : null;
  if (said === 'pounds') {
    return dimension === 'mass' ? 'lb' : dimension === 'gaugePressure' ? 'psi' : null;
  }
  if (said === 'inches') return dimension === 'gaugePressure' ? 'inHg' : null;
  if (dimension === 'temperatureDifference' && said === 'degF') return 'dF';
  if (dimension === 'temperatureDifference' && said === 'degC') return 'dC';
  return UNITS[said].dimension === dimension ? said : null;
}

const isThermal = (dimension: Dimension): boolean =>
  dimension === 'temperature' || dimension === 'temperatureDifference';

/** A pressure said in degrees is the saturation temperature of its side, and inches are the low side's. */
const SAID_OTHERWISE: Partial<Record<QuantityId, QuantityId>> = {
  headPressure: 'condensingTemp',
  suctionPressure: 'evaporatingTemp',
  vacuum: 'suctionPressure',
};

export type Measured = Pick<
  Reading,
  'quantity' | 'value' | 'low' | 'high' | 'unit' | 'unitFrom' | 'hedged' | 'overlimit'
>;

/** The amount as a value of the quantity, or of the one its unit shows was meant; `null` when of neither. */
export function measured(
  quantity: QuantityId,
  amount: Amounted,
  units: UnitSystem,
): Measured | null {
  // "between a hundred and nine and three quarters" cut at the wrong "and" runs backwards.
  if (amount.low !== null && amount.high !== null && amount.low > amount.high) return null;
  const resolved = resolveUnit(quantity, amount, units);
  if (resolved !== null) return { quantity, ...resolved, ...marksOf(amount, resolved.unit) };
  const otherwise = SAID_OTHERWISE[quantity];
  return otherwise === undefined ? null : measured(otherwise, amount, units);
}

function resolveUnit(
  quantity: QuantityId,
  amount: Amounted,
  units: UnitSystem,
): { readonly unit: UnitId | null; readonly unitFrom: UnitFrom } | null {
  const { dimension } = QUANTITIES[quantity];
  if (amount.unit !== null) {
    const unit = unitFor(amount.unit, dimension, units);
    if (unit === null) return null;
    return { unit, unitFrom: amount.unit === 'degrees' ? 'implied' : 'said' };
  }
  const own = OWN_UNIT[quantity] ?? HABIT[dimension][units];
  if (own === null) return { unit: null, unitFrom: 'unknown' };
  // Below zero without a unit is inches of vacuum or a slip of the tongue: it is asked.
  const isAsked = own === 'psi' && amount.value !== null && amount.value < 0;
  return { unit: own, unitFrom: isAsked ? 'unknown' : 'implied' };
}

type Marks = Pick<Reading, 'value' | 'low' | 'high' | 'hedged' | 'overlimit'>;
type Writable<Fields> = { -readonly [Field in keyof Fields]: Fields[Field] };

function marksOf(amount: Amounted, unit: UnitId | null): Marks {
  const marks: Writable<Marks> = {};
  if (amount.value !== null) marks.value = signedIn(unit, amount.value);
  if (amount.low !== null) marks.low = signedIn(unit, amount.low);
  if (amount.high !== null) marks.high = signedIn(unit, amount.high);
  if (amount.hedged) marks.hedged = true;
  if (amount.overlimit) marks.overlimit = true;
  return marks;
}

/** Inches of vacuum count downwards. */
const signedIn = (unit: UnitId | null, value: number): number =>
  unit === 'inHg' ? 0 - Math.abs(value) : value;
