import type { Tags } from '../../grammar/nodes.ts';
import { type Amounted, amountIn } from '../numbers/measure.ts';
import { reading } from './reading-means.ts';
import type { Means } from '../rule.ts';
import { tagsIn } from '../slots.ts';

/** "Two point one bar on the low side, fourteen and a half on the high": one habit of pressures for both. */
function inOneUnit(tags: Tags): readonly [Amounted, Amounted] {
  const [head, suction] = [
    amountIn(tagsIn(tags['head']) ?? {}),
    amountIn(tagsIn(tags['suction']) ?? {}),
  ];
  const unit = [head.unit, suction.unit].find((each) => each === 'bar' || each === 'kPa') ?? null;
  return [
    { ...head, unit: head.unit ?? unit },
    { ...suction, unit: suction.unit ?? unit },
  ];
}

export const headOverSuction: Means = (tags, frame) => {
  if (tagsIn(tags['head']) === null || tagsIn(tags['suction']) === null) return null;
  const [above, below] = inOrder(...inOneUnit(tags));
  const high = reading('headPressure', above, frame);
  const low = reading('suctionPressure', below, frame);
  return high === null || low === null ? null : { readings: [high, low] };
};

/** "Seventeen over one ninety" names the low side first: no head is half its suction. */
function inOrder(first: Amounted, second: Amounted): readonly [Amounted, Amounted] {
  const isTurned = first.value !== null && second.value !== null && first.value < second.value / 2;
  return isTurned ? [second, first] : [first, second];
}

/** Figures for a fraction or a dual can are smaller; what opens the sentence is of the gauges. */
export const openingWithBoth: Means = (tags, frame) => {
  const sides = [amountIn(tagsIn(tags['head']) ?? {}), amountIn(tagsIn(tags['suction']) ?? {})];
  const isHead = sides.some(({ value }) => value !== null && value >= 80);
  return isHead && frame.span.from === 0 ? headOverSuction(tags, frame) : null;
};

/** Of what one gauge set shows, both sides told apart by their names. */
export const highAndLow: Means = (tags, frame) => {
  const [high, low] = inOneUnit(tags);
  const head = reading('headPressure', high, frame);
  const suction = reading('suctionPressure', low, frame);
  return head === null || suction === null ? null : { readings: [head, suction] };
};
