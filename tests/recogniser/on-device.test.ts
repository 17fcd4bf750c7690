import { describe, expect, it } from 'vitest';

import { createBench } from './harness.ts';
import { call, get } from './standard/untyped.ts';

describe('available() and install()', () => {
  it('answer in a task of their own, not in a microtask', async () => {
    const bench = createBench();
    const answers: unknown[] = [];
    void bench.SpeechRecognition.available({ langs: ['en'] }).then((each) => answers.push(each));
    for (let turn = 0; turn < 50; turn += 1) await Promise.resolve();
    expect(answers).toEqual([]);
    await bench.settle();
    expect(answers).toEqual(['available']);
  });

  it('say whether it can be had at all, or on this device already', async () => {
    const bench = createBench();
    const { SpeechRecognition } = bench;
    const ask = async (langs: string[], processLocally: boolean): Promise<string> => {
      const answer = SpeechRecognition.available({ langs, processLocally });
      await bench.settle();
      return answer;
    };
    expect(await ask(['en-US'], false)).toBe('available');
    expect(await ask(['en-US'], true)).toBe('downloadable');
    expect(await ask(['en-US', 'fr'], false)).toBe('unavailable');
    expect(await ask([], false)).toBe('unavailable');
    bench.page.allowed = false;
    expect(await ask(['en-US'], true)).toBe('unavailable');
  });

  it('take options as the standard does', async () => {
    const { SpeechRecognition } = createBench();
    const wrong: readonly unknown[] = [
      {},
      null,
      'en',
      { langs: 'en' },
      { langs: [Symbol('en')] },
      { langs: ['en'], quality: 'best' },
    ];
    for (const options of wrong) {
      for (const ask of ['available', 'install']) {
        const answer = call(get(SpeechRecognition, ask), SpeechRecognition, [options]);
        await expect(answer).rejects.toThrow(TypeError);
      }
    }
  });

  it('refuse a malformed tag', async () => {
    const { SpeechRecognition } = createBench();
    const asking = { langs: ['en-US', 'invalid language code'] };
    for (const asked of [SpeechRecognition.available(asking), SpeechRecognition.install(asking)]) {
      await expect(asked).rejects.toMatchObject({ name: 'SyntaxError' });
    }
  });

  it('install nothing where the permissions policy forbids it, and say whose policy it is', async () => {
    const { SpeechRecognition, engine, page } = createBench();
    page.allowed = false;
    for (const [crossOrigin, whose] of [
      [false, /this page/],
      [true, /cross-origin iframe/],
    ] as const) {
      page.crossOrigin = crossOrigin;
      const asked = SpeechRecognition.install({ langs: ['en-US'] });
      await expect(asked).rejects.toMatchObject({ name: 'NotAllowedError' });
      await expect(asked).rejects.toThrow(whose);
    }
    expect(engine.calls).toEqual([]);
  });

  it('download nothing on a page that nobody has pressed on', async () => {
    const bench = createBench();
    const asking = { langs: ['en-US'] };
    bench.page.touched = false;
    await expect(bench.SpeechRecognition.install(asking)).rejects.toMatchObject({
      name: 'NotAllowedError',
    });
    expect(bench.engine.calls).toEqual([]);
    await bench.engine.load();
    const installed = bench.SpeechRecognition.install(asking);
    await bench.settle();
    expect(await installed).toBe(true);
  });
});
