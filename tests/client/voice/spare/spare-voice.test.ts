import { describe, expect, it } from 'vitest';

import type { FromVoice, ToVoice } from '../../../../client/voice/spare/protocol.ts';
import { createSpareVoice } from '../../../../client/voice/spare/spare-voice.ts';
import type { Voice } from '../../../../client/voice/voice.ts';
import { createVoiceOfBoth } from '../../../../client/voice/voice-of-both.ts';
import { handClock, settled } from '../../scripted.ts';

const SOUND = { samples: new Float32Array(16), rateHz: 16_000 };

function setUp() {
  const clock = handClock();
  const posted: ToVoice[] = [];
  const events: string[] = [];
  let answer: (message: FromVoice) => void = () => undefined;
  let crash: () => void = () => undefined;
  let end: () => void = () => undefined;
  const voice = createSpareVoice(
    {
      clock,
      openWorker: () => ({
        post: (message) => posted.push(message),
        listen: (onMessage, onCrash) => {
          answer = onMessage;
          crash = onCrash;
        },
      }),
      createPlayer: () => ({
        unlock: () => void events.push('unlock'),
        play: () => {
          events.push('play');
          let over: () => void = () => undefined;
          const ended = new Promise<void>((resolve) => {
            over = resolve;
          });
          end = over;
          return {
            over: ended,
            stop: () => {
              events.push('stop');
              over();
            },
          };
        },
      }),
    },
    'voice.wasm',
  );
  const ready = (): void => {
    voice.unlock();
    voice.load();
    answer({ kind: 'loaded' });
  };
  const speak = (text: string) => {
    const state = { done: false };
    void voice.speak(text).then(() => {
      state.done = true;
    });
    return state;
  };
  return {
    voice,
    clock,
    posted,
    events,
    ready,
    speak,
    texts: () => posted.flatMap((each) => (each.kind === 'say' ? [each.text] : [])),
    tell: (message: FromVoice) => answer(message),
    crash: () => crash(),
    end: async () => {
      end();
      await settled();
    },
  };
}

const said = (request: number, sound: typeof SOUND | null = SOUND): FromVoice => ({
  kind: 'said',
  request,
  sound,
});

describe('the spare voice', () => {
  it('can speak once it is loaded and sound is allowed, and is fetched once', () => {
    const on = setUp();
    expect(on.voice.canSpeak()).toBe(false);
    on.ready();
    on.voice.load();
    expect(on.voice.canSpeak()).toBe(true);
    expect(on.posted).toEqual([{ kind: 'load', url: 'voice.wasm' }]);
  });

  it('says breath by breath, the next one made while one is heard', async () => {
    const on = setUp();
    on.ready();
    const speech = on.speak('Head 252. Suction 24.');
    expect(on.texts()).toEqual(['Head 252.']);
    on.tell(said(1));
    await settled();
    expect([on.texts(), on.events]).toEqual([
      ['Head 252.', 'Suction 24.'],
      ['unlock', 'play'],
    ]);
    on.tell(said(2));
    await on.end();
    expect([on.events.length, speech.done]).toEqual([3, false]);
    await on.end();
    expect(speech.done).toBe(true);
  });

  it('stops at once when it is hushed, and says no more of it', async () => {
    const on = setUp();
    on.ready();
    const speech = on.speak('Head 252. Suction 24.');
    on.tell(said(1));
    await settled();
    on.voice.hush();
    on.tell(said(2));
    await settled();
    expect([on.events, speech.done]).toEqual([['unlock', 'play', 'stop'], true]);
  });

  it('gives the ear back whatever becomes of it', async () => {
    for (const trouble of ['failed', 'overdue', 'crashed'] as const) {
      const on = setUp();
      on.ready();
      const speech = on.speak('Head 252.');
      if (trouble === 'failed') on.tell(said(1, null));
      if (trouble === 'overdue') on.clock.advance(8_000);
      if (trouble === 'crashed') on.crash();
      await settled();
      expect([trouble, speech.done, on.events]).toEqual([trouble, true, ['unlock']]);
      expect(on.voice.canSpeak()).toBe(trouble !== 'crashed');
    }
  });

  it('counts as over, and is stopped, where the sound was taken away before its end', async () => {
    const on = setUp();
    on.ready();
    const speech = on.speak('Head 252.');
    on.tell(said(1));
    await settled();
    on.clock.advance(2_000);
    await settled();
    expect([on.events, speech.done]).toEqual([['unlock', 'play'], false]);
    on.clock.advance(1);
    await settled();
    expect([on.events, speech.done]).toEqual([['unlock', 'play', 'stop'], true]);
  });

  it('that did not come is fetched again when it is asked for again', () => {
    const on = setUp();
    on.voice.unlock();
    on.voice.load();
    on.tell({ kind: 'loadFailed', message: 'no network' });
    expect(on.voice.canSpeak()).toBe(false);
    on.voice.load();
    expect(on.posted).toHaveLength(2);
  });
});

describe('the browser’s voice and the spare one', () => {
  function both({ has = false, wants = true } = {}) {
    const on = setUp();
    const said: string[] = [];
    const browser = { has, said };
    const browsers: Voice = {
      canSpeak: () => browser.has,
      speak: (text) => {
        browser.said.push(text);
        return Promise.resolve();
      },
      hush: () => undefined,
      unlock: () => undefined,
    };
    const voice = createVoiceOfBoth({
      browsers,
      spare: on.voice,
      wantsSpare: () => wants,
      clock: on.clock,
    });
    return { ...on, voice, browser };
  }

  it('is the browser’s where it has one, also when it names it late, and nothing is fetched', async () => {
    const on = both();
    on.voice.unlock();
    on.browser.has = true;
    on.clock.advance(2_000);
    on.voice.unlock();
    expect(on.posted).toEqual([]);
    await on.voice.speak('Box 44.');
    expect(on.browser.said).toEqual(['Box 44.']);
  });

  it('is the spare one where it has none, and until that is there replies are shown only', async () => {
    const on = both();
    on.voice.unlock();
    expect(on.posted).toEqual([]);
    on.clock.advance(2_000);
    expect([on.posted.length, on.voice.canSpeak()]).toEqual([1, false]);
    await on.voice.speak('Box 43.');
    on.tell({ kind: 'loaded' });
    expect(on.voice.canSpeak()).toBe(true);
    void on.voice.speak('Box 44.');
    expect(on.texts()).toEqual(['Box 44.']);
  });

  it('is none where the spare one is not wanted', () => {
    const on = both({ wants: false });
    on.voice.unlock();
    on.clock.advance(2_000);
    on.voice.unlock();
    expect([on.posted, on.voice.canSpeak()]).toEqual([[], false]);
  });
});
