import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { eventsOnServer } from './page-server.ts';
import { openStage, type Stage } from './stage.ts';
import {
  openVisitPage,
  readRecords,
  readingsOf,
  replyHas,
  sheetShows,
  typeWords,
} from './visit-page.ts';

/** As where the storage breaks in the middle of a visit. */
const breakIndexes = (): void => {
  IDBObjectStore.prototype.index = () => {
    throw new DOMException('the index is gone', 'DataError');
  };
};

type Fault = 'refused' | 'mute' | 'unreadable' | 'broken';

let stage: Stage;

beforeEach(async () => {
  stage = await openStage();
});

afterEach(() => stage.close());

/** What goes wrong from the next load on; without one, nothing more does. */
async function breakFromNow(fault: Fault | null): Promise<void> {
  await stage.page.evaluate((name) => localStorage.setItem('fault', name ?? ''), fault);
}

const FAULTS: Record<Fault, () => void> = {
  refused: () => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('not here', 'SecurityError');
    };
  },
  mute: () => {
    const open = Reflect.get(IDBFactory.prototype, 'open');
    IDBFactory.prototype.open = function (this: IDBFactory, ...asked) {
      const request = open.apply(this, asked);
      for (const event of ['success', 'upgradeneeded'])
        request.addEventListener(event, (told) => told.stopImmediatePropagation());
      return request;
    };
  },
  unreadable: breakIndexes,
  broken: () => {
    document.addEventListener = () => {
      throw new Error('broken');
    };
  },
};

async function canBreak(): Promise<void> {
  for (const [fault, happen] of Object.entries(FAULTS)) {
    await stage.page.addInitScript(
      `if (localStorage.getItem('fault') === '${fault}') (${String(happen)})();`,
    );
  }
}

const noticeIs = (words: RegExp): Promise<void> =>
  expect.poll(() => stage.page.getByTestId('notice').innerText(), PATIENCE).toMatch(words);
const PATIENCE = { timeout: 30_000 };

/** A visit with one reading, kept while all was well. */
async function keepOne(): Promise<void> {
  await canBreak();
  await openVisitPage(stage.page, stage.server.address);
  await typeWords(stage.page, 'box 44');
  await replyHas(stage.page, 44);
}

async function openWith(fault: Fault | null): Promise<void> {
  await breakFromNow(fault);
  await stage.page.reload();
}

describe('a log that does not open, or cannot be read, as the page starts', () => {
  it.each([
    ['refused', /This browser stores nothing here/],
    ['mute', /The browser’s storage does not open\. Visits kept before are not touched/],
  ] as const)('%s: works on in memory, sends it, and says so for good', async (fault, words) => {
    const { page } = stage;
    const standing = (): Promise<string> => page.getByTestId('unstored').innerText();
    const whereabouts = (): Promise<string> => page.getByTestId('unsynced').innerText();
    await keepOne();
    await expect.poll(() => eventsOnServer(stage.server)).toEqual([2]);
    await openWith(fault);
    if (fault === 'mute') await page.getByText('one moment').waitFor();
    await noticeIs(words);
    expect(await standing()).toBe('not stored: do not close');
    await stage.server.stop();
    await typeWords(page, 'box 43');
    await replyHas(page, 43);
    expect(await standing()).toBe('not stored: do not close');
    await page.getByTestId('tab-visit').click();
    await expect.poll(whereabouts).toMatch(/2 entries in this page alone/);
    await stage.restartServer();
    await page.evaluate(() => dispatchEvent(new Event('online')));
    await expect.poll(standing).toBe('on the server only');
    expect(await whereabouts()).toMatch(/on the server, and nothing is stored on this device/);
    expect(await eventsOnServer(stage.server)).toEqual([2, 2]);

    const warned = page.waitForEvent('dialog');
    page.once('dialog', (dialog) => void dialog.accept());
    await openWith(null);
    expect((await warned).type()).toBe('beforeunload');
    await noticeIs(/Your visit is still here, with 1 reading/);
    expect(readingsOf(await readRecords(page))).toEqual([44]);
  });

  it('refused twice: each page in memory is a device of its own to the server', async () => {
    const { page } = stage;
    await keepOne();
    page.on('dialog', (dialog) => void dialog.accept());
    for (const box of [43, 42]) {
      await openWith('refused');
      await typeWords(page, `box ${box}`);
      await replyHas(page, box);
      await expect.poll(() => page.getByTestId('unstored').innerText()).toBe('on the server only');
    }
    expect(await eventsOnServer(stage.server)).toEqual([2, 2, 2]);
  });

  it('unreadable: says that nothing is lost, and keeps a new visit beside what is there', async () => {
    const { page } = stage;
    await keepOne();
    await openWith('unreadable');
    await noticeIs(/could not be read\. It is not lost/);
    await typeWords(page, 'box 43');
    await replyHas(page, 43);
    expect(await page.getByTestId('unstored').count()).toBe(0);
    await page.getByTestId('tab-visit').click();
    await expect
      .poll(() => page.getByTestId('visits-told').innerText())
      .toMatch(/could not be read: reload this page\. They are not lost/);
    await openWith(null);
    await noticeIs(/Your visit is still here, with 1 reading/);
    const records = await readRecords(page);
    expect(readingsOf(records)).toEqual([44, 43]);
    expect(new Set(records.map(({ event }) => event.visit)).size).toBe(2);
  });

  it('broken: says so in place of a blank page, and a press reloads it', async () => {
    const { page } = stage;
    await keepOne();
    await openWith('broken');
    await page.getByText('Something broke as this page opened.').waitFor();
    await breakFromNow(null);
    await page.getByTestId('before-page').getByRole('button').click();
    await noticeIs(/Your visit is still here, with 1 reading/);
  });
});

it('says so where an earlier visit cannot be read, and stays on the one in front', async () => {
  const { page } = stage;
  await openVisitPage(page, stage.server.address);
  await typeWords(page, 'box 44');
  await replyHas(page, 44);
  await page.getByTestId('tab-visit').click();
  const visits = page.getByRole('region', { name: 'Visits on this device' }).getByRole('button');
  await expect.poll(() => visits.count()).toBe(1);
  await page.evaluate(breakIndexes);
  await visits.first().click();
  await noticeIs(/That visit could not be read\. It is not lost: press it again, or reload/);
  await page.getByTestId('tab-sheet').click();
  await sheetShows(page, 'boxTemp', 44);
});

it.each([
  ['at once', 'tab-note', 'format'],
  ['a moment later', 'tab-visit', 'toLocaleString'],
] as const)(
  'a screen that breaks %s says so, and a press goes on where it was',
  async (...broken) => {
    const [, tab, dates] = broken;
    const { page } = stage;
    await openVisitPage(page, stage.server.address);
    await typeWords(page, 'box 44');
    await replyHas(page, 44);
    await page.evaluate((name) => {
      const holder = name === 'format' ? Intl.DateTimeFormat.prototype : Date.prototype;
      Object.defineProperty(holder, name, {
        get: () => {
          throw new Error('no dates here');
        },
      });
    }, dates);
    await page.getByTestId(tab).click();
    await page.getByText('Something broke on this screen. What you recorded is kept.').waitFor();
    await page.getByTestId('before-page').getByRole('button').click();
    await noticeIs(/Your visit is still here, with 1 reading/);
  },
);
