import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { soundWords } from '../../core/hearing/dictionary.ts';
import { VOICE_PROMPTS } from '../../core/language/heard/voice-prompts.ts';
import { PRONUNCIATIONS } from '../../core/language/vocabulary/pronunciations.ts';
import { readDictionary } from '../../server/hearing/node-model.ts';
import { gloveside } from '../support/fake-terminal.ts';
import { createScratchFolder } from '../support/scratch-folder.ts';
import { sayPhones, writeTinyEar } from '../support/tiny-ear.ts';
import { wavOf } from '../support/wav.ts';

const rowSchema = z.looseObject({ words: z.string(), confidence: z.number() });

describe('enrol', { timeout: 120_000 }, () => {
  let folder: Awaited<ReturnType<typeof createScratchFolder>>;
  let model: string;
  let recordings: string;
  /** Says SH where the dictionary has S, which the tiny ear takes for certain: "shubcooling". */
  const accented = async (sentence: string, accent = true): Promise<Float32Array> => {
    const words = sentence.split(' ');
    const { pronunciations } = soundWords(words, await readDictionary(), PRONUNCIATIONS);
    const phones = words.flatMap((word) => (pronunciations[word]?.[0] ?? '').split(' '));
    return sayPhones(phones.map((phone) => (accent && phone === 'S' ? 'SH' : phone)).join(' '));
  };
  const record = async (file: string, sound: Float32Array): Promise<string> => {
    await writeFile(file, wavOf([...sound], 16_000));
    return file;
  };

  beforeAll(async () => {
    folder = await createScratchFolder();
    [model, recordings] = [join(folder.path, 'model'), folder.path];
    await writeTinyEar(model);
    for (const [at, prompt] of VOICE_PROMPTS.entries()) {
      const name = `${String(at + 1).padStart(2, '0')}.wav`;
      await record(join(recordings, name), await accented(prompt));
    }
  }, 60_000);
  afterAll(() => folder.discard());

  it('prints each sentence with the file to record it in', async () => {
    const { status, printed } = await gloveside(['enrol']);
    const lines = printed.join('\n').split('\n');
    expect(status).toBe(0);
    expect(lines).toHaveLength(20);
    expect(lines[0]).toBe(`01.wav  ${VOICE_PROMPTS[0]}`);
    expect(lines[19]).toBe(`20.wav  ${VOICE_PROMPTS[19]}`);
  });

  it('learns a voice by which hear then hears', async () => {
    const voice = join(folder.path, 'voice.json');
    const learnt = await gloveside(['enrol', '--model', model, '--out', voice, recordings]);
    expect(learnt.complaints).toEqual([]);
    // Those with the sound in nearly every word are no longer like their sentences.
    const lessons = learnt.printed.filter((line) => line.endsWith('  learnt'));
    expect(lessons.length).toBeGreaterThan(15);
    expect(learnt.status).toBe(0);
    const said = await record(
      join(folder.path, 'said.wav'),
      await accented('subcooling was sixty six'),
    );
    const hear = async (...options: string[]) => {
      const call = ['hear', '--engine', 'neural', '--model', model, ...options, said];
      return rowSchema.parse(JSON.parse((await gloveside(call)).printed[0] ?? ''));
    };
    const [without, byIt] = [await hear(), await hear('--voice', voice)];
    expect(byIt.words).toBe('subcooling was sixty six');
    expect(byIt.confidence).toBeGreaterThan(without.confidence + 0.3);
  });

  it('leaves out what is missing, no sound, or another sentence, and keeps nothing of too few', async () => {
    const few = join(folder.path, 'few');
    await writeTinyEar(few);
    await writeFile(join(few, '01.wav'), 'no sound at all');
    await record(join(few, '02.wav'), await accented('box forty four'));
    const out = join(few, 'voice.json');
    const { status, printed } = await gloveside(['enrol', '--model', model, '--out', out, few]);
    expect(status).toBe(1);
    expect(printed[0]).toMatch(/^01\.wav {2}This is not a WAV file/);
    expect(printed[1]).toBe('02.wav  not like its sentence: record it again');
    expect(printed[2]).toBe('03.wav  missing');
    expect(printed.at(-1)).toMatch(/^Too few/);
    await expect(readFile(out)).rejects.toThrow('ENOENT');
  });

  it.each([
    ['torn', /holds no voice: make it again with gloveside enrol/],
    ['{"version":1,"edition":"tiny","correction":[["x"]]}', /holds no voice at correction\.0\.0/],
  ])('hear says what is wrong with a damaged voice: %s', async (text, says) => {
    const voice = join(folder.path, 'damaged.json');
    await writeFile(voice, text);
    const { status, complaints } = await gloveside(['hear', '--voice', voice, 'any.wav']);
    expect(status).toBe(2);
    expect(complaints.join('\n')).toMatch(says);
  });

  it('hear says when another model learnt the voice, or when none is heard by', async () => {
    const voice = join(folder.path, 'other.json');
    await writeFile(voice, '{"version":1,"edition":"another","correction":[[0]]}');
    const said = join(recordings, '01.wav');
    const neural = ['hear', '--engine', 'neural', '--model', model, '--voice', voice, said];
    const unfit = await gloveside(neural);
    expect(unfit.printed.join('')).toContain('learnt by another model');
    const embedded = await gloveside([
      ...['hear', '--engine', 'embedded', '--voice', voice],
      join(folder.path, 'missing.wav'),
    ]);
    expect(embedded.complaints.join('')).toContain('--voice has no effect with --engine embedded');
  });
});
