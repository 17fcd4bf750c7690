import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { joined } from '../../core/hearing/joined.ts';
import { createNoise, fan, RATE_HZ, speak } from '../hearing/signals.ts';
import { gloveside } from '../support/fake-terminal.ts';
import { speakWav } from '../support/flite.ts';
import { createScratchFolder } from '../support/scratch-folder.ts';
import { wavOf } from '../support/wav.ts';

const sentenceSchema = z.object({
  words: z.string(),
  startS: z.number(),
  endS: z.number(),
  understood: z.object({ readings: z.array(z.object({ value: z.number() })) }),
});
const saidSchema = z.object({ said: z.string() });

/** Sentences with ever longer pauses between them in a quiet room, and where each of them is. */
function talkOf(sentences: readonly string[]) {
  const noise = createNoise(7);
  const room = (seconds: number): Float32Array =>
    new Float32Array(seconds * RATE_HZ).map(() => 0.0005 * noise());
  let samples = room(1);
  const spansS = sentences.map((sentence, at) => {
    const begun = samples.length / RATE_HZ;
    samples = joined([samples, speak(sentence, 'rms')]);
    const over = samples.length / RATE_HZ;
    samples = joined([samples, room(2 + at / 2)]);
    return [begun, over] as const;
  });
  return { samples, spansS };
}

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

  it('of several sentences are cut where the page cuts, each heard with its start', async () => {
    const file = join(folder.path, 'rounds.wav');
    const sentences = ['head one ninety two', 'suction fourteen', 'what should head be'];
    const talk = talkOf(['my uncle went fishing on saturday', ...sentences]);
    await writeFile(file, wavOf([...talk.samples], RATE_HZ));
    const rows = z.array(sentenceSchema).parse(await hear(file));
    expect(rows).toHaveLength(4);
    expect(rows.map(({ words }) => words).slice(1)).toEqual(sentences);
    expect(rows[0]?.understood.readings).toEqual([]);
    expect(rows.map(({ understood }) => understood.readings[0]?.value)).toEqual([
      undefined,
      192,
      14,
      undefined,
    ]);
    for (const [at, { startS, endS }] of rows.entries()) {
      const [begun, over] = talk.spansS[at] ?? [NaN, NaN];
      // Noticed within the first syllables, and over after the last of them: no word is outside.
      expect(startS).toBeGreaterThan(begun - 0.1);
      expect(startS).toBeLessThan(begun + 0.6);
      expect(endS).toBeGreaterThan(over - 0.2);
      expect(endS).toBeLessThan(over + 2);
    }
  });

  it('can be read a line a sentence, and taken for one sentence whole', async () => {
    const file = join(folder.path, 'two.wav');
    const talk = talkOf(['head one ninety two', 'suction fourteen']);
    await writeFile(file, wavOf([...talk.samples], RATE_HZ));
    const { printed } = await gloveside(['hear', '--lines', file]);
    expect(printed).toEqual([
      expect.stringMatching(/^ +0:0\d {2}takes +head one ninety two: head 192$/),
      expect.stringMatching(/^ +0:0\d {2}takes +suction fourteen: suction 14$/),
    ]);
    const [whole, ...more] = await hear('--whole', file);
    expect(more).toEqual([]);
    expect(whole).toMatchObject({ words: 'head one ninety two suction fourteen' });
    expect(whole).not.toHaveProperty('startS');
  });

  it('in which nobody speaks for longer than a sentence may last give what to do', async () => {
    const file = join(folder.path, 'room.wav');
    await writeFile(
      file,
      wavOf(
        [...fan(20, 5)].map((sample) => sample / 20),
        RATE_HZ,
      ),
    );
    const { status, printed } = await gloveside(['hear', file]);
    expect(status).toBe(1);
    expect(z.object({ error: z.string() }).parse(JSON.parse(printed[0] ?? '')).error).toMatch(
      /no voice was found in its 20 seconds: record it again closer .* --whole/,
    );
  });

  it('of a whole visit are played sentence by sentence', async () => {
    const talk = talkOf(['suction fourteen', 'head one ninety two']);
    await writeFile(join(folder.path, 'visit.wav'), wavOf([...talk.samples], RATE_HZ));
    const visit = join(folder.path, 'recorded.txt');
    await writeFile(visit, '> visit.wav\n');
    const { status, printed } = await gloveside(['replay', '--json', visit]);
    expect(status).toBe(0);
    const said = printed.slice(0, -1).map((line) => saidSchema.parse(JSON.parse(line)).said);
    expect(said).toEqual(['suction fourteen', 'head one ninety two']);
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
