import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { BrowserContext, Page } from 'playwright-core';
import { z } from 'zod';
import { createScratchFolder } from '../support/scratch-folder.ts';
import { type OpenBrowser, openBrowser } from './chromium.ts';
import { type PageServer, startPageServer } from './page-server.ts';
import { giveMicrophone, pressToTalk, untilListening } from './spoken-page.ts';
import { openVisitPage, sheetShows, typeWords } from './visit-page.ts';

type Synthesiser = 'works' | 'neverEnds' | 'errors' | 'noVoices' | 'throws';

/** In place of the browser's synthesiser one that is known to behave, or to misbehave as some have been seen to. */
async function giveSynthesiser(context: BrowserContext, synthesiser: Synthesiser): Promise<void> {
  await context.addInitScript((how: string) => {
    const said: string[] = [];
    const states: string[] = [];
    const voice = { name: 'scripted', lang: 'en-US', localService: true, default: true };
    const after = (run: unknown) => {
      if (typeof run === 'function') queueMicrotask(() => void Reflect.apply(run, undefined, []));
    };
    Reflect.set(window, 'said', said);
    Reflect.set(window, 'states', states);
    Reflect.set(
      window,
      'SpeechSynthesisUtterance',
      class {
        text: string;
        constructor(text: string) {
          this.text = text;
        }
      },
    );
    Object.defineProperty(window, 'speechSynthesis', {
      value: {
        getVoices: () => (how === 'noVoices' ? [] : [voice]),
        resume: () => undefined,
        cancel: () => void said.push('(cut off)'),
        speak: (utterance: { text: string; onend?: unknown; onerror?: unknown }) => {
          if (utterance.text.trim() === '') return;
          said.push(utterance.text);
          if (how === 'throws') throw new Error('no synthesiser here');
          if (how === 'works') after(utterance.onend);
          if (how === 'errors') after(utterance.onerror);
        },
      },
    });
    document.addEventListener('DOMContentLoaded', () => {
      new MutationObserver(() => {
        const state = document.querySelector('[data-testid=state]')?.getAttribute('data-state');
        if (state && states.at(-1) !== state) states.push(state);
      }).observe(document.body, { subtree: true, childList: true, attributes: true });
    });
  }, synthesiser);
}

async function listOf(page: Page, name: 'said' | 'states'): Promise<readonly string[]> {
  const list = await page.evaluate((of): unknown => Reflect.get(window, of), name);
  return z.array(z.string()).parse(list);
}

const SPOKEN: Record<Synthesiser, readonly string[]> = {
  works: ['Box 44.', 'Box 43.'],
  errors: ['Box 44.', 'Box 43.'],
  neverEnds: ['Box 44.', '(cut off)', 'Box 43.', '(cut off)'],
  noVoices: [],
  throws: ['Box 44.', 'Box 43.'],
};

const SYNTHESISERS: readonly Synthesiser[] = ['works', 'neverEnds', 'errors', 'noVoices', 'throws'];

describe('the page’s voice', () => {
  let folder: Awaited<ReturnType<typeof createScratchFolder>>;
  let server: PageServer;
  let browser: OpenBrowser;

  beforeAll(async () => {
    folder = await createScratchFolder();
    server = await startPageServer({ data: `${folder.path}/data` });
  });

  afterAll(async () => {
    await server.stop();
    await folder.discard();
  });

  afterEach(() => browser.close());

  it.each(SYNTHESISERS)(
    'with a synthesiser that %s answers twice and listens again each time',
    async (how) => {
      browser = await openBrowser({
        profile: `${folder.path}/${how}`,
        args: ['--autoplay-policy=no-user-gesture-required'],
      });
      const { page } = browser;
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
