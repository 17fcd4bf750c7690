import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';

import { DICTIONARY_FILE, MODEL_FILES } from '../../core/hearing/engine-parameters.ts';
import { fetchModel } from '../../client/recogniser/embedded/model-store.ts';
import type { LoadProgress } from '../../client/recogniser/engine.ts';

type Bytes = Uint8Array<ArrayBuffer>;
const bytesOf = (text: string): Bytes => new TextEncoder().encode(text);
const NAMES = [...Object.values(MODEL_FILES), DICTIONARY_FILE];
const served = new Map(NAMES.map((name) => [name, bytesOf(`the bytes of ${name}`)]));
const LIST = JSON.stringify(
  Object.fromEntries(
    [...served].map(([name, bytes]) => [
      name,
      { bytes: bytes.length, sha256: createHash('sha256').update(bytes).digest('hex') },
    ]),
  ),
);

/** What a server, or a cache before it, answers in place of the file. */
type Answer = (path: string, options: RequestInit) => Bytes | undefined;

async function bring(answer: Answer = () => undefined) {
  const asked: string[] = [];
  const told: LoadProgress[] = [];
  const fetching = (asking: RequestInfo | URL, options: RequestInit = {}): Promise<Response> => {
    const { pathname, search } = new URL(asking instanceof Request ? asking.url : asking);
    asked.push(pathname + search);
    const name = pathname.replace('/model/', '');
    const body =
      answer(pathname + search, options) ??
      (name === 'files.json' ? bytesOf(LIST) : served.get(name));
    return Promise.resolve(body ? new Response(body) : new Response(null, { status: 404 }));
  };
  const stored = await fetchModel('https://page.test/model', {
    fetch: fetching,
    onProgress: (progress) => void told.push(progress),
  });
  return { stored, asked, told };
}

describe('the embedded engine’s files', () => {
  it('come whole, and the progress ends at all of them', async () => {
    const { stored, asked, told } = await bring();
    const means = await (await fetch(stored.files.mean)).text();
    expect([means, stored.dictionary]).toEqual([
      `the bytes of ${MODEL_FILES.mean}`,
      `the bytes of ${DICTIONARY_FILE}`,
    ]);
    expect(asked).toHaveLength(1 + NAMES.length);
    const all = [...served.values()].reduce((sum, { length }) => sum + length, 0);
    expect(told.at(-1)).toEqual({ loadedBytes: all, totalBytes: all });
  });

  it.each([
    ['half of it', (whole: Bytes) => whole.slice(0, 4)],
    ['one byte of it changed', (whole: Bytes) => whole.map((byte, at) => (at === 3 ? 0 : byte))],
  ])('are asked for once more, past every cache, where a cache kept %s', async (_, damage) => {
    const path = `/model/${MODEL_FILES.mdef}`;
    const kept = damage(served.get(MODEL_FILES.mdef) ?? bytesOf(''));
    const caches: (RequestCache | undefined)[] = [];
    const { stored } = await bring((asked, { cache }) => {
      if (asked.startsWith(path)) caches.push(cache);
      return asked === path ? kept : undefined;
    });
    expect(caches).toEqual([undefined, 'reload']);
    expect(await (await fetch(stored.files.mdef)).text()).toBe(`the bytes of ${MODEL_FILES.mdef}`);
  });

  it('fail, named, with what to do, where one stays damaged', async () => {
    const path = `/model/${MODEL_FILES.sendump}`;
    const damaged = bring((asked) => (asked.startsWith(path) ? bytesOf('half') : undefined));
    await expect(damaged).rejects.toThrow(/sendump came damaged \(4 of \d+ bytes\): reload/);
  });

  it.each(['<html>', '{}', '{"mdef":{"bytes":1}}'])('fail where their list is %s', async (text) => {
    const listless = bring((asked) => (asked.endsWith('files.json') ? bytesOf(text) : undefined));
    await expect(listless).rejects.toThrow(/files\.json did not come/);
  });
});
