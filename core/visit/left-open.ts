import type { Finding, Work } from '../language/utterance.ts';
import type { PartId, WorkKindId } from '../terms/names.ts';
import type { EventId } from './events.ts';
import { toldRunning } from './ran.ts';
import type { VisitState } from './state.ts';

/** How a part stands that must not be left so. */
export type LeftAs =
  | 'closed'
  | 'isolated'
  | 'lockedOut'
  | 'removed'
  | 'bypassed'
  | 'disabled'
  | 'open'
  | 'connected'
  | 'setForTest';

export interface LeftOpen {
  readonly part: PartId;
  readonly as: LeftAs;
  readonly id: EventId;
  readonly at: number;
}

/** What was opened, closed, bypassed, taken off or set away, and not reported put back; oldest first. */
export function leftOpen(state: VisitState): readonly LeftOpen[] {
  const order = new Map(state.history.map((event, index) => [event.id, index]));
  const placeOf = ({ id }: { readonly id: EventId }): number => order.get(id) ?? 0;
  return [...state.preparations, ...state.work, ...state.findings, ...toldRunning(state)]
    .sort((one, other) => placeOf(one) - placeOf(other))
    .reduce<readonly LeftOpen[]>(after, []);
}

type Said = VisitState['work'][number] | VisitState['findings'][number];
type Ran = ReturnType<typeof toldRunning>[number];

/** With its leads off a compressor draws nothing: what runs again was put back, whoever said so. */
const outlastsRunning =
  ({ parts }: Ran) =>
  ({ part, as }: LeftOpen): boolean =>
    !(parts.includes(part) && (as === 'disabled' || isSwitchedOff(as)));

/** Off, with a lock on it or without one. */
const isSwitchedOff = (as: LeftAs): boolean => as === 'isolated' || as === 'lockedOut';

function after(left: readonly LeftOpen[], said: Said | Ran): readonly LeftOpen[] {
  if ('parts' in said) return left.filter(outlastsRunning(said));
  const { id, at } = said;
  const told = 'work' in said ? toldByWork(said.work) : toldByFinding(said.finding);
  if (told === null) return left;
  const { part, as } = told;
  const rest = left.filter((entry) => entry.part !== part || outlasts(entry, said, told));
  const stands =
    as === null || rest.some((entry) => entry.part === part && entry.as === 'lockedOut');
  return stands ? rest : [...rest, { part, as, id, at }];
}

/**
 * A jumper stays on when its switch is reset, replaced or found closed: only what takes it off ends a bypass. A lock
 * stays on what is told off once more.
 */
function outlasts({ as }: LeftOpen, said: Said, told: Told): boolean {
  if (as === 'lockedOut') return told.as === 'isolated' || told.as === 'open';
  const isTakenOff = 'work' in said && said.work.did === 'restore';
  return as === 'bypassed' && told.as !== 'bypassed' && !isTakenOff;
}

/** The part spoken of, and how it is left; `null`: as it belongs. */
interface Told {
  readonly part: PartId;
  readonly as: LeftAs | null;
}

/** What a technician shuts on the circuit itself: turned for the gauges and for a job, each has its way to stand. */
export const VALVES: ReadonlySet<PartId> = new Set<PartId>([
  'serviceValve',
  'suctionServiceValve',
  'dischargeServiceValve',
  'kingValve',
]);

/** What stands open or shut besides a valve, and belongs shut. */
const SHUT: ReadonlySet<PartId> = new Set<PartId>(['door', 'disconnect', 'breaker', 'plug']);

/** Put on for the visit: off is as it belongs. */
const LENT: ReadonlySet<PartId> = new Set<PartId>(['gauges', 'jumper', 'hose']);

const LEAVES: Partial<Record<WorkKindId, LeftAs>> = {
  isolate: 'isolated',
  remove: 'removed',
  bypass: 'bypassed',
  disable: 'disabled',
  open: 'open',
  connect: 'connected',
  setForTest: 'setForTest',
};

const PUTS_RIGHT: ReadonlySet<WorkKindId> = new Set<WorkKindId>([
  'reset',
  'replace',
  'repair',
  'restore',
  'adjust',
  'add',
  'tighten',
]);

/** What is clamped onto a tube to get at the gas, and comes off when the tube is shut for good. */
const CLAMPED_ON = /\b(?:taps?|piercing|saddle)\b/i;

function toldByWork({ did, part, locked, words }: Work): Told | null {
  if (part === null) return null;
  if (part === 'accessFitting' && did === 'remove' && CLAMPED_ON.test(words))
    return { part, as: null };
  if (LENT.has(part)) return lent(part, did);
  if (PUTS_RIGHT.has(did) || (did === 'open' && VALVES.has(part))) return { part, as: null };
  const as = LEAVES[did];
  if (as === undefined) return null;
  if (as === 'isolated' && VALVES.has(part)) return { part, as: 'closed' };
  return { part, as: locked === true ? 'lockedOut' : as };
}

function lent(part: PartId, did: WorkKindId): Told | null {
  if (did === 'connect' || did === 'add' || did === 'restore') return { part, as: 'connected' };
  return did === 'remove' || did === 'disable' ? { part, as: null } : null;
}

function toldByFinding({ part, state }: Finding): Told | null {
  if (VALVES.has(part)) {
    if (state === 'closed') return { part, as: 'closed' };
    return state === 'open' || state === 'ok' ? { part, as: null } : null;
  }
  if (SHUT.has(part) && state === 'open') return { part, as: 'open' };
  return RIGHT.has(state) ? { part, as: null } : null;
}

const RIGHT: ReadonlySet<Finding['state']> = new Set<Finding['state']>(['ok', 'closed', 'running']);

/** What is spoken of in general may be the one thing of its kind that is left so. */
const STANDS_FOR: Partial<Record<PartId, (left: LeftOpen) => boolean>> = {
  jumper: ({ as }) => as === 'bypassed',
  serviceValve: ({ part }) => VALVES.has(part),
  disconnect: ({ part }) => part === 'breaker' || part === 'plug',
  breaker: ({ part, as }) => part === 'disconnect' && isSwitchedOff(as),
};

/** "The jumper is off", "the valve is back open": where only one thing can be meant, that is put back. */
export function meantWork(work: Work, state: VisitState): Work {
  if (work.part === null || toldByWork(work)?.as !== null) return work;
  const left = leftOpen(state);
  const stands = STANDS_FOR[work.part];
  if (stands === undefined || left.some(({ part }) => part === work.part)) return work;
  const [only, ...others] = left.filter(stands);
  return only === undefined || others.length > 0 || !isBreakers(work, only, state)
    ? work
    : { ...work, did: 'restore', part: only.part };
}

/** A breaker put back puts nothing on that was locked out elsewhere: only what was told off by the breaker. */
function isBreakers(by: Work, { id }: LeftOpen, { work, preparations }: VisitState): boolean {
  if (by.part !== 'breaker') return true;
  const off = [...work, ...preparations].find((each) => each.id === id);
  return by.did === 'restore' && /\bbreakers?\b/i.test(off?.work.words ?? '');
}
