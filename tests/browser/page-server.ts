import { existsSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { z } from 'zod';
import { startServer } from '../../server/main.ts';

export interface PageServer {
  readonly address: string;
  readonly port: number;
  /** Paths of the built page's files. */
  readonly files: readonly string[];
  stop(): Promise<void>;
}

export interface PageServerOptions {
  readonly data: string;
  /** 0, any free one, unless given: a stopped server comes back at the same place for its page. */
  readonly port?: number;
}

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
export const BUILT_PAGE = `${ROOT}build/client`;

/** The real server with the built page. `npm test` builds the page; run alone, a test builds it when it is missing. */
export async function startPageServer({ data, port = 0 }: PageServerOptions): Promise<PageServer> {
  if (!existsSync(`${BUILT_PAGE}/index.html`)) await buildPage();
  const faults: unknown[] = [];
  const settings = { port, host: '127.0.0.1', data, page: BUILT_PAGE };
  const start = await startServer({ ...settings, security: { kind: 'plain' } }, (fault) =>
    faults.push(fault),
  );
  if (start.kind === 'failed') throw new Error(start.why);
  let stopped = false;
  const [address] = start.server.addresses;
  if (address === undefined) throw new Error('the server names no address');
  return {
    address,
    port: Number(new URL(address).port),
    files: await builtFiles(),
    async stop() {
      if (stopped) return;
      stopped = true;
      await start.server.stop();
      if (faults.length > 0) throw new AggregateError(faults, 'the server reported faults');
    },
  };
}

/** As `npm run build` does: the runner's own NODE_ENV would make a service worker that Chromium does not start. */
async function buildPage(): Promise<void> {
  process.env['NODE_ENV'] = 'production';
  await build({ root: `${ROOT}client`, configFile: `${ROOT}vite.config.ts`, logLevel: 'warn' });
}

/**
 * All but the service worker itself, which browsers keep apart, its library, files compressed once more, and the
 * voice that only a browser without one fetches.
 */
async function builtFiles(): Promise<readonly string[]> {
  const entries = await readdir(BUILT_PAGE, { recursive: true, withFileTypes: true });
  return entries
    .filter(
      (entry) =>
        entry.isFile() && !/^(sw|workbox-\w+)\.js$|\.gz$|^flite-.*\.wasm$/.test(entry.name),
    )
    .map((entry) => `/${relative(BUILT_PAGE, resolve(entry.parentPath, entry.name))}`);
}

/** How many events each visit on the server has. */
export async function eventsOnServer({ address }: PageServer): Promise<readonly number[]> {
  const answer: unknown = await (await fetch(`${address}/api/visits`)).json();
  const { visits } = z.object({ visits: z.array(z.object({ events: z.number() })) }).parse(answer);
  return visits.map(({ events }) => events);
}
