import { describe, expect, it } from 'vitest';
import { DEAF_WORDS, noticeWords, sayEarNews } from '../../../client/screens/words.ts';
import { listening, offered, settled } from '../scripted.ts';

describe('a microphone that gives nothing', () => {
  it('is told aloud with what to do, and the page listens on', async () => {
    const on = await listening();
    on.ear.hear({ kind: 'news', news: 'silent' });
    await settled();
    expect([on.voice.said, on.ear.calls.at(-1)]).toEqual([['the ear is silent.'], 'gate']);
    on.voice.finish();
    await settled();
    on.clock.advance(1000);
    await settled();
    expect(on.ear.calls.at(-1)).toBe('listen anything');
    expect(on.runner.session().notice).toEqual({ kind: 'earNews', news: 'silent' });
  });

  it('is only shown while something else goes on', async () => {
    const on = await listening();
    on.runner.send({ kind: 'pressed' });
    on.ear.hear({ kind: 'news', news: 'silent' });
    await settled();
    expect(on.voice.said).toEqual([]);
    expect(on.runner.session().mode.kind).toBe('paused');
    expect(on.runner.session().notice).toEqual({ kind: 'earNews', news: 'silent' });
  });

  it('is worded the same on the screen, with a thing to do', () => {
    expect(sayEarNews('silent')).toMatch(/muted\?/);
    expect(noticeWords({ kind: 'earNews', news: 'back' })).toBe(sayEarNews('back'));
  });
});

describe('a page that was out of sight', () => {
  it('says by its tone and on the screen that it listens again, and nothing aloud', async () => {
    const on = await listening();
    const tones = on.tones.length;
    on.ear.hear({ kind: 'news', news: 'back' });
    await settled();
    expect([on.voice.said, on.tones.slice(tones)]).toEqual([[], ['listening']]);
    expect(on.runner.session().mode.kind).toBe('listening');
    expect(on.runner.session().notice).toEqual({ kind: 'earNews', news: 'back' });
  });
});

describe('sound that a call took', () => {
  const cutOff = { kind: 'deaf', why: 'interrupted' } as const;

  it('is told, and heard again by itself once it is back, with a tone', async () => {
    const on = await listening();
    on.ear.hear(cutOff);
    expect(on.runner.session().mode).toEqual(cutOff);
    const [calls, tones] = [on.ear.calls.length, on.tones.length];
    on.ear.hear({ kind: 'soundBack' });
    expect(on.runner.session().mode.kind).toBe('listening');
    expect(on.ear.calls.slice(calls)).toEqual(['listen anything']);
    expect(on.tones.slice(tones)).toEqual(['listening']);
    expect(on.runner.session().notice).toEqual({ kind: 'earNews', news: 'soundBack' });
  });

  it('leaves on hold who was on hold: nothing but the word to go on is heeded', async () => {
    const on = await listening({ audible: false });
    on.ear.hear(offered('pause'));
    await settled();
    on.ear.hear(cutOff);
    expect(on.runner.session().mode).toEqual({ ...cutOff, onHold: true });
    const tones = on.tones.length;
    on.ear.hear({ kind: 'soundBack' });
    expect(on.runner.session().mode).toEqual({ kind: 'paused', by: 'voice' });
    expect(on.ear.calls.at(-1)).toBe('listen anything');
    expect(on.tones).toHaveLength(tones);
  });

  it('asks again what was asked', async () => {
    const on = await listening({ audible: false });
    on.ear.hear(offered('doubt'));
    await settled();
    on.ear.hear(cutOff);
    expect(on.runner.session().mode).toMatchObject({ kind: 'asking', ear: cutOff });
    on.ear.hear({ kind: 'soundBack' });
    expect(on.runner.session().mode).toMatchObject({ kind: 'asking', ear: { kind: 'open' } });
    expect(on.ear.calls.at(-1)).toBe('listen yesOrNo');
  });

  it('opens no ear that is deaf for another reason', async () => {
    const on = await listening();
    on.ear.hear({ kind: 'deaf', why: 'takenAway' });
    on.ear.hear({ kind: 'soundBack' });
    expect(on.runner.session().mode).toEqual({ kind: 'deaf', why: 'takenAway' });
  });

  it('is worded with what to do', () => {
    expect(DEAF_WORDS.interrupted.sentence).toMatch(/press here.*type below/);
    expect(sayEarNews('soundBack')).toMatch(/heard nothing\. I hear again/);
  });
});
