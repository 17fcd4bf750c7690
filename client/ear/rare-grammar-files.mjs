/** Where the build puts them. */
const FOLDER = 'heard';

/**
 * Puts what is rarely said into the build (and serves it in development), a grammar for each thing that the dialogue
 * expects: printing them takes the page longer than fetching them.
 *
 * @param {Readonly<Record<string, () => string>>} grammars
 * @returns {import('vite').Plugin}
 */
export function rareGrammarFiles(grammars) {
  return {
    name: 'rare-grammar-files',
    generateBundle() {
      for (const [expectation, print] of Object.entries(grammars)) {
        this.emitFile({
          type: 'asset',
          fileName: `${FOLDER}/${expectation}.jsgf`,
          source: print(),
        });
      }
    },
    configureServer(server) {
      server.middlewares.use(`/${FOLDER}`, (request, response) => {
        const print = grammars[(request.url ?? '').replace(/^\/|\.jsgf$/g, '')];
        response.statusCode = print ? 200 : 404;
        response.setHeader('content-type', 'text/plain; charset=utf-8');
        response.end(print?.());
      });
    },
  };
}
