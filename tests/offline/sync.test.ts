import { beforeEach, describe, expect, it, vi } from 'vitest';
import {
  type MemoryDisk,
  createMemoryDisk,
  createMemoryLog,
} from '../../client/offline/memory-log.ts';
import type { DeviceLog } from '../../client/offline/event-log.ts';
import type { PostEvents, PostResult } from '../../client/offline/post-events.ts';
import { BATCH_EVENTS, createSync, type Sync } from '../../client/offline/sync.ts';
import type { PushRequest } from '../../core/wire/event-schema.ts';
import { settled } from '../client/scripted.ts';
import { opened, reading, stampFor } from '../contracts/sample-events.ts';

/** Timers that a test lets go by hand. */
function createHandTimers() {
  const waiting: { delayMs: number; run: () => void }[] = [];
  return {
    delays: () => waiting.map(({ delayMs }) => delayMs),
    after: (delayMs: number, run: () => void) => {
      const timer = { delayMs, run };
      waiting.push(timer);
      return () => {
        const at = waiting.indexOf(timer);
        if (at >= 0) waiting.splice(at, 1);
      };
    },
    fire() {
      waiting.shift()?.run();
    },
  };
}

/** A server that keeps events by id and counts without gaps, and answers as its script says, then honestly. */
function createScriptedServer() {
  const kept = new Map<number, string>();
  const requests: PushRequest[] = [];
  const script: ((honest: () => PostResult, request: PushRequest) => PostResult)[] = [];
  const confirmed = () => {
    let seq = 0;
    while (kept.has(seq + 1)) seq += 1;
    return seq;
  };
  const accept = (request: PushRequest): PostResult => {
    for (const event of request.events) if (!kept.has(event.seq)) kept.set(event.seq, event.id);
    return { kind: 'accepted', response: { device: request.device, confirmed: confirmed() } };
  };
  const post: PostEvents = (request) => {
    requests.push(request);
    const answer = script.shift();
    const honest = () => accept(request);
    return Promise.resolve(answer === undefined ? honest() : answer(honest, request));
  };
  const sent = () => requests.map((request) => request.events.map(({ seq }) => seq));
  return { kept, requests, script, post, sent };
}

const noNetwork = (): PostResult => ({ kind: 'unreachable', why: 'noAnswer' });
const lostAnswer = (honest: () => PostResult): PostResult => {
  honest();
  return { kind: 'unreachable', why: 'noAnswer' };
};
const claiming =
  (confirmed: number) =>
  (honest: () => PostResult, request: PushRequest): PostResult => {
    honest();
    return { kind: 'accepted', response: { device: request.device, confirmed } };
  };

describe('sync', () => {
  let disk: MemoryDisk;
  let log: DeviceLog;
  let server: ReturnType<typeof createScriptedServer>;
  let timers: ReturnType<typeof createHandTimers>;

  beforeEach(async () => {
    disk = createMemoryDisk();
    log = createMemoryLog(disk);
    server = createScriptedServer();
    timers = createHandTimers();
    await appendReadings(1, 3);
  });

  async function appendReadings(from: number, to: number) {
    const stamp = stampFor(log.device);
    for (let seq = from; seq <= to; seq += 1)
      await log.append([stamp(seq, seq === 1 ? opened : reading(100 + seq))]);
  }
  const start = () => createSync({ log, post: server.post, after: timers.after });
  const everyPlaceOnce = (last: number) => {
    const places = Array.from({ length: last }, (_, index) => index + 1);
    expect([...server.kept.keys()].toSorted((a, b) => a - b)).toEqual(places);
    expect(new Set(server.kept.values()).size).toBe(last);
  };

  it('sends what the server has not confirmed, once, and remembers it', async () => {
    const sync = start();
    await sync.wake();
    expect(server.sent()).toEqual([[1, 2, 3]]);
    expect(sync.state).toEqual({ kind: 'resting', unsynced: 0, leftOut: 0 });
    await sync.wake();
    await createSync({ log: createMemoryLog(disk), post: server.post, after: timers.after }).wake();
    expect(server.requests).toHaveLength(1);
    expect((await log.readAfter(0, 9)).events).toHaveLength(3);
  });

  it('sends after an append without being asked', async () => {
    const sync = start();
    await sync.wake();
    await appendReadings(4, 5);
    await sync.wake();
    everyPlaceOnce(5);
    expect(sync.state).toEqual({ kind: 'resting', unsynced: 0, leftOut: 0 });
  });

  it('sends an event appended while a request is under way', async () => {
    const sync = start();
    let answer = () => {};
    const slow = new Promise<void>((resolve) => (answer = resolve));
    const slowSync = createSync({
      log,
      after: timers.after,
      post: async (request) => {
        await slow;
        return server.post(request);
      },
    });
    sync.stop();
    const sending = slowSync.wake();
    await appendReadings(4, 4);
    answer();
    await sending;
    everyPlaceOnce(4);
  });

  it('sends again after a lost answer, and nothing is doubled', async () => {
    server.script.push(lostAnswer);
    const sync = start();
    await sync.wake();
    expect(sync.state).toMatchObject({ kind: 'waiting', unsynced: 3, attempt: 1, delayMs: 1000 });
    timers.fire();
    await sync.wake();
    expect(server.sent().slice(0, 2)).toEqual([
      [1, 2, 3],
      [1, 2, 3],
    ]);
    everyPlaceOnce(3);
    expect(sync.state).toEqual({ kind: 'resting', unsynced: 0, leftOut: 0 });
  });

  it('backs off in doubling steps up to five minutes, one timer at a time', async () => {
    server.script.push(...Array.from({ length: 11 }, () => noNetwork));
    const sync = start();
    const delays: number[] = [];
    for (let attempt = 1; attempt <= 11; attempt += 1) {
      await sync.wake();
      expect(timers.delays()).toHaveLength(1);
      delays.push(...timers.delays());
    }
    const seconds = delays.map((delay) => delay / 1000);
    expect(seconds).toEqual([1, 2, 4, 8, 16, 32, 64, 128, 256, 300, 300]);
    await sync.wake();
    expect(timers.delays()).toEqual([]);
    everyPlaceOnce(3);
  });

  it('does not knock at a dead network for each append', async () => {
    server.script.push(noNetwork);
    const sync = start();
    await sync.wake();
    await appendReadings(4, 9);
    expect(server.requests).toHaveLength(1);
    await sync.wake();
    everyPlaceOnce(9);
  });

  it('counts what is recorded while it waits, and after a refusal', async () => {
    server.script.push(noNetwork, () => ({ kind: 'refused', message: 'no' }));
    const sync = start();
    await sync.wake();
    await appendReadings(4, 5);
    await settled();
    expect(sync.state).toMatchObject({ kind: 'waiting', unsynced: 5, attempt: 1 });
    expect(timers.delays()).toHaveLength(1);
    await sync.wake();
    await appendReadings(6, 6);
    await settled();
    expect(sync.state).toEqual({ kind: 'refused', unsynced: 6, leftOut: 0, message: 'no' });
  });

  it('stops at a refusal, shows it, and goes on only when the technician asks', async () => {
    server.script.push(() => ({ kind: 'refused', message: 'the device is not known here' }));
    const sync = start();
    await sync.wake();
    await sync.wake();
    await appendReadings(4, 4);
    expect(sync.state).toMatchObject({ kind: 'refused', message: 'the device is not known here' });
    expect(server.requests).toHaveLength(1);
    expect(timers.delays()).toEqual([]);
    await sync.retry();
    everyPlaceOnce(4);
  });

  it('sends again from where a server restored from its backup stands', async () => {
    const sync = start();
    await sync.wake();
    server.kept.delete(2);
    server.kept.delete(3);
    await appendReadings(4, 4);
    await sync.wake();
    everyPlaceOnce(4);
    expect(await log.confirmedSeq()).toBe(4);
  });

  it('takes an answer that came out of order for what it is', async () => {
    const sync = start();
    await sync.wake();
    server.script.push(claiming(1));
    await appendReadings(4, 4);
    await sync.wake();
    expect(server.sent().slice(1)).toEqual([[4], [2, 3, 4]]);
    everyPlaceOnce(4);
    expect(sync.state).toEqual({ kind: 'resting', unsynced: 0, leftOut: 0 });
  });

  it('stops when the server accepts again and again and keeps nothing', async () => {
    server.script.push(...Array.from({ length: 50 }, () => claiming(0)));
    const sync = start();
    await sync.wake();
    expect(sync.state.kind).toBe('refused');
    expect(server.requests.length).toBeLessThan(4);
  });

  it('never confirms more than it sent, whatever the server claims', async () => {
    server.script.push(claiming(900));
    const sync = start();
    await sync.wake();
    expect(await log.confirmedSeq()).toBe(3);
    await appendReadings(4, 4);
    await sync.wake();
    everyPlaceOnce(4);
  });

  it('leaves a damaged record here and brings all others over, on this and the next opening', async () => {
    disk.records.set(2, 'gone bad');
    const sync = start();
    await sync.wake();
    expect([...server.kept.keys()]).toEqual([1, 3]);
    expect(sync.state).toEqual({ kind: 'resting', unsynced: 0, leftOut: 1 });
    sync.stop();
    const next = start();
    await appendReadings(4, 4);
    await next.wake();
    expect([...server.kept.keys()]).toEqual([1, 3, 4]);
    expect(next.state).toEqual({ kind: 'resting', unsynced: 0, leftOut: 1 });
    expect(disk.records.get(2)).toBe('gone bad');
  });

  it('counts no damaged record as sent where a whole batch is damaged', async () => {
    for (const seq of [1, 2, 3]) disk.records.set(seq, 'gone bad');
    const sync = start();
    await sync.wake();
    expect(server.requests).toEqual([]);
    expect(sync.state).toEqual({ kind: 'resting', unsynced: 0, leftOut: 3 });
  });

  it('tells why it waits: the network, or the storage of this device', async () => {
    server.script.push(noNetwork);
    const sync = start();
    await sync.wake();
    expect(sync.state).toMatchObject({ kind: 'waiting', why: 'noAnswer' });
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const unread = () => Promise.reject(new Error('the store is gone'));
    const broken = createSync({
      ...server,
      log: { ...log, readAfter: unread },
      after: timers.after,
    });
    await broken.wake();
    expect(broken.state).toMatchObject({ kind: 'waiting', why: 'logUnread' });
    vi.restoreAllMocks();
  });

  const parting = (sync: Sync) => sync.parting()?.events.map(({ seq }) => seq) ?? [];

  it('has at hand what a page that goes may still send, until the server has it', async () => {
    server.script.push(noNetwork);
    const sync = start();
    expect(parting(sync)).toEqual([]);
    await sync.wake();
    await appendReadings(4, 5);
    expect(parting(sync)).toEqual([1, 2, 3, 4, 5]);
    await sync.wake();
    expect(parting(sync)).toEqual([]);
  });

  it('gives a page that goes no more than a browser takes from it, the first of it first', async () => {
    server.script.push(noNetwork);
    const sync = start();
    await sync.wake();
    await appendReadings(4, 500);
    const places = parting(sync);
    expect(places.length).toBeGreaterThan(50);
    expect(places).toEqual(places.map((_, index) => index + 1));
    expect(JSON.stringify(sync.parting()).length).toBeLessThan(64 * 1024);
  });

  it('gives a page that goes nothing that another tab sends, or that the server refused', async () => {
    const reader: DeviceLog = { ...log, canWrite: false };
    const other = createSync({ log: reader, post: server.post, after: timers.after });
    server.script.push(() => ({ kind: 'refused', message: 'no' }));
    const sync = start();
    await sync.wake();
    await appendReadings(4, 4);
    expect([parting(other), parting(sync)]).toEqual([[], []]);
  });

  it('sends a long log in batches the server takes', async () => {
    await appendReadings(4, BATCH_EVENTS * 2 + 1);
    await start().wake();
    expect(server.requests.map((request) => request.events.length)).toEqual([
      BATCH_EVENTS,
      BATCH_EVENTS,
      1,
    ]);
    everyPlaceOnce(BATCH_EVENTS * 2 + 1);
  });

  it('sends less at once where that may be too much, until all is sent', async () => {
    await appendReadings(4, BATCH_EVENTS);
    const tooMuch: PostResult = { kind: 'unreachable', why: 'tooSlow', isTooMuch: true };
    const sizes: number[] = [];
    const sync = createSync({
      log,
      after: timers.after,
      post: (request) => {
        sizes.push(request.events.length);
        return request.events.length > 30 ? Promise.resolve(tooMuch) : server.post(request);
      },
    });
    for (let tries = 0; tries < 4; tries += 1) await sync.wake();
    everyPlaceOnce(BATCH_EVENTS);
    expect(sizes).toEqual([200, 100, 50, ...Array.from({ length: 8 }, () => 25)]);
    expect(sync.state).toEqual({ kind: 'resting', unsynced: 0, leftOut: 0 });
    await appendReadings(BATCH_EVENTS + 1, BATCH_EVENTS + 30);
    await sync.wake();
    everyPlaceOnce(BATCH_EVENTS + 30);
  });

  it('sends no fewer than ten for that, and all of them again after a network that was only away', async () => {
    await appendReadings(4, BATCH_EVENTS);
    const tooMuch: PostResult = { kind: 'unreachable', why: 'tooSlow', isTooMuch: true };
    server.script.push(...Array.from({ length: 7 }, () => noNetwork));
    server.script.push(...Array.from({ length: 7 }, () => () => tooMuch));
    const sync = start();
    for (let tries = 0; tries < 14; tries += 1) await sync.wake();
    const sizes = server.sent().map((places) => places.length);
    expect(sizes).toEqual([...Array.from({ length: 7 }, () => 200), 200, 100, 50, 25, 12, 10, 10]);
  });

  it('leaves sending to the tab that writes', async () => {
    const reader: DeviceLog = { ...log, canWrite: false };
    const sync = createSync({ log: reader, post: server.post, after: timers.after });
    await sync.wake();
    expect(server.requests).toEqual([]);
    expect(sync.state).toEqual({ kind: 'resting', unsynced: 3, leftOut: 0 });
  });

  it('sends nothing once stopped', async () => {
    server.script.push(noNetwork);
    const sync = start();
    await sync.wake();
    sync.stop();
    expect(timers.delays()).toEqual([]);
    await appendReadings(4, 4);
    await sync.wake();
    expect(server.requests).toHaveLength(1);
  });
});
