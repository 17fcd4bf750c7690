import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createScratchFolder } from '../support/scratch-folder.ts';
import { type OpenBrowser, openBrowser } from './chromium.ts';
import { type PageServer, startPageServer } from './page-server.ts';
import { openVisitPage, readRecords, readingsOf, replyHas, typeWords } from './visit-page.ts';

describe('a sentence of 10,000 words', () => {
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

  it('is called too long and stays where it was typed; one of a thousand is taken', async () => {
    const { page } = browser;
    const pair = (index: number) => `box ${30 + (index % 20)}`;
    const words = Array.from({ length: 5_000 }, (_, index) => pair(index)).join(' ');
    await openVisitPage(page, server.address);
    await typeWords(page, 'box 44');
    await replyHas(page, 44);
    await typeWords(page, words);
    await expect
      .poll(() => page.getByTestId('notice').innerText())
      .toMatch(/10000 words.*in parts/);
    expect(await page.getByTestId('typed').inputValue()).toBe(words);
    expect(readingsOf(await readRecords(page))).toEqual([44]);

    const part = words.split(' ').slice(0, 1_000).join(' ');
    await typeWords(page, part);
    await expect
      .poll(async () => readingsOf(await readRecords(page)), { timeout: 20_000 })
      .toHaveLength(501);
    // It is kept before it is drawn.
    await page.getByTestId('notice').waitFor({ state: 'detached' });
  });
});
