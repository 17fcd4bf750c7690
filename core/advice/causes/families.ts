import type { CauseId } from '../../terms/causes.ts';
import { ranked, type Belief } from './belief.ts';

/** Faults whose readings are the same to any gauge: a look or a test tells them apart, no number does. */
export const FAMILIES: readonly (readonly CauseId[])[] = [
  ['dirtyCondenser', 'condenserFanOut', 'fanControlStuckOff'],
  ['liquidLineRestriction', 'valveStarving', 'solenoidShut'],
  ['icedCoil', 'evaporatorFanOut', 'defrostFailed'],
  ['heavyLoad', 'openBox'],
  ['leakyValves', 'stuckUnloaded'],
  ['lowAmbient', 'fanControlStuckOn'],
  ['startGear', 'overloadOpen'],
];

export function familyOf(cause: CauseId): readonly CauseId[] {
  return FAMILIES.find((family) => family.includes(cause)) ?? [cause];
}

/** A family leads with a third of the weight, and a quarter more than the next (common practice). */
const LEADS = 0.33;
const LEAD_OVER_NEXT = 1.25;
/** Beside the likeliest of its family, one that is half as likely is named with it. */
const NAMED_WITH = 0.5;

/** The causes that lead together: none, one, or those of a family that only a look tells apart. */
export function leadingOf(belief: Belief): readonly CauseId[] {
  const order = ranked(belief);
  const [top] = order;
  if (!top) return [];
  const [first, best] = top;
  const family = familyOf(first);
  const own = familyShare(family, belief);
  const rest = order.filter(([cause]) => !family.includes(cause));
  const next = Math.max(
    belief.somethingElse,
    ...rest.map(([cause]) => familyShare(familyOf(cause), belief)),
  );
  if (own < LEADS || own < next * LEAD_OVER_NEXT) return [];
  return family.filter((cause) => (belief.shares.get(cause) ?? 0) >= best * NAMED_WITH);
}

function familyShare(family: readonly CauseId[], { shares }: Belief): number {
  return family.reduce((sum, cause) => sum + (shares.get(cause) ?? 0), 0);
}
