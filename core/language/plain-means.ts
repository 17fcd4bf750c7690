import type { Means } from './rule.ts';
import { startsClause } from './words/clause-start.ts';
import { holdsNumber } from './words/own-reading.ts';

/** Talk: these words tell nothing of ours. */
export const nothing: Means = () => ({});

/** The same, where they begin a clause. */
export const nothingAtClauseStart: Means = (_tags, frame) => (startsClause(frame) ? {} : null);

/** Kept word for word. */
export const remark: Means = (_tags, frame) => ({ remarks: [frame.wordsOf(frame.span)] });

/** The same, as long as no number is in it. */
export const remarkWithoutNumber: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  return holdsNumber(words) ? null : { remarks: [words] };
};

/** Kept for the number in it; without one it is talk. */
export const remarkOfNumber: Means = (tags, frame) =>
  holdsNumber(frame.wordsOf(frame.span)) ? remark(tags, frame) : {};
