import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guard } from '../../core/replies/guard/guard.ts';
import { verdictSaid } from '../../core/replies/verdict-said.ts';
import { verdict } from './random-verdicts.ts';

const working = { kind: 'known', formula: null, inputs: [], source: null, cautions: [] } as const;

describe('the guard and the templates', () => {
  it('lets every template sentence of every verdict through', () => {
    fc.assert(
      fc.property(verdict, (one) => {
        const { text } = verdictSaid(one);
        expect({ text, ...guard(text, one) }).toEqual({ text, kind: 'passed' });
      }),
      { numRuns: 2000 },
    );
  });

  it('lets two timers of one name with as long to run through', () => {
    const office = { timer: { work: null, about: 'call the office' }, minutes: 8 } as const;
    for (const answer of ['timeLeft', 'timeUp'] as const) {
      const one = { ...working, answer, timers: [office, office] };
      const { text } = verdictSaid(one);
      expect({ text, ...guard(text, one) }).toEqual({ text, kind: 'passed' });
    }
  });
});
