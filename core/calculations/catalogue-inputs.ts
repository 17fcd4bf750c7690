import { REFRIGERANTS } from '../terms/refrigerants.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { invariant } from '../unreachable.ts';
import type { Amount } from '../units/amount.ts';
import { ALTITUDE_RANGE_M, BAROMETER_RANGE_KPA, localAtmosphere } from '../units/atmosphere.ts';
import { toAnyPressure } from '../units/branding.ts';
import { dimensionOf, toBase } from '../units/convert.ts';
import { formatNumber } from '../units/format-amount.ts';
import { parseAmount, unitsWritten } from '../units/parse-amount.ts';
import { absolutePressure, temperatureDifference } from '../units/quantity-values.ts';
import type { AbsolutePressure, TemperatureDifference } from '../units/quantity-values.ts';
import type { UnitId, UnitSystem } from '../units/units.ts';
import type { Key, SeriesPart } from './catalogue-keys.ts';

/** An input that cannot be used: which key, and what to write instead. */
export interface BadInput {
  readonly kind: 'badInput';
  readonly key: string;
  readonly message: string;
}

export const badInput = (key: string, message: string): BadInput => ({
  kind: 'badInput',
  key,
  message,
});

/** One reading of a series: when (or at what), and what was read. */
export interface SeriesPoint {
  readonly at: Amount;
  readonly value: Amount;
}

export type InputValue = Amount | string | readonly SeriesPoint[];
export type InputValues = ReadonlyMap<string, InputValue>;

/** "r134a", "134A" and "R-134a" are one refrigerant. */
function asRefrigerant(text: string): RefrigerantId | undefined {
  const bare = (id: string): string => id.toLowerCase().replace(/^r(?=[-\d])|[^a-z0-9]/g, '');
  return REFRIGERANTS.find((id) => bare(id) === bare(text));
}

function parseChoice(key: string, text: string, choices: readonly string[]): string | BadInput {
  const found =
    choices.find((each) => each.toLowerCase() === text.toLowerCase()) ??
    (key === 'refrigerant' ? asRefrigerant(text) : undefined);
  return found ?? badInput(key, `${key} is one of ${choices.join(', ')}, not "${text}"`);
}

function parseValue({ name, accepts }: Key, text: string): InputValue | BadInput {
  if (accepts.kind === 'choice') return parseChoice(name, text, accepts.choices);
  if (accepts.kind === 'series') return parseSeries(name, text, accepts);
  const parsed = parseAmount(text, accepts.bare);
  const units = unitsWritten(accepts.dimensions);
  if (parsed.kind === 'bad') return badInput(name, `${name}: ${parsed.message}; it takes ${units}`);
  return accepts.dimensions.includes(dimensionOf(parsed.amount))
    ? parsed.amount
    : badInput(name, `${name} is written in one of ${units}, not as "${text}"`);
}

const isBad = (value: InputValue | BadInput): value is BadInput =>
  typeof value === 'object' && 'kind' in value;

const isAmount = (value: InputValue | undefined): value is Amount =>
  typeof value === 'object' && 'unit' in value;

const isSeries = (value: InputValue | undefined): value is readonly SeriesPoint[] =>
  typeof value === 'object' && !('unit' in value);

function parseSeries(
  name: string,
  text: string,
  { at, value, example }: { at: SeriesPart; value: SeriesPart; example: string },
): readonly SeriesPoint[] | BadInput {
  const part = (written: string, { dimension, bare }: SeriesPart): Amount | null => {
    const parsed = parseAmount(written, bare);
    return parsed.kind === 'amount' && dimensionOf(parsed.amount) === dimension
      ? parsed.amount
      : null;
  };
  const points: SeriesPoint[] = [];
  for (const pair of text.split(',')) {
    const [when = '', what = '', ...more] = pair.split(':');
    const [first, second] = [part(when, at), part(what, value)];
    if (first === null || second === null || more.length > 0) {
      return badInput(name, `${name} is written as in ${name}=${example}, not as "${pair}"`);
    }
    points.push({ at: first, value: second });
  }
  return points;
}

/** Every key known, every needed key there, every value in a unit it may have. */
export function parseInputs(
  keys: readonly Key[],
  given: Readonly<Record<string, string>>,
): InputValues | BadInput {
  const names = keys.map(({ name }) => name);
  const unknown = Object.keys(given).find((name) => !names.includes(name));
  if (unknown !== undefined) {
    return badInput(unknown, `no key "${unknown}": use ${names.join(', ') || 'none'}`);
  }
  const values = new Map<string, InputValue>();
  for (const key of keys) {
    const text = given[key.name];
    if (text === undefined && key.optional) continue;
    if (text === undefined) return badInput(key.name, `${key.name} is missing: add ${key.name}=…`);
    const value = parseValue(key, text);
    if (isBad(value)) return value;
    values.set(key.name, value);
  }
  return altitudeRefused(values) ?? barometerRefused(values) ?? values;
}

function altitudeRefused(values: InputValues): BadInput | null {
  const metres = baseOf(values, 'altitude') ?? 0;
  const { low, high } = ALTITUDE_RANGE_M;
  if (metres >= low && metres <= high) return null;
  return badInput(
    'altitude',
    `altitude is between ${low} and ${high} m, not ${formatNumber(metres, 0)} m`,
  );
}

function barometerRefused(values: InputValues): BadInput | null {
  const kPa = baseOf(values, 'barometer');
  if (kPa === undefined) return null;
  if (values.has('altitude')) {
    return badInput(
      'barometer',
      'give altitude or barometer, not both: one follows from the other',
    );
  }
  const { low, high } = BAROMETER_RANGE_KPA;
  if (kPa >= low && kPa <= high) return null;
  return badInput(
    'barometer',
    `barometer is the air at the gauge, between ${low} and ${high} kPa, not ${formatNumber(kPa, 1)} kPa`,
  );
}

/** The value of an amount's key in its base unit; undefined where it was not given. */
export function baseOf(values: InputValues, key: string): number | undefined {
  const value = values.get(key);
  return isAmount(value) ? toBase(value) : undefined;
}

/** A series in base units, in the order it was given; undefined where it was not. */
export function seriesOf(
  values: InputValues,
  key: string,
): readonly { readonly at: number; readonly value: number }[] | undefined {
  const given = values.get(key);
  if (!isSeries(given)) return undefined;
  return given.map(({ at, value }) => ({ at: toBase(at), value: toBase(value) }));
}

export function needSeries(
  values: InputValues,
  key: string,
): readonly { readonly at: number; readonly value: number }[] {
  const found = seriesOf(values, key);
  invariant(found !== undefined, `the catalogue's entry declares the series ${key}`);
  return found;
}

export function atmosphereOf(values: InputValues): AbsolutePressure {
  const barometer = baseOf(values, 'barometer');
  return localAtmosphere(
    barometer === undefined
      ? { by: 'altitude', altitudeM: baseOf(values, 'altitude') ?? 0 }
      : { by: 'barometer', pressure: absolutePressure(barometer) },
  );
}

/** A key that `parseInputs` has seen to: it is there and of its kind, or the catalogue's entry is wrong. */
export function needBase(values: InputValues, key: string): number {
  const base = baseOf(values, key);
  invariant(base !== undefined, `the catalogue's entry declares the key ${key}`);
  return base;
}

export function needPressure(values: InputValues, key: string): AbsolutePressure {
  const value = values.get(key);
  const absolute = isAmount(value) ? toAnyPressure(value, atmosphereOf(values)) : null;
  invariant(absolute !== null, `the catalogue's entry declares the pressure ${key}`);
  return absolute;
}

/** The choice made, out of the same closed set that the key declares; undefined where none was. */
export function choiceOf<Choice extends string>(
  values: InputValues,
  key: string,
  choices: readonly Choice[],
): Choice | undefined {
  return choices.find((each) => each === values.get(key));
}

export function needChoice<Choice extends string>(
  values: InputValues,
  key: string,
  choices: readonly Choice[],
): Choice {
  const found = choiceOf(values, key, choices);
  invariant(found !== undefined, `the catalogue's entry declares the choice ${key}`);
  return found;
}

const US_UNITS: readonly UnitId[] = [
  'psi',
  'psia',
  'inHg',
  'degF',
  'dF',
  'oz',
  'lb',
  'ft',
  'inch',
  'ft3',
  'lbPerMcf',
];
const SI_UNITS: readonly UnitId[] = [
  ...(['kPa', 'kPaa', 'bar', 'bara', 'degC', 'dC'] as const),
  ...(['g', 'kg', 'm', 'mm', 'L', 'm3', 'gPerM3'] as const),
];

/** Answers come in the habit of the inputs: metric only where something was metric and nothing US. */
export function systemOf(values: InputValues): UnitSystem {
  const units = [...values.values()].flatMap((value) => {
    if (isSeries(value)) return value.flatMap((point) => [point.at.unit, point.value.unit]);
    return isAmount(value) ? [value.unit] : [];
  });
  const some = (of: readonly UnitId[]): boolean => units.some((unit) => of.includes(unit));
  return some(SI_UNITS) && !some(US_UNITS) ? 'si' : 'us';
}

export const differenceOf = (inputs: InputValues, key: string): TemperatureDifference =>
  temperatureDifference(needBase(inputs, key));
