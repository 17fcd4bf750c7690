import type { PartId } from '../../terms/names.ts';
import { FANS, TURNS } from './fans.ts';
import type { Finding } from '../utterance.ts';

/** What is on when it does its work, though it does not turn. */
export const WORKS: readonly PartId[] = [
  ...TURNS,
  'light',
  'crankcaseHeater',
  'defrostHeater',
  'doorHeater',
  'drainHeater',
  'defrostTimer',
  'controller',
  'temperatureControl',
  'liquidLineSolenoid',
];
export const TELLS: readonly PartId[] = ['sensor', 'thermometer'];
/** What is open when it is off. */
export const BREAKS: readonly PartId[] = ['disconnect', 'breaker'];

/** What lets the compressor run, and turns by itself not. */
export const LETS_RUN: ReadonlySet<PartId> = new Set<PartId>([
  ...(['highPressureSwitch', 'lowPressureSwitch', 'overload', 'contactor', 'startRelay'] as const),
  ...(['startCapacitor', 'runCapacitor', 'breaker', 'fuse', 'disconnect', 'plug'] as const),
  ...(['temperatureControl', 'wiring', 'terminal', 'transformer', 'controller'] as const),
]);

/** "Disconnect is off" is open; "the terminal on the contactor" is not a terminal that is on. */
export function stateAt(part: PartId, state: Finding['state']): Finding['state'] | null {
  if (state === 'notRunning' && BREAKS.includes(part)) return 'open';
  if (state === 'running' && BREAKS.includes(part)) return 'closed';
  // What trips can be set again.
  if (state === 'tripped' && part === 'fuse') return 'failed';
  // A pan that is backed up is full; the line that backs it up is plugged.
  if (state === 'wet' && part === 'drainLine') return 'plugged';
  // What drains is open; one that hangs open is told by another word.
  if (state === 'open' && part === 'drainLine') return 'ok';
  // "The can's off": what neither turns nor switches anything was only switched off with the rest.
  if (state === 'notRunning' && CANS.includes(part)) return null;
  if (state === 'iced' && part.endsWith('Motor')) return 'failed';
  // "The drier's colder on the outlet, it's cold to the touch" speaks of no receptacle.
  if (part === 'plug' && OF_REFRIGERANT.includes(state)) return null;
  // No coil is shut: whatever is mounted on it is.
  if (state === 'closed' && COILS.includes(part)) return null;
  // A sensor that is off tells another temperature.
  if (state === 'notRunning' && TELLS.includes(part)) return 'failed';
  if (state === 'closed' && TURNS.includes(part)) return 'running';
  return state === 'running' && !WORKS.includes(part) ? null : state;
}

/** "The left one's stuck open" is told of a switch or a door, and of no fan. */
export const isStuckFan = (part: PartId, words: string): boolean =>
  (FANS.includes(part) || part === 'fan') && STUCK.test(words);
const STUCK = /\b(?:stuck|hung|welded) (?:open|closed|shut)\b/i;

const CANS: readonly PartId[] = ['runCapacitor', 'startCapacitor'];
const COILS: readonly PartId[] = ['condenser', 'evaporator'];
const OF_REFRIGERANT: readonly Finding['state'][] = ['cold', 'iced', 'oily', 'leaking'];
