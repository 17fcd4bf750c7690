import { ratio, voltage } from '../units/quantity-values.ts';
import type { Ratio, Voltage } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { NAMEPLATE_VOLTAGE_TOLERANCE } from './electrical-defaults.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

/** Where it was measured: at the meter or main, or at the machine's terminals. */
export type SupplyPoint = 'service' | 'utilization';

/** On a 120 V base; every low-voltage system is in proportion. */
const BANDS_120: Record<SupplyPoint, Record<'a' | 'b', readonly [low: number, high: number]>> = {
  service: { a: [114, 126], b: [110, 127] },
  utilization: { a: [108, 126], b: [104, 127] },
};
const BASE_V = 120;

export const SUPPLY_CONFLICT =
  'a maker’s CL series manual prints 187 V as the low end of both ranges of a 208 V system, where the proportion gives 180 V for range B';

export type SupplyRange = 'a' | 'b' | 'below' | 'above';

export interface SupplyBands {
  readonly low: Voltage;
  readonly high: Voltage;
  readonly toleratedLow: Voltage;
  readonly toleratedHigh: Voltage;
  /** Null where nothing was measured. */
  readonly range: SupplyRange | null;
}

/** The voltage a system may have: range A always, range B for a limited time, until it is corrected. */
export function supplyVoltage(input: {
  readonly nominal: Voltage;
  readonly point: SupplyPoint;
  readonly measured?: Voltage;
}): Calculated<SupplyBands> {
  const { nominal, point, measured } = input;
  if (!(nominal > 0)) return refused('notPositive');
  const [low, high] = inProportion(BANDS_120[point].a, nominal);
  const [toleratedLow, toleratedHigh] = inProportion(BANDS_120[point].b, nominal);
  const bands = { low, high, toleratedLow, toleratedHigh };
  if (measured === undefined) return known({ ...bands, range: null });
  const range = rangeOf(measured, bands);
  const isOutside = range === 'below' || range === 'above';
  return known(
    { ...bands, range },
    'liveWork',
    ...(isOutside ? (['outsideNameplateVoltage'] as const) : []),
  );
}

function inProportion(
  [low, high]: readonly [number, number],
  nominal: Voltage,
): readonly [Voltage, Voltage] {
  const scaled = (each: number): Voltage => voltage((each * nominal) / BASE_V);
  return [scaled(low), scaled(high)];
}

function rangeOf(measured: Voltage, bands: Omit<SupplyBands, 'range'>): SupplyRange {
  if (measured < bands.toleratedLow) return 'below';
  if (measured > bands.toleratedHigh) return 'above';
  return measured >= bands.low && measured <= bands.high ? 'a' : 'b';
}

export interface MotorVoltage {
  readonly low: Voltage;
  readonly high: Voltage;
  /** Of the nearer rating; null where nothing was measured. */
  readonly off: Ratio | null;
  readonly verdict: 'within' | 'low' | 'high' | null;
}

/** What a motor's plate allows at its terminals; a dual plate (208/230) runs from the lower to the higher rating. */
export function motorVoltage(input: {
  readonly rated: Voltage;
  /** The higher rating of a dual plate. */
  readonly ratedHigh?: Voltage;
  readonly measured?: Voltage;
}): Calculated<MotorVoltage> {
  const { rated, ratedHigh = rated, measured } = input;
  if (!(rated > 0)) return refused('notPositive');
  if (ratedHigh < rated) return refused('ruleDoesNotApply');
  const tolerance = NAMEPLATE_VOLTAGE_TOLERANCE.value;
  const low = voltage(rated * (1 - tolerance));
  const high = voltage(ratedHigh * (1 + tolerance));
  if (measured === undefined) return known({ low, high, off: null, verdict: null });
  const nearer = measured < rated ? rated : measured > ratedHigh ? ratedHigh : measured;
  const off = ratio((measured - nearer) / nearer);
  const verdict = measured < low ? 'low' : measured > high ? 'high' : 'within';
  return verdict === 'within'
    ? known({ low, high, off, verdict }, 'liveWork')
    : known({ low, high, off, verdict }, 'liveWork', 'outsideNameplateVoltage');
}

export const supplyVoltageFormula: Formula = {
  id: 'supplyVoltage',
  name: 'supply voltage bands',
  equation:
    'on a 120 V base: service A 114 to 126, B 110 to 127; utilization A 108 to 126, B 104 to 127',
  symbols: symbols(
    ['nominal', 'the system’s name: 120, 208, 240, 277, 480, 600', 'V'],
    ['A, B', 'range A always; range B for a limited time, until corrected', 'V'],
  ),
  range: '60 Hz systems up to 600 V, loads that are not lighting; shown: the low end of range A',
  source:
    'ANSI C84.1, table 1, from memory: look it up; the utilization bands as a maker prints them (a CL series manual, table 4)',
  standing: 'from memory',
  example: {
    inputs: { nominal: '480V', point: 'utilization' },
    gives: { value: 432, unit: 'V' },
    within: 0.5,
    source: 'a maker’s CL series manual, page 22, table 4: 480 V system, 432 to 504 V',
    standing: 'published',
  },
};

export const motorVoltageFormula: Formula = {
  id: 'motorVoltage',
  name: 'voltage that a motor’s plate allows',
  equation: 'Vlow = 0.9 · Vrated, Vhigh = 1.1 · Vrated',
  symbols: symbols(['Vrated', 'on the plate; of two, the lower and the higher', 'V']),
  range: 'at the motor’s terminals, running, rated frequency; shown: the low end',
  source: NAMEPLATE_VOLTAGE_TOLERANCE.source,
  standing: 'published',
  example: {
    inputs: { rated: '460V' },
    gives: { value: 414, unit: 'V' },
    within: 0.5,
    source: 'a rooftop maker’s CHS072 sheet, table 8: 460 V, 414 to 506 V',
    standing: 'published',
  },
};
