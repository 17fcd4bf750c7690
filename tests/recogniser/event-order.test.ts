import { describe, expect, it } from 'vitest';

import { createBench, heard, loud, quiet } from './harness.ts';

/** Orders as Chromium has them; the standard leaves most of it open. */
const BEGIN = ['start', 'audiostart'];
const SPEECH = ['soundstart', 'speechstart'];
const CLOSE = ['speechend', 'soundend', 'audioend'];

describe('one sentence', () => {
  it('ends speech, sound and audio before the final result', async () => {
    const bench = createBench({ hearings: [heard('head one ninety two')] });
    bench.recognition.start();
    await bench.settle();
    await bench.sound(quiet(500), loud(800), quiet(1500));
    expect(bench.log).toEqual([
      ...BEGIN,
      ...SPEECH,
      ...CLOSE,
      'result(0) head one ninety two',
      'end',
    ]);
    expect(bench.openCaptures()).toBe(0);
  });

  it('fires nothing while start() runs, and no event in a microtask', async () => {
    const bench = createBench();
    bench.recognition.start();
    expect(bench.log).toEqual([]);
    for (let turn = 0; turn < 50; turn += 1) await Promise.resolve();
    expect(bench.log).toEqual([]);
  });

  it('shows guesses only when asked, the final one in their place', async () => {
    for (const interimResults of [true, false]) {
      const bench = createBench({ hearings: [heard('head one ninety two')] });
      bench.recognition.interimResults = interimResults;
      bench.recognition.start();
      await bench.settle();
      await bench.sound(quiet(500), loud(800));
      bench.engine.guess('head');
      bench.engine.guess('head');
      bench.engine.guess('');
      await bench.sound(quiet(1500));
      const guesses = interimResults ? ['result(0) head*', 'result(0) '] : [];
      expect(bench.log).toEqual([
        ...BEGIN,
        ...SPEECH,
        ...guesses,
        ...CLOSE,
        'result(0) head one ninety two',
        'end',
      ]);
    }
  });

  it('gives the engine what came before speech was sure, and nothing before that', async () => {
    const bench = createBench({ hearings: [heard('yes')] });
    bench.recognition.start();
    await bench.settle();
    await bench.sound(quiet(5000), loud(800), quiet(1500));
    const accepted = bench.engine.calls
      .filter((call) => call.startsWith('accept'))
      .reduce((sum, call) => sum + Number(call.slice('accept '.length)), 0);
    expect(accepted / 16).toBeGreaterThan(800 + 900 + 500);
    expect(accepted / 16).toBeLessThan(800 + 900 + 1300);
  });

  it('says nomatch to talk that is not for us, and no result when no word was found', async () => {
    const stray = createBench({ hearings: [{ alternatives: [], rejected: 'notForUs' }] });
    stray.recognition.start();
    await stray.settle();
    await stray.sound(quiet(500), loud(800), quiet(1500));
    expect(stray.log.slice(-3)).toEqual(['audioend', 'nomatch(0) ', 'end']);
    const none = createBench({ hearings: [{ alternatives: [], rejected: 'nothing' }] });
    none.recognition.start();
    await none.settle();
    await none.sound(quiet(500), loud(800), quiet(1500));
    expect(none.log.slice(-2)).toEqual(['audioend', 'end']);
  });
});

describe('several sentences', () => {
  it('gives finals as they come with one pair of speech events, each text after the last', async () => {
    const bench = createBench({ hearings: [heard('head one'), heard('yes'), heard('no')] });
    bench.recognition.continuous = true;
    bench.recognition.start();
    await bench.settle();
    await bench.sound(quiet(500), loud(800), quiet(1500), loud(800), quiet(1500));
    expect(bench.log).toEqual([
      ...BEGIN,
      ...SPEECH,
      'result(0) head one',
      'result(1) head one| yes',
    ]);
    await bench.sound(loud(800));
    bench.recognition.stop();
    await bench.settle();
    expect(bench.log.slice(4 + 2)).toEqual([...CLOSE, 'result(2) head one| yes| no', 'end']);
  });

  it('waits with end for a sentence that is still being answered', async () => {
    const bench = createBench({ hearings: [heard('yes')] });
    bench.recognition.continuous = true;
    bench.recognition.start();
    await bench.settle();
    const release = bench.engine.holdFinish();
    await bench.sound(quiet(500), loud(800), quiet(1500));
    bench.recognition.stop();
    await bench.settle();
    expect(bench.log.at(-1)).toBe('audioend');
    release();
    await bench.settle();
    expect(bench.log.slice(-2)).toEqual(['result(0) yes', 'end']);
  });
});

describe('stop()', () => {
  it('before speech brings neither error nor result', async () => {
    const bench = createBench({ hearings: [heard('yes')] });
    bench.recognition.start();
    await bench.settle();
    await bench.sound(quiet(500));
    bench.recognition.stop();
    bench.recognition.stop();
    await bench.settle();
    expect(bench.log).toEqual([...BEGIN, 'audioend', 'end']);
  });

  it('in a sentence answers what was heard and takes no more sound', async () => {
    const bench = createBench({ hearings: [heard('yes')] });
    bench.recognition.start();
    await bench.settle();
    await bench.sound(quiet(500), loud(500));
    bench.recognition.stop();
    const calls = bench.engine.calls.length;
    await bench.sound(loud(500));
    expect(bench.log).toEqual([...BEGIN, ...SPEECH, ...CLOSE, 'result(0) yes', 'end']);
    expect(bench.engine.calls.length).toBe(calls);
  });

  it('before the ear is open ends at once; without a session does nothing', async () => {
    const bench = createBench();
    bench.recognition.stop();
    bench.recognition.start();
    bench.recognition.stop();
    await bench.settle();
    expect(bench.log).toEqual(['start', 'end']);
  });
});

describe('abort()', () => {
  it('in a sentence forgets it', async () => {
    const bench = createBench({ hearings: [heard('yes')] });
    bench.recognition.start();
    await bench.settle();
    await bench.sound(quiet(500), loud(500));
    bench.recognition.abort();
    bench.recognition.abort();
    await bench.settle();
    expect(bench.log).toEqual([...BEGIN, ...SPEECH, ...CLOSE, 'error:aborted', 'end']);
    expect(bench.engine.calls.at(-1)).toBe('reset');
    expect(bench.openCaptures()).toBe(0);
  });

  it('after stop() still keeps the result back', async () => {
    const bench = createBench({ hearings: [heard('yes')] });
    bench.recognition.start();
    await bench.settle();
    await bench.sound(quiet(500), loud(500));
    const release = bench.engine.holdFinish();
    bench.recognition.stop();
    bench.recognition.abort();
    release();
    await bench.settle();
    expect(bench.log).toEqual([...BEGIN, ...SPEECH, ...CLOSE, 'error:aborted', 'end']);
  });

  it('keeps back a result that is already on its way', async () => {
    for (const continuous of [false, true]) {
      const bench = createBench({ hearings: [heard('yes')] });
      bench.recognition.continuous = continuous;
      bench.recognition.start();
      await bench.settle();
      bench.arrive(quiet(500), loud(800), quiet(1500));
      for (let turn = 0; turn < 20; turn += 1) await Promise.resolve();
      bench.recognition.abort();
      await bench.settle();
      expect(bench.log).not.toContain('result(0) yes');
      expect(bench.log.at(-1)).toBe('end');
    }
  });

  it('before the ear is open closes it again', async () => {
    const bench = createBench();
    bench.recognition.start();
    bench.recognition.abort();
    await bench.settle();
    expect(bench.log).toEqual(['error:aborted', 'end']);
    expect(bench.openCaptures()).toBe(0);
  });

  it('comes by itself when the page is hidden', async () => {
    const bench = createBench();
    bench.recognition.start();
    await bench.settle();
    await bench.sound(quiet(500));
    bench.hide();
    await bench.settle();
    expect(bench.log).toEqual([...BEGIN, 'audioend', 'error:aborted', 'end']);
  });
});

describe('what goes wrong', () => {
  it('is no-speech after eight seconds, in continuous sessions too', async () => {
    for (const continuous of [false, true]) {
      const bench = createBench();
      bench.recognition.continuous = continuous;
      bench.recognition.start();
      await bench.settle();
      await bench.sound(quiet(7_900));
      expect(bench.log).toEqual(BEGIN);
      await bench.sound(quiet(200));
      expect(bench.log).toEqual([...BEGIN, 'audioend', 'error:no-speech', 'end']);
    }
  });

  it('is not-allowed without a start, audio-capture after one', async () => {
    const refused = createBench({ refuse: 'not-allowed' });
    refused.recognition.start();
    await refused.settle();
    expect(refused.log).toEqual(['error:not-allowed', 'end']);
    const absent = createBench({ refuse: 'audio-capture' });
    absent.recognition.start();
    await absent.settle();
    expect(absent.log).toEqual(['start', 'error:audio-capture', 'end']);
  });

  it('is audio-capture when the track ends in silence; in a sentence, its words are kept', async () => {
    const silent = createBench();
    silent.recognition.start();
    await silent.settle();
    await silent.sound(quiet(500));
    silent.lose();
    await silent.settle();
    expect(silent.log).toEqual([...BEGIN, 'audioend', 'error:audio-capture', 'end']);
    const speaking = createBench({ hearings: [heard('yes')] });
    speaking.recognition.start();
    await speaking.settle();
    await speaking.sound(quiet(500), loud(500));
    speaking.lose();
    await speaking.settle();
    expect(speaking.log.slice(-2)).toEqual(['result(0) yes', 'end']);
  });

  it('is audio-capture when no sound ever comes', async () => {
    const bench = createBench();
    bench.recognition.start();
    await bench.settle();
    bench.timeUp();
    await bench.settle();
    expect(bench.log).toEqual(['start', 'error:audio-capture', 'end']);
  });

  it('is service-not-allowed when the engine does not load, take the grammar or answer', async () => {
    const failed = { kind: 'failed', message: 'why' } as const;
    for (const script of [{ load: failed }, { grammar: failed }]) {
      const bench = createBench(script);
      bench.recognition.start();
      await bench.settle();
      expect(bench.log).toEqual(['error:service-not-allowed', 'end']);
    }
    const crashed = createBench({ finish: failed });
    crashed.recognition.start();
    await crashed.settle();
    await crashed.sound(quiet(500), loud(800), quiet(1500));
    expect(crashed.log.slice(-3)).toEqual(['audioend', 'error:service-not-allowed', 'end']);
  });

  it('is language-not-supported for another language', async () => {
    const bench = createBench();
    bench.recognition.lang = 'fr-FR';
    bench.recognition.start();
    await bench.settle();
    expect(bench.log).toEqual(['error:language-not-supported', 'end']);
  });
});
