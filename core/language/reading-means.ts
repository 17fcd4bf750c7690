import type { Tags } from '../grammar/nodes.ts';
import type { QuantityId } from '../terms/quantities.ts';
import { type Amounted, amountIn, measured } from './measure.ts';
import type { Frame, Means } from './rule.ts';
import { quantityId } from './slots.ts';
import type { Reading } from './utterance.ts';

type Extras = Partial<Pick<Reading, 'when' | 'event' | 'afterMinutes' | 'gasTemp' | 'refrigerant'>>;

export function reading(quantity: QuantityId, amount: Amounted, frame: Frame): Reading | null {
  const value = measured(quantity, amount, frame.context.units);
  return value === null ? null : { ...value, place: null, words: frame.wordsOf(frame.span) };
}

function oneReading(quantity: QuantityId | null, frame: Frame, tags: Tags): Reading | null {
  return quantity === null ? null : reading(quantity, amountIn(tags), frame);
}

/** "Box is set at thirty six" is no reading of the box. */
function meantQuantity(tags: Tags, frame: Frame): QuantityId | null {
  const named = quantityId(tags['quantity']);
  const isSet = named === 'boxTemp' && /\bset (?:at|to|for)\b/i.test(frame.wordsOf(frame.span));
  return isSet ? 'setpointTemp' : named;
}

/** Of the quantity that was named. */
export const asReading =
  (extras: Extras = {}): Means =>
  (tags, frame) => {
    const found = oneReading(meantQuantity(tags, frame), frame, tags);
    return found === null ? null : { readings: [{ ...found, ...extras }] };
  };

/** Of a quantity that the rule itself knows. */
export const fixed =
  (quantity: QuantityId, extras: Extras = {}): Means =>
  (tags, frame) =>
    asReading(extras)({ ...tags, quantity }, frame);
