import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openStage, type Stage } from './stage.ts';
import {
  openVisitPage,
  readRecords,
  readingsOf,
  replyHas,
  sheetShows,
  typeWords,
} from './visit-page.ts';

describe('the page open in two tabs', () => {
  let stage: Stage;

  beforeEach(async () => {
    stage = await openStage();
  });

  afterEach(() => stage.close());

  it('writes from one; the other says so, holds what it is told and writes it when the first closes', async () => {
    const first = stage.page;
    await openVisitPage(first, stage.server.address);
    await typeWords(first, 'box 44');
    await replyHas(first, 44);
    const second = await stage.browser.context.newPage();
    await openVisitPage(second, stage.server.address);
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
