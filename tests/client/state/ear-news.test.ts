import { describe, expect, it } from 'vitest';
import { noticeWords, sayEarNews } from '../../../client/screens/words.ts';
import { listening, settled } from '../scripted.ts';

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
