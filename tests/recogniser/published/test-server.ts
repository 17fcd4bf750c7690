import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';

export interface TestServer {
  readonly port: number;
  close(): void;
}

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.mjs': 'text/javascript',
  '.json': 'application/json',
  '.wasm': 'application/wasm',
};

/** What a test runner has to bring by itself: where results go, and how a press is made. */
const OURS: Readonly<Record<string, string>> = {
  '/resources/testharnessreport.js': `add_completion_callback((tests, status) => tellResults({
    harness: status.status === 0 ? '' : String(status.message ?? 'the page did not finish'),
    tests: tests.map(({ name, status, message }) => ({ name, passed: status === 0, message })),
  }));`,
  '/resources/testdriver-vendor.js': `test_driver_internal.in_automation = true;
  test_driver_internal.click = (element, { x, y }) => pressAt(x, y);`,
};

/** The published tests in a checkout, as they are, and the built recogniser at the same address. */
export async function serveTests(checkout: string, built: string): Promise<TestServer> {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    void contentOf(pathname, [built, checkout]).then((content) => {
      response.statusCode = content === null ? 404 : 200;
      response.setHeader('content-type', TYPES[extname(pathname)] ?? 'application/octet-stream');
      response.end(content ?? '');
    });
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const place = server.address();
  const port = typeof place === 'object' && place !== null ? place.port : 0;
  return { port, close: () => server.close() };
}

async function contentOf(
  path: string,
  folders: readonly string[],
): Promise<Buffer | string | null> {
  const ours = OURS[path];
  if (ours !== undefined) return ours;
  const found = await readFirst(path, folders);
  if (found !== null || !path.endsWith('.window.html')) return found;
  const script = await readFirst(scriptOf(path), folders);
  return script === null ? null : windowPage(scriptOf(path), script.toString('utf8'));
}

async function readFirst(path: string, folders: readonly string[]): Promise<Buffer | null> {
  for (const folder of folders) {
    const content = await readFile(join(folder, normalize(path))).catch(() => null);
    if (content !== null) return content;
  }
  return null;
}

const scriptOf = (page: string): string => page.replace(/\.html$/, '.js');

const timeout = (length: string): string => `<meta name="timeout" content="${length}">`;

/** The page that goes round a test which is a script only; its head says what else it needs. */
function windowPage(address: string, script: string): string {
  const told = [...script.matchAll(/^\/\/ META: (\w+)=(.*)$/gm)].map(
    ([, name = '', value = '']) => ({ name, value }),
  );
  const of = (name: string): readonly string[] =>
    told.filter((each) => each.name === name).map(({ value }) => value);
  const scripts = [
    '/resources/testharness.js',
    '/resources/testharnessreport.js',
    ...of('script'),
    address,
  ];
  return `<!doctype html><meta charset="utf-8">
${of('timeout').map(timeout).join('')}
<title>${of('title').join('')}</title><body>
${scripts.map((each) => `<script src="${each}"></script>`).join('\n')}`;
}
