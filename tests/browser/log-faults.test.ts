import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openStage, type Stage } from './stage.ts';
import { openVisitPage, readRecords, readingsOf, replyHas, typeWords } from './visit-page.ts';

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
  unreadable: () => {
    IDBObjectStore.prototype.index = () => {
      throw new DOMException('the index is gone', 'DataError');
    };
  },
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
  ] as const)('%s: works on in memory, and says so for good', async (fault, words) => {
    const { page } = stage;
    await keepOne();
    await openWith(fault);
    if (fault === 'mute') await page.getByText('one moment').waitFor();
    await noticeIs(words);
    await typeWords(page, 'box 43');
    await replyHas(page, 43);
    expect(await page.getByTestId('unstored').innerText()).toBe('not stored: do not close');
    await page.getByTestId('tab-visit').click();
    expect(await page.getByTestId('unsynced').innerText()).toMatch(/in this page alone/);

    const warned = page.waitForEvent('dialog');
    page.once('dialog', (dialog) => void dialog.accept());
    await openWith(null);
    expect((await warned).type()).toBe('beforeunload');
    await noticeIs(/Your visit is still here, with 1 reading/);
    expect(readingsOf(await readRecords(page))).toEqual([44]);
  });

  it('unreadable: says that nothing is lost, and keeps a new visit beside what is there', async () => {
    const { page } = stage;
    await keepOne();
    await openWith('unreadable');
    await noticeIs(/could not be read\. It is not lost/);
    await typeWords(page, 'box 43');
    await replyHas(page, 43);
    expect(await page.getByTestId('unstored').count()).toBe(0);
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
