import { designation } from '../replies/designation.ts';
import type { Said } from '../replies/said.ts';
import { REFRIGERANTS } from '../terms/refrigerants.ts';
import type { Note, NoteSection, NoteSectionId } from './note.ts';

/** The note as one would read it out over the phone: headings and sentences, a table as "name value". */
export function noteAloud({ title, sections }: Note): Said {
  const text = [`${title}.`, ...sections.map(sectionAloud)].join(' ');
  return { text, spoken: spelledOut(text) };
}

/** Before beside after is told in the section's own sentences; its table is for the eye. */
const TABLE_IS_FOR_THE_EYE: ReadonlySet<NoteSectionId> = new Set(['change']);

function sectionAloud({ id, heading, lines, table }: NoteSection): string {
  const rows = table && !TABLE_IS_FOR_THE_EYE.has(id) ? table.rows : [];
  const read = rows.map((row) => row.join(' ')).join(', ');
  return [`${heading}:`, ...lines, ...(read === '' ? [] : [`${capital(read)}.`])].join(' ');
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** Symbols that a synthesiser spells wrongly or passes over. */
const SPELLED: readonly (readonly [RegExp, string])[] = [
  [/ psi\b/g, ' P S I'],
  [/ ?°F/g, ' degrees'],
  [/ ?°C/g, ' degrees Celsius'],
  [/ inHg\b/g, ' inches of mercury'],
  [/ oz\b/g, ' ounces'],
  [/ lb\b/g, ' pounds'],
  [/ MΩ/g, ' megohms'],
  [/ Ω/g, ' ohms'],
  [/ µF/g, ' microfarads'],
  [/ V\b/g, ' volts'],
  [/ A\b/g, ' amps'],
  [/(^|[ (])[-−](?=\d)/g, '$1minus '],
];

/** Units first: "R four oh four A" must not come out in amps. */
function spelledOut(text: string): string {
  const spelled = SPELLED.reduce((so, [symbol, words]) => so.replace(symbol, words), text);
  return REFRIGERANTS.reduce(
    (so, id) => so.replace(new RegExp(`${id}\\b`, 'g'), designation(id).spoken),
    spelled,
  );
}
