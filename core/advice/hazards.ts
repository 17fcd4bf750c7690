import type { PartId } from '../terms/names.ts';
import { leftOpen } from '../visit/left-open.ts';
import type { VisitState } from '../visit/state.ts';
import { measured } from './measured.ts';
import { standingFindings } from './standing-findings.ts';

const isShut = (part: PartId, state: VisitState): boolean =>
  leftOpen(state).some((left) => left.part === part && left.as !== 'open');

/** No relief stands between the piston and a discharge valve that is front-seated. */
export function dischargeIsShut(state: VisitState): boolean {
  return isShut('dischargeServiceValve', state);
}

export function dischargeShutWhileRunning(state: VisitState): boolean {
  const runs = standingFindings(state).some(
    ({ finding }) => finding.part === 'compressor' && finding.state === 'running',
  );
  return runs && dischargeIsShut(state);
}

/** A closed king valve with a closed solenoid after it, or two closed stops with liquid between. */
export function liquidIsTrapped(state: VisitState): boolean {
  const solenoidShut = standingFindings(state).some(
    ({ finding: { part, state: found } }) =>
      part === 'liquidLineSolenoid' && (found === 'closed' || found === 'failed'),
  );
  return isShut('kingValve', state) && (solenoidShut || isShut('liquidLineSolenoid', state));
}

/** Superheat within what the instruments may be off by, or below it. */
export function liquidReturns(state: VisitState): boolean {
  const found = measured('superheat', state);
  if (found.kind === 'refused') return found.reason === 'belowZeroSuperheat';
  return (
    found.kind === 'known' &&
    found.cautions.some((id) => id === 'liquidMayReturn' || id === 'wetOrWrongRefrigerant')
  );
}

export function isUnderVacuum({ readings }: VisitState): boolean {
  const last = readings.findLast(
    ({ reading: { quantity } }) => quantity === 'suctionPressure' || quantity === 'vacuum',
  )?.reading;
  if (last?.value === undefined) return false;
  return last.quantity === 'vacuum' || last.value < 0;
}
