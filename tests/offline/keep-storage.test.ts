import { describe, expect, it } from 'vitest';
import type { DeviceLog } from '../../client/offline/event-log.ts';
import { keepStorage, keepStorageOnceUsed } from '../../client/offline/keep-storage.ts';
import { createMemoryDisk, createMemoryLog } from '../../client/offline/memory-log.ts';
import { opened } from '../contracts/sample-events.ts';
import { settled } from '../client/scripted.ts';
import { createStamp, DEVICE } from '../support/stamp.ts';

function storageThat(persisted: boolean, grants: boolean) {
  let asked = 0;
  return {
    asked: () => asked,
    persisted: () => Promise.resolve(persisted),
    persist: () => {
      asked += 1;
      return Promise.resolve(grants);
    },
  };
}

describe('asking the browser to keep the log', () => {
  it('asks once and says what it was given', async () => {
    const granted = storageThat(false, true);
    const refused = storageThat(false, false);
    expect([await keepStorage(granted), await keepStorage(refused)]).toEqual([
      'persistent',
      'mayBeCleared',
    ]);
    expect([granted.asked(), refused.asked()]).toEqual([1, 1]);
  });

  it('does not ask where it is kept already', async () => {
    const storage = storageThat(true, true);
    expect(await keepStorage(storage)).toBe('persistent');
    expect(storage.asked()).toBe(0);
  });

  it('does not know where the browser does not say', async () => {
    const broken = {
      persisted: () => Promise.reject(new Error('off')),
      persist: () => Promise.resolve(true),
    };
    expect([await keepStorage(undefined), await keepStorage(broken)]).toEqual([
      'unknown',
      'unknown',
    ]);
  });

  it('asks when the first thing is recorded, not before, and not again', async () => {
    const storage = storageThat(false, true);
    const stamp = createStamp();
    const log = createMemoryLog(createMemoryDisk(DEVICE));
    keepStorageOnceUsed(log, storage);
    await settled();
    expect(storage.asked()).toBe(0);
    for (const event of [stamp(opened), stamp(opened)]) {
      await log.append([event]);
      await settled();
      expect(storage.asked()).toBe(1);
    }
  });

  it('does not ask because another tab lets this one write', async () => {
    const storage = storageThat(false, true);
    let told: Parameters<DeviceLog['onChange']>[0] = () => undefined;
    const onChange: DeviceLog['onChange'] = (listener) => {
      told = listener;
      return () => undefined;
    };
    keepStorageOnceUsed({ lastSeq: 3, onChange }, storage);
    told([]);
    await settled();
    expect(storage.asked()).toBe(0);
  });
});
