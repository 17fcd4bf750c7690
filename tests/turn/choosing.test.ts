import { describe, expect, it } from 'vitest';
import type { Alternative } from '../../core/language/choose-understanding.ts';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Turn, type TurnInput } from '../../core/turn/turn.ts';
import { visitEventSchema } from '../../core/wire/event-schema.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import { createStamp } from '../support/stamp.ts';

type Said = TurnInput['words'];

function talk(...sentences: readonly Said[]): readonly Turn[] {
  const stamp = createStamp();
  return sentences.reduce<readonly Turn[]>((turns, words) => {
    const { state, memory } = turns.at(-1) ?? { state: EMPTY_VISIT, memory: EMPTY_MEMORY };
    return [...turns, takeTurn({ state, memory, words, stamp })];
  }, []);
}

function last(...sentences: readonly Said[]): Turn {
  const turn = talk(...sentences).at(-1);
  if (!turn) throw new Error('say at least one sentence');
  return turn;
}

/** As a recogniser that is sure of the first, less of each that follows. */
const heard = (...words: readonly string[]): readonly Alternative[] =>
  words.map((each, rank) => ({ words: each, confidence: 0.98 - rank * 0.3 }));
const at = (confidence: number, ...words: readonly string[]): readonly Alternative[] =>
  words.map((each) => ({ words: each, confidence }));

const readings = ({ state }: Turn) =>
  state.readings.map(({ reading: { quantity, value } }) => [quantity, value]);

describe('what a recogniser offers', () => {
  it('is chosen among by what it means, and the turn says why', () => {
    const turn = last(heard('suction nine hundred', 'suction nineteen'));
    expect(readings(turn)).toEqual([['suctionPressure', 19]]);
    expect(turn.utterance.text).toBe('suction nineteen');
    expect(turn.choice).toMatchObject({ because: 'plausible', chosen: { rank: 1 } });
    expect(turn.choice?.considered.map(({ words }) => words)).toEqual([
      'suction nine hundred',
      'suction nineteen',
    ]);
  });

  it('is nothing at all where it is empty', () => {
    expect(last([]).reply.text).toBe('I did not catch that. Say it again.');
  });

  it('needs no choice where the words were typed', () => {
    expect(last('head one ninety').choice).toBeNull();
  });
});

describe('a value just said no to', () => {
  const AGAIN = heard('head one fifty', 'head one fifteen');
  it.each([
    ['no'],
    ['no wait'],
    ['take that back'],
    ['not one fifty'],
    ['undo the head'],
    ['scratch the one fifty'],
  ])('by “%s” is taken back, and the next likeliest is offered in its place', (no) => {
    const [, refused, again] = talk(AGAIN, at(0.9, no), AGAIN);
    expect(refused?.reply.text).toMatch(/^Taken back: head 150/);
    expect(again?.choice).toMatchObject({ because: 'notRejected' });
    expect(again && readings(again)).toEqual([['headPressure', 115]]);
  });

  it('by amending it is not offered again either', () => {
    const turn = last(AGAIN, 'make it one sixty', heard('head one fifty', 'head one fifteen'));
    expect(readings(turn)).toEqual([
      ['headPressure', 160],
      ['headPressure', 115],
    ]);
  });

  it('is not kept when nothing else is offered, and is when it comes once more', () => {
    const only = heard('head one fifty');
    const [, , again, insisted] = talk(only, 'no', only, only);
    expect(again?.events).toEqual([]);
    expect(again?.reply).toMatchObject({
      text: '150 again? Say it once more to keep it, or say it another way.',
      earcon: 'again',
    });
    expect(insisted && readings(insisted)).toEqual([['headPressure', 150]]);
  });

  it('is taken when it is typed, and of another quantity', () => {
    expect(readings(last(heard('head one fifty'), 'no', 'head one fifty'))).toHaveLength(1);
    expect(readings(last(heard('head fifty'), 'no', heard('box fifty')))).toEqual([
      ['boxTemp', 50],
    ]);
  });

  it('is forgotten as soon as another value is kept', () => {
    const turn = last(AGAIN, 'no', heard('suction fourteen'), AGAIN);
    expect(readings(turn)).toEqual([
      ['suctionPressure', 14],
      ['headPressure', 150],
    ]);
  });

  it('is asked for where several were said back at once', () => {
    const turn = last(heard('head one ninety two suction fourteen'), heard('no'));
    expect(turn.reply.text).toBe('Which one? Say it with its name and the right number.');
    expect(readings(turn)).toHaveLength(2);
  });

  it('is the one just said back, not a question that waits from before', () => {
    const turn = last('head nine hundred', 'box forty four', 'no');
    expect(turn.reply.text).toMatch(/^Taken back: box 44/);
    expect(turn.state.doubts).toHaveLength(1);
  });
});

describe('the read-back policy', () => {
  const decided = (said: Said) => last(said).checked.map(({ readBack }) => readBack);

  it.each([
    ['typed words are kept', 'box fifteen', 'keep'],
    ['a certain one is said back', at(0.98, 'box fifteen'), 'readBack'],
    ['an unsure one that sounds like another is asked about', at(0.9, 'box fifteen'), 'askWhich'],
    ['an unsure one that sounds like no other is', at(0.96, 'box twenty four'), 'confirm'],
    ['the less so a less sure one', at(0.6, 'box twenty four'), 'confirm'],
    ['an unsure one that could be no other is', at(0.6, 'subcooling nineteen'), 'confirm'],
    ['where no chance is told, one is said back', at(0, 'box twenty four'), 'readBack'],
    [
      'where no chance is told, one that sounds like another is not',
      at(0, 'box fifteen'),
      'askWhich',
    ],
    [
      'one that the recogniser itself holds for nearly as likely is asked about',
      [...at(0.98, 'box fifteen'), ...at(0.9, 'box fifty')],
      'askWhich',
    ],
    [
      'one that it holds for much less likely is not',
      [...at(0.98, 'box fifteen'), ...at(0.6, 'box fifty')],
      'readBack',
    ],
    [
      'an offer that differs by more than a slip of the ear is not',
      [...at(0.98, 'box fifteen'), ...at(0.98, 'box twenty')],
      'readBack',
    ],
  ])('%s', (_why, said, readBack) => {
    expect(decided(said)[0]).toBe(readBack);
  });

  it('asks about the value in doubt alone, and keeps the rest of the breath', () => {
    const turn = last([
      ...at(0.7, 'head one ninety two box fifteen'),
      ...at(0.28, 'head one ninety two box fifty'),
    ]);
    expect(readings(turn)).toEqual([['headPressure', 192]]);
    expect(turn.reply.text).toBe('Head 192. Box 15, or 50?');
    expect(turn.reply.spoken).toContain('one five, 15, or five zero, 50?');
    expect(turn.expects).toBe('number');
  });

  it('offers the value that another alternative has in its place', () => {
    const turn = last([...at(0.6, 'head two sixty five'), ...at(0.3, 'head two fifty five')]);
    expect(turn.reply.text).toBe('Head 265, or 255?');
    expect(
      readings(
        last([...at(0.6, 'head two sixty five'), ...at(0.3, 'head two fifty five')], 'the second'),
      ),
    ).toEqual([['headPressure', 255]]);
  });

  it('keeps a value that is confirmed', () => {
    const turn = last(at(0.6, 'box twenty four'), heard('yes'));
    expect(readings(turn)).toEqual([['boxTemp', 24]]);
  });

  it('never asks twice about a value that is asked about anyway', () => {
    const turn = last(at(0.6, 'head nine hundred'));
    expect(turn.state.doubts.map(({ doubt }) => doubt.why)).toEqual(['outOfRange']);
  });

  it('does not put to choice what was said no to', () => {
    const turn = last(heard('box fifty'), 'no', at(0.6, 'box fifteen'));
    expect(turn.checked).toMatchObject([{ rivalry: 'none', readBack: 'confirm' }]);
    expect(turn.reply.text).toBe('Box 15? Say yes to keep it, or say it again.');
  });

  it('leaves events that a log can keep', () => {
    const turn = last(at(0.6, 'box fifteen'), heard('the second'));
    for (const event of turn.state.history) {
      expect(visitEventSchema.safeParse(event).error).toBeUndefined();
    }
  });
});

describe('what holds no value', () => {
  it('is not done where it was not surely said, and the value beside it is kept', () => {
    const turn = last([
      ...at(0.7, 'new visit ambient sixty two'),
      ...at(0.28, 'ambient sixty two'),
    ]);
    expect(turn.effect).toBeNull();
    expect(readings(turn)).toEqual([['ambientTemp', 62]]);
  });

  it.each(['mark this as after', 'condenser is plugged', 'new visit', 'what should head be'])(
    'is asked for again: “%s”',
    (words) => {
      const turn = last(at(0.7, words));
      expect(turn).toMatchObject({ events: [], verdicts: [], effect: null });
      expect(turn.reply.text).toBe('I did not catch that. Say it again.');
    },
  );

  it('is done where one thing was meant in two wordings, and where no chance is told', () => {
    const wordings = [...at(0.45, 'the condenser is plugged'), ...at(0.45, 'condenser is plugged')];
    expect(last(wordings).utterance.findings).toHaveLength(1);
    expect(last(at(0, 'condenser is plugged')).utterance.findings).toHaveLength(1);
  });
});

describe('a sentence of which every wording is unlikely', () => {
  it('has its values asked about, though every wording holds them', () => {
    const turn = last([
      ...at(0.55, 'head forty four current eight'),
      ...at(0.44, 'head forty four current nine'),
    ]);
    expect(turn.state.readings).toEqual([]);
    expect(turn.state.doubts).toHaveLength(2);
  });

  it('was not heard, whatever value they share', () => {
    const turn = last([
      ...at(0.2, 'head forty current eight'),
      ...at(0.2, 'head forty current nine'),
      ...at(0.2, 'head forty current two'),
    ]);
    expect(turn.events).toEqual([]);
    expect(turn.reply.text).toBe('I did not catch that. Say it again.');
  });
});

describe('“fifteen, or fifty?”', () => {
  const ASKED = at(0.6, 'box fifteen');
  it.each([
    ['the first', 15],
    ['yes', 15],
    ['fifteen', 15],
    ['not fifty', 15],
    ['the second', 50],
    ['the second one', 50],
    ['fifty', 50],
    ['make it fifty', 50],
    ['box fifty', 50],
    ['not fifteen', 50],
    ['no fifty', 50],
    ['forty four', null],
    ['box forty four', 44],
    ['make it forty four', 44],
  ])('is answered by “%s”', (answer, value) => {
    const turn = last(ASKED, heard(answer));
    expect(readings(turn)).toEqual(value === null ? [] : [['boxTemp', value]]);
    expect(turn.state.doubts).toHaveLength(value === null ? 1 : 0);
  });

  it('says back what was chosen, once', () => {
    expect(last(ASKED, heard('fifty')).reply.text).toBe('Box 50.');
    expect(last(ASKED, heard('the first')).reply.text).toBe('Box 15.');
  });

  it('is dropped by “no”, and neither is offered again', () => {
    const turn = last(ASKED, heard('no'), heard('box fifty', 'box fifteen', 'box forty four'));
    expect(readings(turn)).toEqual([['boxTemp', 44]]);
  });

  it('keeps the place and the unit of what was heard', () => {
    const turn = last(at(0.6, 'thirteen ohms common to run'), heard('the second'));
    expect(turn.state.readings[0]?.reading).toMatchObject({
      quantity: 'resistance',
      value: 30,
      unit: 'ohm',
      place: 'commonRun',
    });
  });

  it('can be taken back once it is answered', () => {
    expect(readings(last(ASKED, heard('the second'), 'take that back'))).toEqual([]);
    expect(readings(last(ASKED, heard('the first'), 'take that back'))).toEqual([]);
  });

  it('is what nobody asked, “the first” is only talk', () => {
    expect(last('box fifteen', 'the first').events).toEqual([]);
  });
});
