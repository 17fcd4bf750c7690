import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { gloveside } from '../support/fake-terminal.ts';
import { speakWav } from '../support/flite.ts';
import { createScratchFolder } from '../support/scratch-folder.ts';

const speakTo = (file: string, sentence: string): Promise<void> =>
  writeFile(file, speakWav(sentence));

describe('recordings on the command line', () => {
  let folder: Awaited<ReturnType<typeof createScratchFolder>>;
  beforeAll(async () => {
    folder = await createScratchFolder();
    await speakTo(join(folder.path, 'head.wav'), 'head one ninety two');
    await speakTo(join(folder.path, 'forty.wav'), 'forty four');
  });
  afterAll(() => folder.discard());

  const hear = async (...args: readonly string[]) => {
    const { status, printed, complaints } = await gloveside(['hear', ...args]);
    expect([status, complaints]).toEqual([0, []]);
    return printed.map((line): unknown => JSON.parse(line));
  };

  it('are heard and understood', async () => {
    const file = join(folder.path, 'head.wav');
    const [row] = await hear(file);
    expect(row).toMatchObject({
      file,
      words: 'head one ninety two',
      understood: { readings: [{ quantity: 'headPressure', value: 192, unit: 'psi' }] },
    });
    const { confidence } = z.object({ confidence: z.number().max(1) }).parse(row);
    expect(confidence).toBeGreaterThan(0.4);
  });

  it('answer what was just asked for', async () => {
    const [row] = await hear('--asked', 'boxTemp', join(folder.path, 'forty.wav'));
    expect(row).toMatchObject({ understood: { readings: [{ quantity: 'boxTemp', value: 44 }] } });
  });

  it('are played in a visit, beside its file', async () => {
    const visit = join(folder.path, 'visit.txt');
    await writeFile(visit, 'suction fourteen\n> head.wav\n> missing.wav\nbox forty\n');
    const { status, printed, complaints } = await gloveside(['replay', '--json', visit]);
    const rows = printed.map((line): unknown => JSON.parse(line));
    expect(rows).toHaveLength(4);
    expect(rows[1]).toMatchObject({
      said: 'head one ninety two',
      understood: { readings: [{ quantity: 'headPressure', value: 192 }] },
    });
    expect(status).toBe(1);
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toMatch(/visit\.txt line 3: .*missing\.wav/);
  });
});
