import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { BrowserContext, Page } from 'playwright-core';
import { pressToTalk, untilListening } from './spoken-page.ts';
import { openStage, type Stage, UNPRESSED } from './stage.ts';
import {
  openVisitPage,
  readRecords,
  readingsOf,
  replyHas,
  sheetShows,
  typeWords,
} from './visit-page.ts';

/** The name of the error that `getUserMedia` rejects with, or a silent microphone. */
type Answer = 'NotAllowedError' | 'NotFoundError' | 'NotReadableError' | 'silence';

/** Each time the page asks, the next answer; the last one holds. */
async function answerMicrophone(context: BrowserContext, answers: readonly Answer[]) {
  await context.addInitScript((inTurn: readonly string[]) => {
    const left = [...inTurn];
    navigator.mediaDevices.getUserMedia = async () => {
      const answer = (left.length > 1 ? left.shift() : left[0]) ?? '';
      if (answer !== 'silence') throw new DOMException('scripted', answer);
      const audio = new AudioContext();
      await audio.resume();
      const { stream } = audio.createMediaStreamDestination();
      Reflect.set(window, 'microphone', stream);
      return stream;
    };
  }, answers);
}

/** As when a headset is switched off: the device is gone, and the track says so. */
async function takeMicrophoneAway(page: Page): Promise<void> {
  await page.evaluate(() => {
    const stream: unknown = Reflect.get(window, 'microphone');
    if (!(stream instanceof MediaStream)) throw new Error('the page has no microphone');
    for (const track of stream.getTracks()) {
      track.stop();
      track.dispatchEvent(new Event('ended'));
    }
  });
}

describe('a microphone that fails', () => {
  let stage: Stage;

  beforeEach(async () => {
    stage = await openStage(UNPRESSED);
  });

  afterEach(() => stage.close());

  const untilDeaf = (why: string) =>
    stage.page.locator(`[data-testid=state][data-state=deaf][data-why=${why}]`).waitFor();
  const press = () => stage.page.getByTestId('field').getByRole('button').first().click();
  const readings = async () => readingsOf(await readRecords(stage.page));

  async function typeReading(reading: number): Promise<void> {
    await typeWords(stage.page, `box ${reading}`);
    await replyHas(stage.page, reading);
    await sheetShows(stage.page, 'boxTemp', reading);
  }

  it.each([
    ['NotAllowedError', 'refused', /allow it/i],
    ['NotFoundError', 'noMicrophone', /plug one in/i],
    ['NotReadableError', 'microphoneBusy', /another program/i],
  ] as const)(
    'with %s says what to do, takes typed words, and tries again at a press',
    async (name, why, toDo) => {
      const { page } = stage;
      await answerMicrophone(stage.browser.context, [name, 'silence']);
      await openVisitPage(page, stage.server.address);
      await press();
      await untilDeaf(why);
      expect(await page.getByTestId('reply').innerText()).toMatch(toDo);
      await typeReading(44);
      await untilDeaf(why);
      await pressToTalk(page);
      await typeReading(43);
      await untilListening(page);
      expect(await readings()).toEqual([44, 43]);
    },
  );

  it('keeps lessons from beginning, says what to do, and they begin at “try again”', async () => {
    const { page } = stage;
    await answerMicrophone(stage.browser.context, ['NotAllowedError', 'silence']);
    await openVisitPage(page, stage.server.address);
    await page.getByTestId('tab-visit').click();
    await page.getByTestId('teach-voice').click();
    const told = page.getByTestId('teaching-told').filter({ hasText: 'No microphone' });
    expect(await told.innerText()).toMatch(/allow it .* try again/i);
    for (const way of ['teaching-again', 'teaching-leave']) {
      const box = await page.getByTestId(way).boundingBox();
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(96);
    }
    await page.getByTestId('teaching-again').click();
    await page.locator('[data-testid=prompt][data-at="0"]').waitFor({ timeout: 60_000 });
    expect(await page.getByTestId('teaching-again').count()).toBe(0);
    await page.getByTestId('teaching-leave').click();
    await page.getByTestId('teaching').waitFor({ state: 'detached' });
  });

  it('that is taken away in the middle leaves the visit whole and the typing on', async () => {
    const { page } = stage;
    await answerMicrophone(stage.browser.context, ['silence']);
    await openVisitPage(page, stage.server.address);
    await pressToTalk(page);
    await typeReading(44);
    await untilListening(page);
    await takeMicrophoneAway(page);
    await untilDeaf('takenAway');
    await typeReading(43);
    await untilDeaf('takenAway');
    await pressToTalk(page);
    await typeReading(42);
    expect(await readings()).toEqual([44, 43, 42]);
    expect(new Set((await readRecords(page)).map(({ event }) => event.visit)).size).toBe(1);
  });
});
