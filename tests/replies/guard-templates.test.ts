import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guard } from '../../core/replies/guard/guard.ts';
import { verdictSaid } from '../../core/replies/verdict-said.ts';
import { verdict } from './random-verdicts.ts';

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
});
