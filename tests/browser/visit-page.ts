import type { BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';
import { z } from 'zod';
import type { VisitEvent } from '../../core/visit/events.ts';
import { visitEventSchema } from '../../core/wire/event-schema.ts';

const PATIENCE = { timeout: 20_000 };

/** Opens the page and waits until it takes words. */
export async function openVisitPage(page: Page, address: string): Promise<void> {
  // Chromium here has no voice: with the page's own, each of a test's replies would take as long as it takes to say.
  await page.addInitScript(() => localStorage.setItem('gloveside: spare voice', 'onScreen'));
  await page.goto(`${address}/`);
  await page.getByTestId('field').waitFor(PATIENCE);
}

/**
 * Gives the page's model twenty times as long as the page waits for it: 250 ms for an answer, 1.5 s for the note. A busy
 * test machine may be that much slower than a phone.
 */
export async function waitLongerForModel(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => {
    const wait = window.setTimeout.bind(window);
    const longer = (task: TimerHandler, delay = 0, ...given: unknown[]): number =>
      wait(task, delay === 250 || delay === 1_500 ? delay * 20 : delay, ...given);
    Reflect.set(window, 'setTimeout', longer);
  });
}

export async function typeWords(page: Page, words: string): Promise<void> {
  await page.getByTestId('typed').fill(words);
  await page.getByTestId('typed').press('Enter');
}

/** Waits until the page's reply holds the number: the moment from which a technician relies on it. */
export async function replyHas(page: Page, value: number): Promise<void> {
  const reply = page.getByTestId('reply').filter({ hasText: new RegExp(`\\b${value}\\b`) });
  await reply.waitFor(PATIENCE);
}

export async function sheetShows(page: Page, row: string, before: number): Promise<void> {
  const cell = page.getByTestId(`sheet-row-${row}`).getByTestId('before');
  await expect.poll(() => cell.innerText(), PATIENCE).toBe(String(before));
}

/** Every place of the log as it lies in the browser's storage, read past the page's own code. */
export async function readPlaces(page: Page): Promise<readonly Place[]> {
  return page.evaluate(async () => {
    const settled = <Result>(request: IDBRequest<Result>) =>
      new Promise<Result>((resolve, reject) => {
        request.addEventListener('success', () => resolve(request.result));
        request.addEventListener('error', () => reject(new Error('the log could not be read')));
      });
    const database = await settled(indexedDB.open('gloveside'));
    const events = database.transaction('events').objectStore('events');
    const [keys, values] = await Promise.all([
      settled(events.getAllKeys()),
      settled<unknown[]>(events.getAll()),
    ]);
    database.close();
    return keys.map((key, index) => ({ place: Number(key), event: values[index] }));
  });
}

/** The same, where every record must be an event. */
export async function readRecords(page: Page): Promise<readonly LogRecord[]> {
  const places = await readPlaces(page);
  return places.map(({ place, event }) => ({ place, event: visitEventSchema.parse(event) }));
}

export interface Place {
  readonly place: number;
  readonly event: unknown;
}

export interface LogRecord {
  readonly place: number;
  readonly event: VisitEvent;
}

export function readingsOf(records: readonly LogRecord[]): readonly number[] {
  return records.flatMap(({ event }) =>
    event.type === 'readingTaken' ? (event.reading.value ?? []) : [],
  );
}

export type Moment = 'writing' | 'written';

/** Notes each write to the log as the page asks for it, and calls out the moments of one. */
export async function watchWrites(
  context: BrowserContext,
  onMoment: (moment: Moment) => void,
): Promise<void> {
  await context.exposeBinding('onMoment', (_source, moment: Moment) => onMoment(moment));
  await context.addInitScript(() => {
    const begin = Reflect.get(IDBDatabase.prototype, 'transaction');
    const durabilities: string[] = [];
    const call = (moment: string): void => {
      const told: unknown = Reflect.get(window, 'onMoment');
      if (typeof told === 'function') Reflect.apply(told, undefined, [moment]);
    };
    Reflect.set(window, 'durabilities', durabilities);
    IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...asked) {
      const transaction = begin.apply(this, asked);
      const [, mode, options] = asked;
      if (mode === 'readwrite' && transaction.objectStoreNames.contains('events')) {
        durabilities.push(options?.durability ?? 'none asked');
        call('writing');
        transaction.addEventListener('complete', () => call('written'));
      }
      return transaction;
    };
  });
}

/** The durability asked for in each write to the log since the page opened. */
export async function askedDurabilities(page: Page): Promise<readonly string[]> {
  const asked = await page.evaluate((): unknown => Reflect.get(window, 'durabilities'));
  return z.array(z.string()).parse(asked);
}
