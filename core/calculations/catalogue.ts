import { REFRIGERANTS } from '../terms/refrigerants.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import type { Amount } from '../units/amount.ts';
import { fromBase } from '../units/convert.ts';
import { unitsWritten } from '../units/parse-amount.ts';
import type { UnitId, UnitSystem } from '../units/units.ts';
import type { CalculationRefusal, Caution } from './calculated.ts';
import { CIRCUIT_ENTRIES, SATURATION_ENTRIES } from './catalogue-circuit.ts';
import { CONTROL_ENTRIES } from './catalogue-controls.ts';
import { LOAD_ENTRIES, SUPPLY_ENTRIES } from './catalogue-electrical.ts';
import type { Answer, Entry, Findings } from './catalogue-entry.ts';
import { badInput, choiceOf, parseInputs, systemOf } from './catalogue-inputs.ts';
import { HEAD_ENTRIES } from './catalogue-heads.ts';
import { MOTOR_ENTRIES } from './catalogue-motors.ts';
import { EVACUATION_ENTRIES } from './catalogue-evacuation.ts';
import type { BadInput, InputValue, InputValues } from './catalogue-inputs.ts';
import { ALTITUDE, BAROMETER } from './catalogue-keys.ts';
import type { Key } from './catalogue-keys.ts';
import { REFRIGERANT_ENTRIES } from './catalogue-refrigerant.ts';
import { SWITCH_ENTRIES } from './catalogue-switches.ts';
import { SAFETY_ENTRIES } from './catalogue-safety.ts';
import { TARGET_ENTRIES } from './catalogue-targets.ts';
import { TEMPERATURE_ENTRIES } from './catalogue-temperature.ts';
import { chartDifference } from './chart-difference.ts';
import type { ShownChartDifference } from './chart-difference.ts';
import type { Formula } from './formula.ts';
import { likelyMixUps, type MixUp } from './likely-mix-ups.ts';

/** What depends on the air around a gauge takes it either way. */
const withBarometer = (entry: Entry): Entry =>
  entry.keys.includes(ALTITUDE) ? { ...entry, keys: [...entry.keys, BAROMETER] } : entry;

const ENTRIES: readonly Entry[] = [
  ...SATURATION_ENTRIES,
  ...CIRCUIT_ENTRIES,
  ...TARGET_ENTRIES,
  ...REFRIGERANT_ENTRIES,
  ...CONTROL_ENTRIES,
  ...HEAD_ENTRIES,
  ...SUPPLY_ENTRIES,
  ...MOTOR_ENTRIES,
  ...LOAD_ENTRIES,
  ...SWITCH_ENTRIES,
  ...EVACUATION_ENTRIES,
  ...SAFETY_ENTRIES,
  ...TEMPERATURE_ENTRIES,
].map(withBarometer);

/** The reason, and the numbers and names its sentence needs. */
export interface ShownRefusal {
  readonly reason: CalculationRefusal['reason'];
  readonly refrigerant?: RefrigerantId;
  readonly limit?: number;
  readonly value?: number;
  readonly unit?: UnitId;
  /** For readings that cannot be true: the mix-ups to rule out, the likeliest first. */
  readonly likely?: readonly MixUp[];
}

/** Plain data: what `calc` prints. */
export type CalculationResult =
  | {
      readonly name: string;
      readonly value: number;
      readonly unit: UnitId;
      /** In the same unit: the band of a target, the net content of a cylinder. */
      readonly also?: Readonly<Record<string, number>>;
      /** What the value comes to, as ids: one, or every one that the inputs leave possible. */
      readonly findings?: Findings;
      /** Further values, in units of their own. */
      readonly beside?: Readonly<Record<string, Amount>>;
      readonly inputs: Readonly<Record<string, InputValue>>;
      readonly formula: string;
      readonly range: string;
      readonly source: string;
      /** What another source says instead, where two conflict. */
      readonly otherSource?: string;
      readonly standing: Formula['standing'];
      readonly cautions: readonly Caution[];
      /** With the caution of that name: by how much, and against which print. */
      readonly chartsDiffer?: ShownChartDifference;
    }
  | { readonly name: string; readonly refused: ShownRefusal }
  | { readonly name: string; readonly badInput: Omit<BadInput, 'kind'> };

/** A calculation by its id, its inputs as typed; every outcome is a value, none is thrown. */
export function runCalculation(
  name: string,
  given: Readonly<Record<string, string>>,
): CalculationResult {
  const entry = ENTRIES.find(({ formula }) => formula.id === name);
  if (entry === undefined) return bad(name, unknownName(name));
  const inputs = parseInputs(entry.keys, given);
  if ('kind' in inputs) return bad(name, inputs);
  const outcome = entry.run(inputs);
  if (outcome.kind === 'badInput') return bad(name, outcome);
  if (outcome.kind === 'refused') {
    return {
      name,
      refused: { ...shownRefusal(outcome, systemOf(inputs)), ...likelyMixUps(outcome) },
    };
  }
  const { cautions } = outcome;
  const charts = cautions.includes('chartsDiffer') ? chartsBeside(inputs) : {};
  return { name, ...shownAnswer(entry, inputs, outcome.value), cautions, ...charts };
}

function chartsBeside(inputs: InputValues): { chartsDiffer?: ShownChartDifference } {
  const id = choiceOf(inputs, 'refrigerant', REFRIGERANTS);
  const found = id === undefined ? null : chartDifference(id, systemOf(inputs));
  return found === null ? {} : { chartsDiffer: found };
}

/** Limits and impossible values come in base units; they are shown in the habit of the inputs. */
const SHOWN_IN: Record<UnitSystem, Partial<Record<UnitId, UnitId>>> = {
  us: { degC: 'degF', dC: 'dF', kPaa: 'psia' },
  si: { kPaa: 'bara' },
};

function shownRefusal(outcome: CalculationRefusal, system: UnitSystem): ShownRefusal {
  if (!('unit' in outcome)) return { reason: outcome.reason };
  const shown = (base: number): Amount => {
    const unit = SHOWN_IN[system][outcome.unit] ?? outcome.unit;
    return { value: tidy(fromBase(base, unit).value), unit };
  };
  if ('value' in outcome) return { reason: outcome.reason, ...shown(outcome.value) };
  const { value: limit, unit } = shown(outcome.limit);
  const whose = 'refrigerant' in outcome ? { refrigerant: outcome.refrigerant } : {};
  return { reason: outcome.reason, ...whose, limit, unit };
}

const unknownName = (name: string): BadInput => {
  const names = ENTRIES.map(({ formula }) => formula.id).join(', ');
  return badInput('name', `no calculation "${name}": use one of ${names}`);
};

const bad = (name: string, { key, message }: BadInput): CalculationResult => ({
  name,
  badInput: { key, message },
});

/** Four decimals: far below any instrument, and free of binary tails. */
const tidy = (value: number): number => Number(value.toFixed(4));

function shownAnswer(
  { formula, units }: Entry,
  inputs: InputValues,
  { base, also, beside, findings, source, standing, otherSource }: Answer,
) {
  const unit = units[systemOf(inputs)];
  const inUnit = (each: number): number => tidy(fromBase(each, unit).value);
  return {
    value: inUnit(base),
    unit,
    ...(also === undefined
      ? {}
      : { also: Object.fromEntries(Object.entries(also).map(([key, of]) => [key, inUnit(of)])) }),
    ...(findings === undefined ? {} : { findings }),
    ...(beside === undefined ? {} : { beside: tidied(beside) }),
    inputs: Object.fromEntries(inputs),
    formula: formula.equation,
    range: formula.range,
    source: source === undefined ? formula.source : `${formula.source}; ${source}`,
    ...(otherSource === undefined ? {} : { otherSource }),
    standing: standing ?? formula.standing,
  };
}

const tidied = (amounts: Readonly<Record<string, Amount>>): Record<string, Amount> =>
  Object.fromEntries(
    Object.entries(amounts).map(([key, { value, unit }]) => [key, { value: tidy(value), unit }]),
  );

export interface ListedCalculation {
  readonly name: string;
  readonly title: string;
  readonly keys: readonly ListedKey[];
  /** Of the value, for US and for metric inputs. */
  readonly units: readonly UnitId[];
  readonly formula: string;
  readonly symbols: Formula['symbols'];
  readonly range: string;
  readonly source: string;
  readonly standing: Formula['standing'];
  readonly example: Formula['example'];
}

export interface ListedKey {
  readonly key: string;
  readonly optional: boolean;
  /** Units, the choices, or a series as it is written. */
  readonly accepts: string;
}

function accepted(accepts: Key['accepts']): string {
  if (accepts.kind === 'choice') return accepts.choices.join(', ');
  return accepts.kind === 'series' ? accepts.example : unitsWritten(accepts.dimensions);
}

const listedKey = ({ name, optional, accepts }: Key): ListedKey => ({
  key: name,
  optional,
  accepts: accepted(accepts),
});

/** The closed set, each with what it takes and where it comes from. */
export function listCalculations(): readonly ListedCalculation[] {
  return ENTRIES.map(({ formula, keys, units }) => ({
    name: formula.id,
    title: formula.name,
    keys: keys.map(listedKey),
    units: [...new Set([units.us, units.si])],
    formula: formula.equation,
    symbols: formula.symbols,
    range: formula.range,
    source: formula.source,
    standing: formula.standing,
    example: formula.example,
  }));
}
