import { loadsOf, suppliesOf, switchesOf, type Fault, type Point } from './circuit.ts';
import type { Circuit, SuspectId, Switch } from './circuit.ts';
import type { Measurement, Outcome } from './measurement.ts';
import { worldsOf, type World } from './world.ts';

export type Outcomes = readonly Outcome[];

const NONE: Outcomes = ['none'];
const ALL: Outcomes = ['all'];
const PART: Outcomes = ['part'];
/** Fed through a burnt contact: most of the voltage, or visibly less of it. */
const WEAK: Outcomes = ['all', 'part'];
/** A wire joined to nothing shows nothing, or a ghost on a meter of high impedance. */
const GHOST: Outcomes = ['none', 'part'];
const ANYTHING: Outcomes = ['none', 'part', 'all'];

/** What each measurement may show under a set of faults, the likeliest first. */
export function expectations(
  circuit: Circuit,
  faults: readonly Fault[],
): (measurement: Measurement) => Outcomes {
  const worlds = worldsUnder(circuit, faults);
  return (measurement) => [...new Set(worlds.flatMap((world) => shownIn(world, measurement)))];
}

const worldsUnder = (circuit: Circuit, faults: readonly Fault[]): readonly World[] =>
  worldsOf(circuit, new Map(faults.map(({ of, mode }) => [of, mode])));

/** Whether a switch passes power under these faults, whatever a weak coil does. */
export function staysClosed(
  circuit: Circuit,
  { id, operatedBy }: Switch,
  faults: readonly Fault[],
): boolean {
  return worldsUnder(circuit, faults).every(
    ({ faults: modes, running }) =>
      modes.get(id) !== 'open' && (operatedBy === undefined || running.has(operatedBy)),
  );
}

function shownIn(world: World, measurement: Measurement): Outcomes {
  switch (measurement.kind) {
    case 'legs':
      return betweenLegs(world, measurement.between);
    case 'draws':
      return drawn(world, measurement.of);
    case 'ohms':
      return throughDevice(world, measurement.of);
    case 'across':
      return acrossDevice(world, measurement.of);
    case 'lineSide':
    case 'loadSide':
      return toReference(world, measurement);
  }
}

/** A lost leg is fed back through what stands between it and the others; a turning motor makes all of it. */
function betweenLegs({ circuit, faults, running }: World, between: readonly Point[]): Outcomes {
  const supplies = suppliesOf(circuit);
  const lost = supplies.filter(({ id, at }) => between.includes(at) && faults.has(id));
  if (lost.length === 0) return ALL;
  if (supplies.length === 1) return NONE;
  const turns = loadsOf(circuit).some((load) => isOnLostLeg(load, faults) && running.has(load.id));
  return turns ? ANYTHING : GHOST;
}

const isOnLostLeg = (
  { alsoFrom }: { readonly alsoFrom?: SuspectId },
  faults: World['faults'],
): boolean => alsoFrom !== undefined && faults.has(alsoFrom);

/** A three-phase motor on two legs hums and draws, until its overload lets go. */
function drawn({ circuit, faults, running }: World, of: SuspectId): Outcomes {
  if (!running.has(of)) return NONE;
  const load = loadsOf(circuit).find(({ id }) => id === of);
  return load && isOnLostLeg(load, faults) ? ['all', 'none'] : ALL;
}

/**
 * With its leads on an open device shows no path, left in place perhaps one around it. A closed switch is near zero,
 * a burnt one has ohms, a coil has its winding's, of a large one next to none. What a load operates rests open.
 */
function throughDevice({ circuit, faults }: World, of: SuspectId): Outcomes {
  const device = [...loadsOf(circuit), ...switchesOf(circuit)].find(({ id }) => id === of);
  if (!device || (device.kind === 'switch' && device.operatedBy !== undefined)) return ANYTHING;
  const mode = faults.get(of);
  if (mode === 'open') return ['all', 'part'];
  if (mode === 'burnt' || device.kind === 'load') return ['part', 'none'];
  return NONE;
}

function acrossDevice(world: World, of: SuspectId): Outcomes {
  const { circuit, faults } = world;
  const device = [...loadsOf(circuit), ...switchesOf(circuit)].find(({ id }) => id === of);
  if (!device) return ANYTHING;
  if (device.kind === 'load' && isOnLostLeg(device, faults)) return ANYTHING;
  const isDropping = world.burnt.some(({ id, isCarrying }) => id === of && isCarrying);
  return isDropping ? PART : between(world, device.from, device.to);
}

/** The lead on "neutral" may sit on either side of a return wire that is open. */
function toReference(
  world: World,
  { kind, of }: Measurement & { readonly kind: 'lineSide' | 'loadSide' },
): Outcomes {
  const { circuit } = world;
  const contact = switchesOf(circuit).find(({ id }) => id === of);
  if (!contact) return ANYTHING;
  const at = kind === 'lineSide' ? contact.from : contact.to;
  const wires = switchesOf(circuit).filter(({ isWire }) => isWire === true);
  const references = [...wires.map(({ from }) => from), circuit.across[1]];
  return [...new Set(references.flatMap((reference) => between(world, at, reference)))];
}

function between(world: World, one: Point, other: Point): Outcomes {
  const [a, b] = [world.potential(one), world.potential(other)];
  if (a.kind === 'between' || b.kind === 'between') return ANYTHING;
  if (a.kind === b.kind && a.at === b.at) return NONE;
  if (a.kind === 'loose' || b.kind === 'loose') return hasLiveLeg(world) ? GHOST : NONE;
  return isBehindBurnt(world, one) || isBehindBurnt(world, other) ? WEAK : ALL;
}

const hasLiveLeg = ({ circuit, faults }: World): boolean =>
  suppliesOf(circuit).some(({ id }) => !faults.has(id));

const isBehindBurnt = ({ burnt }: World, at: Point): boolean =>
  burnt.some(({ isCarrying, beyond }) => isCarrying && beyond.has(at));
