import { afterEach, describe, expect, it, vi } from 'vitest';
import { readEarlier } from '../../../client/state/read-earlier.ts';
import { listening, offered, settled, stage } from '../scripted.ts';

describe('what earlier visits tell', () => {
  afterEach(() => {
    vi.restoreAllMocks();
  });

  it('is known once it is read, and the parts at once', async () => {
    const on = await listening({ audible: false });
    on.ear.hear(offered('192'));
    await settled();
    const reading = readEarlier(on.log, ['fan blade'], (told) => on.runner.send(told));
    expect(on.runner.session().names.parts).toEqual(['fan blade']);
    await reading;
    const { names, past, notice } = on.runner.session();
    expect([names.parts, past.length, notice]).toEqual([['fan blade'], 1, null]);
  });

  it('is told to be missing where it cannot be read, and the parts are known', async () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const on = stage();
    const log = { ...on.log, visits: () => Promise.reject(new Error('the index is gone')) };
    await readEarlier(log, ['fan blade'], (told) => on.runner.send(told));
    const { names, notice } = on.runner.session();
    expect(names.parts).toEqual(['fan blade']);
    expect(notice).toEqual({ kind: 'unread', what: 'past' });
  });

  it('takes the place of no trouble that the page told as it opened', async () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const on = stage();
    on.runner.send({ kind: 'unread', what: 'all' });
    on.runner.send({ kind: 'unread', what: 'past' });
    expect(on.runner.session().notice).toEqual({ kind: 'unread', what: 'all' });
    on.runner.send({ kind: 'unread', what: 'visit' });
    expect(on.runner.session().notice).toEqual({ kind: 'unread', what: 'visit' });
    await settled();
  });
});
