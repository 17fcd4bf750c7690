import { describe, expect, it } from 'vitest';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY } from '../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import { createStamp } from '../support/stamp.ts';

function keptOf(words: string): readonly string[] {
  const turn = takeTurn({
    state: EMPTY_VISIT,
    memory: EMPTY_MEMORY,
    words,
    stamp: createStamp(),
  });
  return turn.state.memos.map(({ memo }) => memo);
}

describe('what is kept of a sentence that is not understood whole', () => {
  it.each([
    ["power's back on, i put the clock in defrost by hand", 'i put the clock in defrost by hand'],
    [
      'defrost is set for four a day, forty minutes',
      'defrost is set for four a day, forty minutes',
    ],
    ['screen at the valve inlet is clean', 'screen at the valve inlet is clean'],
    ['locked it out and proved it dead', 'locked it out and proved it dead'],
    [
      'opened it up and the evaporator is a solid block of ice',
      'opened it up and the evaporator is a solid block of ice',
    ],
    [
      'nothing was wrong with the refrigeration, it was the door',
      'nothing was wrong with the refrigeration, it was the door',
    ],
    ["coil's clean, no ice, just frosted right at the valve", 'just frosted right at the valve'],
    [
      'box thirty six and it just cycled off on the stat',
      'box thirty six and it just cycled off on the stat',
    ],
  ])('has its subject: %s', (said, kept) => {
    expect(keptOf(said)).toEqual([kept]);
  });

  it('is no more than the piece where that says what it is of', () => {
    expect(
      keptOf("both evaporator fans are running but there's hardly any air coming through"),
    ).toEqual(["there's hardly any air coming through"]);
    expect(keptOf('head one ninety two, the fan guard has a bent corner')).toEqual([
      'the fan guard has a bent corner',
    ]);
  });

  it('takes nothing of what was asked beside it', () => {
    const [kept = ''] = keptOf("straightened the kick plate, what's my superheat");
    expect(kept).toBe('straightened the kick plate');
  });
});
