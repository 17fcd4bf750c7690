import { readFile } from 'node:fs/promises';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { openStage, type Stage } from './stage.ts';
import { openVisitPage, readPlaces, replyHas, sheetShows, typeWords } from './visit-page.ts';

describe('a log with a record that cannot be read', () => {
  let stage: Stage;

  beforeEach(async () => {
    stage = await openStage();
  });

  afterEach(() => stage.close());

  it('goes on with the rest, says so and leaves it where it is', async () => {
    const place = 3;
    const { page } = stage;
    await openVisitPage(page, stage.server.address);
    for (const reading of [44, 43, 42]) {
      await typeWords(page, `box ${reading}`);
      await replyHas(page, reading);
    }
    await damageRecord(place);
    await page.reload();

    await expect
      .poll(() => page.getByTestId('notice').innerText())
      .toMatch(/^1 entry of this visit could not be read/);
    await sheetShows(page, 'boxTemp', 42);
    await typeWords(page, 'box 41');
    await replyHas(page, 41);
    await sheetShows(page, 'boxTemp', 41);
    const places = await readPlaces(page);
    expect(places.map(({ place: at }) => at)).toEqual([1, 2, 3, 4, 5]);
    expect(places.find(({ place: at }) => at === place)?.event).toEqual({ torn: 'half a record' });
    const visits = places.flatMap(({ event }) => visitIn(event));
    expect(new Set(visits).size).toBe(1);

    const lines = await savedLines();
    expect(lines).toHaveLength(5);
    expect(lines[place - 1]).toMatchObject({ seq: place, record: { torn: 'half a record' } });
    expect(lines.map(({ type }) => type)).toEqual([
      'visitOpened',
      'readingTaken',
      undefined,
      'readingTaken',
      'readingTaken',
    ]);
  });

  /** The file that the visit tab hands out. */
  async function savedLines() {
    const { page } = stage;
    await page.getByTestId('tab-visit').click();
    const coming = page.waitForEvent('download');
    await page.getByTestId('save-everything').click();
    const file = `${stage.folder}/saved.jsonl`;
    await (await coming).saveAs(file);
    const lines = (await readFile(file, 'utf8')).trimEnd().split('\n');
    const line = z.looseObject({ seq: z.number(), type: z.string().optional() });
    return lines.map((each) => line.parse(JSON.parse(each)));
  }

  async function damageRecord(place: number) {
    await stage.page.evaluate(async (at) => {
      const done = (target: EventTarget, event: string) =>
        new Promise((resolve) => target.addEventListener(event, resolve, { once: true }));
      const opening = indexedDB.open('gloveside');
      await done(opening, 'success');
      const transaction = opening.result.transaction('events', 'readwrite');
      transaction.objectStore('events').put({ torn: 'half a record' }, at);
      await done(transaction, 'complete');
      opening.result.close();
    }, place);
  }
});

function visitIn(event: unknown): readonly unknown[] {
  return typeof event === 'object' && event !== null && 'visit' in event ? [event.visit] : [];
}
