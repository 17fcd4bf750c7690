import { describe, expect, it } from 'vitest';
import type { PassagePhraser } from '../../../core/note/phrase-note.ts';
import { takeTurn } from '../../../core/turn/take-turn.ts';
import '../../../core/turn/word-note.ts';
import { listening, settled } from '../scripted.ts';

/** A visit with a box temperature, finished with a phraser at hand. */
async function finished(phrasePassage: PassagePhraser['phrasePassage']) {
  const on = await listening({ takeTurn, passages: () => ({ phrasePassage }) });
  for (const words of ['box thirty eight', 'finish']) {
    on.voice.finish();
    await settled();
    on.runner.send({ kind: 'typed', words });
    await settled();
  }
  return on;
}

const WORDS = 'Inside we measured 38 °F.';

describe('the note at the finish', () => {
  it('is worded before "finished" is said, and kept in the log behind it', async () => {
    const on = await finished(({ kind, reader }) =>
      Promise.resolve(kind === 'box' && reader === 'customer' ? WORDS : null),
    );
    const { visit } = on.runner.session();
    expect(visit.worded).toEqual([{ reader: 'customer', kind: 'box', text: WORDS }]);
    expect(visit.history.slice(-2).map(({ type }) => type)).toEqual([
      'visitFinished',
      'noteWorded',
    ]);
    expect(on.voice.said.at(-1)).toContain('The note is ready');
  });

  it('waits a second and a half for its words, and no longer', async () => {
    const on = await finished(() => new Promise(() => undefined));
    expect(on.runner.session().visit.finishedAt).toBeNull();
    on.clock.advance(1500);
    await settled();
    expect(on.runner.session().visit.finishedAt).not.toBeNull();
    expect(on.runner.session().visit.worded).toEqual([]);
    expect(on.voice.said.at(-1)).toContain('The note is ready');
  });
});
