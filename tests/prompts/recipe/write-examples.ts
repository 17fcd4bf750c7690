/**
 * Writes what the phrasing model learns from: `npx tsx tests/prompts/recipe/write-examples.ts FOLDER`.
 * `examples.tsv.gz` has a line for each sentence that may be said of a record: where it is from, the prompt,
 * the sentence. `lexicon.json` has the tokens in the order of their ids, and which words may word what.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { readCorpus } from '../../support/corpus.ts';
import { examplesOf } from './examples.ts';
import { lexiconOf } from './lexicon-of.ts';
import { randomNotes, randomReplies } from './told.ts';

const SEED = 20261125;
const VERDICTS = 60_000;
const NOTES = 20_000;

const [folder] = process.argv.slice(2);
if (folder === undefined) throw new Error('say which folder to write: write-examples.ts FOLDER');

const { all, signatures, heldOut } = examplesOf(
  [...readCorpus('replies'), ...readCorpus('note')],
  [...randomReplies(VERDICTS, SEED), ...randomNotes(NOTES, SEED)],
);
const lexicon = lexiconOf(all);
const lines = all.map(({ origin, prompt, sentence }) =>
  [origin, prompt.join(' '), sentence.join(' ')].join('\t'),
);
mkdirSync(folder, { recursive: true });
writeFileSync(join(folder, 'examples.tsv.gz'), gzipSync(`${lines.join('\n')}\n`));
writeFileSync(join(folder, 'lexicon.json'), `${JSON.stringify(lexicon)}\n`);
writeFileSync(join(folder, 'held-out.json'), `${JSON.stringify(heldOut, null, 2)}\n`);
const own = all.filter(({ origin }) => origin === 'own').length;
console.log(
  `${all.length} sentences (${own} as written in the corpus) for ${signatures.length} combinations of ` +
    `fields and slots, ${heldOut.length} of them held out; ${lexicon.tokens.length} tokens`,
);
