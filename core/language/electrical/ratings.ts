import { ONES } from '../../terms/number-words.ts';
import type { Tags } from '../../grammar/nodes.ts';
import type { PartId, PlaceId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { settingByKind } from '../facts/controls.ts';
import { one } from './electrical.ts';
import { droppedIn, pointedBeside } from '../numbers/dropped-points.ts';
import { wordBehind } from '../words/clause-start.ts';
import { nameplate, plateItem } from '../facts/facts.ts';
import { plateItemNamedIn } from '../questions/named-in.ts';
import { holdsNumber } from '../words/own-reading.ts';
import { fanPlace, FANS } from '../words/fans.ts';
import { remark } from '../plain-means.ts';
import { amountIn, readingOf } from '../numbers/measure.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, partId, placeId, tagsIn } from '../slots.ts';
import type { NameplateItem, Reading } from '../utterance.ts';

const CANS: readonly (PartId | PlaceId | null)[] = ['runCapacitor', 'startCapacitor'];

/** What a can is marked; only a start capacitor's is told apart, as the run capacitor's is judged by its own. */
export function ratedCan(tags: Tags, place: PartId | PlaceId | null, frame: Frame): Meaning | null {
  const at = place === 'startCapacitor' || isOfStart(tags, frame) ? 'startCapacitor' : null;
  const found = readingOf('ratedCapacitance', amountIn(tags), { place: at, frame });
  return found === null ? null : { readings: [found] };
}

/** The numbers of an amount that nobody can place: they are asked about. */
function leftToAsk(tags: Tags): Meaning {
  const { value, low, high } = amountIn(tags);
  const numbers = [value, low, high].filter((number) => number !== null);
  return { unclaimed: numbers.map(String) };
}

/** Common practice: from one figure to another only start capacitors are marked, whatever "cap" is said. */
const isOfStart = (tags: Tags, frame: Frame): boolean =>
  amountIn(tags).low !== null && !/\b(?:run|fan|dual|condenser)\b/i.test(frame.wordsOf(frame.span));

function ofPart(tags: Tags, part: PartId | PlaceId, frame: Frame): Meaning | null {
  if (CANS.includes(part)) return ratedCan(tags, part, frame);
  return part === 'compressor' && saysAmps(tags, frame)
    ? nameplate('ratedLoadAmps')(tags, frame)
    : null;
}

/** "It's stamped four hundred", said of a compressor, is no current. */
const saysAmps = (tags: Tags, frame: Frame): boolean =>
  amountIn(tags).unit === 'A' || /\brated\b/i.test(frame.wordsOf(frame.span));

function ofQuantity(
  tags: Tags,
  read: { readonly quantity: QuantityId; readonly place: PlaceId | null },
  frame: Frame,
): Meaning | null {
  if (read.quantity === 'capacitance') return ratedCan(tags, read.place, frame);
  if (read.quantity === 'current' && isOfCompressor(read.place, frame))
    return nameplate('ratedLoadAmps')(tags, frame);
  return read.quantity === 'voltage' ? nameplate('voltage')(tags, frame) : null;
}

/** What was drawn by nobody in particular is the compressor's, unless a fan was spoken of. */
const isOfCompressor = (place: PlaceId | null, { context }: Frame): boolean =>
  place === 'compressor' || (place === null && !FANS.some((fan) => fan === context.lastPart));

/** "Rated four point six amps"; where amps were read just before, "rated is four point six" is told of them. */
const ratedAmps: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  const isAmps = unit === 'A' || (unit === null && frame.context.lastQuantity === 'current');
  const isOwn = isOfCompressor(frame.context.lastPlace, frame);
  return isAmps && isOwn ? nameplate('ratedLoadAmps')(tags, frame) : null;
};

/** "It's marked one eighty nine to two twenty seven": of what was read or named last, whose setting it may be too. */
const marked: Means = (tags, frame) => {
  if (amountIn(tags).unit === 'uF') return ratedCan(tags, frame.context.lastPlace, frame);
  const means = (part: PartId): Meaning | null =>
    ofPart(tags, part, frame) ?? settingByKind(tags, part, frame) ?? leftToAsk(tags);
  const { lastPart, lastQuantity } = frame.context;
  // "It's rated seven two" is said of no control: they are set or marked.
  if (/\brated\b/i.test(frame.wordsOf(frame.span)) && !SETS.includes(lastPart)) {
    return {
      ofThat: {
        means: (quantity, place) => ofQuantity(tags, { quantity, place }, frame),
        otherwise: leftToAsk(tags),
      },
      ofIt: { means: (part) => ofPart(tags, part, frame) ?? leftToAsk(tags), inSentence: false },
    };
  }
  const kind = lastQuantity === 'lowCutinPressure' ? 'lowPressureSwitch' : lastPart;
  return {
    ofThat: {
      means: (quantity, place) => ofQuantity(tags, { quantity, place }, frame),
      otherwise: settingByKind(tags, kind, frame) ?? leftToAsk(tags),
    },
    ofIt: { means, inSentence: false },
  };
};

const SETS: readonly (PartId | null)[] = ['highPressureSwitch', 'lowPressureSwitch', 'fanControl'];

/** "Reads thirty one, supposed to be thirty five": a can's rating; of anything else it is what somebody would like. */
const supposed: Means = (tags, frame) => {
  const { lastQuantity, lastPlace } = frame.context;
  const last = lastQuantity === 'capacitance' ? ratedCan(tags, lastPlace, frame) : null;
  const means = (quantity: QuantityId, place: PlaceId | null): Meaning | null =>
    quantity === 'capacitance' ? ratedCan(tags, place, frame) : {};
  return { ofThat: { means, otherwise: last ?? {} } };
};

/** The same straight behind what was read, without a pause: of anything but a can it is asked about. */
const ofCanRead: Means = (tags, frame) => {
  const means = (quantity: QuantityId, place: PlaceId | null): Meaning | null =>
    quantity === 'capacitance' ? ratedCan(tags, place, frame) : null;
  const otherwise = leftToAsk(tags);
  return frame.span.from <= 1 ? null : { ofThat: { means, otherwise } };
};

/** Alone it is a rating only where a can was just read: "it should be thirty eight" may be said of a box. */
const supposedAlone: Means = (tags, frame) =>
  frame.context.lastQuantity === 'capacitance'
    ? ratedCan(tags, frame.context.lastPlace, frame)
    : null;

const partMarked: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  if (place === null) return null;
  const isOfFan = FANS.some((fan) => fan === place) && amountIn(tags).unit === 'A';
  return isOfFan ? { remarks: [frame.wordsOf(frame.span)] } : ofPart(tags, place, frame);
};

/** "At locked rotor, forty two amps" was metered: no plate says so. */
const drawnLocked: Means = (tags, frame) =>
  one(readingOf('current', amountIn(tags), { place: placeId(tags['place']), frame }));

/** "Run cap should be thirty five, reading twenty eight" */
const ratedAndRead: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const rated = tagsIn(tags['rated']);
  if (!CANS.includes(place) || rated === null) return null;
  const marked = ratedCan(rated, place, frame)?.readings ?? [];
  const read = readingOf('capacitance', amountIn(tags), { place, frame });
  return read === null || marked.length === 0 ? null : { readings: [...marked, read] };
};

/** A fan's own rating is on no plate of the unit: it is kept in the words it was told in. */
const drawnAndRated: Means = (tags, frame) => {
  const place = placeId(tags['place']) ?? fanPlace(frame.context);
  const read = readingOf('current', amountIn(tags), { place, frame });
  const rated = tagsIn(tags['rated']);
  if (read === null || rated === null || amountIn(tags).unit === 'uF') return null;
  if (place !== 'compressor') return { readings: [read], remarks: [frame.wordsOf(frame.span)] };
  const plate = nameplate('ratedLoadAmps')(withPoint(rated, read, frame), frame);
  return plate && { ...plate, readings: [read] };
};

/** "Pulling six point eight, rated for eight one": no motor draws a tenth of its rating. */
function withPoint(rated: Tags, { value = 0 }: Reading, frame: Frame): Tags {
  const number = numberIn(rated['number']);
  const isDropped =
    number !== null &&
    number > 20 &&
    number < 100 &&
    number >= value * FAR_ABOVE &&
    SAYS_FIGURES.test(frame.wordsOf(frame.span));
  return isDropped ? { ...rated, number: number / 10 } : rated;
}
/** Ours: a compressor that draws less than a fifth of its rating does not pump. */
const FAR_ABOVE = 5;

/** "Pulling four point one, RLA five point two": the letters are of the figure behind them. */
const unlessGoesOn =
  (means: Means): Means =>
  (tags, frame) =>
    holdsNumber(wordBehind(frame)) || /^(?:is|of|says|one)$/.test(wordBehind(frame))
      ? null
      : means(tags, frame);

/** "Thirty eight locked rotor then it drops out": what goes on happening was drawn, and no plate says so. */
const unlessOfPlate =
  (means: Means): Means =>
  (tags, frame) =>
    HAPPENS.test(frame.wordsOf(frame.span)) || HAPPENS_NEXT.test(wordBehind(frame))
      ? means(tags, frame)
      : null;
const HAPPENS =
  /^(?:(?:it|she|compressor|motor)(?:'s| is)? )?[a-z]*(?:pull|hit|draw|drew|jump|go|went|spik|sho)/i;
const HAPPENS_NEXT = /^(?:then|until|till|before|when|while|every)$/;

/** "Locked rotor, forty eight amps" tells what it does and what it draws. */
const unlessBehindPause: Means = (tags, frame) =>
  amountIn(tags).unit === 'A' && /\brotor\s*[,;.—-]/i.test(frame.wordsOf(frame.span))
    ? drawnLocked(tags, frame)
    : nameplate('lockedRotorAmps')(tags, frame);

const PLATE_OF: Partial<Record<QuantityId, NameplateItem>> = {
  current: 'ratedLoadAmps',
  voltage: 'voltage',
  refrigerantCharge: 'charge',
};

/** "Plate says two point four": of what the sentence asked for, else of what was read last; a fan's own is on no plate of the unit. */
const plateOfThat: Means = (tags, frame) => {
  if (amountIn(tags).unit !== null) return null;
  const named = plateItemNamedIn(
    ` ${frame.wordsOf({ from: 0, to: frame.span.from })} `.toLowerCase(),
  );
  if (named !== null) return nameplate(named)(tags, frame);
  const of = (quantity: QuantityId | null, place: PlaceId | null): Meaning | null => {
    const item = quantity === null ? undefined : PLATE_OF[quantity];
    if (quantity === 'current' && !isOfCompressor(place, frame)) return remark(tags, frame);
    return item === undefined ? null : nameplate(item)(tags, frame);
  };
  const { lastQuantity, lastPlace } = frame.context;
  return { ofThat: { means: of, otherwise: of(lastQuantity, lastPlace) ?? leftToAsk(tags) } };
};

/** "Drawing eleven four, tag says twelve two": without their points, both. */
const ampsOfThat: Means = (tags, frame) => {
  const { value = null } = droppedIn(tags) ?? {};
  if (value === null) return null;
  const plate = nameplate('ratedLoadAmps')({ number: value, unit: 'A' }, frame);
  const means = (quantity: QuantityId): Meaning | null => (quantity === 'current' ? plate : null);
  return { ofThat: { means, otherwise: { unclaimed: [String(value)] } } };
};

/** "It's drawing seven point two": of the motor that was metered last; a fan's own tag is on no plate of the unit. */
export const itDraws: Means = (tags, frame) => {
  const { lastPlace } = frame.context;
  const { unit } = amountIn(tags);
  if ((unit !== null && unit !== 'A') || PLAIN_FIGURES.test(frame.wordsOf(frame.span))) return null;
  const isMotor = lastPlace === 'compressor' || FANS.some((fan) => fan === lastPlace);
  const read = readingOf('current', amountIn(tags), { place: isMotor ? lastPlace : null, frame });
  const plate = tagsIn(tags['plate']);
  if (read === null || plate === null) return read === null ? null : { readings: [read] };
  if (!isOfCompressor(read.place, frame))
    return { readings: [read], remarks: [frame.wordsOf(frame.span)] };
  const rated = nameplate('ratedLoadAmps')(besideDrawn(plate, read, frame), frame);
  return rated && { ...rated, readings: [read] };
};

function besideDrawn(plate: Tags, { value: read }: Reading, frame: Frame): Tags {
  const { value } = amountIn(plate);
  const words = frame.wordsOf(frame.span);
  return value === null ? plate : { ...plate, number: pointedBeside(value, read ?? null, words) };
}

/** "Drawing eight two" is said of 8.2 and of 82: other rules ask. */
const FIGURE = `(?:${ONES.join('|')})`;
/** Two figures at the end, and no number of two places. */
const SAYS_FIGURES = new RegExp(` ${FIGURE} ${FIGURE}$`, 'i');
const PLAIN_FIGURES = new RegExp(`(?:ing|pulls|draws) ${FIGURE} ${FIGURE}\\b`, 'i');

/** "The can says forty five" */
const canSays: Means = (tags, frame) => ratedCan(tags, frame.context.lastPlace, frame);

const aCanOf: Means = (tags, frame) => {
  const place = partId(tags['place']) ?? frame.context.lastPlace;
  const number = numberIn(tagsIn(tags['rated'])?.['number']);
  return number === null ? null : ratedCan({ number, unit: 'uF' }, place, frame);
};

/** "Run cap reads twenty nine, it's a thirty five" */
const readsAndIs: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  if (!CANS.includes(place)) return null;
  const read = readingOf('capacitance', amountIn(tags), { place, frame });
  const rated = aCanOf(tags, frame);
  if (read === null || rated === null) return null;
  return { readings: [read, ...(rated.readings ?? [])] };
};

/** Of 7.5 and 75 the one that what was read is nearer to. */
const readsOfDropped: Means = (tags, frame) => {
  const dropped = droppedIn(tagsIn(tags['rated']) ?? {});
  const read = amountIn(tags).value;
  if (dropped === null || read === null || read <= 0) return null;
  const { value, or } = dropped;
  const number = or !== null && read > value * MOST_OVER_MARK ? or : value;
  return readsAndIs({ ...tags, rated: { number } }, frame);
};
/** Ours: no can holds three times what it is marked. */
const MOST_OVER_MARK = 3;

const MARKED =
  '(marked|stamped|rated|labeled|labelled|printed|sized) [(at|for|with|as|from|between)]';
const SUPPOSED = '(should be|ought to be|is supposed to be|supposed to be|is meant to be)';
const UF = '(microfarad|microfarads|mike|mikes|mic|mics)';
const READS =
  '(reads|reading|is reading|measures|measured|read|shows|is|is at|checked|checks|tests|tested|[is] testing) [at]';
const PLATE =
  '[(<the> (nameplate|plate|tag|data plate|name plate|sticker|label) [(is|says|shows|reads|has|calls for)]|it is|it has|that is|compressor is|<the> compressor is|(it|this|unit) (calls for|takes|wants))] [(a|an)]';

/** What parts are rated and marked, told of what was spoken of before, and what a plate says with its letters behind. */
export const RATING_RULES: readonly Rule[] = [
  rule(
    '[(it|she)] [is] [only] (pulling|drawing|pulls|draws) <amount> [<pause>] [(and|but)] [the] (nameplate|plate|tag|data plate|name plate|sticker|label|rla) (is|says|shows|reads|has|calls for) <amount:plate>',
    itDraws,
    { examples: ['it is drawing seven point two plate says five point five'] },
  ),
  rule(`[(and|but|<pause>)] (it|that|this) is ${MARKED} <amount>`, marked, { examples: [] }),
  rule(`(and|but|<pause>) ${MARKED} <amount>`, marked, { examples: [] }),
  rule(`<pause> [(and|but|so)] [(it|that|this|they)] ${SUPPOSED} [at] <amount>`, supposed),
  rule(`[(and|but|so)] (it|that|this) ${SUPPOSED} [at] <amount>`, supposedAlone, { alone: true }),
  rule(`[(and|but|it)] (${SUPPOSED} [at]|[is] rated [(at|for)]) <amount>`, ofCanRead, {
    examples: [],
  }),
  // What is expected there was read by nobody.
  rule(
    `[(it|that|this|there|you|i|we)] (${SUPPOSED}|should (have|read|see|get|show)|would (have|expect|want)) [at] <amount> (on|at|across|to|between|through|into|over|coming to) <the> <place>`,
    () => ({}),
    { examples: ['should be around one twenty on the contactor'] },
  ),
  rule(`<the> <place> [(is|are)] ${MARKED} <amount> [(each|apiece)]`, partMarked, {
    examples: ['start cap is marked one eighty nine to two twenty seven', 'run cap rated ten'],
  }),
  rule(
    `<the> <place> (says|reads|shows|has) <amount> [(${MARKED}|right)] on (<the> (side|can|case|label|end|body)|it)`,
    partMarked,
    { examples: ['start cap says one eighty nine to two twenty seven on the side'] },
  ),
  rule(`<amount> (is|was) what is (${MARKED}|written) on [the side of] <the> <place>`, partMarked, {
    examples: ['forty five microfarads is what is printed on the run cap'],
  }),
  rule(
    `<amount> (is|was) what [is on] <the> <place> (is (rated|marked|stamped|labeled) [(at|for)]|says [on (it|the side)])`,
    partMarked,
    { examples: ['thirty five is what the run cap is rated for'] },
  ),
  rule(`<amount> (on|out of|off of|from) (a|an) <dropped:rated> [${UF}] <place>`, readsOfDropped, {
    unheard: true,
    examples: ['seven point four microfarads on a seven five run cap'],
  }),
  rule(`<amount> (on|out of|off of|from) (a|an) <number:rated> [${UF}] <place>`, readsAndIs, {
    examples: ['fourteen microfarads on a fifteen microfarad run cap'],
  }),
  rule(`<the> <place> ${SUPPOSED} <amount>`, partMarked, {
    examples: ['run cap should be thirty five'],
  }),
  rule(
    `<the> (<place>|fan|fans|fan motor) [(is|are)] (pulling|drawing|pulls|draws|pulled|at|amps [(is|are|at)]) <amount> [(and|but)] [it is] (rated|marked|stamped) [(at|for)] <amount:rated>`,
    drawnAndRated,
    { examples: ['compressor pulling nine rated eleven'] },
  ),
  rule(
    '[the] (nameplate|plate|tag|data plate|name plate|sticker|label) (is|says|shows|reads|has|calls for) <amount>',
    plateOfThat,
  ),
  rule(
    '[(and|but)] [the] (nameplate|plate|tag|data plate|name plate|sticker|label) (is|says|shows|reads|has|calls for) <droppedSurely>',
    ampsOfThat,
  ),
  rule(
    `<the> <place> (${SUPPOSED} [at]|[is] (marked|stamped|labeled|printed) [(at|for)]) <amount:rated> [(and|but)] [(it is|i am|i have|i got)] (reads|reading|getting|measures|tests|is at|got) [(at|only)] <amount>`,
    ratedAndRead,
    { examples: ['run cap should be thirty five reading twenty eight'] },
  ),
  rule(`[<the>] (can|can itself|side of the can) (says|reads|is marked|shows) <amount>`, canSays, {
    examples: ['the can says forty five'],
  }),
  rule(
    `(it is|that is|this is|it takes|takes|has) (a|an) <number:rated> ${UF} [(cap|capacitor|can|run (cap|capacitor))]`,
    aCanOf,
    { examples: ['it is a thirty five microfarad'] },
  ),
  rule(
    `<the> <place> ${READS} <amount> [(and|but)] (it is|that is|this is|on|out of|off|of) (a|an) <dropped:rated> [${UF}]`,
    readsOfDropped,
    { examples: ['run cap reads two on a seven five'] },
  ),
  rule(
    `<the> <place> ${READS} <amount> [(and|but)] ((it is|that is|this is|on|off|of) (a|an)|out of [(a|an)]) <number:rated> [${UF}]`,
    readsAndIs,
    { examples: ['run cap reads twenty nine it is a thirty five'] },
  ),
  rule('[(it is|she is|and|but|and it is)] rated [load] [amps] [(is|at|for)] <amount>', ratedAmps, {
    unheard: true,
    examples: ['rated four point six amps'],
  }),
  rule(
    `[(it|she|compressor|motor)] [(pulls|pulled|hits|hit|draws|drew|(jumps|jumped|goes|went|spikes|spiked|shoots|shot) [(up|right up|straight)] to|is (pulling|drawing|hitting))] <amount> [amps] (locked rotor|lock rotor|lra) [amps]`,
    unlessOfPlate(drawnLocked),
    { unheard: true, examples: ['it pulls thirty eight locked rotor'] },
  ),
  rule(`${PLATE} <amount> <plateItem>`, unlessGoesOn(plateItem), {
    examples: ['nameplate says seven point four rla', 'it calls for a thirty amp max fuse'],
  }),
  rule(
    '[<the> <place> is] (at|pulling|drawing|pulled|drew) locked rotor [at] <amount>',
    drawnLocked,
    { examples: ['compressor is at locked rotor forty two amps'] },
  ),
  rule('[the] locked rotor [(is|of|says|rating [is])] <amount>', unlessBehindPause, {
    examples: ['locked rotor is twenty two'],
  }),
];
