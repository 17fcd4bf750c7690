import { differenceF, duration, temperature } from '../units/quantity-values.ts';
import type { Duration, Temperature, TemperatureDifference } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated, CalculationRefusal } from './calculated.ts';
import { fitExponential } from './exponential-fit.ts';
import type { Exponential, Sample } from './exponential-fit.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

/** Time for a box to come down to a target, by its time constant. */
export function pullDownTime(input: {
  readonly start: Temperature;
  /** What it would level off at. */
  readonly final: Temperature;
  readonly target: Temperature;
  readonly timeConstant: Duration;
}): Calculated<Duration> {
  const { start, final, target, timeConstant } = input;
  if (!(timeConstant > 0)) return refused('notPositive');
  const beyond = unreachable(target, final);
  if (beyond !== null) return beyond;
  if (start < target) return refused('readingsDoNotFit');
  const time = timeConstant * Math.log((start - final) / (target - final));
  return known(duration(time), 'pullDown', 'probeTheProduct');
}

/** A target at or below where the box levels off is never reached. */
function unreachable(target: Temperature, final: Temperature): CalculationRefusal | null {
  if (target > final) return null;
  return { kind: 'refused', reason: 'belowLimit', limit: final, unit: 'degC' };
}

export interface BoxReading {
  readonly minutes: number;
  readonly box: Temperature;
}

export interface PullDown {
  readonly timeConstant: Duration;
  readonly final: Temperature;
  /** From the last reading; below zero it is already there. */
  readonly toTarget: Duration;
  /** Of the time to the target; null where the readings do not bound it. */
  readonly uncertainty: Duration | null;
}

/** Common practice: a box thermometer is read to a degree. */
export const READING_ERROR = differenceF(1);

interface Question {
  readonly target: Temperature;
  readonly final?: Temperature;
}

/** From the first reading; null where the fit or the target has no answer. */
function timeTo(
  samples: readonly Sample[],
  { target, final }: Question,
): { time: number; fit: Exponential } | null {
  const fit = fitExponential(samples, final);
  if (fit === null || !(fit.size > 0)) return null;
  const share = (target - fit.end) / fit.size;
  return share > 0 ? { time: -fit.constant * Math.log(share), fit } : null;
}

/** Each reading moved by its error in turn, what the time then moves by added in quadrature. */
function spread(samples: readonly Sample[], question: Question, error: number): number | null {
  const at = timeTo(samples, question);
  if (at === null) return null;
  let total = 0;
  for (const index of samples.keys()) {
    const moved = samples.map((each, other) =>
      other === index ? { ...each, y: each.y + error } : each,
    );
    const there = timeTo(moved, question);
    if (there === null) return null;
    total += (there.time - at.time) ** 2;
  }
  return Math.sqrt(total);
}

/** The time constant of a box from three or more readings, and when it will be at the target. */
export function pullDownFit(
  input: {
    readonly readings: readonly BoxReading[];
    readonly error?: TemperatureDifference;
  } & Question,
): Calculated<PullDown> {
  const { readings, target, final, error = READING_ERROR } = input;
  const start = readings[0];
  if (readings.length < 3 || start === undefined) return refused('tooFewReadings');
  const inOrder = readings.every(
    ({ minutes }, at) => minutes > (readings[at - 1]?.minutes ?? -Infinity),
  );
  if (!inOrder || !(error > 0)) return refused('readingsDoNotFit');
  const samples = readings.map(({ minutes, box }) => ({ x: minutes - start.minutes, y: box }));
  const question = { target, ...(final === undefined ? {} : { final }) };
  const fit = fitExponential(samples, final);
  if (fit === null || !(fit.size > 0)) return refused('readingsDoNotFit');
  const end = temperature(fit.end);
  const found = timeTo(samples, question);
  if (found === null) return unreachable(target, end) ?? refused('readingsDoNotFit');
  const uncertainty = spread(samples, question, error);
  return known(
    {
      timeConstant: duration(fit.constant),
      final: end,
      toTarget: duration(found.time - (samples.at(-1)?.x ?? 0)),
      uncertainty: uncertainty === null ? null : duration(uncertainty),
    },
    'pullDown',
    'probeTheProduct',
  );
}

const SYMBOLS = symbols(
  ['T', 'temperature of the box', '°C'],
  ['T0', 'temperature at the start', '°C'],
  ['Tf', 'temperature it levels off at', '°C'],
  ['τ', 'time constant', 'h'],
  ['T1', 'target', '°C'],
);
const RANGE =
  'no defrost, no doors, no freezing of the product (a latent plateau is no exponential); the target above Tf';

export const pullDownTimeFormula: Formula = {
  id: 'pullDownTime',
  name: 'time to pull a box down',
  equation: 't = τ · ln((T0 − Tf) / (T1 − Tf))',
  symbols: SYMBOLS,
  range: RANGE,
  source: 'Newton’s law of cooling, from memory',
  standing: 'from memory',
  example: {
    inputs: { start: '60F', final: '35F', target: '41F', timeConstant: '3h' },
    gives: { value: 4.28, unit: 'h' },
    within: 0.005,
    source: '3 h × ln(25 / 6) by hand',
    standing: 'computed',
  },
};

export const pullDownFitFormula: Formula = {
  id: 'pullDownFit',
  name: 'when a box will be at its target, from its readings',
  equation:
    'T = Tf + (T0 − Tf) · e^(−t/τ) by least squares; then t = τ · ln((T0 − Tf) / (T1 − Tf))',
  symbols: SYMBOLS,
  range: `three readings or more, curved enough to tell τ (up to 20 times their span); ${RANGE}; each reading’s error carried through in quadrature`,
  source: 'Newton’s law of cooling, from memory; JCGM 100:2008, 5.1.2, for the uncertainty',
  standing: 'from memory',
  example: {
    inputs: { readings: '0h:60F,1h:52.9133F,2h:47.8354F,3h:44.197F', target: '41F' },
    gives: { value: 1.281, unit: 'h' },
    within: 0.005,
    source: '60 °F to 41 °F over 35 °F with 3 h takes 4.281 h by hand, of which 3 have passed',
    standing: 'computed',
  },
};
