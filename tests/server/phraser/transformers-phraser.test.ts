import { rm, truncate, writeFile } from 'node:fs/promises';
import { Socket } from 'node:net';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Known } from '../../../core/advice/verdict.ts';
import { loadPhraser } from '../../../server/phraser/transformers-phraser.ts';
import { createScratchFolder } from '../../support/scratch-folder.ts';
import { writeTinyModel } from '../../support/tiny-model.ts';

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
const WRITES = 'Right now superheat reads 11 °F ##.';
const SENTENCE = 'Right now superheat reads 11 °F.';

// The first load brings in the library and its native part: seconds on a busy machine.
describe('a phraser from a model folder', { timeout: 60_000 }, () => {
  let folder: Awaited<ReturnType<typeof createScratchFolder>>;
  beforeEach(async () => (folder = await createScratchFolder()));
  afterEach(() => folder.discard());

  const loaded = async () => {
    const outcome = await loadPhraser(folder.path);
    if (outcome.kind === 'failed') throw new Error(outcome.message);
    return outcome.phraser;
  };
  const failure = async (path = folder.path) => {
    const outcome = await loadPhraser(path);
    return outcome.kind === 'failed' ? outcome.message : '';
  };

  it.each([
    ['goes on with a text', false],
    ['answers in a conversation', true],
  ])('writes the sentence of a model that %s', async (_, converses) => {
    await writeTinyModel(folder.path, { writes: WRITES, converses });
    expect(await (await loaded()).phrase(SUPERHEAT, 'short')).toBe(SENTENCE);
  });

  it.each(['model_quantized.onnx', 'model_int8.onnx', 'model_fp16.onnx'])(
    'takes the weights that are there: %s',
    async (weights) => {
      await writeTinyModel(folder.path, { writes: WRITES, weights });
      expect(await (await loaded()).phrase(SUPERHEAT, 'short')).toBe(SENTENCE);
    },
  );

  it('writes at most 48 tokens', async () => {
    const words = Array.from({ length: 100 }, (_, index) => `word${index}`);
    await writeTinyModel(folder.path, { writes: words.join(' ') });
    expect(await (await loaded()).phrase(SUPERHEAT, 'short')).toBe(words.slice(0, 48).join(' '));
  });

  it('words one sentence at a time, and the next when it is done', async () => {
    await writeTinyModel(folder.path, { writes: WRITES });
    const phraser = await loaded();
    const first = phraser.phrase(SUPERHEAT, 'short');
    expect(await phraser.phrase(SUPERHEAT, 'short')).toBeNull();
    expect(await first).toBe(SENTENCE);
    expect(await phraser.phrase(SUPERHEAT, 'short')).toBe(SENTENCE);
  });

  it('opens no connection, not even for a file that may be lacking', async () => {
    const connect = vi.spyOn(Socket.prototype, 'connect');
    await writeTinyModel(folder.path, { writes: WRITES });
    await rm(join(folder.path, 'generation_config.json'));
    expect(await (await loaded()).phrase(SUPERHEAT, 'short')).toBe(SENTENCE);
    await rm(join(folder.path, 'onnx'), { recursive: true });
    expect(await failure()).not.toBe('');
    expect(connect).not.toHaveBeenCalled();
    connect.mockRestore();
  });

  it('has no sentence where the model writes none', async () => {
    await writeTinyModel(folder.path, { writes: '[END]' });
    expect(await (await loaded()).phrase(SUPERHEAT, 'short')).toBeNull();
  });

  it('says that there is no such folder, and what one holds', async () => {
    const none = join(folder.path, 'none');
    expect(await failure(none)).toBe(
      `there is no folder ${none}: a model's folder holds config.json, tokenizer.json, ` +
        'tokenizer_config.json and onnx/',
    );
  });

  it.each(['config.json', 'tokenizer.json', 'tokenizer_config.json'])(
    'says that %s is lacking',
    async (file) => {
      await writeTinyModel(folder.path, { writes: WRITES });
      await rm(join(folder.path, file));
      expect(await failure()).toContain(`${folder.path} lacks ${file}:`);
    },
  );

  it('says which weights it looks for', async () => {
    await writeTinyModel(folder.path, { writes: WRITES, weights: 'other.onnx' });
    expect(await failure()).toMatch(/put one of these in its onnx\/: model_quantized\.onnx/);
  });

  it.each([
    ['weights cut short', 'onnx/model.onnx', 100],
    ['empty weights', 'onnx/model.onnx', 0],
    ['a tokenizer cut short', 'tokenizer.json', 100],
    ['a configuration cut short', 'config.json', 20],
  ])('says to copy the folder again: %s', async (_, file, bytes) => {
    await writeTinyModel(folder.path, { writes: WRITES });
    await truncate(join(folder.path, file), bytes);
    const message = await failure();
    expect(message).toContain(`the model in ${folder.path} cannot be loaded (`);
    expect(message).toContain('copy the folder again');
    expect(message).not.toContain('\n');
  });

  it('says so of a kind of model that writes no text', async () => {
    await writeTinyModel(folder.path, { writes: WRITES });
    await writeFile(join(folder.path, 'config.json'), JSON.stringify({ model_type: 'vit' }));
    expect(await failure()).toContain('of a kind that this program cannot run');
  });
});
