import type { Tags } from '../grammar/nodes.ts';
import type { QuantityId } from '../terms/quantities.ts';
import { type Amounted, amountIn, readingOf, withMore } from './measure.ts';
import type { Frame, Meaning, Means } from './rule.ts';
import { quantityId } from './slots.ts';
import type { Reading } from './utterance.ts';

type Extras = Partial<Pick<Reading, 'when' | 'event' | 'afterMinutes' | 'gasTemp' | 'refrigerant'>>;

export function reading(quantity: QuantityId, amount: Amounted, frame: Frame): Reading | null {
  return readingOf(quantity, amount, { place: null, frame });
}

/** "Box is set at thirty six" is no reading of the box. */
function settable(named: QuantityId, frame: Frame): QuantityId {
  const isSet = named === 'boxTemp' && /\bset (?:at|to|for)\b/i.test(frame.wordsOf(frame.span));
  return isSet ? 'setpointTemp' : named;
}

function meantQuantity(tags: Tags, frame: Frame): QuantityId | null {
  const named = quantityId(tags['quantity']);
  return named === null ? null : settable(named, frame);
}

/** Of the quantity that was named. */
export const asReading = (extras?: Extras): Means => readBy(meantQuantity, extras);

/** Of a quantity that the rule itself knows. */
export const fixed = (quantity: QuantityId, extras?: Extras): Means =>
  readBy((_tags, frame) => settable(quantity, frame), extras);

const readBy =
  (quantityOf: (tags: Tags, frame: Frame) => QuantityId | null, extras?: Extras): Means =>
  (tags, frame) => {
    const quantity = quantityOf(tags, frame);
    const found = quantity === null ? null : reading(quantity, amountIn(tags), frame);
    if (found === null) return null;
    return { readings: [extras === undefined ? found : withMore(found, extras)] };
  };

/** The numbers of an amount that nothing tells what they are of. */
export function leftToAsk(tags: Tags): Meaning {
  const { value, low, high } = amountIn(tags);
  return { unclaimed: [value, low, high].filter((number) => number !== null).map(String) };
}
