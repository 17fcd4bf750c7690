import type { BrowserContext, Page } from 'playwright-core';
import { z } from 'zod';

export type Synthesiser = 'works' | 'neverEnds' | 'errors' | 'noVoices' | 'throws';

/** In place of the browser's synthesiser one that is known to behave, or to misbehave as some have been seen to. */
export async function giveSynthesiser(
  context: BrowserContext,
  synthesiser: Synthesiser,
): Promise<void> {
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

/** What was given to it to say, or the states that the page went through. */
export async function listOf(page: Page, name: 'said' | 'states'): Promise<readonly string[]> {
  const list = await page.evaluate((of): unknown => Reflect.get(window, of), name);
  return z.array(z.string()).parse(list);
}
