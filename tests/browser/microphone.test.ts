import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { BrowserContext, Page } from 'playwright-core';
import { createScratchFolder } from '../support/scratch-folder.ts';
import { type OpenBrowser, openBrowser } from './chromium.ts';
import { type PageServer, startPageServer } from './page-server.ts';
import { pressToTalk, untilListening } from './spoken-page.ts';
import {
  openVisitPage,
  readRecords,
  readingsOf,
  replyHas,
  sheetShows,
  typeWords,
} from './visit-page.ts';

/** The name of the error that `getUserMedia` rejects with, or a silent microphone. */
type Answer = 'NotAllowedError' | 'NotFoundError' | 'NotReadableError' | 'silence';

/** Each time the page asks, the next answer; the last one holds. */
async function answerMicrophone(context: BrowserContext, answers: readonly Answer[]) {
  await context.addInitScript((inTurn: readonly string[]) => {
    const left = [...inTurn];
    navigator.mediaDevices.getUserMedia = async () => {
      const answer = (left.length > 1 ? left.shift() : left[0]) ?? '';
      if (answer !== 'silence') throw new DOMException('scripted', answer);
      const audio = new AudioContext();
      await audio.resume();
      const { stream } = audio.createMediaStreamDestination();
      Reflect.set(window, 'microphone', stream);
      return stream;
    };
  }, answers);
}

/** As when a headset is switched off: the device is gone, and the track says so. */
async function takeMicrophoneAway(page: Page): Promise<void> {
  await page.evaluate(() => {
    const stream: unknown = Reflect.get(window, 'microphone');
    if (!(stream instanceof MediaStream)) throw new Error('the page has no microphone');
    for (const track of stream.getTracks()) {
      track.stop();
      track.dispatchEvent(new Event('ended'));
    }
  });
}

describe('a microphone that fails', () => {
  let folder: Awaited<ReturnType<typeof createScratchFolder>>;
  let server: PageServer;
  let browser: OpenBrowser;

  beforeEach(async () => {
    folder = await createScratchFolder();
    server = await startPageServer({ data: `${folder.path}/data` });
    browser = await openBrowser({
      profile: `${folder.path}/profile`,
      args: ['--autoplay-policy=no-user-gesture-required'],
    });
  });

  afterEach(async () => {
    await browser.close();
    await server.stop();
    await folder.discard();
  });

  const untilDeaf = (why: string) =>
    browser.page.locator(`[data-testid=state][data-state=deaf][data-why=${why}]`).waitFor();
  const press = () => browser.page.getByTestId('field').getByRole('button').first().click();
  const readings = async () => readingsOf(await readRecords(browser.page));

  async function typeReading(reading: number): Promise<void> {
    await typeWords(browser.page, `box ${reading}`);
    await replyHas(browser.page, reading);
    await sheetShows(browser.page, 'boxTemp', reading);
  }

  it.each([
    ['NotAllowedError', 'refused', /allow it/i],
    ['NotFoundError', 'noMicrophone', /plug one in/i],
    ['NotReadableError', 'microphoneBusy', /another program/i],
  ] as const)(
    'with %s says what to do, takes typed words, and tries again at a press',
    async (name, why, toDo) => {
      const { page } = browser;
      await answerMicrophone(browser.context, [name, 'silence']);
      await openVisitPage(page, server.address);
      await press();
      await untilDeaf(why);
      expect(await page.getByTestId('reply').innerText()).toMatch(toDo);
      await typeReading(44);
      await untilDeaf(why);
      await pressToTalk(page);
      await typeReading(43);
      await untilListening(page);
      expect(await readings()).toEqual([44, 43]);
    },
  );

  it('that is taken away in the middle leaves the visit whole and the typing on', async () => {
    const { page } = browser;
    await answerMicrophone(browser.context, ['silence']);
    await openVisitPage(page, server.address);
    await pressToTalk(page);
    await typeReading(44);
    await untilListening(page);
    await takeMicrophoneAway(page);
    await untilDeaf('takenAway');
    await typeReading(43);
    await untilDeaf('takenAway');
    await pressToTalk(page);
    await typeReading(42);
    expect(await readings()).toEqual([44, 43, 42]);
    expect(new Set((await readRecords(page)).map(({ event }) => event.visit)).size).toBe(1);
  });
});
