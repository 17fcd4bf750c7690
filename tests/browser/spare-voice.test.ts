import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { z } from 'zod';
import { giveMicrophone, pressToTalk, untilListening } from './spoken-page.ts';
import { openStage, UNPRESSED } from './stage.ts';
import { openVisitPage, replyHas, typeWords } from './visit-page.ts';

/** The length in seconds of each recorded sound that the page began to play: tones have no samples of their own. */
async function played(page: Page): Promise<readonly number[]> {
  return z
    .array(z.number())
    .parse(await page.evaluate((): unknown => Reflect.get(window, 'played')));
}

it('a browser without a voice speaks with the page’s own, which it keeps', async () => {
  const stage = await openStage(UNPRESSED);
  const { browser, server } = stage;
  const { page } = browser;
  await giveMicrophone(browser.context);
  await browser.context.addInitScript(() => {
    const lengths: number[] = [];
    Reflect.set(window, 'played', lengths);
    const start = Reflect.get(AudioBufferSourceNode.prototype, 'start');
    AudioBufferSourceNode.prototype.start = function (this: AudioBufferSourceNode, ...when) {
      lengths.push(this.buffer?.duration ?? 0);
      start.apply(this, when);
    };
  });
  await openVisitPage(page, server.address);
  await page.getByTestId('tab-visit').click();
  await page.getByTestId('voice-fetched').click();
  await page.getByTestId('tab-sheet').click();
  await pressToTalk(page);
  const kept = (): Promise<unknown> =>
    page.evaluate(async () => (await (await caches.open('spare voice')).keys()).length);
  await expect.poll(kept, { timeout: 60_000 }).toBe(1);
  let reading = 40;
  const speaks = async (): Promise<boolean> => {
    reading += 1;
    await typeWords(page, `box ${reading}`);
    await replyHas(page, reading);
    await untilListening(page);
    return (await played(page)).some((seconds) => seconds > 0.4 && seconds < 4);
  };
  // Compiling it takes a moment more, in which replies are shown only.
  await expect.poll(speaks, { timeout: 60_000 }).toBe(true);
  await stage.close();
});
