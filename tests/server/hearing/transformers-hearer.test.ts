import { readFile, rm, truncate, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { env } from '@huggingface/transformers';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openTransformersHearer } from '../../../server/hearing/transformers-hearer.ts';
import { gloveside } from '../../support/fake-terminal.ts';
import { createScratchFolder } from '../../support/scratch-folder.ts';
import { writeTinySpeechModel } from '../../support/tiny-speech-model.ts';
import { wavOf } from '../../support/wav.ts';

const SAID = { above: 'head one forty six', below: 'memo they leave the gate open' };

describe('a model of the transformers library', { timeout: 60_000 }, () => {
  let folder: Awaited<ReturnType<typeof createScratchFolder>>;
  let model: string;
  const kept = env.fetch;

  beforeEach(async () => {
    folder = await createScratchFolder();
    model = join(folder.path, 'model');
    await writeTinySpeechModel(model, SAID);
  });

  afterEach(async () => {
    env.fetch = kept;
    await folder.discard();
  });

  const open = (given: string | undefined, told: string[] = []) =>
    openTransformersHearer(given, {
      onProgress: (line) => told.push(line),
      cacheFolder: join(folder.path, 'cache'),
    });
  const record = async (mean: number): Promise<string> => {
    const file = join(folder.path, `${mean}.wav`);
    await writeFile(
      file,
      wavOf(
        Array.from({ length: 16_000 }, () => mean),
        16_000,
      ),
    );
    return file;
  };
  const why = async (given: string | undefined): Promise<string> => {
    const outcome = await open(given);
    return outcome.kind === 'unavailable' ? outcome.message : 'opened';
  };

  it('hears recordings through `hear`, readings and memos alike', async () => {
    const { status, printed, complaints } = await gloveside([
      'hear',
      '--engine',
      'transformers',
      '--model',
      model,
      await record(0.2),
      await record(-0.2),
      await record(0),
    ]);
    expect([status, complaints]).toEqual([0, []]);
    const rows: unknown[] = printed.map((line): unknown => JSON.parse(line));
    expect(rows).toMatchObject([
      { words: SAID.above, understood: { readings: [{ quantity: 'headPressure', value: 146 }] } },
      { words: SAID.below, understood: { memos: ['they leave the gate open'] } },
      { words: '', rejected: 'nothing' },
    ]);
  });

  it('comes from the hub by its name once, with progress, and is kept', async () => {
    const asked: string[] = [];
    env.fetch = async (address) => {
      const path = /\/shop\/tiny-ear\/resolve\/main\/(.*)$/.exec(String(address))?.[1];
      asked.push(String(path));
      const file = path?.replace('_quantized', '');
      const bytes = await readFile(join(model, file ?? '')).catch(() => null);
      if (bytes === null) return new Response(null, { status: 404 });
      return new Response(new Uint8Array(bytes), {
        headers: { 'content-length': String(bytes.length) },
      });
    };
    const told: string[] = [];
    const first = await open('shop/tiny-ear', told);
    expect(first.kind).toBe('opened');
    expect(asked).toContain('onnx/encoder_model_quantized.onnx');
    expect(told.at(-1)).toBe('the speech model is coming: 100 %');
    env.fetch = () => Promise.reject(new Error('no network'));
    const second = await open('shop/tiny-ear');
    if (second.kind !== 'opened') throw new Error(second.message);
    const { alternatives } = await second.hearer.hear(new Float32Array(16_000).fill(0.2));
    expect(alternatives[0]?.words).toBe(SAID.above);
  });

  it('that cannot be had is told with what to do', async () => {
    expect(await why(undefined)).toMatch(/needs --model/);
    expect(await why(join(folder.path, 'nowhere'))).toMatch(/there is no folder/);
    env.fetch = () => Promise.reject(new Error('no network'));
    expect(await why('shop/unheard-of')).toMatch(/did not come from the hub .*connection/);
    await rm(join(model, 'preprocessor_config.json'));
    expect(await why(model)).toMatch(/lacks preprocessor_config.json: .*copy it whole/);
  });

  it('that is damaged or lacks its weights is told, and nothing is fetched in its place', async () => {
    env.fetch = () => Promise.reject(new Error('fetched'));
    await truncate(join(model, 'onnx', 'decoder_model_merged.onnx'), 100);
    expect(await why(model)).toMatch(/cannot be loaded .*copy the folder again/);
    await rm(join(model, 'onnx'), { recursive: true });
    expect(await why(model)).toMatch(/lacks its weights/);
  });
});
