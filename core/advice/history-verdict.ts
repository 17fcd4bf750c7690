import type { FindingStateId, PartId, WorkKindId } from '../terms/names.ts';
import type { CivilDate } from '../units/civil-date.ts';
import type { VisitState } from '../visit/state.ts';
import type { MovedRow } from './verdict.ts';

/** What an earlier visit to the same unit tells; `today` is the day of this one. */
export type HistoryAnswer =
  | ({ readonly answer: 'lastVisit'; readonly today: CivilDate | null } & PastRow)
  | {
      readonly answer: 'lastDone';
      readonly today: CivilDate | null;
      readonly did: WorkKindId;
      /** `null`: at whichever part. */
      readonly part: PartId | null;
      /** `null`: on none of the visits known, of which the first was at `since`. */
      readonly on: CivilDate | null;
      readonly since: CivilDate | null;
    }
  | {
      readonly answer: 'seenBefore';
      readonly today: CivilDate | null;
      readonly last: CivilDate;
      readonly rows: readonly FoundRow[];
      /** Nobody asked: it is told because it came back. */
      readonly unasked: boolean;
    };

export interface PastRow {
  readonly on: CivilDate;
  readonly found: readonly FoundRow[];
  readonly did: readonly DoneRow[];
  readonly left: VisitState['recommendations'];
  readonly moved: readonly MovedRow[];
}

export interface FoundRow {
  readonly part: PartId;
  readonly state: FindingStateId;
}

export interface DoneRow {
  readonly did: WorkKindId;
  readonly part: PartId | null;
}
