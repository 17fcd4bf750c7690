import { CLEANING, type PartId, type WorkKindId } from '../terms/names.ts';
import { factsTold } from './facts-told.ts';
import { asOne } from './ran.ts';
import type { VisitState } from './state.ts';

/** One thing that a visit was agreed to be for, before it. */
export interface Agreed {
  readonly do: WorkKindId;
  readonly part: PartId;
}

/** What was agreed, each thing once, in the order told. */
export function agreedBefore(state: VisitState): readonly Agreed[] {
  const all = factsTold(state).flatMap(({ fact }) =>
    fact.fact === 'cameTo' ? [{ do: fact.do, part: fact.value }] : [],
  );
  return all.filter(
    (one, at) => all.findIndex((other) => other.do === one.do && other.part === one.part) === at,
  );
}

/** Of that, what nobody has told done on this visit. */
export const leftToDo = (state: VisitState): readonly Agreed[] =>
  agreedBefore(state).filter(
    (agreed) =>
      !state.work.some(
        ({ work: { did, part } }) =>
          part !== null &&
          asOne(agreed.part).includes(part) &&
          (did === agreed.do || (CLEANING.has(did) && CLEANING.has(agreed.do))),
      ),
  );
