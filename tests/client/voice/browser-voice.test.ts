import { describe, expect, it } from 'vitest';
import { createVoice } from '../../../client/voice/browser-voice.ts';
import { handClock, settled } from '../scripted.ts';

class Utterance extends EventTarget implements SpeechSynthesisUtterance {
  lang = '';
  onboundary = null;
  onend: ((event: SpeechSynthesisEvent) => void) | null = null;
  onerror: ((event: SpeechSynthesisErrorEvent) => void) | null = null;
  onmark = null;
  onpause = null;
  onresume = null;
  onstart = null;
  pitch = 1;
  rate = 1;
  text: string;
  voice: SpeechSynthesisVoice | null = null;
  volume = 1;

  constructor(text: string) {
    super();
    this.text = text;
  }
}

const voiceNamed = (name: string, localService: boolean, lang = 'en-US'): SpeechSynthesisVoice => ({
  name,
  localService,
  lang,
  default: false,
  voiceURI: name,
});

function setUp(voices: readonly SpeechSynthesisVoice[], broken = false) {
  const spoken: Utterance[] = [];
  const made: Utterance[] = [];
  const clock = handClock();
  let cancelled = 0;
  const voice = createVoice({
    clock,
    utteranceOf: (text) => {
      const utterance = new Utterance(text);
      made.push(utterance);
      return utterance;
    },
    synthesis: {
      getVoices: () => [...voices],
      speak: (utterance) => {
        if (broken) throw new Error('no synthesiser here');
        const one = made.find((other) => other === utterance);
        if (one) spoken.push(one);
      },
      cancel: () => {
        cancelled += 1;
      },
      resume: () => undefined,
    },
  });
  let over = false;
  const say = (text: string): void => {
    over = false;
    void voice.speak(text).then(() => {
      over = true;
    });
  };
  const end = async (): Promise<void> => {
    endOf(spoken.at(-1));
    await settled();
  };
  return { voice, spoken, clock, say, end, over: () => over, cancelled: () => cancelled };
}

/** The handler is called as a browser would: it takes no notice of the event. */
function endOf(utterance: Utterance | undefined): void {
  const ended: unknown = utterance?.onend;
  if (typeof ended === 'function') Reflect.apply(ended, utterance, []);
}

const LOCAL = voiceNamed('on the device', true);
const REMOTE = voiceNamed('far away', false);

describe('the voice', () => {
  it('is one on the device, never one that would send the words away', () => {
    const { say, spoken } = setUp([REMOTE, voiceNamed('autre', true, 'fr-FR'), LOCAL]);
    say('Head 192.');
    expect(spoken.map(({ voice }) => voice?.name)).toEqual(['on the device']);
  });

  it('is absent where only remote ones are', () => {
    expect(setUp([REMOTE]).voice.canSpeak()).toBe(false);
    expect(setUp([]).voice.canSpeak()).toBe(false);
  });

  it('says a long text breath by breath and is over after the last', async () => {
    const { say, spoken, end, over } = setUp([LOCAL]);
    say('Head 192. Suction 14.\nBox 44.');
    await end();
    await end();
    expect(over()).toBe(false);
    await end();
    expect(over()).toBe(true);
    expect(spoken.map(({ text }) => text)).toEqual(['Head 192.', 'Suction 14.', 'Box 44.']);
  });

  it('counts as over when its end never comes', async () => {
    const { say, over, clock, cancelled } = setUp([LOCAL]);
    say('Head one nine two.');
    await settled();
    expect(over()).toBe(false);
    clock.advance(10_000);
    await settled();
    expect(over()).toBe(true);
    expect(cancelled()).toBe(1);
  });

  it('is over where the synthesiser throws', async () => {
    const on = setUp([voiceNamed('local', true)], true);
    on.say('One. Two.');
    await settled();
    expect(on.over()).toBe(true);
  });

  it('hushed is over at once, and says no further breath', async () => {
    const { say, over, voice, spoken } = setUp([LOCAL]);
    say('Head 192. Suction 14.');
    voice.hush();
    await settled();
    expect(over()).toBe(true);
    expect(spoken).toHaveLength(1);
  });

  it('without voices is over at once', async () => {
    const { say, over } = setUp([]);
    say('Head 192.');
    await settled();
    expect(over()).toBe(true);
  });
});
