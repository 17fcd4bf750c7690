import type { UnitId } from '../../units/units.ts';

/** Unit words that only the quantity or the visit's habit makes a unit: a degree of which scale, a pound of what. */
export const LOOSE_UNITS = ['degrees', 'pounds', 'inches'] as const;
export type SpokenUnit = UnitId | (typeof LOOSE_UNITS)[number];

export const UNIT_NAMES: Record<SpokenUnit, readonly string[]> = {
  degrees: ['degrees', '~degree', '~deg'],
  pounds: ['pounds', '~pound', '~lbs', '~lb'],
  inches: [
    'inches of vacuum',
    '~(inches|inch) [of (vacuum|mercury|hg)]',
    '~in of (vacuum|mercury)',
    '~inches vacuum',
  ],
  psi: [
    'psi',
    '~psig',
    '~p s i [g]',
    '~(pounds|pound) (per|a) square inch',
    '~pounds (gage|pressure)',
  ],
  inHg: ['~inhg', '~in hg', '~hg'],
  kPa: ['~(kilopascals|kilopascal|kpa|k p a)'],
  bar: ['bar', '~bars', '~barg', '~bar gage'],
  psia: ['~psia', '~psi absolute'],
  kPaa: ['~kilopascals absolute', '~kpa absolute'],
  bara: ['~bara', '~bar absolute'],
  micron: ['microns', '~micron'],
  degF: ['~(degrees|degree|deg) (fahrenheit|f)', '~fahrenheit', '~f'],
  degC: [
    'celsius',
    'degrees celsius',
    '~(degree|deg) celsius',
    '~(degrees|degree|deg) (centigrade|c)',
    '~centigrade',
    '~c',
  ],
  dF: [],
  dC: ['~(kelvin|kelvins)'],
  V: ['volts', '~volt', '~v', '~vac', '~volts (a c|d c|ac|dc)'],
  A: ['amps', '~(amp|amperes|ampere)'],
  ohm: ['ohms', '~ohm'],
  Mohm: ['megohms', '~(megohm|meg|megs|megaohm|megaohms)', '~(mega|meg) (ohm|ohms)'],
  uF: ['microfarads', '~(microfarad|mfd|uf|mike|mikes)', '~micro (farad|farads)', '~m f d'],
  W: ['watts', '~(watt|w)'],
  oz: ['ounces', '~(ounce|oz)'],
  lb: [],
  g: ['grams', '~(gram|g)'],
  kg: ['~(kilograms|kilogram|kilos|kilo|kg)'],
  min: [],
  day: [],
  Hz: [],
  ft: [],
  m: [],
  ratio: [],
  percent: [],
};
