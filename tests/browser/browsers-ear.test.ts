import type { BrowserContext, Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { giveMicrophone, pressToTalk, untilListening } from './spoken-page.ts';
import { openStage, type Stage, UNPRESSED } from './stage.ts';
import { openVisitPage, readRecords, readingsOf, sheetShows } from './visit-page.ts';

/** In place of Chromium's own, which here has no service behind it: each start does the next of what is written. */
async function scriptBrowsersEar(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => {
    const script: string[] = [];
    Reflect.set(window, 'script', script);
    class Scripted extends EventTarget {
      start() {
        setTimeout(() => {
          const next = script.shift();
          this.dispatchEvent(new Event('start'));
          this.dispatchEvent(new Event('audiostart'));
          if (next === undefined) return;
          const isError = next === 'network';
          const final = Object.assign([{ transcript: next, confidence: 0.9 }], { isFinal: true });
          const told = isError ? { error: next } : { results: [final] };
          this.dispatchEvent(Object.assign(new Event(isError ? 'error' : 'result'), told));
          this.dispatchEvent(new Event('end'));
        });
      }

      abort() {
        this.dispatchEvent(new Event('end'));
      }
    }
    Reflect.set(window, 'webkitSpeechRecognition', Scripted);
    Reflect.set(window, 'SpeechRecognition', Scripted);
    const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
    navigator.mediaDevices.getUserMedia = (wanted) => {
      Reflect.set(window, 'asked', true);
      return ask(wanted);
    };
  });
}

const write = (page: Page, ...lines: readonly string[]): Promise<void> =>
  page.evaluate((more) => {
    const script: unknown = Reflect.get(window, 'script');
    if (Array.isArray(script)) script.push(...more);
  }, lines);

describe('the browser’s ear, chosen on the page', () => {
  let stage: Stage;

  beforeEach(async () => {
    stage = await openStage(UNPRESSED);
    await giveMicrophone(stage.browser.context);
    await scriptBrowsersEar(stage.browser.context);
    await openVisitPage(stage.page, stage.server.address);
  });

  afterEach(() => stage.close());

  it('says where the voice goes, hears without our microphone, and gives way when it has no network', async () => {
    const { page } = stage;
    await page.getByTestId('tab-visit').click();
    await page.getByTestId('ear-own').and(page.locator('[aria-pressed=true]')).waitFor();
    await page.getByTestId('ear-browserAnywhere').click();
    expect(await page.getByTestId('ear-choice').innerText()).toMatch(/goes over the network/);
    await page.getByTestId('tab-sheet').click();
    await write(page, 'box 44');
    await page.getByTestId('field').getByRole('button').first().click();
    await sheetShows(page, 'boxTemp', 44);
    expect(await page.evaluate((): unknown => Reflect.get(window, 'asked'))).toBeUndefined();
    await write(page, 'network', 'network');
    await untilListening(page);
    await page.getByTestId('field').getByRole('button').first().click();
    await pressToTalk(page);
    await page
      .getByText(/my own listens now/i)
      .first()
      .waitFor({ timeout: 60_000 });
    await untilListening(page);
    expect(await page.evaluate((): unknown => Reflect.get(window, 'asked'))).toBe(true);
    expect(readingsOf(await readRecords(page))).toEqual([44]);
  });
});
