import type { PartId, WorkKindId } from '../../terms/names.ts';
import type { Frame, Meaning, Means } from '../rule.ts';
import { partId } from '../slots.ts';

export const did = (work: WorkKindId, part: PartId | null, frame: Frame): Meaning => ({
  work: [{ did: work, part, words: frame.wordsOf(frame.span) }],
});

/** To the part that is named. */
export const named =
  (work: WorkKindId): Means =>
  (tags, frame) => {
    const part = partId(tags['part']);
    return part === null ? null : did(work, part, frame);
  };

export const always =
  (work: WorkKindId, part: PartId): Means =>
  (_tags, frame) =>
    did(work, part, frame);
