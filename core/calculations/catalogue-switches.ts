/** Catalogue entries of finding what is open with a voltmeter. */
import * as values from '../units/quantity-values.ts';
import { answer, both } from './catalogue-entry.ts';
import type { Entry } from './catalogue-entry.ts';
import { badInput, baseOf, needBase, needChoice } from './catalogue-inputs.ts';
import type { InputValues } from './catalogue-inputs.ts';
import { choice, optional, voltage } from './catalogue-keys.ts';
import { hopscotch, hopscotchFormula } from './switch-voltage.ts';
import { loadVoltage, loadVoltageFormula } from './switch-voltage.ts';
import { switchAcross, switchAcrossFormula } from './switch-voltage.ts';
import { switchToGround, switchToGroundFormula } from './switch-voltage.ts';
import { volts } from './catalogue-electrical-inputs.ts';

const YES_OR_NO = ['yes', 'no'] as const;

/** As many points as a control circuit has safeties in one rung. */
const POINTS = ['p1', 'p2', 'p3', 'p4', 'p5', 'p6'] as const;
const toGround = (inputs: InputValues, key: string): values.VoltageToGround =>
  values.voltageToGround(needBase(inputs, key));

export const SWITCH_ENTRIES: readonly Entry[] = [
  {
    formula: switchAcrossFormula,
    keys: [voltage('supply'), voltage('across')],
    units: both('percent'),
    run: (inputs) => {
      const found = switchAcross({
        supply: volts(inputs, 'supply'),
        across: volts(inputs, 'across'),
      });
      return answer(found, ({ share, possible }) => ({ base: share, findings: { possible } }));
    },
  },
  {
    formula: switchToGroundFormula,
    keys: [voltage('before'), voltage('after')],
    units: both('V'),
    run: (inputs) => {
      const [before, after] = [toGround(inputs, 'before'), toGround(inputs, 'after')];
      return answer(switchToGround({ before, after }), (finding) => ({
        base: before - after,
        findings: { finding },
      }));
    },
  },
  {
    formula: hopscotchFormula,
    keys: [
      voltage('lineToLine'),
      ...POINTS.map((point, index) => (index < 2 ? voltage(point) : optional(voltage(point)))),
    ],
    units: both('V'),
    run: (inputs) => {
      const given = POINTS.filter((point) => inputs.has(point));
      const gap = POINTS.slice(0, given.length).find((point) => !inputs.has(point));
      if (gap !== undefined) return badInput(gap, `give the points in order: ${gap} is missing`);
      const found = hopscotch({
        lineToLine: volts(inputs, 'lineToLine'),
        readings: given.map((point) => values.voltage(baseOf(inputs, point) ?? 0)),
      });
      return answer(found, ({ state, between, lost }) => ({
        base: lost,
        findings: {
          state,
          ...(between === null
            ? {}
            : { between: between.map((index) => POINTS[index] ?? String(index)) }),
        },
      }));
    },
  },
  {
    formula: loadVoltageFormula,
    keys: [voltage('rated'), voltage('measured'), choice('running', YES_OR_NO)],
    units: both('percent'),
    run: (inputs) => {
      const found = loadVoltage({
        rated: volts(inputs, 'rated'),
        measured: volts(inputs, 'measured'),
        isRunning: needChoice(inputs, 'running', YES_OR_NO) === 'yes',
      });
      return answer(found, ({ share, finding }) => ({ base: share, findings: { finding } }));
    },
  },
];
