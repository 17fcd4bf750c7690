/** What a shop may set otherwise for tests and evacuation, each with where the default comes from. */
import {
  absolutePressure,
  differenceF,
  duration,
  pressureDifference,
} from '../units/quantity-values.ts';
import type { AbsolutePressure, Duration, Ratio } from '../units/quantity-values.ts';
import { ratio } from '../units/quantity-values.ts';
import type { Standing } from './formula.ts';

const KPA_PER_PSI = 6.894757;
const KPA_PER_MICRON = 0.0001333224;

export const microns = (count: number): AbsolutePressure =>
  absolutePressure(count * KPA_PER_MICRON);

/** Common practice: a dial is read to the pound, a clamp thermometer to two degrees of the gas. */
export const NITROGEN_TEST = {
  gaugeError: pressureDifference(KPA_PER_PSI),
  temperatureError: differenceF(2),
} as const;

export interface DecayDefaults {
  /** Tight when the last reading is at or below this … */
  readonly tightUpTo: AbsolutePressure;
  /** … after at least this long with the pump valved off. */
  readonly atLeast: Duration;
  /** Late rise over early rise: above it the rise has hardly slowed. */
  readonly leakAbove: Ratio;
  /** Below it the rise has levelled off. */
  readonly levelBelow: Ratio;
  /** A plateau this near the vapour pressure of water at the coldest spot is water. */
  readonly moistureWithin: Ratio;
  readonly source: string;
  readonly standing: Standing;
}

export const VACUUM_DECAY: DecayDefaults = {
  tightUpTo: microns(500),
  atLeast: duration(10),
  leakAbove: ratio(0.7),
  levelBelow: ratio(0.4),
  moistureWithin: ratio(0.3),
  source:
    '500 micron or less after 10 min, since 1,000 is loose for POE oil: common practice (one maker holds 500 for 5 min: manualarchiveguide.com, page 36)',
  standing: 'common practice',
};
