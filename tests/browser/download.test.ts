import { readFile } from 'node:fs/promises';
import { get } from 'node:http';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BUILT_PAGE } from './page-server.ts';
import { type ServedPage, servePage } from './stage.ts';

/** What may come before the page can hear: itself, the runtime, the neural model. */
const MOST_BYTES = 12e6;
/** It answers in the built-in sentences until the model that words them is there. */
const IS_WORDING = /^\/phrasing\/|^\/assets\/phraser\./;
/** It hears without what is rarely said until that is there. */
const IS_RARE = /^\/heard\//;
/** It writes whatever is said by a model that only who wants it fetches. */
const IS_FREE_TEXT = /^\/assets\/free-text\./;
const IS_SECOND_ENGINE = /^\/model\/en-us\/(?!dict)|soundswallower/;

const isLater = (file: string) =>
  [IS_WORDING, IS_RARE, IS_FREE_TEXT, IS_SECOND_ENGINE].some((each) => each.test(file));

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
  let served: ServedPage;
  let files: readonly string[];

  beforeAll(async () => {
    served = await servePage();
    files = await inOrder();
  });

  afterAll(() => served.close());

  it(`is at most ${MOST_BYTES / 1e6} MB before the page hears by its own best engine`, async () => {
    const later = files.findIndex(isLater);
    expect(later).toBeGreaterThan(10);
    const first = files.slice(0, later);
    expect(files.slice(later).every(isLater)).toBe(true);
    expect(first).toEqual(expect.arrayContaining(['/model/neural/model.onnx', '/index.html']));
    const sizes = await Promise.all(first.map((file) => bytesSent(served.server.address + file)));
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
    expect(served.server.files.filter((file) => /ort-.*\.wasm$/.test(file))).toEqual([
      '/runtime/ort-wasm-simd-threaded.wasm',
    ]);
  });
});
