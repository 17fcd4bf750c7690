import { serveStatic } from '@hono/node-server/serve-static';
import type { Context, MiddlewareHandler } from 'hono';

/** Vite puts a hash of the content into the name of each file under assets/. */
const HASHED = /^\/assets\/.+-[\w-]{8,}\.\w+$/;
const FOREVER = 'public, max-age=31536000, immutable';
/** Stored, but asked about each time: an unchanged file is answered with 304 and no body. */
const ASK_FIRST = 'no-cache';

/**
 * The built page's files, compressed where the build did so: what the page hears with is 20 MB otherwise. What is not there is passed on and becomes a 404: a model file answered with
 * index.html would reach the recogniser as bytes.
 */
export function createPageFiles(folder: string): MiddlewareHandler {
  const files = serveStatic({ root: folder, precompressed: true });
  return async (c, next) => {
    const response = await files(c, () => Promise.resolve());
    if (!(response instanceof Response)) return next();
    response.headers.set('Cache-Control', HASHED.test(c.req.path) ? FOREVER : ASK_FIRST);
    return isUnchanged(c, response) ? notModified(response) : response;
  };
}

function isUnchanged(c: Context, response: Response): boolean {
  const since = c.req.header('if-modified-since');
  return since !== undefined && since === response.headers.get('last-modified');
}

async function notModified(response: Response): Promise<Response> {
  await response.body?.cancel();
  const headers = { 'Cache-Control': response.headers.get('cache-control') ?? ASK_FIRST };
  return new Response(null, { status: 304, headers });
}
