import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { cutDictionary } from '../../../core/hearing/dictionary.ts';
import { DICTIONARY_FILE, MODEL_FILES } from '../../../core/hearing/engine-parameters.ts';

const FOLDER = 'model/en-us';
const PACKAGE = dirname(createRequire(import.meta.url).resolve('soundswallower'));
const STUB = fileURLToPath(new URL('./blob-stub.ts', import.meta.url));

/**
 * Puts the embedded engine's model files into the build (and serves them in development) under
 * /model/en-us, its dictionary cut to the words the product can hear (without them it is whole).
 *
 * @param {{ words?: readonly string[] }} options
 * @returns {import('vite').Plugin}
 */
export function modelFiles({ words } = {}) {
  const read = async (file) => {
    const bytes = await readFile(join(PACKAGE, FOLDER, file));
    return file === DICTIONARY_FILE && words ? cutDictionary(bytes.toString('utf8'), words) : bytes;
  };
  const files = [...Object.values(MODEL_FILES), DICTIONARY_FILE];
  return {
    name: 'model-files',
    config: () => ({
      resolve: { alias: { 'blob-polyfill': STUB } },
      worker: { format: 'es' },
      // Bundled ahead, the engine would look for its .wasm beside the bundle.
      optimizeDeps: { exclude: ['soundswallower'] },
    }),
    async generateBundle() {
      for (const file of files) {
        const source = await read(file);
        this.emitFile({ type: 'asset', fileName: `${FOLDER}/${file}`, source });
      }
    },
    configureServer(server) {
      server.middlewares.use(`/${FOLDER}`, async (request, response) => {
        const file = files.find((name) => request.url === `/${name}`);
        response.statusCode = file ? 200 : 404;
        response.setHeader('content-type', 'application/octet-stream');
        response.end(file ? await read(file) : undefined);
      });
    },
  };
}
