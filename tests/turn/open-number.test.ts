import { describe, expect, it } from 'vitest';
import type { Turn } from '../../core/turn/turn.ts';
import { last } from '../support/last-turn.ts';

const readings = ({ state }: Turn) =>
  state.readings.map(({ reading: { quantity, value } }) => [quantity, value]);

describe('a number of which it was asked what it is of', () => {
  it('is answered by a name alone, and no longer open', () => {
    const turn = last('seventy', "that's the ambient");
    expect(readings(turn)).toEqual([['ambientTemp', 70]]);
    expect(turn.state.leftOver).toEqual([]);
  });

  it('is answered by where it was metered', () => {
    const turn = last('twenty four', 'across the contactor');
    expect(turn.state.readings[0]?.reading).toMatchObject({ value: 24, place: 'contactor' });
  });

  it('is not taken for either of two, nor once something else was told', () => {
    expect(readings(last('twenty nine and thirty three', 'ambient'))).toEqual([]);
    expect(readings(last('seventy', 'head one ninety', 'ambient'))).toEqual([
      ['headPressure', 190],
    ]);
  });
});

describe('the charge that a unit will need', () => {
  it('is recommended, said in one clause, and not kept as added', () => {
    const turn = last('needs a valve, a drier and about four pounds');
    expect(turn.reply.text).toContain('To recommend: add about four pounds.');
    expect(turn.state.readings).toEqual([]);
  });
});
