/** One file as the build wrote it. */
export interface FileFacts {
  readonly bytes: number;
  /** In hexadecimal. */
  readonly sha256: string;
}

export interface FilePorts {
  readonly fetch: typeof fetch;
  /** Bytes of it that are there. */
  readonly onBytes: (bytes: number) => void;
}

/**
 * Rejects, saying what to do, when it does not come as the build wrote it. What a cache kept damaged is asked for once
 * more, past every cache: the service worker knows no such address.
 */
export async function fetchWhole(
  address: string,
  facts: FileFacts,
  ports: FilePorts,
): Promise<Uint8Array<ArrayBuffer>> {
  const kept = await fetchBytes(address, {}, ports).catch(() => null);
  if (kept !== null && (await isWhole(kept, facts))) return kept;
  const fresh = await fetchBytes(`${address}?again`, { cache: 'reload' }, ports);
  if (await isWhole(fresh, facts)) return fresh;
  throw new Error(
    `${address} came damaged (${fresh.length} of ${facts.bytes} bytes): reload with a connection.`,
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

async function isWhole(bytes: Uint8Array<ArrayBuffer>, facts: FileFacts): Promise<boolean> {
  if (bytes.length !== facts.bytes) return false;
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  const hex = [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex === facts.sha256;
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

/** Adds up what came of several files; more than was listed is a server's mistake, not progress. */
export function sumBytes(
  totalBytes: number,
  onProgress: (progress: { readonly loadedBytes: number; readonly totalBytes: number }) => void,
): (file: string) => (bytes: number) => void {
  const loaded = new Map<string, number>();
  return (file) => (bytes) => {
    loaded.set(file, bytes);
    const loadedBytes = [...loaded.values()].reduce((sum, each) => sum + each, 0);
    onProgress({ loadedBytes: Math.min(loadedBytes, totalBytes), totalBytes });
  };
}
