import type { FindingStateId, WorkKindId } from '../terms/names.ts';
import type { VisitState } from '../visit/state.ts';
import { isNewer } from '../visit/views.ts';

export type FindingEntry = VisitState['findings'][number];

/** Work that leaves the part as it should be: what was found there before no longer holds. */
export const MENDS: ReadonlySet<WorkKindId> = new Set<WorkKindId>([
  'clean',
  'brush',
  'wash',
  'replace',
  'repair',
  'defrost',
  'restore',
  'tighten',
]);

/** The last word on each part, unless it was mended since. */
export function standingFindings(state: VisitState): readonly FindingEntry[] {
  return state.findings.filter((entry, index) => {
    const { part } = entry.finding;
    const saidAgain = state.findings.slice(index + 1).some(({ finding }) => finding.part === part);
    const mended = state.work.some(
      ({ id, work }) => work.part === part && MENDS.has(work.did) && isNewer(state, id, entry.id),
    );
    return !saidAgain && !mended;
  });
}

/** What is found so is not amiss. */
export const AS_IT_SHOULD_BE: ReadonlySet<FindingStateId> = new Set<FindingStateId>([
  'ok',
  'running',
  'closed',
]);

/** "So it's not the probe": what was held to be bad a moment before, and was told not to be, was not found. */
export function withoutWithdrawn({ findings }: VisitState): readonly FindingEntry[] {
  return findings.filter(({ finding }, index) => {
    const next = findings.slice(index + 1).find((other) => other.finding.part === finding.part);
    return AS_IT_SHOULD_BE.has(finding.state) || next === undefined || !withdraws(next);
  });
}
const withdraws = ({ finding: { state, words } }: FindingEntry): boolean =>
  state === 'ok' && /\b(?:it|that)(?:'s| is| was|'s been) not the\b/i.test(words);
