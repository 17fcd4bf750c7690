import { describe, expect, it } from 'vitest';
import { listening, offered, settled } from '../scripted.ts';

describe('words of a sentence that is still being said', () => {
  it('stand on the page until the sentence is heard, and are never acted on', async () => {
    const on = await listening({ audible: false });
    on.ear.hear({ kind: 'guess', words: '1' });
    on.ear.hear({ kind: 'guess', words: '14' });
    expect([on.runner.session().soFar, on.runner.session().mode.kind]).toEqual(['14', 'listening']);
    on.ear.hear(offered('140'));
    await settled();
    expect(on.runner.session().soFar).toBe('');
    expect(on.appended.flat().filter(({ type }) => type === 'readingTaken')).toHaveLength(1);
    expect(on.runner.session().visit.readings.at(-1)?.reading.value).toBe(140);
  });

  it('are gone when nothing could be made of them, and on hold', async () => {
    const on = await listening();
    on.ear.hear({ kind: 'guess', words: 'box' });
    on.ear.hear({ kind: 'unclear' });
    expect(on.runner.session().soFar).toBe('');
    on.ear.hear({ kind: 'guess', words: 'box' });
    on.runner.send({ kind: 'pressed' });
    on.ear.hear({ kind: 'guess', words: 'box forty' });
    expect(on.runner.session().soFar).toBe('');
  });
});
