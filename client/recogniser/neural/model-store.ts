import type { LoadProgress } from '../engine.ts';
import { fetchWhole, sumBytes } from '../whole-file.ts';
import { type Manifest, readManifest, type Role } from './manifest.ts';

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
  const told = sumBytes(totalBytes, ports.onProgress);
  return (role) => {
    const address = new URL(manifest[role].url, manifestUrl).href;
    return fetchWhole(address, manifest[role], { fetch: ports.fetch, onBytes: told(role) });
  };
}
