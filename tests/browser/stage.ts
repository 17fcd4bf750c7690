import type { Page } from 'playwright-core';
import { createScratchFolder } from '../support/scratch-folder.ts';
import { type OpenBrowser, openBrowser } from './chromium.ts';
import { type PageServer, startPageServer } from './page-server.ts';

/** The server with the built page, over a folder of the test's own. */
export interface ServedPage {
  /** The server's data and browsers' profiles lie in it. */
  readonly folder: string;
  readonly server: PageServer;
  /** A server that was stopped again, at the same place, with what it kept. */
  restartServer(): Promise<void>;
  close(): Promise<void>;
}

/** The same with a browser beside it, which has opened nothing yet. */
export interface Stage extends ServedPage {
  readonly browser: OpenBrowser;
  readonly page: Page;
}

export async function servePage(): Promise<ServedPage> {
  const folder = await createScratchFolder();
  const data = `${folder.path}/data`;
  let server = await startPageServer({ data });
  return {
    folder: folder.path,
    get server() {
      return server;
    },
    restartServer: async () => {
      server = await startPageServer({ data, port: server.port });
    },
    close: async () => {
      await server.stop();
      await folder.discard();
    },
  };
}

/** Sound plays and microphones open without a press. */
export const UNPRESSED = '--autoplay-policy=no-user-gesture-required';

/** `args` are for Chromium, besides the usual ones. */
export async function openStage(...args: readonly string[]): Promise<Stage> {
  const served = await servePage();
  const browser = await openBrowser({ profile: `${served.folder}/profile`, args });
  return {
    folder: served.folder,
    get server() {
      return served.server;
    },
    restartServer: () => served.restartServer(),
    browser,
    page: browser.page,
    close: async () => {
      await browser.close();
      await served.close();
    },
  };
}
