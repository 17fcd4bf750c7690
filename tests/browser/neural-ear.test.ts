import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { sayEngineChanged } from '../../client/screens/words.ts';
import { besideFan, speak as speakSamples } from '../hearing/signals.ts';
import { speakWav, type Voice } from '../support/flite.ts';
import { wavOf } from '../support/wav.ts';
import { giveSynthesiser, listOf } from './scripted-synthesiser.ts';
import { giveMicrophone, playSound, pressToTalk, speak, untilListening } from './spoken-page.ts';
import { openStage, type Stage, UNPRESSED } from './stage.ts';
import { openVisitPage, sheetShows } from './visit-page.ts';

/** 10 dB above a fan, a second of it before and two after. */
function besideAFan(sentence: string, voice: Voice): Buffer {
  const samples = besideFan(speakSamples(sentence, voice), 10, 7);
  const loudest = samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
  return wavOf(
    [...samples].map((sample) => (0.9 * sample) / loudest),
    16_000,
  );
}

describe('the page’s trained ear', () => {
  let stage: Stage;

  beforeEach(async () => {
    stage = await openStage(UNPRESSED);
    await giveMicrophone(stage.browser.context);
    await giveSynthesiser(stage.browser.context, 'works');
    await openVisitPage(stage.page, stage.server.address);
  });

  afterEach(() => stage.close());

  /** The reading is on the sheet, after a press where the page asked, and the page listens again. */
  async function confirmed(row: string, value: number): Promise<void> {
    const { page } = stage;
    const reply = page.getByTestId('reply').filter({ hasText: new RegExp(`\\b${value}\\b`) });
    await reply.waitFor();
    if (/\?/.test(await reply.innerText())) {
      const which = page.getByTestId('choose').filter({ hasText: String(value) });
      await page.getByTestId('keep-it').or(which).click();
    }
    await sheetShows(page, row, value);
    await untilListening(page);
  }

  async function choose(ear: 'embedded' | 'neural' | 'automatic'): Promise<void> {
    await stage.page.getByTestId('tab-visit').click();
    await stage.page.getByTestId(`listens-${ear}`).click();
    await stage.page.getByTestId('tab-sheet').click();
  }

  async function listens(): Promise<string | null> {
    await stage.page.getByTestId('tab-visit').click();
    const use = await stage.page.getByTestId('listening').getAttribute('data-use');
    await stage.page.getByTestId('tab-sheet').click();
    return use;
  }

  /**
   * The fan starts with the sentence, and may be taken for one where the device is busy: what was not caught is said
   * again, as the page asks. The spare ear may turn the sentence down, or make another of it ("fan failed").
   */
  async function answeredBesideAFan(sentence: string, times: number): Promise<string> {
    const { page } = stage;
    const replies = page.getByTestId('reply');
    const before = (await replies.count()) === 0 ? '0' : await replies.getAttribute('data-number');
    await playSound(page, besideAFan(sentence, 'slt'));
    const next = `[data-testid=notice], [data-testid=reply][data-number]:not([data-number="${before}"])`;
    const answer = page.locator(next);
    await answer.first().waitFor();
    const words = await answer.last().innerText();
    if (times === 1 || !/not catch/.test(words)) return words;
    await untilListening(page);
    return answeredBesideAFan(sentence, times - 1);
  }

  it.each([
    ['embedded', false],
    ['neural', true],
  ] as const)('beside a fan, the %s one alone hears what was read: %s', async (ear, hears) => {
    const { page } = stage;
    await choose(ear);
    await pressToTalk(page);
    const answer = await answeredBesideAFan('ambient eighty eight', hears ? 3 : 1);
    // Heard alone it may be asked about before it is kept.
    expect([await listens(), /\b88\b/.test(answer)]).toEqual([ear, hears]);
  });

  it('shows the words as they come', async () => {
    const { page } = stage;
    await choose('neural');
    await pressToTalk(page);
    const whileListening = '[data-testid=field][data-mode=listening] [data-testid=heard]';
    const shown = page.locator(whileListening).filter({ hasText: 'box forty four' }).waitFor();
    await playSound(page, speakWav('box forty four suction fourteen head one ninety two'));
    await shown;
    await confirmed('boxTemp', 44);
  });

  it('hears without a network after one load, chosen by what the device affords', async () => {
    const { page } = stage;
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
    await stage.server.stop();
    await page.reload();
    await page.getByTestId('field').waitFor();
    await pressToTalk(page);
    expect(['both', 'neural']).toContain(await listens());
    expect(await speak(page, 'box forty four')).toMatch(/^Box 44/);
  });

  it('loses no sentence when its worker crashes: the spare ear hears it, and the voice says so', async () => {
    const { page } = stage;
    await choose('neural');
    await pressToTalk(page);
    expect(await speak(page, 'box forty four')).toMatch(/^Box 44/);
    await confirmed('boxTemp', 44);
    const worker = page.workers().find((each) => each.url().includes('neural.worker'));
    expect(worker).toBeDefined();
    await worker?.evaluate(() => {
      setTimeout(() => {
        throw new Error('as if out of memory');
      });
    });
    expect(await speak(page, 'head one ninety two')).toMatch(/^Head 192/);
    await confirmed('headPressure', 192);
    const said = (await listOf(page, 'said')).join(' ');
    expect(said).toContain(`${sayEngineChanged('embedded')} Head 192`);
    expect(await listens()).toBe('embedded');
  });
});
