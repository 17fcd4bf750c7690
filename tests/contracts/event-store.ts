import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { EventBody, VisitEvent } from '../../core/visit/events.ts';
import { visitEventSchema } from '../../core/wire/event-schema.ts';
import type { EventStore } from '../../server/store/event-store.ts';
import { ulidOf } from '../support/stamp.ts';

/** What the suite needs of an adapter: its disk outlives the store. */
export interface StoreHarness {
  /** A store on the same disk each time. */
  open(): EventStore;
  discard(): Promise<void>;
}

const PHONE = ulidOf(11);
const TABLET = ulidOf(12);
const VISIT = ulidOf(21);
const LATER_VISIT = ulidOf(22);
const NOON = 1_767_614_400_000;

const opened: EventBody = { type: 'visitOpened', v: 1, settings: { units: 'us', altitudeM: 0 } };
const memo = (text: string): EventBody => ({ type: 'memoTaken', v: 1, memo: text });

interface Place {
  readonly device?: string;
  readonly visit?: string;
}

/** The event at a place of a device's log, the same each time it is asked for. */
function at(
  seq: number,
  body: EventBody,
  { device = PHONE, visit = VISIT }: Place = {},
): VisitEvent {
  const id = ulidOf(1000 + seq + (device === PHONE ? 0 : 500));
  return { ...body, id, device, seq, visit, at: NOON + seq * 60_000 };
}

/** Every promise of the event store's port, run on each adapter. */
export function eventStoreContract(name: string, create: () => Promise<StoreHarness>): void {
  describe(`event store contract: ${name}`, () => {
    let harness: StoreHarness;
    let store: EventStore;

    beforeEach(async () => {
      harness = await create();
      store = harness.open();
    });
    afterEach(async () => {
      await store.close();
      await harness.discard();
    });

    const push = (events: readonly VisitEvent[], device = PHONE) =>
      store.append({ device, events: [...events] });
    const restarted = async () => {
      await store.close();
      store = harness.open();
    };
    const three = [at(1, opened), at(2, memo('warm since friday')), at(3, memo('door ajar'))];

    it('starts empty', async () => {
      expect(await store.visits()).toEqual([]);
      expect(await store.readVisit(VISIT)).toEqual({ events: [], damaged: [] });
    });

    it('gives back after a restart what it kept, in order, to the last field', async () => {
      expect(await push(three)).toEqual({ kind: 'kept', confirmed: 3 });
      await restarted();
      expect(await store.readVisit(VISIT)).toEqual({ events: three, damaged: [] });
    });

    it('keeps an event once however often it arrives, within a push and across a restart', async () => {
      await push([...three, ...three]);
      expect(await push(three.slice(1))).toEqual({ kind: 'kept', confirmed: 3 });
      await restarted();
      expect(await push(three)).toEqual({ kind: 'kept', confirmed: 3 });
      expect((await store.readVisit(VISIT)).events).toEqual(three);
    });

    it('takes the same event with its keys in another order for the same', async () => {
      const [first] = three;
      if (first === undefined) throw new Error('three events');
      await push([first]);
      const same = visitEventSchema.parse(first); // envelope first, where the stamp puts the body first
      expect(JSON.stringify(same)).not.toBe(JSON.stringify(first));
      expect(await push([same])).toEqual({ kind: 'kept', confirmed: 1 });
    });

    it('confirms up to the first gap, and past it once the gap is filled', async () => {
      const [one, two, third] = [at(1, opened), at(2, memo('a')), at(3, memo('b'))];
      expect(await push([third])).toEqual({ kind: 'kept', confirmed: 0 });
      expect(await push([one])).toEqual({ kind: 'kept', confirmed: 1 });
      await restarted();
      expect(await push([two])).toEqual({ kind: 'kept', confirmed: 3 });
      expect((await store.readVisit(VISIT)).events.map(({ seq }) => seq)).toEqual([1, 2, 3]);
    });

    it('counts each device by itself', async () => {
      await push(three);
      const other = [at(1, opened, { device: TABLET, visit: LATER_VISIT })];
      expect(await push(other, TABLET)).toEqual({ kind: 'kept', confirmed: 1 });
    });

    it('refuses an id that another event has, whole, and keeps the one that has it', async () => {
      await push(three);
      const rival: VisitEvent = { ...at(5, memo('other')), id: ulidOf(1002) };
      const outcome = await push([at(4, memo('c')), rival]);
      expect(outcome).toEqual({ kind: 'conflict', over: 'id', index: 1 });
      expect((await store.readVisit(VISIT)).events).toEqual(three);
      expect(await push([at(4, memo('c'))])).toEqual({ kind: 'kept', confirmed: 4 });
    });

    it('refuses the same id and place with another body', async () => {
      await push(three);
      const outcome = await push([at(2, memo('warm since saturday'))]);
      expect(outcome).toEqual({ kind: 'conflict', over: 'id', index: 0 });
      expect((await store.readVisit(VISIT)).events).toEqual(three);
    });

    it('refuses a place that another event holds', async () => {
      await push(three);
      const rival: VisitEvent = { ...at(3, memo('other')), id: ulidOf(4321) };
      expect(await push([rival])).toEqual({ kind: 'conflict', over: 'place', index: 0 });
      expect((await store.readVisit(VISIT)).events).toEqual(three);
    });

    it('refuses a push that contradicts itself', async () => {
      const twice = [at(1, memo('one thing')), at(1, memo('another'))];
      expect(await push(twice)).toEqual({ kind: 'conflict', over: 'id', index: 1 });
      expect(await store.visits()).toEqual([]);
    });

    it('lists visits, newest first', async () => {
      const later = { visit: LATER_VISIT };
      await push([...three, at(4, { type: 'visitFinished', v: 1 })]);
      await push([at(5, opened, later), at(6, memo('ice on the coil'), later)]);
      expect(await store.visits()).toEqual([
        { visit: LATER_VISIT, openedAt: NOON + 5 * 60_000, finished: false, events: 2 },
        { visit: VISIT, openedAt: NOON + 60_000, finished: true, events: 4 },
      ]);
    });

    it('reads a visit of two devices, each in the order of its own log', async () => {
      const tablet = [1, 2].map((seq) => at(seq, memo(`tablet ${seq}`), { device: TABLET }));
      await push(tablet, TABLET);
      await push(three);
      const { events } = await store.readVisit(VISIT);
      const of = (device: string) => events.filter((event) => event.device === device);
      expect([of(PHONE), of(TABLET)]).toEqual([three, tablet]);
    });

    it('keeps pushes that arrive together, overlapping, each event once', async () => {
      const log = Array.from({ length: 40 }, (_, index) => at(index + 1, memo(`line ${index}`)));
      const pushes = Array.from({ length: 10 }, (_, index) => log.slice(index * 3, index * 3 + 13));
      const outcomes = await Promise.all(pushes.map((events) => push(events)));
      expect(outcomes.map(({ kind }) => kind)).toEqual(pushes.map(() => 'kept'));
      expect(outcomes.at(-1)).toEqual({ kind: 'kept', confirmed: 40 });
      expect((await store.readVisit(VISIT)).events).toEqual(log);
    });
  });
}
