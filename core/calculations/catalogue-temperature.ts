/** Catalogue entries of food temperatures and times, pull-down, and temperature sensors. */
import { fromBase } from '../units/convert.ts';
import * as values from '../units/quantity-values.ts';
import {
  answer,
  both,
  DIFFERENCE,
  plain,
  TEMPERATURE,
  temperatureIfGiven,
} from './catalogue-entry.ts';
import { temperatureOf } from './catalogue-entry.ts';
import type { Entry } from './catalogue-entry.ts';
import {
  atmosphereOf,
  baseOf,
  choiceOf,
  needBase,
  needChoice,
  needSeries,
  systemOf,
} from './catalogue-inputs.ts';
import type { InputValues } from './catalogue-inputs.ts';
import { ALTITUDE, choice, counted, optional, resistance, series } from './catalogue-keys.ts';
import { temperature, temperatureDifference } from './catalogue-keys.ts';
import { COLD_STORES, coldHolding, coldHoldingFormula, FOOD_TEMPERATURES } from './food-times.ts';
import { foodCooling, foodCoolingFormula, outageTime, outageTimeFormula } from './food-times.ts';
import { timeControl, timeControlFormula } from './food-times.ts';
import { PLATINUM_CLASSES, platinumResistance, platinumResistanceFormula } from './platinum.ts';
import { platinumTemperature, platinumTemperatureFormula } from './platinum.ts';
import { platinumTolerance, platinumToleranceFormula } from './platinum.ts';
import { timeToTarget, timeToTargetFormula } from './time-to-target.ts';
import { pullDownFit, pullDownFitFormula, pullDownTime, pullDownTimeFormula } from './pull-down.ts';
import { steinhartHart, steinhartHartFormula, thermistorResistance } from './thermistor.ts';
import { thermistorResistanceFormula, thermistorTemperature } from './thermistor.ts';
import { thermistorTemperatureFormula } from './thermistor.ts';
import { boilingPointCheck, boilingPointCheckFormula, iceBathCheck } from './thermometer-checks.ts';
import { iceBathCheckFormula } from './thermometer-checks.ts';

const HOURS = both('h');
const READINGS = series(
  'readings',
  { at: { dimension: 'duration', bare: 'min' }, value: { dimension: 'temperature' } },
  '0min:60F,60min:53F,120min:48F',
);
const durationOf = (inputs: InputValues, key: string): values.Duration =>
  values.duration(needBase(inputs, key));
const isOver = (left: number): string => (left < 0 ? 'runOut' : 'left');

const FOOD: readonly Entry[] = [
  {
    formula: coldHoldingFormula,
    keys: [temperature('product')],
    units: DIFFERENCE,
    run: (inputs) =>
      answer(coldHolding(temperatureOf(inputs, 'product')), ({ over, verdict }) => ({
        base: over,
        findings: { verdict },
        otherSource: FOOD_TEMPERATURES.coldHold.otherSource,
      })),
  },
  {
    formula: timeControlFormula,
    keys: [
      ...[temperature('start'), temperature('highest'), counted('elapsed', 'duration', 'h')],
      choice('procedure', ['writtenBefore', 'none']),
    ],
    units: HOURS,
    run: (inputs) => {
      const found = timeControl({
        start: temperatureOf(inputs, 'start'),
        highest: temperatureOf(inputs, 'highest'),
        elapsed: durationOf(inputs, 'elapsed'),
        procedureBefore: choiceOf(inputs, 'procedure', ['writtenBefore']) !== undefined,
      });
      return answer(found, ({ left, limit }) => ({
        base: left,
        also: { limit },
        findings: { time: isOver(left) },
      }));
    },
  },
  {
    formula: foodCoolingFormula,
    keys: [READINGS, choice('from', ['cooked', 'ambientIngredients'])],
    units: HOURS,
    run: (inputs) => {
      const found = foodCooling({
        readings: needSeries(inputs, 'readings').map(({ at, value }) => ({
          minutes: at,
          product: values.temperature(value),
        })),
        from: needChoice(inputs, 'from', ['cooked', 'ambientIngredients'] as const),
      });
      return answer(found, ({ taken, firstStep, whole }) => ({
        base: taken,
        findings: { firstStep, whole },
      }));
    },
  },
  {
    formula: outageTimeFormula,
    keys: [choice('store', COLD_STORES), counted('elapsed', 'duration', 'h')],
    units: HOURS,
    run: (inputs) =>
      answer(
        outageTime(needChoice(inputs, 'store', COLD_STORES), durationOf(inputs, 'elapsed')),
        ({ left, limit }) => ({ base: left, also: { limit }, findings: { time: isOver(left) } }),
      ),
  },
];

const PULL_DOWN: readonly Entry[] = [
  {
    formula: pullDownTimeFormula,
    keys: [
      ...[temperature('start'), temperature('final'), temperature('target')],
      counted('timeConstant', 'duration', 'h'),
    ],
    units: HOURS,
    run: (inputs) =>
      plain(
        pullDownTime({
          start: temperatureOf(inputs, 'start'),
          final: temperatureOf(inputs, 'final'),
          target: temperatureOf(inputs, 'target'),
          timeConstant: durationOf(inputs, 'timeConstant'),
        }),
      ),
  },
  {
    formula: pullDownFitFormula,
    keys: [
      ...[READINGS, temperature('target'), optional(temperature('final'))],
      optional(temperatureDifference('readingError')),
    ],
    units: HOURS,
    run: (inputs) => {
      const final = temperatureIfGiven(inputs, 'final');
      const error = baseOf(inputs, 'readingError');
      const found = pullDownFit({
        readings: needSeries(inputs, 'readings').map(({ at, value }) => ({
          minutes: at,
          box: values.temperature(value),
        })),
        target: temperatureOf(inputs, 'target'),
        ...(final === undefined ? {} : { final }),
        ...(error === undefined ? {} : { error: values.temperatureDifference(error) }),
      });
      return answer(found, ({ toTarget, timeConstant, uncertainty, final: end }) => ({
        base: toTarget,
        also: { timeConstant, ...(uncertainty === null ? {} : { uncertainty }) },
        findings: { uncertainty: uncertainty === null ? 'notBounded' : 'bounded' },
        beside: { levelsOffAt: fromBase(end, TEMPERATURE[systemOf(inputs)]) },
      }));
    },
  },
  {
    formula: timeToTargetFormula,
    keys: [READINGS, temperature('target')],
    units: both('min'),
    run: (inputs) => {
      const found = timeToTarget({
        readings: needSeries(inputs, 'readings').map(({ at, value }) => ({
          minutes: at,
          box: values.temperature(value),
        })),
        target: temperatureOf(inputs, 'target'),
      });
      return answer(found, ({ toTarget, uncertainty, basis }) => ({
        base: toTarget,
        ...(uncertainty === null ? {} : { also: { uncertainty } }),
        findings: { basis },
      }));
    },
  },
];

const NOMINAL_KEY = optional(resistance('nominal'));
const nominalOf = (inputs: InputValues) => {
  const nominal = baseOf(inputs, 'nominal');
  return nominal === undefined ? {} : { nominal: values.resistance(nominal) };
};

const BETA_KEYS = [
  resistance('rated'),
  optional(temperature('ratedAt')),
  counted('beta', 'temperatureDifference', 'dC'),
];
const betaOf = (inputs: InputValues) => {
  const ratedAt = temperatureIfGiven(inputs, 'ratedAt');
  return {
    rated: values.resistance(needBase(inputs, 'rated')),
    beta: values.temperatureDifference(needBase(inputs, 'beta')),
    ...(ratedAt === undefined ? {} : { ratedAt }),
  };
};
const resistanceOf = (inputs: InputValues): values.Resistance =>
  values.resistance(needBase(inputs, 'resistance'));

const SENSORS: readonly Entry[] = [
  {
    formula: platinumResistanceFormula,
    keys: [temperature('temperature'), NOMINAL_KEY],
    units: both('ohm'),
    run: (inputs) =>
      plain(platinumResistance({ at: temperatureOf(inputs, 'temperature'), ...nominalOf(inputs) })),
  },
  {
    formula: platinumTemperatureFormula,
    keys: [resistance('resistance'), NOMINAL_KEY],
    units: TEMPERATURE,
    run: (inputs) =>
      plain(platinumTemperature({ resistance: resistanceOf(inputs), ...nominalOf(inputs) })),
  },
  {
    formula: platinumToleranceFormula,
    keys: [choice('class', PLATINUM_CLASSES), temperature('temperature')],
    units: DIFFERENCE,
    run: (inputs) =>
      plain(
        platinumTolerance(
          needChoice(inputs, 'class', PLATINUM_CLASSES),
          temperatureOf(inputs, 'temperature'),
        ),
      ),
  },
  {
    formula: thermistorResistanceFormula,
    keys: [...BETA_KEYS, temperature('temperature')],
    units: both('ohm'),
    run: (inputs) =>
      plain(thermistorResistance({ ...betaOf(inputs), at: temperatureOf(inputs, 'temperature') })),
  },
  {
    formula: thermistorTemperatureFormula,
    keys: [...BETA_KEYS, resistance('resistance')],
    units: TEMPERATURE,
    run: (inputs) =>
      plain(thermistorTemperature({ ...betaOf(inputs), resistance: resistanceOf(inputs) })),
  },
  {
    formula: steinhartHartFormula,
    keys: [
      series(
        'points',
        { at: { dimension: 'temperature' }, value: { dimension: 'resistance', bare: 'ohm' } },
        '0C:32650ohm,25C:10000ohm,50C:3603ohm',
      ),
      resistance('resistance'),
    ],
    units: TEMPERATURE,
    run: (inputs) => {
      const found = steinhartHart({
        points: needSeries(inputs, 'points').map(({ at, value }) => ({
          at: values.temperature(at),
          resistance: values.resistance(value),
        })),
        resistance: resistanceOf(inputs),
      });
      return answer(found, ({ temperature: base, points }) => ({ base, findings: { points } }));
    },
  },
];

const toleranceOf = (inputs: InputValues) => {
  const tolerance = baseOf(inputs, 'tolerance');
  return tolerance === undefined ? {} : { tolerance: values.temperatureDifference(tolerance) };
};

const CHECKS: readonly Entry[] = [
  {
    formula: iceBathCheckFormula,
    keys: [temperature('reading'), optional(temperatureDifference('tolerance'))],
    units: DIFFERENCE,
    run: (inputs) =>
      answer(
        iceBathCheck({ reading: temperatureOf(inputs, 'reading'), ...toleranceOf(inputs) }),
        ({ error, verdict }) => ({ base: error ?? 0, findings: { verdict } }),
      ),
  },
  {
    formula: boilingPointCheckFormula,
    keys: [
      ...[optional(temperature('reading')), optional(temperatureDifference('tolerance'))],
      ALTITUDE,
    ],
    units: TEMPERATURE,
    run: (inputs) => {
      const reading = temperatureIfGiven(inputs, 'reading');
      const found = boilingPointCheck({
        atmosphere: atmosphereOf(inputs),
        ...(reading === undefined ? {} : { reading }),
        ...toleranceOf(inputs),
      });
      return answer(found, ({ expected, error, verdict }) => ({
        base: expected,
        findings: { verdict },
        ...(error === null
          ? {}
          : { beside: { error: fromBase(error, DIFFERENCE[systemOf(inputs)]) } }),
        otherSource:
          'kitchen tables count 1.8 °F for a thousand feet and are up to 0.2 °F from standard air',
      }));
    },
  },
];

export const TEMPERATURE_ENTRIES: readonly Entry[] = [...FOOD, ...PULL_DOWN, ...SENSORS, ...CHECKS];
