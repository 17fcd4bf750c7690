import type { FindingStateId, PartId } from '../../terms/names.ts';

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

/** What carries a current is open where none gets through: to its owner "open" says nothing. */
const CARRIES_CURRENT: ReadonlySet<PartId> = new Set<PartId>([
  'highPressureSwitch',
  'lowPressureSwitch',
  'temperatureControl',
  'contactor',
  'startRelay',
  'startCapacitor',
  'runCapacitor',
  'overload',
  'defrostTimer',
  'defrostHeater',
  'drainHeater',
  'defrostTermination',
  'doorHeater',
  'doorSwitch',
  'wiring',
  'terminal',
  'fuse',
  'transformer',
  'compressor',
  'condenserFanMotor',
  'evaporatorFanMotor',
  'crankcaseHeater',
  'fanControl',
]);

const NO_CURRENT = 'let no power through';

export function plainState(part: PartId, state: FindingStateId): string {
  return state === 'open' && CARRIES_CURRENT.has(part) ? NO_CURRENT : PLAIN_STATES[state];
}
