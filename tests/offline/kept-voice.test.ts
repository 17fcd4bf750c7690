import 'fake-indexeddb/auto';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { openIndexedDbLog } from '../../client/offline/indexed-db-log.ts';
import { createKeptVoice } from '../../client/offline/kept-voice.ts';

afterEach(() => {
  vi.restoreAllMocks();
});

describe('what is kept of a voice', () => {
  it('is there when the page opens again, until it is forgotten', async () => {
    expect(await createKeptVoice('one').read()).toBeNull();
    expect(await createKeptVoice('one').write('{"version":1}')).toBe(true);
    expect(await createKeptVoice('one').read()).toBe('{"version":1}');
    await createKeptVoice('one').write(null);
    expect(await createKeptVoice('one').read()).toBeNull();
  });

  it('lies beside the log and leaves it alone', async () => {
    const opened = await openIndexedDbLog({ name: 'two' });
    if (opened.kind === 'failed') throw new Error(opened.message);
    await createKeptVoice('two').write('learnt');
    const again = await openIndexedDbLog({ name: 'two' });
    if (again.kind === 'failed') throw new Error(again.message);
    expect(again.log.device).toBe(opened.log.device);
    expect(await createKeptVoice('two').read()).toBe('learnt');
  });

  it('is none where storage is off', async () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    vi.spyOn(indexedDB, 'open').mockImplementation(() => {
      throw new DOMException('off', 'SecurityError');
    });
    const kept = createKeptVoice('three');
    expect(await kept.read()).toBeNull();
    expect(await kept.write('learnt')).toBe(false);
  });
});
