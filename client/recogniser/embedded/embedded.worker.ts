import createModule from 'soundswallower';

import { createEmbeddedDecoder } from '../../../core/hearing/embedded-decoder.ts';
import { parseDictionary } from '../../../core/hearing/dictionary.ts';
import { createDecoderPool } from './decoder-pool.ts';
import { EngineDesk } from './engine-desk.ts';
import { fetchModel } from './model-store.ts';
import type { FromEngine, ToEngine } from '../worker/protocol.ts';
import type { EmbeddedFiles } from './embedded-engine.ts';

/** The embedded engine's own thread: messages are answered one after the other. */
const send = (message: FromEngine): void => postMessage(message);

let desk: EngineDesk | null = null;
let queue: Promise<void> = Promise.resolve();

addEventListener('message', ({ data }: MessageEvent<ToEngine<EmbeddedFiles>>) => {
  queue = queue.then(() => answer(data));
});

async function answer(message: ToEngine<EmbeddedFiles>): Promise<void> {
  // It has no detector.
  if (message.kind === 'watch') return;
  if (message.kind !== 'load') return desk?.answer(message);
  try {
    desk = await open(message.files);
    send({ kind: 'loaded', pace: null });
  } catch (error) {
    send({ kind: 'loadFailed', message: error instanceof Error ? error.message : String(error) });
  }
}

async function open({ modelUrl, pronunciations: extra }: EmbeddedFiles): Promise<EngineDesk> {
  const [module, model] = await Promise.all([
    createModule(),
    fetchModel(modelUrl, {
      fetch,
      onProgress: (progress) => send({ kind: 'progress', ...progress }),
    }),
  ]);
  const pronunciations = { ...parseDictionary(model.dictionary), ...extra };
  const create = () => createEmbeddedDecoder(module, { files: model.files, pronunciations });
  const pool = createDecoderPool(create);
  return new EngineDesk(pool, send);
}
