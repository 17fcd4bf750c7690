import { describe, expect, it } from 'vitest';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Turn } from '../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import { createStamp } from '../support/stamp.ts';

/** Says the sentences one after the other and gives back every turn. */
function talk(...sentences: string[]): readonly Turn[] {
  const stamp = createStamp();
  return sentences.reduce<readonly Turn[]>((turns, words) => {
    const { state, memory } = turns.at(-1) ?? { state: EMPTY_VISIT, memory: EMPTY_MEMORY };
    return [...turns, takeTurn({ state, memory, words, stamp })];
  }, []);
}

const last = (...sentences: string[]): Turn => {
  const turn = talk(...sentences).at(-1);
  if (!turn) throw new Error('say at least one sentence');
  return turn;
};

const R134A = "it's a reach in on one thirty four a with a txv";

describe('one sentence through the whole core', () => {
  it('answers a question as soon as what it lacked is said, and not before', () => {
    const [, , asked, other, supplied] = talk(
      R134A,
      'suction eighteen',
      "what's my superheat",
      'ambient ninety',
      'suction line twenty nine',
    );
    expect(asked?.verdicts).toMatchObject([{ kind: 'needs', need: 'suctionLineTemp' }]);
    expect(other?.verdicts).toEqual([]);
    expect(supplied?.verdicts).toMatchObject([{ kind: 'known', about: 'superheat', unit: 'dF' }]);
  });

  it.each(['finish', 'finish anyway'])('does not end a finished visit again: “%s”', (words) => {
    const turn = last('box forty four', "that's it, finish", words);
    expect(turn.events).toEqual([]);
    expect(turn.reply.text).toBe('This visit is finished already. The note is ready.');
    expect(turn.effect).toBe('finish');
  });

  it.each(['finish', 'finish anyway'])('opens no visit in order to end it: “%s”', (words) => {
    const turn = last(words);
    expect(turn.events).toEqual([]);
    expect(turn.reply.text).toContain('There is no visit to finish yet.');
    expect(turn.effect).toBeNull();
  });

  it('takes a bare number for the reading it has just asked for', () => {
    const turn = last(R134A, 'suction eighteen', "what's my superheat", 'twenty nine');
    expect(turn.state.readings.at(-1)?.reading).toMatchObject({
      quantity: 'suctionLineTemp',
      value: 29,
    });
    expect(turn.verdicts).toMatchObject([{ kind: 'known', about: 'superheat' }]);
  });

  it('asks for one missing thing after the other until it can answer', () => {
    const turns = talk('what should head be', R134A, 'ambient eighty eight');
    expect(turns.map((turn) => turn.verdicts[0]?.kind)).toEqual(['needs', 'needs', 'known']);
  });

  it('says a thing again when asked to, word for word', () => {
    const [first, again] = talk('head one ninety two', 'say that again');
    expect(again?.reply).toEqual(first?.reply);
    expect(again?.events).toEqual([]);
  });

  it('keeps nothing of small talk, and says that nothing was caught', () => {
    const turn = last('nice weather for it');
    expect(turn.events).toEqual([]);
    expect(turn.state).toEqual(EMPTY_VISIT);
  });

  it('says a caution once, before the answer it belongs to', () => {
    const propane = talk(
      "it's a reach in on two ninety",
      'ambient eighty',
      'what should head be',
      'what should head be',
    );
    const warned = propane.map((turn) => /this refrigerant burns/.test(turn.reply.text));
    expect(warned.filter(Boolean)).toHaveLength(1);
  });

  it('reads the note out when asked and tells the page to show it', () => {
    const turn = last('box forty four', 'read me the note');
    expect(turn.effect).toBe('readNote');
    expect(turn.reply.text).toContain('The box was at 44 °F.');
  });
});
