import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { constants, gzip } from 'node:zlib';

const compress = promisify(gzip);
/** Below it, headers are most of an answer. */
const LEAST_BYTES = 10_000;
/** Compressed by themselves. */
const COMPACT = /\.(png|jpe?g|woff2?)$/;

/**
 * Writes each larger file of the build a second time, compressed, as `NAME.gz`: the server sends that one to who takes
 * it. Gzip, as browsers take nothing else over plain http.
 *
 * @returns {import('vite').Plugin}
 */
export function compressedFiles() {
  return {
    name: 'compressed-files',
    apply: 'build',
    async writeBundle({ dir = '' }, bundle) {
      for (const [name, file] of Object.entries(bundle)) {
        const bytes = Buffer.from(file.type === 'chunk' ? file.code : file.source);
        if (bytes.length < LEAST_BYTES || COMPACT.test(name)) continue;
        const smaller = await compress(bytes, { level: constants.Z_BEST_COMPRESSION });
        await writeFile(join(dir, `${name}.gz`), smaller);
      }
    },
  };
}
