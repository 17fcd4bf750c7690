import { existsSync, mkdirSync } from 'node:fs';
import { createServer as createPlainServer } from 'node:http';
import type { Server } from 'node:http';
import { createServer as createSecureServer } from 'node:https';
import { hostname, networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { getRequestListener } from '@hono/node-server';
import { createApp } from './app.ts';
import { keepCertificate } from './certificate/certificate-folder.ts';
import { readGivenCertificate } from './certificate/given-certificate.ts';
import type { KeyedCertificate } from './certificate/issue-certificate.ts';
import { openedAt, reachableNames } from './network-names.ts';
import { createPageFiles } from './page/page-files.ts';
import type { EventStore } from './store/event-store.ts';
import { openSqliteEventStore } from './store/sqlite-event-store.ts';

export interface ServerSettings {
  /** 0 takes any free one. */
  readonly port: number;
  readonly host: string;
  /** Folder of the visits and of the machine's own certificates; made when missing. */
  readonly data: string;
  /** Folder of the built page. */
  readonly page: string;
  readonly security: Security;
}

export type Security =
  | { readonly kind: 'plain' }
  | { readonly kind: 'ownCertificate' }
  | { readonly kind: 'givenCertificate'; readonly certFile: string; readonly keyFile: string };

export type Start = { readonly kind: 'started'; readonly server: RunningServer } | Failed;

interface Failed {
  readonly kind: 'failed';
  /** One line for the person who started it: what is wrong and what to do. */
  readonly why: string;
}

export interface RunningServer {
  /** Where to open the page, nearest first. */
  readonly addresses: readonly string[];
  /** Lets what is being answered finish, then closes the visits. */
  stop(): Promise<void>;
}

/** Opens the certificate, the visits and the port; what was opened is closed again when a later one fails. */
export async function startServer(
  settings: ServerSettings,
  report: (fault: unknown) => void,
): Promise<Start> {
  if (!existsSync(join(settings.page, 'index.html'))) {
    return failed(`the page is not built (no index.html in ${settings.page}): run npm run build`);
  }
  const identity = await prepareIdentity(settings);
  if (identity.kind === 'failed') return identity;
  const opened = openSqliteEventStore(join(settings.data, 'visits.db'));
  if (opened.kind !== 'opened') return failed(opened.message);
  const { store } = opened;
  const page = createPageFiles(settings.page);
  const app = createApp({ store, page, authority: identity.authority, report });
  const server = createNodeServer(identity.pair, getRequestListener(app.fetch));
  const fault = await listen(server, settings);
  if (fault === null) return { kind: 'started', server: running(server, store, settings) };
  await store.close();
  return failed(portFault(fault, settings));
}

const failed = (why: string): Failed => ({ kind: 'failed', why });

interface Identity {
  readonly kind: 'identity';
  /** Null: plain http. */
  readonly pair: KeyedCertificate | null;
  /** What a phone must be told to trust; null when there is nothing of our own to trust. */
  readonly authority: string | null;
}

async function prepareIdentity({
  data,
  host,
  security,
}: ServerSettings): Promise<Identity | Failed> {
  try {
    mkdirSync(data, { recursive: true });
    if (security.kind === 'plain') return { kind: 'identity', pair: null, authority: null };
    if (security.kind === 'givenCertificate') {
      const given = await readGivenCertificate(security.certFile, security.keyFile);
      return given.kind === 'failed' ? given : { kind: 'identity', pair: given, authority: null };
    }
    const names = reachableNames(host, { machine: hostname(), interfaces: networkInterfaces() });
    const own = await keepCertificate(data, { machine: hostname(), names, now: Date.now() });
    return { kind: 'identity', pair: own.server, authority: own.authority };
  } catch (fault) {
    const why = fault instanceof Error ? fault.message : String(fault);
    return failed(`cannot use the data folder ${data} (${why}): give another with --data FOLDER`);
  }
}

type Listener = ReturnType<typeof getRequestListener>;

function createNodeServer(pair: KeyedCertificate | null, listener: Listener): Server {
  const answer = (...exchange: Parameters<Listener>): void => void listener(...exchange);
  return pair === null
    ? createPlainServer(answer)
    : createSecureServer({ cert: pair.certificate, key: pair.key }, answer);
}

function listen(server: Server, { port, host }: ServerSettings): Promise<Error | null> {
  return new Promise((resolve) => {
    server.once('error', resolve);
    server.listen({ port, host }, () => resolve(null));
  });
}

const PORT_FAULTS: Readonly<Record<string, string>> = {
  EADDRINUSE: 'another program is using it: stop that one, or give another with --port',
  EACCES: 'this user may not open it: give one above 1023 with --port',
  EADDRNOTAVAIL: 'this machine has no such address: give one of its own with --host',
  ENOTFOUND: 'there is no such host name: give one of this machine with --host',
};

function portFault(fault: Error, { port, host }: ServerSettings): string {
  const code = 'code' in fault ? String(fault.code) : '';
  return `cannot listen on port ${port} of ${host}: ${PORT_FAULTS[code] ?? fault.message}`;
}

/** How long requests under way may take to end once a stop is asked for. */
const STOP_PATIENCE_MS = 3000;
const SWEEP_MS = 50;

function running(server: Server, store: EventStore, settings: ServerSettings): RunningServer {
  const bound = server.address();
  const port = typeof bound === 'object' && bound !== null ? bound.port : settings.port;
  const scheme = settings.security.kind === 'plain' ? 'http' : 'https';
  return {
    addresses: openedAt(settings.host, networkInterfaces()).map(
      (name) => `${scheme}://${name}:${port}`,
    ),
    stop: async () => {
      await closed(server);
      await store.close();
    },
  };
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve) => {
    const impatience = setTimeout(() => server.closeAllConnections(), STOP_PATIENCE_MS);
    // close() drops the connections that are idle now; one that answers its last request later would be kept
    // alive for five seconds more.
    const sweep = setInterval(() => server.closeIdleConnections(), SWEEP_MS);
    server.close(() => {
      clearTimeout(impatience);
      clearInterval(sweep);
      resolve();
    });
  });
}
