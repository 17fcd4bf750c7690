import { amountIn } from '../numbers/measure.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { thermalSystem } from '../../units/shown-unit.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { startsClause, wordBehind } from '../words/clause-start.ts';
import { fixed } from './reading-means.ts';
import { degrees } from './through-part.ts';

/** Ours: below it a number counts something, and above it may as well be a control voltage of 115. */
const ROOMS = { us: { least: 50, most: 112 }, si: { least: 10, most: 44 } } as const;

const ENDS = /^(?:|and|but|now|today|already|right|inside|with)$/;
const standsAlone = (frame: Frame): boolean => startsClause(frame) && ENDS.test(wordBehind(frame));

/** "Roof's seventy eight": what stands there breathes that air. */
const outside: Means = (tags, frame) => {
  const found = standsAlone(frame) ? degrees('outdoorTemp', tags, frame) : null;
  return found === null ? null : { readings: [found] };
};

/** "Store's seventy three": as a kitchen's air is, and no number of the store where it can be its air. */
const inside: Means = (tags, frame) => {
  const found = standsAlone(frame) ? degrees('ambientTemp', tags, frame) : null;
  return found !== null && mayBeRoom(tags, frame) ? fixed('ambientTemp')(tags, frame) : null;
};

function mayBeRoom(tags: Parameters<Means>[0], { context }: Frame): boolean {
  const { value, unit } = amountIn(tags);
  const bySaid = unit === 'degF' ? 'us' : unit === 'degC' ? 'si' : thermalSystem(context.units);
  const { least, most } = ROOMS[bySaid];
  return value !== null && value >= least && value <= most;
}

/** "Eighty five out" is the weather, unless something was just metered or it can only be volts. */
const weather: Means = (tags, frame) => {
  const isWarm = mayBeRoom(tags, frame) && frame.context.lastPlace === null;
  const found = isWarm && standsAlone(frame) ? degrees('outdoorTemp', tags, frame) : null;
  return found === null ? null : { readings: [found] };
};

/** The same behind another reading: behind volts, or what goes in, it is what comes out. */
const weatherBehind: Means = (tags, frame) => {
  const found = weather(tags, frame);
  if (found === null) return null;
  const means = (quantity: QuantityId): Meaning | null =>
    isElectrical(quantity) || THROUGH.has(quantity) ? null : found;
  const asked = { unclaimed: [String(amountIn(tags).value)] };
  return { ofThat: { means: (quantity) => means(quantity) ?? asked, otherwise: asked } };
};
/** Of what flows through something there is an in and an out. */
const THROUGH: ReadonlySet<QuantityId> = new Set<QuantityId>([
  ...(['liquidLineTemp', 'enteringWaterTemp', 'ambientTemp', 'supplyAirTemp'] as const),
]);

const OUTSIDE = '(roof|rooftop|roof top|alley|alleyway|parking lot|back alley)';
const INSIDE = '([(front|back)] (store|shop)|warehouse|hallway|corridor|basement|attic|closet)';
const IS =
  '(is|is at|at|is about|is around|reads|is reading|is sitting at|is running|is up to|is down to|was)';
const GOT = '(it is|it is about|i have|i have got|i got|i am getting|we have|we have got|i read)';

/** The air around a unit, told by the place that it is the air of. */
export const AIR_OF_PLACE_RULES: readonly Rule[] = [
  rule(`[(the|their|this|up on the)] ${OUTSIDE} ${IS} <amount> [(up here|out here)]`, outside, {
    unheard: true,
    examples: ['roof is seventy eight'],
  }),
  rule(
    `[(up|out|over|here|up here|out here|back)] (on|in) (the|this|their) ${OUTSIDE} [<pause>] [${GOT}] <amount>`,
    outside,
    { unheard: true, examples: ['up on the roof it is seventy eight'] },
  ),
  rule(`[${GOT}] <amount> [(out|back|over)] in (the|this|their) ${OUTSIDE}`, outside, {
    unheard: true,
    examples: ['it is ninety out in the alley'],
  }),
  rule(`[(the|their|this)] ${INSIDE} ${IS} <amount>`, inside, {
    unheard: true,
    examples: ['store is seventy three'],
  }),
  rule(
    `[(inside|in here)] (in|on|inside) (the|this|their) ${INSIDE} [<pause>] ${GOT} <amount>`,
    inside,
    { unheard: true, examples: ['inside the store it is seventy three'] },
  ),
  rule(`[${GOT}] <amount> [(out|inside)] (in|on|inside) (the|this|their) ${INSIDE}`, inside, {
    unheard: true,
    examples: ['it is seventy three in the store'],
  }),
  rule(
    `[${GOT}] <amount> [(back|right)] (behind|around|by|at) (the|this|their) (bar|counter|grill|cook line|line|fryer|register)`,
    inside,
    { unheard: true, examples: ['it is eighty one behind this bar'] },
  ),
  rule(
    `[${GOT}] [(really|pretty|so|bitter|freaking|damn)] (cold|hot|warm|freezing|chilly|cool|windy|miserable|brutal) (up|out) here [<pause>] [(like|about|around|maybe|at|it is|it is about|it is like)] <amount>`,
    outside,
    { unheard: true, examples: ['it is cold up here like eighteen'] },
  ),
  rule('<amount> out', weather, { unheard: true, alone: true, examples: ['eighty five out'] }),
  rule('<pause> <amount> out', weatherBehind, { unheard: true, apart: true, examples: [] }),
];
