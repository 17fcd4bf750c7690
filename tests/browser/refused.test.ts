import { afterEach, beforeEach, expect, it } from 'vitest';
import { eventsOnServer } from './page-server.ts';
import { openStage, type Stage } from './stage.ts';
import { openVisitPage, replyHas, typeWords } from './visit-page.ts';

let stage: Stage;

beforeEach(async () => {
  stage = await openStage();
});

afterEach(() => stage.close());

/** As from a server that holds something else in these places. */
async function refuseFromNow(): Promise<void> {
  await stage.page.evaluate(() => {
    const ask = window.fetch.bind(window);
    Reflect.set(window, 'take', () => (window.fetch = ask));
    window.fetch = () =>
      Promise.resolve(
        Response.json(
          { error: { kind: 'conflict', message: 'place 1 is taken' } },
          { status: 409 },
        ),
      );
  });
}

async function takeFromNow(): Promise<void> {
  await stage.page.evaluate(() => {
    const take: unknown = Reflect.get(window, 'take');
    if (typeof take === 'function') Reflect.apply(take, undefined, []);
  });
}

it('what the server refuses is told for as long as it is so, and sent again at a press', async () => {
  const { page } = stage;
  await openVisitPage(page, stage.server.address);
  await refuseFromNow();
  await typeWords(page, 'box 44');
  await page.getByTestId('notice').getByText('The server does not take what you').waitFor();
  await typeWords(page, 'box 43');
  await replyHas(page, 43);
  expect(await page.getByTestId('not-sent').innerText()).toBe('not on the server');
  await page.getByTestId('tab-visit').click();
  await expect
    .poll(() => page.getByTestId('unsynced').innerText())
    .toBe('3 entries on this device only');
  expect(await page.getByTestId('refused').innerText()).toMatch(/“place 1 is taken”/);
  await takeFromNow();
  await page.getByTestId('send-again').click();
  await expect.poll(() => eventsOnServer(stage.server)).toEqual([3]);
  await expect.poll(() => page.getByTestId('not-sent').count()).toBe(0);
  expect(await page.getByTestId('refused').count()).toBe(0);
});
