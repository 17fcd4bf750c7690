import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';

import { fetchNeural } from '../../../client/recogniser/neural/model-store.ts';
import type { LoadProgress } from '../../../client/recogniser/engine.ts';

type Bytes = Uint8Array<ArrayBuffer>;
const bytesOf = (text: string): Bytes => new TextEncoder().encode(text);
const ADDRESS = 'https://page.test/model/neural/files.json';
const FILES = {
  model: bytesOf('a model of some bytes'),
  description: bytesOf('{"phones":[]}'),
  runtime: bytesOf('wasm'),
  glue: bytesOf('script'),
  dictionary: bytesOf('yes Y EH S\n'),
  detector: bytesOf('another model'),
};
const MANIFEST = JSON.stringify(
  Object.fromEntries(
    Object.entries(FILES).map(([role, bytes]) => [
      role,
      {
        url: `/files/${role}`,
        bytes: bytes.length,
        sha256: createHash('sha256').update(bytes).digest('hex'),
      },
    ]),
  ),
);

type Answer = (url: URL, options: RequestInit) => Bytes | null;

/** A server, or the cache before it, that answers as it should but where it is told otherwise. */
async function bring(answer: Answer = () => null) {
  const asked: string[] = [];
  const told: LoadProgress[] = [];
  const fetching = (asking: RequestInfo | URL, options: RequestInit = {}): Promise<Response> => {
    const url = new URL(asking instanceof Request ? asking.url : asking);
    asked.push(url.pathname + url.search);
    const role = Object.entries(FILES).find(([name]) => url.pathname === `/files/${name}`);
    const body = answer(url, options) ?? role?.[1] ?? bytesOf(MANIFEST);
    return Promise.resolve(
      body.length === 0 ? new Response(null, { status: 503 }) : new Response(body),
    );
  };
  const stored = await fetchNeural(ADDRESS, {
    fetch: fetching,
    onProgress: (progress) => void told.push(progress),
  });
  return { stored, asked, told };
}

const isModel = ({ pathname }: URL): boolean => pathname === '/files/model';

describe('the neural engine’s files', () => {
  it('come whole, and the progress ends at all of them', async () => {
    const { stored, asked, told } = await bring();
    expect(new TextDecoder().decode(stored.model)).toBe('a model of some bytes');
    expect([stored.dictionary, stored.glueUrl]).toEqual([
      'yes Y EH S\n',
      'https://page.test/files/glue',
    ]);
    expect(asked).toHaveLength(5);
    const last = told.at(-1);
    expect(last?.loadedBytes).toBe(last?.totalBytes);
    expect(told.every(({ loadedBytes, totalBytes }) => loadedBytes <= totalBytes)).toBe(true);
  });

  it.each([
    ['half of it', FILES.model.slice(0, 9)],
    ['one byte of it changed', FILES.model.map((byte, index) => (index === 3 ? 0 : byte))],
    ['nothing', bytesOf('')],
  ])('are asked for once more, past every cache, where a cache kept %s', async (_, kept) => {
    const { stored, asked } = await bring((url, options) =>
      isModel(url) && options.cache !== 'reload' ? kept : null,
    );
    expect(stored.model).toEqual(FILES.model);
    expect(asked.filter((path) => path.startsWith('/files/model'))).toEqual([
      '/files/model',
      '/files/model?again',
    ]);
  });

  it('fail, named, with what to do, where they stay damaged', async () => {
    const half = FILES.model.slice(0, 9);
    await expect(bring((url) => (isModel(url) ? half : null))).rejects.toThrow(
      /files\/model came damaged \(9 of 21 bytes\): reload with a connection/,
    );
    await expect(bring((url) => (isModel(url) ? bytesOf('') : null))).rejects.toThrow(
      /files\/model\?again did not come \(503\)/,
    );
  });

  it('bring the detector apart, whole or not at all', async () => {
    const isDetector = ({ pathname }: URL): boolean => pathname === '/files/detector';
    const { stored, asked } = await bring();
    expect(asked).not.toContain('/files/detector');
    expect(new TextDecoder().decode(await stored.fetchDetector())).toBe('another model');
    const half = FILES.detector.slice(0, 5);
    const { stored: damaged } = await bring((url) => (isDetector(url) ? half : null));
    await expect(damaged.fetchDetector()).rejects.toThrow(/detector came damaged/);
  });

  it('fail where the list of them is none', async () => {
    const isList = ({ pathname }: URL): boolean => pathname.endsWith('files.json');
    await expect(bring((url) => (isList(url) ? bytesOf('<html>') : null))).rejects.toThrow(
      /files\.json did not come/,
    );
  });
});
