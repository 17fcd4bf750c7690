import type { Note, NoteSection, NoteTable } from './note.ts';

/** The note as a fragment of a page: headings, paragraphs and tables, nothing that was said unescaped. */
export function noteHtml({ title, sections }: Note): string {
  return [
    '<article class="note">',
    `<h1>${escaped(title)}</h1>`,
    ...sections.map(sectionHtml),
    '</article>',
  ].join('\n');
}

function sectionHtml({ id, heading, lines, table }: NoteSection): string {
  return [
    `<section class="note-${id}">`,
    `<h2>${escaped(heading)}</h2>`,
    ...lines.map((line) => `<p>${escaped(line)}</p>`),
    ...(table ? [tableHtml(table, heading)] : []),
    '</section>',
  ].join('\n');
}

function tableHtml({ columns, rows }: NoteTable, caption: string): string {
  const head = columns.map((column) => `<th scope="col">${escaped(column)}</th>`).join('');
  return [
    `<table aria-label="${escaped(caption)}">`,
    `<thead><tr>${head}</tr></thead>`,
    '<tbody>',
    ...rows.map(rowHtml),
    '</tbody>',
    '</table>',
  ].join('\n');
}

function rowHtml([name = '', ...cells]: readonly string[]): string {
  const rest = cells.map((cell) => `<td>${escaped(cell)}</td>`).join('');
  return `<tr><th scope="row">${escaped(name)}</th>${rest}</tr>`;
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

export function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (character) => ENTITIES[character] ?? character);
}
