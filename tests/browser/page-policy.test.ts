import { afterEach, beforeEach, expect, it } from 'vitest';
import { z } from 'zod';
import { openStage, type Stage } from './stage.ts';
import { openVisitPage, readRecords, readingsOf, replyHas, typeWords } from './visit-page.ts';

let stage: Stage;

beforeEach(async () => {
  stage = await openStage();
});

afterEach(() => stage.close());

/** What the page does that its own policy forbids, and each time it asks to keep what it stores. */
async function watchPage(): Promise<() => Promise<readonly string[]>> {
  const { page } = stage;
  await page.addInitScript(() => {
    const seen: string[] = [];
    Reflect.set(window, 'seen', seen);
    document.addEventListener('securitypolicyviolation', ({ blockedURI, violatedDirective }) =>
      seen.push(`${violatedDirective}: ${blockedURI}`),
    );
    StorageManager.prototype.persist = () => {
      seen.push('asks to keep');
      return Promise.resolve(false);
    };
  });
  return async () =>
    z.array(z.string()).parse(await page.evaluate((): unknown => Reflect.get(window, 'seen')));
}

it('does nothing that its policy forbids, and asks to keep what it stores once there is something', async () => {
  const { page } = stage;
  const seen = await watchPage();
  await openVisitPage(page, stage.server.address);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  expect(await seen()).toEqual([]);
  for (const reading of [44, 43]) {
    await typeWords(page, `box ${reading}`);
    await replyHas(page, reading);
  }
  expect(await readRecords(page).then(readingsOf)).toEqual([44, 43]);
  expect(await seen()).toEqual(['asks to keep']);
  // What it reads from the log it holds to its schema, too.
  await page.reload();
  await page.getByTestId('field').waitFor();
  expect(await seen()).toEqual([]);
});
