/** Catalogue entries of windings, capacitors and insulation. */
import * as values from '../units/quantity-values.ts';
import { bleedWait, bleedWaitFormula } from './capacitors.ts';
import { capacitorTolerance, capacitorToleranceFormula } from './capacitors.ts';
import { runCapacitance, runCapacitanceFormula } from './capacitors.ts';
import { amps, ifGiven, ohms, volts } from './catalogue-electrical-inputs.ts';
import { answer, both, plain } from './catalogue-entry.ts';
import type { Entry } from './catalogue-entry.ts';
import { badInput, baseOf, needBase, needChoice } from './catalogue-inputs.ts';
import type { InputValues } from './catalogue-inputs.ts';
import { capacitance, choice, counted, current, optional } from './catalogue-keys.ts';
import { resistance, voltage } from './catalogue-keys.ts';
import { sourced } from './catalogue-sourced.ts';
import { BLEED_RESISTOR, OTHER_FLOORS } from './electrical-defaults.ts';
import type { CapacitorKind, CompressorBuild } from './electrical-defaults.ts';
import { insulationFloor, insulationFloorFormula } from './insulation.ts';
import { insulationRatio, insulationRatioFormula } from './insulation.ts';
import { WINDING_CONFLICT, windingSum, windingSumFormula } from './windings.ts';
import { windingTerminals, windingTerminalsFormula } from './windings.ts';
import type { WindingReading } from './windings.ts';

const CAPACITOR_KINDS: readonly CapacitorKind[] = ['run', 'start'];
const BUILDS: readonly CompressorBuild[] = [
  'scrollOrSemiHermetic',
  'smallHermetic',
  'centrifugal',
  'inverter',
];

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
