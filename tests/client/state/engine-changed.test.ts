import { describe, expect, it } from 'vitest';
import type { EngineChanged } from '../../../client/ear/ear.ts';
import { noticeWords, sayEngineChanged } from '../../../client/screens/words.ts';
import { listening, offered, settled } from '../scripted.ts';

const BETWEEN: EngineChanged = { kind: 'engineChanged', to: 'embedded', midSentence: false };
const IN_ONE: EngineChanged = { ...BETWEEN, midSentence: true };

describe('an engine that failed', () => {
  it('is told at once between two sentences, and the page listens on', async () => {
    const on = await listening();
    on.ear.hear(BETWEEN);
    await settled();
    expect(on.runner.session().mode.kind).toBe('speaking');
    expect([on.voice.said, on.ear.calls.at(-1)]).toEqual([['now by embedded.'], 'gate']);
    on.voice.finish();
    await settled();
    on.clock.advance(1000);
    await settled();
    expect([on.runner.session().mode.kind, on.ear.calls.at(-1)]).toEqual([
      'listening',
      'listen anything',
    ]);
    expect(on.runner.session().notice).toEqual({ kind: 'engineChanged', to: 'embedded' });
  });

  it('is told before the reply to the sentence in which it failed, which is kept', async () => {
    const on = await listening();
    on.ear.hear(IN_ONE);
    on.ear.hear(offered('140'));
    await settled();
    expect(on.voice.said).toEqual(['now by embedded. spoken 140']);
    expect(on.runner.session().visit.readings).toHaveLength(1);
    on.voice.finish();
    await settled();
    on.runner.send({ kind: 'typed', words: '150' });
    await settled();
    expect(on.voice.said.at(-1)).toBe('spoken 150');
  });

  it('is told with the next reply when the page was not listening', async () => {
    const on = await listening();
    on.runner.send({ kind: 'pressed' });
    on.ear.hear(BETWEEN);
    await settled();
    expect(on.voice.said).toEqual([]);
    on.runner.send({ kind: 'typed', words: '140' });
    await settled();
    expect(on.voice.said).toEqual(['now by embedded. spoken 140']);
  });

  it('is worded by what it means for the person, the same on the screen', () => {
    const words = sayEngineChanged('embedded');
    expect(words).toMatch(/mishears more/);
    expect(words).toMatch(/is kept/);
    expect(noticeWords({ kind: 'engineChanged', to: 'embedded' })).toBe(words);
  });
});
