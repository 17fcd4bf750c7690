import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openStage, type Stage } from './stage.ts';
import { openVisitPage, typeWords } from './visit-page.ts';

/** A glove needs 20 mm, about 120 px on a phone, for what matters and 72 px for the rest. */
const PRIMARY = 120;
const SECONDARY = 72;
/** One among twelve, pressed after another: 11 mm. */
const GLOVED_KEY = 64;
const SMALLEST_TEXT = 20;
const SIZES = [
  { width: 390, height: 844 },
  { width: 844, height: 390 },
  { width: 360, height: 640 },
] as const;

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

async function boxOf(locator: Locator): Promise<Box> {
  const box = await locator.boundingBox();
  if (box === null) throw new Error('nothing is drawn there');
  return box;
}

/** Words smaller than they may be, outside the note's paper. */
function smallWords(page: Page): Promise<readonly string[]> {
  return page.evaluate((smallest) => {
    const found: string[] = [];
    for (const element of document.querySelectorAll('body *')) {
      const own = [...element.childNodes].some(
        (node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim(),
      );
      const size = parseFloat(getComputedStyle(element).fontSize);
      if (own && size < smallest && element.closest('.paper, .behind') === null) {
        found.push(`${size} ${element.textContent}`);
      }
    }
    return found;
  }, SMALLEST_TEXT);
}

async function answered(page: Page, words: string, number: number): Promise<void> {
  await typeWords(page, words);
  await page.locator(`[data-testid=reply][data-number="${number}"]`).waitFor();
}

const stateIs = (page: Page, state: string) =>
  page.locator(`[data-testid=state][data-state=${state}]`).waitFor();

describe.each(SIZES)('at $width by $height', (size) => {
  let stage: Stage;

  beforeAll(async () => {
    stage = await openStage();
    await stage.page.setViewportSize(size);
    await openVisitPage(stage.page, stage.server.address);
  });

  afterAll(() => stage.close());

  it('has a talk control and tabs that a glove finds, and no small words', async () => {
    const { page } = stage;
    const field = await boxOf(page.getByTestId('field'));
    expect(Math.min(field.width, field.height)).toBeGreaterThanOrEqual(PRIMARY);
    for (const tab of ['sheet', 'note', 'visit']) {
      const { width, height } = await boxOf(page.getByTestId(`tab-${tab}`));
      expect(Math.min(width, height)).toBeGreaterThanOrEqual(SECONDARY);
    }
    expect(await smallWords(page)).toEqual([]);
  });

  it('keeps the words of every choice of the visit tab within their button, and every control large enough', async () => {
    const { page } = stage;
    await page.getByTestId('tab-visit').click();
    const tooWide = await page
      .locator('.choices button')
      .evaluateAll((buttons) =>
        buttons
          .filter((button) => button.scrollWidth > button.clientWidth)
          .map((button) => button.textContent),
      );
    expect(tooWide).toEqual([]);
    await page.getByTestId('ear-ownWithModel').click();
    await page.getByTestId('ear-model').waitFor();
    const tooSmall = await page
      .locator('.panel :is(button, input, textarea)')
      .evaluateAll((controls, least) => {
        const sizes = controls.map((each) => each.getBoundingClientRect());
        return sizes.filter(({ width, height }) => Math.min(width, height) < least).length;
      }, SECONDARY);
    expect(tooSmall).toBe(0);
    await page.getByTestId('ear-own').click();
    await page.getByTestId('tab-sheet').click();
  });

  it('asks with the whole question above two halves to press', async () => {
    const { page } = stage;
    await answered(page, 'R-134a', 1);
    await answered(page, 'head 840', 2);
    await stateIs(page, 'asking');
    const keep = await boxOf(page.getByTestId('keep-it'));
    const drop = await boxOf(page.getByTestId('drop-it'));
    const field = await boxOf(page.getByTestId('field'));
    const words = await boxOf(page.getByTestId('reply'));
    const number = await boxOf(page.getByTestId('large-value'));
    expect(Math.min(keep.width, keep.height, drop.width, drop.height)).toBeGreaterThanOrEqual(
      PRIMARY,
    );
    expect(words.y + words.height).toBeLessThanOrEqual(keep.y);
    expect(number.y).toBeGreaterThanOrEqual(field.y);
    expect(await smallWords(page)).toEqual([]);
  });

  it('keeps the question on the sheet until it is answered', async () => {
    const { page } = stage;
    await answered(page, 'ambient 88', 3);
    await stateIs(page, 'asleep');
    const open = page.getByTestId('open-question');
    expect(await open.innerText()).toBe('still open: head 840 psi?');
    expect((await boxOf(open)).height).toBeGreaterThanOrEqual(SECONDARY);
    await open.click();
    await page.getByTestId('keep-it').click();
    await page.locator('[data-testid=reply][data-number="4"]').waitFor();
    expect(await open.count()).toBe(0);
    const head = page.getByTestId('sheet-row-headPressure').getByTestId('before');
    expect(await head.innerText()).toBe('840');
  });

  it('takes what is typed on a keyboard without a press, and gives the page back', async () => {
    const { page } = stage;
    await page.keyboard.type('box 41');
    expect(await page.getByTestId('typed').inputValue()).toBe('box 41');
    const { width } = await boxOf(page.getByTestId('typed'));
    expect(width).toBeGreaterThan(300);
    await page.getByRole('button', { name: 'say it', exact: true }).click();
    await page.locator('[data-testid=reply][data-number="5"]').waitFor();
    expect((await boxOf(page.getByTestId('typed'))).width).toBeLessThan(width / 2);
  });

  it('has number keys that a glove finds, all of them in sight', async () => {
    const { page } = stage;
    await page.getByTestId('sheet-keys').click();
    await page.getByTestId('pick-headPressure').click();
    for (const key of ['7', '.', '0', '−', 'back', 'enter']) {
      const { x, y, width, height } = await boxOf(page.getByTestId(`key-${key}`));
      expect(Math.min(width, height)).toBeGreaterThanOrEqual(GLOVED_KEY);
      expect([x >= 0, y >= 0]).toEqual([true, true]);
      expect(x + width).toBeLessThanOrEqual(size.width);
      expect(y + height).toBeLessThanOrEqual(size.height);
    }
    const field = await boxOf(page.getByTestId('field'));
    expect(field.height).toBeGreaterThanOrEqual(PRIMARY);
    expect(await smallWords(page)).toEqual([]);
    await page.getByTestId('keys-done').click();
    await page.getByTestId('tab-sheet').waitFor();
  });

  it('shows each number whole, with its unit beside it, and no panel wider than the page', async () => {
    const { page } = stage;
    await stateIs(page, 'asleep');
    const value = await boxOf(page.getByTestId('large-value'));
    const unit = await boxOf(page.locator('.large-unit'));
    expect(value.height).toBeGreaterThan(80);
    expect(unit.y).toBeLessThan(value.y + value.height);
    expect(unit.x + unit.width).toBeLessThanOrEqual(size.width);
    for (const tab of ['note', 'visit', 'sheet']) {
      await page.getByTestId(`tab-${tab}`).click();
      const spills = await page
        .locator('.panel')
        .evaluate((panel) => panel.scrollWidth - panel.clientWidth);
      expect(spills).toBeLessThanOrEqual(0);
      expect(await smallWords(page)).toEqual([]);
    }
  });
});
