import type { Tags } from '../../grammar/nodes.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { SHOWN_UNITS } from '../../units/shown-unit.ts';
import { startsClause, wordBefore } from '../words/clause-start.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { type Amounted, amountIn } from '../numbers/measure.ts';
import { remark } from '../plain-means.ts';
import { leftToAsk } from './reading-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, quantityId, tagsIn, workId } from '../slots.ts';

/** What is weighed has rules of its own: what a tank lost was charged. */
const WEIGHED: ReadonlySet<QuantityId> = new Set<QuantityId>([
  ...(['refrigerantAdded', 'refrigerantRecovered', 'refrigerantLost', 'cylinderWeight'] as const),
  ...(['refrigerantCharge', 'tareWeight', 'waterCapacity', 'sinceLastCharge'] as const),
]);

const gauged = (tags: Tags): QuantityId | null => {
  const quantity = quantityId(tags['quantity']);
  return quantity === null || isElectrical(quantity) || WEIGHED.has(quantity) ? null : quantity;
};

/** Kept as it was said: by how much something moved, or is off, is nowhere that it stands. */
const moved = (tags: Tags, frame: Frame): Meaning => {
  const quantity = quantityId(tags['quantity']);
  const remarks = [frame.wordsOf(frame.span)];
  if (quantity !== 'setpointTemp')
    return quantity === null ? { remarks } : { remarks, speaksOf: quantity };
  const adjusted = { did: 'adjust', part: 'temperatureControl', words: remarks[0] ?? '' } as const;
  return BY_HAND.test(adjusted.words) ? { work: [adjusted], remarks } : { remarks };
};
const BY_HAND =
  /^(?:(?:i|we|just|and) )*(?:raised|lowered|bumped|dropped|brought|moved|turned|knocked|pushed|took|backed|cut|set)\b/i;

/** Ours: so few pounds or degrees are as likely a step as a place, and so few pounds no head at all. */
const LARGEST_STEP = 20;
const LEAST_HEAD = 60;

const mayBeStep = ({ value }: Amounted, quantity: QuantityId): boolean =>
  value !== null && value > 0 && value < (quantity === 'headPressure' ? LEAST_HEAD : LARGEST_STEP);

/** Where no unit is said, "head dropped one ninety" may want its "to": what is as small as a step is asked about. */
const movedBy: Means = (tags, frame) => {
  const quantity = gauged(tags);
  const amount = amountIn(tags);
  // "Came up from thirty nine to sixty two psi": both were read.
  if (quantity === null || amount.low !== null) return null;
  if (tags['by'] === true || amount.unit !== null) return moved(tags, frame);
  const isStep =
    SHOWN_UNITS[frame.context.units].gaugePressure === 'psi' && mayBeStep(amount, quantity);
  return isStep ? { ...leftToAsk(tags), speaksOf: quantity } : null;
};

const inUnits: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  return unit === null || value === null || gauged(tags) === null ? null : moved(tags, frame);
};

/** "Dropped fifty pounds of head just by brushing the coil": what was done for it is told with it. */
const movedByWork: Means = (tags, frame) => {
  const [did, part] = [workId(tags['work']), partId(tags['part'])];
  const step = inUnits(tags, frame);
  return step === null || did === null || part === null
    ? step
    : { ...step, work: [{ did, part, words: frame.wordsOf(frame.span) }] };
};

/** "Down ten degrees in twenty minutes": of whatever it is, and no value of it; what a pressure lost is asked about. */
const movedSoLong: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  return unit === 'degrees' || unit === 'degF' || unit === 'degC' ? moved(tags, frame) : null;
};

const ofCoil: Means = (tags, frame) => {
  const { unit, low } = amountIn(tags);
  if (low !== null || /^(?:supply|return|outside|discharge)$/i.test(wordBefore(frame))) return null;
  return unit === 'degrees' || unit === 'degF' || unit === 'degC' ? moved(tags, frame) : null;
};

/** "Ten degrees over ambient": of what it stands above nothing more is told. */
const apart: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  const of = quantityId(tagsIn(tags['of'])?.['quantity']);
  if (of !== null && isElectrical(of)) return null;
  return unit === null || gauged(tags) === null ? null : moved(tags, frame);
};

const MOVED =
  '(dropped|drops|fell|falls|climbed|climbs|rose|rises|jumped|jumps|gained|gains|lost|loses|sank|spiked|shifted|improved|fallen|risen|changed|(came|come|comes|coming|went|goes|gone|going|crept|creeping|shot|jumped|dropped|dropping|climbed|climbing|moved|picked|fell|pulled|pulling|warmed|cooled|warming|cooling) [back] (up|down|off))';
const STEP = '[(another|an extra|a good|a full|a solid|maybe a|only|just|all of|an even)]';
const HOW_LONG =
  '[((in|over|for) [(about|like|just|the (last|past))] <duration:after>|(a|every|per|each) (minute|hour|degree|day)|at a time|(across|through|over) <the> <part:through>|(since|after|when|once|while) <clause>|from (there|before|that)|already|so far|now|again)]';
const OFF_BY =
  '((too|a little) (high|low|warm|hot|cold)|high|low|warm|hot|cold|higher|lower|warmer|colder|cooler|hotter|better|worse|more|less|off|off target|out) [(than <clause>|now|already|today|still|for (this|that|a) <clause>)]';
const STANDS = '[(is|runs|was)] [(still|only|now|just)] [running]';
const FROM_WHAT =
  '(above|over|below|under|off|higher than|lower than|warmer than|colder than|away from|short of|shy of) [(the|my|our|its|it is)] (<quantity:of>|target|where <clause>|what <clause>|normal|saturation|it)';
const HANDED =
  '(raised|lowered|bumped|dropped|brought|moved|turned|knocked|pushed|took|backed|cut|pulled)';

/** By how much something moved, or is above or below what it should be: no value of it. */
export const CHANGED_RULES: readonly Rule[] = [
  rule(
    `[(the|my)] <quantity> [(has|is|have)] [(just|already|only|really|then)] ${MOVED} ${STEP} <amount> ${HOW_LONG}`,
    movedBy,
    { unheard: true, examples: ['head dropped thirty pounds', 'suction came up six pounds'] },
  ),
  rule(
    `[(the|my)] <quantity> [(has|is|have)] [(just|already|only|really|then)] ${MOVED} [(up|down|back)] by <amount> ${HOW_LONG}`,
    movedBy,
    { tags: { by: true }, unheard: true, examples: ['head dropped by thirty'] },
  ),
  rule(
    `[(the|my)] <quantity> ([(has|is|have|was)] [(just|already|only|now)] (down|up)|(keeps|kept) [on] (dropping|climbing|rising|falling|losing|gaining|going (up|down)|coming (up|down))) ${STEP} <amount> ${HOW_LONG}`,
    (tags, frame) => (quantityId(tags['quantity']) === 'vacuum' ? null : inUnits(tags, frame)),
    { unheard: true, examples: ['box is down four degrees in ten minutes'] },
  ),
  rule(
    `<the> (coil|evaporator|evap|case|air|unit|line|pipe|it) [(has|is|have)] [(just|already|only)] (${MOVED}|down|up) ${STEP} <amount> ${HOW_LONG}`,
    ofCoil,
    { unheard: true, examples: ['coil is down eight degrees'] },
  ),
  rule(
    `[(i|we|it|that|this)] [(has|have|just|only)] (picked up|gained|lost|dropped|shaved|knocked|got back|gave back|gave up) ${STEP} <amount> [off] (of|on|in|off) [(the|my)] <quantity> ${HOW_LONG}`,
    inUnits,
    { unheard: true, examples: ['picked up three degrees of subcooling'] },
  ),
  rule(
    `[(i|we|it|that|this)] [(has|have|just|only)] (picked up|gained|lost|dropped|shaved|knocked|got back) ${STEP} <amount> (off (the|my)|off of [(the|my)]|[(of|on|in)] [(the|my)]) <quantity> [just] (by|from|with) [just] <working> <the> <part>`,
    movedByWork,
    { unheard: true, examples: ['dropped fifty pounds of head just by brushing the coil'] },
  ),
  rule(
    `[(i|we|it|that|this)] [(has|have|just|only)] (picked up|gained|lost) ${STEP} <amount> <quantity> ${HOW_LONG}`,
    inUnits,
    { unheard: true, examples: ['lost ten pounds head pressure'] },
  ),
  rule(
    `[(i|we|it|that|this)] [(has|have|just|only)] ${HANDED} [(the|my)] <quantity> [(up|down|back|back up|back down)] [by] ${STEP} <amount> ${HOW_LONG}`,
    inUnits,
    { unheard: true, examples: ['it knocked the head down thirty pounds'] },
  ),
  rule(
    `[(it|she|that|we|i)] [(has|have|is)] [(only|just|already)] (dropped|lost|fell|fallen|rose|risen|gained|climbed|pulled [down]|(came|come|went|gone) (down|up)|down|up|picked up) ${STEP} <amount> (in|over) [(the last|about|less than|only)] <duration:after>`,
    movedSoLong,
    { unheard: true, only: startsClause, examples: ['down ten degrees in twenty minutes'] },
  ),
  rule(`[(the|my)] <quantity> ${STANDS} <amount> ${OFF_BY}`, inUnits, {
    unheard: true,
    examples: ['box is ten degrees warmer than it was', 'superheat is six degrees high'],
  }),
  rule(`[(the|my)] <quantity> ${STANDS} <amount> ${FROM_WHAT}`, apart, {
    unheard: true,
    examples: ['head is thirty pounds over target'],
  }),
  // How far one is from another is nowhere that either stands.
  rule(
    '[the] (<quantity>|coil|~evaporator|~condenser) <link> <amount> (over|under|above|below|off|(colder|warmer|hotter|cooler|higher|lower) than) [(the|my|its|their)] (box|[outdoor] (air|ambient)|room|outdoor|outdoors|outside|setpoint|set point|target|saturation)',
    remark,
    { unheard: true, apart: true, examples: ['coil is about eight degrees under the box'] },
  ),
];
