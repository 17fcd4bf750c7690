import { Hono } from 'hono';
import type { Context } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { pushRequestSchema } from '../../core/wire/event-schema.ts';
import type { PushRequest, PushResponse } from '../../core/wire/event-schema.ts';
import type { AppendOutcome, EventStore } from '../store/event-store.ts';
import { firstFault, refuse } from './refuse.ts';

/**
 * 500 events, the most a push may hold, of 64 KiB each: an event keeps its sentence's words, and a sentence of
 * 10,000 words (60 kB) is promised to be kept. A refused push would be refused again for ever.
 */
const MOST_BODY_BYTES = 500 * 64 * 1024;

/**
 * `POST /events`: a device hands over what it has kept, as often as it likes. Kept whole or refused whole;
 * the answer says how far that device's log is safe here.
 */
export function eventRoutes(store: EventStore): Hono {
  const routes = new Hono();
  routes.post('/events', limitBody, async (c) => {
    const read = await readPush(c);
    if (read.kind === 'refused') return read.response;
    const outcome = await store.append(read.push);
    if (outcome.kind === 'conflict') return conflict(c, read.push, outcome);
    const { device } = read.push;
    return c.json({ device, confirmed: outcome.confirmed } satisfies PushResponse);
  });
  return routes;
}

const limitBody = bodyLimit({
  maxSize: MOST_BODY_BYTES,
  onError: (c) =>
    refuse(c, 413, {
      kind: 'tooLarge',
      message: `a push may hold ${MOST_BODY_BYTES} bytes; send fewer events at a time`,
    }),
});

type ReadPush =
  | { readonly kind: 'push'; readonly push: PushRequest }
  | { readonly kind: 'refused'; readonly response: Response };

async function readPush(c: Context): Promise<ReadPush> {
  // Another site's page can post text/plain here without asking; for JSON its browser asks first, and is refused.
  if (!/^application\/json\b/i.test(c.req.header('content-type') ?? '')) {
    return refused(c, 415, 'send JSON, with the content type application/json');
  }
  const body = await readJson(c);
  if (body === undefined) return refused(c, 400, 'the body is not JSON; nothing was kept');
  const parsed = pushRequestSchema.safeParse(body);
  if (!parsed.success) {
    return { kind: 'refused', response: refuse(c, 400, firstFault(parsed.error)) };
  }
  return ofOneDevice(c, parsed.data);
}

/** Undefined for what is no JSON: no JSON text gives that value. */
async function readJson(c: Context): Promise<unknown> {
  try {
    return await c.req.json<unknown>();
  } catch (fault) {
    if (fault instanceof SyntaxError) return undefined;
    throw fault;
  }
}

function ofOneDevice(c: Context, push: PushRequest): ReadPush {
  const index = push.events.findIndex((event) => event.device !== push.device);
  if (index === -1) return { kind: 'push', push };
  const path = `events[${index}].device`;
  const message = `${path}: a device hands over its own events only; nothing was kept`;
  return { kind: 'refused', response: refuse(c, 400, { kind: 'badRequest', message, path }) };
}

function refused(c: Context, status: 400 | 415, message: string): ReadPush {
  return { kind: 'refused', response: refuse(c, status, { kind: 'badRequest', message }) };
}

function conflict(
  c: Context,
  push: PushRequest,
  { over, index }: Extract<AppendOutcome, { kind: 'conflict' }>,
): Response {
  const event = push.events[index];
  const taken = {
    id: `the id ${event?.id ?? ''} already belongs to another event`,
    place: `place ${event?.seq ?? 0} in the log of device ${push.device} already holds another event`,
  }[over];
  return refuse(c, 409, {
    kind: 'conflict',
    message: `${taken}; nothing of this push was kept and nothing kept was changed`,
    path: `events[${index}].${over === 'id' ? 'id' : 'seq'}`,
  });
}
