import { absolutePressure } from '../units/quantity-values.ts';
import type { AbsolutePressure, Temperature } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated, Caution } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';
import { microns, VACUUM_DECAY } from './vacuum-defaults.ts';
import type { DecayDefaults } from './vacuum-defaults.ts';
import { isIce, waterVapourPressure } from './water-vapour.ts';

export interface DecayReading {
  readonly minutes: number;
  readonly pressure: AbsolutePressure;
}

export type DecayVerdict =
  'tight' | 'leak' | 'moisture' | 'offGassing' | 'moistureOrOffGassing' | 'readLonger';

export interface Decay {
  readonly verdict: DecayVerdict;
  /** Last reading less the first. */
  readonly rise: AbsolutePressure;
  readonly minutes: number;
  /** Rise a minute in the last half of the time over that in the first half. */
  readonly slowing: number;
}

/** A plateau between these is water by the trade’s text; a lower one is mostly oil giving off refrigerant. */
const WET_FROM = microns(1000);

function pressureAt(readings: readonly DecayReading[], minutes: number): number {
  const after = readings.findIndex((reading) => reading.minutes >= minutes);
  const [from, to] = [readings[Math.max(0, after - 1)], readings[after]];
  if (from === undefined || to === undefined || to.minutes === from.minutes)
    return to?.pressure ?? NaN;
  const share = (minutes - from.minutes) / (to.minutes - from.minutes);
  return from.pressure + share * (to.pressure - from.pressure);
}

const isInOrder = (readings: readonly DecayReading[]): boolean =>
  readings.every(
    ({ minutes, pressure }, at) =>
      pressure >= 0 && minutes > (readings[at - 1]?.minutes ?? -Infinity),
  );

/** What a plateau is made of: water stands at its vapour pressure at the coldest spot. */
function plateauOf(
  last: AbsolutePressure,
  coldest: Temperature | undefined,
  by: DecayDefaults,
): DecayVerdict {
  const water = coldest === undefined ? null : waterVapourPressure(coldest);
  if (water?.kind === 'known') {
    return Math.abs(last / water.value - 1) <= by.moistureWithin
      ? 'moisture'
      : 'moistureOrOffGassing';
  }
  return last >= WET_FROM ? 'moistureOrOffGassing' : 'offGassing';
}

/**
 * What a rise after valving off the pump comes from: a leak goes on rising, water and off-gassing level off.
 * Three readings or more, in order; the first and the last are enough to call it tight.
 */
export function vacuumDecay(input: {
  readonly readings: readonly DecayReading[];
  readonly coldest?: Temperature;
  readonly settings?: Partial<DecayDefaults>;
}): Calculated<Decay> {
  const { readings, coldest } = input;
  const by = { ...VACUUM_DECAY, ...input.settings };
  const [first, last] = [readings[0], readings.at(-1)];
  if (readings.length < 2 || first === undefined || last === undefined) {
    return refused('tooFewReadings');
  }
  if (!isInOrder(readings)) return refused('readingsDoNotFit');
  const minutes = last.minutes - first.minutes;
  const isTight = last.pressure <= by.tightUpTo && minutes >= by.atLeast;
  if (readings.length < 3 && !isTight) return refused('tooFewReadings');
  const middle = pressureAt(readings, first.minutes + minutes / 2);
  const early = middle - first.pressure;
  const slowing = early <= 0 ? 0 : (last.pressure - middle) / early;
  const verdict = verdictOf({ last, minutes, slowing, early }, coldest, by);
  return known(
    { verdict, rise: absolutePressure(last.pressure - first.pressure), minutes, slowing },
    ...cautionsOf(verdict, coldest),
  );
}

function verdictOf(
  {
    last,
    minutes,
    slowing,
    early,
  }: { last: DecayReading; minutes: number; slowing: number; early: number },
  coldest: Temperature | undefined,
  by: DecayDefaults,
): DecayVerdict {
  if (last.pressure <= by.tightUpTo) return minutes >= by.atLeast ? 'tight' : 'readLonger';
  if (early <= 0) return 'readLonger';
  if (slowing >= by.leakAbove) return 'leak';
  return slowing <= by.levelBelow ? plateauOf(last.pressure, coldest, by) : 'readLonger';
}

function cautionsOf(verdict: DecayVerdict, coldest: Temperature | undefined): Caution[] {
  const wet = verdict === 'moisture' || verdict === 'moistureOrOffGassing';
  const frozen = wet && coldest !== undefined && isIce(coldest);
  return [...(frozen ? (['iceInSystem'] as const) : []), 'noPowerInVacuum'];
}

export const vacuumDecayFormula: Formula = {
  id: 'vacuumDecay',
  name: 'what a rising vacuum comes from',
  equation:
    'slowing = (p(end) − p(middle)) / (p(middle) − p(start)); tight: p(end) ≤ limit; leak: slowing ≥ 0.7; levelled off: slowing ≤ 0.4',
  symbols: symbols(
    ['p', 'vacuum with the pump valved off, absolute', 'micron'],
    ['limit', 'what counts as tight after at least 10 min', 'micron'],
  ),
  range:
    'three readings or more (two where it is tight) from a vacuum of 500 micron or so, pump valved off; limits and slopes are a shop’s setting',
  source:
    'hvacspecialists.info, Deep vacuum dehydration method (a leak goes on rising, moisture levels off); a transport maker’s genset manual, Pressure rise test; slopes: common practice',
  standing: 'published',
  example: {
    inputs: { readings: '0min:300micron,5min:330micron,10min:350micron' },
    gives: { value: 50, unit: 'micron' },
    within: 0.01,
    source: '350 less 300 micron; 500 or less after 10 min is tight by common practice',
    standing: 'common practice',
  },
};
