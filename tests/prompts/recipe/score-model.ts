/**
 * Scores a phrasing model on random verdicts: `npm run phrasing:score -- [FOLDER] [COUNT]`. Prints what passed
 * at the first try and within the tries, on combinations that were learnt and on those held out, and how much
 * of it is neither in the corpus nor put together from it. No sentence may have a number that is not its own.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { readModelFolder } from '../../../server/phraser/model-folder.ts';
import { loadPipeline } from '../../../server/phraser/load-pipeline.ts';
import { createSlotWriter } from '../../../server/phraser/slot-writer.ts';
import { OWN_MODEL } from '../../../server/phraser/transformers-phraser.ts';
import type { Register } from '../../../prompts/record/phrase-record.ts';
import { readCorpus } from '../../support/corpus.ts';
import { madeFrom } from './examples.ts';
import { phraseAll, scoreOf } from './score.ts';
import { signatureOf } from './signature.ts';
import { randomNotes, randomReplies } from './told.ts';

const [folder = OWN_MODEL, count = '2000'] = process.argv.slice(2);
const found = await readModelFolder(folder);
if (found.kind === 'unusable' || found.lexicon === null)
  throw new Error('no model of our own there');
const { lexicon } = found;
const write = await createSlotWriter(await loadPipeline(found.path, found.dtype));

const corpus = [...readCorpus('replies'), ...readCorpus('note')];
const keyOf = ({ kind, sentence }: { kind: string; sentence: string }) => `${kind} ${sentence}`;
const known = {
  corpus: new Set(corpus.map(keyOf)),
  learnt: new Set([...corpus, ...madeFrom(corpus)].map(keyOf)),
};
const heldOut = readFileSync(join(folder, 'held-out.json'), 'utf8');
const hasWords = (kind: string) => (wanted: Register) =>
  lexicon.groups.some((group) => group.kind === kind && group.register === wanted);
const told = [...randomReplies(Number(count), 4099), ...randomNotes(Number(count) / 10, 4099)];
const all = told.flatMap((told, index) => {
  const registers = told.registers.filter(hasWords(told.record.kind));
  const register = registers[index % registers.length];
  const isHeldOut = heldOut.includes(JSON.stringify(signatureOf(told)));
  return register ? [{ told, register, isHeldOut }] : [];
});
const began = performance.now();
const scored = await phraseAll(write, lexicon, all);
const ms = (performance.now() - began) / all.length;
const scores = {
  all: scoreOf(scored, known),
  learnt: scoreOf(
    scored.filter(({ isHeldOut }) => !isHeldOut),
    known,
  ),
  heldOut: scoreOf(
    scored.filter(({ isHeldOut }) => isHeldOut),
    known,
  ),
};
console.log(JSON.stringify(scores, null, 2));
console.log(`${ms.toFixed(1)} ms a sentence`);
for (const { phrased, isHeldOut } of scored.slice(0, 25)) {
  console.log(isHeldOut ? '*' : ' ', phrased?.tries, phrased?.said.text);
}
writeFileSync(join(folder, 'scores.json'), `${JSON.stringify(scores, null, 2)}\n`);
