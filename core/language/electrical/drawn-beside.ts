import { wordBefore } from '../words/clause-start.ts';
import type { Tags } from '../../grammar/nodes.ts';
import type { PartId, PlaceId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { amps, isVolts } from './circuit-trace.ts';
import { isCutShort } from '../numbers/cut-numbers.ts';
import { droppedIn, isTwoFigures } from '../numbers/dropped-points.ts';
import { electrical, GOT, one } from './electrical.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { fanPlace } from '../words/fans.ts';
import { amountIn, readingOf } from '../numbers/measure.ts';
import { pointed } from './meter-figures.ts';
import { leftToAsk } from '../readings/reading-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { placeId, tagsIn } from '../slots.ts';
import { remark } from '../plain-means.ts';

/** "Four amps on one fan": which of several nobody tells. */
const ampsOnOne: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  if (unit !== 'A' && unit !== 'V' && unit !== 'ohm') return null;
  const isFan = /\bfan\b/i.test(frame.wordsOf(frame.span));
  return one(electrical(tags, isFan ? fanPlace(frame.context) : null, frame));
};

/** "All four evap fans running, point nine each": what a motor of them draws. */
const drawnEach: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  const isAmps = unit === 'A' || (unit === null && value !== null && value < MOST_BARE_AMPS);
  if (!isAmps) return null;
  const means = (part: PartId): Meaning | null => {
    const place = MOTORS[part];
    return place === undefined ? null : one(readingOf('current', amountIn(tags), { place, frame }));
  };
  return { ofIt: { means, inSentence: true, otherwise: leftToAsk(tags) } };
};
/** "Evaporator fan's not running, I've got one twenty going to it" */
const goingToIt: Means = (tags, frame) => {
  const { value } = amountIn(tags);
  if (!isVolts(tags) || value === null) return null;
  const means = (part: PartId): Meaning | null => {
    const place = placeId(MOTORS[part] ?? part);
    return place === null ? null : one(electrical({ ...tags, unit: 'V' }, place, frame));
  };
  return { ofIt: { means, inSentence: false, otherwise: leftToAsk(tags) } };
};

/** "Compressor's drawing 7.4 amps at 224 volts" */
const ampsAtVolts: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const volts = electrical({ ...tagsIn(tags['volts']), unit: 'V' }, place, frame);
  const drawn = electrical({ ...tagsIn(tags['amps']), unit: 'A' }, place, frame);
  return volts === null || drawn === null ? null : { readings: [drawn, volts] };
};

/** "I'm reading two forty volts and eleven amps on it" */
const twoOnIt: Means = (tags, frame) => {
  const at = (place: PlaceId | null): Meaning | null => {
    const volts = electrical({ ...tagsIn(tags['volts']), unit: 'V' }, place, frame);
    const drawn = electrical({ ...tagsIn(tags['amps']), unit: 'A' }, place, frame);
    return volts === null || drawn === null ? null : { readings: [volts, drawn] };
  };
  const means = (part: PartId): Meaning | null => {
    const place = placeId(MOTORS[part] ?? part);
    return place === null ? null : at(place);
  };
  return { ofIt: { means, inSentence: false, otherwise: at(null) ?? {} } };
};

/** Ours: more may be volts. */
const MOST_BARE_AMPS = 20;
const MOTORS: Partial<Record<PartId, PlaceId>> = {
  condenserFan: 'condenserFan',
  condenserFanMotor: 'condenserFan',
  evaporatorFan: 'evaporatorFan',
  evaporatorFanMotor: 'evaporatorFan',
  defrostHeater: 'defrostHeater',
  compressor: 'compressor',
};

const isBareAmps = (tags: Tags, frame: Frame): boolean => {
  const { unit, value } = amountIn(tags);
  // "Eight one" is said of 8.1 and of 81: other rules ask.
  if (isTwoFigures(frame.wordsOf(frame.span))) return false;
  return unit === 'A' || (unit === null && value !== null && value < MOST_DRAWN);
};
/** Ours: motors and heaters of these machines draw less, and a pump pulls to more microns. */
const MOST_DRAWN = 100;

/** "Compressor's drawing six point one and the fan point eight" */
const fanBeside: Means = (tags, frame) => besideAt(fanPlace(frame.context), tags, frame);

/** "Fan's drawing point six and the compressor two point nine" */
const compressorBeside: Means = (tags, frame) => besideAt('compressor', tags, frame);

function besideAt(place: PlaceId | null, tags: Tags, frame: Frame): Meaning | null {
  const isDropped = droppedIn(tags) !== null;
  const isAmps = isDropped || isBareAmps(tags, frame);
  const drawn = isAmps ? amps(tags, place, frame) : null;
  if (drawn === null) return isDropped ? null : leftToAsk(tags);
  const means = (quantity: QuantityId): Meaning | null => (quantity === 'current' ? drawn : null);
  const isSaid = amountIn(tags).unit === 'A';
  const otherwise = isSaid ? amps(tags, null, frame) : null;
  return { ofThat: { means, otherwise: otherwise ?? leftToAsk(pointed(tags)) } };
}

/** "Heater reads twenty two ohms and it's drawing nine point four": where it was metered. */
const drawnBeside: Means = (tags, frame) => {
  if (!isBareAmps(tags, frame)) return null;
  const at = (place: PlaceId | null): Meaning | null =>
    one(readingOf('current', amountIn(tags), { place, frame }));
  const { unit, value } = amountIn(tags);
  // "Head's two ten and she's pulling nine point eight": no vacuum is told in tenths.
  const isAmps = unit === 'A' || (SHE.test(frame.wordsOf(frame.span)) && !Number.isInteger(value));
  const means = (quantity: QuantityId, place: PlaceId | null): Meaning | null =>
    isElectrical(quantity) ? at(place) : null;
  const ofPart = (part: PartId): Meaning | null =>
    MOTORS[part] === undefined ? null : at(MOTORS[part]);
  const otherwise = (isAmps ? at(null) : null) ?? leftToAsk(tags);
  return { ofThat: { means, otherwise }, ofIt: { means: ofPart, inSentence: true } };
};

const SHE = /\b(?:she|it)(?:'s| is)? (?:\w+ )?(?:pull|draw)/i;

/** What is told of a place, once for each of several alike: "pulling two point one and two point two". */
function drawnByTwo(tags: Tags, place: PlaceId | undefined, frame: Frame): Meaning | null {
  const told = [tags, tagsIn(tags['other']) ?? {}];
  if (place === undefined || !told.every((each) => isBareAmps(each, frame))) return null;
  if (isFraction(told.at(-1)) && ENDS_IN_FRACTION.test(frame.wordsOf(frame.span))) return null;
  const readings = told.flatMap(
    (each) => readingOf('current', amountIn(each), { place, frame }) ?? [],
  );
  return readings.length === told.length ? { readings } : null;
}

/** "Two and a half" is one figure. */
const isFraction = (tags: Tags = {}): boolean => (amountIn(tags).value ?? 1) < 1;
const ENDS_IN_FRACTION = /\band (?:a half|a quarter|three quarters)(?: amps?)?$/i;

/** "Condenser fans are pulling two point one and two point two": of two fans each. */
const twoFansDraw: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  return place === 'condenserFan' || place === 'evaporatorFan'
    ? drawnByTwo(tags, place, frame)
    : null;
};

/** "Condenser fans run fine, they're pulling two point one and two point two" */
const theyDrawTwo: Means = (tags, frame) => ({
  ofIt: {
    means: (part) => drawnByTwo(tags, MOTORS[part], frame),
    inSentence: false,
    otherwise: { unclaimed: [tags, tagsIn(tags['other']) ?? {}].flatMap(unclaimedIn) },
  },
});
const unclaimedIn = (tags: Tags): readonly string[] => leftToAsk(tags).unclaimed ?? [];

/** "Put a new drain heater in, new one's pulling point four amps": the one that was spoken of. */
const newOneDraws: Means = (tags, frame) => {
  if (!isBareAmps(tags, frame)) return null;
  const at = (place: PlaceId | null): Meaning | null =>
    one(readingOf('current', amountIn(tags), { place, frame }));
  const otherwise = (amountIn(tags).unit === 'A' ? at(null) : null) ?? leftToAsk(tags);
  const means = (part: PartId): Meaning => {
    const place = placeId(MOTORS[part] ?? part);
    return (place === null ? null : at(place)) ?? otherwise;
  };
  return { ofIt: { means, inSentence: false, otherwise } };
};

/** "Heater's fourteen ohms drawing eight and a half": no pause, and none who draws named anew. */
const drawnBehind: Means = (tags, frame) => {
  const isSubject = /^(?:it|it's|is|are|'s|'re|they|they're|only)?$/i.test(wordBefore(frame));
  return isSubject || isCutShort(frame) ? null : drawnBeside(tags, frame);
};

/** "Solenoid's one eighty ohms and it's getting one nineteen": volts, where it was metered. */
const fedBeside: Means = (tags, frame) => {
  if (!isVolts(tags)) return null;
  const means = (quantity: QuantityId, place: PlaceId | null): Meaning | null =>
    isElectrical(quantity) && place !== null
      ? one(readingOf('voltage', amountIn(tags), { place, frame }))
      : null;
  return { ofThat: { means, otherwise: leftToAsk(tags) } };
};

/** "Line voltage two thirty eight, control's twenty six" */
const controlVolts: Means = (tags, frame) => {
  const volts = isVolts(tags) ? one(electrical({ ...tags, unit: 'V' }, null, frame)) : null;
  if (volts === null) return null;
  const means = (quantity: QuantityId): Meaning | null => (quantity === 'voltage' ? volts : null);
  const isSaid = /\b(?:voltage|volts)\b/i.test(frame.wordsOf(frame.span));
  return { ofThat: { means, otherwise: isSaid ? volts : leftToAsk(tags) } };
};

const SIDE = '(left|right|top|bottom|front|back|first|second|other|inside|outside|near|far)';
const ONLY_DRAWING = '[(both|only|each)] (pulling|drawing|pull|draw|at|running)';

/** What one of several draws, or each, or the one beside the one that was metered. */
export const BESIDE_RULES: readonly Rule[] = [
  rule(
    '<the> <place> [(is|was)] (drawing|pulling|running|at|draws|pulls|drew|pulled) <number:amps> (amps|amp|a) (at|on|with|and) <number:volts> (volts|volt|v)',
    ampsAtVolts,
    { unheard: true, examples: ['compressor is drawing 7.4 amps at 224 volts'] },
  ),
  rule(
    `[(and|but)] ${GOT} [(only|just)] <amount> (going|coming|getting) (in to|into|to) it`,
    goingToIt,
    { unheard: true, examples: [] },
  ),
  ...[
    '<number:volts> (volts|volt|v) (and|at) <number:amps> (amps|amp|a)',
    '<number:amps> (amps|amp|a) (and|at) <number:volts> (volts|volt|v)',
  ].map((both) =>
    rule(
      `[(and|but)] (${GOT}|(i am|we are) (reading|getting|seeing|pulling|drawing)) ${both} (on|at|across|going to|into) it`,
      twoOnIt,
      { unheard: true, examples: [] },
    ),
  ),
  rule(
    `${GOT} <amount> on (one|the left|the right|the other|each|the first|the second|the top|the bottom) (fan|fan motor|motor|heater|leg|one)`,
    ampsOnOne,
    { examples: ['four amps on one fan'] },
  ),
  rule('[(and|but)] nothing on (the others|the rest|the other (one|two|three|ones))', remark, {
    examples: ['nothing on the other two'],
  }),
  rule(
    '(and|but|<pause> [(and|but)]) the (fan|fans|fan motor|fan motors) [(is|are)] [(at|drawing|pulling|only)] <dropped>',
    fanBeside,
  ),
  rule(
    '(and|but|<pause> [(and|but)]) the (fan|fans|fan motor|fan motors) [(is|are)] [(at|drawing|pulling|only)] <amount>',
    fanBeside,
  ),
  rule('(and|but|<pause> [(and|but)]) the compressor [(at|only)] <tenths>', compressorBeside, {
    unheard: true,
    examples: [],
  }),
  rule(`<the> <place> (are|is) ${ONLY_DRAWING} <amount> and <amount:other>`, twoFansDraw, {
    unheard: true,
    examples: ['condenser fans are pulling two point one and two point two'],
  }),
  rule(
    `[(<pause> [(and|but)]|and|but)] (they are|one is|they) ${ONLY_DRAWING} <amount> and [the other one [(is|at)]] <amount:other>`,
    theyDrawTwo,
    { unheard: true, examples: [] },
  ),
  rule(
    `[(and|so|now)] (it|that one) (pulls|draws|is (pulling|drawing|at)) <amount> [(amps|amp)] [<pause>] [(and|but)] the other (one|fan|motor) (is|pulls|draws|is (pulling|drawing|at)) [(also|at)] <amount:other> [(too|also|as well)]`,
    theyDrawTwo,
    { unheard: true, examples: [] },
  ),
  rule(
    `[the] (amps|current|amperage) (on|of|for|at) [the] ${SIDE} (one|fan|motor|side) [(is|are|at)] <amount> [<pause>] [(and|but)] [on] [the] ${SIDE} [(one|fan|motor|side)] [(is|are|at)] <amount:other>`,
    (tags, frame) => ({ ...theyDrawTwo(tags, frame), remarks: [frame.wordsOf(frame.span)] }),
    { unheard: true, examples: [] },
  ),
  rule(
    '(and|but|<pause> [(and|but)]) [(it is|they are|it|is|are|~~she is|~~she)] [only] (drawing|pulling|draws|pulls) <amount>',
    drawnBeside,
  ),
  rule(
    '[(and|so)] [(the|that|this)] new one (is [only] (pulling|drawing)|pulls|draws|is at) <amount>',
    newOneDraws,
    { unheard: true, examples: [] },
  ),
  rule('(drawing|pulling) <amount>', drawnBehind, { examples: [] }),
  rule('(and|but) [it is] (getting|seeing) <amount>', fedBeside, { examples: [] }),
  rule(
    '<pause> [(and|with)] [(it is|they are|at|drawing|pulling)] <amount> (each|apiece|a piece)',
    drawnEach,
  ),
  rule(
    '<pause> [and] [the] control [(voltage|volts|circuit|side|power|transformer)] [(is|has|at)] <amount>',
    controlVolts,
  ),
];
