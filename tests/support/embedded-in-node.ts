import createModule from 'soundswallower';

import { type Pronunciations, soundWords } from '../../core/hearing/dictionary.ts';
import { createEmbeddedDecoder } from '../../core/hearing/embedded-decoder.ts';
import { createDecoderPool } from '../../client/recogniser/embedded/decoder-pool.ts';
import { EngineDesk } from '../../client/recogniser/embedded/engine-desk.ts';
import {
  createWorkerEngine,
  type WorkerEngine,
} from '../../client/recogniser/worker/worker-engine.ts';
import type { ToEngine } from '../../client/recogniser/worker/protocol.ts';
import { NODE_MODEL_FILES, readDictionary } from '../../server/hearing/node-model.ts';
import { createInProcessWorker, type Serve } from './in-process-worker.ts';

export interface EmbeddedInNode {
  readonly engine: WorkerEngine;
  readonly damage: (damaged: boolean) => void;
  readonly loads: () => number;
}

// Every module made listens for the end of the process.
process.setMaxListeners(50);

/** The page's embedded engine over Node's files, but for the thread. */
export async function createEmbeddedInNode(words: readonly string[]): Promise<EmbeddedInNode> {
  const { pronunciations } = soundWords(words, await readDictionary(), {});
  let damaged = false;
  let loads = 0;
  const serve: Serve<null> = (send) => {
    let desk: Promise<EngineDesk> | null = null;
    let queue: Promise<void> = Promise.resolve();
    const answer = async (message: ToEngine<null>): Promise<void> => {
      if (message.kind === 'watch') return;
      if (message.kind !== 'load') return (await desk)?.answer(message);
      loads += 1;
      if (damaged) send({ kind: 'loadFailed', message: 'means did not come: reload.' });
      else {
        desk = open(pronunciations, send);
        await desk;
        send({ kind: 'loaded', pace: null });
      }
    };
    return (message) => (queue = queue.then(() => answer(message)));
  };
  const engine = createWorkerEngine({
    files: null,
    after: () => () => undefined,
    createWorker: () => createInProcessWorker(serve),
  });
  const damage = (now: boolean): void => {
    damaged = now;
  };
  return { engine, damage, loads: () => loads };
}

async function open(
  pronunciations: Pronunciations,
  send: Parameters<Serve<null>>[0],
): Promise<EngineDesk> {
  const module = await createModule();
  const create = () => createEmbeddedDecoder(module, { files: NODE_MODEL_FILES, pronunciations });
  return new EngineDesk(createDecoderPool(create), send);
}
