import { describe, expect, it } from 'vitest';

import { ENDPOINTER_SETTINGS } from '../../core/hearing/endpointing-policy.ts';
import type { SpeechRecognitionResult } from '../../client/recogniser/results.ts';
import { SpeechRecognitionErrorEvent } from '../../client/recogniser/events.ts';
import { SpeechRecognitionPhrase } from '../../client/recogniser/phrase.ts';
import { createScriptedEngine } from '../support/scripted-engine.ts';
import { SilentTrack } from '../client/ear/silent-track.ts';
import { createBench, grammarList, heard, logEvents, loud, quiet, zeros } from './harness.ts';
import type { Bench } from './harness.ts';
import { call, get } from './standard/untyped.ts';

const SPOKEN = [
  'start',
  'audiostart',
  'soundstart',
  'speechstart',
  'speechend',
  'soundend',
  'audioend',
];
const invalid: unknown = expect.objectContaining({ name: 'InvalidStateError' });

async function hear(bench: Bench): Promise<void> {
  await bench.settle();
  await bench.sound(quiet(500), loud(800), quiet(1500));
}

describe('an event', () => {
  it('neither bubbles nor can be cancelled, and is its recogniser’s', async () => {
    const bench = createBench({ hearings: [heard('yes')] });
    const seen: Event[] = [];
    for (const type of [...SPOKEN, 'result', 'end']) {
      bench.recognition.addEventListener(type, (event) => seen.push(event));
    }
    bench.recognition.start();
    await hear(bench);
    expect(seen).toHaveLength(SPOKEN.length + 2);
    for (const { bubbles, cancelable, target } of seen) {
      expect([bubbles, cancelable, target]).toEqual([false, false, bench.recognition]);
    }
  });

  it('of a final keeps the results before it, the very same objects', async () => {
    const bench = createBench({ hearings: [heard('head one'), heard('yes')] });
    bench.recognition.continuous = true;
    bench.recognition.interimResults = true;
    const lists: (readonly SpeechRecognitionResult[])[] = [];
    bench.recognition.onresult = ({ results }) => lists.push([...results]);
    bench.recognition.start();
    await hear(bench);
    await bench.sound(loud(800));
    bench.engine.guess('ye');
    await bench.sound(quiet(1500));
    expect(lists.map((list) => list.length)).toEqual([1, 2, 2]);
    expect(lists.map(([first]) => first)).toEqual([lists[0]?.[0], lists[0]?.[0], lists[0]?.[0]]);
    expect(lists.map((list) => list.at(-1)?.isFinal)).toEqual([true, false, true]);
  });

  it('of an error says in its message what was the matter, for whoever looks for the fault', async () => {
    const messages = async (bench: Bench): Promise<string> => {
      const told: string[] = [];
      bench.recognition.addEventListener('error', ({ message }) => told.push(message));
      bench.recognition.start();
      await bench.settle();
      return told.join();
    };
    expect(await messages(createBench({ load: { kind: 'failed', message: 'gone' } }))).toBe('gone');
    expect(await messages(createBench({ refuse: 'audio-capture' }))).toBe('why');
  });
});

describe('a session that cannot begin', () => {
  it('for phrases that this engine cannot weigh', async () => {
    const engine = { ...createScriptedEngine(), hasOneWording: true };
    const bench = createBench({ engine });
    bench.recognition.phrases.push(new SpeechRecognitionPhrase('head'));
    bench.recognition.start();
    await bench.settle();
    expect(bench.log).toEqual(['error:phrases-not-supported', 'end']);
    bench.recognition.phrases = [];
    bench.recognition.start();
    await bench.settle();
    expect(bench.log.at(-1)).toBe('start');
  });

  it('on this device alone, in a language or on a page that it is not for', async () => {
    const bench = createBench();
    bench.recognition.processLocally = true;
    bench.recognition.lang = 'fr-FR';
    bench.recognition.start();
    await bench.settle();
    bench.recognition.lang = 'en-GB';
    bench.page.allowed = false;
    bench.recognition.start();
    await bench.settle();
    const refused = ['error:service-not-allowed', 'end'];
    expect(bench.log).toEqual([...refused, ...refused]);
    expect(bench.engine.calls).toEqual([]);
  });

  it('takes the document’s language where it has none of its own', async () => {
    const bench = createBench();
    bench.page.language = 'de';
    bench.recognition.start();
    await bench.settle();
    expect(bench.log).toEqual(['error:language-not-supported', 'end']);
    expect(bench.recognition.lang).toBe('');
  });

  it('in a window that is gone throws at once', async () => {
    const bench = createBench();
    bench.page.active = false;
    expect(() => bench.recognition.start()).toThrow(invalid);
    expect(() => bench.recognition.start(new SilentTrack())).toThrow(invalid);
    await bench.settle();
    expect(bench.log).toEqual([]);
    const asking = { langs: ['en'], processLocally: true };
    await expect(bench.SpeechRecognition.available(asking)).rejects.toThrow(invalid);
    await expect(bench.SpeechRecognition.install(asking)).rejects.toThrow(invalid);
  });

  it('with what is no track throws', () => {
    const { recognition } = createBench();
    for (const track of [null, undefined, {}, 'microphone']) {
      expect(() => call(get(recognition, 'start'), recognition, [track])).toThrow(TypeError);
    }
  });
});

describe('calls from within an event', () => {
  it('to start(), where a session runs, throw', async () => {
    const bench = createBench({ hearings: [heard('yes')] });
    const thrown: unknown[] = [];
    for (const type of ['start', 'audiostart', 'speechstart', 'audioend', 'result']) {
      bench.recognition.addEventListener(type, () => {
        try {
          bench.recognition.start();
        } catch (error) {
          thrown.push(error);
        }
      });
    }
    bench.recognition.start();
    await hear(bench);
    expect(thrown).toEqual(Array.from({ length: 5 }, () => invalid));
  });

  it('to stop() and abort() end it, whichever event they are called in', async () => {
    for (const type of [...SPOKEN, 'result']) {
      for (const how of ['stop', 'abort'] as const) {
        const bench = createBench({ hearings: [heard('yes')] });
        bench.recognition.addEventListener(type, () => bench.recognition[how]());
        bench.recognition.start();
        await hear(bench);
        expect([type, how, bench.log.filter((each) => each === 'end').length]).toEqual([
          type,
          how,
          1,
        ]);
        expect(bench.log.at(-1)).toBe('end');
        expect(bench.openCaptures()).toBe(0);
      }
    }
  });
});

describe('what comes too late', () => {
  it('from an engine or a microphone of a session before changes nothing', async () => {
    const bench = createBench({ hearings: [heard('old'), heard('new')] });
    bench.recognition.interimResults = true;
    bench.recognition.start();
    await bench.settle();
    await bench.sound(quiet(500), loud(500));
    const release = bench.engine.holdFinish();
    bench.recognition.stop();
    bench.recognition.abort();
    await bench.settle();
    const before = bench.log.length;
    await bench.sound(loud(500));
    bench.engine.guess('stale');
    bench.lose();
    bench.hide();
    release();
    await bench.settle();
    expect(bench.log.slice(before)).toEqual([]);
    bench.recognition.start();
    await hear(bench);
    expect(bench.log.slice(before)).toEqual([...SPOKEN, 'result(0) new', 'end']);
  });

  it('as a microphone that opens after abort() is closed', async () => {
    const bench = createBench({ onOpening: () => bench.recognition.abort() });
    bench.recognition.start();
    await bench.settle();
    expect(bench.log).toEqual(['error:aborted', 'end']);
    expect(bench.openCaptures()).toBe(0);
  });
});

describe('the end of a sentence', () => {
  const quietUntilEnd = async (bench: Bench): Promise<number> => {
    for (let quietMs = 100; quietMs < 4000; quietMs += 100) {
      await bench.sound(quiet(100));
      if (bench.log.includes('speechend')) return quietMs;
    }
    return NaN;
  };
  const begun = async (): Promise<Bench> => {
    const bench = createBench({ hearings: [heard('new')] });
    bench.recognition.start();
    await bench.settle();
    await bench.sound(quiet(500), loud(800));
    return bench;
  };

  it.each(['closed', 'extendable', 'incomplete'] as const)(
    'comes after the wait for one that is %s, though no interim results are wanted',
    async (standing) => {
      const bench = await begun();
      bench.engine.guess('ne', standing);
      const quietMs = await quietUntilEnd(bench);
      expect(quietMs).toBeGreaterThanOrEqual(ENDPOINTER_SETTINGS.waitMs[standing]);
      expect(quietMs).toBeLessThanOrEqual(ENDPOINTER_SETTINGS.waitMs[standing] + 200);
      expect(bench.log.some((event) => event.includes('ne*'))).toBe(false);
    },
  );

  it('comes by what the engine’s detector tells of a room as loud as the voice', async () => {
    const bench = await begun();
    let ms = 1300;
    for (; ms < 4000 && !bench.log.includes('speechend'); ms += 96) {
      bench.engine.voice([0, 0, 0], (ms + 96) * 16);
      await bench.sound(loud(96));
    }
    const { unknown } = ENDPOINTER_SETTINGS.waitMs;
    expect(ms - 1300).toBeGreaterThanOrEqual(unknown - 96);
    expect(ms - 1300).toBeLessThanOrEqual(unknown + 200);
  });
});

describe('changes while a session runs', () => {
  const unsure = {
    alternatives: [
      { words: 'head one fifteen', confidence: 0.6, wordConfidences: [] },
      { words: 'head one fifty', confidence: 0.4, wordConfidences: [] },
    ],
  };

  it('to phrases count at once, by as much as the boost says', async () => {
    const bench = createBench({ hearings: [unsure, unsure] });
    bench.recognition.continuous = true;
    bench.recognition.maxAlternatives = 2;
    const best: (readonly [string, number])[] = [];
    bench.recognition.onresult = ({ results }) => {
      const alternative = results[results.length - 1]?.[0];
      if (alternative) best.push([alternative.transcript.trim(), alternative.confidence]);
    };
    bench.recognition.start();
    await hear(bench);
    bench.recognition.phrases.push(new SpeechRecognitionPhrase('one FIFTY', Math.log(3)));
    await bench.sound(loud(800), quiet(1500));
    // Odds of 4 to 6, three times likelier: 12 to 6.
    expect(best).toEqual([
      ['head one fifteen', expect.closeTo(0.6)],
      ['head one fifty', expect.closeTo(2 / 3)],
    ]);
  });

  it('to phrases of no words, or of half words, weigh nothing', async () => {
    const bench = createBench({ hearings: [unsure] });
    for (const phrase of ['', ' ', 'ifty']) {
      bench.recognition.phrases.push(new SpeechRecognitionPhrase(phrase, 10));
    }
    bench.recognition.start();
    await hear(bench);
    expect(bench.log.at(-2)).toBe('result(0) head one fifteen');
  });

  it('to anything else wait for the next', async () => {
    const bench = createBench({ hearings: [heard('yes'), heard('no')] });
    bench.recognition.start();
    bench.recognition.continuous = true;
    bench.recognition.interimResults = true;
    bench.recognition.processLocally = true;
    await bench.settle();
    await bench.sound(quiet(500), loud(800));
    bench.engine.guess('ye');
    await bench.sound(quiet(1500));
    expect(bench.log).toEqual([...SPOKEN, 'result(0) yes', 'end']);
    bench.recognition.start();
    await hear(bench);
    expect(bench.log.at(-1)).toBe('result(0) no');
  });
});

describe('two recognisers', () => {
  it('take turns: whoever starts is heard, and the other is told', async () => {
    const bench = createBench({ hearings: [heard('yes')] });
    const other = new bench.SpeechRecognition();
    other.grammars = grammarList();
    logEvents(other, bench.log, 'other ');
    bench.recognition.start();
    await bench.settle();
    await bench.sound(quiet(500));
    other.start();
    await hear(bench);
    expect(bench.log.filter((each) => !each.startsWith('other'))).toEqual([
      'start',
      'audiostart',
      'audioend',
      'error:aborted',
      'end',
    ]);
    const others = bench.log.filter((each) => each.startsWith('other'));
    expect(others).toEqual([...SPOKEN, 'result(0) yes', 'end'].map((each) => `other ${each}`));
    expect(bench.openCaptures()).toBe(0);
  });

  it('leave each other what was answered already, and each its own grammar', async () => {
    const bench = createBench({ hearings: [heard('yes')] });
    const other = new bench.SpeechRecognition();
    const third = new bench.SpeechRecognition();
    third.grammars = grammarList('#JSGF V1.0;\ngrammar n;\npublic <n> = no;');
    bench.recognition.start();
    await bench.settle();
    bench.arrive(quiet(500), loud(800), quiet(1500));
    for (let turn = 0; turn < 20; turn += 1) await Promise.resolve();
    other.start();
    await bench.settle();
    expect(bench.log).toEqual([...SPOKEN, 'result(0) yes', 'end']);
    bench.recognition.start();
    third.start();
    await bench.settle();
    const set = bench.engine.calls.filter((call) => call.startsWith('setGrammar'));
    expect(set.at(-1)).toMatch(/= no;/);
  });
});

describe('an engine or a microphone that fails its part', () => {
  const rejecting = (): Promise<never> => Promise.reject(new Error('broken'));

  it('by breaking its promise ends the session with an error', async () => {
    for (const broken of ['load', 'setGrammar', 'finish']) {
      const bench = createBench({ engine: { ...createScriptedEngine(), [broken]: rejecting } });
      bench.recognition.start();
      await hear(bench);
      expect([broken, ...bench.log.slice(-2)]).toEqual([
        broken,
        'error:service-not-allowed',
        'end',
      ]);
      expect(bench.openCaptures()).toBe(0);
    }
  });

  it('by throwing while it is fed, too', async () => {
    const accept = (): never => {
      throw new Error('broken');
    };
    const bench = createBench({ engine: { ...createScriptedEngine(), accept } });
    bench.recognition.start();
    await hear(bench);
    expect(bench.log.slice(-4)).toEqual([
      'soundend',
      'audioend',
      'error:service-not-allowed',
      'end',
    ]);
  });

  it('by never answering is given up, and a new one is had for the next session', async () => {
    const bench = createBench({ hearings: [heard('yes')] });
    bench.engine.holdFinish();
    bench.recognition.start();
    await hear(bench);
    expect(bench.log.at(-1)).toBe('audioend');
    bench.timeUp(20_000);
    await bench.settle();
    expect(bench.log.slice(-2)).toEqual(['error:service-not-allowed', 'end']);
    expect(bench.engine.calls.at(-1)).toBe('dispose');
  });

  it('by falling silent in the middle is noticed, but not while sound comes', async () => {
    const bench = createBench();
    bench.recognition.start();
    await bench.settle();
    for (let second = 0; second < 3; second += 1) {
      await bench.sound(quiet(1000));
      bench.timeUp(5_000);
      await bench.settle();
    }
    expect(bench.log).toEqual(['start', 'audiostart']);
    bench.timeUp(5_000);
    await bench.settle();
    expect(bench.log.slice(2)).toEqual(['audioend', 'error:audio-capture', 'end']);
  });

  it('by giving nothing but zeros is told from a quiet room', async () => {
    for (const [silence, muted] of [
      [zeros, 1],
      [quiet, 0],
    ] as const) {
      const bench = createBench();
      const told: string[] = [];
      bench.recognition.onerror = (event) => {
        if (event instanceof SpeechRecognitionErrorEvent) told.push(event.message);
      };
      bench.recognition.start();
      await bench.settle();
      await bench.sound(silence(8_100));
      expect(bench.log.slice(-2)).toEqual(['error:no-speech', 'end']);
      expect([bench.digitalSilences(), told.join().includes('muted')]).toEqual([
        muted,
        muted === 1,
      ]);
    }
  });

  it('by not opening at all ends the session', async () => {
    const bench = createBench({
      onOpening: () => {
        throw new Error('broken');
      },
    });
    bench.recognition.start();
    await bench.settle();
    expect(bench.log).toEqual(['error:service-not-allowed', 'end']);
  });
});
