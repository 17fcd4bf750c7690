import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openStage, type Stage } from './stage.ts';
import { openVisitPage, readRecords, readingsOf, replyHas, typeWords } from './visit-page.ts';

describe('a sentence of 10,000 words', () => {
  let stage: Stage;

  beforeEach(async () => {
    stage = await openStage();
  });

  afterEach(() => stage.close());

  it('is called too long and stays where it was typed; one of a thousand is taken', async () => {
    const { page } = stage;
    const pair = (index: number) => `box ${30 + (index % 20)}`;
    const words = Array.from({ length: 5_000 }, (_, index) => pair(index)).join(' ');
    await openVisitPage(page, stage.server.address);
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
