import { readFile } from 'node:fs/promises';
import type { BrowserContext, Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { BUILT_PAGE } from './page-server.ts';
import { giveMicrophone, pressToTalk, untilListening } from './spoken-page.ts';
import { openStage, type Stage, UNPRESSED } from './stage.ts';
import { openVisitPage, readRecords, readingsOf, replyHas, typeWords } from './visit-page.ts';

const PATIENCE = { timeout: 60_000 };
const MODEL = '/model/neural/model.onnx';

/** As in a private window of some browsers: there is no such thing. */
async function takeServiceWorkersAway(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'));
}

/** As when the device is full: the browser takes no event more. Gives back how to free some room. */
async function fillStorage(page: Page): Promise<() => Promise<void>> {
  await page.evaluate(() => {
    const add = Reflect.get(IDBObjectStore.prototype, 'add');
    Reflect.set(window, 'freeStorage', () => (IDBObjectStore.prototype.add = add));
    IDBObjectStore.prototype.add = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
  });
  return () =>
    page.evaluate(() => {
      const free: unknown = Reflect.get(window, 'freeStorage');
      if (typeof free === 'function') Reflect.apply(free, undefined, []);
    });
}

describe('a device that keeps nothing, or no more', () => {
  let stage: Stage;

  beforeEach(async () => {
    stage = await openStage(UNPRESSED);
    await giveMicrophone(stage.browser.context);
  });

  afterEach(() => stage.close());

  const shows = (words: RegExp): Promise<void> =>
    stage.page.getByText(words).first().waitFor(PATIENCE);
  const readings = async () => readingsOf(await readRecords(stage.page));

  async function typeReading(reading: number): Promise<void> {
    await typeWords(stage.page, `box ${reading}`);
    await replyHas(stage.page, reading);
  }

  it('without service workers listens and keeps, and says that it will not open offline', async () => {
    const { page } = stage;
    await takeServiceWorkersAway(stage.browser.context);
    await openVisitPage(page, stage.server.address);
    await pressToTalk(page);
    await typeReading(44);
    await untilListening(page);
    await expect.poll(readings).toEqual([44]);
    await page.getByTestId('tab-visit').click();
    await shows(/this browser cannot keep a page/i);
  });

  it('hears by its spare ear, and says so, where the model of the trained one stops half way', async () => {
    const { page } = stage;
    const whole = await readFile(BUILT_PAGE + MODEL);
    await takeServiceWorkersAway(stage.browser.context);
    await stage.browser.context.route(`**${MODEL}*`, (route) =>
      route.fulfill({ body: whole.subarray(0, whole.length / 2) }),
    );
    await openVisitPage(page, stage.server.address);
    await pressToTalk(page);
    await shows(/my trained ear stopped/i);
    await page.getByTestId('tab-visit').click();
    const use = page.getByTestId('listening');
    await expect.poll(() => use.getAttribute('data-use'), PATIENCE).toBe('embedded');
  });

  it('keeps a reading in memory while there is no room, says so, and keeps it once there is', async () => {
    const { page } = stage;
    await openVisitPage(page, stage.server.address);
    await typeReading(44);
    await expect.poll(readings).toEqual([44]);
    const free = await fillStorage(page);
    await typeWords(page, 'box 43');
    await shows(/not kept yet\. The storage of this device is full/i);
    await free();
    await typeReading(42);
    await expect.poll(readings, PATIENCE).toEqual([44, 43, 42]);
  });

  it('says once that a choice holds until the page is closed, where it is not stored', async () => {
    const { page } = stage;
    await openVisitPage(page, stage.server.address);
    await page.evaluate(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException('no room', 'QuotaExceededError');
      };
    });
    await page.getByTestId('tab-visit').click();
    await page.getByTestId('parts').fill('blower wheel');
    await page.getByTestId('wording-plain').click();
    await shows(/did not store what you chose: it holds until this page is closed/i);
    await typeReading(44);
    await page.getByTestId('tab-visit').click();
    await page.getByTestId('wording-varied').click();
    expect(await page.getByTestId('wording-varied').getAttribute('aria-pressed')).toBe('true');
    expect(await page.getByTestId('notice').count()).toBe(0);
  });

  it('whose browser threw the kept files away offline takes typed words, and hears once it is back', async () => {
    const { page } = stage;
    await openVisitPage(page, stage.server.address);
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
      await Promise.all((await caches.keys()).map((name) => caches.delete(name)));
    });
    await stage.server.stop();
    await page.getByTestId('field').getByRole('button').first().click();
    await page.locator('[data-testid=state][data-why=recogniserFailed]').waitFor(PATIENCE);
    await typeReading(44);
    await expect.poll(readings).toEqual([44]);
    await stage.restartServer();
    await pressToTalk(page);
  });
});
