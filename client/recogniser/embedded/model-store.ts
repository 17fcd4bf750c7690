import {
  DICTIONARY_FILE,
  MODEL_FILES,
  type ModelFile,
} from '../../../core/hearing/engine-parameters.ts';
import type { LoadProgress } from '../engine.ts';
import { type FileFacts, fetchWhole, sumBytes } from '../whole-file.ts';
import { isRecord, parsed } from '../../../core/hearing/json-record.ts';

/** The model, fetched once: every decoder reads it again from memory. */
export interface StoredModel {
  readonly files: Readonly<Record<ModelFile, string>>;
  readonly dictionary: string;
}

export interface StorePorts {
  readonly fetch: typeof fetch;
  readonly onProgress: (progress: LoadProgress) => void;
}

/** Beside the files: what each is when it is whole. */
export const MODEL_LIST = 'files.json';
const FILES = [...Object.values(MODEL_FILES), DICTIONARY_FILE];

/**
 * Rejects, saying which file and what to do, when one does not come as the build wrote it. Addresses end without a
 * slash.
 */
export async function fetchModel(modelUrl: string, ports: StorePorts): Promise<StoredModel> {
  const list = await fetchList(`${modelUrl}/${MODEL_LIST}`, ports);
  const total = [...list.values()].reduce((sum, { bytes }) => sum + bytes, 0);
  const told = sumBytes(total, ports.onProgress);
  const blobs = new Map<string, Blob>();
  const bring = async ([file, facts]: readonly [string, FileFacts]): Promise<void> => {
    const filePorts = { fetch: ports.fetch, onBytes: told(file) };
    blobs.set(file, new Blob([await fetchWhole(`${modelUrl}/${file}`, facts, filePorts)]));
  };
  await Promise.all([...list].map(bring));
  const blobOf = (file: string): Blob => blobs.get(file) ?? new Blob();
  const address = (file: string): string => URL.createObjectURL(blobOf(file));
  return {
    files: {
      mdef: address(MODEL_FILES.mdef),
      tmat: address(MODEL_FILES.tmat),
      mean: address(MODEL_FILES.mean),
      var: address(MODEL_FILES.var),
      sendump: address(MODEL_FILES.sendump),
      fdict: address(MODEL_FILES.fdict),
    },
    dictionary: await blobOf(DICTIONARY_FILE).text(),
  };
}

async function fetchList(
  address: string,
  { fetch }: StorePorts,
): Promise<ReadonlyMap<string, FileFacts>> {
  const response = await fetch(address);
  const list = response.ok ? readList(await response.text()) : null;
  if (list !== null) return list;
  throw new Error(`${address} did not come (${response.status}): reload with a connection.`);
}

/** Null when the text is no list of every file. */
function readList(text: string): ReadonlyMap<string, FileFacts> | null {
  const value = parsed(text);
  const list = new Map<string, FileFacts>();
  for (const file of FILES) {
    const facts = isRecord(value) ? value[file] : null;
    if (!isRecord(facts)) return null;
    const { bytes, sha256 } = facts;
    if (typeof bytes !== 'number' || typeof sha256 !== 'string') return null;
    list.set(file, { bytes, sha256 });
  }
  return list;
}
