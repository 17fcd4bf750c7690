import type { AnswerableId } from '../../terms/quantities.ts';
import { unitRow } from '../../units/units.ts';
import { headControlOf } from '../../visit/head-control.ts';
import type { VisitState } from '../../visit/state.ts';
import { compared } from '../compare.ts';
import { airOf } from '../condensing-wanted.ts';
import { temperatureOf } from '../current.ts';
import { andThen, both, worked, type Found } from '../found.ts';
import { measured } from '../measured.ts';
import { wanted } from '../targets.ts';
import type { Direction, EvidenceRow, Figure } from '../verdict.ts';
import { amps, dischargeLine, fixedSuperheat } from './judged-by-limit.ts';
import { levelsOf, overIsNormal } from './levels-of.ts';
import { feedOf } from './matrix.ts';
import type { Judged } from './observation.ts';
import { COLD_AIR, FAR_KELVIN, SPREADS } from './spreads.ts';
import type { SymptomId } from './symptom.ts';

type ByTarget = Exclude<SymptomId, 'current' | 'dischargeLineTemp'>;

/** A pressure is judged in degrees saturated: 5 psi are 3 °F of R-134a and 1.8 °F of R-404A. */
const JUDGED_BY: Record<ByTarget, AnswerableId> = {
  headPressure: 'condensingTemp',
  suctionPressure: 'evaporatingTemp',
  superheat: 'superheat',
  subcooling: 'subcooling',
  split: 'split',
  temperatureDifference: 'temperatureDifference',
};

const SPREAD_OF: Record<ByTarget, number> = {
  headPressure: SPREADS.classTable,
  suctionPressure: SPREADS.classTable,
  superheat: SPREADS.instruments,
  subcooling: SPREADS.instruments,
  split: SPREADS.classTable,
  temperatureDifference: SPREADS.classTable,
};

/** A symptom against what it should be now, or what is missing to say so. */
export function judgedSymptom(symptom: SymptomId, state: VisitState): Found<Judged> {
  if (symptom === 'current') return amps(state);
  if (symptom === 'dischargeLineTemp') return dischargeLine(state);
  const isFixed = feedOf(state.unit.metering) === 'fixed';
  return symptom === 'superheat' && isFixed ? fixedSuperheat(state) : byTarget(symptom, state);
}

function byTarget(symptom: ByTarget, state: VisitState): Found<Judged> {
  const by = JUDGED_BY[symptom];
  const aimed = wanted(by, withoutAsking(state));
  return andThen(both(measured(by, state), aimed), ([reading, target]) => {
    const { factor } = unitRow(reading.unit);
    const { low = target.value, high = target.value } = target;
    const levels = levelsOf({
      value: reading.value,
      low,
      high,
      spread: (SPREAD_OF[symptom] + offDesign(symptom, state)) / factor,
      far: FAR_KELVIN / factor,
    });
    const seen = isHeldUp(symptom, state) ? overIsNormal(levels) : levels;
    return andThen(deviationRow(symptom, seen.normal, state), (shown) =>
      worked({ symptom, levels: seen, shown }),
    );
  });
}

/** With a fixed restriction suction floats with the load: away from the set point its target says less. */
function offDesign(symptom: ByTarget, state: VisitState): number {
  if (symptom !== 'suctionPressure' || feedOf(state.unit.metering) !== 'fixed') return 0;
  const air = both(temperatureOf(state, 'boxTemp'), temperatureOf(state, 'setpointTemp'));
  if (air.kind !== 'known') return 0;
  const [box, setpoint] = air.value;
  return Math.abs(box - setpoint) / 2;
}

/** Causes are weighed without being told what holds head: over is then let pass in cold air. */
function withoutAsking(state: VisitState): VisitState {
  if (headControlOf(state) !== null) return state;
  return { ...state, unit: { ...state.unit, headControl: 'none' } };
}

/**
 * In cold air a condenser-pressure valve holds head: R-404A at 180 psi and 20 °F is a split of 62 °F, and right. With
 * the control told the target of head says so itself; what a flooded condenser holds back is subcooled all the same.
 */
function isHeldUp(symptom: ByTarget, state: VisitState): boolean {
  if (symptom !== 'headPressure' && symptom !== 'split' && symptom !== 'subcooling') return false;
  const headControl = headControlOf(state);
  if (headControl === 'none' || (headControl !== null && symptom === 'headPressure')) return false;
  const found = airOf(state);
  return found.kind === 'known' && found.value.air < COLD_AIR;
}

function deviationRow(symptom: ByTarget, normal: number, state: VisitState): Found<EvidenceRow> {
  const own = compared(symptom, withoutAsking(state));
  const off = own.kind === 'known' ? own : compared(JUDGED_BY[symptom], withoutAsking(state));
  return andThen(off, ({ about, value, unit, direction }) => {
    const shown = { kind: 'deviation', about, value, unit } as const;
    const isOn = normal >= 0.5 || direction === 'on';
    const alongside = isOn || symptom !== 'headPressure' ? null : splitToo(direction, state);
    return worked<EvidenceRow>({
      ...shown,
      direction: isOn ? 'on' : direction,
      ...(alongside ? { alongside } : {}),
    });
  });
}

/** The split is said with the head: a technician knows it by either. */
function splitToo(direction: Direction, state: VisitState): Figure | null {
  const split = compared('split', withoutAsking(state));
  if (split.kind !== 'known' || split.value.direction !== direction) return null;
  if (direction === 'over' && isHeldUp('split', state)) return null;
  const { value, unit } = split.value;
  return { about: 'split', value, unit };
}
