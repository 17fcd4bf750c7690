import type { Data, Tags } from '../../grammar/nodes.ts';
import { QUANTITIES, type QuantityId } from '../../terms/quantities.ts';
import type { PlaceId } from '../../terms/names.ts';
import type { Dimension } from '../../units/dimensions.ts';
import { SHOWN_UNITS, thermalSystem, type UnitHabit } from '../../units/shown-unit.ts';
import { type UnitId, UNITS } from '../../units/units.ts';
import type { Frame } from '../rule.ts';
import { numberIn, tagsIn } from '../slots.ts';
import type { Reading, UnitFrom } from '../utterance.ts';
import { LOOSE_UNITS, type SpokenUnit } from '../vocabulary/unit-names.ts';

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

/**
 * Slot by slot: tags come in hundreds of shapes, and asking each for eight slots that it may lack was the slowest part
 * of a reading.
 */
export function amountIn(tags: Tags): Amounted {
  const said = new SaidAmount();
  for (const slot in tags) said.take(slot, tags[slot]);
  return said.amount();
}

class SaidAmount {
  private number: number | null = null;
  private over = 0;
  private pounds: number | null = null;
  private ounces: number | null = null;
  private kilos: number | null = null;
  private grams: number | null = null;
  private low: number | null = null;
  private high: number | null = null;
  private unit: SpokenUnit | null = null;
  /** "Twelve ohms, no, sorry, that's OL": the unit is not said twice. */
  private unitBefore: SpokenUnit | null = null;
  private negative = false;
  private hedged = false;
  private overlimit = false;

  take(slot: string, data: Data | undefined): void {
    if (slot === 'number') this.number = numberIn(data);
    else if (slot === 'unit') this.unit = spokenUnit(data);
    else if (slot === 'over') this.over = numberIn(data) ?? 0;
    else if (slot === 'negative') this.negative = data === true;
    else if (slot === 'hedged') this.hedged = data === true;
    else if (slot === 'overlimit') this.overlimit = data === true;
    else if (slot === 'low') this.low = numberWithin(data);
    else if (slot === 'high') this.high = numberWithin(data);
    else if (slot === 'pounds') this.pounds = numberWithin(data);
    else if (slot === 'ounces') this.ounces = numberWithin(data);
    else if (slot === 'kilos') this.kilos = numberWithin(data);
    else if (slot === 'grams') this.grams = numberWithin(data);
    else if (slot === 'wrong') this.unitBefore = spokenUnit(tagsIn(data)?.['unit']);
  }

  amount(): Amounted {
    const { low, high, hedged, overlimit } = this;
    const grams = joinedWeight(this.kilos, this.grams, 1000);
    const ounces = joinedWeight(this.pounds, this.ounces, 16);
    return {
      value: grams ?? ounces ?? this.signed(),
      low,
      high,
      unit: grams !== null ? 'g' : ounces !== null ? 'oz' : (this.unit ?? this.unitBefore),
      hedged,
      overlimit,
    };
  }

  private signed(): number | null {
    if (this.number === null) return null;
    return (this.number + this.over) * (this.negative ? -1 : 1);
  }
}

/** "One kilo two hundred" is 1,200 g. */
const joinedWeight = (large: number | null, small: number | null, each: number): number | null =>
  large === null || small === null ? null : large * each + small;

const numberWithin = (data: Data | undefined): number | null => numberIn(tagsIn(data)?.['number']);

/** The unit a bare number has, where no habit decides; `null`: it has none of its own and must be said. */
const WHATEVER_THE_HABIT: Record<Exclude<Dimension, HabitualDimension>, UnitId | null> = {
  absolutePressure: 'micron',
  voltage: 'V',
  current: 'A',
  resistance: 'ohm',
  capacitance: 'uF',
  power: 'W',
  apparentPower: 'VA',
  mass: null,
  duration: 'min',
  frequency: 'Hz',
  volume: null,
  concentration: 'gPerM3',
  carbonDioxideEquivalent: 'tCO2e',
  ratio: null,
};
type HabitualDimension = 'gaugePressure' | 'temperature' | 'temperatureDifference' | 'length';

function habitualUnit(dimension: Dimension, habit: UnitHabit): UnitId | null {
  switch (dimension) {
    case 'gaugePressure':
    case 'temperature':
    case 'temperatureDifference':
      return SHOWN_UNITS[habit][dimension];
    case 'length':
      return thermalSystem(habit) === 'us' ? 'ft' : 'm';
    default:
      return WHATEVER_THE_HABIT[dimension];
  }
}

/** Where the habit of the dimension is another: nobody counts a leak's days in minutes. */
const OWN_UNIT: Partial<Record<QuantityId, UnitId>> = {
  insulationResistance: 'Mohm',
  sinceLastCharge: 'day',
};

/** Units that only a deep vacuum is told in. */
export const isVacuumUnit = (unit: SpokenUnit | null): boolean =>
  unit === 'micron' || unit === 'mbar' || unit === 'Pa';

/** What a unit word is, said of a value of this kind; `null` when it cannot be said of it. */
export function unitFor(said: SpokenUnit, dimension: Dimension, units: UnitHabit): UnitId | null {
  if (said === 'degrees') return isThermal(dimension) ? habitualUnit(dimension, units) : null;
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
  units: UnitHabit,
): Measured | null {
  const kind = kindOf(quantity, amount, units);
  if (kind === null) return null;
  const value = { quantity: kind.quantity, unit: kind.unit, unitFrom: kind.unitFrom };
  return marked(value, amount);
}

/** Where a reading was said, and of what place. */
export interface Where {
  readonly place: PlaceId | null;
  readonly frame: Frame;
}

/** As `measured`, of a place, with the words that say it. */
export function readingOf(
  quantity: QuantityId,
  amount: Amounted,
  { place, frame }: Where,
): Reading | null {
  const kind = kindOf(quantity, amount, frame.context.units);
  if (kind === null) return null;
  const { unit, unitFrom } = kind;
  const words = frame.wordsOf(frame.span);
  return marked({ quantity: kind.quantity, unit, unitFrom, place, words }, amount);
}

/**
 * A reading of which more is said. Assigned to it, as a literal with a spread and more behind it makes a shape of its
 * own each time, and all that looks at it later is slow.
 */
export const withMore = <More extends object>(found: Reading, more: More): Reading & More =>
  Object.assign({ ...found }, more);

interface Kind {
  readonly quantity: QuantityId;
  readonly unit: UnitId | null;
  readonly unitFrom: UnitFrom;
}

function kindOf(quantity: QuantityId, amount: Amounted, units: UnitHabit): Kind | null {
  // "between a hundred and nine and three quarters" cut at the wrong "and" runs backwards.
  if (amount.low !== null && amount.high !== null && amount.low > amount.high) return null;
  // "Power on, common to run is OL"
  if (amount.overlimit && quantity === 'power') return null;
  const { dimension } = QUANTITIES[quantity];
  if (amount.unit === null) return kindByHabit(quantity, amount, units);
  const unit = unitFor(amount.unit, dimension, units);
  if (unit !== null) {
    return { quantity, unit, unitFrom: amount.unit === 'degrees' ? 'implied' : 'said' };
  }
  const otherwise = SAID_OTHERWISE[quantity];
  return otherwise === undefined ? null : kindOf(otherwise, amount, units);
}

function kindByHabit(quantity: QuantityId, { value }: Amounted, units: UnitHabit): Kind {
  const unit = OWN_UNIT[quantity] ?? habitualUnit(QUANTITIES[quantity].dimension, units);
  if (unit === null) return { quantity, unit, unitFrom: 'unknown' };
  // Below zero without a unit is inches of vacuum or a slip of the tongue: it is asked.
  const isAsked = unit === 'psi' && value !== null && value < 0;
  return { quantity, unit, unitFrom: isAsked ? 'unknown' : 'implied' };
}

type Writable<Fields> = { -readonly [Field in keyof Fields]: Fields[Field] };
type Marks = Writable<Pick<Reading, 'value' | 'low' | 'high' | 'hedged' | 'overlimit'>>;

/** Field by field into the new object: spreading parts of many shapes took most of the time of a reading. */
function marked<Fresh extends Marks & { readonly unit: UnitId | null }>(
  fresh: Fresh,
  amount: Amounted,
): Fresh {
  if (amount.value !== null) fresh.value = signedIn(fresh.unit, amount.value);
  if (amount.low !== null) fresh.low = signedIn(fresh.unit, amount.low);
  if (amount.high !== null) fresh.high = signedIn(fresh.unit, amount.high);
  if (amount.hedged) fresh.hedged = true;
  if (amount.overlimit) fresh.overlimit = true;
  return fresh;
}

/** Inches of vacuum count downwards. */
const signedIn = (unit: UnitId | null, value: number): number =>
  unit === 'inHg' ? 0 - Math.abs(value) : value;
