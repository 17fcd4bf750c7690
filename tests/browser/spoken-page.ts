import type { BrowserContext, Page } from 'playwright-core';
import { speakWav, type Voice } from '../support/flite.ts';

const PATIENCE = { timeout: 30_000 };

/**
 * Gives the page a microphone that is silent until a test plays into it. A file behind Chromium's own fake
 * device runs free of the page and repeats, so a sentence would be spoken while the ear is closed.
 */
export async function giveMicrophone(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => {
    const audio = new AudioContext();
    const microphone = audio.createMediaStreamDestination();
    navigator.mediaDevices.getUserMedia = async () => {
      await audio.resume();
      return microphone.stream;
    };
    Reflect.set(window, 'playIntoMicrophone', async (wav: string) => {
      const bytes = Uint8Array.from(atob(wav), (letter) => letter.charCodeAt(0));
      const source = audio.createBufferSource();
      source.buffer = await audio.decodeAudioData(bytes.buffer);
      source.connect(microphone);
      const ended = new Promise((resolve) => source.addEventListener('ended', resolve));
      source.start();
      await ended;
    });
  });
}

/** Presses the one big area and waits until the page says that it listens. */
export async function pressToTalk(page: Page): Promise<void> {
  await page.getByTestId('field').getByRole('button').first().click();
  await untilListening(page);
}

/** Waits until the page shows one of the states. */
async function untilState(page: Page, ...states: readonly string[]): Promise<void> {
  const any = states.map((state) => `[data-testid="state"][data-state="${state}"]`).join(', ');
  await page.locator(any).waitFor(PATIENCE);
}

export const untilListening = (page: Page): Promise<void> => untilState(page, 'listening');

/** Plays a WAV file into the microphone; over when it is. */
export async function playSound(page: Page, wav: Buffer): Promise<void> {
  await page.evaluate(async (sound) => {
    const play: unknown = Reflect.get(window, 'playIntoMicrophone');
    if (typeof play === 'function') await Reflect.apply(play, undefined, [sound]);
  }, wav.toString('base64'));
}

/** Speaks one sentence once the page listens, and gives back the reply it then shows. */
export async function speak(page: Page, sentence: string, voice: Voice = 'rms'): Promise<string> {
  await untilListening(page);
  const before = (await page.getByTestId('reply').getAttribute('data-number')) ?? '0';
  await playSound(page, speakWav(sentence, voice));
  const next = `[data-testid="reply"][data-number]:not([data-number="${before}"])`;
  await page.locator(next).waitFor(PATIENCE);
  return page.getByTestId('reply').innerText();
}
