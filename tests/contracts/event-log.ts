import { beforeEach, describe, expect, it } from 'vitest';
import type { DeviceLog } from '../../client/offline/event-log.ts';
import type { VisitEvent } from '../../core/visit/events.ts';
import { OTHER_VISIT, VISIT, finished, opened, reading, stampFor } from './sample-events.ts';

/** What the suite needs of an adapter: the disk outlives the log, and can be damaged behind its back. */
export interface LogHarness {
  open(): Promise<DeviceLog>;
  /** Puts anything at a place, or removes what stands there (`undefined`). */
  damage(seq: number, value: unknown): Promise<void>;
}

/** Every promise of the event log's port, run on each adapter. */
export function eventLogContract(name: string, create: () => LogHarness): void {
  describe(`event log contract: ${name}`, () => {
    let harness: LogHarness;
    let log: DeviceLog;
    let stamp: ReturnType<typeof stampFor>;

    beforeEach(async () => {
      harness = create();
      log = await harness.open();
      stamp = stampFor(log.device);
    });

    const reopened = async () => {
      log.close();
      return harness.open();
    };
    const visitOf3 = (): VisitEvent[] => [
      stamp(1, opened),
      stamp(2, reading(192)),
      stamp(3, reading(158)),
    ];

    it('starts empty, at place 0, with no open visit', async () => {
      expect(log.lastSeq).toBe(0);
      expect(await log.openVisit()).toBeNull();
      expect(await log.visits()).toEqual([]);
      expect(await log.readVisit(VISIT)).toEqual({ events: [], damaged: [] });
      expect(await log.unsynced()).toBe(0);
      expect(await log.exportLog()).toBe('');
    });

    it('gives back after reopening what it kept, in order, to the last field', async () => {
      const events = visitOf3();
      expect(await log.append(events)).toEqual({ kind: 'kept' });
      const again = await reopened();
      expect(again.lastSeq).toBe(3);
      expect(await again.readVisit(VISIT)).toEqual({ events, damaged: [] });
      expect(await again.openVisit()).toBe(VISIT);
    });

    it('keeps the device id made on first use', async () => {
      const device = log.device;
      expect(device).toMatch(/^[0-9A-HJKMNP-TV-Z]{26}$/);
      expect((await reopened()).device).toBe(device);
    });

    it('does not double an event appended again', async () => {
      const [first, second, third] = visitOf3();
      if (!first || !second || !third) throw new Error('three events');
      await log.append([first, second]);
      expect(await log.append([first, second])).toEqual({ kind: 'kept' });
      expect(await log.append([second, third])).toEqual({ kind: 'kept' });
      expect((await log.readVisit(VISIT)).events).toEqual([first, second, third]);
      expect(log.lastSeq).toBe(3);
    });

    it('refuses another event at a taken place and keeps the one that stands there', async () => {
      await log.append(visitOf3());
      const rival: VisitEvent = { ...stamp(3, reading(999)), id: '01KAXR1VAK0000000000000000' };
      const result = await log.append([rival]);
      expect(result).toMatchObject({ kind: 'failed', why: 'otherTabWrites' });
      expect((await log.readVisit(VISIT)).events).toEqual(visitOf3());
    });

    it('keeps all of an append or none of it', async () => {
      await log.append([stamp(1, opened)]);
      const gap = [stamp(2, reading(192)), stamp(4, reading(158))];
      expect(await log.append(gap)).toMatchObject({ kind: 'failed', why: 'unknown' });
      const sameId = [
        stamp(2, reading(192)),
        { ...stamp(3, reading(158)), id: stamp(1, opened).id },
      ];
      expect(await log.append(sameId)).toMatchObject({ kind: 'failed', why: 'unknown' });
      expect(log.lastSeq).toBe(1);
      expect((await (await reopened()).readVisit(VISIT)).events).toEqual([stamp(1, opened)]);
    });

    it('refuses an event stamped for another device', async () => {
      const foreign = { ...stamp(1, opened), device: '01KAXTHERD0000000000000000' };
      expect(await log.append([foreign])).toMatchObject({ kind: 'failed', why: 'unknown' });
      expect(log.lastSeq).toBe(0);
    });

    it('says that it is closed', async () => {
      log.close();
      expect(await log.append(visitOf3())).toMatchObject({ kind: 'failed', why: 'closed' });
      expect((await harness.open()).lastSeq).toBe(0);
    });

    it('knows the open visit and lists visits, newest first', async () => {
      const other = stampFor(log.device, OTHER_VISIT);
      await log.append([...visitOf3(), stamp(4, finished)]);
      expect(await log.openVisit()).toBeNull();
      await log.append([other(5, opened), other(6, reading(140))]);
      expect(await log.openVisit()).toBe(OTHER_VISIT);
      expect(await log.visits()).toEqual([
        { visit: OTHER_VISIT, openedAt: other(5, opened).at, finished: false, events: 2 },
        { visit: VISIT, openedAt: stamp(1, opened).at, finished: true, events: 4 },
      ]);
      expect((await log.readVisit(VISIT)).events.map((event) => event.seq)).toEqual([1, 2, 3, 4]);
    });

    it.each([
      ['a record with a field of the wrong kind', { ...stampFor('x')(2, reading(1)), at: 'noon' }],
      ['a record without its visit', { id: 'half', seq: 2 }],
      ['text where a record should be', '%%%'],
      ['nothing at all', undefined],
      ['an event of another place', { ...stampFor('x')(3, reading(1)), id: 'copied' }],
    ])('reports %s and replays the rest', async (_what, value) => {
      await log.append(visitOf3());
      await harness.damage(2, value);
      const again = await reopened();
      const read = await again.readVisit(VISIT);
      expect(read.events.map((event) => event.seq)).toEqual([1, 3]);
      expect(read.damaged.map((record) => record.seq)).toEqual([2]);
      expect(read.damaged[0]?.why).not.toBe('');
      expect(await again.openVisit()).toBe(VISIT);
      expect(await again.append([stamp(4, reading(150))])).toEqual({ kind: 'kept' });
    });

    it('counts a stray record to the visit around it, and to no other', async () => {
      const other = stampFor(log.device, OTHER_VISIT);
      await log.append([...visitOf3(), other(4, opened), other(5, reading(140))]);
      await harness.damage(1, 'gone bad');
      await harness.damage(5, 'gone bad');
      const again = await reopened();
      expect((await again.readVisit(VISIT)).damaged.map(({ seq }) => seq)).toEqual([1]);
      expect((await again.readVisit(OTHER_VISIT)).damaged.map(({ seq }) => seq)).toEqual([5]);
      expect((await again.visits()).map(({ visit }) => visit)).toEqual([OTHER_VISIT, VISIT]);
    });

    it('leaves damaged records where they are and exports every place', async () => {
      await log.append(visitOf3());
      await harness.damage(2, { torn: 'half a record' });
      const again = await reopened();
      await again.readVisit(VISIT);
      const lines = (await again.exportLog()).trimEnd().split('\n');
      const [first, second, third] = lines.map((line): unknown => JSON.parse(line));
      expect([first, third]).toEqual([stamp(1, opened), stamp(3, reading(158))]);
      expect(second).toMatchObject({ seq: 2, record: { torn: 'half a record' } });
    });

    it('exports even what JSON cannot hold', async () => {
      await log.append(visitOf3());
      await harness.damage(3, { visit: VISIT, count: 12n });
      const lines = (await log.exportLog()).trimEnd().split('\n');
      expect(lines).toHaveLength(3);
      expect(JSON.parse(lines[2] ?? '')).toMatchObject({ seq: 3, record: '[object Object]' });
    });

    it('remembers how far the server has confirmed, and reads on from there', async () => {
      await log.append(visitOf3());
      expect(await log.unsynced()).toBe(3);
      await log.confirm(2);
      const again = await reopened();
      expect(await again.confirmedSeq()).toBe(2);
      expect(await again.unsynced()).toBe(1);
      expect((await again.readAfter(0, 2)).events.map(({ seq }) => seq)).toEqual([1, 2]);
      expect((await again.readAfter(2, 9)).events.map(({ seq }) => seq)).toEqual([3]);
    });

    it('remembers the damaged places that the server will never have, each once', async () => {
      await log.append(visitOf3());
      expect(await log.leftOut()).toBe(0);
      await log.confirm(2, [1, 2]);
      await log.confirm(3, [2]);
      const again = await reopened();
      expect([await again.leftOut(), await again.unsynced()]).toEqual([2, 0]);
    });

    it('tells its listeners of what was kept and not of what was refused', async () => {
      const told: unknown[] = [];
      const stop = log.onChange((appended) => told.push(appended));
      await log.append([stamp(1, opened)]);
      await log.append([stamp(7, reading(1))]);
      expect(told).toEqual([[stamp(1, opened)]]);
      stop();
      await log.append([stamp(2, reading(1))]);
      expect(told).toHaveLength(1);
    });
  });
}
