import type { JudgedId } from '../../terms/judged.ts';
import type { VisitState } from '../../visit/state.ts';
import { andThen, worked, type Found } from '../found.ts';
import { insulation, windings } from './compressor.ts';
import { airInside } from './air-inside.ts';
import {
  compressorCurrent,
  currentBalance,
  heater,
  imbalance,
  runCapacitor,
  supplyVoltage,
} from './electrical.ts';
import { food } from './food.ts';
import type { JudgedAnswer, JudgedOf } from './judged-verdict.ts';
import { leakJudged } from './leak.ts';
import { startCapacitor } from './start-capacitor.ts';
import { dischargeJudged, pressureTest, trip } from './pressures.ts';

type Judges = { readonly [J in JudgedId]: (state: VisitState) => Found<JudgedOf<J>> };

const JUDGES: Judges = {
  runCapacitor,
  startCapacitor,
  windings,
  insulation,
  compressorCurrent,
  supplyVoltage,
  voltageImbalance: imbalance,
  currentImbalance: currentBalance,
  nonCondensables: airInside,
  food,
  pressureTest,
  highPressureSwitch: (state) =>
    andThen(trip('high', state), (found) => worked({ ...found, about: 'highPressureSwitch' })),
  lowPressureSwitch: (state) =>
    andThen(trip('low', state), (found) => worked({ ...found, about: 'lowPressureSwitch' })),
  dischargeLine: dischargeJudged,
  leakRate: leakJudged,
  defrostHeater: (state) =>
    andThen(heater('defrostHeater', state), (found) =>
      worked({ ...found, about: 'defrostHeater' }),
    ),
  doorHeater: (state) =>
    andThen(heater('doorHeater', state), (found) => worked({ ...found, about: 'doorHeater' })),
};

/**
 * Whether a part, a test or a control is as it should be, from readings already said. What is missing comes back
 * as a need: what is printed or told before what a meter must be put on for.
 */
export function judge(about: JudgedId, state: VisitState): Found<JudgedAnswer> {
  const found: Found<JudgedAnswer> = JUDGES[about](state);
  const isUnfit = found.kind === 'refused' && found.reason === 'noTargetKnown';
  return isUnfit ? { kind: 'refused', about: null, reason: 'readingsDoNotFit' } : found;
}
