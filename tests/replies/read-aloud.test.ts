import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Known } from '../../core/advice/verdict.ts';
import { isRephrasable } from '../../core/replies/guard/phrase-or.ts';
import { readAloud } from '../../core/replies/guard/read-aloud.ts';
import { verdictSaid } from '../../core/replies/verdict-said.ts';
import { verdict } from './random-verdicts.ts';

const known = { kind: 'known', formula: null, inputs: [], source: null, cautions: [] } as const;

const VACUUM: Known = {
  ...known,
  answer: 'value',
  about: 'suctionPressure',
  value: -4,
  unit: 'inHg',
  place: null,
  at: null,
};
const SATURATION: Known = {
  ...known,
  answer: 'saturation',
  refrigerant: 'R-404A',
  given: { value: -10, unit: 'degF' },
  value: 24.3,
  unit: 'psi',
  phase: 'dew',
};
const ROWS: Known = {
  ...known,
  answer: 'readback',
  rows: [
    { about: 'suctionLineTemp', place: null, value: 41, unit: 'degF' },
    { about: 'ambientTemp', place: null, value: 141, unit: 'degF' },
    { about: 'boxTemp', place: null, value: 1, unit: 'degF' },
  ],
};

describe('a phrasing read aloud', () => {
  it.each([
    ['Suction reads -4 inHg.', 'Suction reads 4 inches of vacuum.', VACUUM],
    ['Suction reads -4inHg.', 'Suction reads 4 inches of vacuum.', VACUUM],
    ['Suction reads -4 inches.', 'Suction reads 4 inches of vacuum.', VACUUM],
    [
      'At -10 °F r-404a reads 24.3 psi.',
      'At minus 10 degrees R four oh four A reads 24.3 P S I.',
      SATURATION,
    ],
    ['Box 1 °F, ambient 141 °F.', 'Box 1 degree, ambient 141 degrees.', ROWS],
    ['Suction line 41, box 1.', 'Suction line 41, box 1.', ROWS],
    ['Suction reads -4.', 'Suction reads minus 4.', VACUUM],
  ])('%s', (sentence, spoken, one) => {
    expect(readAloud(sentence, one)).toBe(spoken);
  });

  it.each([VACUUM, SATURATION, ROWS])(
    'reads the template of a $answer as the template itself is spoken',
    (one) => {
      const { text, spoken } = verdictSaid(one);
      expect(readAloud(text, one)).toBe(spoken);
    },
  );

  it('reads the template of any verdict as the template itself is spoken', () => {
    fc.assert(
      fc.property(verdict.filter(isRephrasable), (one) => {
        const { text, spoken } = verdictSaid(one);
        expect(readAloud(text, one)).toBe(spoken);
      }),
      { numRuns: 2000 },
    );
  });
});
