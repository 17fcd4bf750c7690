import type { FindingStateId, PartId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { lastChange } from '../../visit/changes.ts';
import type { VisitState } from '../../visit/state.ts';
import { isAltered, movesRefrigerant } from '../../visit/alterations.ts';
import { isNewer } from '../../visit/views.ts';
import { fluidCautionsOf } from '../cautions.ts';
import { isGrounded } from '../grounded.ts';
import type { StepId } from '../verdict.ts';
import { isDefrosting } from './defrost-state.ts';
import { standingFindings } from '../standing-findings.ts';

/**
 * Safety, look, baseline before touching, one change at a time, let it settle, read again: common practice; a look
 * before the gauges: achrnews.com/articles/135634; reading before refrigerant is added: achrnews.com,
 * troubleshooting a refrigerant undercharge. Null once the order is kept and a check can be chosen.
 */
export function standingStep(state: VisitState): StepId | null {
  if (isGrounded(state)) return 'keepOff';
  if (isUnsafe(state)) return 'makeSafe';
  if (isDefrosting(state)) return 'waitOutDefrost';
  if (hasLeak(state)) return 'mendLeak';
  if (isEmptied(state)) return 'chargeFirst';
  const change = lastChange(state);
  if (change !== null) {
    const isRead = state.readings.some(
      ({ id, reading }) => OF_THE_CYCLE.has(reading.quantity) && isNewer(state, id, change.id),
    );
    if (!isRead && hasBaseline(state)) return 'letItSettle';
    if (!isRead && isAltered(state)) return 'baselineNow';
  }
  const { readings, findings } = state;
  const hasLooked =
    findings.length > 0 || readings.some(({ reading }) => !TOLD_FIRST.has(reading.quantity));
  return hasLooked ? null : 'lookFirst';
}

/** What is on the plate, the controller and a thermometer: no gauge is on for it. */
const TOLD_FIRST: ReadonlySet<QuantityId> = new Set<QuantityId>([
  'setpointTemp',
  'boxTemp',
  'productTemp',
  'ambientTemp',
  'outdoorTemp',
  'highCutoutPressure',
  'lowCutoutPressure',
  'lowCutinPressure',
  'refrigerantCharge',
]);

/** Where the charge can get out. */
const HOLDS_REFRIGERANT: ReadonlySet<PartId> = new Set<PartId>([
  'joint',
  'accessFitting',
  'serviceValve',
  'kingValve',
  'liquidLine',
  'suctionLine',
  'dischargeLine',
  'evaporator',
  'condenser',
  'receiver',
  'filterDrier',
  'capillaryTube',
  'expansionValve',
]);

function hasLeak(state: VisitState): boolean {
  return standingFindings(state).some(
    ({ finding }) => finding.state === 'leaking' && HOLDS_REFRIGERANT.has(finding.part),
  );
}

/** Recovered, and nothing weighed in since: there is nothing to read yet. */
function isEmptied(state: VisitState): boolean {
  const last = state.readings.findLast(({ reading }) => movesRefrigerant(reading.quantity));
  return last?.reading.quantity === 'refrigerantRecovered';
}

const LIVE_PARTS: ReadonlySet<PartId> = new Set<PartId>([
  'wiring',
  'terminal',
  'plug',
  'disconnect',
  'fuse',
  'breaker',
]);
const DANGEROUS: ReadonlySet<FindingStateId> = new Set<FindingStateId>(['burnt', 'hot', 'wet']);

/** A leak of what burns or poisons, and burnt or wet power wiring, come before any reading. */
function isUnsafe(state: VisitState): boolean {
  const standing = standingFindings(state).map(({ finding }) => finding);
  const leaks = standing.some((finding) => finding.state === 'leaking');
  const isDangerousGas = fluidCautionsOf(state).some(
    (id) => id === 'flammable' || id === 'toxicAmmonia',
  );
  const isLive = standing.some(
    ({ part, state: found }) => LIVE_PARTS.has(part) && DANGEROUS.has(found),
  );
  return isLive || (leaks && isDangerousGas);
}

const OF_THE_CYCLE: ReadonlySet<QuantityId> = new Set<QuantityId>([
  'headPressure',
  'suctionPressure',
  'condensingTemp',
  'evaporatingTemp',
  'superheat',
  'subcooling',
  'boxTemp',
]);

function hasBaseline({ readings }: VisitState): boolean {
  return readings.some(
    ({ phase, reading }) => phase === 'before' && OF_THE_CYCLE.has(reading.quantity),
  );
}
