import { once } from 'node:events';
import { readFile, readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import Database from 'libsql';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { EventStore } from '../../server/store/event-store.ts';
import { openSqliteEventStore } from '../../server/store/sqlite-event-store.ts';
import { eventStoreContract } from '../contracts/event-store.ts';
import { createScratchFolder } from '../support/scratch-folder.ts';
import { createStamp, DEVICE, VISIT } from '../support/stamp.ts';

function openStore(path: string): EventStore {
  const opened = openSqliteEventStore(path);
  if (opened.kind !== 'opened') throw new Error(opened.message);
  return opened.store;
}

/** Holds the lock for a fifth of a second after saying so: the writer beside it has to wait, not to fail. */
const HOLD_THE_WRITE_LOCK = `
  const { parentPort, workerData } = require('node:worker_threads');
  const database = new (require('libsql'))(workerData.file);
  database.exec('BEGIN IMMEDIATE');
  parentPort.postMessage('locked');
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 200);
  database.exec('COMMIT');
`;

eventStoreContract('SQLite', async () => {
  const folder = await createScratchFolder();
  const open = () => openStore(join(folder.path, 'visits.db'));
  return { open, discard: () => folder.discard() };
});

describe('the visits file', () => {
  let folder: Awaited<ReturnType<typeof createScratchFolder>>;
  let file: string;

  beforeEach(async () => {
    folder = await createScratchFolder();
    file = join(folder.path, 'visits.db');
  });
  afterEach(() => folder.discard());

  const push = (count: number) => {
    const stamp = createStamp();
    const events = Array.from({ length: count }, (_, index) =>
      stamp({ type: 'memoTaken', v: 1, memo: `line ${index}: ${'x'.repeat(200)}` }),
    );
    return { device: DEVICE, events };
  };

  const keepSome = async (count: number) => {
    const store = openStore(file);
    await store.append(push(count));
    await store.close();
  };

  it('is written ahead', async () => {
    const store = openStore(file);
    const database = new Database(file);
    expect(database.prepare('PRAGMA journal_mode').get()).toMatchObject({ journal_mode: 'wal' });
    database.close();
    await store.close();
  });

  it('is whole by itself once the server has stopped', async () => {
    await keepSome(3);
    const copy = join(folder.path, 'copy.db');
    await writeFile(copy, await readFile(file));
    const store = openStore(copy);
    expect((await store.readVisit(VISIT)).events).toHaveLength(3);
    await store.close();
  });

  it('serves two processes at once', async () => {
    const [one, two] = [openStore(file), openStore(file)];
    const { device, events } = push(20);
    await Promise.all([
      one.append({ device, events: events.slice(0, 15) }),
      two.append({ device, events: events.slice(5) }),
    ]);
    expect((await one.readVisit(VISIT)).events).toEqual(events);
    await one.close();
    await two.close();
  });

  it('waits for another process to end its write', async () => {
    const store = openStore(file);
    const other = new Worker(HOLD_THE_WRITE_LOCK, { eval: true, workerData: { file } });
    await once(other, 'message');
    expect(await store.append(push(1))).toEqual({ kind: 'kept', confirmed: 1 });
    await store.close();
    await other.terminate();
  });

  it.each([
    ['text', (bytes: Buffer) => Buffer.from('these are not the visits '.repeat(bytes.length / 25))],
    ['a file cut short', (bytes: Buffer) => bytes.subarray(0, 6000)],
    ['pages overwritten', (bytes: Buffer) => Buffer.from(bytes).fill(0xff, 8192, bytes.length)],
  ])('is left as it is when it is damaged: %s', async (_what, damage) => {
    await keepSome(200);
    const damaged = damage(await readFile(file));
    await writeFile(file, damaged);
    const opened = openSqliteEventStore(file);
    expect(opened).toMatchObject({ kind: 'damaged' });
    expect('message' in opened && opened.message).toMatch(/cannot be read.*move it.*aside/);
    expect('message' in opened && opened.message).not.toContain('\n');
    expect(await readFile(file)).toEqual(damaged);
  });

  it('is left as it is when a newer version wrote it', async () => {
    await keepSome(1);
    const database = new Database(file);
    database.exec('PRAGMA user_version = 99');
    database.close();
    const opened = openSqliteEventStore(file);
    expect(opened).toMatchObject({ kind: 'tooNew' });
    expect('message' in opened && opened.message).toContain('update this installation');
  });

  it('says what to do when its folder is missing, and makes nothing', async () => {
    const opened = openSqliteEventStore(join(folder.path, 'nowhere', 'visits.db'));
    expect(opened).toMatchObject({ kind: 'unreachable' });
    expect(await readdir(folder.path)).toEqual([]);
  });

  it('reports an event that can no longer be read and gives the rest', async () => {
    await keepSome(3);
    const database = new Database(file);
    database.exec(`UPDATE events SET event = '{"type":"memoTaken"}' WHERE seq = 2`);
    database.close();
    const store = openStore(file);
    const { events, damaged } = await store.readVisit(VISIT);
    expect(events.map(({ seq }) => seq)).toEqual([1, 3]);
    expect(damaged).toMatchObject([{ device: DEVICE, seq: 2 }]);
    expect(damaged[0]?.why).toContain('id');
    await store.close();
  });
});
