import { UNITS } from '../units/units.ts';
import type { Note, NoteSection, NoteTable } from './note.ts';

/** Wide enough for a page, narrow enough for a message on a phone. */
const WIDTH = 72;

/** The note as plain text, wrapped, for copying into whatever the office uses. */
export function noteText({ title, sections }: Note): string {
  const head = [...wrapped(title, ''), '='.repeat(Math.min(title.length, WIDTH))];
  return `${[head.join('\n'), ...sections.map(sectionText)].join('\n\n')}\n`;
}

function sectionText({ heading, lines, table }: NoteSection): string {
  return [
    heading,
    ...lines.flatMap((line) => wrapped(line, '  ')),
    ...(table ? tableText(table) : []),
  ].join('\n');
}

/** Breaks at spaces, but not between a number and its unit; a word longer than the line keeps a line of its own. */
function wrapped(words: string, indent: string): readonly string[] {
  const lines: string[] = [];
  let line = indent;
  for (const word of words.split(BREAKS).filter((each) => each !== '')) {
    const joined = line.trim() === '' ? `${indent}${word}` : `${line} ${word}`;
    if (joined.length <= WIDTH || line.trim() === '') line = joined;
    else {
      lines.push(line);
      line = `${indent}  ${word}`;
    }
  }
  return [...lines, line];
}

const SYMBOLS = Object.values(UNITS).map(({ symbol }) => symbol.replace(/[^\wµΩ°]/g, '\\$&'));
const BREAKS = new RegExp(`(?<!\\d)\\s+|\\s+(?!(?:${SYMBOLS.join('|')})(?![\\wµΩ°]))`);

const GAP = '  ';

function tableText({ columns, rows }: NoteTable): readonly string[] {
  const all = [columns, ...rows];
  const widths = columns.map((_, column) =>
    Math.max(...all.map((row) => (row[column] ?? '').length)),
  );
  const width = widths.reduce((sum, each) => sum + each + GAP.length, 0);
  if (width > WIDTH) return rows.flatMap((row) => wrapped(rowWords(columns, row), '  '));
  return all.map((row) =>
    `${GAP}${row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join(GAP)}`.trimEnd(),
  );
}

/** A table too wide for the page, a line a row: "head pressure: before 192 psi, after 158 psi". */
function rowWords(columns: readonly string[], [name = '', ...cells]: readonly string[]): string {
  const told = cells.flatMap((cell, index) =>
    cell === '' ? [] : [`${(columns[index + 1] ?? '').toLowerCase()} ${cell}`],
  );
  return `${name}: ${told.join(', ')}`;
}
