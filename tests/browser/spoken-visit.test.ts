import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { gloveside } from '../support/fake-terminal.ts';
import { speakWav } from '../support/flite.ts';
import { createScratchFolder } from '../support/scratch-folder.ts';
import { writeFile } from 'node:fs/promises';
import { eventsOnServer } from './page-server.ts';
import { giveMicrophone, pressToTalk, speak, untilListening } from './spoken-page.ts';
import { openStage, type Stage, UNPRESSED } from './stage.ts';
import { openVisitPage, readRecords } from './visit-page.ts';

/** A number that the command line calculates: the page must say the same one. */
async function calculated(...words: readonly string[]): Promise<number> {
  const { printed } = await gloveside(['calc', ...words]);
  return z.object({ value: z.number() }).parse(JSON.parse(printed.join(''))).value;
}

async function inTurn<Item>(items: readonly Item[], work: (item: Item) => Promise<unknown>) {
  await items.reduce((so, item) => so.then(() => work(item)), Promise.resolve<unknown>(undefined));
}

describe('a short visit, spoken to the page', () => {
  let stage: Stage;

  beforeAll(async () => {
    stage = await openStage(UNPRESSED);
    await giveMicrophone(stage.browser.context);
    await openVisitPage(stage.page, stage.server.address);
    await pressToTalk(stage.page);
  });

  afterAll(() => stage.close());

  const cell = (row: string, column: string): Promise<string> =>
    stage.page.getByTestId(`sheet-row-${row}`).getByTestId(column).innerText();

  it('keeps each reading on the sheet and says it back', async () => {
    const { page } = stage;
    await speak(page, 'it is a two door reach in on one thirty four a with a txv');
    expect(await speak(page, 'ambient eighty eight', 'slt')).toBe('Ambient 88.');
    expect(await speak(page, 'head one ninety two, suction fourteen, box forty four')).toBe(
      'Head 192, suction 14, box 44.',
    );
    expect(await cell('headPressure', 'before')).toBe('192');
    expect(await cell('suctionPressure', 'before')).toBe('14');
    expect(await cell('boxTemp', 'before')).toBe('44');
    expect(await cell('ambientTemp', 'before')).toBe('88');
    expect(await page.getByTestId('strip-refrigerant').innerText()).toBe('R-134a');
  });

  it('answers aloud what head should be: the number that calc gives', async () => {
    const condensing = await calculated('condensingTarget', 'ambientTemp=88F', 'equipment=reachIn');
    const head = await calculated(
      'saturationPressure',
      'refrigerant=R-134a',
      `temperature=${condensing}F`,
      'phase=bubble',
    );
    // However it is worded: what the number was worked out through need not be said.
    const reply = await speak(stage.page, 'what should head be');
    expect(reply).toContain(`${Math.round(head)} psi`);
    expect(await stage.page.getByTestId('large-value').innerText()).toBe(String(Math.round(head)));
    const off = await speak(stage.page, 'how far off am i');
    expect(off).toContain(`${192 - Math.round(head)} psi over`);
  });

  it('keeps what was found and done, before and after apart, and compares them', async () => {
    const { page } = stage;
    await inTurn(
      [
        'condenser is plugged',
        'that is my before',
        'i brushed the condenser',
        'ambient eighty three, head one fifty eight, suction thirteen, box thirty six',
        'mark this as after',
      ],
      (sentence) => speak(page, sentence),
    );
    expect(await cell('headPressure', 'before')).toBe('192');
    expect(await cell('headPressure', 'after')).toBe('158');
    expect(await cell('boxTemp', 'after')).toBe('36');
    const reply = await speak(page, 'compare before and after');
    expect(reply).toContain('Head down 34 psi: 192 before, 158 after.');
  });

  it('has the note ready, and every event once on the server', async () => {
    const { page } = stage;
    await speak(page, 'read me the note');
    await page.getByTestId('tab-note').click();
    const note = await page.getByTestId('note').innerText();
    for (const line of ['R-134a', 'Condenser: plugged.', 'Condenser brushed.', '192', '158']) {
      expect(note).toContain(line);
    }
    await speak(page, 'that is it, finish');
    const records = await readRecords(page);
    expect(records.map(({ event }) => event.type)).toContain('visitFinished');
    expect(records.map(({ place }) => place)).toEqual(records.map((_, index) => index + 1));
    await expect
      .poll(() => eventsOnServer(stage.server), { timeout: 20_000 })
      .toEqual([records.length]);
  });
});

/** One smoke test of the way a real microphone takes: Chromium's own device, fed from a file over and over. */
describe('through the browser’s own microphone', () => {
  it('hears a reading', async () => {
    const folder = await createScratchFolder();
    const file = `${folder.path}/said.wav`;
    // The file runs from the moment the device opens, while the recogniser still loads: what it misses comes again.
    await writeFile(file, withSilence(speakWav('head one ninety two'), 6));
    const stage = await openStage(
      '--use-fake-ui-for-media-stream',
      '--use-fake-device-for-media-stream',
      `--use-file-for-fake-audio-capture=${file}`,
    );
    const { page, server } = stage;
    await openVisitPage(page, server.address);
    await pressToTalk(page);
    const value = page.getByTestId('sheet-row-headPressure').getByTestId('before');
    await expect.poll(() => value.innerText(), { timeout: 40_000 }).toBe('192');
    await untilListening(page);
    await stage.close();
    await folder.discard();
  });
});

/** The same WAV with seconds of silence before and after: 16-bit mono PCM, its lengths mended. */
function withSilence(wav: Buffer, seconds: number): Buffer {
  const rateHz = wav.readUInt32LE(24);
  const silence = Buffer.alloc(seconds * rateHz * 2);
  const header = Buffer.from(wav.subarray(0, 44));
  const sound = Buffer.concat([silence, wav.subarray(44), silence]);
  header.writeUInt32LE(sound.length + 36, 4);
  header.writeUInt32LE(sound.length, 40);
  return Buffer.concat([header, sound]);
}
