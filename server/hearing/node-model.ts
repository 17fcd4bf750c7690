import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

import {
  DICTIONARY_FILE,
  MODEL_FILES,
  type ModelFile,
} from '../../core/hearing/engine-parameters.ts';

const FOLDER = join(
  dirname(createRequire(import.meta.url).resolve('soundswallower')),
  'model',
  'en-us',
);

const inFolder = (file: ModelFile): string => join(FOLDER, MODEL_FILES[file]);

/** Where the package keeps the engine's model. */
export const NODE_MODEL_FILES: Readonly<Record<ModelFile, string>> = {
  mdef: inFolder('mdef'),
  tmat: inFolder('tmat'),
  mean: inFolder('mean'),
  var: inFolder('var'),
  sendump: inFolder('sendump'),
  fdict: inFolder('fdict'),
};

/** The model's whole pronunciation dictionary, 3.3 MB of text. */
export function readDictionary(): Promise<string> {
  return readFile(join(FOLDER, DICTIONARY_FILE), 'utf8');
}
