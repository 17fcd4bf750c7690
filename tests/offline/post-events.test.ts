import { describe, expect, it } from 'vitest';
import { createPostEvents } from '../../client/offline/post-events.ts';
import { pushRequestSchema } from '../../core/wire/event-schema.ts';
import { opened, stampFor } from '../contracts/sample-events.ts';

const DEVICE = '01KAXDEVCE0000000000000000';
const request = { device: DEVICE, events: [stampFor(DEVICE)(1, opened)] };
const answering = (status: number, body: string) =>
  createPostEvents(() => Promise.resolve(new Response(body, { status })));

describe('posting events', () => {
  it('sends a request that the schema of the wire accepts', async () => {
    const sent: unknown[] = [];
    const post = createPostEvents(async (url, init) => {
      sent.push(
        url,
        init?.method,
        pushRequestSchema.parse(await new Response(init?.body ?? null).json()),
      );
      return Response.json({ device: DEVICE, confirmed: 1 });
    });
    expect(await post(request)).toEqual({
      kind: 'accepted',
      response: { device: DEVICE, confirmed: 1 },
    });
    expect(sent).toEqual(['/api/events', 'POST', request]);
  });

  it.each([400, 401, 404, 409, 413])(
    'takes %i for a refusal, in the server’s words',
    async (code) => {
      const body = JSON.stringify({ error: { kind: 'conflict', message: 'place 4 is taken' } });
      expect(await answering(code, body)(request)).toEqual({
        kind: 'refused',
        message: 'place 4 is taken',
      });
      // Not ours: a guest network's page, or a proxy on the way, which may be gone in an hour.
      expect(await answering(code, '<html>')(request)).toMatchObject({ why: 'otherAnswer' });
    },
  );

  it.each([408, 425, 429, 500, 502, 503])('takes %i for passing', async (code) => {
    expect(await answering(code, '{}')(request)).toMatchObject({ why: 'serverTrouble' });
  });

  it.each([
    ['a sign-in page that answers 200', '<!doctype html><title>Guest network</title>'],
    ['another device’s answer', '{"device":"01KAXTHERD0000000000000000","confirmed":9}'],
    ['an answer without the count', '{}'],
  ])('does not believe %s', async (_what, body) => {
    expect(await answering(200, body)(request)).toMatchObject({ why: 'otherAnswer' });
  });

  it('takes a broken connection for unreachable', async () => {
    const post = createPostEvents(() => Promise.reject(new TypeError('Failed to fetch')));
    const why = 'noAnswer';
    expect(await post(request)).toEqual({ kind: 'unreachable', why, isTooMuch: false });
  });

  it('tells what may only have been too much: time that was up, or a body that a proxy refused', async () => {
    const late = createPostEvents(() => Promise.reject(new DOMException('late', 'TimeoutError')));
    expect(await late(request)).toMatchObject({ why: 'tooSlow', isTooMuch: true });
    const proxy = answering(413, '<html>413 Request Entity Too Large</html>');
    expect(await proxy(request)).toMatchObject({ kind: 'unreachable', isTooMuch: true });
    expect(await answering(403, '<html>')(request)).toMatchObject({ isTooMuch: false });
  });
});
