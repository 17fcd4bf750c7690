import { readFile } from 'node:fs/promises';
import { get } from 'node:http';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createScratchFolder } from '../support/scratch-folder.ts';
import { BUILT_PAGE, type PageServer, startPageServer } from './page-server.ts';

/** What may come before the page can hear: itself, the runtime, the neural model. */
const MOST_BYTES = 12e6;
const IS_SECOND_ENGINE = /^\/model\/en-us\/(?!dict)|soundswallower/;

/** Bytes of the answer's body as it crosses the network, where the asker takes it compressed. */
function bytesSent(address: string): Promise<number> {
  return new Promise((resolve, reject) => {
    get(address, { headers: { 'accept-encoding': 'gzip, deflate' } }, (answer) => {
      let bytes = 0;
      answer.on('data', (part: Buffer) => {
        bytes += part.length;
      });
      answer.on('end', () => {
        if (answer.statusCode === 200) resolve(bytes);
        else reject(new Error(`${address} answered ${answer.statusCode}`));
      });
    }).on('error', reject);
  });
}

/** The files in the order in which the service worker fetches them, one after the other. */
async function inOrder(): Promise<readonly string[]> {
  const worker = await readFile(`${BUILT_PAGE}/sw.js`, 'utf8');
  const named = [...worker.matchAll(/url:"([^"]+)"/g)].map(([, url]) => `/${url}`);
  return [...new Set(named)];
}

describe('what comes over the network at the first load', () => {
  let folder: Awaited<ReturnType<typeof createScratchFolder>>;
  let server: PageServer;
  let files: readonly string[];

  beforeAll(async () => {
    folder = await createScratchFolder();
    server = await startPageServer({ data: `${folder.path}/data` });
    files = await inOrder();
  });

  afterAll(async () => {
    await server.stop();
    await folder.discard();
  });

  it(`is at most ${MOST_BYTES / 1e6} MB before the page hears by its own best engine`, async () => {
    const first = files.filter((file) => !IS_SECOND_ENGINE.test(file));
    expect(first).toEqual(expect.arrayContaining(['/model/neural/model.onnx', '/index.html']));
    const sizes = await Promise.all(first.map((file) => bytesSent(server.address + file)));
    const total = sizes.reduce((sum, bytes) => sum + bytes, 0);
    expect(total).toBeLessThan(MOST_BYTES);
    expect(total).toBeGreaterThan(MOST_BYTES / 3);
  });

  it('brings the second engine after everything else', () => {
    const second = files.findIndex((file) => IS_SECOND_ENGINE.test(file));
    expect(second).toBeGreaterThan(10);
    expect(files.slice(second).every((file) => IS_SECOND_ENGINE.test(file))).toBe(true);
  });

  it('holds the WebAssembly of the networks once', () => {
    expect(server.files.filter((file) => /ort-.*\.wasm$/.test(file))).toEqual([
      '/runtime/ort-wasm-simd-threaded.wasm',
    ]);
  });
});
