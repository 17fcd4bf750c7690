import type { Tags } from '../../grammar/nodes.ts';
import { amountIn, isVacuumUnit } from '../numbers/measure.ts';
import { isPlausible } from '../numbers/plausible.ts';
import type { Frame, Meaning } from '../rule.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { reading } from './reading-means.ts';

/** Unless one was asked for, a number alone means nothing; those of a vacuum are known by their units in any place. */
export const expectsNumber = ({ context: { asked, askedAbout, unitless } }: Frame): boolean =>
  asked !== null || askedAbout !== null || unitless !== null;

/** Common practice, and what is answered where no maker's figure is known. */
const MICRONS_ANSWERED = 500;

/** "What should head be", and then "one sixty five": read most likely, and not surely enough to be kept unasked. */
export function ofAskedAbout(tags: Tags, frame: Frame): Meaning | null {
  const { askedAbout, refrigerant } = frame.context;
  if (askedAbout === null || isElectrical(askedAbout)) return null;
  const amount = amountIn(tags);
  // "Four eighty microns" stands on a gauge: nobody tells what it should be with its unit, unless he says the answer again.
  if (isVacuumUnit(amount.unit) && amount.value !== MICRONS_ANSWERED) return null;
  const found = reading(askedAbout, amount, frame);
  if (found?.value === undefined || found.unit === null) return null;
  return isPlausible(askedAbout, { value: found.value, unit: found.unit }, refrigerant)
    ? { doubts: [{ ...found, why: 'expected' }] }
    : null;
}
