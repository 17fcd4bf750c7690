import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openStage, type Stage } from './stage.ts';
import { openVisitPage, typeWords } from './visit-page.ts';

describe('steps on the page', () => {
  let stage: Stage;

  beforeAll(async () => {
    stage = await openStage();
    await stage.page.setViewportSize({ width: 390, height: 844 });
    await openVisitPage(stage.page, stage.server.address);
  });

  afterAll(() => stage.close());

  it('are moved by a gloved press as by voice, and stand where they stood after a reload', async () => {
    const { page } = stage;
    const steps = page.getByTestId('steps');
    await typeWords(page, "it's a walk-in cooler on 134a with a txv");
    await typeWords(page, 'how do i pump it down');
    await steps.getByText('step 1 of 8').waitFor();
    for (const name of ['back', 'again', 'next']) {
      const box = await page.getByTestId(name).boundingBox();
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(72);
    }
    await page.getByTestId('next').click();
    await steps.getByText('step 2 of 8').waitFor();
    expect(await page.getByTestId('reply').innerText()).toContain('solenoid stays open');
    for (const scheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme: scheme });
      const picture = process.env['STEPS_PICTURE'];
      if (picture) await page.screenshot({ path: `${picture}-${scheme}.png` });
    }
    await page.reload();
    await steps.getByText('step 2 of 8').waitFor();
    await typeWords(page, 'leave the steps');
    await steps.waitFor({ state: 'detached' });
  });
});
