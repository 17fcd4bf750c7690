import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openStage, type Stage } from './stage.ts';
import { openVisitPage, typeWords } from './visit-page.ts';

describe('the visit tab', () => {
  let stage: Stage;

  beforeEach(async () => {
    stage = await openStage();
  });

  afterEach(() => stage.close());

  it('refuses a height beyond the range with the range, and reaches the answers by barometer', async () => {
    const { page } = stage;
    await openVisitPage(page, stage.server.address);
    await page.getByTestId('tab-visit').click();
    await page.getByTestId('altitude').fill('99999');
    await page.getByTestId('altitude').press('Enter');
    await page.getByTestId('altitude-refused').filter({ hasText: '19685' }).waitFor();
    expect(await page.getByTestId('altitude').inputValue()).toBe('99999');
    await page.getByTestId('altitude').fill('0');
    await page.getByTestId('altitude').press('Enter');
    await page.getByTestId('altitude-refused').waitFor({ state: 'detached' });
    // 24.9 inches of mercury are 12.23 psia, the standard air at 5,000 ft: 20 psi is then 18.7 °F.
    await page.getByTestId('barometer').fill('24.9');
    await page.getByTestId('barometer').press('Enter');
    await typeWords(page, "what's twenty psi on one thirty four a");
    await page.getByTestId('reply').filter({ hasText: '18.7 °F' }).waitFor();
  });

  it('keeps a speech model’s name while it is being typed, though the page is drawn anew meanwhile', async () => {
    const { page } = stage;
    await openVisitPage(page, stage.server.address);
    await page.getByTestId('tab-visit').click();
    await page.getByTestId('ear-ownWithModel').click();
    await page.getByTestId('ear-model').fill('shop/tiny');
    // A click by the program leaves the caret where it is.
    await page.getByTestId('field').getByRole('button').first().evaluate(clickOf);
    await page.locator('[data-testid=state]:not([data-state=asleep])').waitFor();
    expect(await page.getByTestId('ear-model').inputValue()).toBe('shop/tiny');
  });

  it('keeps what is typed into the list of parts there, key by key, and the parts are then heard', async () => {
    const { page } = stage;
    await openVisitPage(page, stage.server.address);
    await page.getByTestId('tab-visit').click();
    await page.getByTestId('parts').click();
    await page.keyboard.type('Copperline 012 contactor');
    expect(await page.getByTestId('parts').inputValue()).toBe('Copperline 012 contactor');
    await page.getByTestId('parts').blur();
    await typeWords(page, 'put in a new Copperline zero one two contactor');
    await page.getByTestId('reply').filter({ hasText: 'Copperline 012 contactor' }).waitFor();
  });
});

function clickOf(element: Element): void {
  element.dispatchEvent(new MouseEvent('click', { bubbles: true }));
}
