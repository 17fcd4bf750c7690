import { describe, expect, it } from 'vitest';
import type { Note } from '../../core/note/note.ts';
import { noteAloud } from '../../core/note/note-aloud.ts';

const NOTE: Note = {
  title: 'Service visit: Harbor Street Deli',
  sections: [
    {
      id: 'office',
      heading: 'For the office',
      lines: ['Found condenser plugged. Added 1 lb 2 oz of R-404A. The box was at −3 °F.'],
    },
    { id: 'unit', heading: 'Unit', lines: ['Refrigerant R-404A.'] },
    {
      id: 'before',
      heading: 'Before work',
      lines: [],
      table: { columns: ['Reading', 'Value'], rows: [['head pressure', '192 psi']] },
    },
    { id: 'refrigerant', heading: 'Refrigerant in and out', lines: ['Added 1 lb 2 oz of R-404A.'] },
    {
      id: 'open',
      heading: 'Still open',
      lines: ['A number has no meaning yet: 42.', 'Not read again: current, was 6 A.'],
    },
  ],
};

describe('the note read out', () => {
  it('is what the office reads, the refrigerant with it, and what is open; the rest is for the eye', () => {
    expect(noteAloud(NOTE).text).toBe(
      'Service visit: Harbor Street Deli. Found condenser plugged. Added 1 lb 2 oz of R-404A. ' +
        'The box was at −3 °F. Still open: A number has no meaning yet: 42. ' +
        'Not read again: current, was 6 A. The rest is on the screen.',
    );
  });

  it('leaves no symbol that a synthesiser would trip over', () => {
    const { spoken } = noteAloud(NOTE);
    expect(spoken).toContain('R four oh four A');
    expect(spoken).toContain('minus 3 degrees');
    expect(spoken).toContain('1 pound 2 ounces');
    expect(spoken).not.toMatch(/[°Ωµ−=|]/);
  });

  it('takes an A for amps behind a number alone', () => {
    const { spoken } = noteAloud(NOTE);
    expect(spoken).toContain('A number has no meaning');
    expect(spoken).toContain('6 amps');
  });
});
