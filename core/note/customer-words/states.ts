import type { Finding } from '../../language/utterance.ts';
import type { FindingStateId, PartId } from '../../terms/names.ts';
import { type CoilFault, coilFault } from '../../terms/solenoid-coils.ts';
import { toldState } from '../told-state.ts';

/** What was seen of a part, behind "was": "was choked with dirt". */
const PLAIN_STATES: Record<FindingStateId, string> = {
  dirty: 'was dirty',
  plugged: 'was clogged',
  iced: 'was covered in ice',
  notRunning: 'was not running',
  running: 'was running',
  tripped: 'had tripped',
  open: 'was open',
  closed: 'was closed',
  leaking: 'was leaking',
  hot: 'was hot',
  noisy: 'was noisy',
  loose: 'was loose',
  burnt: 'was burnt',
  missing: 'was missing',
  failed: 'had failed',
  grounded: 'let current through to its metal housing',
  ok: 'was all right',
  wet: 'was wet',
  oily: 'had oil on it',
  warm: 'was warm',
  cold: 'was cold',
  shortCycling: 'kept starting and stopping',
  hunting: 'would not hold steady',
  humming: 'hummed and did not start',
  defrosting: 'was in its defrost',
  defrosted: 'was out of its defrost',
  stuckInDefrost: 'was stuck in its defrost',
};

const BROKEN_INSIDE = 'had a break inside';
const CUT_THE_POWER = 'had cut the power';
const BURNT_OUT = 'was burnt out';

/** What carries a current is open where none gets through: to its owner "open" says nothing. */
const OPEN_CIRCUITS: Partial<Record<PartId, string>> = {
  defrostHeater: BURNT_OUT,
  drainHeater: BURNT_OUT,
  doorHeater: BURNT_OUT,
  crankcaseHeater: BURNT_OUT,
  highPressureSwitch: CUT_THE_POWER,
  lowPressureSwitch: CUT_THE_POWER,
  temperatureControl: CUT_THE_POWER,
  overload: CUT_THE_POWER,
  defrostTimer: CUT_THE_POWER,
  defrostTermination: CUT_THE_POWER,
  doorSwitch: CUT_THE_POWER,
  fanControl: CUT_THE_POWER,
  contactor: BROKEN_INSIDE,
  startRelay: BROKEN_INSIDE,
  startCapacitor: BROKEN_INSIDE,
  runCapacitor: BROKEN_INSIDE,
  transformer: BROKEN_INSIDE,
  compressor: BROKEN_INSIDE,
  condenserFanMotor: BROKEN_INSIDE,
  evaporatorFanMotor: BROKEN_INSIDE,
  wiring: 'had a break in it',
  terminal: 'had come apart',
  fuse: 'had blown',
};

const DEAD_COILS: Record<CoilFault, string> = {
  burntOut: 'had a burnt-out coil',
  shorted: 'had a short circuit in its coil',
  bad: 'had a bad coil',
};

/** What was seen of a part, as it was put where that says more than the state that it is kept as. */
export function plainState(part: PartId, seen: Pick<Finding, 'state' | 'words'>): string {
  const coil = coilFault({ part, ...seen });
  if (coil !== null) return `${DEAD_COILS[coil]}, so it could not open`;
  const told = toldState(seen);
  if (told !== null) return told.plain;
  // What is burnt and what is open are one to its owner.
  if (seen.state === 'burnt' && OPEN_CIRCUITS[part] === BURNT_OUT) return BURNT_OUT;
  const open = seen.state === 'open' ? OPEN_CIRCUITS[part] : undefined;
  return open ?? PLAIN_STATES[seen.state];
}
