import type { FindingStateId } from '../../terms/names.ts';
import type { VisitState } from '../../visit/state.ts';
import { isNewer } from '../../visit/views.ts';

const IN_DEFROST: ReadonlySet<FindingStateId> = new Set<FindingStateId>([
  'defrosting',
  'stuckInDefrost',
]);
const SAYS_EITHER: ReadonlySet<FindingStateId> = new Set<FindingStateId>([
  ...IN_DEFROST,
  'defrosted',
]);

/** The newest word on whether it is in defrost, up to an event of the visit. */
function lastSaid(state: VisitState, before: (id: string) => boolean): FindingStateId | null {
  const said = state.findings.filter(
    ({ id, finding }) =>
      finding.part === 'evaporator' && SAYS_EITHER.has(finding.state) && before(id),
  );
  return said.at(-1)?.finding.state ?? null;
}

const isDefrost = (said: FindingStateId | null): boolean => said !== null && IN_DEFROST.has(said);

/** In an ordinary defrost, which ends by itself. */
export const isDefrosting = (state: VisitState): boolean =>
  lastSaid(state, () => true) === 'defrosting';

/**
 * Without what was read in a defrost: heaters warm the coil and the compressor stands, so no reading of it says how
 * the unit runs (common practice; display-case makers' manuals end it near 50 °F at the coil, the fans later).
 */
export function outsideDefrost(state: VisitState): VisitState {
  if (lastSaid(state, () => true) === null) return state;
  const readings = state.readings.filter(
    ({ id, reading }) =>
      reading.place !== null || !isDefrost(lastSaid(state, (said) => isNewer(state, id, said))),
  );
  return { ...state, readings };
}
