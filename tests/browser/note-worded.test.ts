import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { openStage } from './stage.ts';
import {
  openVisitPage,
  readRecords,
  replyHas,
  typeWords,
  waitLongerForModel,
} from './visit-page.ts';

const SAID = [
  "it's a reach in on one thirty four a with a txv",
  'memo warm lettuce since this morning',
  'ambient ninety one, head two fifty two, suction twenty four, box forty nine',
  "condenser's plugged",
  "that's my before",
  'i brushed the condenser',
  'box thirty eight',
];

const TEMPLATE = 'Suction is 24 psi.';

/** Asked once more, to learn whether the model is there. */
async function suction(page: Page): Promise<string> {
  const reply = page.getByTestId('reply');
  const number = await reply.getAttribute('data-number');
  await typeWords(page, 'what is suction');
  await expect.poll(() => reply.getAttribute('data-number'), { timeout: 20_000 }).not.toBe(number);
  return reply.innerText();
}

it('words the note at the finish, and shows the same after a reload', async () => {
  const stage = await openStage();
  const { browser, server } = stage;
  const { page } = browser;
  await waitLongerForModel(browser.context);
  await openVisitPage(page, server.address);
  for (const words of SAID) await typeWords(page, words);
  await replyHas(page, 38);
  await expect.poll(() => suction(page), { timeout: 60_000, interval: 300 }).not.toBe(TEMPLATE);
  await typeWords(page, 'finish');
  const note = page.getByTestId('note');
  await note.waitFor();
  const first = await note.innerText();
  expect(first).toContain('For the customer');
  expect(first).toContain('warm lettuce since this morning');
  await page.reload();
  await page.getByTestId('tab-visit').click();
  await page.getByRole('button', { name: ', finished' }).click();
  await page.getByTestId('tab-note').click();
  await expect.poll(() => note.innerText()).toBe(first);
  const [worded] = (await readRecords(page)).filter(({ event }) => event.type === 'noteWorded');
  const { passages = [] } = worded?.event.type === 'noteWorded' ? worded.event : {};
  expect(passages.length).toBeGreaterThan(3);
  for (const { text } of passages) expect(first).toContain(text);
  await stage.close();
});
