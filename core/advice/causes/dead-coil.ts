import { coilFault, partSeen } from '../../terms/solenoid-coils.ts';
import type { VisitState } from '../../visit/state.ts';
import { temperatureOf } from '../current.ts';
import { standingFindings } from '../standing-findings.ts';
import { RATIOS } from './finding-rules.ts';
import { judgedSymptom } from './judged-symptoms.ts';
import type { Evidence } from './observation.ts';
import { WARM_BOX } from './spreads.ts';

/**
 * A solenoid whose coil is gone, with what goes with it (common practice): the unit pumps itself down and stays off on
 * low pressure, and the box gets warm. With the suction right and nothing else amiss it is a coil that was found bad
 * before it did any harm.
 */
export function deadCoilEvidence(state: VisitState): readonly Evidence[] {
  const dead = standingFindings(state).find(
    ({ finding }) => finding.part === 'liquidLineSolenoid' && coilFault(finding) !== null,
  );
  if (dead === undefined) return [];
  const low = suctionLow(state);
  const ratio =
    isOff(state) || low === true || isWarm(state)
      ? RATIOS.shows
      : low === false
        ? 1 / RATIOS.shows
        : 1;
  const shown = { kind: 'finding', ...partSeen(dead.finding) } as const;
  return [{ shown, ratios: new Map([['solenoidShut', ratio] as const]), inputs: [] }];
}

const isOff = (state: VisitState): boolean =>
  standingFindings(state).some(
    ({ finding: { part, state: seen } }) =>
      (part === 'lowPressureSwitch' && (seen === 'tripped' || seen === 'open')) ||
      (part === 'compressor' && seen === 'notRunning'),
  );

/** `null` where it cannot be judged. */
function suctionLow(state: VisitState): boolean | null {
  const judged = judgedSymptom('suctionPressure', state);
  if (judged.kind !== 'known') return null;
  const { low, farLow } = judged.value.levels;
  return low + farLow >= 0.5;
}

function isWarm(state: VisitState): boolean {
  const [box, setpoint] = [temperatureOf(state, 'boxTemp'), temperatureOf(state, 'setpointTemp')];
  if (box.kind !== 'known' || setpoint.kind !== 'known') return false;
  return box.value - setpoint.value > WARM_BOX;
}
