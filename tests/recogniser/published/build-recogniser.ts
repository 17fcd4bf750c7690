import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/** Builds it into a folder that becomes the root of an address; the script to run first in each window comes back. */
export async function buildRecogniser(folder: string): Promise<string> {
  await build({
    configFile: fileURLToPath(new URL('vite.config.mjs', import.meta.url)),
    logLevel: 'warn',
    build: { outDir: folder, emptyOutDir: true },
  });
  return `${folder}/recogniser.js`;
}
