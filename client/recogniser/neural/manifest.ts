import type { FileFacts } from '../whole-file.ts';
import { isRecord, parsed } from '../../../core/hearing/json-record.ts';

export interface ListedFile extends FileFacts {
  /** Relative to the manifest's own address. */
  readonly url: string;
}

/**
 * model, description: the acoustic model and what goes in and out of it; runtime, glue: ONNX Runtime's WebAssembly
 * and the script that starts it; dictionary: how words sound; detector: what tells a voice from other sounds.
 */
export const ROLES = ['model', 'description', 'runtime', 'glue', 'dictionary', 'detector'] as const;
export type Role = (typeof ROLES)[number];

export type Manifest = Readonly<Record<Role, ListedFile>>;

/** Reads the manifest's JSON text; null when it is not one. */
export function readManifest(text: string): Manifest | null {
  const value = parsed(text);
  const read = (role: Role): ListedFile | null => fileIn(isRecord(value) ? value[role] : null);
  const [model, description] = [read('model'), read('description')];
  const [runtime, glue, dictionary] = [read('runtime'), read('glue'), read('dictionary')];
  const detector = read('detector');
  return model && description && runtime && glue && dictionary && detector
    ? { model, description, runtime, glue, dictionary, detector }
    : null;
}

function fileIn(value: unknown): ListedFile | null {
  if (!isRecord(value)) return null;
  const { url, bytes, sha256 } = value;
  return typeof url === 'string' && typeof bytes === 'number' && typeof sha256 === 'string'
    ? { url, bytes, sha256 }
    : null;
}
