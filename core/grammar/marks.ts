/**
 * Marks of the words that can come next, of 64 each: of hundreds of rules that begin alike, most cannot go on with the next
 * word, and a glance at their marks tells so without a fetch of what else is known of them. Two words may share a mark.
 */
export interface Marks {
  readonly marks: number;
  readonly moreMarks: number;
}

export const NO_MARKS: Marks = { marks: 0, moreMarks: 0 };

export const bothMarks = (one: Marks, other: Marks): Marks => ({
  marks: one.marks | other.marks,
  moreMarks: one.moreMarks | other.moreMarks,
});

export const shareMark = (one: Marks, other: Marks): boolean =>
  ((one.marks & other.marks) | (one.moreMarks & other.moreMarks)) !== 0;

/** The one mark of a word or a class, spread by its letters. */
export function marksOf(name: string): Marks {
  let mixed = 0;
  for (let at = 0; at < name.length; at += 1) {
    mixed = Math.imul(mixed ^ name.charCodeAt(at), 0x9e3779b1);
  }
  const mark = 1 << (mixed >>> 27);
  const isFirst = (mixed & (1 << 16)) === 0;
  return isFirst ? { marks: mark, moreMarks: 0 } : { marks: 0, moreMarks: mark };
}
