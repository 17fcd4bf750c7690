import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createScratchFolder } from '../support/scratch-folder.ts';
import { type OpenBrowser, openBrowser } from './chromium.ts';
import { type PageServer, startPageServer } from './page-server.ts';
import {
  openVisitPage,
  readRecords,
  readingsOf,
  replyHas,
  sheetShows,
  typeWords,
} from './visit-page.ts';

describe('the page open in two tabs', () => {
  let folder: Awaited<ReturnType<typeof createScratchFolder>>;
  let server: PageServer;
  let browser: OpenBrowser;

  beforeEach(async () => {
    folder = await createScratchFolder();
    server = await startPageServer({ data: `${folder.path}/data` });
    browser = await openBrowser({ profile: `${folder.path}/profile` });
  });

  afterEach(async () => {
    await browser.close();
    await server.stop();
    await folder.discard();
  });

  it('writes from one; the other says so, holds what it is told and writes it when the first closes', async () => {
    const first = browser.page;
    await openVisitPage(first, server.address);
    await typeWords(first, 'box 44');
    await replyHas(first, 44);
    const second = await browser.context.newPage();
    await openVisitPage(second, server.address);
    await typeWords(second, 'box 43');
    await expect.poll(() => second.getByTestId('notice').innerText()).toMatch(/another tab/i);
    await typeWords(first, 'head 192');
    await replyHas(first, 192);
    expect(readingsOf(await readRecords(second))).toEqual([44, 192]);

    await first.close();
    await expect
      .poll(async () => readingsOf(await readRecords(second)), { timeout: 20_000 })
      .toEqual([44, 192, 43]);
    const records = await readRecords(second);
    expect(records.map(({ event }) => event.seq)).toEqual([1, 2, 3, 4]);
    expect(new Set(records.map(({ event }) => event.visit)).size).toBe(1);
    await sheetShows(second, 'headPressure', 192);
    await sheetShows(second, 'boxTemp', 43);
    await typeWords(second, 'suction 14');
    await replyHas(second, 14);
    await sheetShows(second, 'headPressure', 192);
  });
});
