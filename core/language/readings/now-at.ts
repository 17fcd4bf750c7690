import type { PlaceId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { QUANTITY_OF } from '../electrical/electrical.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { type Amounted, amountIn, readingOf } from '../numbers/measure.ts';
import { isPlausible } from '../numbers/plausible.ts';
import { startsClause, wordBefore } from '../words/clause-start.ts';
import { reading } from './reading-means.ts';
import type { Frame, Meaning, Means } from '../rule.ts';
import type { SpokenUnit } from '../vocabulary/unit-names.ts';

const OF_ANYTHING: readonly SpokenUnit[] = ['degrees', 'pounds', 'psi', 'bar', 'degF', 'degC'];

/** "Set point thirty six, it's at forty seven": what is set is not at anything, what it is set for is. */
const HELD: Partial<Record<QuantityId, QuantityId>> = {
  setpointTemp: 'boxTemp',
  highCutoutPressure: 'headPressure',
  lowCutoutPressure: 'suctionPressure',
  lowCutinPressure: 'suctionPressure',
};

/** "Oil's back to half", "number two's down to ten": of what no rule reads, and not of "it". */
const isOfOther = (frame: Frame): boolean =>
  LACKS_SUBJECT.test(frame.wordsOf(frame.span)) &&
  !startsClause(frame) &&
  !/^(?:it|she|he|that|this)$/i.test(wordBefore(frame));
const LACKS_SUBJECT = /^(?:'s|is|came|dropped|went|climbed|pulled)\b/i;

/** "Now it is at two twelve": of what was read before in the same sentence; alone it is asked about. */
export const nowAt: Means = (tags, frame) => {
  if (isOfOther(frame)) return null;
  const amount = amountIn(tags);
  const metered = amount.unit === null ? undefined : QUANTITY_OF[amount.unit];
  // What a meter shows names its quantity, and has the place of another of it; microns name their own.
  if (amount.unit !== null && metered === undefined && !OF_ANYTHING.includes(amount.unit))
    return null;
  const numbers = [amount.value, amount.low, amount.high].filter((value) => value !== null);
  const elsewhere =
    metered === undefined ? null : readingOf(metered, amount, { place: null, frame });
  const otherwise =
    elsewhere === null
      ? (ofLastMost(amount, frame) ?? { unclaimed: numbers.map(String) })
      : { readings: [elsewhere] };
  const means = (quantity: QuantityId, place: PlaceId | null): Meaning | null => {
    const at = HELD[quantity] ?? quantity;
    const found = isElectrical(at)
      ? readingOf(at, amount, { place, frame })
      : reading(at, amount, frame);
    return found === null ? null : { readings: [found] };
  };
  return { ofThat: { means, otherwise } };
};

/** A sentence later it is most likely of what was read last: asked by its name. */
function ofLastMost(amount: Amounted, frame: Frame): Meaning | null {
  const { lastQuantity, refrigerant } = frame.context;
  if (lastQuantity === null || isElectrical(lastQuantity)) return null;
  const found = reading(HELD[lastQuantity] ?? lastQuantity, amount, frame);
  if (found?.value === undefined || found.unit === null) return null;
  const { quantity, value, unit } = found;
  return isPlausible(quantity, { value, unit }, refrigerant)
    ? { doubts: [{ ...found, why: 'expected' }] }
    : null;
}
