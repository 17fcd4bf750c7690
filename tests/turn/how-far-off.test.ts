import { describe, expect, it } from 'vitest';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Turn } from '../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import { createStamp } from '../support/stamp.ts';

/** What is told in one sentence is told at one moment, the next a minute later. */
function after(...said: readonly string[]): Turn {
  const stamp = createStamp();
  const opened: Pick<Turn, 'state' | 'memory'> = { state: EMPTY_VISIT, memory: EMPTY_MEMORY };
  const turns = said.reduce<readonly Turn[]>((before, words, minute) => {
    const at = 1_700_000_000_000 + minute * 60_000;
    const turn = takeTurn({
      ...(before.at(-1) ?? opened),
      words,
      stamp: (body) => ({ ...stamp(body), at }),
    });
    return [...before, turn];
  }, []);
  const last = turns.at(-1);
  if (last === undefined) throw new Error('nothing was said');
  return last;
}

const UNIT = "it's a walk in cooler on four oh four a with a txv";

describe('how far off am I', () => {
  // R-404A at 95 °F condenses 20 °F over the air of 75: 219 psi; 10 °F under a box of 36 the coil is at 26 °F: 58 psi.
  it('is told of what has a target, what is off before what is right', () => {
    const read = [
      UNIT,
      'ambient seventy five, head two nineteen, suction thirty, box thirty six',
    ] as const;
    const turn = after(...read, 'liquid line eighty five', 'how far off am i');
    expect(turn.verdicts.at(-1)).toMatchObject({
      answer: 'compare',
      about: 'suctionPressure',
      direction: 'under',
    });
    expect(turn.reply.text).not.toMatch(/target for liquid line/i);
  });

  it('stays with what was spoken of, where that has a target', () => {
    const turn = after(UNIT, 'ambient seventy five', 'head two sixty', 'how far off am i');
    expect(turn.verdicts.at(-1)).toMatchObject({ about: 'headPressure', direction: 'over' });
  });

  it('says that there is none where nothing has one', () => {
    const turn = after(UNIT, 'liquid line eighty five', 'how far off am i');
    expect(turn.verdicts.at(-1)).toMatchObject({ kind: 'refused', reason: 'noTargetKnown' });
  });

  it('is told of each that was read in one breath, where more than one is meant', () => {
    const read = [UNIT, 'ambient seventy five, box thirty six'] as const;
    const both = after(...read, 'head two nineteen, suction thirty', 'how far off are those');
    expect(both.verdicts).toMatchObject([
      { answer: 'compare', about: 'headPressure' },
      { answer: 'compare', about: 'suctionPressure', direction: 'under' },
    ]);
    const wanted = after(...read, 'head two nineteen, suction thirty', 'what should those be');
    expect(wanted.verdicts).toMatchObject([
      { answer: 'target', about: 'headPressure' },
      { answer: 'target', about: 'suctionPressure' },
    ]);
    const alone = after(...read, 'head two nineteen', 'what should they be');
    expect(alone.verdicts).toMatchObject([{ answer: 'target', about: 'headPressure' }]);
  });
});
