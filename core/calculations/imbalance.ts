import { ratio } from '../units/quantity-values.ts';
import type { Current, Ratio, Voltage } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated, Caution } from './calculated.ts';
import {
  CURRENT_IMBALANCE_LIMIT,
  DERATING_CURVE,
  VOLTAGE_IMBALANCE_LIMIT,
  VOLTAGE_IMBALANCE_STOP,
} from './electrical-defaults.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

/** The largest deviation from the average of three, over that average; not (max − min) / average. */
function imbalanceOf(legs: readonly [number, number, number]): Calculated<Ratio> {
  if (legs.some((leg) => !(leg > 0))) return refused('notPositive');
  const average = (legs[0] + legs[1] + legs[2]) / 3;
  return known(ratio(Math.max(...legs.map((leg) => Math.abs(leg - average))) / average));
}

/** Of the three line-to-line voltages of a running motor. */
export function voltageImbalance(input: {
  readonly ab: Voltage;
  readonly bc: Voltage;
  readonly ca: Voltage;
}): Calculated<Ratio> {
  const found = imbalanceOf([input.ab, input.bc, input.ca]);
  if (found.kind === 'refused') return found;
  return known(found.value, 'liveWork', ...imbalanceCautions(found.value));
}

function imbalanceCautions(imbalance: Ratio): Caution[] {
  if (imbalance > VOLTAGE_IMBALANCE_STOP.value) return ['doNotOperate'];
  return imbalance > VOLTAGE_IMBALANCE_LIMIT.value ? ['aboveCompressorLimit'] : [];
}

interface LineCurrents {
  readonly one: Current;
  readonly two: Current;
  readonly three: Current;
}

/** Of the three line currents of a running motor. */
export function currentImbalance({ one, two, three }: LineCurrents): Calculated<Ratio> {
  const found = imbalanceOf([one, two, three]);
  if (found.kind === 'refused') return found;
  const above = found.value > CURRENT_IMBALANCE_LIMIT.value;
  return known(found.value, 'liveWork', ...(above ? (['aboveCompressorLimit'] as const) : []));
}

export type ImbalanceOrigin = 'supply' | 'motor' | 'undetermined';

/**
 * Whose imbalance it is, from the currents before and after all three motor leads are moved on by one line: line
 * 1 then feeds what line 3 fed before. What stays with the line is the supply's, what goes with the lead is the
 * motor's. Compared by the highest and the lowest of the three: the one furthest from the average is often a tie.
 */
export function imbalanceOrigin(input: {
  readonly before: LineCurrents;
  readonly after: LineCurrents;
}): Calculated<ImbalanceOrigin> {
  const [before, after] = [ranked(input.before), ranked(input.after)];
  if (before === null || after === null) return known('undetermined', 'liveWork');
  const moved = { high: (before.high + 1) % 3, low: (before.low + 1) % 3 };
  if (after.high === before.high && after.low === before.low) return known('supply', 'liveWork');
  if (after.high === moved.high && after.low === moved.low) return known('motor', 'liveWork');
  return known('undetermined', 'liveWork');
}

/** Which line carries most and which least; null where two are alike, or one is dead. */
function ranked({ one, two, three }: LineCurrents): { high: number; low: number } | null {
  const lines: readonly number[] = [one, two, three];
  if (new Set(lines).size < 3 || lines.some((line) => !(line > 0))) return null;
  return {
    high: lines.indexOf(Math.max(one, two, three)),
    low: lines.indexOf(Math.min(one, two, three)),
  };
}

/** The share of its rated load that a motor may carry at that imbalance; above 5 % it is not run at all. */
export function imbalanceDerating({ imbalance }: { readonly imbalance: Ratio }): Calculated<Ratio> {
  if (!(imbalance >= 0)) return refused('notPositive');
  if (imbalance > VOLTAGE_IMBALANCE_STOP.value) return refused('ruleDoesNotApply');
  const points = DERATING_CURVE.value;
  const after = points.findIndex(([at]) => at >= imbalance);
  const [low, high] = [points[after - 1], points[after]];
  if (low === undefined || high === undefined) return known(ratio(1));
  const along = (imbalance - low[0]) / (high[0] - low[0]);
  return known(ratio(low[1] + along * (high[1] - low[1])), ...imbalanceCautions(imbalance));
}

/** How much more the hottest winding rises in temperature: about twice the square of the percentage. */
export function imbalanceHeating({ imbalance }: { readonly imbalance: Ratio }): Calculated<Ratio> {
  if (!(imbalance >= 0)) return refused('notPositive');
  // Beyond 5 % the square was never meant to hold, and nothing should be running.
  if (imbalance > VOLTAGE_IMBALANCE_STOP.value) return refused('ruleDoesNotApply');
  return known(ratio(2 * 100 * imbalance ** 2), ...imbalanceCautions(imbalance));
}

export const voltageImbalanceFormula: Formula = {
  id: 'voltageImbalance',
  name: 'voltage imbalance',
  equation: 'imbalance = max |V − Vavg| / Vavg',
  symbols: symbols(['V', 'each line-to-line voltage', 'V'], ['Vavg', 'average of the three', 'V']),
  range: 'three-phase, line to line; compressor makers allow 2 %, above 5 % do not operate',
  source: 'NEMA MG-1 definition as printed in a chiller maker’s 30MPA manual; 5 %: xcela.ca',
  standing: 'published',
  example: {
    inputs: { ab: '243V', bc: '236V', ca: '238V' },
    gives: { value: 1.7, unit: 'percent' },
    within: 0.05,
    source: 'a chiller maker’s 30MPA manual, page 39: 239 V average, 4 V off, printed 1.7 %',
    standing: 'published',
  },
};

export const currentImbalanceFormula: Formula = {
  id: 'currentImbalance',
  name: 'current imbalance',
  equation: 'imbalance = max |I − Iavg| / Iavg',
  symbols: symbols(['I', 'each line current', 'A'], ['Iavg', 'average of the three', 'A']),
  range: 'three-phase motor at steady load; compressors 10 %, pumps 5 %',
  source: CURRENT_IMBALANCE_LIMIT.source,
  standing: 'published',
  example: {
    inputs: { one: '33A', two: '29A', three: '34A' },
    gives: { value: 9.4, unit: 'percent' },
    within: 0.05,
    source: 'a meter maker’s 43B manual, page 45: 32 A average, 3 A off, 9.4 %',
    standing: 'published',
  },
};

export const imbalanceOriginFormula: Formula = {
  id: 'imbalanceOrigin',
  name: 'whose imbalance it is',
  equation: 'highest and lowest stay with the line → supply; move with the lead → motor',
  symbols: symbols(
    ['one, two, three', 'currents of lines 1, 2 and 3', 'A'],
    [
      'afterOne…',
      'the same lines once every motor lead is moved on by one (line 1 feeds what line 3 fed)',
      'A',
    ],
  ),
  range: 'three-phase; rotation is kept by moving all three leads; two lines alike decide nothing',
  source:
    'ecmweb.com, Unbalanced current; a pump maker’s 6S series manual, page 5; shown: imbalance after the leads were moved',
  standing: 'published',
  example: {
    inputs: {
      one: '51A',
      two: '46A',
      three: '53A',
      afterOne: '50A',
      afterTwo: '48A',
      afterThree: '52A',
    },
    gives: { value: 4, unit: 'percent' },
    within: 0.05,
    source: 'a pump maker’s 6S series manual, page 5: hookup 2, 4 %, the same lines high and low',
    standing: 'published',
  },
};

export const imbalanceDeratingFormula: Formula = {
  id: 'imbalanceDerating',
  name: 'motor load allowed at a voltage imbalance',
  equation: 'straight lines through 1 % 1.00, 2 % 0.95, 3 % 0.90, 4 % 0.82, 5 % 0.75',
  symbols: symbols(['imbalance', 'line-to-line voltage imbalance', '%']),
  range: '0 to 5 %; above it the motor is not run',
  source: DERATING_CURVE.source,
  standing: DERATING_CURVE.standing,
  example: {
    inputs: { imbalance: '3%' },
    gives: { value: 90, unit: 'percent' },
    within: 0.5,
    source: 'new.abb.com, Power quality conditioning: at 3 % derate to 90 % of rated load',
    standing: 'published',
  },
};

export const imbalanceHeatingFormula: Formula = {
  id: 'imbalanceHeating',
  name: 'extra temperature rise at a voltage imbalance',
  equation: 'increase % = 2 · (imbalance %)²',
  symbols: symbols(['imbalance', 'line-to-line voltage imbalance', '%']),
  range: '0 to 5 %, the phase with the highest current',
  source: 'NEMA MG 1, from memory; two published points agree',
  standing: 'from memory',
  example: {
    inputs: { imbalance: '5%' },
    gives: { value: 50, unit: 'percent' },
    within: 0.5,
    source: 'midtennrses.net, Voltage imbalance check: 5 % raises the winding temperature 50 %',
    standing: 'published',
  },
};
