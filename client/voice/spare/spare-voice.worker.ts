import { runFlite } from './flite.ts';
import type { FromVoice, ToVoice } from './protocol.ts';

/** Kept by us: the service worker keeps only what every device needs. */
const CACHE = 'spare voice';

const send = (message: FromVoice, transfer: Transferable[] = []): void =>
  postMessage(message, { transfer });

let module: WebAssembly.Module | null = null;
let queue: Promise<void> = Promise.resolve();

addEventListener('message', ({ data }: MessageEvent<ToVoice>) => {
  queue = queue.then(() => (data.kind === 'load' ? load(data.url) : say(data)));
});

async function load(url: string): Promise<void> {
  try {
    module = await WebAssembly.compile(await bytesOf(url));
    send({ kind: 'loaded' });
  } catch (error) {
    // What is kept may be what is damaged.
    await caches.delete(CACHE);
    send({ kind: 'loadFailed', message: error instanceof Error ? error.message : String(error) });
  }
}

/** Its name holds its hash: another version is another address, and the old one goes. */
async function bytesOf(url: string): Promise<ArrayBuffer> {
  const cache = await caches.open(CACHE);
  const kept = await cache.match(url);
  if (kept) return kept.arrayBuffer();
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url} answered ${response.status}`);
  for (const old of await cache.keys()) await cache.delete(old);
  await cache.put(url, response.clone());
  return response.arrayBuffer();
}

async function say({ request, text }: Extract<ToVoice, { kind: 'say' }>): Promise<void> {
  const sound = module === null ? null : await runFlite(module, text).catch(() => null);
  send({ kind: 'said', request, sound }, sound ? [sound.samples.buffer] : []);
}
