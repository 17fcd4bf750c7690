/** Catalogue entries of electrical work. */
import * as values from '../units/quantity-values.ts';
import { minimumCircuitAmpacity, minimumCircuitAmpacityFormula } from './ampacity.ts';
import { ratedLoadCurrent, ratedLoadCurrentFormula } from './ampacity.ts';
import { bleedWait, bleedWaitFormula } from './capacitors.ts';
import { capacitorTolerance, capacitorToleranceFormula } from './capacitors.ts';
import { runCapacitance, runCapacitanceFormula } from './capacitors.ts';
import { answer, both, plain } from './catalogue-entry.ts';
import type { Entry } from './catalogue-entry.ts';
import { badInput, baseOf, needBase, needChoice } from './catalogue-inputs.ts';
import type { InputValues } from './catalogue-inputs.ts';
import { capacitance, choice, counted, current, optional } from './catalogue-keys.ts';
import { resistance, voltage } from './catalogue-keys.ts';
import {
  BLEED_RESISTOR,
  CURRENT_IMBALANCE_LIMIT,
  DERATING_CURVE,
  NAMEPLATE_VOLTAGE_TOLERANCE,
  OTHER_FLOORS,
  RATED_LOAD_DIVISOR,
  VOLTAGE_IMBALANCE_LIMIT,
} from './electrical-defaults.ts';
import type { CapacitorKind, CompressorBuild } from './electrical-defaults.ts';
import type { Sourced } from './formula.ts';
import { heaterCurrent, heaterCurrentFormula } from './heaters.ts';
import { heaterPower, heaterPowerFormula } from './heaters.ts';
import { currentImbalance, currentImbalanceFormula } from './imbalance.ts';
import { imbalanceDerating, imbalanceDeratingFormula } from './imbalance.ts';
import { imbalanceHeating, imbalanceHeatingFormula } from './imbalance.ts';
import { imbalanceOrigin, imbalanceOriginFormula } from './imbalance.ts';
import { voltageImbalance, voltageImbalanceFormula } from './imbalance.ts';
import { insulationFloor, insulationFloorFormula } from './insulation.ts';
import { insulationRatio, insulationRatioFormula } from './insulation.ts';
import { apparentPower, apparentPowerFormula, power, powerFormula } from './power.ts';
import type { Phases } from './power.ts';
import { motorVoltage, motorVoltageFormula } from './supply-voltage.ts';
import { SUPPLY_CONFLICT, supplyVoltage, supplyVoltageFormula } from './supply-voltage.ts';
import type { SupplyPoint } from './supply-voltage.ts';
import { WINDING_CONFLICT, windingSum, windingSumFormula } from './windings.ts';
import { windingTerminals, windingTerminalsFormula } from './windings.ts';
import type { WindingReading } from './windings.ts';

const volts = (inputs: InputValues, key: string): values.Voltage =>
  values.voltage(needBase(inputs, key));
const amps = (inputs: InputValues, key: string): values.Current =>
  values.current(needBase(inputs, key));
const ohms = (inputs: InputValues, key: string): values.Resistance =>
  values.resistance(needBase(inputs, key));

/** An input as a property of its own name, or nothing at all where it was not given. */
const ifGiven = <Name extends string, Value>(
  inputs: InputValues,
  name: Name,
  brand: (base: number) => Value,
): Partial<Record<Name, Value>> => {
  const base = baseOf(inputs, name);
  const given: Partial<Record<Name, Value>> = {};
  if (base !== undefined) given[name] = brand(base);
  return given;
};

/** What a default was taken from, and what conflicts with it. */
const sourced = ({ source, standing, otherSource }: Sourced<unknown>) => ({
  source: `default: ${source} (${standing})`,
  ...(otherSource === undefined ? {} : { otherSource }),
});

const other = ({ otherSource }: Sourced<unknown>) =>
  otherSource === undefined ? {} : { otherSource };

const PHASE_COUNTS: readonly Phases[] = ['single', 'three'];
const POINTS: readonly SupplyPoint[] = ['service', 'utilization'];
const CAPACITOR_KINDS: readonly CapacitorKind[] = ['run', 'start'];
const BUILDS: readonly CompressorBuild[] = [
  'scrollOrSemiHermetic',
  'smallHermetic',
  'centrifugal',
  'inverter',
];

const LINES = [current('one'), current('two'), current('three')];
const LINES_AFTER = [current('afterOne'), current('afterTwo'), current('afterThree')];
const IMBALANCE = counted('imbalance', 'ratio', 'percent');

const linesOf = (inputs: InputValues, [one, two, three]: readonly [string, string, string]) => ({
  one: amps(inputs, one),
  two: amps(inputs, two),
  three: amps(inputs, three),
});

type WindingPair = 'commonRun' | 'commonStart' | 'runStart';
const WINDING_PAIRS: readonly WindingPair[] = ['commonRun', 'commonStart', 'runStart'];

/** Pairs between which the meter shows no path: said, since a reading left out is no reading. */
const OPEN_PAIRS: Readonly<Record<string, readonly WindingPair[]>> = {
  commonRun: ['commonRun'],
  commonStart: ['commonStart'],
  runStart: ['runStart'],
  commonRunAndCommonStart: ['commonRun', 'commonStart'],
  commonRunAndRunStart: ['commonRun', 'runStart'],
  commonStartAndRunStart: ['commonStart', 'runStart'],
  all: WINDING_PAIRS,
};

const isOpen = (inputs: InputValues, pair: WindingPair): boolean => {
  const named = inputs.get('open');
  return typeof named === 'string' && (OPEN_PAIRS[named] ?? []).includes(pair);
};

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

export const MOTOR_ENTRIES: readonly Entry[] = [
  {
    formula: windingTerminalsFormula,
    keys: [
      ...[resistance('oneTwo'), resistance('oneThree'), resistance('twoThree')],
      optional(resistance('resolution')),
    ],
    units: both('ohm'),
    run: (inputs) => {
      const found = windingTerminals({
        oneTwo: ohms(inputs, 'oneTwo'),
        oneThree: ohms(inputs, 'oneThree'),
        twoThree: ohms(inputs, 'twoThree'),
        ...ifGiven(inputs, 'resolution', values.resistance),
      });
      return answer(found, ({ common, run, start, mismatch }) => ({
        base: mismatch,
        findings: { common, run, start },
        otherSource: WINDING_CONFLICT,
      }));
    },
  },
  {
    formula: windingSumFormula,
    keys: [
      ...WINDING_PAIRS.map((pair) => optional(resistance(pair))),
      optional(choice('open', Object.keys(OPEN_PAIRS))),
      optional(resistance('resolution')),
    ],
    units: both('percent'),
    run: (inputs) => {
      const missing = WINDING_PAIRS.find((pair) => inputs.has(pair) === isOpen(inputs, pair));
      if (missing !== undefined) {
        return badInput(missing, `give ${missing}=…ohm, or name it in open= where no path reads`);
      }
      const reading = (pair: WindingPair): WindingReading =>
        isOpen(inputs, pair) ? 'open' : ohms(inputs, pair);
      const found = windingSum({
        commonRun: reading('commonRun'),
        commonStart: reading('commonStart'),
        runStart: reading('runStart'),
        ...ifGiven(inputs, 'resolution', values.resistance),
      });
      return answer(found, ({ state, unaccounted }) => ({
        base: unaccounted,
        findings: { state },
      }));
    },
  },
  {
    formula: runCapacitanceFormula,
    keys: [current('current'), voltage('voltage'), counted('frequency', 'frequency', 'Hz')],
    units: both('uF'),
    run: (inputs) =>
      plain(
        runCapacitance({
          current: amps(inputs, 'current'),
          voltage: volts(inputs, 'voltage'),
          frequency: values.frequency(needBase(inputs, 'frequency')),
        }),
      ),
  },
  {
    formula: capacitorToleranceFormula,
    keys: [
      capacitance('measured'),
      capacitance('rated'),
      choice('kind', CAPACITOR_KINDS),
      optional(counted('marked', 'ratio', 'percent')),
    ],
    units: both('percent'),
    run: (inputs) => {
      const found = capacitorTolerance({
        measured: values.capacitance(needBase(inputs, 'measured')),
        rated: values.capacitance(needBase(inputs, 'rated')),
        kind: needChoice(inputs, 'kind', CAPACITOR_KINDS),
        ...ifGiven(inputs, 'marked', values.ratio),
      });
      return answer(found, ({ off, verdict, from }) => ({
        base: off,
        findings: { verdict },
        ...(from === null ? {} : sourced(from)),
      }));
    },
  },
  {
    formula: bleedWaitFormula,
    keys: [capacitance('capacitance'), optional(resistance('resistance'))],
    units: both('s'),
    run: (inputs) => {
      const through = baseOf(inputs, 'resistance');
      const found = bleedWait({
        capacitance: values.capacitance(needBase(inputs, 'capacitance')),
        ...ifGiven(inputs, 'resistance', values.resistance),
      });
      return answer(found, (base) => ({
        base,
        ...(through === undefined ? sourced(BLEED_RESISTOR) : {}),
      }));
    },
  },
  {
    formula: insulationFloorFormula,
    keys: [resistance('measured'), voltage('voltage'), choice('build', BUILDS)],
    units: both('Mohm'),
    run: (inputs) => {
      const found = insulationFloor({
        measured: ohms(inputs, 'measured'),
        rated: volts(inputs, 'voltage'),
        build: needChoice(inputs, 'build', BUILDS),
      });
      return answer(found, ({ floor, verdict, from }) => ({
        base: floor,
        findings: { verdict },
        ...sourced(from),
        otherSource: OTHER_FLOORS,
      }));
    },
  },
  {
    formula: insulationRatioFormula,
    keys: [resistance('after10s'), resistance('after60s')],
    units: both('ratio'),
    run: (inputs) => {
      const found = insulationRatio({
        after10s: ohms(inputs, 'after10s'),
        after60s: ohms(inputs, 'after60s'),
      });
      return answer(found, (base) => ({
        base,
        otherSource:
          'IEEE 43’s polarisation index is 10 min over 1 min, another figure: from memory',
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
];
