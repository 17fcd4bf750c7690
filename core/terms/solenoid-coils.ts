import { FINDING_STATES, type FindingStateId, type PartId } from './names.ts';
import { saysStuckClosed } from './stuck-closed.ts';
import { namedAsFound } from './which-one.ts';

/** Shut by a spring and opened by a coil: with the coil gone they stay shut (common practice). */
const OPENED_BY_A_COIL: ReadonlySet<PartId> = new Set<PartId>([
  'liquidLineSolenoid',
  'hotGasValve',
  'waterValve',
]);

/** A part and how it was seen, as a verdict holds it. */
export interface PartSeen {
  readonly part: PartId;
  readonly state: FindingStateId;
  /** Told of the coil that should open a valve. */
  readonly of?: 'coil';
}

export type CoilFault = 'burntOut' | 'shorted' | 'bad';

interface Seen {
  readonly part: PartId;
  readonly state: FindingStateId;
  /** What it was told in. */
  readonly words?: string;
}

const COIL = /\bcoil\b/i;
/** A meter reads a coil, and no valve. */
const METERED = /\b(?:coil|ohms?|ohmed|ohming|meters|metered|open circuit)\b/i;
const SHORTED = /\bshort(?:ed)?\b/i;

/** "The solenoid coil's open" tells of the wire, and the valve that it should open stands shut. */
export function coilFault({ part, state, words = '' }: Seen): CoilFault | null {
  if (!OPENED_BY_A_COIL.has(part)) return null;
  if (state === 'burnt') return 'burntOut';
  if (state === 'open') return METERED.test(words) ? 'burntOut' : null;
  if (state !== 'failed' || !COIL.test(words)) return null;
  return SHORTED.test(words) ? 'shorted' : 'bad';
}

/** A part and how it was found, as the trade says it: "liquid-line solenoid coil open". */
export const seenName = (seen: Seen): string =>
  `${namedAsFound(seen.part, seen.words ?? '')} ${coilWord(seen)}${stateOf(seen)}`;

/** A switch that no longer opens is not merely "failed". */
const stateOf = ({ state, words = '' }: Seen): string =>
  state === 'failed' && saysStuckClosed(words) ? 'stuck closed' : FINDING_STATES[state];

/** "Coil ", where it is told of the coil alone. */
export const coilWord = (seen: Seen): 'coil ' | '' =>
  coilFault(seen) !== null && METERED.test(seen.words ?? '') ? 'coil ' : '';

export const partSeen = (seen: Seen): PartSeen => ({
  part: seen.part,
  state: seen.state,
  ...(coilWord(seen) === '' ? {} : { of: 'coil' as const }),
});
