import type { Dimension } from './dimensions.ts';

/** One row a unit: a value in it becomes `value × factor + offset` in the dimension's base unit. */
export interface UnitRow {
  readonly dimension: Dimension;
  /** As printed beside a number. */
  readonly symbol: string;
  /** As a speech synthesiser is given it, after one and after any other number ("psi" is read "sigh"). */
  readonly spoken: { readonly one: string; readonly many: string };
  readonly factor: number;
  readonly offset: number;
  /** The most decimals worth showing: what the instrument in that unit resolves. */
  readonly decimals: number;
  /** How it may be written after a number on the command line. */
  readonly written: readonly string[];
}

const KPA_PER_PSI = 6.894757293168; // NIST SP 811, appendix B.8
const KPA_PER_INHG = 3.386389; // NIST SP 811, appendix B.8, conventional inch of mercury

const LITRES_PER_FT3 = 28.316846592; // NIST SP 811, appendix B.8
const GRAMS_PER_LB = 453.59237; // NIST SP 811, appendix B.8

/** Base units: kPa, °C, K, V, A, Ω, µF, W, VA, g, min, Hz, m, L, g/m³, t CO₂e. */
export const UNITS = {
  psi: {
    dimension: 'gaugePressure',
    symbol: 'psi',
    spoken: { one: 'P S I', many: 'P S I' },
    factor: KPA_PER_PSI,
    offset: 0,
    decimals: 1,
    written: ['psi', 'psig'],
  },
  inHg: {
    dimension: 'gaugePressure',
    symbol: 'inHg',
    spoken: { one: 'inch', many: 'inches' },
    factor: KPA_PER_INHG,
    offset: 0,
    decimals: 1,
    written: ['inHg'],
  },
  kPa: {
    dimension: 'gaugePressure',
    symbol: 'kPa',
    spoken: { one: 'kilopascal', many: 'kilopascals' },
    factor: 1,
    offset: 0,
    decimals: 0,
    written: ['kPa'],
  },
  bar: {
    dimension: 'gaugePressure',
    symbol: 'bar',
    spoken: { one: 'bar', many: 'bar' },
    factor: 100,
    offset: 0,
    decimals: 2,
    written: ['bar', 'barg'],
  },
  psia: {
    dimension: 'absolutePressure',
    symbol: 'psia',
    spoken: { one: 'P S I absolute', many: 'P S I absolute' },
    factor: KPA_PER_PSI,
    offset: 0,
    decimals: 1,
    written: ['psia'],
  },
  kPaa: {
    dimension: 'absolutePressure',
    symbol: 'kPa abs',
    spoken: { one: 'kilopascal absolute', many: 'kilopascals absolute' },
    factor: 1,
    offset: 0,
    decimals: 0,
    written: ['kPaa'],
  },
  bara: {
    dimension: 'absolutePressure',
    symbol: 'bar abs',
    spoken: { one: 'bar absolute', many: 'bar absolute' },
    factor: 100,
    offset: 0,
    decimals: 2,
    written: ['bara'],
  },
  micron: {
    dimension: 'absolutePressure',
    symbol: 'micron',
    spoken: { one: 'micron', many: 'microns' },
    factor: 0.0001333224, // a thousandth of the conventional millimetre of mercury: NIST SP 811, appendix B.8
    offset: 0,
    decimals: 0,
    written: ['micron', 'microns'],
  },
  mmHg: {
    dimension: 'absolutePressure',
    symbol: 'mmHg abs',
    spoken: { one: 'millimetre of mercury absolute', many: 'millimetres of mercury absolute' },
    factor: 0.1333224, // NIST SP 811, appendix B.8, conventional millimetre of mercury
    offset: 0,
    decimals: 1,
    written: ['mmHg', 'torr'],
  },
  degF: {
    dimension: 'temperature',
    symbol: '°F',
    spoken: { one: 'degree', many: 'degrees' },
    factor: 5 / 9,
    offset: -160 / 9,
    decimals: 1,
    written: ['F', 'degF'],
  },
  degC: {
    dimension: 'temperature',
    symbol: '°C',
    spoken: { one: 'degree Celsius', many: 'degrees Celsius' },
    factor: 1,
    offset: 0,
    decimals: 1,
    written: ['C', 'degC'],
  },
  dF: {
    dimension: 'temperatureDifference',
    symbol: '°F',
    spoken: { one: 'degree', many: 'degrees' },
    factor: 5 / 9,
    offset: 0,
    decimals: 1,
    written: ['dF'],
  },
  dC: {
    dimension: 'temperatureDifference',
    symbol: 'K',
    spoken: { one: 'kelvin', many: 'kelvin' },
    factor: 1,
    offset: 0,
    decimals: 1,
    written: ['dC', 'K'],
  },
  V: {
    dimension: 'voltage',
    symbol: 'V',
    spoken: { one: 'volt', many: 'volts' },
    factor: 1,
    offset: 0,
    decimals: 1,
    written: ['V'],
  },
  A: {
    dimension: 'current',
    symbol: 'A',
    spoken: { one: 'amp', many: 'amps' },
    factor: 1,
    offset: 0,
    decimals: 2,
    written: ['A'],
  },
  ohm: {
    dimension: 'resistance',
    symbol: 'Ω',
    spoken: { one: 'ohm', many: 'ohms' },
    factor: 1,
    offset: 0,
    decimals: 2,
    written: ['ohm'],
  },
  kohm: {
    dimension: 'resistance',
    symbol: 'kΩ',
    spoken: { one: 'kilohm', many: 'kilohms' },
    factor: 1000,
    offset: 0,
    decimals: 1,
    written: ['kohm'],
  },
  Mohm: {
    dimension: 'resistance',
    symbol: 'MΩ',
    spoken: { one: 'megohm', many: 'megohms' },
    factor: 1e6,
    offset: 0,
    decimals: 2,
    written: ['Mohm'],
  },
  uF: {
    dimension: 'capacitance',
    symbol: 'µF',
    spoken: { one: 'microfarad', many: 'microfarads' },
    factor: 1,
    offset: 0,
    decimals: 2,
    written: ['uF'],
  },
  W: {
    dimension: 'power',
    symbol: 'W',
    spoken: { one: 'watt', many: 'watts' },
    factor: 1,
    offset: 0,
    decimals: 0,
    written: ['W'],
  },
  VA: {
    dimension: 'apparentPower',
    symbol: 'VA',
    spoken: { one: 'volt-amp', many: 'volt-amps' },
    factor: 1,
    offset: 0,
    decimals: 0,
    written: ['VA'],
  },
  oz: {
    dimension: 'mass',
    symbol: 'oz',
    spoken: { one: 'ounce', many: 'ounces' },
    factor: 28.349523125,
    offset: 0,
    decimals: 1,
    written: ['oz'],
  },
  lb: {
    dimension: 'mass',
    symbol: 'lb',
    spoken: { one: 'pound', many: 'pounds' },
    factor: GRAMS_PER_LB,
    offset: 0,
    decimals: 2,
    written: ['lb'],
  },
  g: {
    dimension: 'mass',
    symbol: 'g',
    spoken: { one: 'gram', many: 'grams' },
    factor: 1,
    offset: 0,
    decimals: 0,
    written: ['g'],
  },
  kg: {
    dimension: 'mass',
    symbol: 'kg',
    spoken: { one: 'kilogram', many: 'kilograms' },
    factor: 1000,
    offset: 0,
    decimals: 3,
    written: ['kg'],
  },
  s: {
    dimension: 'duration',
    symbol: 's',
    spoken: { one: 'second', many: 'seconds' },
    factor: 1 / 60,
    offset: 0,
    decimals: 0,
    written: ['s', 'sec'],
  },
  min: {
    dimension: 'duration',
    symbol: 'min',
    spoken: { one: 'minute', many: 'minutes' },
    factor: 1,
    offset: 0,
    decimals: 1,
    written: ['min'],
  },
  h: {
    dimension: 'duration',
    symbol: 'h',
    spoken: { one: 'hour', many: 'hours' },
    factor: 60,
    offset: 0,
    decimals: 2,
    written: ['h', 'hr', 'hour', 'hours'],
  },
  day: {
    dimension: 'duration',
    symbol: 'days',
    spoken: { one: 'day', many: 'days' },
    factor: 1440,
    offset: 0,
    decimals: 1,
    written: ['d', 'day', 'days'],
  },
  Hz: {
    dimension: 'frequency',
    symbol: 'Hz',
    spoken: { one: 'hertz', many: 'hertz' },
    factor: 1,
    offset: 0,
    decimals: 1,
    written: ['Hz'],
  },
  ft: {
    dimension: 'length',
    symbol: 'ft',
    spoken: { one: 'foot', many: 'feet' },
    factor: 0.3048,
    offset: 0,
    decimals: 0,
    written: ['ft'],
  },
  m: {
    dimension: 'length',
    symbol: 'm',
    spoken: { one: 'metre', many: 'metres' },
    factor: 1,
    offset: 0,
    decimals: 0,
    written: ['m'],
  },
  inch: {
    dimension: 'length',
    symbol: 'in',
    spoken: { one: 'inch', many: 'inches' },
    factor: 0.0254,
    offset: 0,
    decimals: 3,
    written: ['in', 'inch'],
  },
  mm: {
    dimension: 'length',
    symbol: 'mm',
    spoken: { one: 'millimetre', many: 'millimetres' },
    factor: 0.001,
    offset: 0,
    decimals: 1,
    written: ['mm'],
  },
  L: {
    dimension: 'volume',
    symbol: 'L',
    spoken: { one: 'litre', many: 'litres' },
    factor: 1,
    offset: 0,
    decimals: 2,
    written: ['L'],
  },
  ft3: {
    dimension: 'volume',
    symbol: 'ft³',
    spoken: { one: 'cubic foot', many: 'cubic feet' },
    factor: LITRES_PER_FT3,
    offset: 0,
    decimals: 1,
    written: ['ft3'],
  },
  m3: {
    dimension: 'volume',
    symbol: 'm³',
    spoken: { one: 'cubic metre', many: 'cubic metres' },
    factor: 1000,
    offset: 0,
    decimals: 2,
    written: ['m3'],
  },
  gPerM3: {
    dimension: 'concentration',
    symbol: 'g/m³',
    spoken: { one: 'gram per cubic metre', many: 'grams per cubic metre' },
    factor: 1,
    offset: 0,
    decimals: 1,
    written: ['g/m3'],
  },
  lbPerMcf: {
    dimension: 'concentration',
    symbol: 'lb/1000 ft³',
    spoken: { one: 'pound per thousand cubic feet', many: 'pounds per thousand cubic feet' },
    factor: GRAMS_PER_LB / LITRES_PER_FT3,
    offset: 0,
    decimals: 2,
    written: ['lb/1000ft3'],
  },
  tCO2e: {
    dimension: 'carbonDioxideEquivalent',
    symbol: 't CO₂e',
    spoken: {
      one: 'tonne of carbon dioxide equivalent',
      many: 'tonnes of carbon dioxide equivalent',
    },
    factor: 1,
    offset: 0,
    decimals: 2,
    written: ['tCO2e'],
  },
  ratio: {
    dimension: 'ratio',
    symbol: ':1',
    spoken: { one: 'to one', many: 'to one' },
    factor: 1,
    offset: 0,
    decimals: 1,
    written: [],
  },
  percent: {
    dimension: 'ratio',
    symbol: '%',
    spoken: { one: 'percent', many: 'percent' },
    factor: 0.01,
    offset: 0,
    decimals: 1,
    written: ['%'],
  },
  ppm: {
    dimension: 'ratio',
    symbol: 'ppm',
    spoken: { one: 'part per million', many: 'parts per million' },
    factor: 1e-6,
    offset: 0,
    decimals: 0,
    written: ['ppm'],
  },
} as const satisfies Record<string, UnitRow>;

export type UnitId = keyof typeof UNITS;

/** The units of one dimension: a temperature can be written only in a unit of temperature. */
export type UnitOf<D extends Dimension> = {
  [Id in UnitId]: (typeof UNITS)[Id]['dimension'] extends D ? Id : never;
}[UnitId];

/** The same rows, each as wide as `UnitRow`: for looking one up by an id known only at run time. */
const ROWS: Record<UnitId, UnitRow> = UNITS;
export function unitRow(unit: UnitId): UnitRow {
  return ROWS[unit];
}

/** Two habits of units: what a bare number means on this visit. */
export type UnitSystem = 'us' | 'si';
