import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openStage, type Stage } from './stage.ts';
import { openVisitPage, typeWords } from './visit-page.ts';

const TEXT_AT_ARMS_LENGTH = 40;

const fontOf = (locator: Locator): Promise<number> =>
  locator.evaluate((element) => parseFloat(getComputedStyle(element).fontSize));

const bottomOf = (locator: Locator): Promise<number> =>
  locator.evaluate((element) => element.getBoundingClientRect().bottom);

describe('what is timed and watched, on a small phone', () => {
  let stage: Stage;

  beforeAll(async () => {
    stage = await openStage();
    const { page } = stage;
    await page.addInitScript(() => Reflect.set(window, 'speechSynthesis', undefined));
    await page.clock.install();
    await page.setViewportSize({ width: 360, height: 640 });
    await openVisitPage(page, stage.server.address);
  });

  afterAll(() => stage.close());

  const told = (words: string): Promise<void> =>
    stage.page.getByTestId('reply').filter({ hasText: words }).waitFor();

  it('stands over the answer, large, and the number stays the largest and its words whole', async () => {
    const { page } = stage;
    for (const words of ['R-134a', 'head two fifty', 'i brushed the condenser']) {
      await typeWords(page, words);
    }
    await typeWords(page, 'ten minutes on the vacuum hold');
    await told('10 min on the vacuum hold');
    await typeWords(page, 'twenty minutes for the defrost');
    await page.clock.fastForward('05:00');
    await typeWords(page, 'head two hundred');
    await told('Head 200.');
    await page.clock.fastForward('02:00');
    await typeWords(page, 'head one ninety');
    await told('Head 190.');
    await page.getByTestId('trends').filter({ hasText: 'head down 10 psi in 2 min' }).waitFor();
    const first = page.getByTestId('timer').first();
    expect(await first.innerText()).toMatch(/^[23]:\d\d\s+vacuum hold$/);
    const timer = await fontOf(first.locator('b'));
    expect(timer).toBeGreaterThanOrEqual(TEXT_AT_ARMS_LENGTH);
    expect(await fontOf(page.getByTestId('large-value'))).toBeGreaterThan(2 * timer);
    const field = await bottomOf(page.getByTestId('field'));
    expect(await bottomOf(page.getByTestId('reply'))).toBeLessThanOrEqual(field);
    await page.getByTestId('tab-sheet').click();
    const low = await bottomOf(page.getByTestId('field'));
    expect(low).toBeLessThan(field);
    expect(await bottomOf(page.getByTestId('reply'))).toBeLessThanOrEqual(low);
    await page.getByTestId('tab-sheet').click();
  });

  it('rings at its time, and stands as up through a reload until it is answered', async () => {
    const { page } = stage;
    await page.clock.fastForward('04:00');
    await told('10 min up: vacuum hold. Tell me the vacuum in microns.');
    const up = page.locator('[data-testid=timer][data-up]');
    expect(await up.innerText()).toMatch(/^up\s+vacuum hold$/);
    await page.reload();
    await up.waitFor();
    await typeWords(page, 'four hundred');
    await told('Vacuum 400 micron.');
    await up.waitFor({ state: 'detached' });
    expect(await page.getByTestId('timer').innerText()).toMatch(/defrost$/);
  });

  it('stops with its visit, and the page says so', async () => {
    const { page } = stage;
    await page.getByTestId('tab-visit').click();
    await page.getByRole('button', { name: 'new visit', exact: true }).click();
    const notice = page.getByTestId('notice');
    await notice.filter({ hasText: 'Stopped with the visit before: the defrost timer.' }).waitFor();
    await page.getByTestId('timer').waitFor({ state: 'detached' });
  });
});
