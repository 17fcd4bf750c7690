import { designation } from '../replies/designation.ts';
import type { Said } from '../replies/said.ts';
import { REFRIGERANTS } from '../terms/refrigerants.ts';
import type { Note, NoteSection, NoteSectionId } from './note.ts';

/** What is worth hearing before the panel goes back on, in the words of who does the job; the rest is for the eye. */
const ALOUD: readonly NoteSectionId[] = ['office', 'open'];

/** The note as one would tell it over the phone: what the office gets, and what is still open. */
export function noteAloud({ title, sections }: Note): Said {
  const told = sections.filter(({ id }) => ALOUD.includes(id));
  const text = [`${title}.`, ...told.map(sectionAloud), 'The rest is on the screen.'].join(' ');
  return { text, spoken: spelledOut(text) };
}

/** What the customer is told, as far as it goes. */
export function customerAloud({ sections }: Note): Said {
  const lines = sections.filter(({ id }) => id === 'customer').flatMap((section) => section.lines);
  const text = lines.join(' ');
  return { text, spoken: spelledOut(text) };
}

const sectionAloud = ({ id, heading, lines, aloud = lines }: NoteSection): string =>
  [...(id === 'open' ? [`${heading}:`] : []), ...aloud].join(' ');

/** Symbols that a synthesiser spells wrongly or passes over. */
const SPELLED: readonly (readonly [RegExp, string])[] = [
  [/ psi\b/g, ' P S I'],
  [/ ?°F/g, ' degrees'],
  [/ ?°C/g, ' degrees Celsius'],
  [/ inHg\b/g, ' inches of mercury'],
  [/(?<=\b1) oz\b/g, ' ounce'],
  [/(?<=\b1) lb\b/g, ' pound'],
  [/ oz\b/g, ' ounces'],
  [/ lb\b/g, ' pounds'],
  [/ MΩ/g, ' megohms'],
  [/ Ω/g, ' ohms'],
  [/ µF/g, ' microfarads'],
  [/(?<=\d) V\b/g, ' volts'],
  // Only after a number: "A manual-reset safety" was read out as "amps manual-reset safety".
  [/(?<=\d) A\b/g, ' amps'],
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
