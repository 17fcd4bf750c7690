import { describe, expect, it } from 'vitest';
import { NO_NAMES } from '../../../../core/language/names/known-names.ts';
import type { Heard } from '../../../../client/ear/ear.ts';
import { createNativeEar, type PhrasesFor } from '../../../../client/ear/native/native-ear.ts';
import {
  hearsOnDevice,
  nativeClassOf,
  nativePhrases,
} from '../../../../client/ear/native/native-recognition.ts';
import { phraseHints } from '../../../../core/language/heard/phrase-hints.ts';
import { handClock, settled } from '../../scripted.ts';
import { said, scriptedNative } from './scripted-native.ts';

class Page extends EventTarget {
  visibilityState: DocumentVisibilityState = 'visible';
}

interface Options {
  readonly beeps?: boolean;
  readonly onDevice?: boolean;
  readonly permission?: PermissionState;
  readonly phrasesFor?: PhrasesFor;
}

function setUp(options: Options = {}) {
  const clock = handClock();
  const browser = scriptedNative();
  const heard: Heard[] = [];
  const page = new Page();
  let useless = 0;
  const ear = createNativeEar({
    native: browser.native,
    lang: 'en-US',
    onDevice: options.onDevice ?? false,
    clock,
    permission: () => Promise.resolve(options.permission ?? 'granted'),
    onUseless: () => {
      useless += 1;
    },
    wakeLock: undefined,
    page,
    beeps: options.beeps ?? false,
    phrasesFor: options.phrasesFor ?? null,
  });
  ear.onHeard((one) => heard.push(one));
  ear.open();
  return {
    ...browser,
    clock,
    heard,
    page,
    ear,
    useless: () => useless,
    words: () =>
      heard.flatMap((one) => (one.kind === 'words' ? [one.alternatives[0]?.words ?? ''] : [])),
    listen: async () => {
      ear.listen('anything', NO_NAMES);
      await settled();
    },
    pass: async (ms: number) => {
      await settled();
      clock.advance(ms);
      await settled();
    },
  };
}

describe('the browser’s own ear', () => {
  it('asks for one sentence a session, five ways to read it, and no guesses', async () => {
    const on = setUp();
    await on.listen();
    expect(on.last()).toMatchObject({
      lang: 'en-US',
      continuous: false,
      interimResults: false,
      maxAlternatives: 5,
      calls: ['start'],
    });
    expect(on.last().processLocally).toBeUndefined();
    const local = setUp({ onDevice: true });
    await local.listen();
    expect(local.last().processLocally).toBe(true);
  });

  it('passes the words on once the session is over, and waits to be asked again', async () => {
    const on = setUp();
    await on.listen();
    on.last().opens();
    on.last().results(said('head 192'));
    expect(on.words()).toEqual([]);
    on.last().fire('end');
    await settled();
    expect(on.heard).toEqual([
      { kind: 'hearing' },
      { kind: 'words', alternatives: [{ words: 'head 192', confidence: 0 }] },
    ]);
    expect(on.made).toHaveLength(1);
  });

  it('takes the browser’s figure for a chance only where it doubts', async () => {
    const on = setUp();
    for (const confidence of [0.84, 0.86]) {
      await on.listen();
      on.last().opens();
      on.last().results(said('head 192', confidence));
      on.last().fire('end');
      await settled();
    }
    const told = on.heard.flatMap((each) => (each.kind === 'words' ? each.alternatives : []));
    expect(told.map(({ confidence }) => confidence)).toEqual([0.84, 0]);
  });

  it('counts the same reading twice when it is said twice', async () => {
    const on = setUp();
    for (let times = 0; times < 2; times += 1) {
      await on.listen();
      on.last().opens();
      on.last().results(said('44'));
      on.last().fire('end');
      await settled();
    }
    expect(on.words()).toEqual(['44', '44']);
  });

  it('goes on after silence with a new session, never before the last has ended', async () => {
    const on = setUp();
    await on.listen();
    for (let times = 0; times < 5; times += 1) {
      on.last().opens();
      await on.pass(8_000);
      on.last().fire('error', { error: 'no-speech' });
      expect(on.running()).toBe(1);
      on.last().fire('end');
      await settled();
      expect(on.running()).toBe(1);
    }
    expect(on.made).toHaveLength(6);
    expect(on.useless()).toBe(0);
  });

  it('where each start beeps, rests after silence and says so', async () => {
    const on = setUp({ beeps: true });
    await on.listen();
    on.last().opens();
    await on.pass(8_000);
    on.last().fails('no-speech');
    await on.pass(60_000);
    expect(on.made).toHaveLength(1);
    expect(on.heard.at(-1)).toEqual({ kind: 'news', news: 'rests' });
  });

  it('takes guesses that are named final for what they grew to', async () => {
    const on = setUp();
    await on.listen();
    on.last().opens();
    on.last().results(said('head', 0));
    on.last().results(said('head', 0), said('head 1', 0));
    on.last().results(said('head', 0), said('head 1', 0), said('head 1 92', 0));
    on.last().results(
      said('head', 0),
      said('head 1', 0),
      said('head 1 92', 0),
      said('head 1 92', 0.8),
    );
    on.last().fire('end');
    await settled();
    expect(on.words()).toEqual(['head 1 92']);
  });

  it('hears results that start again at the first place, and results after the end not at all', async () => {
    const on = setUp();
    await on.listen();
    const first = on.last();
    first.opens();
    first.results(said('suction', 0));
    first.results(said('suction 14', 0));
    first.fire('end');
    first.results(said('suction 14', 0));
    await settled();
    await on.listen();
    first.results(said('suction 14', 0));
    first.fire('end');
    on.last().opens();
    on.last().results(said('box 44'));
    on.last().fire('end');
    await settled();
    expect(on.words()).toEqual(['suction 14', 'box 44']);
  });

  it('takes confidences of nought as they come, in the browser’s order, and no more than were asked for', async () => {
    const on = setUp();
    await on.listen();
    on.last().opens();
    const many = Array.from({ length: 9 }, (_, rank) => ({
      transcript: ` box ${rank}`,
      confidence: 0,
    }));
    on.last().results(Object.assign(many, { isFinal: true }));
    on.last().fire('end');
    await settled();
    expect(on.heard.at(-1)).toEqual({
      kind: 'words',
      alternatives: [0, 1, 2, 3, 4].map((rank) => ({ words: `box ${rank}`, confidence: 0 })),
    });
  });

  it('ends a session that has its words and does not end, and hears them', async () => {
    const on = setUp();
    await on.listen();
    on.last().opens();
    on.last().results(said('box 44'));
    await on.pass(1_500);
    expect(on.words()).toEqual(['box 44']);
    expect(on.last().calls).toEqual(['start', 'abort']);
    await on.listen();
    expect(on.made).toHaveLength(2);
  });

  it('ends a session that hears for ever', async () => {
    const on = setUp();
    await on.listen();
    on.last().opens();
    await on.pass(60_000);
    expect(on.made).toHaveLength(2);
    expect(on.made[0]?.calls).toEqual(['start', 'abort']);
  });

  it('gives up a browser that opens and gets no sound, twice', async () => {
    const on = setUp();
    await on.listen();
    on.last().fire('start');
    await on.pass(2_000);
    expect(on.useless()).toBe(0);
    await on.pass(250);
    await on.pass(2_000);
    expect(on.useless()).toBe(1);
  });

  it('leaves a person time to answer the browser’s question', async () => {
    const on = setUp({ permission: 'prompt' });
    await on.listen();
    await on.pass(30_000);
    expect([on.useless(), on.made.length]).toEqual([0, 1]);
  });

  it('gives up a browser without a network at the second time in a row', async () => {
    const on = setUp();
    await on.listen();
    on.last().opens();
    on.last().fails('network');
    await on.pass(250);
    on.last().opens();
    on.last().results(said('box 44'));
    on.last().fire('end');
    await settled();
    await on.listen();
    on.last().opens();
    on.last().fails('network');
    expect(on.useless()).toBe(0);
    await on.pass(250);
    on.last().opens();
    on.last().fails('network');
    expect(on.useless()).toBe(1);
  });

  it.each(['service-not-allowed', 'language-not-supported'])(
    'gives up one that says %s at once',
    async (error) => {
      const on = setUp();
      await on.listen();
      on.last().fails(error);
      expect(on.useless()).toBe(1);
    },
  );

  it('tells a microphone that is refused from one that is busy', async () => {
    const refused = setUp({ permission: 'denied' });
    await refused.listen();
    refused.last().fails('not-allowed');
    await settled();
    expect(refused.heard).toEqual([{ kind: 'deaf', why: 'refused' }]);
    const busy = setUp();
    await busy.listen();
    busy.last().fails('not-allowed');
    await settled();
    expect([busy.heard, busy.made.length]).toEqual([[], 1]);
    await busy.pass(250);
    busy.last().opens();
    busy.last().results(said('box 44'));
    busy.last().fire('end');
    await settled();
    expect(busy.words()).toEqual(['box 44']);
  });

  it('waits longer after each failure', async () => {
    const on = setUp();
    await on.listen();
    for (const waitMs of [250, 500, 1_000]) {
      const before = on.made.length;
      on.last().fails('audio-capture');
      await settled();
      await on.pass(waitMs - 1);
      expect(on.made).toHaveLength(before);
      await on.pass(1);
      expect(on.made).toHaveLength(before + 1);
    }
  });

  it('hears nothing of what was on its way when the ear was closed', async () => {
    const on = setUp();
    await on.listen();
    on.last().opens();
    on.ear.gate();
    on.last().results(said('late'));
    on.last().fire('end');
    await settled();
    expect(on.words()).toEqual([]);
  });

  it('closed, says when the microphone is free, also where the end never comes', async () => {
    for (const ends of [true, false]) {
      const on = setUp();
      await on.listen();
      on.last().opens();
      let free = false;
      void on.ear.close().then(() => {
        free = true;
      });
      await settled();
      expect(free).toBe(false);
      if (ends) on.last().fire('end');
      else on.clock.advance(1_500);
      await settled();
      expect(free).toBe(true);
    }
  });
});

describe('whether a browser has one', () => {
  it('is told by either name', () => {
    const { native } = scriptedNative();
    expect(nativeClassOf({ webkitSpeechRecognition: native })).toBe(native);
    expect(nativeClassOf({ SpeechRecognition: native })).toBe(native);
    expect(nativeClassOf({})).toBeNull();
  });

  it('on this device, only by a plain yes', async () => {
    const ask = (available?: () => Promise<string>) =>
      hearsOnDevice(scriptedNative(available).native, 'en-US');
    expect(await ask(() => Promise.resolve('available'))).toBe(true);
    expect(await ask(() => Promise.resolve('downloadable'))).toBe(false);
    expect(await ask(() => Promise.reject(new Error('policy')))).toBe(false);
    expect(await ask()).toBe(false);
  });
});

describe('the phrases that it is told to expect', () => {
  const NAMES = { ...NO_NAMES, sites: ['Harbor Street Deli'] };

  it('are those of what is asked, with the names of the day, anew for each sentence', async () => {
    const on = setUp({ phrasesFor: phraseHints });
    on.ear.listen('anything', NAMES);
    await settled();
    expect(on.last().phrases).toContainEqual({ phrase: 'harbor street deli', boost: 6 });
    expect(on.last().phrases).toContainEqual({ phrase: 'superheat', boost: 5 });
    on.last().fire('end');
    on.ear.listen('yesOrNo', NAMES);
    await on.pass(1_000);
    const phrases = on.last().phrases?.map(({ phrase }) => phrase);
    expect(phrases).toEqual(expect.arrayContaining(['yes', 'no', 'take that back']));
    expect(phrases).not.toContain('superheat');
  });

  it('are left out once the browser has said that it takes none, and it is not given up', async () => {
    const on = setUp({ phrasesFor: phraseHints });
    await on.listen();
    on.last().fails('phrases-not-supported');
    await on.pass(5_000);
    expect(on.made).toHaveLength(2);
    expect(on.last().phrases).toBeUndefined();
    expect(on.useless()).toBe(0);
    on.last().opens();
    on.last().results(said('head one ninety'));
    on.last().fire('end');
    await on.pass(0);
    expect(on.words()).toEqual(['head one ninety']);
  });

  it('are made by the browser’s own class, where it has one', () => {
    class Phrase {
      readonly phrase: string;
      readonly boost: number;
      constructor(phrase: string, boost: number) {
        this.phrase = phrase;
        this.boost = boost;
      }
    }
    const made = nativePhrases({ SpeechRecognitionPhrase: Phrase })?.(phraseHints('number'));
    expect(made?.[0]).toBeInstanceOf(Phrase);
    expect(made).toContainEqual(new Phrase('microfarads', 3));
    expect(nativePhrases({})).toBeNull();
  });
});
