import { describe, expect, it } from 'vitest';
import type { Note } from '../../core/note/note.ts';
import { noteAloud } from '../../core/note/note-aloud.ts';

const NOTE: Note = {
  title: 'Service visit: Harbor Street Deli',
  sections: [
    { id: 'unit', heading: 'Unit', lines: ['Refrigerant R-404A.'] },
    {
      id: 'before',
      heading: 'Before work',
      lines: ['The box was at −3 °F.'],
      table: {
        columns: ['Reading', 'Value'],
        rows: [
          ['head pressure', '192 psi'],
          ['ambient', '88 °F'],
        ],
      },
    },
    {
      id: 'change',
      heading: 'What changed',
      lines: ['The box came down.'],
      table: { columns: ['', 'Before'], rows: [['box', '44 °F']] },
    },
  ],
};

describe('the note read out', () => {
  it('is sentences, with a table of readings as names and values', () => {
    expect(noteAloud(NOTE).text).toBe(
      'Service visit: Harbor Street Deli. Unit: Refrigerant R-404A. Before work: The box was at −3 °F. ' +
        'Head pressure 192 psi, ambient 88 °F. What changed: The box came down.',
    );
  });

  it('leaves no symbol that a synthesiser would trip over', () => {
    const { spoken } = noteAloud(NOTE);
    expect(spoken).toContain('R four oh four A');
    expect(spoken).toContain('minus 3 degrees');
    expect(spoken).not.toMatch(/[°Ωµ−=|]/);
  });
});
