import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { writeTinySpeechModel } from '../support/tiny-speech-model.ts';
import { wavOf } from '../support/wav.ts';
import { giveMicrophone, pressToTalk, untilListening } from './spoken-page.ts';
import { openStage, UNPRESSED } from './stage.ts';
import { openVisitPage, sheetShows } from './visit-page.ts';

/** A second of a tone that lies above nought as a whole, with a moment of rest on either side. */
function toneAboveNought(): string {
  const RATE = 16_000;
  const samples = Array.from({ length: 3 * RATE }, (_, index) =>
    index < RATE || index > 2 * RATE ? 0 : 0.2 + 0.2 * Math.sin((2 * Math.PI * 700 * index) / RATE),
  );
  return wavOf(samples, RATE).toString('base64');
}

it('hears in the page by a speech model chosen by its name on the hub, and without one by its own ears', async () => {
  const stage = await openStage(UNPRESSED);
  const { page, server } = stage;
  const { context } = stage.browser;
  const model = join(stage.folder, 'model');
  await writeTinySpeechModel(model, { above: 'box forty four', below: 'memo nothing' });
  await giveMicrophone(context);
  // A service worker's own requests would not pass by here.
  await context.addInitScript(() =>
    Object.defineProperty(navigator, 'serviceWorker', { value: undefined }),
  );
  await context.route('https://huggingface.co/**', async (route) => {
    const file = /\/shop\/tiny-ear\/resolve\/main\/(.*)$/.exec(route.request().url())?.[1];
    const body = await readFile(join(model, (file ?? '').replace('_quantized', ''))).catch(
      () => null,
    );
    const headers = { 'access-control-allow-origin': '*' };
    await route.fulfill(body ? { body, headers } : { status: 404, headers });
  });
  await openVisitPage(page, server.address);
  await page.getByTestId('tab-visit').click();
  await page.getByTestId('ear-ownWithModel').click();
  await page.getByTestId('ear-model').fill('shop/tiny-ear');
  await page.getByTestId('ear-model').press('Enter');
  await page.getByTestId('tab-sheet').click();
  await pressToTalk(page);
  await page.locator('[data-testid=state][data-hearing=yes]').waitFor({ timeout: 60_000 });
  await page.evaluate(async (sound) => {
    const play: unknown = Reflect.get(window, 'playIntoMicrophone');
    if (typeof play === 'function') await Reflect.apply(play, undefined, [sound]);
  }, toneAboveNought());
  await sheetShows(page, 'boxTemp', 44);
  expect(
    await page.evaluate(
      async () => (await (await caches.open('transformers-cache')).keys()).length,
    ),
  ).toBeGreaterThan(4);

  await page.getByTestId('tab-visit').click();
  await page.getByTestId('ear-model').fill('shop/unheard-of');
  await page.getByTestId('ear-model').press('Enter');
  await page.getByTestId('tab-sheet').click();
  // A press while the page speaks would only cut it off; one that meets the words of the reply counts as well.
  await untilListening(page);
  await page.getByTestId('field').getByRole('button').first().click({ force: true });
  await page.locator('[data-testid=state][data-state=paused]').waitFor();
  await pressToTalk(page);
  await page
    .getByText(/speech model did not come/i)
    .first()
    .waitFor({ timeout: 60_000 });
  await stage.close();
});
