import {
  DICTIONARY_FILE,
  MODEL_FILES,
  type ModelFile,
} from '../../../core/hearing/engine-parameters.ts';

/** The model, fetched once: every decoder reads it again from memory. */
export interface StoredModel {
  readonly files: Readonly<Record<ModelFile, string>>;
  readonly dictionary: string;
}

type OnProgress = (loadedBytes: number, totalBytes: number) => void;

/** Rejects, saying which file, when one does not come whole. Addresses end without a slash. */
export async function fetchModel(modelUrl: string, onProgress: OnProgress): Promise<StoredModel> {
  const files = [...Object.values(MODEL_FILES), DICTIONARY_FILE];
  const progress = createProgress(onProgress, files.length);
  const blobs = await Promise.all(files.map((file) => fetchFile(`${modelUrl}/${file}`, progress)));
  const byFile = new Map(files.map((file, index) => [file, blobs[index] ?? new Blob()]));
  const address = (file: string): string => URL.createObjectURL(byFile.get(file) ?? new Blob());
  return {
    files: {
      mdef: address(MODEL_FILES.mdef),
      tmat: address(MODEL_FILES.tmat),
      mean: address(MODEL_FILES.mean),
      var: address(MODEL_FILES.var),
      sendump: address(MODEL_FILES.sendump),
      fdict: address(MODEL_FILES.fdict),
    },
    dictionary: await (byFile.get(DICTIONARY_FILE) ?? new Blob()).text(),
  };
}

interface Progress {
  readonly expect: (bytes: number) => void;
  readonly got: (bytes: number) => void;
}

/** Says nothing until every file has named its length: a bar that shrinks tells nobody anything. */
function createProgress(onProgress: OnProgress, files: number): Progress {
  let loaded = 0;
  let total = 0;
  let unknown = files;
  const tell = (): void => {
    // A compressed answer names fewer bytes than it unpacks to.
    if (unknown === 0) onProgress(Math.min(loaded, total), total);
  };
  return {
    expect: (bytes) => {
      total += bytes;
      unknown -= 1;
      tell();
    },
    got: (bytes) => {
      loaded += bytes;
      tell();
    },
  };
}

async function fetchFile(address: string, progress: Progress): Promise<Blob> {
  const response = await fetch(address);
  const type = response.headers.get('content-type') ?? '';
  if (!response.ok || type.startsWith('text/html') || response.body === null) {
    throw new Error(`${address} did not come (${response.status}): reload with a connection.`);
  }
  progress.expect(Number(response.headers.get('content-length') ?? 0));
  const parts: Uint8Array<ArrayBuffer>[] = [];
  const reader = response.body.getReader();
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    parts.push(part.value);
    progress.got(part.value.length);
  }
  return new Blob(parts);
}
