import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Known, Verdict } from '../../core/advice/verdict.ts';
import { guard } from '../../core/replies/guard/guard.ts';
import { phraseOr } from '../../core/replies/guard/phrase-or.ts';
import { verdictSaid } from '../../core/replies/verdict-said.ts';
import { plainKnown } from './random-verdicts.ts';

const working = { kind: 'known', formula: null, inputs: [], source: null, cautions: [] } as const;

const HEAD_OVER: Known = {
  ...working,
  answer: 'compare',
  basis: 'table',
  about: 'headPressure',
  measured: 192,
  target: 171,
  measuredUnit: 'psi',
  value: 21,
  unit: 'psi',
  direction: 'over',
  alongside: { about: 'condensingTemp', value: 8.5, unit: 'dF', direction: 'over' },
};
const SUPERHEAT_ON: Known = {
  ...working,
  answer: 'compare',
  basis: 'table',
  about: 'superheat',
  measured: 9,
  target: 10,
  measuredUnit: 'dF',
  value: 1,
  unit: 'dF',
  direction: 'on',
};
const HEAD_TARGET: Known = {
  ...working,
  answer: 'target',
  about: 'headPressure',
  value: 171,
  unit: 'psi',
  basis: 'ambientPlusSplit',
  through: { about: 'condensingTemp', value: 118, unit: 'degF' },
  reading: { measured: 192, value: 21, unit: 'psi', direction: 'over' },
};
const SATURATION: Known = {
  ...working,
  answer: 'saturation',
  refrigerant: 'R-134a',
  given: { value: 110, unit: 'degF' },
  value: 146,
  unit: 'psi',
  phase: 'dew',
};
const GLIDE: Known = { ...SATURATION, refrigerant: 'R-449A', value: 240, bubble: 262 };
const MARGIN: Known = {
  ...working,
  answer: 'margin',
  about: 'highCutoutPressure',
  measured: 192,
  limit: 400,
  value: 208,
  unit: 'psi',
  side: 'inside',
};
const CHANGE: Known = {
  ...working,
  answer: 'beforeAfter',
  rows: [
    {
      about: 'headPressure',
      place: null,
      before: 192,
      after: 158,
      unit: 'psi',
      change: -34,
      changeUnit: 'psi',
    },
    {
      about: 'boxTemp',
      place: null,
      before: 44,
      after: 36,
      unit: 'degF',
      change: -8,
      changeUnit: 'dF',
    },
  ],
};
const VOLTS: Known = {
  ...working,
  answer: 'value',
  about: 'voltage',
  place: 'contactor',
  value: 208,
  unit: 'V',
  at: null,
};
const READBACK: Known = {
  ...working,
  answer: 'readback',
  rows: [
    { about: 'headPressure', place: null, value: 192, unit: 'psi' },
    { about: 'suctionPressure', place: null, value: 14, unit: 'psi' },
  ],
};
const NEED: Verdict = { kind: 'needs', about: 'headPressure', need: 'ambientTemp' };
const REFUSAL: Verdict = { kind: 'refused', about: 'boxTemp', reason: 'noTargetKnown' };

const WRONG: readonly (readonly [Verdict, readonly string[]])[] = [
  [
    HEAD_OVER,
    [
      'Head is 192 psi, should be 171 psi: 22 psi over.', // number changed
      'Head is 193 psi, should be 171 psi: 21 psi over.',
      'Head is 192 psi, should be 17 psi: 21 psi over.',
      'Head is 192 psi, should be 171 psi: 21 psi under.', // swapped
      'Head is 192 psi, should be 171 psi: 21 psi below.',
      'Head is 192 psi, should be 171 psi: 21 psi low.',
      'Head is 192 psi, should be 171 psi: 21 bar over.', // unit changed
      'Head is 192 psi, should be 171 psi: 21 °F over.',
      'Head is 192 kPa, should be 171 psi: 21 psi over.',
      'Head is 192 psi absolute, should be 171 psi: 21 psi over.',
      'Head is 192 psia, should be 171 psi: 21 psi over.',
      'Head is 171 psi, should be 192 psi: 21 psi over.', // slots exchanged
      'Head is 21 psi, should be 171 psi: 192 psi over.',
      'Head should be 192 psi: 21 psi over.',
      'Head is 171 psi. You are 21 psi over.',
      'Suction is 192 psi, should be 171 psi: 21 psi over.', // name changed
      'Condensing is 21 psi over.',
      'Head is 192 psi, should be 171 psi: 21 psi over. That is evaporating 8.5 °F over.',
      'Head is 8.5 °F over.',
      'Head is not 21 psi over.', // negation
      "Head isn't 21 psi over.",
      'Head is never 21 psi over.',
      'Head is hardly 21 psi over.',
      'Head is 192 psi, should be 171 psi.', // missing
      '21 psi over.',
      'Head is over.',
      'Head is 21 psi.',
      'Head is twenty-one psi over.', // spelled out
      'Head is 192 psi, should be 171 psi: twenty one psi over.',
      'Head is 21 psi over, double what it should be.',
      'Head is 21 psi over, about half.',
      'Head is 2 1 psi over.',
      'Head is 21.0 psi over.',
      'Head is 2l psi over.', // letter l
      'Head is 21 psi ov\u0435r.', // Cyrillic е
      'He\u0430d is 21 psi over.', // Cyrillic а
      'Head is ２１ psi over.', // full-width digits
      'Head is 21 psi over and under.',
      'Head is 21 psi over, so replace the condenser.', // new facts
      'Head is 21 psi over. That is safe.',
      'Head is 21 psi over because of the condenser fan.',
      'Head is 21 psi over?', // asked
      'Head is 21 psi over on R-404A.',
      'Head is 21 psi over. You are on target.',
      'Head is -21 psi over.',
      'Head is 1,921 psi, should be 171 psi: 21 psi over.',
      'Head is 21 psi over at the contactor.',
    ],
  ],
  [
    SUPERHEAT_ON,
    [
      'Superheat is 9 °F, should be 10 °F: 1 °F under.',
      'Superheat is 9 °F, should be 10 °F.',
      'Superheat is 10 °F, should be 9 °F: on target.',
      'Superheat is 9 °F, should be 10 °F: not on target.',
      'Subcooling is 9 °F, should be 10 °F: on target.',
      'Superheat is 9 K, should be 10 °F: on target.',
    ],
  ],
  [
    HEAD_TARGET,
    [
      'Head is 171 psi.',
      'Head 171 psi, condensing 118 °F.',
      'Condensing should be 171 psi, so head about 118 °F.',
      'Head should be about 118 °F.',
      'Head should be about 192 psi.',
      'Head should be about 171 °F.',
      'Head should be about 171 psi. You are 21 psi under.',
      'Head should be about 171 psi. You are on it.',
      'Suction should be about 171 psi.',
      'It should be about 171 psi.',
      "Head shouldn't be 171 psi.",
      'Condensing should be 118 °F.',
    ],
  ],
  [
    SATURATION,
    [
      'R-134a at 110 °F: 147 psi.',
      'R-134a at 146 °F: 110 psi.',
      'R-134a at 110 psi: 146 °F.',
      'R-404A at 110 °F: 146 psi.',
      'R-134a at 110 °C: 146 psi.',
      'R-134a at 110 °F: 146 bar.',
      'R-134a: 146 psi.',
      'At 110 °F: 146 psi.',
    ],
  ],
  [
    GLIDE,
    [
      'R-449A at 110 °F: dew 262 psi, bubble 240 psi.',
      'R-449A at 110 °F: 240 psi.',
      'R-449A at 110 °F: bubble 262 psi.',
    ],
  ],
  [
    MARGIN,
    [
      'Head is 192 psi, high-pressure cut-out at 400 psi: 208 psi past it.',
      'Head is 192 psi, low-pressure cut-out at 400 psi: 208 psi inside it.',
      'Head is 400 psi, high-pressure cut-out at 192 psi: 208 psi inside it.',
      'Head is 192 psi, high-pressure cut-out at 400 psi.',
      'Head is 208 psi, high-pressure cut-out at 400 psi: 208 psi inside it.',
      'High-pressure cut-out at 400 psi: 208 psi over.',
    ],
  ],
  [
    CHANGE,
    [
      'Head 158 psi before, 192 psi after: down 34 psi. Box 44 °F before, 36 °F after: down 8 °F.',
      'Head 192 psi before, 158 psi after: up 34 psi. Box 44 °F before, 36 °F after: down 8 °F.',
      'Box 192 psi before, 158 psi after: down 34 psi. Head 44 °F before, 36 °F after: down 8 °F.',
      'Head 192 psi before, 158 psi after: down 34 psi.',
      'Head 192 psi before, 158 psi after: down 8 °F. Box 44 °F before, 36 °F after: down 34 psi.',
      'Head 192 psi before, 158 psi after: the same. Box 44 °F before, 36 °F after: down 8 °F.',
      'Head 192 psi before, still blank after. Box 44 °F before, 36 °F after: down 8 °F.',
      'Head 192 psi before. 158 psi after. Box 44 °F before, 36 °F after.',
    ],
  ],
  [
    VOLTS,
    [
      'Contactor voltage is 280 V.',
      'Compressor voltage is 208 V.',
      'Voltage is 208 V.',
      'Contactor current is 208 A.',
      'Contactor voltage is 208 A.',
      'Contactor voltage is over 208 V.',
    ],
  ],
  [
    READBACK,
    [
      'Latest: head 14 psi, suction 192 psi.',
      'Latest: head 192 psi.',
      'Latest: suction 192 psi, head 14 psi.',
      'Before: head 192 psi, suction 14 psi.',
      'Latest: head 192 psi, suction 14 psi, box 36 °F.',
    ],
  ],
  [NEED, ['Tell me the box temperature.', 'Tell me the ambient.', 'Tell me nothing.']],
  [REFUSAL, ['I know a target for box.', 'Go by the nameplate.']],
];

const RIGHT: readonly (readonly [Verdict, readonly string[]])[] = [
  [
    HEAD_OVER,
    [
      'Head is 21 psi over.',
      'You are 21 psi over on head.',
      'Your head reads 192 psi and should be 171 psi, so you are 21 psi above target.',
      '21 psi over: head reads 192 psi.',
    ],
  ],
  [SUPERHEAT_ON, ['Superheat is 9 °F, right on target.', 'Superheat is on target.']],
  [
    HEAD_TARGET,
    [
      'Head should be around 171 psi.',
      'Head should be 171 psi, and you are 21 psi over.',
      'Condensing should be 118 °F, which makes head 171 psi.',
    ],
  ],
  [SATURATION, ['R-134a at 110 °F is 146 psi.', 'At 110 °F, R-134a is 146 psi.']],
  [MARGIN, ['You are 208 psi inside the high-pressure cut-out.']],
  [VOLTS, ['The contactor voltage reads 208 volts.']],
];

describe('the guard', () => {
  it.each(WRONG.flatMap(([verdict, all]) => all.map((sentence) => ({ sentence, verdict }))))(
    'turns away "$sentence"',
    ({ sentence, verdict }) => {
      expect(guard(sentence, verdict).kind).toBe('rejected');
    },
  );

  it('lets nothing leave out that a reading is within its range, where its target is not met', () => {
    const inBand: Known = {
      ...SUPERHEAT_ON,
      measured: 8,
      value: 2,
      direction: 'under',
      low: 7,
      high: 13,
    };
    expect(verdictSaid(inBand).text).toContain('within the usual range');
    expect(guard('Superheat reads 8 °F. It should be about 10 °F.', inBand)).toMatchObject({
      why: 'missingWord',
      at: 'within',
    });
  });

  it('was tried with at least sixty wrong sentences', () => {
    expect(WRONG.flatMap(([, all]) => all).length).toBeGreaterThanOrEqual(60);
  });

  it.each(RIGHT.flatMap(([verdict, all]) => all.map((sentence) => ({ sentence, verdict }))))(
    'lets "$sentence" through',
    ({ sentence, verdict }) => {
      expect(guard(sentence, verdict)).toEqual({ kind: 'passed' });
    },
  );

  it('chooses the template where a phrasing is missing or wrong', () => {
    const template = verdictSaid(HEAD_OVER);
    expect(phraseOr(template, null, HEAD_OVER)).toBe(template);
    expect(phraseOr(template, 'Head is 21 psi under.', HEAD_OVER)).toBe(template);
    expect(phraseOr(template, 'Head is 21 psi over.', HEAD_OVER)).toEqual({
      text: 'Head is 21 psi over.',
      spoken: 'Head is 21 P S I over.',
    });
  });
});

type Spoil = (text: string) => string;

const SWAPS: Readonly<Record<string, string>> = {
  over: 'under',
  under: 'over',
  inside: 'past',
  past: 'inside',
  up: 'down',
  down: 'up',
};

/** Each makes a sentence say something else, wherever it finds what it spoils. */
const SPOILERS: Readonly<Record<string, Spoil>> = {
  raisesANumber: (text) =>
    text.replace(/ (-?\d+)(?=[ .:])/, (_, n: string) => ` ${Number(n) + 1000}`),
  swapsDirection: (text) =>
    text.replace(/\b(over|under|inside|past|up|down)\b/, (way) => SWAPS[way] ?? way),
  changesPsi: (text) => text.replace(/(\d) psi/, '$1 bar'),
  denies: (text) => text.replace(/ (is|be|at|before) /, ' $1 not '),
  dropsShould: (text) => text.replaceAll('should be', 'is'),
  usesALookAlike: (text) => text.replace(/[ao]/, (letter) => (letter === 'a' ? 'а' : 'о')),
  addsAClaim: (text) => `${text} Replace the compressor.`,
  addsANumber: (text) => `${text} 4321 psi.`,
};

describe('the guard, on spoiled templates', () => {
  it.each(Object.entries(SPOILERS))('%s: nothing spoiled gets through', (_name, spoil) => {
    let spoiled = 0;
    fc.assert(
      fc.property(plainKnown, (one) => {
        const { text } = verdictSaid(one);
        const wrong = spoil(text);
        if (wrong === text) return;
        spoiled += 1;
        expect({ wrong, kind: guard(wrong, one).kind }).toEqual({ wrong, kind: 'rejected' });
      }),
      { numRuns: 600 },
    );
    expect(spoiled).toBeGreaterThan(50);
  });
});
