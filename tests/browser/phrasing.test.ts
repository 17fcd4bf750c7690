import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openStage, type Stage } from './stage.ts';
import { openVisitPage, replyHas, typeWords, waitLongerForModel } from './visit-page.ts';

const TEMPLATE = 'Superheat is 9.6 °F.';
const WEIGHTS = '/phrasing/onnx/model.onnx';
const SAID = [
  "it's a reach in on one thirty four a with a txv",
  'suction eighteen',
  'suction line twenty nine',
];

describe('the page and the phrasing model', () => {
  let stage: Stage;
  let fetched: string[];

  beforeEach(async () => {
    stage = await openStage();
    await waitLongerForModel(stage.browser.context);
    fetched = [];
    stage.browser.context.on('request', (request) => {
      if (request.serviceWorker() === null) fetched.push(request.url()); // what the page itself asks for
    });
  });

  afterEach(() => stage.close());

  async function openedVisit() {
    await openVisitPage(stage.page, stage.server.address);
    for (const words of SAID) await typeWords(stage.page, words);
    await replyHas(stage.page, 29);
  }

  /** The question asked once more; its answer as it is shown. */
  async function answered(): Promise<string> {
    const { page } = stage;
    const number = await page.getByTestId('reply').getAttribute('data-number');
    await typeWords(page, "what's my superheat");
    await expect
      .poll(() => page.getByTestId('reply').getAttribute('data-number'), { timeout: 20_000 })
      .not.toBe(number);
    return page.getByTestId('reply').innerText();
  }

  const isFetched = (path: string) =>
    expect.poll(() => fetched.some((url) => url.endsWith(path)), { timeout: 30_000 });

  /** How many workers of the phraser there are: it is ended when its model cannot be loaded. */
  const phrasers = () =>
    stage.page.workers().filter((worker) => worker.url().includes('phraser')).length;

  it('has answers worded by it once it is loaded, with nothing from elsewhere', async () => {
    await openedVisit();
    await expect.poll(answered, { timeout: 60_000, interval: 300 }).not.toBe(TEMPLATE);
    const told = new Set<string>();
    const wordings = async (): Promise<number> => told.add(await answered()).size;
    await expect.poll(wordings, { timeout: 60_000 }).toBe(3);
    expect([...told].every((reply) => /\b9\.6\b/.test(reply) && /superheat/i.test(reply))).toBe(
      true,
    );
    expect([...new Set(fetched.map((url) => new URL(url).origin))]).toEqual([stage.server.address]);
    await isFetched(WEIGHTS).toBe(true);
  });

  it('says the template where the weights come damaged, and goes on', async () => {
    await stage.browser.context.route(`**${WEIGHTS}`, (route) =>
      route.fulfill({ status: 200, body: 'not a model' }),
    );
    await openedVisit();
    await isFetched(WEIGHTS).toBe(true);
    await expect.poll(phrasers, { timeout: 30_000 }).toBe(0);
    expect([await answered(), await answered()]).toEqual([TEMPLATE, TEMPLATE]);
  });

  it('says the template while the model is late', async () => {
    await stage.browser.context.route(`**${WEIGHTS}`, () => undefined);
    await openedVisit();
    await isFetched(WEIGHTS).toBe(true);
    expect(await answered()).toBe(TEMPLATE);
  });

  it('loads no model where the answers are to be always alike, and remembers that', async () => {
    const { page } = stage;
    await openedVisit();
    await page.getByTestId('tab-visit').click();
    await page.getByTestId('wording-plain').click();
    fetched.length = 0;
    await page.reload();
    await page.getByTestId('field').waitFor();
    expect([await answered(), await answered()]).toEqual([TEMPLATE, TEMPLATE]);
    expect(fetched.filter((url) => url.includes('/phrasing/') || url.includes('phraser'))).toEqual(
      [],
    );
    expect(phrasers()).toBe(0);
  });
});
