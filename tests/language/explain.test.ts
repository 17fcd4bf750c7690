import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { explain } from '../../core/language/explain.ts';

const explained = (text: string) => explain(text, EMPTY_CONTEXT);

describe('why a sentence was understood as it was', () => {
  it('names each rule with its words, its tokens and what it found in them', () => {
    expect(explained('okay head one ninety, condenser is plugged').rules).toMatchObject([
      {
        shape: '[the] <quantity> <link> <amount>',
        words: 'head one ninety',
        from: 1,
        to: 4,
        tags: { quantity: 'headPressure', number: 190 },
      },
      { words: 'condenser is plugged', from: 4, to: 7 },
    ]);
  });

  it('tells what nearly read the rest, and what it missed', () => {
    const [nearest] = explained('how far off is my flux capacity').nearMisses;
    expect(nearest).toMatchObject({ read: 'how far off is my', stoppedAt: 'flux' });
    expect(nearest?.expected.length).toBeGreaterThan(0);
    const [cutShort] = explained('how close is head to').nearMisses;
    expect(cutShort).toMatchObject({ read: 'how close is head to', stoppedAt: null });
  });

  it('has nothing to tell where all is read or passed over', () => {
    expect(explained('uh head one ninety').nearMisses).toEqual([]);
    expect(explained('').nearMisses).toEqual([]);
  });
});
