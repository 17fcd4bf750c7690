import type { FromEngine, ToEngine } from '../worker/protocol.ts';
import { fetchNeural, type StoredNeural } from './model-store.ts';
import { NeuralDesk } from './neural-desk.ts';
import type { NeuralFiles } from './neural-engine.ts';
import { openNeural, type Runtime } from './open-neural.ts';

export interface NeuralPorts {
  readonly send: (message: FromEngine) => void;
  readonly fetch: typeof fetch;
  /** Makes ONNX Runtime ready with the files that came. */
  readonly start: (stored: StoredNeural) => Runtime;
}

/** Everything that the worker does but being one: takes each message as it comes. */
export function serveNeural(ports: NeuralPorts): (message: ToEngine<NeuralFiles>) => Promise<void> {
  let desk: NeuralDesk | null = null;
  return async (message) => {
    if (message.kind !== 'load') return desk?.answer(message);
    try {
      const { decoder, pace } = await open(message.files, ports);
      desk = new NeuralDesk(decoder, ports.send);
      ports.send({ kind: 'loaded', pace });
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      ports.send({ kind: 'loadFailed', message: why });
    }
  };
}

async function open({ manifestUrl, pronunciations }: NeuralFiles, ports: NeuralPorts) {
  const { fetch, send, start } = ports;
  const onProgress = (progress: { loadedBytes: number; totalBytes: number }): void =>
    send({ kind: 'progress', ...progress });
  const stored = await fetchNeural(manifestUrl, { fetch, onProgress });
  return openNeural(start(stored), { contents: stored, pronunciations });
}
