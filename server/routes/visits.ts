import { Hono } from 'hono';
import type { EventStore } from '../store/event-store.ts';
import { refuse } from './refuse.ts';

/** `GET /visits` and `GET /visits/:visit/events`: what the server keeps. */
export function visitRoutes(store: EventStore): Hono {
  const routes = new Hono();
  routes.get('/visits', async (c) => c.json({ visits: await store.visits() }));
  routes.get('/visits/:visit/events', async (c) => {
    const visit = c.req.param('visit');
    const read = await store.readVisit(visit);
    if (read.events.length + read.damaged.length > 0) return c.json(read);
    return refuse(c, 404, { kind: 'notFound', message: `no visit ${visit} is kept here` });
  });
  return routes;
}
