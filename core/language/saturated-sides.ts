import type { QuantityId } from '../terms/quantities.ts';
import { type Means, type Rule, rule } from './rule.ts';
import { quantityId } from './slots.ts';
import { degrees } from './through-part.ts';

/** "Head one oh five degrees saturated": the side that is named, as the temperature that it boils or condenses at. */
const SATURATED: Partial<Record<QuantityId, QuantityId>> = {
  headPressure: 'condensingTemp',
  suctionPressure: 'evaporatingTemp',
  condensingTemp: 'condensingTemp',
  evaporatingTemp: 'evaporatingTemp',
};
const saturatedSide: Means = (tags, frame) => {
  const named = quantityId(tags['quantity']);
  const quantity = named === null ? undefined : SATURATED[named];
  const found = quantity === undefined ? null : degrees(quantity, tags, frame);
  return found === null ? null : { readings: [found] };
};

/** A side's saturation, told with its name. */
export const SATURATED_SIDE_RULES: readonly Rule[] = [
  rule(
    '[the] (coil|evaporator|evap) is [(running|sitting)] (saturating|saturated|boiling|evaporating) [off] [at] <amount> [saturated]',
    (tags, frame) => saturatedSide({ ...tags, quantity: 'evaporatingTemp' }, frame),
    { unheard: true, examples: ['coil is saturating at minus five'] },
  ),
  rule('[the] <quantity> <link> <amount> (saturated|saturation|sat)', saturatedSide, {
    unheard: true,
    examples: ['head is one oh five degrees saturated'],
  }),
  rule(
    '[the] <quantity> [(is|was)] (saturated|saturating|condensing|evaporating|boiling) [off] [(at|around)] <amount>',
    saturatedSide,
    { unheard: true, examples: ['suction is boiling off at twelve degrees'] },
  ),
];
