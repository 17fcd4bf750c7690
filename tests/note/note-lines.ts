import { draftNote } from '../../core/note/draft-note.ts';
import type { NoteSectionId } from '../../core/note/note.ts';
import type { VisitState } from '../../core/visit/state.ts';

const sectionOf = (state: VisitState, id: NoteSectionId) =>
  draftNote(state).sections.find((section) => section.id === id);

/** The sentences of one section of the note, none where it was left out. */
export const linesOf = (state: VisitState, id: NoteSectionId): readonly string[] =>
  sectionOf(state, id)?.lines ?? [];

/** The cells of one section's table, by the name of their row. */
export function rowsOf(state: VisitState, id: NoteSectionId): Record<string, readonly string[]> {
  const rows = sectionOf(state, id)?.table?.rows ?? [];
  return Object.fromEntries(rows.map(([name = '', ...cells]) => [name, cells]));
}
