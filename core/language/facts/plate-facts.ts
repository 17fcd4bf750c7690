import { holdsReading } from '../words/own-reading.ts';
import { startsClause } from '../words/clause-start.ts';
import { isNamedSurely } from './refrigerant-said.ts';
import { droppedIn } from '../numbers/dropped-points.ts';
import { nameplate, plateItem } from './facts.ts';
import { amountIn } from '../numbers/measure.ts';
import { isNominalVoltage } from '../numbers/nominal-voltages.ts';
import type { Frame, Meaning, Means, Rule } from '../rule.ts';
import { rule } from '../rule.ts';
import { numberIn, partId, placeId, plateItemId, refrigerantId, spanIn, tagsIn } from '../slots.ts';
import type { Tags } from '../../grammar/nodes.ts';
import { HEATERS, type PartId } from '../../terms/names.ts';
import type { Fact, NameplateItem } from '../utterance.ts';
import { ON_IT } from '../vocabulary/plate-names.ts';

/** What a plate says is told apart by its unit; a bare figure before "phase" is its voltage. */
function itemOf(tags: Tags): NameplateItem | null {
  const { unit } = amountIn(tags);
  if (unit === 'V') return 'voltage';
  if (unit === 'A') return 'ratedLoadAmps';
  if (unit === null) return tags['phase'] === true ? 'voltage' : null;
  return 'charge';
}

function platedIn(tags: Tags, frame: Frame): Meaning | null {
  const item = itemOf(tags);
  return item === null ? null : nameplate(item)(tags, frame);
}

const plated: Means = (tags, frame) => platedIn(tags, frame);

/** "One fifteen volts, six point eight amps on the plate": neither was metered. */
export const platedEach: Means = (tags, frame) => {
  const more = [tagsIn(tags['second']), tagsIn(tags['third'])].filter((each) => each !== null);
  const meanings = [tags, ...more].map((each) => platedIn(each, frame));
  const facts = meanings.flatMap((meaning) => meaning?.facts ?? []);
  return facts.length === meanings.length ? { facts } : null;
};

/** "Three point two kilos of gas and four hundred volt three phase" */
const weightAndSupply: Means = (tags, frame) => {
  const phase = /\bphase$/i.test(frame.wordsOf(frame.span));
  return platedEach({ ...tags, second: { ...tagsIn(tags['second']), phase } }, frame);
};

/** No pause between a charge and a supply: what stands before "phase" is a voltage that is in use. */
const weightAndVolts: Means = (tags, frame) => {
  const volts = numberIn(tagsIn(tags['volts'])?.['number']);
  const weight = numberIn(tagsIn(tags['weight'])?.['number']);
  if (volts === null || weight === null || volts < LEAST_SUPPLY || volts > MOST_SUPPLY) return null;
  const unit = /(?:\bounces|oz)\b/i.test(frame.wordsOf(frame.span)) ? 'oz' : 'pounds';
  const charge = nameplate('charge')({ number: weight, unit }, frame)?.facts ?? [];
  const supply = nameplate('voltage')({ number: volts, unit: 'V' }, frame)?.facts ?? [];
  return { facts: [...charge, ...supply] };
};

const voltsAndAmps: Means = (tags, frame) => {
  const volts = numberIn(tagsIn(tags['volts'])?.['number']);
  const amps = numberIn(tagsIn(tags['amps'])?.['number']);
  if (volts === null || amps === null) return null;
  const supply = nameplate('voltage')({ number: volts, unit: 'V' }, frame)?.facts ?? [];
  const drawn = nameplate('ratedLoadAmps')({ number: amps, unit: 'A' }, frame)?.facts ?? [];
  return { facts: [...supply, ...drawn] };
};

/** Two supplies that a unit is built for stand on its plate: no meter swings between them. */
const nominalPair: Means = (tags, frame) => {
  const low = numberIn(tagsIn(tags['low'])?.['number']);
  const high = numberIn(tagsIn(tags['high'])?.['number']);
  if (low === null || high === null || low >= high) return null;
  if (!isNominalVoltage(low) || !isNominalVoltage(high)) return null;
  const facts = [
    ...(nameplate('voltage')({ number: low, unit: 'V' }, frame)?.facts ?? []),
    ...(nameplate('upperVoltage')({ number: high, unit: 'V' }, frame)?.facts ?? []),
  ];
  return { facts };
};
const LEAST_SUPPLY = 100;
const MOST_SUPPLY = 600;

/** "Tag says two oh eight, RLA sixteen, nine pounds": behind what a plate says a weight is its charge. */
const weightOnPlate: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  const isWeight = unit === 'pounds' || unit === 'oz' || unit === 'kg' || unit === 'g';
  const before = frame.wordsOf({ from: 0, to: frame.span.from });
  if (!isWeight || !frame.endsAtPause || !OF_PLATE.test(before) || MOVED.test(before)) return null;
  return nameplate('charge')(tags, frame);
};
export const OF_PLATE =
  /^(?:the |my |its |and )*(?:name ?plate|plate|(?:data |rating |spec )?(?:tag|plate)|sticker|label)\b/i;
const MOVED = /\b(?:added|recovered|charge|pounds|ounces|oz|lbs?|kilos|grams)\b/i;

/** "Two oh eight three phase": what a unit is built for. */
const phased: Means = (tags, frame) => {
  const volts = numberIn(tagsIn(tags['volts'])?.['number']);
  return volts === null || !isNominalVoltage(volts)
    ? null
    : nameplate('voltage')({ number: volts, unit: 'V' }, frame);
};

/** "Seven two" on a plate is 7.2 or 72: asked about. */
const ratedWithoutPoint: Means = (tags, frame) => {
  const dropped = droppedIn(tags);
  if (dropped === null) return null;
  if (dropped.or !== null) return { unclaimed: [String(dropped.value)] };
  const item = plateItemId(tags['plateItem']) ?? 'ratedLoadAmps';
  return nameplate(item)({ number: dropped.value, unit: 'A' }, frame);
};

/** "Tag says four oh four a, two pounds six ounces" */
export const refrigerantAndCharge: Means = (tags, frame) => {
  const charge = amountIn(tags).unit === null ? null : nameplate('charge')(tags, frame);
  const value = refrigerantId(tags['refrigerant']);
  if (value === null || charge?.facts === undefined) return null;
  // "Plate says twenty two point nine ounces" names no R-22.
  const isPart = (amountIn(tags).value ?? 1) < 1;
  if (isPart && / (?![abcdf] )\w+ point /i.test(frame.wordsOf(frame.span))) return null;
  const refrigerant: Fact = { fact: 'refrigerant', value, words: frame.wordsOf(frame.span) };
  return { facts: [refrigerant, ...charge.facts] };
};

/** "R-404A, thirty ounces, water cooled": a weight, and nothing that goes on. */
const gasAndWeight: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  const isWeight = unit === 'oz' || unit === 'g' || unit === 'kg' || unit === 'pounds';
  const words = frame.wordsOf(frame.span);
  const isNamed = isNamedSurely(words, frame) || /\b(?:unit|system|machine|box|one),/i.test(words);
  return isWeight && isNamed && frame.endsAtPause ? refrigerantAndCharge(tags, frame) : null;
};

/** "Tag says max two fifty on the high side": no gauge read it. */
const platedSide: Means = (tags, frame) => {
  const [one, two] =
    tags['quantity'] === 'headPressure'
      ? (['highSide', 'lowSide'] as const)
      : (['lowSide', 'highSide'] as const);
  const first = nameplate(one)(tags, frame);
  const other = tagsIn(tags['other']);
  const second = other === null ? null : nameplate(two)(other, frame);
  if (first === null || (other !== null && second === null)) return null;
  return { facts: [...(first.facts ?? []), ...(second?.facts ?? [])] };
};

export const PLATE = `(nameplate|plate|tag|(data|rating|spec) plate|name plate|sticker|label|data tag) ${ON_IT}`;
export const SAYS = '(is|says|shows|reads|has|calls for|lists)';
const PHASE = '(single|three|one) phase';
const MADE_OUT =
  '((i can|i could|can|all i can|what i can|best i can) [(just|barely|only|still)] (make out|read|see|make out is|read is|see is) [(is|it is)])';

/** "Design pressure three hundred high, one forty low" */
const bothSides: Means = (tags, frame) => {
  const high = nameplate('highSide')(tagsIn(tags['high']) ?? {}, frame)?.facts ?? [];
  const low = nameplate('lowSide')(tagsIn(tags['low']) ?? {}, frame)?.facts ?? [];
  return high.length * low.length === 0 ? null : { facts: [...high, ...low] };
};

/** A fan's own amps are on no plate of the unit: they stand in the note as they were read out. */
const ratedAmpsAt: Means = (tags, frame) =>
  placeId(tags['place']) === 'compressor'
    ? nameplate('ratedLoadAmps')(tags, frame)
    : { remarks: [frame.wordsOf(frame.span)] };

/** "Nameplate on the fan motor is point five amps": of that motor, and of no unit. */
const ofPartsPlate: Means = (tags, frame) => {
  const part = partId(tags['part']);
  if (part === null || OF_THE_UNIT.has(part)) return null;
  const words = frame.wordsOf(frame.span);
  if (PART_THEN_PLATE.test(words)) return null;
  const heater = HEATERS.find((each) => each === part);
  const { value, unit } = amountIn(tags);
  const isRating = heater !== undefined && value !== null && (unit === 'A' || unit === 'W');
  return isRating
    ? { facts: [{ fact: 'heaterRating', heater, value, unit, words }] }
    : { remarks: [words] };
};
/** "TXV, plate says nine pounds": two things. */
const PART_THEN_PLATE = /[,;]\s*(?:the |my )?(?:name ?plate|plate|tag|sticker|label)\b/i;
const OF_THE_UNIT: ReadonlySet<PartId> = new Set<PartId>([
  ...(['compressor', 'condenser', 'evaporator', 'door', 'panel', 'product', 'disconnect'] as const),
]);
const ITS_AMOUNT =
  '[(says|is|reads|shows|has|calls for)] [(rla|r l a|fla|f l a|full load|rated load)] [(is|of|at)] <amount>';
const A_PLATE = '(nameplate|name plate|plate|tag|data plate|data tag|rating plate|sticker|label)';

/** "Serial's two two oh four": figures and letters that nobody reckons with, and the office asks for. */
const identity: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  const told = span === null ? '' : frame.wordsOf(span);
  return span === null || WORN.test(told) || holdsReading(told)
    ? null
    : { remarks: [frame.wordsOf(frame.span)] };
};
const WORN =
  /\b(?:worn|gone|faded|missing|on the|rubbed|rusted|rubbed|same|scratched|illegible|not)\b/i;

const RLA =
  '(rla|r l a|rated load amps|rated amps|nameplate amps|plate amps|full load amps|full load|fla|f l a)';

const PLATE_HAS =
  '((it|this|this one|plate|the plate|tag) (has|has got|is got|shows|lists)|i have [got] [(a|the)])';
/** What a plate does with its figures. */
const LISTS =
  '(is (listed|stamped|marked|shown|printed|rated) [(as|at)]|(reads|shows|says)|comes [out] to|looks like|looks to be|of|at|is|is at|works out (at|to))';

/** What a plate says in one breath, and what can be made out of it. */
export const PLATE_RULES: readonly Rule[] = [
  rule(
    `[the] ${PLATE} (is|says|shows|reads|has|calls for) [(a|the)] [(max|maximum|design|test|working)] [pressure] [of] <amount> [max] (on|for) [the] <side> [[<pause>] and <amount:other> [max] (on|for) [the] (high|low|suction|head) [side]]`,
    platedSide,
    { examples: ['tag says max two fifty on the high side'] },
  ),
  rule(
    `[the] (${PLATE} [(design|test|working|max|maximum)]|design) [(pressure|pressures)] [(is|are|of|at|${SAYS})] <amount> [max] (on|for) [the] <side>`,
    platedSide,
    { unheard: true, examples: ['nameplate design pressure four fifty on the high side'] },
  ),
  rule(
    '[the] [nameplate] (design|test|working) [(pressure|pressures)] [on the (plate|nameplate|tag|sticker|label)] [(is|are)] high [side] [is] <amount:high> [<pause>] [and] low [side] [is] <amount:low>',
    bothSides,
    { examples: ['design pressure high side three hundred low side one forty'] },
  ),
  rule(
    `[the] (high side [(design|test|working)] [pressure]|(design|test|working) [(pressure|pressures)] high side) on [the] ${PLATE} ${SAYS} <amount:high> [<pause>] [and] [the] low side [(is|at)] <amount:low>`,
    bothSides,
    {
      unheard: true,
      examples: ['high side design pressure on the plate is four fifty low side two thirty six'],
    },
  ),
  rule(
    '[the] [nameplate] (design|test|working) [(pressure|pressures)] [on the (plate|nameplate|tag|sticker|label)] [(is|are)] low [side] [(is|at)] <amount:low> [<pause>] [and] high [side] [(is|at)] <amount:high>',
    bothSides,
    {
      unheard: true,
      examples: ['design pressures on the plate low side one forty high side four fifty'],
    },
  ),
  rule(
    '[the] [nameplate] (design|test|working) [(pressure|pressures)] [on the (plate|nameplate|tag|sticker|label)] [(is|are)] <amount:low> [(on the|on)] low [side] [<pause>] [and] <amount:high> [(on the|on)] high [side]',
    bothSides,
    { unheard: true, examples: ['design pressures on the plate one forty low four fifty high'] },
  ),
  rule(
    '[the] [nameplate] (design|test|working) [(pressure|pressures)] [(is|are)] <amount:high> [(on the|on)] high [side] [<pause>] [and] <amount:low> [(on the|on)] low [side]',
    bothSides,
    { examples: ['design pressure three hundred high one forty low'] },
  ),
  rule(
    `[the] [nameplate] ${RLA} [(is|are|says|of|at)] <amount> (on|for|at) <the> <place>`,
    ratedAmpsAt,
    {
      examples: ['full load amps two point one on the condenser fan'],
    },
  ),
  rule(`<the> <place> ${RLA} [(is|are|says|of|at)] <amount>`, ratedAmpsAt, {
    examples: ['condenser fan full load amps one point two'],
  }),
  rule(`[the] ${RLA} (on|for|of|at) <the> <place> [(is|are|says|at)] <amount>`, ratedAmpsAt, {
    examples: ['full load amps on the compressor is seven point one'],
  }),
  rule(
    `[the] ${RLA} (on|off|from) <the> <place> (plate|tag|sticker|nameplate|label|data tag) [(is|are|says|at)] <amount>`,
    ratedAmpsAt,
    { unheard: true, examples: ['rated load amps on the compressor tag is twelve point four'] },
  ),
  rule(
    `([the] ${A_PLATE} (on|of|off|for|from) <the> [new] <part>|<the> [new] <part> [(is|it is)] ${A_PLATE}) ${ITS_AMOUNT}`,
    ofPartsPlate,
    { unheard: true, examples: ['nameplate on the fan motor is point five amps'] },
  ),
  rule(`[the] ${PLATE} <amount>`, plated, {
    unheard: true,
    only: (frame) => startsClause(frame) && frame.endsAtPause,
    examples: ['nameplate twelve ounces'],
  }),
  rule('<pause> [and] [(it takes|takes|holds|charge|charge is)] <amount>', weightOnPlate, {
    unheard: true,
    examples: [],
  }),
  rule(`[(it is|that is|and)] <number:volts> [(volt|volts)] (single|three|one) phase`, phased, {
    unheard: true,
    only: startsClause,
    examples: ['two oh eight three phase'],
  }),
  rule(
    '[the] [(unit|compressor|condensing unit|condenser|evaporator|machine|data plate|plate)] (model|serial) <clause>',
    identity,
    { examples: ['serial number is four four seven one'] },
  ),
  rule(
    `[the] ${PLATE} ${SAYS} <refrigerant> [<pause>] [(and|with|at)] <amount> [(charge|of it|total)]`,
    refrigerantAndCharge,
    { examples: ['data tag says four oh four a, two pounds six ounces'] },
  ),
  rule(
    '[the] [(nameplate|factory|tag|plate|full)] charge (is|of) <amount> of <refrigerant>',
    refrigerantAndCharge,
    { examples: ['factory charge is thirty one ounces of two ninety'] },
  ),
  rule(
    '[the] (nameplate|factory|tag|plate|full|system|unit) charge [(is|of)] <amount> <pause> [(of|it is)] <refrigerant>',
    refrigerantAndCharge,
    { unheard: true, examples: ['factory charge two pounds six ounces, four forty eight'] },
  ),
  rule('<refrigerant> <pause> <amount> [(charge|total)]', refrigerantAndCharge, {
    alone: true,
    examples: [],
  }),
  rule(
    '[(it is|this is|this one is|that is)] [(a|an)] <refrigerant> [(unit|system|machine|box|one)] <pause> <amount> [(charge|total|of it)]',
    gasAndWeight,
    {
      unheard: true,
      only: startsClause,
      examples: [],
    },
  ),
  rule(
    `[the] (inside of [the] door|inside door|door|decal|serial (plate|tag|sticker)|rating plate|back panel|tag inside|sticker inside|it) ${SAYS} <refrigerant> <pause> [(and|with|at)] <amount> [(charge|of it|total)]`,
    refrigerantAndCharge,
    { examples: [] },
  ),
  rule(
    '[the] [nameplate] (rla|r l a|rated load amps|rated amps|nameplate amps|plate amps|full load amps|fla|f l a) [on the (plate|nameplate|tag)] [(is|are|says|of|at)] <dropped> [(amps|amp)]',
    ratedWithoutPoint,
    { examples: ['rla seven two'] },
  ),
  rule(
    '[the] [nameplate] <plateItem> [on the (plate|nameplate|tag)] [(is|are|says|at|looks|reads|shows)] [(like|to be|to me like)] <dropped> [(amps|amp)]',
    ratedWithoutPoint,
    { unheard: true, examples: ['minimum circuit amps eleven four'] },
  ),
  rule(
    `[the] ${PLATE} ${SAYS} <amount> <pause> [and] <amount:second> [<pause> [and] <amount:third>]`,
    platedEach,
    { examples: ['nameplate says two pounds, one fifteen volts'] },
  ),
  rule(
    `[the] ${PLATE} ${SAYS} <amount> of (gas|refrigerant|freon|charge) [<pause>] [(and|at|with)] <amount:second> [${PHASE}]`,
    weightAndSupply,
    {
      unheard: true,
      examples: ['rating plate says three kilos of gas and four hundred volts three phase'],
    },
  ),
  rule(
    `[the] ${PLATE} [(at|of|on it)] <amount> [(of (gas|refrigerant|charge)|charge)] (with|and|plus|for|on) (a|an|the|up to) [(first|standard)] <number:run> (foot|feet) [of] [(line set|lines|line|run|pipe|tubing)]`,
    plated,
    { unheard: true, examples: ['nameplate eight pounds with a sixty foot line set'] },
  ),
  rule(
    `[the] ${PLATE} ${SAYS} <amount> <pause> [and] <amount:second> ${PHASE}`,
    (tags, frame) =>
      platedEach({ ...tags, second: { ...tagsIn(tags['second']), phase: true } }, frame),
    { examples: ['nameplate says twelve pounds, two oh eight three phase'] },
  ),
  rule(
    `[(it is|it has|i have|that is|i see|got)] <number:volts> (volt|volts|v) [and] <number:amps> (amp|amps) (on|off|by) [the] ${PLATE}`,
    voltsAndAmps,
    { examples: ['one fifteen volt six point eight amps on the plate'] },
  ),
  rule(
    `[(it|the ${PLATE}|${PLATE})] [(is|says|reads|shows)] [(here|on here|on it)] <number:low> (to|dash|slash|through) <number:high> (volts|volt|v) [(on the ${PLATE}|single phase|three phase)]`,
    nominalPair,
    { examples: ['says here two hundred and eight to two thirty volts'] },
  ),
  rule(
    `[the] ${PLATE} ${SAYS} <number:weight> (pounds|ounces) <number:volts> ${PHASE}`,
    weightAndVolts,
    { examples: ['nameplate says twelve pounds two oh eight three phase'] },
  ),
  rule(`[the] ${PLATE} ${SAYS} [(a|it is)] <amount> ${PHASE}`, plated, {
    tags: { phase: true },
    examples: ['plate says two oh eight three phase'],
  }),
  rule(
    `<amount> (is|was) what <the> ${PLATE} (says|shows|reads|calls for|lists) [it (takes|holds)]`,
    plated,
    {
      unheard: true,
      examples: ['fifty six ounces is what the data plate says it takes'],
    },
  ),
  rule(`[(it is|it has|i see|got)] [a] <amount> ${PHASE} (on|off|by) [the] ${PLATE}`, plated, {
    tags: { phase: true },
    examples: ['four sixty three phase on the plate'],
  }),
  rule(
    `[(it is|it has|i have|that is|i see|got)] <amount> [<pause> [and] <amount:second>] (on|off|by) [the] ${PLATE}`,
    platedEach,
    { examples: ['six point eight amps on the plate'] },
  ),
  rule(`[but] ${MADE_OUT} <amount> [(on it|of it|there)]`, plated, {
    examples: ['i can make out five point three ounces'],
  }),
];

/** The same told in any order, behind all that says what else it may be. */
export const PLATE_ORDER_RULES: readonly Rule[] = [
  rule(
    `[${PLATE_HAS}] [(the|a)] (nameplate|plate|rated|data plate|tag) (voltage|volts) [${LISTS}] <amount>`,
    nameplate('voltage'),
    { unheard: true, examples: ['plate voltage reads two oh eight'] },
  ),
  rule(
    '<amount> [(is|was|for|on)] [(the|a)] (nameplate|plate|rated|data plate|tag) (voltage|volts)',
    nameplate('voltage'),
    { apart: true, unheard: true, examples: ['two oh eight is the plate voltage'] },
  ),
  rule(
    `[${PLATE_HAS}] [(the|a)] [(nameplate|plate|tag|data plate)] <plateItem> ${LISTS} <amount>`,
    plateItem,
    { unheard: true, examples: ['rla is listed as six point eight amps'] },
  ),
  rule(
    '<amount> [(is|was|on|as)] [(the|an|a)] [(nameplate|plate|tag|data plate)] <plateItem>',
    plateItem,
    { apart: true, unheard: true, examples: ['thirty amps on the max fuse'] },
  ),
  rule('<amount> for [(the|an|a)] [(nameplate|plate|tag|data plate)] <plateItem>', plateItem, {
    apart: true,
    unheard: true,
    examples: ['thirty amps for the max fuse'],
  }),
];
