import type { Tags } from '../../grammar/nodes.ts';
import type { PlaceId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { isCutShort } from '../numbers/cut-numbers.ts';
import { drawn, electrical, OHMS_AT, onCan, one } from './electrical.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { amountIn, readingOf } from '../numbers/measure.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { placeId, quantityId, tagsIn } from '../slots.ts';

const CANS: readonly (PlaceId | null)[] = ['runCapacitor', 'startCapacitor'];

const isWinding = (place: PlaceId | null): boolean =>
  place !== null && OHMS_AT[place] !== undefined;

/** What a bare figure is of by where it was read: of a winding ohms, of a can what it holds. */
function byPlace(tags: Tags, place: PlaceId | null, frame: Frame): ReturnType<Means> {
  const { unit, overlimit } = amountIn(tags);
  if (isCutShort(frame)) return null;
  if (unit === null && !overlimit && CANS.includes(place))
    return one(readingOf('capacitance', amountIn(tags), { place, frame }));
  return unit === null && !overlimit && !isWinding(place) && !LEGS.includes(place)
    ? null
    : one(electrical(tags, place, frame));
}
/** Between two legs of a supply nothing but volts is metered. */
const LEGS: readonly (PlaceId | null)[] = ['lineOneTwo', 'lineTwoThree', 'lineOneThree'];

/** "Run cap, it's reading thirty four", "common to ground comes up infinite" */
const shownThere: Means = (tags, frame) => byPlace(tags, placeId(tags['place']), frame);

/** "Common to run it's showing open": of a switch it would be found open. */
const openThere: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  return isWinding(place) ? one(electrical({ overlimit: true }, place, frame)) : null;
};

/** Leads are put at, across and into what is alive: a bare figure is volts, as behind "two thirty at the contactor". */
const leadsThere: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const isGauged = SWITCHES.includes(place) && amountIn(tags).unit === null;
  if (isCutShort(frame) || (isGauged && !PUT_ACROSS.test(frame.wordsOf(frame.span)))) return null;
  return onCan(tags, frame) ?? one(electrical(tags, place, frame));
};
/** "Fifteen on the low pressure cutout" is what the gauge or its scale shows there. */
const SWITCHES: readonly (PlaceId | null)[] = ['highPressureSwitch', 'lowPressureSwitch'];
const PUT_ACROSS = /\b(?:across|over|into|between)\b/i;

/** Named with its quantity before the figure: "thermostat voltage is twenty four". */
const quantityThere: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const place = placeId(tags['place']);
  if (quantity === null || !isElectrical(quantity) || isCutShort(frame)) return null;
  const ofGround = place === null ? undefined : OHMS_AT[place];
  const meant: QuantityId =
    quantity === 'resistance' && ofGround === 'insulationResistance' ? ofGround : quantity;
  return one(readingOf(meant, amountIn(tags), { place, frame }));
};

/** What is pulled or clamped is amps. */
const drawnThere: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  if ((unit !== null && unit !== 'A') || isCutShort(frame)) return null;
  return one(drawn(tags, placeId(tags['place']), frame));
};

/** What is ohmed is ohms, or not to be seen an end of. */
const ohmedThere: Means = (tags, frame) => {
  const { unit, overlimit } = amountIn(tags);
  const place = placeId(tags['place']);
  if (isCutShort(frame)) return null;
  // "Ohmed out the compressor one point two, three point four": which windings those are nobody tells.
  if (unit === null && !overlimit && MOTORS.includes(place)) return null;
  return unit === null && !overlimit && !isWinding(place)
    ? one(readingOf('resistance', amountIn(tags), { place, frame }))
    : one(electrical(tags, place, frame));
};

const MOTORS: readonly (PlaceId | null)[] = ['compressor', 'condenserFan', 'evaporatorFan'];

const MAINS = 100;

/** "Contactor's getting two thirty": what is got in hundreds is volts. */
const gotThere: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  const isMains = unit === null && value !== null && value >= MAINS;
  return isMains && !isCutShort(frame)
    ? one(electrical(tags, placeId(tags['place']), frame))
    : null;
};

const METER = '[(the|my)] meter (says|shows|reads|is (showing|reading)|gives me)';
/** What a meter does at a place that was named, with the place left standing before it or as what does it. */
const SHOWS = `(it is [(only|just|still)] [(reading|showing|getting|at)]|it (reads|shows|says|checks|tests) [(at|out at)]|is (only|just|still|right|down|up|back) [(reading|showing|at|to)]|is running|only|just|still|(checks|comes|came|tests|tested|measures|measured|works|worked|is coming) out [(at|to)]|(comes|came|shows|is coming) up [(at|as|to)]|(settled|settles|settling) [(out|in|down)] at|tests|${METER})`;
const I_READ =
  '(i|we) (read|see|get|found|metered|measured|have [got]|got)|(i am|we are) (reading|getting|seeing|showing)';

/** "Common to start and common to run both read two ohms": only with its unit, or where windings were ohmed. */
const bothThere: Means = (tags, frame) => {
  const places = [placeId(tags['place']), placeId(tagsIn(tags['second'])?.['place'])];
  const amount = amountIn(tags);
  const areWindings = places.every(isWinding);
  if (!areWindings && amount.unit === null && !amount.overlimit) return null;
  const readings = places.flatMap((place) => electrical(tags, place, frame) ?? []);
  return readings.length === places.length ? { readings } : null;
};

/** What a meter shows, told of the place it is put to. */
export const METERED_THERE_RULES: readonly Rule[] = [
  rule(`[(on|for|ok)] <the> <place> [<pause>] ${SHOWS} <amount>`, shownThere, {
    unheard: true,
    examples: ['run cap it is reading thirty four', 'windings to ground it is showing infinite'],
  }),
  rule(
    `[(on|for|ok|from|all|still)] <the> <place> [<pause>] (${SHOWS}|${I_READ}|is (showing|reading)|checks|checked) [all the way] open`,
    openThere,
    { unheard: true, examples: ['common to run it is showing open'] },
  ),
  rule('[all] open [(on|from|at|across)] <place>', openThere, {
    apart: true,
    unheard: true,
    examples: ['open common to start'],
  }),
  rule(
    `(at|across|into) <the> <place> [<pause>] [(${I_READ}|${METER}|it is|there is|is)] [(only|just|still)] <amount>`,
    leadsThere,
    { apart: true, unheard: true, examples: ['across the contactor i have got two thirty'] },
  ),
  rule(
    `[(and|but)] (${METER}|${I_READ}) [(only|just|still)] <amount> (at|across|on|over|into|between|from|to) <the> <place>`,
    leadsThere,
    { unheard: true, examples: ['my meter shows two thirty one volts across the contactor'] },
  ),
  rule(
    `<the> <place> <quantity> [(is|are|at|of|now|it is|${METER}|reads|reading|shows|is (reading|showing|at))] <amount>`,
    quantityThere,
    { unheard: true, examples: ['thermostat voltage is twenty four'] },
  ),
  rule(`[the] <quantity> (of|for|in) <the> <place> <link> <amount>`, quantityThere, {
    unheard: true,
    examples: ['resistance of the defrost heater is twenty two'],
  }),
  rule(
    '[(and|but)] [(i am|we are|it is|she is)] [(only|just|still)] (pulling|drawing) <amount> (on|at|for|through|across) <the> <place>',
    drawnThere,
    { unheard: true, examples: ['pulling eleven on the defrost heater'] },
  ),
  rule(
    '[~~(and|so|then|also)] [(i|we)] [just] (clamped|amped|put (a|my|the) (clamp|amp clamp|amp meter) (on|around)) [out] <the> <place> [<pause>] [(at|and got|and it is|it is|and it is (pulling|drawing)|i got|i have got|got)] <amount>',
    drawnThere,
    { unheard: true, examples: ['clamped the door heater at point eight amps'] },
  ),
  rule(
    '[(i|we)] [just] (ohmed|metered|ohm) [out] <the> <place> [<pause>] [(at|to|and got|and it is|it is|i got|i have got|got)] <amount>',
    ohmedThere,
    { unheard: true, examples: ['ohmed the drain heater at one sixty'] },
  ),
  rule(
    '<the> <place> and <the> <place:second> [(are|is)] (both|each|both (are|is|at)) [(read|reads|reading|show|shows|test|tested|tests|say|says|measure|measured|came out|come out|came in|at|ohm out|ohmed out|ohm)] [at] <amount>',
    bothThere,
    { unheard: true, examples: ['start to ground and run to ground both read ol'] },
  ),
  rule('<the> <place> (is getting|gets|is seeing|sees|is only getting) <amount>', gotThere, {
    unheard: true,
    examples: ['contactor is getting two thirty'],
  }),
];
