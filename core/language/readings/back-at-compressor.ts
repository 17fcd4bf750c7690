import type { QuantityId } from '../../terms/quantities.ts';
import type { Meaning, Means, Rule } from '../rule.ts';
import { rule } from '../rule.ts';
import { leftToAsk } from './reading-means.ts';
import { degrees } from './through-part.ts';

/** "And fifty eight by the time it gets back to the compressor": of the suction line, which alone leads there. */
const backAtCompressor: Means = (tags, frame) => {
  const found = degrees('suctionLineTemp', tags, frame);
  const read: Meaning | null = found && { readings: [{ ...found, place: 'compressor' }] };
  const means = (last: QuantityId): Meaning | null => (last === 'suctionLineTemp' ? read : null);
  const { lastQuantity } = frame.context;
  return {
    ofThat: { means, otherwise: (lastQuantity && means(lastQuantity)) ?? leftToAsk(tags) },
  };
};

export const BACK_AT_COMPRESSOR_RULES: readonly Rule[] = [
  rule(
    '[(and|but|then|and then)] [(it is|is|i have|i have got|i get)] <amount> (by the time it (gets|got|is|comes) [back] (to|at)|[right] back (at|to|by|near)) <the> compressor',
    backAtCompressor,
    { unheard: true, examples: [] },
  ),
];
