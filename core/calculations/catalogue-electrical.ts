/** Catalogue entries of the supply and of what it feeds. */
import * as values from '../units/quantity-values.ts';
import { minimumCircuitAmpacity, minimumCircuitAmpacityFormula } from './ampacity.ts';
import { ratedLoadCurrent, ratedLoadCurrentFormula } from './ampacity.ts';
import { amps, ifGiven, ohms, volts } from './catalogue-electrical-inputs.ts';
import { answer, both, plain } from './catalogue-entry.ts';
import type { Entry } from './catalogue-entry.ts';
import { needBase, needChoice } from './catalogue-inputs.ts';
import type { InputValues } from './catalogue-inputs.ts';
import {
  choice,
  counted,
  current,
  optional,
  power as powerKey,
  resistance,
  voltage,
} from './catalogue-keys.ts';
import { other } from './catalogue-sourced.ts';
import {
  CURRENT_IMBALANCE_LIMIT,
  DERATING_CURVE,
  NAMEPLATE_VOLTAGE_TOLERANCE,
  RATED_LOAD_DIVISOR,
  VOLTAGE_IMBALANCE_LIMIT,
} from './electrical-defaults.ts';
import { heaterCurrent, heaterCurrentFormula } from './heaters.ts';
import { heaterPower, heaterPowerFormula } from './heaters.ts';
import {
  heaterResistance,
  heaterResistanceByAmps,
  heaterResistanceByAmpsFormula,
  heaterResistanceFormula,
} from './heaters.ts';
import { currentImbalance, currentImbalanceFormula } from './imbalance.ts';
import { imbalanceDerating, imbalanceDeratingFormula } from './imbalance.ts';
import { imbalanceHeating, imbalanceHeatingFormula } from './imbalance.ts';
import { imbalanceOrigin, imbalanceOriginFormula } from './imbalance.ts';
import { voltageImbalance, voltageImbalanceFormula } from './imbalance.ts';
import { apparentPower, apparentPowerFormula, power, powerFormula } from './power.ts';
import type { Phases } from './power.ts';
import { motorVoltage, motorVoltageFormula } from './supply-voltage.ts';
import { SUPPLY_CONFLICT, supplyVoltage, supplyVoltageFormula } from './supply-voltage.ts';
import type { SupplyPoint } from './supply-voltage.ts';

const PHASE_COUNTS: readonly Phases[] = ['single', 'three'];
const POINTS: readonly SupplyPoint[] = ['service', 'utilization'];

const LINES = [current('one'), current('two'), current('three')];
const LINES_AFTER = [current('afterOne'), current('afterTwo'), current('afterThree')];
const IMBALANCE = counted('imbalance', 'ratio', 'percent');

const linesOf = (inputs: InputValues, [one, two, three]: readonly [string, string, string]) => ({
  one: amps(inputs, one),
  two: amps(inputs, two),
  three: amps(inputs, three),
});

export const SUPPLY_ENTRIES: readonly Entry[] = [
  {
    formula: supplyVoltageFormula,
    keys: [voltage('nominal'), choice('point', POINTS), optional(voltage('measured'))],
    units: both('V'),
    run: (inputs) => {
      const found = supplyVoltage({
        nominal: volts(inputs, 'nominal'),
        point: needChoice(inputs, 'point', POINTS),
        ...ifGiven(inputs, 'measured', values.voltage),
      });
      return answer(found, ({ low, high, toleratedLow, toleratedHigh, range }) => ({
        base: low,
        also: { high, toleratedLow, toleratedHigh },
        ...(range === null ? {} : { findings: { range } }),
        otherSource: SUPPLY_CONFLICT,
      }));
    },
  },
  {
    formula: motorVoltageFormula,
    keys: [voltage('rated'), optional(voltage('ratedHigh')), optional(voltage('measured'))],
    units: both('V'),
    run: (inputs) => {
      const found = motorVoltage({
        rated: volts(inputs, 'rated'),
        ...ifGiven(inputs, 'ratedHigh', values.voltage),
        ...ifGiven(inputs, 'measured', values.voltage),
      });
      return answer(found, ({ low, high, verdict }) => ({
        base: low,
        also: { high },
        ...(verdict === null ? {} : { findings: { verdict } }),
        ...other(NAMEPLATE_VOLTAGE_TOLERANCE),
      }));
    },
  },
  {
    formula: voltageImbalanceFormula,
    keys: [voltage('ab'), voltage('bc'), voltage('ca')],
    units: both('percent'),
    run: (inputs) => {
      const leg = (key: string): values.Voltage => volts(inputs, key);
      const found = voltageImbalance({ ab: leg('ab'), bc: leg('bc'), ca: leg('ca') });
      return answer(found, (base) => ({ base, ...other(VOLTAGE_IMBALANCE_LIMIT) }));
    },
  },
  {
    formula: imbalanceDeratingFormula,
    keys: [IMBALANCE],
    units: both('percent'),
    run: (inputs) => {
      const imbalance = values.ratio(needBase(inputs, 'imbalance'));
      return answer(imbalanceDerating({ imbalance }), (base) => ({
        base,
        ...other(DERATING_CURVE),
      }));
    },
  },
  {
    formula: imbalanceHeatingFormula,
    keys: [IMBALANCE],
    units: both('percent'),
    run: (inputs) =>
      plain(imbalanceHeating({ imbalance: values.ratio(needBase(inputs, 'imbalance')) })),
  },
  {
    formula: currentImbalanceFormula,
    keys: LINES,
    units: both('percent'),
    run: (inputs) => {
      const found = currentImbalance(linesOf(inputs, ['one', 'two', 'three']));
      return answer(found, (base) => ({ base, ...other(CURRENT_IMBALANCE_LIMIT) }));
    },
  },
  {
    formula: imbalanceOriginFormula,
    keys: [...LINES, ...LINES_AFTER],
    units: both('percent'),
    run: (inputs) => {
      const before = linesOf(inputs, ['one', 'two', 'three']);
      const after = linesOf(inputs, ['afterOne', 'afterTwo', 'afterThree']);
      const origin = imbalanceOrigin({ before, after });
      if (origin.kind === 'refused') return origin;
      return answer(currentImbalance(after), (base) => ({
        base,
        findings: { origin: origin.value },
      }));
    },
  },
];

export const LOAD_ENTRIES: readonly Entry[] = [
  {
    formula: powerFormula,
    keys: [
      voltage('voltage'),
      current('current'),
      counted('powerFactor', 'ratio', 'ratio'),
      choice('phases', PHASE_COUNTS),
    ],
    units: both('W'),
    run: (inputs) =>
      plain(
        power({
          voltage: volts(inputs, 'voltage'),
          current: amps(inputs, 'current'),
          powerFactor: values.ratio(needBase(inputs, 'powerFactor')),
          phases: needChoice(inputs, 'phases', PHASE_COUNTS),
        }),
      ),
  },
  {
    formula: apparentPowerFormula,
    keys: [voltage('voltage'), current('current'), choice('phases', PHASE_COUNTS)],
    units: both('VA'),
    run: (inputs) =>
      plain(
        apparentPower({
          voltage: volts(inputs, 'voltage'),
          current: amps(inputs, 'current'),
          phases: needChoice(inputs, 'phases', PHASE_COUNTS),
        }),
      ),
  },
  {
    formula: minimumCircuitAmpacityFormula,
    keys: [current('largest'), current('others')],
    units: both('A'),
    run: (inputs) =>
      plain(
        minimumCircuitAmpacity({
          largest: amps(inputs, 'largest'),
          others: amps(inputs, 'others'),
        }),
      ),
  },
  {
    formula: ratedLoadCurrentFormula,
    keys: [current('maximumContinuous')],
    units: both('A'),
    run: (inputs) => {
      const found = ratedLoadCurrent({ maximumContinuous: amps(inputs, 'maximumContinuous') });
      return answer(found, ({ value, by144, by140 }) => ({
        base: value,
        also: { by144, by140 },
        ...other(RATED_LOAD_DIVISOR),
      }));
    },
  },
  {
    formula: heaterCurrentFormula,
    keys: [voltage('voltage'), resistance('resistance')],
    units: both('A'),
    run: (inputs) =>
      plain(
        heaterCurrent({
          voltage: volts(inputs, 'voltage'),
          resistance: ohms(inputs, 'resistance'),
        }),
      ),
  },
  {
    formula: heaterPowerFormula,
    keys: [voltage('voltage'), resistance('resistance')],
    units: both('W'),
    run: (inputs) =>
      plain(
        heaterPower({ voltage: volts(inputs, 'voltage'), resistance: ohms(inputs, 'resistance') }),
      ),
  },
  {
    formula: heaterResistanceFormula,
    keys: [voltage('voltage'), powerKey('power')],
    units: both('ohm'),
    run: (inputs) =>
      plain(
        heaterResistance({
          voltage: volts(inputs, 'voltage'),
          power: values.power(needBase(inputs, 'power')),
        }),
      ),
  },
  {
    formula: heaterResistanceByAmpsFormula,
    keys: [voltage('voltage'), current('current')],
    units: both('ohm'),
    run: (inputs) =>
      plain(
        heaterResistanceByAmps({
          voltage: volts(inputs, 'voltage'),
          current: amps(inputs, 'current'),
        }),
      ),
  },
];
