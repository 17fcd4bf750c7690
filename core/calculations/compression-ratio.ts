import { ratio } from '../units/quantity-values.ts';
import type { AbsolutePressure, Ratio } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

/** Above this a single stage runs hot: 10 to 12 is the customary ceiling. */
const ADVISED_CEILING = 10;

/** Absolute head over absolute suction; gauge over gauge would give 19.5 where 7.9 is right. */
export function compressionRatio(input: {
  readonly suction: AbsolutePressure;
  readonly head: AbsolutePressure;
}): Calculated<Ratio> {
  const { suction, head } = input;
  if (suction <= 0) {
    return { kind: 'refused', reason: 'impossibleVacuum', value: suction, unit: 'kPaa' };
  }
  if (suction > head) return refused('suctionAboveHead');
  const found = ratio(head / suction);
  return found > ADVISED_CEILING ? known(found, 'compressionRatioHigh') : known(found);
}

export const compressionRatioFormula: Formula = {
  id: 'compressionRatio',
  name: 'compression ratio',
  equation: 'CR = Pd / Ps',
  symbols: symbols(
    ['Pd', 'head pressure, absolute', 'kPa'],
    ['Ps', 'suction pressure, absolute', 'kPa'],
  ),
  range: 'single stage; above 10 to 12 it is advised against (common practice)',
  source: 'definition, from memory of refrigeration handbooks',
  standing: 'from memory',
  example: {
    inputs: { suctionPressure: '8.8psi', headPressure: '172psi' },
    gives: { value: 7.94, unit: 'ratio' },
    within: 0.01,
    source: '(172 + 14.7) / (8.8 + 14.7) by hand',
    standing: 'computed',
  },
};
