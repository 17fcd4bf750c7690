import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './chromium.ts';
import { type PageServer, eventsOnServer } from './page-server.ts';
import { type ServedPage, servePage } from './stage.ts';
import {
  type Moment,
  askedDurabilities,
  openVisitPage,
  readRecords,
  readingsOf,
  replyHas,
  sheetShows,
  typeWords,
  watchWrites,
} from './visit-page.ts';

/*
 * One visit, and the browser killed ten times in it. SIGKILL takes the browser and not the machine: what it had
 * handed to the system is still written. Power loss is not tested by this; that the writes ask for strict
 * durability, which is what stands against it, is asserted beside it.
 */
interface Life {
  readonly browser: OpenBrowser;
  readonly server: PageServer;
  /** Settles after the browser was killed at the named moment of a write. */
  killedAt(moment: Moment): Promise<void>;
}

/** How far a reading had come when the browser was killed. */
type Reached = 'notSent' | 'sent' | 'shown';

interface KillPoint {
  readonly when: string;
  readonly reading: number;
  readonly reached: Reached;
  readonly act: (life: Life, reading: number) => Promise<unknown>;
}

const box = (reading: number) => `box ${reading}`;
/** The page may die while it is being typed to. */
const typeUntilKilled = ({ browser }: Life, reading: number) =>
  typeWords(browser.page, box(reading)).catch(() => undefined);
const typeAndSee = async ({ browser }: Life, reading: number) => {
  await typeWords(browser.page, box(reading));
  await replyHas(browser.page, reading);
};
const eventsRequest = /\/api\/events$/;

const KILL_POINTS: readonly KillPoint[] = [
  {
    when: 'the reply has just appeared',
    reading: 44,
    reached: 'shown',
    act: async (life, reading) => {
      await typeAndSee(life, reading);
      await life.browser.kill();
    },
  },
  {
    when: 'the reading has just been sent',
    reading: 43,
    reached: 'sent',
    act: async (life, reading) => {
      await typeWords(life.browser.page, box(reading));
      await life.browser.kill();
    },
  },
  {
    when: 'the reading is typed and not yet sent',
    reading: 42,
    reached: 'notSent',
    act: async ({ browser }, reading) => {
      await browser.page.getByTestId('typed').fill(box(reading));
      await browser.kill();
    },
  },
  {
    when: 'the log begins to write',
    reading: 41,
    reached: 'sent',
    act: (life, reading) => Promise.all([life.killedAt('writing'), typeUntilKilled(life, reading)]),
  },
  {
    when: 'the log has written and the page has yet to answer',
    reading: 40,
    reached: 'sent',
    act: (life, reading) => Promise.all([life.killedAt('written'), typeUntilKilled(life, reading)]),
  },
  {
    when: 'the page has gone back to rest after its reply',
    reading: 39,
    reached: 'shown',
    act: async (life, reading) => {
      await typeAndSee(life, reading);
      await life.browser.page
        .locator('[data-testid=state][data-state=asleep]')
        .waitFor({ state: 'attached' });
      await life.browser.kill();
    },
  },
  {
    when: 'the reading is on its way to the server',
    reading: 38,
    reached: 'sent',
    act: async (life, reading) => {
      const sent = life.browser.page.waitForRequest(eventsRequest);
      await typeWords(life.browser.page, box(reading));
      await sent;
      await life.browser.kill();
    },
  },
  {
    when: 'the server has answered',
    reading: 37,
    reached: 'sent',
    act: async (life, reading) => {
      const answered = life.browser.page.waitForResponse(eventsRequest);
      await typeWords(life.browser.page, box(reading));
      await answered;
      await life.browser.kill();
    },
  },
  {
    when: 'the page is being opened again after its reply',
    reading: 36,
    reached: 'shown',
    act: async (life, reading) => {
      await typeAndSee(life, reading);
      await life.browser.page.reload({ waitUntil: 'commit' });
      await life.browser.kill();
    },
  },
  {
    when: 'the server is gone and the reply has just appeared',
    reading: 35,
    reached: 'shown',
    act: async (life, reading) => {
      await life.server.stop();
      await typeAndSee(life, reading);
      await life.browser.kill();
    },
  },
];

describe('the browser killed in the middle of a visit', () => {
  let served: ServedPage;
  let life: Life;
  const reached = new Map<number, Reached>();

  async function live(): Promise<Life> {
    const { folder, server } = served;
    const browser = await openBrowser({ profile: `${folder}/profile` });
    let onMoment: (moment: Moment) => void = () => undefined;
    await watchWrites(browser.context, (moment) => onMoment(moment));
    await openVisitPage(browser.page, server.address);
    const killedAt = (awaited: Moment) =>
      new Promise<void>((resolve, reject) => {
        onMoment = (moment) => {
          if (moment === awaited) browser.kill().then(resolve, reject);
        };
      });
    return { browser, server, killedAt };
  }

  beforeAll(async () => {
    served = await servePage();
    life = await live();
    await life.browser.page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
    await typeAndSee(life, 45);
    reached.set(45, 'shown');
  });

  afterAll(async () => {
    await life.browser.close();
    await served.close();
  });

  it('kills at ten points', () => {
    expect(KILL_POINTS).toHaveLength(10);
  });

  it.each(KILL_POINTS)('keeps each reading once when killed as $when', async (point) => {
    await point.act(life, point.reading);
    reached.set(point.reading, point.reached);
    life = await live();

    const records = await readRecords(life.browser.page);
    const places = records.map(({ place }) => place);
    expect(places).toEqual(places.map((_place, index) => index + 1));
    expect(records.map(({ event }) => event.seq)).toEqual(places);
    expect(new Set(records.map(({ event }) => event.id)).size).toBe(records.length);
    expect(new Set(records.map(({ event }) => event.visit)).size).toBe(1);

    const readings = readingsOf(records);
    expect(new Set(readings).size).toBe(readings.length);
    for (const [reading, how] of reached) {
      if (how === 'shown') expect(readings).toContain(reading);
      if (how === 'notSent') expect(readings).not.toContain(reading);
    }
    await sheetShows(life.browser.page, 'boxTemp', readings.at(-1) ?? NaN);
  });

  it('goes on in the same visit, and the server has every event once', async () => {
    const { page } = life.browser;
    await served.restartServer();
    await typeWords(page, box(34));
    await replyHas(page, 34);
    const records = await readRecords(page);
    expect(new Set(records.map(({ event }) => event.visit)).size).toBe(1);
    await page.evaluate(() => dispatchEvent(new Event('online')));
    await expect
      .poll(() => eventsOnServer(served.server), { timeout: 20_000 })
      .toEqual([records.length]);
  });

  it('asked for strict durability in every write to the log', async () => {
    const asked = await askedDurabilities(life.browser.page);
    expect(asked.length).toBeGreaterThan(0);
    expect(new Set(asked)).toEqual(new Set(['strict']));
  });
});
