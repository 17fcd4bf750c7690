import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { printDictionary, soundWords } from '../../../core/hearing/dictionary.ts';
import { DICTIONARY_FILE, MODEL_FILES } from '../../../core/hearing/engine-parameters.ts';
import { MODEL_LIST } from './model-store.ts';

const FOLDER = 'model/en-us';
const PACKAGE = dirname(createRequire(import.meta.url).resolve('soundswallower'));
const STUB = fileURLToPath(new URL('./blob-stub.ts', import.meta.url));

/**
 * Puts the embedded engine's model files into the build (and serves them in development) under
 * /model/en-us with a list of what each is when whole, its dictionary cut to the words the product can hear.
 *
 * @param {{
 *   words: readonly string[],
 *   pronunciations: import('../../../core/hearing/dictionary.ts').Pronunciations,
 * }} options
 * @returns {import('vite').Plugin}
 */
export function modelFiles({ words, pronunciations }) {
  const read = async (file) => {
    const bytes = await readFile(join(PACKAGE, FOLDER, file));
    return file === DICTIONARY_FILE
      ? dictionaryOf(bytes.toString('utf8'), words, pronunciations)
      : bytes;
  };
  const files = [...Object.values(MODEL_FILES), DICTIONARY_FILE];
  const list = async () => {
    const entries = files.map(async (file) => [file, factsOf(Buffer.from(await read(file)))]);
    return JSON.stringify(Object.fromEntries(await Promise.all(entries)));
  };
  return {
    name: 'model-files',
    config: () => ({
      resolve: { alias: { 'blob-polyfill': STUB } },
      worker: { format: 'es' },
      // Bundled ahead, the engine would look for its .wasm beside the bundle.
      optimizeDeps: { exclude: ['soundswallower'] },
    }),
    async generateBundle() {
      for (const file of [...files, MODEL_LIST]) {
        const source = file === MODEL_LIST ? await list() : await read(file);
        this.emitFile({ type: 'asset', fileName: `${FOLDER}/${file}`, source });
      }
    },
    configureServer(server) {
      server.middlewares.use(`/${FOLDER}`, async (request, response) => {
        const file = [...files, MODEL_LIST].find((name) => request.url === `/${name}`);
        response.statusCode = file ? 200 : 404;
        response.setHeader('content-type', 'application/octet-stream');
        response.end(file === MODEL_LIST ? await list() : file && (await read(file)));
      });
    },
  };
}

/** What the page checks each file by. */
function factsOf(bytes) {
  return { bytes: bytes.length, sha256: createHash('sha256').update(bytes).digest('hex') };
}

/**
 * The dictionary among those files, for an engine that shares it.
 *
 * @param {Parameters<typeof modelFiles>[0]} options
 */
export function dictionaryFile({ words, pronunciations }) {
  const read = async () =>
    dictionaryOf(
      await readFile(join(PACKAGE, FOLDER, DICTIONARY_FILE), 'utf8'),
      words,
      pronunciations,
    );
  return { at: `${FOLDER}/${DICTIONARY_FILE}`, read };
}

/** A word without a sound would make its whole grammar unusable in the page: better no build. */
function dictionaryOf(text, words, extra) {
  const { pronunciations, missing } = soundWords(words, text, extra);
  if (missing.length > 0) throw new Error(`No pronunciation is known for: ${missing.join(', ')}.`);
  return printDictionary(pronunciations);
}
