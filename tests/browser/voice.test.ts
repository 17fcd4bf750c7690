import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { giveSynthesiser, listOf, type Synthesiser } from './scripted-synthesiser.ts';
import { giveMicrophone, pressToTalk, untilListening } from './spoken-page.ts';
import { openStage, type Stage, UNPRESSED } from './stage.ts';
import { openVisitPage, sheetShows, typeWords } from './visit-page.ts';

const SPOKEN: Record<Synthesiser, readonly string[]> = {
  works: ['Box 44.', 'Box 43.'],
  errors: ['Box 44.', 'Box 43.'],
  neverEnds: ['Box 44.', '(cut off)', 'Box 43.', '(cut off)'],
  noVoices: [],
  throws: ['Box 44.', 'Box 43.'],
};

const SYNTHESISERS: readonly Synthesiser[] = ['works', 'neverEnds', 'errors', 'noVoices', 'throws'];

describe('the page’s voice', () => {
  let stage: Stage;

  beforeEach(async () => {
    stage = await openStage(UNPRESSED);
  });

  afterEach(() => stage.close());

  it.each(SYNTHESISERS)(
    'with a synthesiser that %s answers twice and listens again each time',
    async (how) => {
      const { page, browser, server } = stage;
      await giveMicrophone(browser.context);
      await giveSynthesiser(browser.context, how);
      await openVisitPage(page, server.address);
      await pressToTalk(page);
      for (const [index, reading] of [44, 43].entries()) {
        await typeWords(page, `box ${reading}`);
        await page.locator(`[data-testid=reply][data-number="${index + 1}"]`).waitFor();
        await untilListening(page);
        await sheetShows(page, 'boxTemp', reading);
      }
      expect(await listOf(page, 'said')).toEqual(SPOKEN[how]);
      const states = await listOf(page, 'states');
      expect(states.filter((state) => state === 'listening')).toHaveLength(3);
      expect(states.at(-1)).toBe('listening');
    },
  );
});
