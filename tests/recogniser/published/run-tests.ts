import { readdir } from 'node:fs/promises';
import type { BrowserContext, Page } from 'playwright-core';
import { z } from 'zod';

const told = z.object({
  harness: z.string(),
  tests: z.array(
    z.object({ name: z.string(), passed: z.boolean(), message: z.string().nullable() }),
  ),
});
export type Told = z.infer<typeof told>;

export interface Outcome extends Told {
  readonly file: string;
}

/** Tests that ask for a person who keeps silent: a microphone that is silent will do. */
export const SILENT = /-(abort|stop|onerror)-manual/;

/** The tests of a folder of the checkout that a page can be made of, by file name. */
export async function listTests(folder: string): Promise<readonly string[]> {
  const names = await readdir(folder);
  return names.filter((name) => /(\.html|\.window\.js)$/.test(name)).toSorted();
}

/** Opens a window of its own for each test, as a press counts for a window's whole life. */
export async function runTest(
  context: BrowserContext,
  address: string,
  file: string,
): Promise<Outcome> {
  const page = await context.newPage();
  const outcome = await resultsOf(page, `${address}/${file.replace(/\.js$/, '.html')}`);
  await page.close();
  return { file, ...outcome };
}

const NOTHING: Told = { harness: 'nothing came within a minute', tests: [] };

/** The page's own harness ends a test that hangs; a page without one is given up after a minute. */
function resultsOf(page: Page, address: string): Promise<Told> {
  return new Promise((resolve, reject) => {
    const open = async (): Promise<void> => {
      await page.exposeFunction('pressAt', (x: number, y: number) => page.mouse.click(x, y));
      await page.exposeFunction('tellResults', (results: unknown) => resolve(told.parse(results)));
      await page.goto(address);
    };
    open().catch(reject);
    setTimeout(() => resolve(NOTHING), 60_000).unref();
  });
}
