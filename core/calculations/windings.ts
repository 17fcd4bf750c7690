import { ratio, resistance } from '../units/quantity-values.ts';
import type { Ratio, Resistance } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated, Caution } from './calculated.ts';
import { OHMMETER_RESOLUTION } from './electrical-defaults.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

export type Terminal = '1' | '2' | '3';

export interface WindingTerminals {
  readonly common: Terminal;
  readonly run: Terminal;
  readonly start: Terminal;
  /** The highest reading less the other two: zero where they add up. */
  readonly mismatch: Resistance;
}

interface Pair {
  readonly ohms: Resistance;
  /** The terminal that this pair leaves out. */
  readonly without: Terminal;
}

/**
 * Which of three unmarked terminals of a single-phase compressor is which. Run to start goes through both
 * windings and reads highest, so common is the terminal it leaves out; of common's two readings the lower goes
 * to run. Named by rank even where the sum is off, with a warning: a popular example (7, 8, 6) does not add up.
 * Alike readings are refused: a three-phase or inverter motor has three of the same.
 */
export function windingTerminals(input: {
  readonly oneTwo: Resistance;
  readonly oneThree: Resistance;
  readonly twoThree: Resistance;
  readonly resolution?: Resistance;
}): Calculated<WindingTerminals> {
  const pairs: Pair[] = [
    { ohms: input.oneTwo, without: '3' },
    { ohms: input.oneThree, without: '2' },
    { ohms: input.twoThree, without: '1' },
  ];
  const [high, middle, low] = pairs.sort((a, b) => b.ohms - a.ohms);
  if (high === undefined || middle === undefined || low === undefined || !(low.ohms > 0)) {
    return refused('notPositive');
  }
  const resolution = input.resolution ?? OHMMETER_RESOLUTION.value;
  if (!isAbove(high, middle, resolution) || !isAbove(middle, low, resolution)) {
    return refused('ruleDoesNotApply');
  }
  const mismatch = resistance(high.ohms - middle.ohms - low.ohms);
  // The middle reading is common to start, so the terminal that it leaves out is run.
  return known(
    { common: high.without, run: middle.without, start: low.without, mismatch },
    'deadAndDisconnected',
    ...sumCaution(mismatch, resolution),
  );
}

/** Apart by what the meter resolves, or a rank means nothing; a hair for the binary fraction. */
const isAbove = (a: Pair, b: Pair, resolution: Resistance): boolean =>
  a.ohms - b.ohms > resolution - 1e-9;

/** Each of the three readings may be off by what the meter resolves. */
const sumCaution = (mismatch: Resistance, resolution: Resistance): Caution[] =>
  Math.abs(mismatch) > 3 * resolution + 1e-9 ? ['sumDoesNotAdd'] : [];

/** `open`: the meter shows no path. */
export type WindingReading = Resistance | 'open';

export type WindingState =
  'addsUp' | 'doesNotAddUp' | 'overloadOpen' | 'startOpen' | 'runOpen' | 'open' | 'contradiction';

export interface WindingSum {
  readonly state: WindingState;
  /** The share of run to start that the other two do not account for: all of it where a path is open. */
  readonly unaccounted: Ratio;
}

/** Whether the windings between marked terminals are whole. An open overload is no failed winding. */
export function windingSum(input: {
  readonly commonRun: WindingReading;
  readonly commonStart: WindingReading;
  readonly runStart: WindingReading;
  readonly resolution?: Resistance;
}): Calculated<WindingSum> {
  const { commonRun, commonStart, runStart } = input;
  if ([commonRun, commonStart, runStart].some((each) => each !== 'open' && !(each > 0))) {
    return refused('notPositive');
  }
  if (commonRun === 'open' || commonStart === 'open' || runStart === 'open') {
    return openWinding({ commonRun, commonStart, runStart });
  }
  const mismatch = resistance(runStart - commonRun - commonStart);
  const cautions = sumCaution(mismatch, input.resolution ?? OHMMETER_RESOLUTION.value);
  const state = cautions.length === 0 ? 'addsUp' : 'doesNotAddUp';
  const unaccounted = ratio(Math.abs(mismatch) / runStart);
  return known({ state, unaccounted }, 'deadAndDisconnected', ...cautions);
}

type OpenPattern = `${'run' | '-'} ${'start' | '-'} ${'both' | '-'}`;

/** By which readings are open: common to run, common to start, run to start. */
const OPEN_STATES: Record<Exclude<OpenPattern, '- - -'>, WindingState> = {
  'run start -': 'overloadOpen',
  'run start both': 'open',
  '- start both': 'startOpen',
  'run - both': 'runOpen',
  // One path of three cannot be missing alone: any two of them join the third pair.
  'run - -': 'contradiction',
  '- start -': 'contradiction',
  '- - both': 'contradiction',
};

function openWinding(readings: {
  readonly commonRun: WindingReading;
  readonly commonStart: WindingReading;
  readonly runStart: WindingReading;
}): Calculated<WindingSum> {
  const run = readings.commonRun === 'open' ? 'run' : '-';
  const start = readings.commonStart === 'open' ? 'start' : '-';
  const both = readings.runStart === 'open' ? 'both' : '-';
  const pattern: OpenPattern = `${run} ${start} ${both}`;
  if (pattern === '- - -') return refused('ruleDoesNotApply');
  const state = OPEN_STATES[pattern];
  // Every path open can be the overload together with a winding: cool it before it is condemned.
  const mayBeOverload = state === 'overloadOpen' || state === 'open';
  return known(
    { state, unaccounted: ratio(1) },
    'deadAndDisconnected',
    ...(mayBeOverload ? (['overloadMayBeOpen'] as const) : []),
  );
}

export const WINDING_CONFLICT =
  'some rotary compressors are wound with start lower than run (0.5 and 1.2 Ω measured on one: industrialmonitordirect.com, Winding resistance readings): the plate or diagram comes first';

export const windingTerminalsFormula: Formula = {
  id: 'windingTerminals',
  name: 'common, run and start of three terminals',
  equation: 'RS = CR + CS; RS highest, CR lowest',
  symbols: symbols(
    ['RS', 'run to start, the highest reading', 'Ω'],
    ['CS', 'common to start, the middle reading', 'Ω'],
    ['CR', 'common to run, the lowest reading', 'Ω'],
  ),
  range:
    'single-phase compressor, power locked out, leads off, shell cool; shown: the highest reading less the other two',
  source:
    'aircold.fergusonhvac.com, Compressor common, run, start; oceanhvaclab.com, How to identify C, S and R',
  standing: 'published',
  example: {
    inputs: { oneTwo: '6ohm', oneThree: '2ohm', twoThree: '4ohm' },
    gives: { value: 0, unit: 'ohm' },
    within: 0.001,
    source:
      'oceanhvaclab.com, How to identify C, S and R: 6, 2 and 4 Ω give C 3, R 1, S 2 and add up',
    standing: 'published',
  },
};

export const windingSumFormula: Formula = {
  id: 'windingSum',
  name: 'sum test of the windings',
  equation: 'RS − CR − CS = 0',
  symbols: symbols(
    ['RS', 'run to start', 'Ω'],
    ['CR', 'common to run', 'Ω'],
    ['CS', 'common to start', 'Ω'],
  ),
  range:
    'marked terminals, power locked out, leads off, shell cool; within three times what the meter resolves; shown: the share of RS not accounted for, all of it with an open path',
  source:
    'aircold.fergusonhvac.com, Compressor common, run, start; an ice machine maker’s manual 80-0111-9, page 176',
  standing: 'published',
  example: {
    inputs: { commonRun: '4ohm', commonStart: '11ohm', runStart: '15ohm' },
    gives: { value: 0, unit: 'percent' },
    within: 0.001,
    source: 'aircold.fergusonhvac.com, Compressor common, run, start: 11 + 4 = 15',
    standing: 'published',
  },
};
