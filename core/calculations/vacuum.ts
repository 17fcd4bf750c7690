import { inchesOfVacuum } from '../units/atmosphere.ts';
import { toGaugeReading } from '../units/branding.ts';
import { absolutePressure } from '../units/quantity-values.ts';
import type { AbsolutePressure, Temperature } from '../units/quantity-values.ts';
import { andThen, known } from './calculated.ts';
import type { Calculated, Caution } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';
import { microns } from './vacuum-defaults.ts';
import { isIce, TRIPLE_POINT, waterVapourPressure } from './water-vapour.ts';

/** Half a mark of a compound gauge, half an inch of mercury: whatever lies below is off the dial. */
const DIAL_RESOLVES = microns(12_700);

export interface VacuumReading {
  readonly absolute: AbsolutePressure;
  /** What a dial here would show, in inches. */
  readonly inches: number;
  readonly dial: 'shows' | 'cannotShow';
}

/** One vacuum in every way that it is written. Absolute and dial are apart by the local air. */
export function vacuumReading(input: {
  readonly pressure: AbsolutePressure;
  readonly atmosphere: AbsolutePressure;
}): Calculated<VacuumReading> {
  const { pressure, atmosphere } = input;
  if (!(pressure >= 0)) {
    return { kind: 'refused', reason: 'impossibleVacuum', value: pressure, unit: 'kPaa' };
  }
  const dial = pressure < DIAL_RESOLVES ? 'cannotShow' : 'shows';
  const inches = inchesOfVacuum(toGaugeReading(pressure, atmosphere));
  const cautions: Caution[] = dial === 'cannotShow' ? ['useMicronGauge', 'noPowerInVacuum'] : [];
  return known({ absolute: pressure, inches, dial }, ...cautions);
}

export interface Drying {
  /** What the vacuum must go below for water at the coldest spot to leave. */
  readonly needed: AbsolutePressure;
  readonly moisture: 'boils' | 'sublimes' | 'stays';
}

/** Whether a vacuum takes water out of the coldest spot: only below its vapour pressure there. */
export function dryingVacuum(input: {
  readonly vacuum: AbsolutePressure;
  readonly coldest: Temperature;
}): Calculated<Drying> {
  const { vacuum, coldest } = input;
  return andThen(waterVapourPressure(coldest), (needed) => {
    const leaves = isIce(coldest) || vacuum < TRIPLE_POINT.kPa ? 'sublimes' : 'boils';
    const moisture = vacuum < needed ? leaves : 'stays';
    // Boiling off below the triple point freezes what is left.
    const cautions: Caution[] = leaves === 'sublimes' ? ['iceInSystem'] : [];
    return known({ needed: absolutePressure(needed), moisture }, ...cautions, 'noPowerInVacuum');
  });
}

export const vacuumReadingFormula: Formula = {
  id: 'vacuumReading',
  name: 'a vacuum in microns, and what a dial shows',
  equation: 'micron = p / 0.0001333224; inches = (p0 − p) / 3.386389',
  symbols: symbols(['p', 'absolute pressure', 'kPa'], ['p0', 'local air pressure', 'kPa']),
  range:
    'above nothing; a dial resolves half an inch of mercury (12,700 micron): a deep vacuum is not on it',
  source: 'NIST SP 811, appendix B.8, conventional millimetre and inch of mercury',
  standing: 'published',
  example: {
    inputs: { pressure: '1.5psia' },
    gives: { value: 77_572, unit: 'micron' },
    within: 1,
    source: '1.5 × 6.894757 kPa over 0.0001333224 by hand',
    standing: 'computed',
  },
};

export const dryingVacuumFormula: Formula = {
  id: 'dryingVacuum',
  name: 'whether a vacuum takes the water out',
  equation: 'water leaves while p < pw(T); as ice below 0.01 °C or 4,588 micron',
  symbols: symbols(
    ['p', 'vacuum at the coldest spot, absolute', 'kPa'],
    ['pw', 'vapour pressure of water at T', 'kPa'],
    ['T', 'temperature of the coldest spot', '°C'],
  ),
  range: '−90 to 200 °C; read far from the pump, with the pump valved off',
  source: 'IAPWS SR1-86(1992) and R14-08(2011) for pw',
  standing: 'computed',
  example: {
    inputs: { pressure: '5000micron', coldestTemp: '40F' },
    gives: { value: 6293, unit: 'micron' },
    within: 4,
    source:
      'IAPWS-95 by CoolProp 8.0.0: 6,294 micron at 40 °F, of which the printed equation is 0.005 % off',
    standing: 'computed',
  },
};
