import type { BrowserContext, Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { giveMicrophone, pressToTalk, untilListening } from './spoken-page.ts';
import { openStage, type Stage, UNPRESSED } from './stage.ts';
import { openVisitPage, readRecords, readingsOf, replyHas, typeWords } from './visit-page.ts';

const PATIENCE = { timeout: 60_000 };

/** Keeps every worker that the page starts, so that a test can break them. */
async function keepWorkers(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => {
    const started: Worker[] = [];
    Reflect.set(window, 'started', started);
    window.Worker = class extends Worker {
      constructor(...given: ConstructorParameters<typeof Worker>) {
        super(...given);
        started.push(this);
      }
    };
  });
}

/** As when the device takes a worker's memory away: its thread is gone, and the page is told. */
async function breakWorkers(page: Page): Promise<void> {
  await page.evaluate(() => {
    const started: unknown = Reflect.get(window, 'started');
    for (const worker of Array.isArray(started) ? started : []) {
      if (!(worker instanceof Worker)) continue;
      worker.terminate();
      worker.dispatchEvent(new Event('error'));
    }
  });
}

/** Keeps every audio context of the page, so that a test can take its sound. */
async function keepContexts(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => {
    const made: AudioContext[] = [];
    Reflect.set(window, 'made', made);
    window.AudioContext = class extends AudioContext {
      constructor(options?: AudioContextOptions) {
        super(options);
        made.push(this);
      }
    };
  });
}

/** As iOS does for a call: the state tells, and no sound comes. Chromium itself knows no such state. */
async function turnSound(page: Page, state: 'interrupted' | 'running'): Promise<void> {
  await page.evaluate(async (turned) => {
    const made: unknown = Reflect.get(window, 'made');
    for (const context of Array.isArray(made) ? made : []) {
      if (!(context instanceof AudioContext)) continue;
      if (turned === 'interrupted') {
        await context.suspend();
        Object.defineProperty(context, 'state', { value: turned, configurable: true });
        context.dispatchEvent(new Event('statechange'));
      } else {
        Reflect.deleteProperty(context, 'state');
        await context.resume();
      }
    }
  }, state);
}

/** Headless Chromium hides no page by itself. */
async function turn(page: Page, state: DocumentVisibilityState): Promise<void> {
  await page.evaluate((visibility) => {
    Object.defineProperty(document, 'visibilityState', { value: visibility, configurable: true });
    Object.defineProperty(document, 'hidden', {
      value: visibility === 'hidden',
      configurable: true,
    });
    document.dispatchEvent(new Event('visibilitychange'));
  }, state);
}

describe('on a page that listens', () => {
  let stage: Stage;

  beforeEach(async () => {
    stage = await openStage(UNPRESSED);
    await giveMicrophone(stage.browser.context);
    await keepWorkers(stage.browser.context);
    await keepContexts(stage.browser.context);
    await openVisitPage(stage.page, stage.server.address);
    await pressToTalk(stage.page);
  });

  afterEach(() => stage.close());

  const shows = (words: RegExp): Promise<void> =>
    stage.page.getByText(words).first().waitFor(PATIENCE);
  const readings = async () => readingsOf(await readRecords(stage.page));

  async function typeReading(reading: number): Promise<void> {
    await typeWords(stage.page, `box ${reading}`);
    await replyHas(stage.page, reading);
  }

  it('an engine whose thread dies is told, another listens, and nothing kept is lost', async () => {
    const { page } = stage;
    await typeReading(44);
    await untilListening(page);
    await breakWorkers(page);
    await typeReading(43);
    await shows(/my trained ear stopped.*what you said is kept/i);
    await untilListening(page);
    expect(await readings()).toEqual([44, 43]);
    await page.locator('[data-testid=state][data-hearing=yes]').waitFor(PATIENCE);
  });

  it('a call that takes the sound is told, and after it the page hears by itself', async () => {
    const { page } = stage;
    await typeReading(44);
    await untilListening(page);
    await turnSound(page, 'interrupted');
    await page.locator('[data-testid=state][data-why=interrupted]').waitFor(PATIENCE);
    await shows(/a call or another program has the sound\. type, or wait, or press here/i);
    await typeReading(43);
    await turnSound(page, 'running');
    await untilListening(page);
    await shows(/the sound was taken away for a while, and I heard nothing\. I hear again/i);
    expect(await readings()).toEqual([44, 43]);
  });

  it('out of sight it stops, and back in sight it says that it listens again', async () => {
    const { page } = stage;
    await typeReading(44);
    await untilListening(page);
    await turn(page, 'hidden');
    await turn(page, 'visible');
    await shows(/out of sight and heard nothing/i);
    await untilListening(page);
    expect(await readings()).toEqual([44]);
  });
});
