import { cp, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import type { Known } from '../../../core/advice/verdict.ts';
import { parseLexicon } from '../../../prompts/decode/lexicon.ts';
import { loadPipeline } from '../../../server/phraser/load-pipeline.ts';
import { createSlotWriter } from '../../../server/phraser/slot-writer.ts';
import { loadPhraser, OWN_MODEL } from '../../../server/phraser/transformers-phraser.ts';
import { createScratchFolder } from '../../support/scratch-folder.ts';

const SUPERHEAT: Known = {
  kind: 'known',
  answer: 'value',
  about: 'superheat',
  value: 11,
  unit: 'dF',
  place: null,
  at: null,
  formula: 'superheat',
  inputs: [],
  source: null,
  cautions: [],
};
const PASSAGE = {
  kind: 'done',
  reader: 'customer',
  fields: [],
  slots: { work: 'cleaned the condenser' },
} as const;

const reference = z.object({ prompt: z.string(), logits: z.array(z.number()) });

async function loaded() {
  const own = await loadPhraser(OWN_MODEL);
  if (own.kind === 'failed') throw new Error(own.message);
  return own;
}

// The first load brings in the library and its native part: seconds on a busy machine.
describe('our own model behind the library', { timeout: 60_000 }, () => {
  let folder: Awaited<ReturnType<typeof createScratchFolder>>;
  beforeEach(async () => (folder = await createScratchFolder()));
  afterEach(() => folder.discard());

  it('is, number for number, the network that was trained', async () => {
    const told = await readFile(join(OWN_MODEL, 'reference.json'), 'utf8');
    const { prompt, logits } = reference.parse(JSON.parse(told));
    const lexicon = parseLexicon(await readFile(join(OWN_MODEL, 'lexicon.json'), 'utf8'));
    const write = await createSlotWriter(await loadPipeline(OWN_MODEL, 'fp32'));
    let first: readonly number[] = [];
    await write(prompt, (_, scores) => {
      if (first.length === 0) first = [...scores];
      scores.fill(-Infinity);
      scores[lexicon?.tokens.indexOf('[END]') ?? 0] = 0;
    });
    expect(first).toHaveLength(logits.length);
    const furthest = Math.max(...first.map((score, at) => Math.abs(score - (logits[at] ?? 0))));
    expect(furthest).toBeLessThan(0.01);
  });

  it('says an answer in many ways, none twice running, and the same again from the start', async () => {
    const talk = async () => {
      const { phraser } = await loaded();
      const said: (string | undefined)[] = [];
      for (let time = 0; time < 12; time += 1) {
        const phrasing = await phraser.phrase(SUPERHEAT, 'short');
        said.push(typeof phrasing === 'string' ? phrasing : phrasing?.text);
      }
      return said;
    };
    const said = await talk();
    expect(said.every((text) => text?.includes('11 °F'))).toBe(true);
    expect(said.filter((text, at) => text === said[at - 1])).toEqual([]);
    expect(new Set(said).size).toBeGreaterThanOrEqual(5);
    expect(await talk()).toEqual(said);
  });

  it('gives the spoken form beside the written one', async () => {
    const phrasing = await (await loaded()).phraser.phrase(SUPERHEAT, 'reason');
    const spoken = typeof phrasing === 'string' ? phrasing : phrasing?.spoken;
    expect(spoken).toContain('11 degrees');
  });

  it('words a passage of the note alike each time, an answer asked for meanwhile too', async () => {
    const { phraser, passages } = await loaded();
    const [first, answer, second] = await Promise.all([
      passages?.phrasePassage(PASSAGE),
      phraser.phrase(SUPERHEAT, 'short'),
      passages?.phrasePassage(PASSAGE),
    ]);
    expect(first).toContain('cleaned the condenser');
    expect(second).toBe(first);
    expect(answer).not.toBeNull();
  });

  it('is not taken with a damaged lexicon, and without one for a model that writes no slots', async () => {
    await cp(OWN_MODEL, folder.path, { recursive: true });
    await writeFile(join(folder.path, 'lexicon.json'), '{"tokens":');
    const damaged = await loadPhraser(folder.path);
    const message = damaged.kind === 'failed' ? damaged.message : damaged.kind;
    expect(message).toContain('lexicon.json is damaged');
    await rm(join(folder.path, 'lexicon.json'));
    expect(await loadPhraser(folder.path)).toMatchObject({ kind: 'loaded', passages: null });
  });
});
