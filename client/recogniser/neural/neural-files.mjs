import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { defaultClientConditions } from 'vite';

const MODEL = fileURLToPath(new URL('./model/', import.meta.url));
const { resolve } = createRequire(import.meta.url);
const RUNTIME = dirname(resolve('onnxruntime-web'));
const DETECTOR = dirname(resolve('@ricky0123/vad-web'));

/** Where each is read, and where it is served: one copy of the runtime for whoever uses it. */
const SERVED = {
  model: { from: join(MODEL, 'model.onnx'), at: 'model/neural/model.onnx' },
  description: { from: join(MODEL, 'model.json'), at: 'model/neural/model.json' },
  runtime: {
    from: join(RUNTIME, 'ort-wasm-simd-threaded.wasm'),
    at: 'runtime/ort-wasm-simd-threaded.wasm',
  },
  glue: {
    from: join(RUNTIME, 'ort-wasm-simd-threaded.mjs'),
    at: 'runtime/ort-wasm-simd-threaded.mjs',
  },
  detector: { from: join(DETECTOR, 'silero_vad_v6.onnx'), at: 'model/voice/detector.onnx' },
};
const MANIFEST = 'model/neural/files.json';

/**
 * Puts the neural engine's model, its runtime and the list of both into the build, and serves them in development.
 * The dictionary is given, as another engine shares it.
 *
 * @param {{ dictionary: { at: string, read: () => Promise<Buffer | string> } }} options
 * @returns {import('vite').Plugin}
 */
export function neuralFiles({ dictionary }) {
  const read = async (role) =>
    role === 'dictionary' ? Buffer.from(await dictionary.read()) : readFile(SERVED[role].from);
  const list = async () => {
    const places = { ...SERVED, dictionary };
    const entries = Object.entries(places).map(async ([role, { at }]) => [
      role,
      described(`/${at}`, await read(role)),
    ]);
    return JSON.stringify(Object.fromEntries(await Promise.all(entries)));
  };
  return {
    name: 'neural-files',
    config: () => ({
      // The runtime's scripts without a second copy of its .wasm inside.
      resolve: { conditions: ['onnxruntime-web-use-extern-wasm', ...defaultClientConditions] },
      optimizeDeps: { exclude: ['onnxruntime-web'] },
    }),
    async generateBundle() {
      for (const [role, { at }] of Object.entries(SERVED)) {
        this.emitFile({ type: 'asset', fileName: at, source: await read(role) });
      }
      this.emitFile({ type: 'asset', fileName: MANIFEST, source: await list() });
    },
    configureServer(server) {
      server.middlewares.use(async (request, response, next) => {
        const path = (request.url ?? '').split('?')[0].slice(1);
        const role = Object.keys(SERVED).find((each) => SERVED[each].at === path);
        if (role === undefined && path !== MANIFEST) return next();
        response.setHeader('content-type', typeOf(path));
        response.end(role === undefined ? await list() : await read(role));
      });
    },
  };
}

function described(url, bytes) {
  return { url, bytes: bytes.length, sha256: createHash('sha256').update(bytes).digest('hex') };
}

function typeOf(path) {
  if (path.endsWith('.wasm')) return 'application/wasm';
  return path.endsWith('.mjs') ? 'text/javascript' : 'application/octet-stream';
}
