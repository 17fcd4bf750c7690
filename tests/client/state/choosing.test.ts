import { describe, expect, it } from 'vitest';
import { takeTurn } from '../../../core/turn/take-turn.ts';
import type { TurnInput } from '../../../core/turn/turn.ts';
import { noticeWords } from '../../../client/screens/words.ts';
import { listening, offered, settled, stage, type Stage } from '../scripted.ts';

async function say(on: Stage, words: string): Promise<void> {
  on.ear.hear(offered(words));
  await settled();
}

/** The voice is done and the room's echo is over. */
async function spoken(on: Stage): Promise<void> {
  on.voice.finish();
  await settled();
  on.clock.advance(1_000);
  await settled();
}

describe('what the recogniser offers', () => {
  const fifteenOrFifty = {
    kind: 'words',
    alternatives: [
      { words: 'box fifteen', confidence: 0.52 },
      { words: 'box fifty', confidence: 0.46 },
    ],
  } as const;

  it('goes to the core whole, and the likeliest is shown meanwhile', async () => {
    const given: TurnInput['words'][] = [];
    const on = await listening({
      takeTurn: (input) => {
        given.push(input.words);
        return takeTurn(input);
      },
    });
    on.ear.hear(fifteenOrFifty);
    expect(on.runner.session().mode).toMatchObject({ kind: 'thinking', words: 'box fifteen' });
    expect(given).toEqual([fifteenOrFifty.alternatives]);
  });

  it('is asked about as a choice, listened to as a number, and answered by a press or by voice', async () => {
    for (const answer of ['press', 'voice'] as const) {
      const on = await listening({ takeTurn });
      on.ear.hear(fifteenOrFifty);
      await settled();
      await spoken(on);
      expect(on.runner.session().mode).toMatchObject({
        kind: 'asking',
        question: { of: { doubt: { value: 15, or: 50 } } },
      });
      expect(on.ear.calls.at(-1)).toBe('listen number');
      if (answer === 'press') on.runner.send({ kind: 'typed', words: '50' });
      else on.ear.hear(offered('the second'));
      await settled();
      const { visit } = on.runner.session();
      expect(visit.readings.map(({ reading }) => reading.value)).toEqual([50]);
      expect(visit.doubts).toEqual([]);
    }
  });

  it('is not offered again when it was just said no to', async () => {
    const on = await listening({ takeTurn });
    for (const words of ['head one fifty', 'no']) {
      await say(on, words);
      await spoken(on);
    }
    on.ear.hear(offered('head one fifty', 'head one fifteen'));
    await settled();
    const { visit } = on.runner.session();
    expect(visit.readings.map(({ reading }) => reading.value)).toEqual([115]);
  });
});

describe('a choice of this device that the browser does not store', () => {
  it('is told once for as long as the page lives', () => {
    const on = stage();
    on.runner.send({ kind: 'choiceForgotten' });
    const { notice } = on.runner.session();
    expect(notice && noticeWords(notice)).toMatch(/^This browser did not store what you chose/);
    on.runner.send({ kind: 'typedTooLong', words: 900, most: 500 });
    on.runner.send({ kind: 'choiceForgotten' });
    expect(on.runner.session().notice).toMatchObject({ kind: 'tooLong' });
  });
});
