import { afterEach, describe, expect, it, vi } from 'vitest';
import type { After } from '../../../client/offline/back-off.ts';
import { createMemoryDisk, createMemoryLog } from '../../../client/offline/memory-log.ts';
import type { Clock } from '../../../client/state/clock.ts';
import {
  earlierVisit,
  firstSession,
  firstSessionOrFresh,
  unstoredSession,
} from '../../../client/state/first-session.ts';
import { createStamps } from '../../../client/state/stamps.ts';
import type { EventBody } from '../../../core/visit/events.ts';
import { EMPTY_VISIT } from '../../../core/visit/empty-visit.ts';
import { handClock, listening, offered, settled } from '../scripted.ts';

const SETTINGS = { units: 'si', altitudeM: 800 } as const;
const HEAD: EventBody = {
  type: 'readingTaken',
  v: 1,
  reading: {
    quantity: 'headPressure',
    value: 13,
    unit: 'bar',
    unitFrom: 'implied',
    place: null,
    words: 'head thirteen',
  },
};

const afterOf =
  (clock: Clock): After =>
  (ms, run) =>
    clock.after(ms, run);

/** A page that lived, kept these and was killed. */
async function afterKeeping(...bodies: readonly EventBody[]) {
  const disk = createMemoryDisk();
  const log = createMemoryLog(disk);
  let made = 0;
  const ids = { next: () => `01KAXDEV00${String((made += 1)).padStart(16, '0')}` };
  const stamp = createStamps({ log, clock: handClock(), ids })({
    ...EMPTY_VISIT,
    settings: SETTINGS,
  });
  const opened: EventBody = { type: 'visitOpened', v: 1, settings: SETTINGS };
  expect(await log.append([opened, ...bodies].map(stamp))).toEqual({ kind: 'kept' });
  return createMemoryLog(disk);
}

describe('the page opened again', () => {
  afterEach(() => {
    vi.restoreAllMocks();
  });

  it('goes on with the visit that was open, and says so', async () => {
    const session = await firstSession(await afterKeeping(HEAD));
    expect(session.mode).toEqual({ kind: 'asleep' });
    expect(session.visit.readings.map(({ reading }) => reading.value)).toEqual([13]);
    expect(session.notice).toEqual({ kind: 'resumed', readings: 1 });
  });

  it('begins afresh after a finished visit, with that one’s units and altitude', async () => {
    const session = await firstSession(await afterKeeping(HEAD, { type: 'visitFinished', v: 1 }));
    expect(session.visit.visit).toBeNull();
    expect(session.visit.readings).toEqual([]);
    expect(session.visit.settings).toEqual(SETTINGS);
  });

  it('begins in US units at sea level on a device that never saw a visit', async () => {
    const session = await firstSession(createMemoryLog(createMemoryDisk()));
    expect(session.visit).toEqual(EMPTY_VISIT);
    expect(session.notice).toBeNull();
  });

  it('opens all the same where the log cannot be read, says so, and keeps on in it', async () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const log = await afterKeeping(HEAD);
    const broken = { ...log, openVisit: () => Promise.reject(new Error('the index is gone')) };
    const session = await firstSessionOrFresh(broken, afterOf(handClock()));
    expect(session.visit).toEqual(EMPTY_VISIT);
    expect(session.notice).toEqual({ kind: 'unread', what: 'all' });
    expect(session.unstored).toBeNull();
  });

  it('waits ten seconds for a log that does not answer, and no longer', async () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const clock = handClock();
    const log = await afterKeeping(HEAD);
    const mute = { ...log, openVisit: () => new Promise<null>(() => undefined) };
    let opened = false;
    const opening = firstSessionOrFresh(mute, afterOf(clock)).finally(() => (opened = true));
    clock.advance(9_999);
    await settled();
    expect(opened).toBe(false);
    clock.advance(1);
    expect((await opening).notice).toEqual({ kind: 'unread', what: 'all' });
  });

  it('says for good that nothing is stored where there is no log, and once why', () => {
    expect(unstoredSession('full')).toMatchObject({
      unstored: 'full',
      notice: { kind: 'unstored', why: 'full' },
    });
  });
});

describe('an earlier visit that is pressed', () => {
  afterEach(() => {
    vi.restoreAllMocks();
  });

  it('is told where its reading fails, and the visit in front stays as it is', async () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const on = await listening({ audible: false });
    on.ear.hear(offered('192'));
    await settled();
    const before = on.runner.session();
    const log = { ...on.log, readVisit: () => Promise.reject(new Error('the index is gone')) };
    const came = await earlierVisit(log, 'a visit', afterOf(on.clock));
    on.runner.send(came);
    const after = on.runner.session();
    expect(after).toEqual({ ...before, notice: { kind: 'unread', what: 'visit' } });
    expect(after.visit.readings).toHaveLength(1);
  });

  it('is told where its reading does not come within ten seconds, and is not opened after that', async () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const clock = handClock();
    const log = await afterKeeping(HEAD);
    const mute = { ...log, readVisit: () => new Promise<never>(() => undefined) };
    const coming = earlierVisit(mute, 'a visit', afterOf(clock));
    clock.advance(10_000);
    expect(await coming).toEqual({ kind: 'unread', what: 'visit' });
  });

  it('is opened where it can be read', async () => {
    const log = await afterKeeping(HEAD);
    const [summary] = await log.visits();
    const came = await earlierVisit(log, summary?.visit ?? '', afterOf(handClock()));
    expect(came).toMatchObject({ kind: 'visitRead', notice: { kind: 'resumed', readings: 1 } });
  });
});
