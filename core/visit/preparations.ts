import type { Work } from '../language/utterance.ts';
import type { PartId, WorkKindId } from '../terms/names.ts';

const FITTED: ReadonlySet<PartId> = new Set<PartId>(['gauges', 'caps', 'panel', 'jumper', 'hose']);
const POWER: ReadonlySet<PartId> = new Set<PartId>(['disconnect', 'breaker', 'plug']);
const SWITCHED: ReadonlySet<WorkKindId> = new Set<WorkKindId>(['isolate', 'disable', 'restore']);

/**
 * Getting at the unit is no work on it: gauges go on before the first reading can be taken, and what is read
 * with them is still the baseline.
 */
export function isPreparation({ did, part }: Work): boolean {
  if (part === null) return false;
  return FITTED.has(part) || (POWER.has(part) && SWITCHED.has(did));
}
