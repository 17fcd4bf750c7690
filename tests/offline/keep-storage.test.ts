import { describe, expect, it } from 'vitest';
import { keepStorage } from '../../client/offline/keep-storage.ts';

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
});
