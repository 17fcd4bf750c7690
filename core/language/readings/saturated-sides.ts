import type { QuantityId } from '../../terms/quantities.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { amountIn } from '../numbers/measure.ts';
import { fixed, reading } from './reading-means.ts';
import { quantityId, tagsIn } from '../slots.ts';
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
  // "Low side thirty, sat temp's six" tells two.
  const isBroken = /[,;]\s*(?:saturat\w+|sat)$/i.test(frame.wordsOf(frame.span));
  const found = quantity === undefined || isBroken ? null : degrees(quantity, tags, frame);
  return found === null ? null : { readings: [found] };
};

/** "Discharge two fifteen and the head's only one sixty": behind its name the head is another. */
const dischargeThenHead: Means = (tags, frame) => {
  const line = degrees('dischargeLineTemp', tags, frame);
  const head = reading('headPressure', amountIn(tagsIn(tags['other']) ?? {}), frame);
  return line === null || head?.quantity !== 'headPressure' ? null : { readings: [line, head] };
};

/** "Seventeen on the suction, that's about minus three": a pressure, and the same as its temperature. */
const atItsSaturation: Means = (tags, frame) => {
  const side = quantityId(tags['quantity']);
  const saturated = side === 'headPressure' || side === 'suctionPressure' ? SATURATED[side] : null;
  const sat = tagsIn(tags['sat']);
  if (side === null || saturated == null || sat === null) return null;
  const { unit, value } = amountIn(sat);
  const isNamed = /\b(?:sat\w*|evaporating|condensing|boiling)$/i.test(frame.wordsOf(frame.span));
  const isDegrees = unit === 'degrees' || unit === 'degF' || unit === 'degC';
  if (!isNamed && !isDegrees && (value ?? 0) >= 0) return null;
  const pressure = fixed(side)(tags, frame);
  const found = degrees(saturated, sat, frame);
  return pressure?.readings === undefined || found === null
    ? null
    : { readings: [...pressure.readings, found] };
};

/** A side's saturation, told with its name. */
export const SATURATED_SIDE_RULES: readonly Rule[] = [
  rule(
    '[the] (coil|evaporator|evap) is [(running|sitting)] (saturating|saturated|boiling|evaporating) [off] [at] <amount> [saturated]',
    (tags, frame) => saturatedSide({ ...tags, quantity: 'evaporatingTemp' }, frame),
    { unheard: true, examples: ['coil is saturating at minus five'] },
  ),
  rule(
    '[the] discharge <link> <amount> [<pause>] [(and|but|with)] [the] head [pressure] (<link>|<loose>) <amount:other>',
    dischargeThenHead,
    { unheard: true, examples: ['discharge is two fifteen and the head is only one sixty'] },
  ),
  rule(
    '([the] <quantity> <link> <amount>|<amount> (on|of) <the> <quantity>) [<pause>] (that is|which is|so that is|which puts it at|is) [what] [<pause>] <amount:sat> [(saturated|saturation|evaporating|condensing|boiling|sat)]',
    atItsSaturation,
    { unheard: true, examples: ['seventeen on the suction that is about minus three degrees'] },
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
