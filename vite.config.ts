import preact from '@preact/preset-vite';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { dictionaryFile, modelFiles } from './client/recogniser/embedded/model-files.mjs';
import { compressedFiles } from './client/compressed-files.mjs';
import { neuralFiles } from './client/recogniser/neural/neural-files.mjs';
import { phrasingModelFiles } from './client/phraser/model-files.mjs';
import { withoutExamples } from './client/without-examples.mjs';
import { rareGrammarFiles } from './client/ear/rare-grammar-files.mjs';
import { wordsOfGrammar } from './core/hearing/jsgf.ts';
import { rareGrammar, vocabulary } from './core/language/heard/recogniser-grammar.ts';
import { PRONUNCIATIONS } from './core/language/vocabulary/pronunciations.ts';

/** What the engines are to hear. */
const HEARD = {
  words: [...new Set([...vocabulary(), ...wordsOfGrammar(rareGrammar('anything'))])].sort(),
  pronunciations: PRONUNCIATIONS,
};

export default defineConfig({
  root: 'client',
  plugins: [
    withoutExamples(),
    preact(),
    modelFiles(HEARD),
    neuralFiles({ dictionary: dictionaryFile(HEARD) }),
    rareGrammarFiles({
      anything: () => rareGrammar('anything'),
      number: () => rareGrammar('number'),
      yesOrNo: () => rareGrammar('yesOrNo'),
    }),
    phrasingModelFiles(),
    compressedFiles(),
    offlinePage(),
  ],
  worker: { format: 'es' },
  build: { outDir: '../build/client', emptyOutDir: true, target: 'es2022' },
});

/** What the page first hears without: other wordings of its answers, what is rarely said, what runs a model still to be fetched, the second engine. */
const LATER = [
  /^phrasing\/|^assets\/phraser\./,
  /^heard\//,
  /^assets\/free-text\./,
  /^model\/en-us\/(?!dict)|soundswallower/,
];
const turnOf = ({ url }: { url: string }): number => LATER.findIndex((each) => each.test(url)) + 1;

/** The service worker fetches one file after the other: what the page first hears with must not wait for 4 MB more. */
function laterLast<Entry extends { url: string }>(entries: Entry[]) {
  return { manifest: entries.toSorted((one, other) => turnOf(one) - turnOf(other)) };
}

/**
 * The service worker is generated, not written: it only keeps every built file and answers from there. An update
 * waits until the page asks for it (`prompt`), as a reload in the middle of a visit would cost a reading.
 */
function offlinePage() {
  return VitePWA({
    strategies: 'generateSW',
    registerType: 'prompt',
    injectRegister: false,
    manifest: {
      name: 'Gloveside',
      short_name: 'Gloveside',
      description: 'Hears readings, answers by voice what they should be, drafts the visit note.',
      id: '/',
      start_url: '/',
      scope: '/',
      display: 'standalone',
      background_color: '#f7f2e7',
      theme_color: '#17130c',
      icons: [
        { src: '/icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
        { src: '/icon-192.png', sizes: '192x192', type: 'image/png', purpose: 'any' },
        { src: '/icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any' },
        { src: '/icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
      ],
    },
    includeManifestIcons: false,
    workbox: {
      globPatterns: ['**/*'],
      // A voice that only a browser without one fetches keeps itself.
      globIgnores: ['**/*.map', '**/*.gz', 'assets/flite-*.wasm'],
      manifestTransforms: [laterLast],
      // The largest file of the acoustic model is 3 MB; a larger one fails the build instead of the page offline.
      maximumFileSizeToCacheInBytes: 16 * 2 ** 20,
      navigateFallback: '/index.html',
      navigateFallbackDenylist: [/^\/api\//, /^\/certificate\.crt$/],
      // The page that is open while the first worker installs works offline at once, without a reload.
      clientsClaim: true,
      skipWaiting: false,
      cleanupOutdatedCaches: true,
    },
  });
}
