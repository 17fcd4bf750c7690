import type { QuantityId } from '../../terms/quantities.ts';
import type { EquipmentId } from '../../terms/names.ts';
import type { UnitFacts, VisitState } from '../../visit/state.ts';
import { kindOf } from '../../visit/unit-kind.ts';
import type { Circuit } from './circuit.ts';
import { CIRCUITS } from './circuits.ts';
import { devicesOf } from './evidence.ts';
import { isSinglePhase } from './phases.ts';

/**
 * The circuits of a kind of unit, the likeliest first: none is known for an ice machine, whose sequence is a board's.
 * A freezer's is built round its defrost timer.
 */
function circuitsOf(state: VisitState): readonly Circuit[] {
  const { unit } = state;
  const circuits = kindsOf(unit).flatMap((kind) =>
    CIRCUITS.filter(
      (circuit) =>
        circuit.equipment.includes(kind) && !(hasThirdLeg(circuit) && isSinglePhase(state)),
    ),
  );
  const defrosts = (circuit: Circuit): boolean => devicesOf(circuit).includes('defrostTimer');
  return unit.freezer
    ? circuits.toSorted((one, other) => Number(defrosts(other)) - Number(defrosts(one)))
    : circuits;
}

/** A walk-in's circuit has its condensing unit in it; what plugs in has its own compressor, unless that stands apart. */
function kindsOf(unit: UnitFacts): readonly EquipmentId[] {
  const kind = kindOf(unit);
  if (kind === null) return [];
  if (unit.condensingUnit !== 'remote' || kind === 'iceMachine') return [kind];
  return WALK_INS.includes(kind) ? [kind, 'remoteCondensingUnit'] : ['remoteCondensingUnit'];
}
const WALK_INS: readonly EquipmentId[] = ['walkInCooler', 'walkInFreezer'];

const hasThirdLeg = ({ parts }: Circuit): boolean =>
  parts.some((part) => part.kind === 'supply' && part.id === 'legThree');

const METERED: ReadonlySet<QuantityId> = new Set<QuantityId>(['voltage', 'current', 'resistance']);

/** The unit's circuit; where there are several builds, the first with every device that was metered. */
export function circuitOf(state: VisitState): Circuit | null {
  const circuits = circuitsOf(state);
  const places = new Set(
    state.readings
      .filter(({ reading }) => METERED.has(reading.quantity))
      .map(({ reading }) => reading.place),
  );
  const known = new Set(circuits.flatMap(devicesOf));
  const metered = [...known].filter((id) => [...places].some((place) => place === id));
  const fits = (circuit: Circuit): boolean =>
    metered.every((id) => devicesOf(circuit).includes(id));
  return circuits.find(fits) ?? circuits[0] ?? null;
}
