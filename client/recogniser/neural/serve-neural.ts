import { createVoiceDetector, type VoiceDetector } from '../../../core/hearing/voice-detector.ts';
import type { FromEngine, ToEngine } from '../worker/protocol.ts';
import { fetchNeural, type StoredNeural } from './model-store.ts';
import { NeuralDesk } from './neural-desk.ts';
import type { NeuralFiles } from './neural-engine.ts';
import { createSession, openNeural, type Runtime } from './open-neural.ts';
import { VoiceDesk } from './voice-desk.ts';

export interface NeuralPorts {
  readonly send: (message: FromEngine) => void;
  readonly fetch: typeof fetch;
  /** Makes ONNX Runtime ready with the files that came. */
  readonly start: (stored: StoredNeural) => Runtime;
}

/** Everything that the worker does but being one: takes each message as it comes. */
export function serveNeural(ports: NeuralPorts): (message: ToEngine<NeuralFiles>) => Promise<void> {
  let desk: NeuralDesk | null = null;
  const voice = new VoiceDesk(ports.send);
  return async (message) => {
    if (message.kind === 'watch') return voice.answer(message);
    if (message.kind !== 'load') return desk?.answer(message);
    try {
      const { decoder, pace, openDetector } = await open(message.files, ports);
      desk = new NeuralDesk(decoder, ports.send);
      ports.send({ kind: 'loaded', pace });
      const detector = await openDetector();
      if (detector !== null) voice.useDetector(detector);
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
  const runtime = start(stored);
  const opened = await openNeural(runtime, { contents: stored, pronunciations });
  return { ...opened, openDetector: () => openVoiceDetector(runtime, stored.fetchDetector) };
}

/** Hearing goes on without it, by the loudness alone. */
async function openVoiceDetector(
  onnx: Runtime,
  fetchModel: () => Promise<Uint8Array>,
): Promise<VoiceDetector | null> {
  try {
    const session = await createSession(onnx, await fetchModel(), 'all');
    return createVoiceDetector({ onnx, session });
  } catch (error) {
    console.warn(error);
    return null;
  }
}
