import { PLACES, type PlaceId } from '../../terms/names.ts';
import { loadsOf, type Circuit, type SuspectId } from './circuit.ts';
import type { LeadsAt } from './circuit-verdict.ts';
import { measurementKey, supplyOf, type Measurement } from './measurement.ts';

/** A measurement by the name of the place that is said for it. */
export function leadsAt(circuit: Circuit, measurement: Measurement): LeadsAt {
  if (measurement.kind === 'legs') return { how: 'at', place: legsPlace(circuit, measurement) };
  const { kind, of } = measurement;
  const place = placeOf(of);
  if (of === 'contacts') return { how: 'at', place: 'loadSide' };
  if (kind === 'draws') return { how: 'runs', place };
  return { how: loadsOf(circuit).some(({ id }) => id === of) ? 'at' : 'across', place };
}

function legsPlace(circuit: Circuit, measurement: Measurement & { kind: 'legs' }): PlaceId {
  const isThreePhase = circuit.parts.filter(({ kind }) => kind === 'supply').length === 3;
  if (!isThreePhase) return 'lineSide';
  if (measurementKey(measurement) === measurementKey(supplyOf(circuit))) return 'lineOneTwo';
  return measurement.between[0] === circuit.across[0] ? 'lineOneThree' : 'lineTwoThree';
}

const isPlace = (id: SuspectId | PlaceId): id is PlaceId => id in PLACES;

/** What has no place of its own is told by the side it feeds. */
const placeOf = (id: SuspectId): PlaceId => (isPlace(id) ? id : 'loadSide');
