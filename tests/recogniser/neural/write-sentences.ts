/**
 * Writes the sentences that the neural engine's recipe has spoken, sampled from the grammar itself, so that
 * the model grows with the language: `npx tsx tests/recogniser/neural/write-sentences.ts FILE COUNT SEED`.
 * One JSON object a line, gzipped: what to say, and the phones of each of its words.
 */
import { writeFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';

import { readDictionary } from '../../../server/hearing/node-model.ts';
import { createRandom } from './random.ts';
import { createSentences } from './sentences.ts';

const [file, count = '1000', seed = '1'] = process.argv.slice(2);
if (file === undefined)
  throw new Error('say which file to write: write-sentences.ts FILE COUNT SEED');

const next = createSentences(await readDictionary(), createRandom(Number(seed)));
const lines = Array.from({ length: Number(count) }, () => JSON.stringify(next()));
writeFileSync(file, gzipSync(`${lines.join('\n')}\n`));
