import { expect, it } from 'vitest';
import { sayEarNews } from '../../client/screens/words.ts';
import { besideFan, fan, rms, speak as speakSamples } from '../hearing/signals.ts';
import { wavOf } from '../support/wav.ts';
import { giveSynthesiser, listOf } from './scripted-synthesiser.ts';
import { giveMicrophone, playSound, pressToTalk, untilListening } from './spoken-page.ts';
import { openStage, UNPRESSED } from './stage.ts';
import { openVisitPage, readRecords, replyHas } from './visit-page.ts';

const LOUDEST = 0.25;
const RATE_HZ = 16_000;
const GLOVED = 64;
/** The noise that starts is heard out by the recogniser first, as it may be a sentence. */
const PATIENCE = { timeout: 60_000 };

const dB = (level: number): number => 10 ** (level / 20);

/** A sentence well above a fan, and then the fan as loud as leaves that voice 3 dB under it. */
function twoRooms(sentence: string) {
  const speech = speakSamples(sentence, 'slt');
  const gain = LOUDEST / rms(speech) / 4;
  const loudFan = fan(60, 5);
  const fanGain = (gain * rms(speech) * dB(3)) / rms(loudFan);
  return {
    quiet: wavOf(
      [...besideFan(speech, 20, 7)].map((sample) => sample * gain),
      RATE_HZ,
    ),
    loud: wavOf(
      [...loudFan].map((sample) => sample * fanGain),
      RATE_HZ,
    ),
  };
}

it('noise that buries the voice is said once, and a reading goes in by keys', async () => {
  const stage = await openStage(UNPRESSED);
  const { browser, server } = stage;
  const { page } = browser;
  await giveMicrophone(browser.context);
  await giveSynthesiser(browser.context, 'works');
  await openVisitPage(page, server.address);
  const { quiet, loud } = twoRooms('ambient eighty eight');
  await page.getByTestId('tab-visit').click();
  await page.getByTestId('listens-neural').click();
  await page.getByTestId('tab-sheet').click();
  // Pressed again it gives the field its room back.
  await page.getByTestId('tab-sheet').click();
  await pressToTalk(page);
  await page.setViewportSize({ width: 390, height: 844 });
  await playSound(page, quiet);
  await replyHas(page, 88);
  await page
    .getByTestId('earshot')
    .filter({ hasText: /\d dB over noise: clear/ })
    .waitFor();
  await untilListening(page);

  void playSound(page, loud).catch(() => undefined);
  await page.getByTestId('open-keys').waitFor(PATIENCE);
  await page.getByTestId('earshot').filter({ hasText: 'under noise: too loud' }).waitFor();
  const [firstBreath = ''] = sayEarNews('tooLoud').split(/(?<=\.) /);
  const warnings = async () => (await listOf(page, 'said')).filter((said) => said === firstBreath);
  await expect.poll(warnings).toHaveLength(1);
  await page.getByTestId('open-keys').click();
  await page.getByTestId('pick-headPressure').click();
  for (const key of ['1', '9', '2', 'enter']) {
    const button = page.getByTestId(`key-${key}`);
    const box = await button.boundingBox();
    expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(GLOVED);
    await button.click();
  }
  await replyHas(page, 192);
  const taken = (await readRecords(page)).flatMap(({ event }) =>
    event.type === 'readingTaken' ? [[event.reading.quantity, event.reading.value]] : [],
  );
  expect(taken).toEqual([
    ['ambientTemp', 88],
    ['headPressure', 192],
  ]);
  expect(await warnings()).toHaveLength(1);
  await stage.close();
});
