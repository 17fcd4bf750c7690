import type { Tags } from '../../grammar/nodes.ts';
import { isCutShort } from '../numbers/cut-numbers.ts';
import { droppedIn } from '../numbers/dropped-points.ts';
import { one } from './electrical.ts';
import { amountIn, readingOf } from '../numbers/measure.ts';
import { reading } from '../readings/reading-means.ts';
import type { PartId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, placeId, tagsIn } from '../slots.ts';
import type { Reading } from '../utterance.ts';

const RATED = { low: null, high: null, unit: 'uF', hedged: false, overlimit: false } as const;

/** What a can is marked, as far as one was said. */
function ratedIn(tags: Tags, ...[, frame]: Parameters<Means>): Reading | null {
  const value = numberIn(tagsIn(tags['rated'])?.['number']);
  return value === null ? null : reading('ratedCapacitance', { ...RATED, value }, frame);
}

/** "Fifteen microfarad run cap reads twelve": what it is marked, and what a meter reads of it. */
const readsOfRated: Means = (tags, frame) => {
  const rated = ratedIn(tags, tags, frame);
  const place = placeId(tags['place']);
  // "…six point five microfarads, common to run is thirty nine" begins another.
  if (place === null || WINDING.test(place)) return null;
  const read = readingOf('capacitance', amountIn(tags), { place, frame });
  return rated === null || read === null ? null : { readings: [rated, read] };
};

const WINDING = /^(?:common|run|start)(?:Start|Run|Ground)$/;

/** The same of the can that was named before it. */
const readsOfRatedCan: Means = (tags, frame) => {
  const rated = ratedIn(tags, tags, frame);
  const { value, unit } = amountIn(tags);
  // "I read twenty seven and the plate says thirty five" may be of amps.
  if (unit !== 'uF' && !/\brated\b/i.test(frame.wordsOf(frame.span))) return null;
  const means = (part: PartId): Meaning | null => {
    if (part !== 'runCapacitor' && part !== 'startCapacitor') return null;
    const read = readingOf('capacitance', amountIn(tags), { place: part, frame });
    return rated === null || read === null ? null : { readings: [rated, read] };
  };
  const left = value === null ? {} : { unclaimed: [String(value)] };
  const rating = rated === null ? {} : { readings: [rated] };
  return { ofIt: { means, inSentence: false, otherwise: { ...rating, ...left } } };
};

/** What a dual can is marked for the compressor and for its fan. */
function marksIn(tags: Tags, frame: Frame): readonly Reading[] | null {
  const rated =
    numberIn(tagsIn(tags['rated'])?.['number']) ?? numberIn(tagsIn(tags['whole'])?.['number']);
  const fan =
    numberIn(tagsIn(tags['fan'])?.['number']) ?? numberIn(tagsIn(tags['tenth'])?.['number']);
  if (rated === null || fan === null || fan >= rated) return null;
  const main = reading('ratedCapacitance', { ...RATED, value: rated }, frame);
  const side = reading('ratedCapacitance', { ...RATED, value: fan }, frame);
  if (main === null || side === null) return null;
  return [main, { ...side, place: 'condenserFan' }];
}

const dualRated: Means = (tags, frame) => {
  // "Eighty eight to one oh eight" is a start capacitor's range.
  const marks = isCutShort(frame) ? null : marksIn(tags, frame);
  return marks === null ? null : { readings: marks };
};

/** The volts with it stand in the note as they were told. */
const dualForVolts: Means = (tags, frame) => {
  const marks = marksIn(tags, frame);
  const volts = numberIn(tagsIn(tags['volts'])?.['number']) ?? 0;
  return marks === null || volts < LEAST_CAN_VOLTS
    ? null
    : { readings: marks, remarks: [frame.wordsOf(frame.span)] };
};

/** Each side of a dual can against its mark: the larger one is the compressor's. */
const dualRead: Means = (tags, frame) => {
  const marks = marksIn(tags, frame);
  const main = readingOf('capacitance', amountIn(tags), { place: 'runCapacitor', frame });
  const side = readingOf('capacitance', amountIn(tagsIn(tags['side']) ?? {}), {
    place: 'condenserFan',
    frame,
  });
  return marks === null || main === null || side === null
    ? null
    : { readings: [...marks, main, side] };
};

/** "Cap reads forty one on an eighty eight to one oh eight": from one figure to another only start capacitors are marked. */
const readsOfRange: Means = (tags, frame) => {
  const [least, most] = ['rated', 'most'].map((slot) => numberIn(tagsIn(tags[slot])?.['number']));
  if (!CANS.test(placeId(tags['place']) ?? '') || least == null || most == null || most <= least)
    return null;
  const read = readingOf('capacitance', amountIn(tags), { place: 'startCapacitor', frame });
  const range = { ...RATED, value: null, low: least, high: most };
  const rated = readingOf('ratedCapacitance', range, { place: 'startCapacitor', frame });
  return read === null || rated === null ? null : { readings: [read, rated] };
};
const CANS = /^(?:run|start)Capacitor$/;

const ratedAlone: Means = (tags, frame) => one(ratedIn(tags, tags, frame));

/** "Cap's a seven five" is marked 7.5 or 75. */
const droppedRating: Means = (tags, frame) => {
  const dropped = droppedIn(tagsIn(tags['rated']) ?? {});
  if (dropped === null) return null;
  const marked = reading('ratedCapacitance', { ...RATED, value: dropped.value }, frame);
  if (marked === null || dropped.or === null) return one(marked);
  return { doubts: [{ ...marked, why: 'saidTwoWays', or: dropped.or }] };
};

const onSide: Means = (tags, frame) => {
  const amount = amountIn(tags);
  if (amount.unit !== null && amount.unit !== 'uF') return null;
  return one(readingOf('capacitance', amount, { place: 'runCapacitor', frame }));
};

/** A dual can's other side, where the can was told of in the same breath; "four eight" of a fan's five is 4.8. */
const onFanSide: Means = (tags, frame) => {
  const dropped = droppedIn(tags);
  const amount = amountIn(dropped === null ? tags : { number: dropped.value });
  if (amount.unit !== null && amount.unit !== 'uF') return null;
  const value = dropped?.or ?? amount.value;
  const means = (quantity: QuantityId): Meaning | null =>
    quantity === 'capacitance' || quantity === 'ratedCapacitance'
      ? one(readingOf('capacitance', amount, { place: 'condenserFan', frame }))
      : null;
  const otherwise = value === null ? {} : { unclaimed: [String(value)] };
  return { ofThat: { means, otherwise } };
};

/** "Start cap's eighty eight to one oh eight": a meter swings between no such two. */
const ratedRange: Means = (tags, frame) => {
  const amount = amountIn(tags);
  const place = placeId(tags['place']);
  const isBare = amount.unit === null || amount.unit === 'uF';
  return place === 'startCapacitor' && isBare && amount.low !== null && !isCutShort(frame)
    ? one(readingOf('ratedCapacitance', amount, { place, frame }))
    : null;
};

/** A can's capacitance and its volts: no meter showed either. */
const ratedAtVolts: Means = (tags, frame) => {
  const amount = amountIn(tags);
  const place = placeId(tags['place']);
  const isCan = place === 'startCapacitor' || place === 'runCapacitor';
  const volts = numberIn(tagsIn(tags['volts'])?.['number']) ?? 0;
  if (!isCan || (amount.unit !== null && amount.unit !== 'uF') || volts < LEAST_CAN_VOLTS)
    return null;
  return one(readingOf('ratedCapacitance', amount, { place, frame }));
};
/** Common practice: cans are made for 110 volts and more. */
const LEAST_CAN_VOLTS = 110;

const CAN_VOLTS = [165, 220, 250, 330, 370, 440];
/** What was put in, by the two figures that it is ordered by. */
const newForVolts: Means = (tags, frame) => {
  const rated = numberIn(tagsIn(tags['rated'])?.['number']);
  const volts = numberIn(tagsIn(tags['volts'])?.['number']) ?? 0;
  const isStart = /\bstart/i.test(frame.wordsOf(frame.span));
  if (rated === null || !CAN_VOLTS.includes(volts)) return null;
  if (tags['work'] !== undefined && tags['work'] !== 'replace' && tags['work'] !== 'add')
    return null;
  const part = isStart ? 'startCapacitor' : 'runCapacitor';
  const called = `${rated} µF ${volts} V ${isStart ? 'start' : 'run'} capacitor`;
  return { work: [{ did: 'replace', part, called, words: frame.wordsOf(frame.span) }] };
};
const NEW_IN =
  '[(put in|installed|put|stuck in|i put in|and)] [(a|the|one)] new [(run|start)] (cap|capacitor) [(in|installed|is|in it)]';
const MARKED_ON = '(nameplate|name plate|plate|label|tag|can|sticker|case|rating)';

const UF = '(microfarad|mike|mic|microfarads)';
const READS =
  '(reads|reading|measures|measured|read|shows|showing|is|checked|checks|tests|tested|came in|comes in|at|down to)';
/** A can with a compressor's and a fan's side, and the two figures on it. */
const DUAL =
  '[the] [(dual|run|dual run)] (cap|capacitor) [(on|by) the (sticker|label|tag|side|can)]';
/** What it is built for beside, which nothing is judged by. */
const AT_VOLTS = '(at|by|<pause>) <number:volts> (volt|volts|v|vac)';
const MARKS = '(<droppedSurely>|<rating:rated> (and|over|by|slash|plus|to) <rating:fan>)';
const BUT = '[(and|but|<pause>)] [(it|it is|i|i am)]';
const GETTING =
  '[(and|but)] [(i am|it is|i|it)] [(getting|reading|reads|got|have|seeing|down to|measured|measures)]';

const ON_MOTOR =
  '[(on|for|off|off of) (it|that one|that|this one|that motor|the motor|<the> <part:of>)]';
const OUGHT_TO_BE =
  '((is|was) [(supposed|meant)] to be|supposed to be|ought to be|should be|should read|calls for|wants|takes)';

/** What capacitors are marked and what is read of them. */
export const CAPACITOR_RULES: readonly Rule[] = [
  rule(
    `<the> <place> [(only|just)] ${READS} [(at|only|only at)] <amount> [<pause>] [(and|but)] ((it is|that is|this is|on|off|of|out of) (a|an)|[(it is|and it is)] (marked|stamped|rated) [(at|for)]) <number:rated> (to|through|thru) <number:most> [${UF}]`,
    readsOfRange,
    { unheard: true, examples: ['cap reads forty one on an eighty eight to one oh eight'] },
  ),
  rule(
    '<the> <place> [is] rated [(at|for)] <number:rated> [(microfarads|microfarad)] [(is|it|and|it is|but it is|and it is|i am|i got|but)] (reads|reading|measures|measured|read|shows|is|checked|tests|tested) [(at|only)] <amount>',
    readsOfRated,
    { examples: ['cap rated thirty five reads thirty one'] },
  ),
  rule(
    '<pause> [(it is|is)] rated [(at|for)] <number:rated> [(microfarads|microfarad)] [(and|but|and it|but it|it)] (reads|reading|measures|measured|read|shows|checked|tests|tested) [(at|only)] <amount>',
    readsOfRatedCan,
  ),
  rule(
    `<the> <place> ${ON_MOTOR} (should be|is supposed to be|ought to be|should read|is marked|is stamped|says) [(a|at|about)] <number:rated> [${UF}] [<pause>] ${BUT} [(only|just)] ${READS} [(at|only)] <amount>`,
    readsOfRated,
    {
      unheard: true,
      examples: ['run cap should be forty and it is only reading twenty six microfarads'],
    },
  ),
  rule(
    `[(i|it|she|we)] [(only|just)] ${READS} [(at|only)] <amount> [<pause>] [(and|but)] [the] ${MARKED_ON} (says|is|calls for|reads|shows|has|wants) [(a|it is)] <number:rated> [${UF}]`,
    readsOfRatedCan,
    { unheard: true, examples: [] },
  ),
  rule(
    `[(i|we|just|and|then|also)] <done> <the> [(run|start)] (cap|capacitor) [<pause>] [(with|it is|put in)] [a] [new] <number:rated> [${UF}] [(at|by|<pause>)] <number:volts> [(volts|volt|v|vac)]`,
    newForVolts,
    { unheard: true, examples: ['replaced the run cap forty five three seventy'] },
  ),
  rule(
    `${NEW_IN} [<pause>] [(it is|a)] <number:rated> [${UF}] [(at|by|<pause>)] <number:volts> [(volts|volt|v|vac)]`,
    newForVolts,
    { unheard: true, examples: ['new run cap forty five three seventy'] },
  ),
  rule(
    `[(a|the|that|this)] <number:rated> ${UF} <place> [(is|it is)] [only] [${READS}] [(at|only|out at)] <amount>`,
    readsOfRated,
    {
      examples: ['fifteen microfarad run cap reads twelve'],
    },
  ),
  rule(
    `[(it is|that is|this is|got|i have)] (a|an|the) <number:rated> ${UF} <place> [<pause>] ${BUT} [(only|just)] ${READS} [(at|only|out at)] <amount>`,
    readsOfRated,
    { unheard: true, examples: ['it is a twenty microfarad run cap and it is reading thirteen'] },
  ),
  rule(
    `${DUAL} [is] [(a|rated|marked|stamped|it is a|says)] [(at|for)] ${MARKS} [${UF}] ${BUT} ${READS} [(at|only)] <amount> (and|over|<pause>) <amount:side>`,
    dualRead,
    { examples: ['the dual cap is a forty five and five reads forty one and four point eight'] },
  ),
  rule(
    `${DUAL} [is] [(a|rated|marked|stamped|it is a|says)] [(at|for)] ${MARKS} [${UF}]`,
    dualRated,
    {
      examples: ['the dual cap is rated forty five over five'],
    },
  ),
  rule(
    `${DUAL} [is] [(a|rated|marked|stamped|it is a|says)] [(at|for)] ${MARKS} [${UF}] ${AT_VOLTS}`,
    dualForVolts,
    {
      unheard: true,
      examples: ['run cap on the sticker is forty five over five at three seventy volts'],
    },
  ),
  rule(
    `[it is] [(a|the)] ${MARKS} [${UF}] ([dual] [run] (cap|capacitor)|dual) ${BUT} ${READS} [(at|only)] <amount> (and|over|<pause>) <amount:side>`,
    dualRead,
    { unheard: true, examples: ['forty over five dual reads thirty eight and four point nine'] },
  ),
  rule(`[it is] [(a|the)] ${MARKS} [${UF}] ([dual] [run] (cap|capacitor)|dual)`, dualRated, {
    examples: ['it is a thirty five five dual cap'],
  }),
  rule(
    `<the> ([new] <place> ((i|we) [just] (put|stuck) in|that went in)|new <place>) (is|was) [(a|an)] <amount> [${UF}] (at|by) <number:volts> [(volts|volt|v|vac)]`,
    ratedAtVolts,
    {
      unheard: true,
      examples: [
        'the start cap i put in was an eighty eight to one oh eight at three thirty volts',
      ],
    },
  ),
  rule(`<the> <place> is [(a|an)] <amount> [${UF}]`, ratedRange, {
    examples: ['start cap is eighty eight to one oh eight'],
  }),
  rule(`[the] [run] (cap|capacitor) is a <dropped:rated> [${UF}]`, droppedRating, {
    examples: ['run cap is a seven five'],
  }),
  rule(
    `[the] [run] (cap|capacitor) is (a|rated|marked) [(at|for)] <number:rated> [${UF}]`,
    ratedAlone,
    {
      examples: ['run cap is a forty five microfarad'],
    },
  ),
  rule(
    `(<the> [(run|fan|fan motor|compressor)] (cap|capacitor) ${ON_MOTOR} ${OUGHT_TO_BE} [(a|an|at)] <number:rated> [${UF}]|[(it|that|this|that one)] [is] (supposed to be|ought to be|should be|should read) [(a|an)] <number:rated> ${UF} [(cap|capacitor)] ${ON_MOTOR})`,
    ratedAlone,
    {
      unheard: true,
      only: (frame) => !isCutShort(frame),
      examples: ['cap on that fan motor is supposed to be a five microfarad'],
    },
  ),
  rule(
    `([the] (herm|hermetic|compressor side|h e r m) [(side|terminal|leg)] [to (common|c)]|(common|c) to (herm|hermetic)) [(is|${READS})] [(at|only)] <amount>`,
    onSide,
    { examples: ['herm side is at thirty one'] },
  ),
  rule(
    '([the] fan ((side|terminal) [to (common|c)]|to (common|c))|(common|c) to fan) [is] [only] [(at|reading|reads|showing)] <dropped>',
    onFanSide,
    {
      examples: [],
    },
  ),
  rule(
    '([the] fan ((side|terminal) [to (common|c)]|to (common|c))|(common|c) to fan) [is] [only] [(at|reading|reads|showing)] <amount>',
    onFanSide,
    {
      examples: [],
    },
  ),
  rule(
    `${GETTING} <amount> (on|at|to|from) [the] (herm|hermetic|compressor side|h e r m) [(side|terminal|leg|to common)]`,
    onSide,
    { examples: ['getting thirty eight on the herm side'] },
  ),
];
