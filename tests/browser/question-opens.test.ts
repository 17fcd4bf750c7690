import { afterEach, beforeEach, expect, it } from 'vitest';
import { openStage, type Stage } from './stage.ts';
import { openVisitPage, replyHas, sheetShows, typeWords } from './visit-page.ts';

let stage: Stage;

beforeEach(async () => {
  stage = await openStage();
});

afterEach(() => stage.close());

/** From the sheet's head, which stays where it is, down to the newest reading. */
const newestUnderHead = (): Promise<number> =>
  stage.page.evaluate(() => {
    const topOf = (row: string): number =>
      document.querySelector(row)?.getBoundingClientRect().top ?? NaN;
    const head = document.querySelector('.ledger thead th')?.getBoundingClientRect().bottom ?? NaN;
    return Math.abs(Math.round(topOf('[data-newest]') - head));
  });

it('keeps the newest reading in sight when a question opens, where the browser does not do so by itself', async () => {
  const { page } = stage;
  await page.setViewportSize({ width: 390, height: 844 });
  await openVisitPage(page, stage.server.address);
  // As in WebKit, which has no such thing.
  await page.evaluate(() => {
    const style = new CSSStyleSheet();
    style.replaceSync('.panel { overflow-anchor: none; }');
    document.adoptedStyleSheets = [style];
  });
  for (const words of ['head 192', 'suction 18', 'suction line 29', 'discharge line 160']) {
    await typeWords(page, words);
    await replyHas(page, Number(words.match(/\d+/)?.[0]));
  }
  await sheetShows(page, 'dischargeLineTemp', 160);
  await expect.poll(newestUnderHead).toBeLessThan(3);
  await typeWords(page, 'suction 250');
  await page.locator('[data-testid=state][data-state=asking]').waitFor();
  await expect.poll(newestUnderHead).toBeLessThan(3);
});
