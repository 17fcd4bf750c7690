import type { Tags } from '../../grammar/nodes.ts';
import { isCutShort } from '../numbers/cut-numbers.ts';
import { nameplate } from '../facts/facts.ts';
import type { PartId, PlaceId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { type Amounted, amountIn, readingOf } from '../numbers/measure.ts';
import { isOnWall } from './supply-words.ts';
import { isWeather } from '../readings/reading-means.ts';
import { otherEnd, throughPart } from '../readings/through-part.ts';
import { startsClause, wordBefore, wordBehind } from '../words/clause-start.ts';
import { type Frame, heardRule, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { placeId, quantityId, tagsIn } from '../slots.ts';
import { wordsOfNames } from '../names/names-node.ts';
import { UNIT_NAMES } from '../vocabulary/unit-names.ts';
import type { Reading } from '../utterance.ts';
import type { SpokenUnit } from '../vocabulary/unit-names.ts';

/** An electrical unit names its quantity. */
export const QUANTITY_OF: Partial<Record<SpokenUnit, QuantityId>> = {
  V: 'voltage',
  A: 'current',
  ohm: 'resistance',
  Mohm: 'insulationResistance',
  uF: 'capacitance',
  W: 'power',
  kW: 'power',
};

/** Where a bare number can only be the resistance of a winding, or of its insulation. */
export const OHMS_AT: Partial<Record<PlaceId, QuantityId>> = {
  commonStart: 'resistance',
  commonRun: 'resistance',
  runStart: 'resistance',
  terminalOneTwo: 'resistance',
  terminalTwoThree: 'resistance',
  terminalOneThree: 'resistance',
  commonGround: 'insulationResistance',
  startGround: 'insulationResistance',
  runGround: 'insulationResistance',
};

const MOTORS: readonly PlaceId[] = ['compressor', 'condenserFan', 'evaporatorFan'];

/** No motor here runs on so few volts. */
const isSmall = ({ value }: Amounted): boolean => value !== null && value > 0 && value < 50;

/** "Eight point three on the compressor" is amps; a whole number may be anything, and is asked about. */
const motorFigure = ({ value }: Amounted): QuantityId | null =>
  value !== null && !Number.isInteger(value) ? 'current' : null;

/** Ours: no winding of these has so many, and a supply across two pins has. */
const MOST_OHMS = 100;

function quantityAt(amount: Amounted, place: PlaceId | null): QuantityId | null {
  const atPlace = place === null ? undefined : OHMS_AT[place];
  if (amount.unit === null) {
    if (atPlace === 'resistance' && (amount.value ?? 0) >= MOST_OHMS) return 'voltage';
    if (place !== null && MOTORS.includes(place) && isSmall(amount)) return motorFigure(amount);
    return atPlace ?? (amount.overlimit ? 'resistance' : 'voltage');
  }
  const quantity = QUANTITY_OF[amount.unit] ?? null;
  return quantity === 'resistance' && atPlace !== undefined ? atPlace : quantity;
}

/** A meter's reading at a place, of the quantity that its unit or the place tells. */
export function electrical(tags: Tags, place: PlaceId | null, frame: Frame): Reading | null {
  const amount = amountIn(tags);
  const quantity = quantityAt(amount, place);
  if (quantity === null) return null;
  return readingOf(quantity, amount, { place, frame });
}

export const one = (found: Reading | null): ReturnType<Means> =>
  found === null ? null : { readings: [found] };

const atPlace: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const amount = amountIn(tags);
  if (amount.unit === null && (goesOnOfHeat(frame) || isOfLeg(frame) || isOnWall(amount, frame)))
    return null;
  return onCan(tags, frame) ?? one(electrical(tags, place, frame));
};

/** "Thirty four point five on the run cap" is what it holds: it runs on more volts, and leads for those go across it. */
export function onCan(tags: Tags, frame: Frame): Meaning | null {
  const place = placeId(tags['place']);
  const { unit, value } = amountIn(tags);
  if (unit !== null || value === null || value === 0 || !isCapacitor(place)) return null;
  if (/\bacross\b/i.test(frame.wordsOf(frame.span))) return null;
  return place === 'runCapacitor' && value < MOST_FARADS
    ? one(readingOf('capacitance', amountIn(tags), { place, frame }))
    : leftToAsk(value);
}
/** Ours: run capacitors hold less, and what meters show there in volts is more. */
const MOST_FARADS = 100;

/** "L one to L three" names the legs. */
const isOfLeg = (frame: Frame): boolean => /^(?:l|line|leg|phase|t)$/i.test(wordBefore(frame));

/** "Suction line thirty eight at the coil fifty six at the compressor" is no voltage. */
const goesOnOfHeat = (frame: Frame): boolean =>
  !startsClause(frame) &&
  !/^(?:and|but|then|so)$/i.test(wordBefore(frame)) &&
  OF_HEAT.test(frame.wordsOf({ from: 0, to: frame.span.from }));
const OF_HEAT =
  /\b(?:superheat|sub ?cool\w*|(?:suction|liquid|discharge) (?:line|temp\w*)|box|ambient|degrees)\b/i;

/** Where a bare number can only be the supply's voltage. */
const SUPPLY: readonly PlaceId[] = ['lineOneTwo', 'lineTwoThree', 'lineOneThree'];

/** Without "across" or its like, only a unit, a winding or the supply tells that a place was metered. */
export const placeFirst: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const amount = amountIn(tags);
  const isWinding = place !== null && OHMS_AT[place] !== undefined;
  const isSupply = place !== null && (SUPPLY.includes(place) || saysSide(place, frame));
  if (amount.unit === null && YEAR.test(frame.wordsOf(frame.span))) return null;
  if (amount.unit === null && amount.value !== 0 && isCapacitor(place) && isRead(frame)) {
    return one(readingOf('capacitance', amount, { place, frame }));
  }
  if (amount.unit === null && !isWinding && !isSupply && !isOfClock(tags) && !amount.overlimit)
    return null;
  if (isBehindItsPause(frame) || (isCapacitor(place) && isMadeFor(frame))) return null;
  return one(electrical(tags, place, frame));
};

/** "A ten mike cap" is what was put in, or is to be. */
const isMadeFor = (frame: Frame): boolean =>
  /^(?:a|an|new|another|with|needs)$/i.test(wordBefore(frame)) &&
  !/\b(?:on|at|across|for|in|from)\b/i.test(frame.wordsOf(frame.span));

/** "353 B.C." */
const YEAR = /\bb\.\s?c\b/i;

/** "… two thirty one, L two to L three": the figure is of what stood before it. */
const isBehindItsPause = (frame: Frame): boolean =>
  /^[\w. -]+[,;]\s*[a-z]/i.test(frame.wordsOf(frame.span)) && !startsClause(frame);

/** "The cap reads thirty one": what a meter reads of it alone is what it holds. */
const isCapacitor = (place: PlaceId | null): boolean =>
  place === 'runCapacitor' || place === 'startCapacitor';
const isRead = (frame: Frame): boolean =>
  /\b(?:reads?|reading|checks?|checked|tests?|tested|measures?|measured|comes in|came in)\b/i.test(
    frame.wordsOf(frame.span),
  );

/** "line side", not "line" alone, which may be any pipe. */
const saysSide = (place: PlaceId, frame: Frame): boolean =>
  (place === 'lineSide' || place === 'loadSide') && /\bside\b/i.test(frame.wordsOf(frame.span));

const bare: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  if (unit === null) return null;
  if (isSizeOf(frame) || isMotorSize(frame)) return { remarks: [frame.wordsOf(frame.span)] };
  const onPlate = isReadOffPlate(frame) ? ON_PLATE[unit] : undefined;
  if (onPlate !== undefined) return onPlate(tags, frame);
  return one(electrical(tags, unit === 'ohm' ? heaterSpokenOf(frame) : null, frame));
};

/** "Now I get thirty eight ohms": of the heater that was spoken of. */
const heaterSpokenOf = ({ context: { lastPart } }: Frame): PlaceId | null =>
  lastPart !== null && /Heater$/.test(lastPart) ? placeId(lastPart) : null;

/** "A universal, nine watt" is how it is sold; what is drawn is told in watts. */
const isMotorSize = (frame: Frame): boolean =>
  /^(?!one )\S+(?: \S+)? watt$/i.test(frame.wordsOf(frame.span));

/** "Blown fuse on the board, five amp": so much it is built for. */
const isSizeOf = (frame: Frame): boolean =>
  isSizeAlone(frame) ||
  /\b(?:new|replaced|installed|put in|swapped in)\b.*\b(?:fuses?|breakers?)\W*$/i.test(
    frame.wordsOf({ from: 0, to: frame.span.from }),
  );
const isSizeAlone = (frame: Frame): boolean =>
  /^\S+(?: \S+)? amp$/i.test(frame.wordsOf(frame.span)) &&
  /\b(?:fuses?|breakers?|circuit|disconnect)\b/i.test(
    frame.wordsOf({ from: 0, to: frame.span.from }),
  );

/** "Plate says four oh four A, two pounds six, one fifteen volts": nobody put a meter to anything. */
const isReadOffPlate = (frame: Frame): boolean => {
  const { from, to } = frame.span;
  return (
    from > 0 &&
    PLATE_SAYS.test(frame.wordsOf({ from: 0, to: from })) &&
    !METERED.test(frame.wordsOf({ from: 0, to }))
  );
};
const PLATE_SAYS =
  /^(?:(?:ok|okay|so|and|the|its|it's|alright)[ ,]+)*(?:name ?plate|data (?:plate|tag)|plate|tag|sticker|label)\b/i;
const METERED =
  /\b(?:i|i've|i'm|we|we've|getting|got|meter|reading|pulling|drawing|across|but|now)\b/i;
const ON_PLATE: Partial<Record<SpokenUnit, Means>> = {
  V: nameplate('voltage'),
  A: nameplate('ratedLoadAmps'),
};

/** What is pulled or drawn is amps, unless watts are said. */
export function drawn(tags: Tags, place: PlaceId | null, frame: Frame): Reading | null {
  const amount = amountIn(tags);
  return amount.unit === null
    ? readingOf('current', amount, { place, frame })
    : electrical(tags, place, frame);
}

const pulling: Means = (tags, frame) => {
  const amount = amountIn(tags);
  if (amount.unit !== null && amount.unit !== 'A' && QUANTITY_OF[amount.unit] !== 'power')
    return null;
  return isCutShort(frame) ? null : one(drawn(tags, placeId(tags['place']), frame));
};

/** Between both sides of what was last named. */
const acrossLast: Means = (tags, frame) => {
  const last = frame.context.lastPlace;
  return one(electrical(tags, last === 'lineSide' || last === 'loadSide' ? null : last, frame));
};

/** "voltage one fifteen", "resistance common to run two ohms": the quantity named. */
const named: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  if (quantity === null || !Object.values(QUANTITY_OF).includes(quantity)) return null;
  if (isCutShort(frame) || OF_WHAT_WAS.test(frame.wordsOf(frame.span))) return null;
  return one(readingOf(quantity, amountIn(tags), { place: placeId(tags['place']), frame }));
};

/** "18.2A, compressor 3 is off": the unit before a comma is of the number before it. */
const OF_WHAT_WAS = /^[a-z]+[,;]/i;

/** Both windings from common, in one breath. */
const startAndRun: Means = (tags, frame) => {
  const start = electrical(tagsIn(tags['start']) ?? {}, 'commonStart', frame);
  const run = electrical(tagsIn(tags['run']) ?? {}, 'commonRun', frame);
  if (start?.quantity !== 'resistance' || run?.quantity !== 'resistance') return null;
  return { readings: [start, run] };
};

/** What was metered into and out of the thing last named. */
const inAndOut: Means = (tags, frame) => {
  const entering = tagsIn(tags['in']);
  const leaving = tagsIn(tags['out']);
  if (entering === null || leaving === null) return null;
  const line = electrical(entering, 'lineSide', frame);
  const load = electrical(leaving, 'loadSide', frame);
  if (line === null || load === null) return null;
  const means = (part: PartId): Meaning | null => throughPart(part, tags, frame);
  return { ofIt: { means, inSentence: true, otherwise: { readings: [line, load] } } };
};

/** "Nothing across the contactor": the meter showed no volts. */
export const noVolts =
  (place?: PlaceId): Means =>
  (tags, frame) => {
    const at = place ?? placeId(tags['place']);
    if (at === null || OHMS_AT[at] !== undefined) return null;
    return one(electrical({ number: 0 }, at, frame));
  };

const leftToAsk = (value: number): Meaning => ({ unclaimed: [String(value)] });

/** One side of what was last named, where the number is said alone with it. */
const atSide =
  (place: PlaceId): Means =>
  (tags, frame) => {
    const { unit, value } = amountIn(tags);
    // "Seven out" is how a recogniser hears what it does not know, and no voltage that anybody looks for.
    if (unit === null && value !== null && value > 0 && value < 10) return leftToAsk(value);
    if (unit === null && value !== null && isOfNoCurrent(frame)) return leftToAsk(value);
    if (unit === null && isWeather(frame)) return null;
    const end = otherEnd(place === 'loadSide' ? 'out' : 'in', tags, frame);
    if (end !== null) return end;
    return unit === null || unit === 'V' ? one(electrical(tags, place, frame)) : null;
  };

/** "Ninety at the drier inlet and eighty eight coming out", "twenty out and forty in": no meter's, of what they are told. */
const isOfNoCurrent = (frame: Frame): boolean =>
  FLOWS.test(frame.wordsOf({ from: 0, to: frame.span.from }));
const FLOWS =
  /\b(?:dri?y?er|liquid|suction|water|air|superheat|temps?|temperature|(?:low|high) (?:pressure|side)|cut(?:s|ting)?)\b/i;

/** "Across the low side" can only be its control: leads go across nothing else of it. */
const atSwitch =
  (place: PlaceId): Means =>
  (tags, frame) =>
    one(electrical(tags, place, frame));

/** Of a place that is named before what was got there; with neither a unit nor leads across it, it may be anything. */
const readAtIt: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const isMetered = /\b(?:across|over) it$/i.test(frame.wordsOf(frame.span));
  const isOfItself = place !== null && (OHMS_AT[place] !== undefined || SUPPLY.includes(place));
  const isBare = amountIn(tags).unit === null && !isMetered && place !== null && !isOfItself;
  return isBare ? null : one(electrical(tags, place, frame));
};

const intoNotOut: Means = (tags, frame) => {
  const line = electrical(tags, 'lineSide', frame);
  const load = electrical({ number: 0 }, 'loadSide', frame);
  return line === null || load === null ? null : { readings: [line, load] };
};

/** "Contactor has twenty four volts on the coil": only volts are got, a bare number may be anything. */
const fedWith: Means = (tags, frame) =>
  amountIn(tags).unit === 'V' || isOfClock(tags)
    ? one(electrical(tags, placeId(tags['place']), frame))
    : null;

/** Nothing but volts is got at a clock's terminals, and no clock runs on so few. */
const isOfClock = (tags: Tags): boolean => {
  const { unit, value } = amountIn(tags);
  const isVolts = unit === null && value !== null && (value === 0 || value >= 20);
  return isVolts && /^timer(?!s)/.test(placeId(tags['place']) ?? '');
};

export const GOT = '<got>';
export const NO_VOLTS =
  '(nothing|no (voltage|volts|power|juice|potential|control voltage|line voltage)|zero voltage)';
const AT =
  '([~(dropped|dropping|right)] across|at|~on|~into|~to|~through|~in|~over|~from|~off|~between)';

/** Meter readings, each at its place. */
const { V, A, ohm, Mohm, uF, W, kW } = UNIT_NAMES;
const ITS_UNITS = wordsOfNames({ V, A, ohm, Mohm, uF, W, kW });

export const ELECTRICAL_RULES: readonly Rule[] = [
  rule(
    `${GOT} <amount:in> [(coming|going)] in [(and|but)] <amount:out> [(coming|going)] (out|back out)`,
    inAndOut,
    { examples: ['one fifteen in, one fifteen out'] },
  ),
  rule(
    `${GOT} <amount:in> [on] [the] line [side] [(and|but)] <amount:out> [on] [the] load [side]`,
    inAndOut,
    { examples: ['one eighteen line zero load'] },
  ),
  rule(
    `${GOT} <amount> across [the] (high|high side|high pressure|high head|h p|hp)`,
    atSwitch('highPressureSwitch'),
    {
      examples: ['zero volts across the high pressure'],
    },
  ),
  rule(
    `${GOT} <amount> across [the] (low|low side|low pressure|l p|lp)`,
    atSwitch('lowPressureSwitch'),
    {
      examples: ['one twenty across the low pressure'],
    },
  ),
  rule(
    `${GOT} <amount> [(coming|going)] in [(and|but)] [(i have|i got|there is)] ${NO_VOLTS} [(coming|going)] out`,
    intoNotOut,
    { examples: ['one fifteen in and nothing out'] },
  ),
  rule(
    `[the] start [winding] [(is|reads|at|was)] <amount:start> [and] [the] run [winding] [(is|reads|at|was)] <amount:run>`,
    startAndRun,
    { examples: ['start winding is seven point nine run is two point six'] },
  ),
  rule(
    `[the] run [winding] [(is|reads|at|was)] <amount:run> [and] [the] start [winding] [(is|reads|at|was)] <amount:start>`,
    startAndRun,
  ),
  rule(`${GOT} <amount> (coming|going|getting) (into|in to|to) <the> <place> [coil]`, atPlace, {
    unheard: true,
    examples: ['twenty four volts coming into the contactor coil'],
  }),
  rule(`${GOT} <amount> (coming in|going in) (at|to|from) <the> <place>`, atPlace, {
    examples: ['one twenty one coming in at the plug'],
  }),
  rule(`${GOT} <amount> [(coming|going)] in`, atSide('lineSide'), {
    apart: true,
    examples: ['one fifteen in'],
  }),
  rule(`${GOT} <amount> [(coming|going)] (out|back out)`, atSide('loadSide'), {
    apart: true,
    examples: ['one fifteen out'],
  }),
  rule(
    '[the] load side [of it] is (dead|showing nothing|reading nothing|at nothing)',
    noVolts('loadSide'),
    { examples: ['load side is dead'] },
  ),
  rule(
    '[the] line side [of it] is (dead|showing nothing|reading nothing|at nothing)',
    noVolts('lineSide'),
  ),
  rule(`${GOT} ${NO_VOLTS} [(coming|going)] in`, noVolts('lineSide'), {
    apart: true,
    // "Sight glass is empty, nothing in there"
    only: (frame) => !/^(?:there|it|here|them|that|this)$/i.test(wordBehind(frame)),
    examples: ['nothing coming in'],
  }),
  rule(`${GOT} ${NO_VOLTS} [(coming|going)] out`, noVolts('loadSide'), {
    apart: true,
    examples: ['nothing out'],
  }),
  rule(
    `${GOT} ${NO_VOLTS} [out] (at|across|on|to|into|in|out of|from|off|through|between|coming out of|going to|getting to|coming from) <the> <place>`,
    noVolts(),
    { examples: ['nothing across the contactor', 'no voltage at the compressor'] },
  ),
  rule(
    '<the> <place> (has|has got|is getting|gets|shows|is showing|got|have) [got] (no|zero) (voltage|volts|power|juice)',
    noVolts(),
    { examples: ['the contactor has no power'] },
  ),
  rule(
    `(i am not (getting|reading|seeing|showing)|not (getting|reading|seeing)|i do not have|do not have|i have not got) [(any|a)] (anything|voltage|volts|power|thing) (at|across|on|to|into|in|out of|from|between) <the> <place>`,
    noVolts(),
    { examples: ['i am not getting anything across the contactor'] },
  ),
  rule(
    '<the> <place> (has|has got|is got|is getting|gets|is seeing|sees|shows|is showing) [got] <amount> [(on|at|across|to) (the coil|it)]',
    fedWith,
    {
      examples: ['contactor has got twenty four volts on the coil'],
    },
  ),
  rule(
    '<the> <place> [(has|has got|is got|shows|is showing|reads)] [got] <amount> (across|over) [it]',
    atPlace,
    { examples: ['low side control has got one twenty across it'] },
  ),
  rule(
    `[(on|at|over at|over on|ok)] <the> <place> [first] [<pause>] (i have|i have got|i am [(only|just|still)] (getting|reading|seeing)|i (only|just|still) (have|got|get)|i got|we have|there is) [(only|just|still)] <amount> [(across|over|on|at) it]`,
    readAtIt,
    { unheard: true, examples: ['over at the contactor i have got twenty four volts'] },
  ),
  rule('<the> <place> [first] [<pause>] [<link>] <amount> (across|over) it', atPlace, {
    examples: ['high pressure switch first zero volts across it'],
  }),
  rule(
    '<the> <place> (is not getting|does not have|has not got|is not seeing) [any] (voltage|volts|power|juice)',
    noVolts(),
    { examples: ['the compressor is not getting power'] },
  ),
  heardRule(
    `[(i have|~i got|~i have got|~i am getting|~reading|~there is|~got|~it is|~showing|~i read|~we have [got])] [~(only|just|still|barely)] <amount> ${AT} <the> <place>`,
    atPlace,
    {
      examples: [
        'two hundred eighteen volts at the contactor',
        'zero across the low pressure switch',
      ],
    },
  ),
  rule(
    `[the] line side [(is|has|reads|at|i have|i got)] <amount:in> [(and|but)] [the] load side [(is|has|reads|at|i have|i got)] (<amount:out>|<none:out>)`,
    inAndOut,
    { examples: ['line side two oh eight load side nothing'] },
  ),
  rule(`${GOT} <amount> (across|between|from) [the] line (and|to) [the] load [side]`, acrossLast, {
    examples: ['one seventeen across line and load'],
  }),
  rule(`${GOT} <amount> <place>`, placeFirst, { examples: ['240 volts L1 to L2'] }),
  heardRule('<the> <place> <link> <amount>', placeFirst, {
    examples: ['start to common three point nine ohms', 'common to ground is ol'],
  }),
  rule(
    '<the> <place> [(is|are|~~was|~~were)] [only] (pulling|drawing|pulls|draws|amps|amping|amps (is|are|at)|amperage [is]|current|draw is|current is|amp draw|running amps|amp draw is) <amount>',
    pulling,
    {
      examples: ['evaporator fan amp draw is point six'],
    },
  ),
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
      needs: ITS_UNITS,
      examples: ['one fifteen volts', 'pulling six point two amps'],
    },
  ),
];
