import { describe, expect, it } from 'vitest';
import type { Phraser } from '../../../core/replies/phrasing.ts';
import { takeTurn } from '../../../core/turn/take-turn.ts';
// Fetched with the first wording in the page: here it is there already.
import '../../../core/turn/phrase-reply.ts';
import { listening, settled } from '../scripted.ts';

const SUCTION = 'Right now suction reads 18 psi.';

/** A visit in which suction was read, asked for with a phraser at hand. */
async function asked(phraser: Phraser | null) {
  const on = await listening({ takeTurn, phraser: () => phraser });
  const say = async (words: string) => {
    on.runner.send({ kind: 'typed', words });
    await settled();
  };
  await say('suction eighteen');
  on.voice.finish();
  await settled();
  await say('what is suction');
  return { ...on, say };
}

describe('an answer in the words of a phraser', () => {
  it('is spoken and shown, and said again so', async () => {
    const on = await asked({ phrase: () => Promise.resolve(SUCTION) });
    expect(on.voice.said.at(-1)).toBe('Right now suction reads 18 P S I.');
    expect(on.runner.session().memory.lastReply?.text).toBe(SUCTION);
    await on.say('say that again');
    expect(on.voice.said.at(-1)).toBe('Right now suction reads 18 P S I.');
  });

  it.each<[string, Phraser | null]>([
    ['there is none', null],
    ['it fails', { phrase: () => Promise.reject(new Error('the worker is gone')) }],
    [
      'it says something else',
      { phrase: () => Promise.resolve('Right now suction reads 19 psi.') },
    ],
  ])('is the template where %s', async (_, phraser) => {
    const on = await asked(phraser);
    expect(on.voice.said.at(-1)).toBe('Suction is 18 P S I.');
  });

  it('is the template where it is late, and nobody waits longer than a quarter of a second', async () => {
    const on = await asked({ phrase: () => new Promise(() => undefined) });
    expect(on.runner.session().mode.kind).toBe('thinking');
    on.clock.advance(250);
    await settled();
    expect(on.voice.said.at(-1)).toBe('Suction is 18 P S I.');
  });
});
