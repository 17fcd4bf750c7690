import { describe, expect, it } from 'vitest';
import { errorResponseSchema, pushResponseSchema } from '../../core/wire/event-schema.ts';
import type { VisitEvent } from '../../core/visit/events.ts';
import { createApp } from '../../server/app.ts';
import type { EventStore } from '../../server/store/event-store.ts';
import { createMemoryEventStore } from '../support/memory-event-store.ts';
import { createStamp, DEVICE, ulidOf, VISIT } from '../support/stamp.ts';

const reading = (value: number) =>
  ({
    quantity: 'headPressure',
    value,
    unit: 'psi',
    unitFrom: 'implied',
    place: null,
    words: `head ${value}`,
  }) as const;

function someEvents(count: number): VisitEvent[] {
  const stamp = createStamp();
  return Array.from({ length: count }, (_, index) =>
    stamp({ type: 'readingTaken', v: 1, reading: reading(140 + index) }),
  );
}

function createHarness(store: EventStore = createMemoryEventStore()) {
  const faults: unknown[] = [];
  const app = createApp({
    store,
    page: (_c, next) => next(),
    authority: null,
    report: (fault) => void faults.push(fault),
  });
  const post = (body: string, type = 'application/json') =>
    app.request('/api/events', { method: 'POST', body, headers: { 'Content-Type': type } });
  const push = (events: readonly unknown[], device: unknown = DEVICE) =>
    post(JSON.stringify({ device, events }));
  const kept = async () => (await store.readVisit(VISIT)).events;
  return { app, post, push, kept, faults };
}

const errorOf = async (response: Response) =>
  errorResponseSchema.parse(await response.json()).error;

describe('POST /api/events', () => {
  it('keeps a push and confirms how far the device is safe', async () => {
    const { push, kept } = createHarness();
    const events = someEvents(3);
    const response = await push(events);
    expect(response.status).toBe(200);
    expect(pushResponseSchema.parse(await response.json())).toEqual({
      device: DEVICE,
      confirmed: 3,
    });
    expect(await kept()).toEqual(events);
  });

  it('does no harm when the same push comes again', async () => {
    const { push, kept } = createHarness();
    await push(someEvents(3));
    expect((await push(someEvents(3))).status).toBe(200);
    expect(await kept()).toHaveLength(3);
  });

  it.each([
    [
      'a unit there is not',
      { reading: { ...reading(3), unit: 'furlong' } },
      'events[1].reading.unit',
    ],
    ['a value that is text', { reading: { ...reading(3), value: '3' } }, 'events[1].reading.value'],
    ['a field too many', { colour: 'red' }, 'events[1]'],
    ['a type there is not', { type: 'coffeeTaken' }, 'events[1].type'],
    ['place 0', { seq: 0 }, 'events[1].seq'],
    ['an id that is no ULID', { id: 'first' }, 'events[1].id'],
    ['another device', { device: ulidOf(77) }, 'events[1].device'],
  ])('refuses a push whole over %s, with the path', async (_what, fault, path) => {
    const { push, kept } = createHarness();
    await push(someEvents(1));
    const [first, second, third] = someEvents(3);
    const response = await push([first, { ...second, ...fault }, third]);
    expect(response.status).toBe(400);
    const error = await errorOf(response);
    expect(error).toMatchObject({ kind: 'badRequest', path });
    expect(error.message).toContain('nothing was kept');
    expect(await kept()).toEqual(someEvents(1));
  });

  it.each([
    ['no JSON', '{"device": '],
    ['nothing', ''],
    ['JSON of another shape', '[]'],
    ['no events', JSON.stringify({ device: DEVICE, events: [] })],
  ])('refuses %s', async (_what, body) => {
    const response = await createHarness().post(body);
    expect(response.status).toBe(400);
    expect((await errorOf(response)).kind).toBe('badRequest');
  });

  it('takes JSON only under its own content type, which another site cannot send unasked', async () => {
    const { post, kept } = createHarness();
    const body = JSON.stringify({ device: DEVICE, events: someEvents(1) });
    expect((await post(body, 'text/plain')).status).toBe(415);
    expect((await post(body, 'application/json; charset=utf-8')).status).toBe(200);
    expect(await kept()).toHaveLength(1);
  });

  it('takes a full push of 500 events, each of a sentence of 10,000 words', async () => {
    const { push } = createHarness();
    const stamp = createStamp();
    const memo = 'words '.repeat(10_000);
    const events = Array.from({ length: 500 }, () => stamp({ type: 'memoTaken', v: 1, memo }));
    expect((await push(events)).status).toBe(200);
  });

  it('refuses a body past the limit', async () => {
    const { post } = createHarness();
    const response = await post(JSON.stringify({ device: DEVICE, padding: 'x'.repeat(33e6) }));
    expect(response.status).toBe(413);
    expect((await errorOf(response)).kind).toBe('tooLarge');
  });

  it('answers a conflicting id and a conflicting place with which one', async () => {
    const { push, kept } = createHarness();
    await push(someEvents(2));
    const [first, second] = someEvents(2);
    const changed = await push([{ ...first, type: 'readingTaken', reading: reading(999) }]);
    expect(changed.status).toBe(409);
    const overId = await errorOf(changed);
    expect(overId).toMatchObject({ kind: 'conflict', path: 'events[0].id' });
    expect(overId.message).toContain(first?.id ?? 'no event');
    const moved = await errorOf(await push([{ ...second, id: ulidOf(99) }]));
    expect(moved).toMatchObject({ kind: 'conflict', path: 'events[0].seq' });
    expect(moved.message).toContain(`place 2 in the log of device ${DEVICE}`);
    expect(await kept()).toEqual(someEvents(2));
  });

  it('answers a failing disk with an error and reports the fault', async () => {
    const fault = new Error('disk full');
    const broken = { ...createMemoryEventStore(), append: () => Promise.reject(fault) };
    const { push, faults } = createHarness(broken);
    const response = await push(someEvents(1));
    expect(response.status).toBe(500);
    const error = await errorOf(response);
    expect(error.kind).toBe('storage');
    expect(error.message).not.toContain('disk full');
    expect(faults).toEqual([fault]);
  });
});

describe('GET /api', () => {
  it('lists visits and gives their events', async () => {
    const { app, push } = createHarness();
    await push(someEvents(2));
    const visits: unknown = await (await app.request('/api/visits')).json();
    expect(visits).toMatchObject({ visits: [{ visit: VISIT, finished: false, events: 2 }] });
    const read: unknown = await (await app.request(`/api/visits/${VISIT}/events`)).json();
    expect(read).toEqual({ events: someEvents(2), damaged: [] });
  });

  it.each(['/api/visits/unknown/events', '/api/nothing', '/api', '/nothing', '/certificate.crt'])(
    'answers %s with a 404 in JSON',
    async (path) => {
      const response = await createHarness().app.request(path);
      expect(response.status).toBe(404);
      expect((await errorOf(response)).kind).toBe('notFound');
    },
  );

  it('is up, and never stored by a cache', async () => {
    const response = await createHarness().app.request('/api/health');
    expect(await response.json()).toEqual({ status: 'up' });
    expect(response.headers.get('cache-control')).toBe('no-store');
  });
});

describe('every answer', () => {
  it('carries what the page may and may not do', async () => {
    const { headers } = await createHarness().app.request('/nothing');
    const policy = headers.get('content-security-policy') ?? '';
    expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval'");
    expect(policy).toContain("worker-src 'self'");
    expect(policy).toContain("connect-src 'self'");
    expect(policy).not.toContain("'unsafe-eval'");
    expect(headers.get('permissions-policy')).toContain('microphone=(self)');
    expect(headers.get('cross-origin-opener-policy')).toBe('same-origin');
    expect(headers.get('cross-origin-embedder-policy')).toBe('require-corp');
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('strict-transport-security')).toBeNull();
  });
});
