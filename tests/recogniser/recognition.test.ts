import { describe, expect, it } from 'vitest';

import { SpeechGrammarList } from '../../client/recogniser/grammars.ts';
import { makeAlternative, makeResult } from '../../client/recogniser/results.ts';
import { createBench, GRAMMAR, grammarList, heard, loud, quiet } from './harness.ts';

const invalid: unknown = expect.objectContaining({ name: 'InvalidStateError' });

/** As much of a track as start() looks at; the rest answers nothing. */
function track(kind: string, readyState: MediaStreamTrackState): MediaStreamTrack {
  const made: MediaStreamTrack = {
    kind,
    readyState,
    contentHint: '',
    enabled: true,
    id: '',
    label: '',
    muted: false,
    onended: null,
    onmute: null,
    onunmute: null,
    applyConstraints: () => Promise.resolve(),
    clone: () => made,
    getCapabilities: () => ({}),
    getConstraints: () => ({}),
    getSettings: () => ({}),
    stop: () => undefined,
    addEventListener: () => undefined,
    removeEventListener: () => undefined,
    dispatchEvent: () => true,
  };
  return made;
}

describe('start()', () => {
  it('throws while a session runs, and may be called in error and end', async () => {
    const bench = createBench();
    bench.recognition.start();
    expect(() => bench.recognition.start()).toThrow(invalid);
    await bench.settle();
    bench.recognition.onend = () => {
      bench.recognition.onend = null;
      bench.recognition.start();
    };
    bench.recognition.stop();
    await bench.settle();
    expect(bench.log).toEqual(['start', 'end', 'start']);
  });

  it('called in error begins after the old end', async () => {
    const bench = createBench();
    bench.recognition.start();
    await bench.settle();
    bench.recognition.onerror = () => bench.recognition.start();
    bench.recognition.abort();
    await bench.settle();
    expect(bench.log).toEqual(['start', 'error:aborted', 'end', 'start']);
  });

  it('refuses a track that is dead or no sound, and passes on one that is', async () => {
    const bench = createBench();
    expect(() => bench.recognition.start(track('video', 'live'))).toThrow(invalid);
    expect(() => bench.recognition.start(track('audio', 'ended'))).toThrow(invalid);
    const live = track('audio', 'live');
    bench.recognition.start(live);
    await bench.settle();
    expect(bench.askedTracks).toEqual([live]);
  });

  it('keeps the attributes of the moment', async () => {
    const bench = createBench({ hearings: [heard('yes')] });
    bench.recognition.start();
    bench.recognition.continuous = true;
    bench.recognition.lang = 'fr';
    bench.recognition.grammars = new SpeechGrammarList();
    await bench.settle();
    await bench.sound(quiet(500), loud(800), quiet(1500));
    expect(bench.log.at(-1)).toBe('end');
  });

  it('gives the engine the grammar each time, before the ear opens', async () => {
    const bench = createBench();
    bench.recognition.start();
    await bench.settle();
    expect(bench.engine.calls[1]).toMatch(/^setGrammar [^]*head one ninety two \| yes/);
    bench.recognition.stop();
    await bench.settle();
    bench.recognition.grammars = grammarList('#JSGF V1.0;\ngrammar n;\npublic <n> = no;');
    bench.recognition.start();
    await bench.settle();
    expect(bench.engine.calls.at(-1)).toMatch(/<g0_n> = no;/);
  });

  it('has the grammars of later sessions made ready, by the name they will be set by, once it hears', async () => {
    const later = '#JSGF V1.0;\ngrammar n;\npublic <n> = no;';
    const bench = createBench({ expected: [GRAMMAR, later] });
    const warmed = () => bench.engine.calls.filter((call) => call.startsWith('warm'));
    bench.recognition.start();
    await bench.settle();
    expect(warmed()).toEqual([]);
    await bench.sound(quiet(20));
    expect(warmed()).toHaveLength(2);
    bench.recognition.abort();
    await bench.settle();
    bench.recognition.grammars = grammarList(later);
    bench.recognition.start();
    await bench.settle();
    const set = bench.engine.calls.at(-1)?.replace(/^setGrammar/, 'warm');
    expect(warmed()).toContain(set);
  });

  it('reads grammars from addresses, and says so when one does not come or says nothing', async () => {
    const bench = createBench();
    for (const src of ['good.jsgf', 'gone.jsgf', 'data:application/jsgf,']) {
      bench.recognition.grammars = new SpeechGrammarList();
      bench.recognition.grammars.addFromUri(src);
      bench.recognition.start();
      await bench.settle();
      bench.recognition.stop();
      await bench.settle();
    }
    const refused = ['error:service-not-allowed', 'end'];
    expect(bench.log).toEqual(['start', 'end', ...refused, ...refused]);
  });

  it('hears a session without grammars through, by a grammar that nothing can be said by', async () => {
    const notForUs = { ...heard('head'), rejected: 'notForUs' } as const;
    const bench = createBench({ hearings: [notForUs] });
    bench.recognition.grammars = new SpeechGrammarList();
    bench.recognition.start();
    await bench.settle();
    expect(bench.engine.calls.at(-1)).toMatch(/^setGrammar [^]*<g0_none> = <VOID>;/);
    await bench.sound(quiet(500), loud(800), quiet(1500));
    expect(bench.log.filter((each) => /^(start|nomatch|result|error|end)/.test(each))).toEqual([
      'start',
      'nomatch(0) head',
      'end',
    ]);
  });

  it('shows the level while it hears and the room to the next session', async () => {
    const bench = createBench();
    bench.recognition.start();
    await bench.settle();
    await bench.sound(quiet(500), loud(300));
    expect(Math.max(...bench.levels)).toBeGreaterThan(0.9);
    bench.recognition.stop();
    await bench.settle();
    expect(bench.levels.at(-1)).toBe(0);
    expect(bench.room.floorDb).toBe(-70);
  });
});

describe('available() and install()', () => {
  it('follow the engine', async () => {
    const { SpeechRecognition, settle } = createBench();
    const ask = async (langs: readonly string[]): Promise<string> => {
      const answer = SpeechRecognition.available({ langs, processLocally: true });
      await settle();
      return answer;
    };
    expect(await ask(['en-US', 'en'])).toBe('downloadable');
    expect(await ask(['en-US', 'de'])).toBe('unavailable');
    expect(await ask([])).toBe('unavailable');
    await expect(ask(['not a tag'])).rejects.toMatchObject({ name: 'SyntaxError' });
    const installed = SpeechRecognition.install({ langs: ['en-US'] });
    await settle();
    expect(await installed).toBe(true);
    expect(await ask(['en-US'])).toBe('available');
  });

  it('answer false for another language and a model that does not come', async () => {
    const bench = createBench({ load: { kind: 'failed', message: 'gone' } });
    for (const langs of [['en'], ['de'], []]) {
      const installed = bench.SpeechRecognition.install({ langs });
      await bench.settle();
      expect(await installed).toBe(false);
    }
  });
});

describe('the interface', () => {
  it('has the defaults of the standard', () => {
    const { recognition } = createBench();
    expect(recognition).toMatchObject({
      lang: '',
      continuous: false,
      interimResults: false,
      maxAlternatives: 1,
      processLocally: false,
      onresult: null,
    });
    expect(recognition.phrases).toEqual([]);
  });

  it('keeps the place of a handler that is replaced', async () => {
    const { recognition, settle } = createBench();
    const order: string[] = [];
    recognition.onstart = () => order.push('first');
    recognition.addEventListener('start', () => order.push('second'));
    recognition.onstart = () => order.push('replaced');
    recognition.start();
    await settle();
    expect(order).toEqual(['replaced', 'second']);
  });

  it('cuts alternatives to as many as were asked for, best first', async () => {
    const alternatives = ['a', 'b', 'c'].map((words) => ({
      words,
      confidence: 0.9,
      wordConfidences: [],
    }));
    const bench = createBench({ hearings: [{ alternatives }] });
    bench.recognition.maxAlternatives = 2;
    const got: string[] = [];
    bench.recognition.onresult = ({ results }) => {
      for (const result of results) for (const { transcript } of result) got.push(transcript);
    };
    bench.recognition.start();
    await bench.settle();
    await bench.sound(quiet(500), loud(800), quiet(1500));
    expect(got).toEqual(['a', 'b']);
  });

  it('indexes results and answers null beyond them', () => {
    const result = makeResult([makeAlternative('yes', 1)], true);
    expect(result.length).toBe(1);
    expect(result[0]).toBe(result.item(0));
    expect(result[1]).toBeUndefined();
    expect(result.item(1)).toBeNull();
  });
});
