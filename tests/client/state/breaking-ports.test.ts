import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Ear } from '../../../client/ear/ear.ts';
import { listening, offered, scriptedEar, settled, stage, type Stage } from '../scripted.ts';

/** What breaks here says so to whoever looks into it, and is kept out of the tests' own report. */
beforeEach(() => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
});

afterEach(() => {
  vi.restoreAllMocks();
});

const breaking = (): never => {
  throw new Error('broken');
};

const values = ({ runner }: Stage) =>
  runner.session().visit.readings.map(({ reading }) => reading.value);

describe('a reading', () => {
  it('is kept and answered where the screen that shows it breaks', async () => {
    const on = await listening({ audible: false });
    const shown: string[] = [];
    on.runner.subscribe(breaking);
    on.runner.subscribe(({ mode }) => shown.push(mode.kind));
    on.ear.hear(offered('192'));
    await settled();
    expect(on.appended.flat().map(({ type }) => type)).toEqual(['visitOpened', 'readingTaken']);
    expect([values(on), shown.at(-1)]).toEqual([[192], 'listening']);
  });

  it.each(['phraser', 'passages'] as const)(
    'is answered where the %s, which only words better, breaks',
    async (broken) => {
      const on = await listening({ audible: false, [broken]: breaking });
      on.ear.hear(offered('192'));
      await settled();
      expect([values(on), on.runner.session().mode.kind]).toEqual([[192], 'listening']);
    },
  );

  it('is taken after a reply whose voice broke: the ear opens again', async () => {
    const on = await listening();
    on.voice.voice.speak = () => Promise.reject(new Error('no voice'));
    on.ear.hear(offered('192'));
    await settled();
    expect(on.runner.session().mode.kind).toBe('listening');
    on.ear.hear(offered('193'));
    await settled();
    expect(values(on)).toEqual([192, 193]);
  });
});

describe('a press', () => {
  it('on an ear that breaks as it opens is told, and another one tries again', async () => {
    const ear = scriptedEar();
    const broken: Ear = { ...ear, open: () => Promise.reject(new Error('no ear')) };
    const on = stage({ ear: broken });
    on.runner.send({ kind: 'pressed' });
    await settled();
    expect(on.runner.session().mode).toEqual({ kind: 'deaf', why: 'recogniserFailed' });
    broken.open = () => ear.open();
    on.runner.send({ kind: 'pressed' });
    await settled();
    expect(on.runner.session().mode.kind).toBe('listening');
  });
});

describe('a tab that becomes the one that writes', () => {
  it('says where it cannot read what the other one wrote, and goes on with what it has', async () => {
    const on = await listening({ audible: false });
    on.ear.hear(offered('192'));
    await settled();
    on.log.readVisit = () => Promise.reject(new Error('the index is gone'));
    on.runner.send({ kind: 'becameWriter' });
    await settled();
    expect(on.runner.session().notice).toEqual({ kind: 'unread', what: 'otherTab' });
    expect(values(on)).toEqual([192]);
  });
});
