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

/** The first memo that is no remark on the job itself, if it came before the first work. */
export function complaintMemos({ memos, work }: VisitState): Memos {
  const [firstWork] = work;
  return memos
    .filter(({ remark }) => remark === undefined)
    .slice(0, 1)
    .filter(({ at }) => firstWork === undefined || at <= firstWork.at);
}

/** What a technician calls what is kept cold, and what becomes of it. */
const PRODUCT =
  /\b(product|food|stock|meat|fish|milk|dairy|produce|vaccines?|medicines?|lettuce|ice cream|dough|cheese|chicken|eggs|seafood|thr[eo]w (it|them|everything) out|threw out|toss\w*|discard\w*)\b/i;

/** What was told of the product, apart from its temperature. */
export const productMemos = (state: VisitState): Memos =>
  otherMemos(state).filter(({ memo }) => PRODUCT.test(memo));

/** Remarks on what was found, and on how it was left. */
export const jobMemos = (state: VisitState): Memos =>
  otherMemos(state).filter(({ memo }) => !PRODUCT.test(memo));

/** Memos that are not the complaint. */
function otherMemos(state: VisitState): Memos {
  const complaint = complaintMemos(state);
  return state.memos.filter((memo) => !complaint.includes(memo));
}
