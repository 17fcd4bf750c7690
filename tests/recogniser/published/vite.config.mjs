import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { dictionaryFile, modelFiles } from '../../../client/recogniser/embedded/model-files.mjs';
import { neuralFiles } from '../../../client/recogniser/neural/neural-files.mjs';

/** The published tests say nothing that the engines would have to know. */
const HEARD = { words: ['yes', 'no'], pronunciations: {} };

/** The recogniser as a classic script, which runs before a page's own, with its workers and models beside it. */
export default defineConfig({
  plugins: [modelFiles(HEARD), neuralFiles({ dictionary: dictionaryFile(HEARD) })],
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    rolldownOptions: {
      input: fileURLToPath(new URL('install-with-engines.ts', import.meta.url)),
      // A classic script has no import.meta: its workers lie beside the page.
      transform: { define: { 'import.meta.url': 'document.baseURI' } },
      output: { format: 'iife', name: 'installed', entryFileNames: 'recogniser.js' },
    },
  },
});
