import { Hono } from 'hono';
import type { MiddlewareHandler } from 'hono';
import { eventRoutes } from './routes/events.ts';
import { refuse } from './routes/refuse.ts';
import { visitRoutes } from './routes/visits.ts';
import { safetyHeaders } from './safety-headers.ts';
import type { EventStore } from './store/event-store.ts';

/** Everything the server needs from outside: `main.ts` gives it the real ones, a test its own. */
export interface AppPorts {
  readonly store: EventStore;
  /** Answers for the built page's files, or passes on. */
  readonly page: MiddlewareHandler;
  /** The certificate a phone must trust, in PEM; null when the server made none. */
  readonly authority: string | null;
  /** Told of faults that no answer explains: they are bugs or a failing disk. */
  report(fault: unknown): void;
}

/** Where a phone fetches the certificate it is to trust. */
export const AUTHORITY_PATH = '/certificate.crt';

export function createApp(ports: AppPorts): Hono {
  const { store, page, authority } = ports;
  const app = new Hono();
  app.use(safetyHeaders());
  app.use('/api/*', async (c, next) => {
    await next();
    c.header('Cache-Control', 'no-store');
  });
  app.get('/api/health', (c) => c.json({ status: 'up' }));
  app.route('/api', eventRoutes(store));
  app.route('/api', visitRoutes(store));
  if (authority !== null) {
    app.get(AUTHORITY_PATH, (c) =>
      c.body(authority, 200, { 'Content-Type': 'application/x-x509-ca-cert' }),
    );
  }
  app.all('/api/*', (c) => nothingAt(c.req.path, c));
  app.use(page);
  app.notFound((c) => nothingAt(c.req.path, c));
  app.onError((fault, c) => {
    ports.report(fault);
    return refuse(c, 500, { kind: 'storage', message: FAILED });
  });
  return app;
}

const FAILED =
  'the server could not read or write its visits; what the device holds is safe there, its log on the server says why';

function nothingAt(path: string, c: Parameters<typeof refuse>[0]): Response {
  return refuse(c, 404, { kind: 'notFound', message: `nothing at ${path}` });
}
