import { temperatureDifference } from '../units/quantity-values.ts';
import type { Duration, Temperature, TemperatureDifference } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { STEADY } from './control-defaults.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

export interface Reading {
  readonly at: Duration;
  readonly value: Temperature;
}

export interface SteadyState {
  readonly state: 'steady' | 'drifting' | 'swinging' | 'tooShort';
  /** Along the straight line through the readings, from the first to the last. */
  readonly change: TemperatureDifference;
  /** The furthest reading from that line. */
  readonly swing: TemperatureDifference;
}

/** Whether a series has settled: no drift along its own straight line, no swing about it, for long enough. */
export function steadyState({
  readings,
}: {
  readonly readings: readonly Reading[];
}): Calculated<SteadyState> {
  const [first] = readings;
  const last = readings.at(-1);
  if (first === undefined || last === undefined || readings.length < 3) {
    return refused('ruleDoesNotApply');
  }
  if (readings.some(({ at }, index) => index > 0 && !(at > (readings[index - 1]?.at ?? 0)))) {
    return refused('notPositive');
  }
  const span = last.at - first.at;
  const { slope, swing } = lineThrough(readings);
  const change = temperatureDifference(slope * span);
  return known({ state: stateOf(span, change, swing), change, swing });
}

function stateOf(
  span: number,
  change: TemperatureDifference,
  swing: TemperatureDifference,
): SteadyState['state'] {
  const wanted = STEADY.value;
  if (Math.abs(change) > wanted.within) return 'drifting';
  if (swing > wanted.within) return 'swinging';
  return span < wanted.span ? 'tooShort' : 'steady';
}

/** Least squares: one odd reading tilts it less than the first and last alone would. */
function lineThrough(readings: readonly Reading[]): {
  slope: number;
  swing: TemperatureDifference;
} {
  const mean = (of: (reading: Reading) => number): number =>
    readings.reduce((sum, reading) => sum + of(reading), 0) / readings.length;
  const [time, level] = [mean(({ at }) => at), mean(({ value }) => value)];
  const spread = mean(({ at }) => (at - time) ** 2);
  const slope = mean(({ at, value }) => (at - time) * (value - level)) / spread;
  const off = readings.map(({ at, value }) => Math.abs(value - level - slope * (at - time)));
  return { slope, swing: temperatureDifference(Math.max(...off)) };
}

export const steadyStateFormula: Formula = {
  id: 'steadyState',
  name: 'whether a series has settled',
  equation: 'change = slope · span; swing = max |T − line|; both within 1 °F over 10 min',
  symbols: symbols(
    ['slope', 'least-squares straight line through the readings', 'K/min'],
    ['span', 'from the first to the last', 'min'],
    ['T', 'each reading', '°C'],
  ),
  range: 'three readings or more; before a verdict on any pressure; shown: the change',
  source: 'least squares',
  standing: 'computed',
  example: {
    inputs: { readings: '0min:40F,5min:39F,10min:38F' },
    gives: { value: -2, unit: 'dF' },
    within: 0.001,
    source: 'a straight fall of 1 °F in 5 min, by hand',
    standing: 'computed',
  },
};
