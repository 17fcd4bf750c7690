import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';

const FOLDER = fileURLToPath(new URL('../../prompts/model', import.meta.url));
/** What the page loads; the card, the scores and the reference stay at home. */
const FILES = [
  'config.json',
  'generation_config.json',
  'tokenizer.json',
  'tokenizer_config.json',
  'lexicon.json',
  'onnx/model.onnx',
];

/**
 * Puts the phrasing model into the build (and serves it in development) under /phrasing.
 *
 * @returns {import('vite').Plugin}
 */
export function phrasingModelFiles() {
  const read = (file) => readFile(`${FOLDER}/${file}`);
  return {
    name: 'phrasing-model-files',
    config: () => ({
      // The library asks for the runtime that can also use a graphics card: nearly twice the size, for nothing.
      resolve: { alias: { 'onnxruntime-web/webgpu': 'onnxruntime-web/wasm' } },
    }),
    async generateBundle() {
      for (const file of FILES) {
        this.emitFile({ type: 'asset', fileName: `phrasing/${file}`, source: await read(file) });
      }
    },
    configureServer(server) {
      server.middlewares.use('/phrasing', async (request, response) => {
        const file = FILES.find((name) => request.url === `/${name}`);
        response.statusCode = file ? 200 : 404;
        response.end(file ? await read(file) : undefined);
      });
    },
  };
}
