import { type FactTold, factsTold } from './facts-told.ts';
import type { VisitState } from './state.ts';

/** The technician's own word for how long it took, the last of each kind. */
export interface TimeTold {
  /** In minutes. */
  readonly onSite: number | null;
  readonly labor: number | null;
  /** By the clock on the wall, as it was said: "9:30". */
  readonly since: string | null;
}

export function timeTold(state: VisitState): TimeTold {
  return factsTold(state).reduce<TimeTold>(withFact, { onSite: null, labor: null, since: null });
}

function withFact(so: TimeTold, { fact }: FactTold): TimeTold {
  if (fact.fact === 'timeOnSite') return { ...so, onSite: fact.value };
  if (fact.fact === 'labor')
    return { ...so, labor: fact.value + (fact.more === true ? (so.labor ?? 0) : 0) };
  return fact.fact === 'hereSince' ? { ...so, since: fact.value } : so;
}
