import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createScratchFolder } from '../support/scratch-folder.ts';
import { type OpenBrowser, openBrowser } from './chromium.ts';
import { type PageServer, startPageServer } from './page-server.ts';
import { openVisitPage, typeWords } from './visit-page.ts';

describe('the air around the gauge', () => {
  let folder: Awaited<ReturnType<typeof createScratchFolder>>;
  let server: PageServer;
  let browser: OpenBrowser;

  beforeEach(async () => {
    folder = await createScratchFolder();
    server = await startPageServer({ data: `${folder.path}/data` });
    browser = await openBrowser({ profile: `${folder.path}/profile` });
  });

  afterEach(async () => {
    await browser.close();
    await server.stop();
    await folder.discard();
  });

  it('refuses a height beyond the range with the range, and reaches the answers by barometer', async () => {
    const { page } = browser;
    await openVisitPage(page, server.address);
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
});
