import { mkdir, readFile, stat, writeFile } from 'node:fs/promises';
import { request as requestPlain } from 'node:http';
import type { IncomingMessage } from 'node:http';
import { request as requestSecure } from 'node:https';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { startServer } from '../../server/main.ts';
import type { RunningServer, ServerSettings } from '../../server/main.ts';
import { createScratchFolder } from '../support/scratch-folder.ts';

const PAGE_FILES = {
  'index.html': '<!doctype html><title>page</title>',
  'service-worker.js': 'self;',
  'assets/main-BQ3x_k9Z.js': 'export {};',
  'assets/engine-a1B2c3D4.wasm': '\0asm',
  'model/words.dict': 'HEAD HH EH D',
  'manifest.webmanifest': '{}',
};

let folder: Awaited<ReturnType<typeof createScratchFolder>>;
let settings: ServerSettings;
const running: RunningServer[] = [];

beforeEach(async () => {
  folder = await createScratchFolder();
  const page = join(folder.path, 'page');
  await mkdir(join(page, 'assets'), { recursive: true });
  await mkdir(join(page, 'model'));
  for (const [name, content] of Object.entries(PAGE_FILES)) {
    await writeFile(join(page, name), content);
  }
  const data = join(folder.path, 'data');
  settings = { port: 0, host: '127.0.0.1', data, page, security: { kind: 'plain' } };
});

afterEach(async () => {
  for (const server of running.splice(0)) await server.stop();
  await folder.discard();
});

async function start(changes: Partial<ServerSettings> = {}): Promise<string> {
  const started = await startServer({ ...settings, ...changes }, () => undefined);
  if (started.kind === 'failed') throw new Error(started.why);
  running.push(started.server);
  return started.server.addresses[0] ?? '';
}

async function whyNot(changes: Partial<ServerSettings>): Promise<string> {
  const started = await startServer({ ...settings, ...changes }, () => undefined);
  if (started.kind === 'failed') return started.why;
  running.push(started.server);
  return 'started';
}

interface Asked {
  readonly headers?: Record<string, string>;
  readonly ca?: string;
}

/** The path as given: fetch would tidy `..` away before it is sent. */
function get(address: string, path: string, { headers = {}, ca }: Asked = {}) {
  const { hostname, port, protocol } = new URL(address);
  const where = { hostname, port, path, headers };
  return new Promise<IncomingMessage>((resolve, reject) => {
    const call =
      protocol === 'http:'
        ? requestPlain(where, resolve)
        : requestSecure({ ...where, ...(ca === undefined ? {} : { ca }) }, resolve);
    call.on('error', reject).end();
  });
}

describe('the built page', () => {
  it.each([
    ['/', 'text/html; charset=utf-8', 'no-cache'],
    ['/index.html', 'text/html; charset=utf-8', 'no-cache'],
    ['/service-worker.js', 'text/javascript; charset=utf-8', 'no-cache'],
    ['/manifest.webmanifest', 'application/manifest+json', 'no-cache'],
    ['/model/words.dict', 'application/octet-stream', 'no-cache'],
    [
      '/assets/main-BQ3x_k9Z.js',
      'text/javascript; charset=utf-8',
      'public, max-age=31536000, immutable',
    ],
    ['/assets/engine-a1B2c3D4.wasm', 'application/wasm', 'public, max-age=31536000, immutable'],
  ])('gives %s its type and says how long it lasts', async (path, type, caching) => {
    const response = await get(await start(), path);
    expect(response.statusCode).toBe(200);
    expect(response.headers['content-type']).toBe(type);
    expect(response.headers['cache-control']).toBe(caching);
    expect(response.headers['content-security-policy']).toContain("default-src 'self'");
    response.resume();
  });

  it.each([
    '/model/missing.dict',
    '/assets/old-BQ3x_k9Z.js',
    '/visits',
    '/../data/visits.db',
    '/%2e%2e/data/visits.db',
    '/..%2fdata/visits.db',
    '/assets/../../data/visits.db',
  ])('answers %s with a 404, never with the page or a file beside it', async (path) => {
    const response = await get(await start(), path);
    expect(response.statusCode).toBe(404);
    expect(await text(response)).toContain('"notFound"');
  });

  it('answers an unchanged file without its body', async () => {
    const address = await start();
    const first = await get(address, '/model/words.dict');
    expect(await text(first)).toBe(PAGE_FILES['model/words.dict']);
    const since = first.headers['last-modified'] ?? '';
    const again = await get(address, '/model/words.dict', {
      headers: { 'If-Modified-Since': since },
    });
    expect(again.statusCode).toBe(304);
    expect(await text(again)).toBe('');
  });
});

describe('https with the machine’s own certificate', () => {
  const secure = { security: { kind: 'ownCertificate' } } as const;
  const authority = () => readFile(join(settings.data, 'authority.crt'), 'utf8');
  const fingerprintOf = async (name: string) => readFile(join(settings.data, name), 'utf8');

  it('is trusted by who trusts the authority, and by nobody else', async () => {
    const address = await start(secure);
    expect(address).toMatch(/^https:\/\/localhost:\d+$/);
    const ca = await authority();
    const response = await get(address, '/api/health', { ca });
    expect(await text(response)).toBe('{"status":"up"}');
    const byAddress = await get(address.replace('localhost', '127.0.0.1'), '/', { ca });
    expect(byAddress.statusCode).toBe(200);
    byAddress.resume();
    await expect(get(address, '/')).rejects.toThrow(/self-signed|unable to verify/);
  });

  it('hands the authority, never a key, to a phone that asks', async () => {
    const address = await start(secure);
    const ca = await authority();
    const response = await get(address, '/certificate.crt', { ca });
    expect(response.headers['content-type']).toBe('application/x-x509-ca-cert');
    expect(await text(response)).toBe(ca);
    expect(ca).not.toContain('PRIVATE KEY');
    const { mode } = await stat(join(settings.data, 'authority.key'));
    expect(mode & 0o077).toBe(0);
  });

  it('stays the same from start to start', async () => {
    await start(secure);
    const before = [await fingerprintOf('authority.crt'), await fingerprintOf('server.crt')];
    await start(secure);
    expect([await fingerprintOf('authority.crt'), await fingerprintOf('server.crt')]).toEqual(
      before,
    );
  });

  it('makes a new server certificate under the same authority for a new address', async () => {
    await start(secure);
    const [authorityBefore, serverBefore] = [await authority(), await fingerprintOf('server.crt')];
    await start({ ...secure, host: '127.0.0.2' });
    expect(await authority()).toBe(authorityBefore);
    expect(await fingerprintOf('server.crt')).not.toBe(serverBefore);
  });

  it('serves with a certificate that was given, and says when the two files do not fit', async () => {
    await start(secure);
    const file = (name: string) => join(settings.data, name);
    const given = (certFile: string, keyFile: string) => ({
      security: { kind: 'givenCertificate', certFile, keyFile } as const,
    });
    const address = await start(given(file('server.crt'), file('server.key')));
    const response = await get(address, '/api/health', { ca: await authority() });
    expect(response.statusCode).toBe(200);
    response.resume();
    expect(await whyNot(given(file('server.crt'), file('authority.key')))).toMatch(/^cannot use /);
    expect(await whyNot(given(file('missing.crt'), file('server.key')))).toMatch(/missing\.crt/);
  });
});

describe('what keeps it from starting', () => {
  it('is a port in use', async () => {
    const other = createServer();
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
    const bound = other.address();
    if (bound === null || typeof bound === 'string') throw new Error('a TCP port');
    const why = await whyNot({ port: bound.port });
    expect(why).toContain(`port ${bound.port}`);
    expect(why).toContain('--port');
    await new Promise((resolve) => other.close(resolve));
  });

  it('is a page that was not built', async () => {
    expect(await whyNot({ page: join(folder.path, 'nowhere') })).toContain('npm run build');
  });

  it('is a data folder that cannot be', async () => {
    const why = await whyNot({ data: join(settings.page, 'index.html') });
    expect(why).toMatch(/cannot use the data folder .*--data/);
  });

  it('is a damaged file of visits, which stays as it is', async () => {
    await mkdir(settings.data);
    const file = join(settings.data, 'visits.db');
    await writeFile(file, 'no visits here '.repeat(1000));
    expect(await whyNot({})).toContain('move it');
    expect(await readFile(file, 'utf8')).toBe('no visits here '.repeat(1000));
  });
});

it('frees its port when it is stopped', async () => {
  const address = await start();
  const answer = await get(address, '/api/visits');
  expect(await text(answer)).toBe('{"visits":[]}');
  await running.pop()?.stop();
  await expect(get(address, '/api/visits')).rejects.toThrow(/ECONNREFUSED|socket hang up/);
  expect(await start({ port: Number(new URL(address).port) })).toBe(address);
});
