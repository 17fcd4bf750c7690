import type { VisitState } from '../visit/state.ts';
import { refrigerantAccounts } from '../visit/refrigerant-account.ts';
import type { MovedRow } from './verdict.ts';

/** What went in, out and astray, a row for each refrigerant that has a weight. */
export function movedRows(state: VisitState): readonly MovedRow[] {
  return refrigerantAccounts(state).flatMap(({ refrigerant, sums, unweighed }) =>
    sums === null ? [] : [{ refrigerant, ...sums, unweighed }],
  );
}
