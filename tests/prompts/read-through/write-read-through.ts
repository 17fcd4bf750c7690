/**
 * Writes docs/phrasing-read-through.md: replies and notes of the journeys' visits, the template beside the model,
 * so that a person can judge which says it better. `npm run phrasing:read`
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { verdictSaid } from '../../../core/replies/verdict-said.ts';
import { isRephrasable, phraseOr } from '../../../core/replies/guard/phrase-or.ts';
import type { Phraser } from '../../../core/replies/phrasing.ts';
import { paragraphLines } from '../../../core/note/paragraphs/paragraphs.ts';
import type { PassagePhraser } from '../../../core/note/phrase-note.ts';
import { wordNote } from '../../../core/turn/word-note.ts';
import { loadPhraser, OWN_MODEL } from '../../../server/phraser/transformers-phraser.ts';
import { type Journey, readJourneys } from './journey-turns.ts';

const REPLIES = 60;
/** A cause told, a prohibition, several things found, refrigerant by weight, a likely cause, a recommendation. */
const NOTED: readonly string[] = [
  'air-in-the-system',
  'grounded-compressor',
  'iced-freezer-failed-heater',
  'lost-charge-leak-repaired',
  'overcharged-capillary-tube',
  'plugged-condenser-manual-reset',
];
const NO_HURRY = new Promise<never>(() => undefined);
const DOCS = new URL('../../../docs/', import.meta.url);

const loaded = await loadPhraser(OWN_MODEL);
if (loaded.kind === 'failed' || loaded.passages === null) throw new Error('no model of our own');
const journeys = readJourneys();

const text = `# What the phrasing model says, beside the template

Written by \`npm run phrasing:read\` from the visits in \`tests/journeys\`, with the model in \`prompts/model\`. Where
both are alike the model had no sentence that passed, or wrote the template's own. The first of two is the template.

## ${REPLIES} replies

${(await replies(loaded.phraser)).join('\n')}

## ${NOTED.length} notes

${(await notes(loaded.passages)).join('\n')}
`;
mkdirSync(DOCS, { recursive: true });
writeFileSync(new URL('phrasing-read-through.md', DOCS), text);

/** As many of each kind of answer as there are places for, in the order they are asked for. */
async function replies(phraser: Phraser): Promise<readonly string[]> {
  const all = journeys.flatMap(({ turns }) =>
    turns.flatMap(({ verdicts, utterance }) =>
      verdicts.filter(isRephrasable).map((verdict) => ({ verdict, asked: utterance.text })),
    ),
  );
  const seen = new Map<string, number>();
  const ranked = all.map((one) => {
    const rank = seen.get(one.verdict.answer) ?? 0;
    seen.set(one.verdict.answer, rank + 1);
    return { ...one, rank };
  });
  const chosen = ranked.toSorted((one, other) => one.rank - other.rank).slice(0, REPLIES);
  const rows: string[] = [];
  for (const [index, { verdict, asked }] of chosen.entries()) {
    const template = verdictSaid(verdict);
    const phrasing = await phraser.phrase(verdict, index % 3 === 2 ? 'reason' : 'short');
    const said = phraseOr(template, phrasing, verdict);
    rows.push(
      `${index + 1}. *${asked || '(a timer rings)'}*\n    - ${template.text}\n    - ${said.text}`,
    );
  }
  return rows;
}

async function notes(phraser: PassagePhraser): Promise<readonly string[]> {
  const told: string[] = [];
  for (const journey of journeys.filter(({ name }) => NOTED.includes(name))) {
    told.push(...(await note(journey, phraser)));
  }
  return told;
}

async function note({ name, state }: Journey, phraser: PassagePhraser): Promise<readonly string[]> {
  const body = await wordNote({ state, past: [] }, phraser, NO_HURRY);
  const worded = body?.type === 'noteWorded' ? body.passages : [];
  const quoted = (lines: readonly string[]) => lines.map((line) => `> ${line}`).join('\n>\n');
  return (['customer', 'office'] as const).flatMap((reader) => [
    `### ${name}, for the ${reader}\n`,
    `Template:\n\n${quoted(paragraphLines(reader, state, []))}\n`,
    `Model:\n\n${quoted(paragraphLines(reader, { ...state, worded }, []))}\n`,
  ]);
}
