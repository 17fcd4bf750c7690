import type { ExplainedPartId, Explains } from '../terms/explained-parts.ts';
import type { GuideId } from '../terms/guides.ts';
import type { AnswerableId } from '../terms/quantities.ts';
import type { UnitId } from '../units/units.ts';
import type { LeftOpen } from '../visit/left-open.ts';
import type { VisitState } from '../visit/state.ts';

/** What is told to whoever must be led. */
export type LedAnswer =
  | { readonly answer: 'guide'; readonly guide: GuideId }
  | { readonly answer: 'explained'; readonly part: ExplainedPartId; readonly of: Explains }
  | { readonly answer: 'overall'; readonly rows: readonly OverallRow[] }
  | {
      /** What there is to come back for. */
      readonly answer: 'toCome';
      readonly todo: readonly Todo[];
      readonly left: readonly Pick<LeftOpen, 'part' | 'as'>[];
      readonly questions: number;
    };

/** What should be, with what is, where it was read. */
export interface OverallRow {
  readonly about: AnswerableId;
  readonly measured: number | null;
  readonly target: number;
  readonly unit: UnitId;
  /** Read, and within its band. */
  readonly isRight: boolean;
}

export type Todo = Pick<VisitState['recommendations'][number], 'recommendation' | 'due'>;
