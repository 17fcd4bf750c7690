import type { Work } from '../language/utterance.ts';
import { isPowerPart, type PartId, type WorkKindId } from '../terms/names.ts';

const FITTED: ReadonlySet<PartId> = new Set<PartId>(['gauges', 'caps', 'panel', 'jumper', 'hose']);
const SWITCHED: ReadonlySet<WorkKindId> = new Set<WorkKindId>(['isolate', 'disable', 'restore']);

/**
 * Getting at the unit is no work on it: gauges go on before the first reading can be taken, and what is read
 * with them is still the baseline.
 */
export function isPreparation({ did, part }: Work): boolean {
  if (part === null) return false;
  return FITTED.has(part) || (isPowerPart(part) && SWITCHED.has(did));
}
