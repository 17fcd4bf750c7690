import type { VisitState } from '../visit/state.ts';
import { nameWritten, sentence, valueWritten } from './wording.ts';

/** What was told before anything was done is the complaint; what was told of numbers stands as hearsay. */
export function complaintLines(state: VisitState): readonly string[] {
  const told = complaintMemos(state).map(({ memo }) => sentence(memo));
  const hearsay = state.doubts
    .filter(({ doubt }) => doubt.why === 'hearsay')
    .map(({ doubt }) =>
      sentence(`Reported, not measured: ${nameWritten(doubt)} ${valueWritten(doubt)}`),
    );
  const lines = [...told, ...hearsay];
  return lines.length === 0 ? ['No complaint was recorded.'] : lines;
}

type Memos = VisitState['memos'];

/** The first memo, if it came before the first work. */
export function complaintMemos({ memos, work }: VisitState): Memos {
  const [firstWork] = work;
  return memos.slice(0, 1).filter(({ at }) => firstWork === undefined || at <= firstWork.at);
}

/** Memos that are not the complaint: remarks on what was found. */
export function otherMemos(state: VisitState): Memos {
  const complaint = complaintMemos(state);
  return state.memos.filter((memo) => !complaint.includes(memo));
}
