import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { utteranceSchema } from '../../core/wire/utterance-schema.ts';
import { gloveside } from '../support/fake-terminal.ts';
import { createScratchFolder } from '../support/scratch-folder.ts';
import { writeTinyModel } from '../support/tiny-model.ts';

const DEMO = fileURLToPath(
  new URL('../corpus/visits/reach-in-plugged-condenser.txt', import.meta.url),
);

const verdictSchema = z.looseObject({
  kind: z.enum(['known', 'refused', 'needs']),
  value: z.number().optional(),
});
const turnSchema = z.object({
  said: z.string(),
  understood: utteranceSchema,
  verdicts: z.array(verdictSchema),
  reply: z.string(),
});
const noteSchema = z.object({
  note: z.object({
    title: z.string(),
    sections: z.array(
      z.object({
        id: z.string(),
        lines: z.array(z.string()),
        table: z.object({ rows: z.array(z.array(z.string())) }).optional(),
      }),
    ),
  }),
  noteText: z.string(),
});

async function replayed(file: string) {
  const options = ['--json', '--phrasing', 'off'];
  const { status, printed, complaints } = await gloveside(['replay', ...options, file]);
  expect([status, complaints]).toEqual([0, []]);
  const rows = printed.map((line): unknown => JSON.parse(line));
  const turns = rows.slice(0, -1).map((row) => turnSchema.parse(row));
  return { turns, written: noteSchema.parse(rows.at(-1)) };
}
type Replayed = Awaited<ReturnType<typeof replayed>>;

async function calculated(...words: readonly string[]): Promise<number> {
  const { printed } = await gloveside(['calc', ...words]);
  return z.object({ value: z.number() }).parse(JSON.parse(printed[0] ?? '')).value;
}

// The first replay loads the whole core: seconds on a busy machine.
const PATIENCE = { timeout: 60_000 };

describe('the demo visit', PATIENCE, () => {
  let visit: Replayed;
  beforeAll(async () => (visit = await replayed(DEMO)), PATIENCE.timeout);

  const turn = (said: string) => {
    const found = visit.turns.find((each) => each.said === said);
    if (found === undefined) throw new Error(`nobody says ${said}`);
    return found;
  };
  const section = (id: string) => visit.written.note.sections.find((each) => each.id === id);
  const rowsOf = (id: string) => section(id)?.table?.rows.map((row) => row.join(' ')) ?? [];

  it('reads every number said, and leaves none over', () => {
    const readings = visit.turns.flatMap(({ understood }) => understood.readings);
    expect(readings.map(({ quantity, value, unit }) => [quantity, value, unit])).toEqual([
      ['ambientTemp', 91, 'degF'],
      ['headPressure', 252, 'psi'],
      ['suctionPressure', 24, 'psi'],
      ['boxTemp', 49, 'degF'],
      ['highCutoutPressure', 290, 'psi'],
      ['ambientTemp', 87, 'degF'],
      ['headPressure', 164, 'psi'],
      ['suctionPressure', 18, 'psi'],
      ['boxTemp', 39, 'degF'],
      ['suctionLineTemp', 29, 'degF'],
    ]);
    for (const { understood } of visit.turns) {
      expect([...understood.unclaimed, ...understood.doubts]).toEqual([]);
    }
  });

  it('answers with the numbers that calc gives', async () => {
    const condensing = await calculated('condensingTarget', 'ambientTemp=91F', 'equipment=reachIn');
    const target = await calculated(
      'saturationPressure',
      'refrigerant=R-134a',
      `temperature=${condensing}F`,
      'phase=dew',
    );
    const [should] = turn('what should head be').verdicts;
    expect(should).toMatchObject({ kind: 'known', answer: 'target', unit: 'psi' });
    expect(should?.value).toBeCloseTo(target, 1);
    const [off] = turn('how far off am I').verdicts;
    expect(off).toMatchObject({ answer: 'compare', direction: 'over', unit: 'psi' });
    expect(off?.value).toBeCloseTo(252 - target, 1);
    expect(turn('how close am I to the cutout').verdicts).toMatchObject([
      { answer: 'margin', side: 'inside', value: 290 - 252, unit: 'psi' },
    ]);
    const superheat = await calculated(
      'superheat',
      'refrigerant=R-134a',
      'suctionPressure=18psi',
      'suctionLineTemp=29F',
    );
    const [asked, answered] = visit.turns.filter(({ said }) => said === "what's my superheat");
    expect(asked?.verdicts).toMatchObject([{ kind: 'needs', need: 'suctionLineTemp' }]);
    expect(answered?.verdicts).toMatchObject([{ kind: 'known', answer: 'value', unit: 'dF' }]);
    expect(answered?.verdicts[0]?.value).toBeCloseTo(superheat, 1);
  });

  it('says its answers with those numbers, rounded as the trade does', () => {
    expect(turn('what should head be').reply).toContain('174 psi');
    expect(turn('how far off am I').reply).toContain('78 psi over');
    expect(turn('no, make it thirty eight').reply).toMatch(/38.*39/);
  });

  it('writes the note: the unit, the complaint, before and after, work and what is recommended', () => {
    expect(visit.written.note.title).toContain('Harbor Street Deli');
    expect(section('unit')?.lines.join(' ')).toMatch(/2-door reach-in.*R-134a/);
    expect(section('complaint')?.lines.join(' ')).toContain('every afternoon since Saturday');
    expect(rowsOf('before')).toContain('head pressure 252 psi');
    expect(rowsOf('after')).toContain('head pressure 164 psi');
    expect(rowsOf('after')).toContain('box temperature 38 °F');
    expect(section('findings')?.lines.join(' ')).toMatch(/[Cc]ondenser.*plugged/);
    expect(section('work')?.lines.join(' ')).toMatch(/[Cc]ondenser.*brush/);
    expect(rowsOf('change').join('\n')).toMatch(/head pressure 252 psi 164 psi.*88 psi/);
    expect(section('recommendations')?.lines.join(' ')).toMatch(/[Rr]eplace.*door gasket/);
    for (const line of section('unit')?.lines ?? []) expect(visit.written.noteText).toContain(line);
  });

  it('is the same each time it is replayed', async () => {
    expect(await replayed(DEMO)).toEqual(visit);
  });

  it('reads as a dialogue, then the note', async () => {
    const { status, printed } = await gloveside(['replay', '--phrasing', 'off', DEMO]);
    expect(status).toBe(0);
    const text = printed.join('\n');
    for (const { said, reply } of visit.turns) {
      expect(text).toContain(`you        ${said}\ngloveside  ${reply}\n`);
    }
    expect(text.endsWith(visit.written.noteText.trimEnd())).toBe(true);
  });
});

describe('replay', PATIENCE, () => {
  let folder: Awaited<ReturnType<typeof createScratchFolder>>;
  beforeAll(async () => (folder = await createScratchFolder()));
  afterAll(() => folder.discard());

  const visitOf = async (text: string) => {
    const file = join(folder.path, 'visit.txt');
    await writeFile(file, text);
    return file;
  };

  it('sets the clock, goes on a minute a sentence, and passes midnight', async () => {
    const file = await visitOf(
      'box forty\nbox forty one\n@ 23:59\nbox forty two\nbox forty three\n@ 0:05\nbox forty four\n' +
        'what is box\n',
    );
    const { turns } = await replayed(file);
    expect(turns.at(-1)?.verdicts).toMatchObject([{ value: 44, at: Date.UTC(2026, 0, 6, 0, 5) }]);
  });

  it('starts a new visit with nothing of the old one', async () => {
    const file = await visitOf('head two fifty\nnew visit\nbox forty\n');
    const { written } = await replayed(file);
    expect(written.noteText).toContain('40 °F');
    expect(written.noteText).not.toContain('250 psi');
  });

  it('rings timers by the clock of the file, each on a line of its own, before what is said then', async () => {
    const file = await visitOf(
      '@ 09:00\nfour hundred microns\nten minutes on the vacuum hold\n@ 09:30\nfour thirty\n',
    );
    const { turns } = await replayed(file);
    expect(turns.map(({ said, reply }) => (said === '' ? reply : said))).toEqual([
      'four hundred microns',
      'ten minutes on the vacuum hold',
      '10 min up: vacuum hold. Tell me the vacuum in microns.',
      'four thirty',
    ]);
    expect(turns[2]).toMatchObject({
      understood: { text: '', readings: [] },
      verdicts: [{ kind: 'known', answer: 'timeUp' }],
    });
    expect(turns[3]?.understood.readings).toMatchObject([{ quantity: 'vacuum', value: 430 }]);
    const spoken = (await gloveside(['replay', file])).printed.join('\n');
    expect(spoken).toContain('gloveside  10 min up: vacuum hold. Tell me the vacuum in microns.\n');
  });

  it('writes a note of an empty visit', async () => {
    const { turns, written } = await replayed(await visitOf('# nothing was said\n'));
    expect(turns).toEqual([]);
    expect(written.noteText).not.toBe('');
  });

  it('says which line of the file it cannot use, before it says anything else', async () => {
    const file = await visitOf('box forty\n@ noon\n');
    const { status, printed, complaints } = await gloveside(['replay', file]);
    expect([status, printed]).toEqual([1, []]);
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toMatch(/visit\.txt line 2: .*"noon"/);
  });

  it('says that there is no such file', async () => {
    const { status, complaints } = await gloveside(['replay', join(folder.path, 'none.txt')]);
    expect(status).toBe(1);
    expect(complaints[0]).toMatch(/cannot read .*none\.txt/);
  });
});

describe('replay with a phrasing model', PATIENCE, () => {
  let folder: Awaited<ReturnType<typeof createScratchFolder>>;
  let file: string;
  beforeAll(async () => {
    folder = await createScratchFolder();
    file = join(folder.path, 'visit.txt');
    await writeFile(file, 'head two fifty\nwhat is head\nsay that again\n');
  });
  afterAll(() => folder.discard());

  const turnRow = z.object({ reply: z.string(), phrased: z.boolean().optional() });
  const replayedWith = async (writes: string) => {
    const model = join(folder.path, 'model');
    await writeTinyModel(model, { writes });
    const options = ['--phrasing-model', model];
    const { status, printed, complaints } = await gloveside(['replay', file, '--json', ...options]);
    expect([status, complaints]).toEqual([0, []]);
    return printed.slice(0, -1).map((line) => turnRow.parse(JSON.parse(line)));
  };

  it('speaks what the model writes where it says the same, and again when asked', async () => {
    expect(await replayedWith('Right now head reads 250 psi ##.')).toEqual([
      { reply: 'Head 250.', phrased: false },
      { reply: 'Right now head reads 250 psi.', phrased: true },
      { reply: 'Right now head reads 250 psi.', phrased: false },
    ]);
  });

  it('speaks by our own model unless it is told otherwise, and the same each time', async () => {
    const own = async () => {
      const { status, printed, complaints } = await gloveside(['replay', file, '--json']);
      expect([status, complaints]).toEqual([0, []]);
      return printed.slice(0, -1).map((line) => turnRow.parse(JSON.parse(line)));
    };
    const [, answered, again] = await own();
    expect(answered?.reply).toMatch(/\b250 psi\b/);
    expect(answered?.phrased).toBe(answered?.reply !== 'Head is 250 psi.');
    expect(again?.reply).toBe(answered?.reply);
    expect(await own()).toEqual(await own());
  });

  it.each([['on'], ['off', '--phrasing-model', 'x']])(
    'says which ways there are: --phrasing %s',
    async (...options) => {
      const { status, complaints } = await gloveside(['replay', file, '--phrasing', ...options]);
      expect(status).toBe(2);
      expect(complaints.join(' ')).toContain('either --phrasing off or --phrasing-model FOLDER');
    },
  );

  it.each([
    ['babbles', 'psi psi'],
    ['writes another number', 'Right now head reads 205 psi ##.'],
    ['tells what to do about it', 'Head is 250 psi ##, replace it ##.'],
  ])('speaks the built-in sentence where the model %s', async (_, writes) => {
    const [, answered] = await replayedWith(writes);
    expect(answered).toEqual({ reply: 'Head is 250 psi.', phrased: false });
  });

  it('does not tell how a sentence came about where it is off', async () => {
    const { printed } = await gloveside(['replay', file, '--json', '--phrasing', 'off']);
    expect(printed.join('\n')).not.toContain('phrased');
  });

  it('says what the folder lacks before it says anything else', async () => {
    const none = join(folder.path, 'none');
    const { status, printed, complaints } = await gloveside([
      'replay',
      file,
      '--phrasing-model',
      none,
    ]);
    expect([status, printed]).toEqual([1, []]);
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toContain(`gloveside replay: there is no folder ${none}`);
  });

  it('tells of the option when asked for help', async () => {
    const { printed } = await gloveside(['replay', '--help']);
    expect(printed.join('\n')).toContain('--phrasing-model FOLDER');
  });
});
