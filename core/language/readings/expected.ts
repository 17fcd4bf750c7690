import type { Tags } from '../../grammar/nodes.ts';
import { amountIn } from '../numbers/measure.ts';
import { isPlausible } from '../numbers/plausible.ts';
import type { Frame, Meaning } from '../rule.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { reading } from './reading-means.ts';

/** Unless one was asked for, a number alone means nothing; those of a vacuum are known by their units in any place. */
export const expectsNumber = ({ context: { asked, askedAbout, unitless } }: Frame): boolean =>
  asked !== null || askedAbout !== null || unitless !== null;

/** "What should head be", and then "one sixty five": read most likely, and not surely enough to be kept unasked. */
export function ofAskedAbout(tags: Tags, frame: Frame): Meaning | null {
  const { askedAbout, refrigerant } = frame.context;
  if (askedAbout === null || isElectrical(askedAbout)) return null;
  const found = reading(askedAbout, amountIn(tags), frame);
  if (found?.value === undefined || found.unit === null) return null;
  return isPlausible(askedAbout, { value: found.value, unit: found.unit }, refrigerant)
    ? { doubts: [{ ...found, why: 'expected' }] }
    : null;
}
