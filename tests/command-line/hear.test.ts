import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { toRow } from '../../server/command-line/hear-row.ts';
import { gloveside } from '../support/fake-terminal.ts';
import { createScratchFolder } from '../support/scratch-folder.ts';
import { sayPhones, writeTinyEar } from '../support/tiny-ear.ts';
import { wavOf } from '../support/wav.ts';

const rowSchema = z.looseObject({ file: z.string(), error: z.string().optional() });

describe('hear', { timeout: 60_000 }, () => {
  let folder: Awaited<ReturnType<typeof createScratchFolder>>;
  beforeEach(async () => (folder = await createScratchFolder()));
  afterEach(() => folder.discard());

  const put = async (name: string, content: Buffer | string) => {
    const file = join(folder.path, name);
    await writeFile(file, content);
    return file;
  };
  const silence = (seconds: number) =>
    wavOf(
      Array.from({ length: seconds * 16_000 }, () => 0),
      16_000,
    );

  it('says of each file that cannot be read what to do, goes on with the rest, ends with status 1', async () => {
    const files = [
      await put('text.wav', 'no sound at all'),
      await put('empty.wav', ''),
      await put('cut.wav', silence(1).subarray(0, 5000)),
      join(folder.path, 'missing.wav'),
      await put('quiet.wav', silence(1)),
    ];
    const { status, printed, complaints } = await gloveside(['hear', ...files]);
    expect([status, complaints]).toEqual([1, []]);
    const rows = printed.map((line) => rowSchema.parse(JSON.parse(line)));
    expect(rows.map(({ file }) => file)).toEqual(files);
    const says = [/not a WAV file/, /no sound/, /cut off/, /cannot read the file/];
    for (const [index, pattern] of says.entries()) expect(rows[index]?.error).toMatch(pattern);
    expect(rows[4]).toMatchObject({
      words: '',
      alternatives: [],
      confidence: 0,
      rejected: 'nothing',
    });
  });

  it('gives silence the empty object of what was understood, with status 0', async () => {
    const { status, printed } = await gloveside(['hear', await put('quiet.wav', silence(1))]);
    expect(status).toBe(0);
    expect(JSON.parse(printed[0] ?? '')).toMatchObject({
      understood: { text: '', readings: [], commands: [], unclaimed: [] },
    });
  });

  it('hears by the engine asked for, and says which there are', async () => {
    const model = join(folder.path, 'ear');
    await writeTinyEar(model);
    const file = await put(
      'said.wav',
      wavOf([...sayPhones('S AH K SH AH N F AO R T IY N')], 16_000),
    );
    const { status, printed } = await gloveside([
      'hear',
      '--engine',
      'neural',
      '--model',
      model,
      file,
    ]);
    expect(status).toBe(0);
    expect(JSON.parse(printed[0] ?? '')).toMatchObject({
      words: 'suction fourteen',
      understood: { readings: [{ quantity: 'suctionPressure', value: 14 }] },
    });
    const wrong = await gloveside(['hear', '--engine', 'organic', file]);
    expect([wrong.status, ...wrong.complaints]).toEqual([
      2,
      expect.stringContaining('neural, embedded, both'),
    ]);
  });

  it('says which model is missing, with status 1', async () => {
    const file = await put('quiet.wav', silence(1));
    const asked = ['hear', '--engine', 'neural', '--model', join(folder.path, 'nowhere'), file];
    const { status, printed } = await gloveside(asked);
    expect(status).toBe(1);
    expect(rowSchema.parse(JSON.parse(printed[0] ?? '')).error).toMatch(/nowhere/);
  });
});

describe('what hear prints of a recording', () => {
  const recorded = (...words: readonly string[]) =>
    ({
      kind: 'heard',
      alternatives: words.map((each, rank) => ({ words: each, confidence: 0.9 - rank / 10 })),
      rejected: null,
      noise: { noiseDb: -60, snrDb: 30 },
    }) as const;

  it('is the page’s choice among all that the recogniser offers, and why', () => {
    const recording = recorded('suction nine hundred', 'suction nineteen');
    expect(toRow('a.wav', recording, EMPTY_CONTEXT)).toMatchObject({
      words: 'suction nineteen',
      confidence: 1,
      because: 'plausible',
      does: 'takes',
      alternatives: recording.alternatives,
      understood: { text: 'suction nineteen', readings: [{ value: 19 }] },
    });
  });

  it('says whether the product takes it, asks about it, or wants it said again', () => {
    const heardAt = (confidence: number, words: string) =>
      toRow('a.wav', { ...recorded(), alternatives: [{ words, confidence }] }, EMPTY_CONTEXT);
    expect(heardAt(0.98, 'box fifteen')).toMatchObject({ does: 'takes' });
    expect(heardAt(0.9, 'box fifteen')).toMatchObject({
      does: 'asks',
      checked: [
        { quantity: 'boxTemp', value: 15, certainty: 'unsure', readBack: 'askWhich', rival: 50 },
      ],
    });
    expect(heardAt(0.9, 'suction nine hundred')).toMatchObject({ does: 'asks' });
    expect(heardAt(0.6, 'condenser is plugged')).toMatchObject({ does: 'saysAgain' });
    expect(heardAt(0.3, 'box fifteen')).toMatchObject({ does: 'saysAgain' });
  });

  it.each([
    [30, 'takes'],
    [4.24, 'asks'],
    [null, 'asks'],
  ])(
    'tells how far the voice stood above the noise, and asks where that is little: %s',
    (snrDb, does) => {
      const alternatives = [{ words: 'head one ninety two', confidence: 0.98 }];
      const recording = { ...recorded(), alternatives, noise: { noiseDb: -30, snrDb } };
      expect(toRow('a.wav', recording, EMPTY_CONTEXT)).toMatchObject({
        snrDb: snrDb && Math.round(snrDb * 10) / 10,
        does,
      });
    },
  );

  it('shows what was heard too poorly and understands nothing of it', () => {
    const recording = { ...recorded('head one ninety'), rejected: 'unsure' } as const;
    expect(toRow('a.wav', recording, EMPTY_CONTEXT)).toMatchObject({
      words: 'head one ninety',
      rejected: 'unsure',
      does: 'saysAgain',
      understood: { text: '', readings: [] },
    });
  });
});
