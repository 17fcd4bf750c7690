import { loadsOf, suppliesOf, switchesOf } from './circuit.ts';
import type { Circuit, FaultMode, Load, Point, SuspectId, Switch } from './circuit.ts';

/** What a point is joined to: one leg, legs at both ends through loads, or only other points, by the first of them. */
export type Potential =
  { readonly kind: 'leg' | 'loose'; readonly at: Point } | { readonly kind: 'between' };

/** One way the circuit may stand under a set of faults. */
export interface World {
  readonly circuit: Circuit;
  readonly faults: Faults;
  readonly running: ReadonlySet<SuspectId>;
  readonly burnt: readonly BurntContact[];
  readonly potential: (at: Point) => Potential;
}

export type Faults = ReadonlyMap<SuspectId, FaultMode>;

export interface BurntContact {
  readonly id: SuspectId;
  /** Without current nothing drops across it. */
  readonly isCarrying: boolean;
  /** The points that get their leg through it. */
  readonly beyond: ReadonlySet<Point>;
}

/**
 * The circuit under these faults, calling for cooling. A coil that is fed through a burnt contact may hold or
 * drop, so there can be more than one world.
 */
export function worldsOf(circuit: Circuit, faults: Faults): readonly World[] {
  const held = settle(circuit, faults, () => true);
  const weak = weakCoils(held);
  if (weak.size === 0) return [held];
  return [held, settle(circuit, faults, (load) => !weak.has(load))];
}

function weakCoils({ circuit, running, burnt }: World): ReadonlySet<SuspectId> {
  const coils = switchesOf(circuit).map(({ operatedBy }) => operatedBy);
  const weak = loadsOf(circuit).filter(
    ({ id, from }) => coils.includes(id) && burnt.some(({ beyond }) => beyond.has(from)),
  );
  return new Set(weak.map(({ id }) => id).filter((id) => running.has(id)));
}

/** Closes what running loads operate until nothing more closes: no load here opens anything as it starts. */
function settle(circuit: Circuit, faults: Faults, holds: (load: SuspectId) => boolean): World {
  let world = standing(circuit, faults, new Set());
  for (;;) {
    const next = standing(circuit, faults, new Set([...world.running].filter(holds)));
    if (next.running.size === world.running.size) return next;
    world = next;
  }
}

function standing(circuit: Circuit, faults: Faults, holding: ReadonlySet<SuspectId>): World {
  const closed = switchesOf(circuit).filter(
    ({ id, operatedBy }) =>
      faults.get(id) !== 'open' && (operatedBy === undefined || holding.has(operatedBy)),
  );
  const intact = loadsOf(circuit).filter(({ id }) => faults.get(id) !== 'open');
  const joined = joinedToLegs(circuit, faults, closed);
  const running = intact.filter((load) => isFed(load, joined));
  const burntContact = ({ id }: Switch): BurntContact => {
    const rest = closed.filter((other) => other.id !== id);
    const left = joinedToLegs(circuit, faults, rest);
    return {
      id,
      isCarrying: running.some((load) => !isFed(load, left)),
      beyond: new Set([...joined.keys()].filter((point) => !left.has(point))),
    };
  };
  return {
    circuit,
    faults,
    running: new Set(running.map(({ id }) => id)),
    burnt: closed.filter(({ id }) => faults.get(id) === 'burnt').map(burntContact),
    potential: remembered((at) => throughLoads(at, [...closed, ...intact], joined)),
  };
}

function remembered(find: (at: Point) => Potential): (at: Point) => Potential {
  const found = new Map<Point, Potential>();
  return (at) => {
    const potential = found.get(at) ?? find(at);
    found.set(at, potential);
    return potential;
  };
}

/** Each point that closed switches join to a live leg, with that leg. */
type Joined = ReadonlyMap<Point, Point>;

function isFed({ from, to }: Load, joined: Joined): boolean {
  const [one, other] = [joined.get(from), joined.get(to)];
  return one !== undefined && other !== undefined && one !== other;
}

function joinedToLegs(circuit: Circuit, faults: Faults, closed: readonly Wire[]): Joined {
  return new Map(
    liveLegs(circuit, faults).flatMap((leg) =>
      [...reach(leg, closed, new Set())].map((point) => [point, leg] as const),
    ),
  );
}

/** A neutral cannot be dead: an open one is a fault of its own, on the unit's side of where it is proved. */
function liveLegs(circuit: Circuit, faults: Faults): readonly Point[] {
  const supplies = suppliesOf(circuit);
  const live = supplies.filter(({ id }) => faults.get(id) !== 'dead').map(({ at }) => at);
  const [, reference] = circuit.across;
  return supplies.some(({ at }) => at === reference) ? live : [...live, reference];
}

function throughLoads(at: Point, conducting: readonly Wire[], joined: Joined): Potential {
  const met = [...reach(at, conducting, joined)];
  const legs = met.map((point) => joined.get(point)).filter((one) => one !== undefined);
  const [leg, other] = new Set(legs);
  if (leg === undefined) return { kind: 'loose', at: met.sort()[0] ?? at };
  return other === undefined ? { kind: 'leg', at: leg } : { kind: 'between' };
}

interface Wire {
  readonly from: Point;
  readonly to: Point;
}

/** Every point from here over these wires; a point among `ends` is reached and not passed. */
function reach(
  start: Point,
  wires: readonly Wire[],
  ends: { readonly has: (point: Point) => boolean },
): ReadonlySet<Point> {
  const found = new Set([start]);
  for (const point of found) {
    if (ends.has(point)) continue;
    for (const { from, to } of wires) {
      if (from === point) found.add(to);
      if (to === point) found.add(from);
    }
  }
  return found;
}
