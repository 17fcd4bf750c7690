import 'fake-indexeddb/auto';
import * as fakeIndexedDb from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { openIndexedDbLog } from '../../client/offline/indexed-db-log.ts';
import type { Locks } from '../../client/offline/writer-lock.ts';
import { createKeeper } from '../../client/state/keeper.ts';
import { handClock } from '../client/scripted.ts';
import { eventLogContract } from '../contracts/event-log.ts';
import { OTHER_VISIT, VISIT, opened, reading, stampFor } from '../contracts/sample-events.ts';

let databases = 0;
const freshName = () => `log-${(databases += 1)}`;

async function openNamed(name: string, locks?: Locks) {
  const result = await openIndexedDbLog({ name, locks });
  if (result.kind === 'failed') throw new Error(result.message);
  return result.log;
}

async function damageNamed(name: string, seq: number, value: unknown) {
  const database = await openDB(name);
  if (value === undefined) await database.delete('events', seq);
  else await database.put('events', value, seq);
  database.close();
}

eventLogContract('IndexedDB', () => {
  const name = freshName();
  return {
    open: () => openNamed(name),
    damage: (seq, value) => damageNamed(name, seq, value),
  };
});

afterEach(() => {
  vi.restoreAllMocks();
});

describe('durability', () => {
  it('writes events only in strict transactions, one for an append', async () => {
    const log = await openNamed(freshName());
    const stamp = stampFor(log.device);
    const transaction = vi.spyOn(IDBDatabase.prototype, 'transaction');
    await log.append([stamp(1, opened), stamp(2, reading(192))]);
    const writes = transaction.mock.calls.filter(([, mode]) => mode === 'readwrite');
    expect(writes).toEqual([['events', 'readwrite', { durability: 'strict' }]]);
  });

  it('resolves an append only after its transaction is complete', async () => {
    const log = await openNamed(freshName());
    const order: string[] = [];
    const begin = Reflect.get(IDBDatabase.prototype, 'transaction');
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
      this: IDBDatabase,
      ...args
    ) {
      const transaction = begin.apply(this, args);
      if (args[1] === 'readwrite')
        transaction.addEventListener('complete', () => order.push('complete'));
      return transaction;
    });
    await log.append([stampFor(log.device)(1, opened)]);
    order.push('resolved');
    expect(order).toEqual(['complete', 'resolved']);
  });
});

describe('storage that gives way', () => {
  /** Makes the next `times` transactions that match fail as the named DOMException. */
  function failTransactions(errorName: string, times: number, mode?: IDBTransactionMode) {
    const begin = Reflect.get(IDBDatabase.prototype, 'transaction');
    let left = times;
    return vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
      this: IDBDatabase,
      ...args
    ) {
      if (left > 0 && (mode === undefined || args[1] === mode)) {
        left -= 1;
        throw new DOMException('made to fail', errorName);
      }
      return begin.apply(this, args);
    });
  }

  it.each(['InvalidStateError', 'UnknownError'])('reopens once after %s', async (lost) => {
    const log = await openNamed(freshName());
    failTransactions(lost, 1);
    expect(await log.append([stampFor(log.device)(1, opened)])).toEqual({ kind: 'kept' });
    expect((await log.readVisit(VISIT)).events).toHaveLength(1);
  });

  it('says closed when the reopened connection is lost as well', async () => {
    const log = await openNamed(freshName());
    failTransactions('InvalidStateError', 2);
    const result = await log.append([stampFor(log.device)(1, opened)]);
    expect(result).toMatchObject({ kind: 'failed', why: 'closed' });
  });

  it('goes on after the browser ends the connection by force', async () => {
    const name = freshName();
    const begin = vi.spyOn(IDBDatabase.prototype, 'transaction');
    const log = await openNamed(name);
    const [handle] = begin.mock.contexts;
    if (!(handle instanceof IDBDatabase)) throw new Error('a handle was used to open the log');
    // The library's types ask for the class where it takes a handle.
    Reflect.apply(fakeIndexedDb.forceCloseDatabase, undefined, [handle]);
    expect(await log.append([stampFor(log.device)(1, opened)])).toEqual({ kind: 'kept' });
  });

  it('says that storage is full, keeps nothing of it and goes on when there is room', async () => {
    const log = await openNamed(freshName());
    const event = stampFor(log.device)(1, opened);
    failTransactions('QuotaExceededError', 1, 'readwrite');
    expect(await log.append([event])).toMatchObject({ kind: 'failed', why: 'storageFull' });
    expect(log.lastSeq).toBe(0);
    expect(await log.append([event])).toEqual({ kind: 'kept' });
  });

  it('says so when the database cannot be opened at all', async () => {
    vi.spyOn(indexedDB, 'open').mockImplementation(() => {
      throw new DOMException('storage is off', 'SecurityError');
    });
    expect(await openIndexedDbLog({ name: freshName() })).toEqual({
      kind: 'failed',
      why: 'off',
      message: 'storage is off',
    });
  });

  it.each([
    ['InvalidStateError', 'off'],
    ['QuotaExceededError', 'full'],
    ['UnknownError', 'broken'],
  ])('tells why, where it rejects with %s', async (name, why) => {
    vi.spyOn(indexedDB, 'open').mockImplementation(() => {
      throw new DOMException('not here', name);
    });
    expect(await openIndexedDbLog({ name: freshName() })).toMatchObject({ kind: 'failed', why });
  });
});

describe('in WebKit', () => {
  /** As WebKit did until July 2026 over an empty range (bug 319640); here over every one. */
  function failUniqueCursors() {
    for (const { prototype } of [IDBIndex, IDBObjectStore]) {
      const openCursor = Reflect.get(prototype, 'openCursor');
      vi.spyOn(prototype, 'openCursor').mockImplementation(function (this: IDBIndex, ...args) {
        if (args[1]?.endsWith('unique')) {
          throw new DOMException('Unable to open cursor', 'UnknownError');
        }
        return openCursor.apply(this, args);
      });
    }
  }

  it('lists the visits of a log that is new, and later each of them once', async () => {
    failUniqueCursors();
    const log = await openNamed(freshName());
    expect(await log.visits()).toEqual([]);
    const [stamp, later] = [stampFor(log.device), stampFor(log.device, OTHER_VISIT)];
    await log.append([stamp(1, opened), stamp(2, reading(192))]);
    await log.append([later(3, opened), later(4, reading(14))]);
    const listed = (await log.visits()).map(({ visit, events }) => [visit, events]);
    expect(listed).toEqual([
      [OTHER_VISIT, 2],
      [VISIT, 2],
    ]);
  });
});

describe('two tabs', () => {
  it('keeps both from one place even without locks', async () => {
    const name = freshName();
    const first = await openNamed(name);
    const second = await openNamed(name);
    const stamp = stampFor(first.device);
    await first.append([stamp(1, opened)]);
    const rival = { ...stamp(1, opened), id: '01KAXR1VAK0000000000000000' };
    expect(await second.append([rival])).toMatchObject({ why: 'otherTabWrites' });
    expect((await second.readVisit(VISIT)).events).toEqual([stamp(1, opened)]);
  });

  it('finds the next free place for what was refused without locks, so that it is kept at last', async () => {
    const name = freshName();
    const first = await openNamed(name);
    const second = await openNamed(name);
    const stamp = stampFor(first.device);
    await first.append([stamp(1, opened), stamp(2, reading(192))]);
    const clock = handClock();
    let keptAtLast = 0;
    const keeper = createKeeper({ log: second, clock, onHeldKept: () => (keptAtLast += 1) });
    const rival = { ...stamp(1, reading(193)), id: '01KAXR1VAK0000000000000000' };
    expect(await keeper.keep([rival])).toMatchObject({ kind: 'notKept', held: 1 });
    await keeper.retry();
    expect([keeper.held, keptAtLast]).toEqual([0, 1]);
    expect((await first.readVisit(VISIT)).events.at(-1)).toEqual({ ...rival, seq: 3 });
  });

  it('lets the second only read, until the first closes', async () => {
    const name = freshName();
    // Node 20 has no navigator.locks: `fakeLocks` queues as the standard says.
    const locks = fakeLocks();
    const first = await openNamed(name, locks);
    const second = await openNamed(name, locks);
    const stamp = stampFor(first.device);
    expect([first.canWrite, second.canWrite]).toEqual([true, false]);
    expect(await second.append([stamp(1, opened)])).toMatchObject({ why: 'otherTabWrites' });
    await first.append([stamp(1, opened)]);
    const takenOver = new Promise<void>((resolve) => void second.onChange(() => resolve()));
    first.close();
    await takenOver;
    expect([first.canWrite, second.canWrite]).toEqual([false, true]);
    expect(second.lastSeq).toBe(1);
    expect(await second.append([stamp(2, reading(192))])).toEqual({ kind: 'kept' });
  });
});

/** Exclusive locks of one name: `ifAvailable`, a queue, and giving up through the signal. */
function fakeLocks(): Locks {
  let tail: Promise<unknown> = Promise.resolve();
  let busy = 0;
  const request: Locks['request'] = async (name, options, run) => {
    if (options.ifAvailable === true && busy > 0) return run(null);
    busy += 1;
    const turn = tail.then(() => run({ name, mode: 'exclusive' }));
    tail = turn.finally(() => (busy -= 1));
    return turn;
  };
  return { request };
}
