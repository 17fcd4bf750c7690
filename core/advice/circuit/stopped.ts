import type { PartId } from '../../terms/names.ts';
import { leftOpen } from '../../visit/left-open.ts';
import type { VisitState } from '../../visit/state.ts';
import { standingStep } from '../causes/standing-order.ts';
import { standingFindings, AS_IT_SHOULD_BE } from '../standing-findings.ts';
import type { StepId, Verdict } from '../verdict.ts';
import { circuitStep } from './circuit-step.ts';
import { contactsPassNothing } from './contact-loss.ts';
import { isTracing, nextPlaceToMeasure } from './next-place.ts';

/** What comes before a meter: what can hurt, what is empty or leaks, and a defrost that ends by itself. */
const BEFORE_THE_METER: ReadonlySet<StepId | null> = new Set<StepId | null>([
  'keepOff',
  'makeSafe',
  'waitOutDefrost',
  'mendLeak',
  'chargeFirst',
]);

/** What stops a compressor, and what starts it: found at fault, it tells the way by itself. */
const STOPS_IT: ReadonlySet<PartId> = new Set<PartId>([
  'highPressureSwitch',
  'lowPressureSwitch',
  'temperatureControl',
  'defrostTimer',
  'contactor',
  'overload',
  'startRelay',
  'startCapacitor',
  'runCapacitor',
  'breaker',
  'fuse',
  'disconnect',
  'plug',
  'wiring',
  'transformer',
  'liquidLineSolenoid',
]);

/**
 * Whether a compressor stands still and nothing found so far says why. Then the power is followed, from the line side
 * through its controls, before anything of the refrigeration is asked: common practice. One that was switched off
 * or pumped down for the work stands as it should.
 */
export function standsStill(state: VisitState): boolean {
  const standing = standingFindings(state).map(({ finding }) => finding);
  const isStill = standing.some(
    ({ part, state: found }) => part === 'compressor' && found === 'notRunning',
  );
  if (!isStill || BEFORE_THE_METER.has(standingStep(state))) return false;
  const isToldWhy = standing.some(
    ({ part, state: found }) => STOPS_IT.has(part) && !AS_IT_SHOULD_BE.has(found),
  );
  const isPumpedDown = state.work.some(({ work: { did } }) => did === 'pumpDown');
  return !isToldWhy && !isPumpedDown && !isSwitchedOff(state);
}

const isSwitchedOff = (state: VisitState): boolean =>
  leftOpen(state).some(({ part }) => OFF.has(part));
const OFF: ReadonlySet<PartId> = new Set<PartId>(['disconnect', 'breaker', 'plug']);

/** Where the meter goes next; `null` where no meter is the next thing. */
export function tracedNext(state: VisitState): Verdict | null {
  if (circuitStep(state) !== null) return null;
  const out = contactsPassNothing(state);
  if (out !== null) return out;
  if (isTracing(state)) return nextPlaceToMeasure(state);
  if (!standsStill(state)) return null;
  const next = nextPlaceToMeasure(state);
  if (next.kind === 'needs' && next.need === 'supplyVoltage')
    return { ...next, need: 'powerFirst' };
  return isSettled(next) ? null : next;
}

/** Found by the meter, it is not metered again: what opened it is looked for. */
const isSettled = (verdict: Verdict): boolean =>
  verdict.kind === 'known' && verdict.answer === 'nextPlace' && verdict.next === null;

/** What the voltages tell of a fault, where they are what was told last or nothing else was; else `null`. */
export function tracedFault(state: VisitState): Verdict | null {
  const isFollowing = isTracing(state) || (standsStill(state) && !hasPressures(state));
  const traced = isFollowing ? tracedNext(state) : null;
  if (traced === null || traced.kind === 'refused') return null;
  const isSound =
    traced.kind === 'known' && traced.answer === 'nextPlace' && traced.found === 'sound';
  return isSound || (traced.kind === 'needs' && !standsStill(state)) ? null : traced;
}

const hasPressures = ({ readings }: VisitState): boolean =>
  readings.some(
    ({ reading: { quantity } }) => quantity === 'headPressure' || quantity === 'suctionPressure',
  );
