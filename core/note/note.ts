/** The visit note, as structure: text, page and print are printed from it. */
export interface Note {
  readonly title: string;
  readonly sections: readonly NoteSection[];
}

export interface NoteSection {
  readonly id: NoteSectionId;
  readonly heading: string;
  readonly lines: readonly string[];
  readonly table?: NoteTable;
  /** What is read out in place of the lines, where hearing all of them helps nobody. */
  readonly aloud?: readonly string[];
}

export type NoteSectionId =
  | 'customer'
  | 'office'
  | 'unit'
  | 'complaint'
  | 'before'
  | 'findings'
  | 'seenBefore'
  | 'work'
  | 'tests'
  | 'after'
  | 'change'
  | 'watched'
  | 'recommendations'
  | 'refrigerant'
  | 'product'
  | 'asSaid'
  | 'cautions'
  | 'open';

export interface NoteTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}
