import { readdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { MOST_TRIES } from '../../prompts/decode/phrase-in-tries.ts';
import { parseLexicon } from '../../prompts/decode/lexicon.ts';
import { OWN_MODEL } from '../../server/phraser/transformers-phraser.ts';
import { scoreModel, type ModelScores } from './recipe/score-model.ts';

const VERDICTS = 2000;
const LARGEST = 4_000_000;
// Loading the library and 2,000 sentences: seconds, on a busy machine a minute.
const PATIENCE = 240_000;

describe('our own model', () => {
  let scores: ModelScores;
  beforeAll(async () => (scores = await scoreModel(OWN_MODEL, VERDICTS)), PATIENCE);

  it('phrases nearly every answer within its tries, those of combinations it never met too', () => {
    const line = ({ records, firstTry, withinTries }: ModelScores['all']) =>
      `${records} records, ${firstTry} at the first of ${MOST_TRIES} tries, ${withinTries} within`;
    console.log(`all: ${line(scores.all)}; held out: ${line(scores.heldOut)}`);
    console.log(
      `not in the corpus: ${scores.all.notInCorpus}, not learnt: ${scores.all.notLearnt}`,
    );
    expect(scores.all.withinTries).toBeGreaterThan(0.99);
    expect(scores.heldOut.withinTries).toBeGreaterThan(0.99);
    expect(scores.heldOut.records).toBeGreaterThan(20);
  });

  it('says no number that is not its own', () => {
    expect(scores.foreignNumbers).toEqual([]);
  });

  it('says every kind in five ways and more', () => {
    const few = Object.entries(scores.all.distinct).filter(([, ways]) => ways < 5);
    expect(few).toEqual([]);
  });

  it('is no parrot: a good part of what it says is not in the corpus', () => {
    expect(scores.all.notInCorpus).toBeGreaterThan(0.2);
  });
});

describe('the files of our own model', () => {
  it('are small enough for a phone', async () => {
    const files = await readdir(OWN_MODEL, { recursive: true });
    const sizes = await Promise.all(
      files.map(async (file) => (await stat(join(OWN_MODEL, file))).size),
    );
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThan(LARGEST);
  });

  it('have no token with a digit, so that no number can come from it', async () => {
    const lexicon = parseLexicon(await readFile(join(OWN_MODEL, 'lexicon.json'), 'utf8'));
    expect(lexicon?.tokens.filter((token) => /\d/.test(token))).toEqual([]);
    const words = lexicon?.tokens.filter((token) => /^[a-z']+$/.test(token));
    expect(words?.length).toBeGreaterThan(300);
  });
});
