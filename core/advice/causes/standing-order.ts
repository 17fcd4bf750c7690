import type { FindingStateId, PartId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { lastChange } from '../../visit/changes.ts';
import type { VisitState } from '../../visit/state.ts';
import { isNewer } from '../../visit/views.ts';
import { fluidCautionsOf } from '../cautions.ts';
import type { StepId } from '../verdict.ts';
import { standingFindings } from './seen-findings.ts';

/**
 * Safety, look, baseline before touching, one change at a time, let it settle, read again: common practice; a look
 * before the gauges: achrnews.com/articles/135634; reading before refrigerant is added: achrnews.com,
 * troubleshooting a refrigerant undercharge. Null once the order is kept and a check can be chosen.
 */
export function standingStep(state: VisitState): StepId | null {
  if (isUnsafe(state)) return 'makeSafe';
  const change = lastChange(state);
  if (change !== null) {
    const isRead = state.readings.some(
      ({ id, reading }) => OF_THE_CYCLE.has(reading.quantity) && isNewer(state, id, change.id),
    );
    if (!isRead) return hasBaseline(state) ? 'letItSettle' : 'baselineNow';
  }
  const { readings, findings } = state;
  return readings.length === 0 && findings.length === 0 ? 'lookFirst' : null;
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
