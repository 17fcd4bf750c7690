import type { Tags } from '../grammar/nodes.ts';
import type { PlaceId } from '../terms/names.ts';
import type { QuantityId } from '../terms/quantities.ts';
import { type Amounted, amountIn, measured } from './measure.ts';
import { type Frame, heardRule, type Means, type Rule, rule } from './rule.ts';
import { placeId, quantityId, tagsIn } from './slots.ts';
import type { Reading } from './utterance.ts';
import type { SpokenUnit } from './vocabulary/unit-names.ts';

/** An electrical unit names its quantity. */
const QUANTITY_OF: Partial<Record<SpokenUnit, QuantityId>> = {
  V: 'voltage',
  A: 'current',
  ohm: 'resistance',
  Mohm: 'insulationResistance',
  uF: 'capacitance',
  W: 'power',
};

/** Where a bare number can only be the resistance of a winding, or of its insulation. */
const OHMS_AT: Partial<Record<PlaceId, QuantityId>> = {
  commonStart: 'resistance',
  commonRun: 'resistance',
  runStart: 'resistance',
  commonGround: 'insulationResistance',
  startGround: 'insulationResistance',
  runGround: 'insulationResistance',
};

function quantityAt(amount: Amounted, place: PlaceId | null): QuantityId | null {
  const atPlace = place === null ? undefined : OHMS_AT[place];
  if (amount.unit === null) return atPlace ?? (amount.overlimit ? 'resistance' : 'voltage');
  const quantity = QUANTITY_OF[amount.unit] ?? null;
  return quantity === 'resistance' && atPlace !== undefined ? atPlace : quantity;
}

function electrical(tags: Tags, place: PlaceId | null, frame: Frame): Reading | null {
  const amount = amountIn(tags);
  const quantity = quantityAt(amount, place);
  if (quantity === null) return null;
  const value = measured(quantity, amount, frame.context.units);
  return value === null ? null : { ...value, place, words: frame.wordsOf(frame.span) };
}

const one = (found: Reading | null): ReturnType<Means> =>
  found === null ? null : { readings: [found] };

const atPlace: Means = (tags, frame) => one(electrical(tags, placeId(tags['place']), frame));

/** Where a bare number can only be the supply's voltage. */
const SUPPLY: readonly PlaceId[] = ['lineOneTwo', 'lineTwoThree', 'lineOneThree'];

/** Without "across" or its like, only a unit, a winding or the supply tells that a place was metered. */
const placeFirst: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const amount = amountIn(tags);
  const isWinding = place !== null && OHMS_AT[place] !== undefined;
  const isSupply = place !== null && (SUPPLY.includes(place) || saysSide(place, frame));
  if (amount.unit === null && !isWinding && !isSupply && !amount.overlimit) return null;
  return one(electrical(tags, place, frame));
};

/** "line side", not "line" alone, which may be any pipe. */
const saysSide = (place: PlaceId, frame: Frame): boolean =>
  (place === 'lineSide' || place === 'loadSide') && /\bside\b/i.test(frame.wordsOf(frame.span));

const bare: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  return unit === null ? null : one(electrical(tags, null, frame));
};

const pulling: Means = (tags, frame) => {
  const amount = amountIn(tags);
  if (amount.unit !== null && amount.unit !== 'A' && amount.unit !== 'W') return null;
  return one(electrical({ ...tags, unit: amount.unit ?? 'A' }, placeId(tags['place']), frame));
};

const ofFan: Means = (tags, frame) => {
  const last = frame.context.lastPlace;
  const place = last === 'condenserFan' || last === 'evaporatorFan' ? last : null;
  return one(electrical({ ...tags, unit: amountIn(tags).unit ?? 'A' }, place, frame));
};

/** "voltage one fifteen", "resistance common to run two ohms": the quantity named. */
const named: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  if (quantity === null || !Object.values(QUANTITY_OF).includes(quantity)) return null;
  const value = measured(quantity, amountIn(tags), frame.context.units);
  if (value === null) return null;
  return one({ ...value, place: placeId(tags['place']), words: frame.wordsOf(frame.span) });
};

/** What was metered into and out of the thing last named. */
const inAndOut: Means = (tags, frame) => {
  const entering = tagsIn(tags['in']);
  const leaving = tagsIn(tags['out']);
  if (entering === null || leaving === null) return null;
  const line = electrical(entering, 'lineSide', frame);
  const load = electrical(leaving, 'loadSide', frame);
  return line === null || load === null ? null : { readings: [line, load] };
};

const AT = '(at|across|~on|~into|~to|~through|~in|~over|~from|~off|~between)';

/** Meter readings, each at its place. */
export const ELECTRICAL_RULES: readonly Rule[] = [
  rule('<amount:in> in [and] <amount:out> out', inAndOut, {
    examples: ['one fifteen in, one fifteen out'],
  }),
  heardRule(
    `[(i have|~i got|~i have got|~i am getting|~reading|~there is|~got|~it is)] <amount> ${AT} <the> <place>`,
    atPlace,
    {
      examples: [
        'two hundred eighteen volts at the contactor',
        'zero across the low pressure switch',
      ],
    },
  ),
  rule('<amount> <place>', placeFirst, { examples: ['240 volts L1 to L2'] }),
  heardRule('<the> <place> <link> <amount>', placeFirst, {
    examples: ['start to common three point nine ohms', 'common to ground is ol'],
  }),
  rule(
    '<the> <place> [is] (pulling|drawing|pulls|draws|amps|amping|amps (is|are|at)|amperage [is]|current|draw is|current is|amp draw|running amps|amp draw is) <amount>',
    pulling,
    {
      examples: ['evaporator fan amp draw is point six'],
    },
  ),
  rule('<the> (fan|fans) [is] (pulling|drawing|pulls|draws) <amount>', ofFan, {
    examples: ['fan is pulling point six amps'],
  }),
  rule(`[the] <quantity> [${AT}] <the> <place> <link> <amount>`, named, {
    examples: ['voltage at the contactor is two eighteen'],
  }),
  rule(`[the] <quantity> <link> <amount> [${AT} <the> <place>]`, named, {
    examples: ['voltage is two oh eight', 'current is six point two at the compressor'],
  }),
  rule(
    '[(i have|i got|i have got|i am getting|it is|reading|pulling|drawing|it is pulling|it is drawing|got)] <amount>',
    bare,
    {
      examples: ['one fifteen volts', 'pulling six point two amps'],
    },
  ),
];
