import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { VOICE_PROMPTS } from '../../core/language/heard/voice-prompts.ts';
import { NEURAL_MODEL_FOLDER } from '../../server/hearing/neural-model.ts';
import { readAcousticDescription } from '../../core/hearing/acoustic-model.ts';
import { speakWav } from '../support/flite.ts';
import { giveMicrophone, playSound, pressToTalk, speak } from './spoken-page.ts';
import { openStage, type Stage } from './stage.ts';
import { openVisitPage } from './visit-page.ts';

const PATIENCE = { timeout: 30_000 };

/** A voice that changes nothing, for the page's own model. */
async function plainVoice(): Promise<string> {
  const text = await readFile(`${NEURAL_MODEL_FOLDER}/model.json`, 'utf8');
  const outcome = readAcousticDescription(text);
  if (outcome.kind === 'unreadable') throw new Error(outcome.message);
  const { edition, innerSize, phones } = outcome.description;
  const row = Array<number>(innerSize + 1).fill(0);
  return JSON.stringify({ version: 1, edition, correction: phones.map(() => row) });
}

describe('a page that is taught a voice', () => {
  let stage: Stage;

  beforeEach(async () => {
    stage = await openStage();
    await giveMicrophone(stage.page.context());
    await openAnewEachTime(stage.page);
    await openVisitPage(stage.page, stage.server.address);
  });

  afterEach(() => stage.close());

  /** Reads aloud once the page hears this prompt. */
  async function readAloud(at: number, words = VOICE_PROMPTS[at] ?? ''): Promise<void> {
    const { page } = stage;
    const hearing = `[data-testid=prompt][data-at="${at}"][data-hearing=true]`;
    await page.locator(hearing).waitFor(PATIENCE);
    await playSound(page, speakWav(words));
  }

  const known = (): Promise<string | null> =>
    stage.page.getByTestId('voice-known').getAttribute('data-known');

  it('goes on by itself from prompt to prompt, asks again for what it did not hear, stops and goes on', async () => {
    const { page } = stage;
    await page.getByTestId('tab-visit').click();
    await page.getByTestId('teach-voice').click();
    await readAloud(0);
    await readAloud(1, 'undo');
    await page.getByText('Not quite heard. Once more:').waitFor(PATIENCE);
    await readAloud(1);
    await page.locator('[data-testid=prompt][data-at="2"]').waitFor(PATIENCE);
    await page.getByTestId('teaching-leave').click();
    expect(await page.getByTestId('teach-voice').innerText()).toBe('go on at 3 of 20');
    await page.getByTestId('teach-voice').click();
    await readAloud(2);
    await page.locator('[data-testid=prompt][data-at="3"]').waitFor(PATIENCE);
    await page.getByTestId('teaching-leave').click();
    expect(await known()).toBe('none');
    await page.getByTestId('tab-sheet').click();
    await pressToTalk(page);
    expect(await speak(page, 'box forty four')).toMatch(/^Box 44/);
  });

  it('hears by what is kept, forgets it at a press, and hears on where it is damaged', async () => {
    const { page } = stage;
    await keepVoice(page, await plainVoice());
    await page.reload();
    await page.getByTestId('tab-visit').click();
    await expect.poll(known, PATIENCE).toBe('learnt');
    await page.getByTestId('tab-sheet').click();
    await pressToTalk(page);
    expect(await speak(page, 'box forty four')).toMatch(/^Box 44/);
    await page.getByTestId('tab-visit').click();
    expect(await known()).toBe('learnt');
    await page.getByTestId('forget-voice').click();
    await expect.poll(known, PATIENCE).toBe('none');
    await keepVoice(page, '{"version":1,"edi');
    await page.reload();
    await page.getByTestId('tab-visit').click();
    await expect.poll(known, PATIENCE).toBe('damaged');
    await page.getByTestId('tab-sheet').click();
    await pressToTalk(page);
    expect(await speak(page, 'box forty three')).toMatch(/43/);
  });
});

/** As a real microphone: what was let go of is another track when it is asked for again. */
async function openAnewEachTime(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const open = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
    navigator.mediaDevices.getUserMedia = async (wanted) => (await open(wanted)).clone();
  });
}

/** Past the page's own code, as it would lie there. */
async function keepVoice(page: Page, text: string): Promise<void> {
  await page.evaluate(async (voice) => {
    const settled = <Result>(request: IDBRequest<Result>) =>
      new Promise<Result>((resolve, reject) => {
        request.addEventListener('success', () => resolve(request.result));
        request.addEventListener('error', () => reject(new Error('storage refused')));
      });
    const database = await settled(indexedDB.open('gloveside'));
    const about = database.transaction('about', 'readwrite').objectStore('about');
    await settled(about.put(voice, 'voice'));
    database.close();
  }, text);
}
