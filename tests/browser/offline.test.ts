import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { eventsOnServer } from './page-server.ts';
import { openStage, type Stage } from './stage.ts';
import {
  openVisitPage,
  readRecords,
  readingsOf,
  replyHas,
  sheetShows,
  typeWords,
} from './visit-page.ts';

describe('with the network off', () => {
  let stage: Stage;

  beforeEach(async () => {
    stage = await openStage();
  });

  afterEach(() => stage.close());

  /** The first load is over when the service worker has kept every file. */
  async function loadOnce() {
    await openVisitPage(stage.page, stage.server.address);
    await stage.page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
  }

  it('opens, answers and keeps after one load; the server gets every event once when it is back', async () => {
    const { page } = stage;
    await loadOnce();
    await typeWords(page, 'box 44');
    await replyHas(page, 44);
    await expect.poll(() => eventsOnServer(stage.server)).toEqual([2]);

    await stage.server.stop();
    await page.reload();
    await page.getByTestId('field').waitFor();
    await sheetShows(page, 'boxTemp', 44);
    await typeWords(page, 'box 43');
    await replyHas(page, 43);
    await sheetShows(page, 'boxTemp', 43);

    await stage.restartServer();
    await page.evaluate(() => dispatchEvent(new Event('online')));
    const records = await readRecords(page);
    expect(readingsOf(records)).toEqual([44, 43]);
    await expect
      .poll(() => eventsOnServer(stage.server), { timeout: 20_000 })
      .toEqual([records.length]);
  });

  /** As where nothing comes through, for what the page asks itself: a beacon goes another way. */
  async function askInVain() {
    await stage.page.evaluate(() => {
      window.fetch = () => Promise.reject(new TypeError('Failed to fetch'));
    });
  }

  it('says why it waits, and sends what is left as the page goes', async () => {
    const { page } = stage;
    await loadOnce();
    await askInVain();
    await typeWords(page, 'box 44');
    await replyHas(page, 44);
    await page.getByTestId('tab-visit').click();
    await expect
      .poll(() => page.getByTestId('send-trouble').allInnerTexts())
      .toEqual([expect.stringMatching(/^Not sent yet: no answer from the server/)]);
    expect(await eventsOnServer(stage.server)).toEqual([]);
    await page.goto('about:blank');
    await expect.poll(() => eventsOnServer(stage.server)).toEqual([2]);
    await openVisitPage(page, stage.server.address);
    await page.getByTestId('tab-visit').click();
    const unsynced = page.getByTestId('unsynced');
    await expect.poll(() => unsynced.innerText()).toBe('everything is on the server');
    expect(await eventsOnServer(stage.server)).toEqual([2]);
  });

  it('has kept every file that the server serves, the recogniser and its model included', async () => {
    const { page } = stage;
    await loadOnce();
    const kept = await page.evaluate(async () => {
      const caches_ = await Promise.all((await caches.keys()).map((name) => caches.open(name)));
      const requests = await Promise.all(caches_.map((cache) => cache.keys()));
      return requests.flat().map(({ url }) => new URL(url).pathname);
    });
    expect(kept).toEqual(expect.arrayContaining([...stage.server.files]));
    expect(kept.some((path) => path.endsWith('.wasm'))).toBe(true);
    expect(kept).toEqual(expect.arrayContaining(['/model/en-us/mdef', '/model/en-us/dict.txt']));
    expect(kept.filter((path) => path.startsWith('/api/'))).toEqual([]);
  });
});
