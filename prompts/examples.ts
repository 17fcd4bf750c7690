import type { Known } from '../core/advice/verdict.ts';

/** A verdict and one good way to say it; the template's way is worked out from the verdict. */
export interface Example {
  readonly verdict: Known;
  readonly phrasing: string;
}

const known = { kind: 'known', formula: null, inputs: [], source: null, cautions: [] } as const;

/** Invented numbers. Each phrasing must pass the guard, or a model would be taught to be rejected. */
export const EXAMPLES: readonly Example[] = [
  {
    verdict: {
      ...known,
      answer: 'value',
      about: 'superheat',
      value: 11,
      unit: 'dF',
      place: null,
      at: null,
    },
    phrasing: 'Right now superheat reads 11 °F.',
  },
  {
    verdict: {
      ...known,
      answer: 'saturation',
      refrigerant: 'R-404A',
      given: { value: 20, unit: 'degF' },
      value: 56,
      unit: 'psi',
      phase: 'dew',
    },
    phrasing: 'At 20 °F, R-404A is 56 psi.',
  },
  {
    verdict: {
      ...known,
      answer: 'margin',
      about: 'lowCutoutPressure',
      measured: 17,
      limit: 9,
      value: 8,
      unit: 'psi',
      side: 'inside',
    },
    phrasing:
      'Suction reads 17 psi with the low-pressure cut-out at 9 psi, so you are 8 psi inside it.',
  },
  {
    verdict: {
      ...known,
      answer: 'target',
      about: 'suctionPressure',
      value: 33,
      unit: 'psi',
      basis: 'boxLessTemperatureDifference',
      reading: { measured: 27, value: 6, unit: 'psi', direction: 'under' },
    },
    phrasing: 'You are 6 psi under: suction should be about 33 psi.',
  },
  {
    verdict: {
      ...known,
      answer: 'compare',
      basis: 'table',
      about: 'headPressure',
      measured: 231,
      target: 205,
      measuredUnit: 'psi',
      value: 26,
      unit: 'psi',
      direction: 'over',
    },
    phrasing: 'You are 26 psi over: head reads 231 psi and should be 205 psi.',
  },
];
