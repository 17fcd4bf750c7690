import type { LoadProgress } from '../engine.ts';
import { type ListedFile, type Manifest, readManifest, type Role } from './manifest.ts';

/** Everything the engine runs on, whole. */
export interface StoredNeural {
  readonly model: Uint8Array<ArrayBuffer>;
  readonly description: string;
  readonly runtime: Uint8Array<ArrayBuffer>;
  readonly dictionary: string;
  /** Address of the script that starts the runtime. */
  readonly glueUrl: string;
  /** Brings the voice detector's model, which hearing does not wait for. Rejects when it does not come whole. */
  readonly fetchDetector: () => Promise<Uint8Array<ArrayBuffer>>;
}

export interface StorePorts {
  readonly fetch: typeof fetch;
  readonly onProgress: (progress: LoadProgress) => void;
}

/** Rejects, saying which file and what to do, when one does not come as the build wrote it. */
export async function fetchNeural(manifestUrl: string, ports: StorePorts): Promise<StoredNeural> {
  const manifest = await fetchManifest(manifestUrl, ports);
  const bytes = bringerOf(manifestUrl, manifest, ports);
  const [model, description, runtime, dictionary] = await Promise.all([
    bytes('model'),
    bytes('description'),
    bytes('runtime'),
    bytes('dictionary'),
  ]);
  const text = (file: Uint8Array): string => new TextDecoder().decode(file);
  return {
    model,
    runtime,
    description: text(description),
    dictionary: text(dictionary),
    glueUrl: new URL(manifest.glue.url, manifestUrl).href,
    fetchDetector: () => {
      const address = new URL(manifest.detector.url, manifestUrl).href;
      return fetchWhole(address, manifest.detector, { ...ports, onBytes: () => undefined });
    },
  };
}

async function fetchManifest(address: string, { fetch }: StorePorts): Promise<Manifest> {
  const response = await fetch(address);
  const manifest = response.ok ? readManifest(await response.text()) : null;
  if (manifest === null) {
    throw new Error(`${address} did not come (${response.status}): reload with a connection.`);
  }
  return manifest;
}

type Bring = (role: Role) => Promise<Uint8Array<ArrayBuffer>>;

function bringerOf(manifestUrl: string, manifest: Manifest, ports: StorePorts): Bring {
  const fetched: readonly Role[] = ['model', 'description', 'runtime', 'dictionary'];
  const totalBytes = fetched.reduce((sum, role) => sum + manifest[role].bytes, 0);
  const loaded = new Map<string, number>();
  const tell = (address: string, bytes: number): void => {
    loaded.set(address, bytes);
    const loadedBytes = [...loaded.values()].reduce((sum, each) => sum + each, 0);
    ports.onProgress({ loadedBytes: Math.min(loadedBytes, totalBytes), totalBytes });
  };
  return (role) => {
    const address = new URL(manifest[role].url, manifestUrl).href;
    const onBytes = (bytes: number): void => tell(address, bytes);
    return fetchWhole(address, manifest[role], { fetch: ports.fetch, onBytes });
  };
}

interface FilePorts {
  readonly fetch: typeof fetch;
  readonly onBytes: (bytes: number) => void;
}

/** What a cache kept damaged is asked for once more, past every cache: the service worker knows no such address. */
async function fetchWhole(
  address: string,
  listed: ListedFile,
  ports: FilePorts,
): Promise<Uint8Array<ArrayBuffer>> {
  const kept = await fetchBytes(address, {}, ports).catch(() => null);
  if (kept !== null && (await isWhole(kept, listed))) return kept;
  const fresh = await fetchBytes(`${address}?again`, { cache: 'reload' }, ports);
  if (await isWhole(fresh, listed)) return fresh;
  throw new Error(
    `${address} came damaged (${fresh.length} of ${listed.bytes} bytes): reload with a connection.`,
  );
}

async function fetchBytes(
  address: string,
  options: RequestInit,
  { fetch, onBytes }: FilePorts,
): Promise<Uint8Array<ArrayBuffer>> {
  const response = await fetch(address, options);
  if (!response.ok || response.body === null) {
    throw new Error(`${address} did not come (${response.status}): reload with a connection.`);
  }
  const parts: Uint8Array<ArrayBuffer>[] = [];
  let length = 0;
  const reader = response.body.getReader();
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    parts.push(part.value);
    length += part.value.length;
    onBytes(length);
  }
  return joined(parts, length);
}

async function isWhole(bytes: Uint8Array<ArrayBuffer>, listed: ListedFile): Promise<boolean> {
  if (bytes.length !== listed.bytes) return false;
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  const hex = [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex === listed.sha256;
}

function joined(
  parts: readonly Uint8Array<ArrayBuffer>[],
  length: number,
): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
