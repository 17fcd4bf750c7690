import type { Tags } from '../../grammar/nodes.ts';
import { QUANTITIES, type QuantityId } from '../../terms/quantities.ts';
import { amountIn } from '../numbers/measure.ts';
import { isPlausible } from '../numbers/plausible.ts';
import type { Frame, Meaning } from '../rule.ts';
import type { Reading } from '../utterance.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { isWatched } from './now-at.ts';
import { reading } from './reading-means.ts';

/** Unless one was asked for, a number alone means nothing; those of a vacuum are known by their units in any place. */
export const expectsNumber = (frame: Frame): boolean => {
  const { asked, askedAbout, unitless, lastQuantity } = frame.context;
  return (
    asked !== null || askedAbout !== null || unitless !== null || isOnThermometer(lastQuantity)
  );
};

/** A box that comes down is read again with no name. */
const isOnThermometer = (last: QuantityId | null): boolean =>
  last !== null && QUANTITIES[last].dimension === 'temperature';

/** "What should head be", and then "one sixty five": read most likely, and not surely enough to be kept unasked. */
export function ofAskedAbout(tags: Tags, frame: Frame): Meaning | null {
  const { askedAbout, asked, lastQuantity, refrigerant } = frame.context;
  const about = askedAbout ?? (asked === null ? lastQuantity : null);
  if (about === null || isElectrical(about)) return null;
  const found = reading(about, amountIn(tags), frame);
  if (found?.value === undefined || found.unit === null) return null;
  if (askedAbout === null && !isReadAgain(found, frame)) return null;
  return isPlausible(about, { value: found.value, unit: found.unit }, refrigerant)
    ? { doubts: [{ ...found, why: 'expected' }] }
    : null;
}

/** "Forty now" is read by itself. */
const isReadAgain = (found: Reading, frame: Frame): boolean =>
  isWatched(found, frame) && !/\bnow\b/i.test(frame.wordsOf(frame.span));
