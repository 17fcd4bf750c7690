import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createScratchFolder } from '../support/scratch-folder.ts';
import { type OpenBrowser, openBrowser } from './chromium.ts';
import { type PageServer, startPageServer } from './page-server.ts';
import { openVisitPage, replyHas, typeWords } from './visit-page.ts';

const TEMPLATE = 'Superheat is 9.6 °F.';
const MODEL = '/phrasing/onnx/model.onnx';
const SAID = [
  "it's a reach in on one thirty four a with a txv",
  'suction eighteen',
  'suction line twenty nine',
];

describe('the page and the phrasing model', () => {
  let folder: Awaited<ReturnType<typeof createScratchFolder>>;
  let server: PageServer;
  let browser: OpenBrowser;
  let fetched: string[];

  beforeEach(async () => {
    folder = await createScratchFolder();
    server = await startPageServer({ data: `${folder.path}/data` });
    browser = await openBrowser({ profile: `${folder.path}/profile` });
    fetched = [];
    browser.context.on('request', (request) => fetched.push(request.url()));
  });

  afterEach(async () => {
    await browser.close();
    await server.stop();
    await folder.discard();
  });

  async function openedVisit() {
    const { page } = browser;
    await openVisitPage(page, server.address);
    for (const words of SAID) await typeWords(page, words);
    await replyHas(page, 29);
  }

  /** The question once more, until its answer is worded otherwise than by the template. */
  async function replies(times: number): Promise<readonly string[]> {
    const { page } = browser;
    const told: string[] = [];
    for (let time = 0; time < times; time += 1) {
      await typeWords(page, "what's my superheat");
      await replyHas(page, 9.6);
      await expect
        .poll(() => page.getByTestId('field').getAttribute('data-mode'))
        .not.toBe('thinking');
      told.push(await page.getByTestId('reply').innerText());
    }
    return told;
  }

  it('has answers worded by it once it is loaded, and nothing from elsewhere', async () => {
    await openedVisit();
    await expect
      .poll(async () => (await replies(1))[0], { timeout: 60_000, interval: 300 })
      .not.toBe(TEMPLATE);
    expect(new Set(await replies(6)).size).toBeGreaterThan(1);
    const places = new Set(fetched.map((url) => new URL(url).origin));
    expect([...places]).toEqual([server.address]);
    expect(fetched.some((url) => url.endsWith(MODEL))).toBe(true);
  });
});
