import type { Tags } from '../../grammar/nodes.ts';
import type { PartId, PlaceId } from '../../terms/names.ts';
import { droppedIn } from '../numbers/dropped-points.ts';
import { electrical, GOT, NO_VOLTS, one } from './electrical.ts';
import { nameplate } from '../facts/facts.ts';
import { fanPlace } from '../words/fans.ts';
import { finding } from '../findings/finding-of.ts';
import { amountIn, readingOf } from '../numbers/measure.ts';
import { pointed } from './meter-figures.ts';
import { isNominalVoltage } from '../numbers/nominal-voltages.ts';
import { itDraws } from './ratings.ts';
import { remark } from '../plain-means.ts';
import { opensSentence } from '../words/clause-start.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, placeId, stateId, tagsIn } from '../slots.ts';

const leftToAsk = (tags: Tags): Meaning => {
  const { value, low, high } = amountIn(tags);
  return { unclaimed: [value, low, high].filter((number) => number !== null).map(String) };
};

/** "Voltage's fine, one eighteen": what is fed, and that it looks so is the technician's. */
const supply: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  return unit === null || unit === 'V'
    ? one(readingOf('voltage', amountIn(tags), { place: null, frame }))
    : null;
};

/** "It says one fifteen on the plate": a bare number is a voltage where supplies are named by it. */
const onPlate: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  if (unit === 'A') return nameplate('ratedLoadAmps')(tags, frame);
  if (unit === 'V') return nameplate('voltage')(tags, frame);
  if (unit !== null) return nameplate('charge')(tags, frame);
  return value !== null && isNominalVoltage(value)
    ? nameplate('voltage')(tags, frame)
    : leftToAsk(tags);
};

/** "Overload's closed, point two ohms": both of the thing that was named, where the unit tells what was read. */
const stateAndRead: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const part = partId(place ?? undefined);
  const state = stateId(tags['state']);
  const { unit } = amountIn(tags);
  const read = electrical(tags, place, frame);
  if (part === null || state === null || read === null || (unit === null && !read.overlimit))
    return null;
  // "Compressor's running eight point three amps" tells what it draws.
  if (state === 'running' && !/[,;.]/.test(frame.wordsOf(frame.span).replace(/\d\.\d/g, '')))
    return { readings: [read] };
  return { readings: [read], findings: [finding(part, state, frame)] };
};

/** "Relay's open between one and two": the numbers name its terminals. */
const betweenTerminals: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const state = stateId(tags['state']);
  return part !== null && state !== null && TERMINALS.includes(part)
    ? { findings: [finding(part, state, frame)] }
    : null;
};
const TERMINALS: readonly PartId[] = [
  ...(['startRelay', 'defrostTimer', 'contactor', 'temperatureControl', 'controller'] as const),
  ...(['overload', 'highPressureSwitch', 'lowPressureSwitch', 'defrostTermination'] as const),
  ...(['fanControl', 'doorSwitch'] as const),
];

/** "Four fifty watts at one fifteen" is printed on it: kept as it was said, since it is on no plate of the unit. */
const ratedWatts: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  return unit === 'W' || unit === 'kW' ? { remarks: [frame.wordsOf(frame.span)] } : null;
};

const CANS: readonly (PlaceId | PartId | null)[] = ['runCapacitor', 'startCapacitor'];

const isCanLast = ({ context: { lastQuantity } }: Frame): boolean =>
  lastQuantity === 'ratedCapacitance' || lastQuantity === 'capacitance';

function lastCan(frame: Frame): PlaceId | null {
  const { lastPart, lastPlace } = frame.context;
  const can = [lastPlace, placeId(lastPart ?? undefined)].find((each) => CANS.includes(each));
  return can ?? (isCanLast(frame) ? 'runCapacitor' : null);
}

/** "Fan motor's twelve watts, drawing point three": what it is built for is printed on it alone. */
const wattsAndDrawn: Means = (tags, frame) => {
  const { unit } = amountIn(tagsIn(tags['rated']) ?? {});
  const place = placeId(tags['place']) ?? fanPlace(frame.context);
  const read = readingOf('current', amountIn(tags), { place, frame });
  return (unit !== 'W' && unit !== 'kW') || read === null
    ? null
    : { readings: [read], remarks: [frame.wordsOf(frame.span)] };
};

/** "Reads one forty one": of the can that was named or whose rating was told last; of anything else it is asked. */
const itReads: Means = (tags, frame) => {
  const { unit, overlimit } = amountIn(tags);
  const can = lastCan(frame);
  if (can !== null && (unit === null || unit === 'uF') && !overlimit)
    return one(readingOf('capacitance', amountIn(tags), { place: can, frame }));
  const { lastQuantity, lastPlace } = frame.context;
  const isOhmed = lastQuantity === 'resistance' || lastQuantity === 'insulationResistance';
  if (overlimit && isOhmed)
    return one(readingOf(lastQuantity, amountIn(tags), { place: lastPlace, frame }));
  return leftToAsk(tags);
};

/** "Run cap's fifteen, measures fourteen and a half" */
const ratedThenRead: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const rated = tagsIn(tags['rated']);
  if (!CANS.includes(place) || rated === null) return null;
  const at = place === 'startCapacitor' ? place : null;
  const marked = readingOf('ratedCapacitance', amountIn(rated), { place: at, frame });
  const read = readingOf('capacitance', amountIn(pointed(tags)), { place, frame });
  const most = marked?.value ?? marked?.high;
  if (marked === null || most === undefined || read === null) return null;
  const { or = null } = droppedIn(tags) ?? {};
  return or === null || or > most * MOST_OVER_MARK
    ? { readings: [marked, read] }
    : { readings: [marked], doubts: [{ ...read, why: 'saidTwoWays', or }] };
};
/** Ours: no can holds three times what it is marked. */
const MOST_OVER_MARK = 3;

/** "Cap's a seven five, reading four": of 7.5 and 75 the one that what was read is nearer to. */
const droppedThenRead: Means = (tags, frame) => {
  const dropped = droppedIn(tagsIn(tags['rated']) ?? {});
  const read = amountIn(pointed(tags)).value;
  if (dropped === null || read === null || read <= 0) return null;
  const { value, or } = dropped;
  const number = or !== null && read > value * MOST_OVER_MARK ? or : value;
  return ratedThenRead({ ...tags, rated: { number } }, frame);
};
/** What a start capacitor is marked, with the volts that it is for, which nothing is judged by. */
const canForVolts: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  if (!CANS.includes(place)) return null;
  const at = place === 'startCapacitor' ? place : null;
  const words = frame.wordsOf(frame.span);
  const marked = readingOf('ratedCapacitance', amountIn(tags), { place: at, frame });
  return marked === null ? null : { readings: [marked], remarks: [words] };
};

/** "…, meter says thirty eight two": of the can whose marks were told in the same breath. */
const ofCanSaid: Means = (tags, frame) => {
  const amount = amountIn(pointed(tags));
  if (amount.unit !== null && amount.unit !== 'uF')
    return one(electrical(pointed(tags), null, frame));
  const means = (quantity: QuantityId): Meaning | null =>
    quantity === 'ratedCapacitance' || quantity === 'capacitance'
      ? one(readingOf('capacitance', amount, { place: lastCan(frame) ?? 'runCapacitor', frame }))
      : null;
  return { ofThat: { means, otherwise: leftToAsk(pointed(tags)) } };
};

const allToGround: Means = (tags, frame) => {
  const amount = amountIn(tags);
  if (amount.unit !== null && amount.unit !== 'Mohm') return null;
  return amount.overlimit || amount.unit === 'Mohm'
    ? one(readingOf('insulationResistance', amount, { place: null, frame }))
    : null;
};

const shotUp: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  const place = placeId(tags['place']);
  return unit === null || unit === 'A'
    ? one(readingOf('current', amountIn(tags), { place, frame }))
    : null;
};

const COILS: readonly (PartId | null)[] = [
  ...(['contactor', 'liquidLineSolenoid', 'startRelay', 'hotGasValve'] as const),
];

/** The coil that pulls something in: of what was named last, whose sides are a contactor's; any coil may be meant else. */
const atCoil =
  (nothing: boolean): Means =>
  (tags, frame) => {
    const { unit } = amountIn(tags);
    if (unit !== null && unit !== 'V') return null;
    const at = (place: PlaceId | null): Meaning | null =>
      place === null ? null : one(electrical(nothing ? { number: 0 } : tags, place, frame));
    const means = (part: PartId): Meaning | null =>
      COILS.includes(part) ? at(placeId(part)) : null;
    if (/\bcontactor coil$/i.test(frame.wordsOf(frame.span))) return at('contactor');
    const { lastPlace } = frame.context;
    const ofSides = lastPlace === 'lineSide' || lastPlace === 'loadSide' ? at('contactor') : null;
    const ofLast = COILS.find((each) => each !== null && each === lastPlace) ?? null;
    const otherwise =
      ofSides ?? at(placeId(ofLast ?? undefined)) ?? (nothing ? {} : leftToAsk(tags));
    return { ofIt: { means, inSentence: false, otherwise } };
  };

/** "Nothing", where the leads were sent somewhere: of the place that was asked for. */
const nothingThere: Means = (_tags, frame) => {
  const { asked, askedPlace, sentNow } = frame.context;
  const isSent = sentNow && asked === 'voltage' && askedPlace !== null;
  return isSent ? one(electrical({ number: 0, unit: 'V' }, askedPlace, frame)) : null;
};

/** Where voltage was read at a coil it asks what that tells: kept as it was said, and answered. */
const noClick: Means = (_tags, frame) => {
  const { lastPlace } = frame.context;
  const at = COILS.find((each) => each !== null && each === lastPlace) ?? null;
  const about = placeId(at ?? undefined);
  const kept = { remarks: [frame.wordsOf(frame.span)] };
  return about === null ? kept : { ...kept, questions: [{ ask: 'switch', about }] };
};

/** "Coil has zero volts on it": told before its figure, it must be volts, as a coil of pipes has degrees. */
const coilReads: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  const { lastPlace } = frame.context;
  const isMetered =
    lastPlace === 'lineSide' ||
    lastPlace === 'loadSide' ||
    COILS.some((each) => each !== null && each === lastPlace);
  const isVolts =
    unit === 'V' || (unit === null && value !== null && (value === 0 || value >= MAINS));
  if (!isVolts || (unit === null && !isMetered)) return null;
  return isMetered ? atCoil(value === 0)(tags, frame) : one(electrical(tags, null, frame));
};
/** No coil of pipes reads as many degrees. */
const MAINS = 100;

/** "Condenser fan's not running, two twenty nine across it": of what was named in the same breath. */
export const acrossIt: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  if (unit !== null && unit !== 'V') return null;
  const means = (part: PartId): Meaning | null => {
    const place = METERED_AT[part] ?? placeId(part);
    const quantity = amountIn(tags).overlimit ? 'resistance' : 'voltage';
    return place === null ? null : one(readingOf(quantity, amountIn(tags), { place, frame }));
  };
  return { ofIt: { means, inSentence: true, otherwise: leftToAsk(tags) } };
};
const METERED_AT: Partial<Record<PartId, PlaceId>> = {
  condenserFanMotor: 'condenserFan',
  evaporatorFanMotor: 'evaporatorFan',
};

const FINE =
  '(fine|good|ok|all right|right|there|low|high|steady|right on|a little (low|high)|a bit (low|high)|on the money)';
const READS =
  '(reads|reading|measures|measuring|measured|read|checks|tests|tested|checked|showing|shows|comes in|came in|getting|only)';
const MARKED = '(marked|stamped|rated|labeled|printed|says|a|reads on the side)';

/** What a motor draws as it starts is no running current. */
const INRUSH = '(inrush|in rush|starting|start up|startup|start)';
const SHOT =
  '(shot|jumped|spiked|went|climbed|shoots|goes|jumps|spikes|took off) [(right|way|all the way|up|straight)] [up] to';

/** What meters and plates show, told as a sentence that goes on. */
export const METER_TALK_RULES: readonly Rule[] = [
  rule('(it|she) is [only] (pulling|drawing) <amount>', itDraws, { alone: true, examples: [] }),
  rule(
    `[the] ([(line|supply|incoming|input|control)] (voltage|power)|(line|incoming) supply) (is|looks|checks|reads|checks out|seems) ${FINE} [<pause>] [(at|it is|i have|i got|with|i have got)] <amount>`,
    supply,
    { examples: ['voltage is fine one eighteen'] },
  ),
  rule(
    '(it says|it has|it has got|it shows|says|there is|i see|it is) <amount> on the (plate|nameplate|tag|data plate|name plate|sticker|label)',
    onPlate,
    { examples: ['it says one fifteen on the plate'] },
  ),
  rule(
    `<the> <place> (is|was|shows|reads|checks) <very> <state> [(<pause>|~~because|~~since)] [(at|and|with|it reads|it is|i got|i have|reads|reading|~~it (tests|checks|ohms out|draws|pulls)|~~i am reading|~~(drawing|pulling|draws|pulls|it is drawing|it is pulling))] <amount>`,
    stateAndRead,
    { examples: ['overload is closed point two ohms'] },
  ),
  rule(
    `(no coil (voltage|volts|power)|${GOT} ${NO_VOLTS} (at|on|to|across|getting to) [the] [(control|contactor)] coil|[the] coil (has|is getting|gets|has got|is seeing) [got] ${NO_VOLTS})`,
    atCoil(true),
    { examples: [] },
  ),
  rule(
    `[(i have [got]|i got|i get|i am getting|i am reading|got|getting|there is|it is|it reads|it says|it shows|reading|reads|[the] meter (says|reads|shows))] (${NO_VOLTS}|zip|dead|nothing at all|not a thing) [(there|on it|across it|at all)]`,
    nothingThere,
    { alone: true, unheard: true, examples: [] },
  ),
  rule(
    '[(and|but|so)] [it is not [<pause>]] (it|that|she|the (coil|valve|solenoid|contactor|relay)) (is not|does not|did not|will not|is not even) [(even|really)] (click|clicking) [(on|in|over|at all|when <clause>)]|[(and|but|so)] (no|not a|i do not hear [(a|any|it)]|i did not hear [(a|any|it)]|can not hear [(a|any|it)]|no sound of a) (click|clicking) [(at all|from it|out of it)]',
    noClick,
    { alone: true, unheard: true, examples: ['it is not clicking'] },
  ),
  rule(
    '[the] coil (has|has got|is got|got|gets|is getting|reads|is reading|shows|is showing|is at|is seeing|sees) [(only|about|just)] <amount> [(on|across|at|to|over) it]',
    coilReads,
    { unheard: true, examples: ['coil has zero volts on it'] },
  ),
  rule(`${GOT} <amount> (at|on|to|across|over) [the] [control] coil`, atCoil(false), {
    examples: [],
  }),
  rule(
    '<the> <part> (has|has got|is got|got|shows|reads) [got] (nothing|no (continuity|reading|path)) (between|across|from) [terminals] <number> (and|to) <number:other>',
    (tags, frame) => betweenTerminals({ ...tags, state: 'open' }, frame),
    { examples: ['relay has got nothing between five and two'] },
  ),
  rule('[(and|but)] [(the|my)] meter (says|reads|shows|is showing|gives me) <amount>', ofCanSaid, {
    examples: [],
  }),
  rule(
    '[(and|but)] [(the|my)] meter (says|reads|shows|is showing|gives me) <droppedSurely>',
    ofCanSaid,
    { examples: [] },
  ),
  rule(
    '<the> <part> (is|was|shows|reads|checks) <very> <state> (between|across|from) [terminals] <number> (and|to) <number:other>',
    betweenTerminals,
    { examples: ['potential relay is open between one and two'] },
  ),
  rule(
    '[(it is|that is|they are|rated|it is rated)] [(a|at)] <amount> (at|on) <number:volts> [volts]',
    ratedWatts,
    { examples: ['it is four hundred fifty watts at one fifteen'] },
  ),
  rule(
    `<the> <place> is a <dropped:rated> [(microfarads|microfarad)] <pause> [(and|but)] [(it|it is|i am|i)] (${READS}|got|have) [(at|only|out at)] <amount>`,
    droppedThenRead,
    { examples: [] },
  ),
  rule(
    `<the> <place> is [${MARKED}] <amount:rated> [(microfarads|microfarad)] [<pause>] [(and|but)] [(it|it is|i am|i)] (${READS}|got|have) [(at|only|out at)] <dropped>`,
    ratedThenRead,
    { examples: ['run cap is seven and a half it is reading five two'] },
  ),
  rule(
    `<the> <place> is [${MARKED}] <amount:rated> [(microfarads|microfarad)] [<pause>] [(and|but)] [(it|it is|i am|i)] (${READS}|got|have) [(at|only|out at)] (<amount>|<droppedSurely>)`,
    ratedThenRead,
    { examples: ['run cap is fifteen measures fourteen and a half'] },
  ),
  rule(
    '<the> <place> [is] (a|marked|stamped|rated|labeled|printed) [(at|for|from|as)] <amount> [microfarads] (at|for) <number:volts> [(volts|vac|volt)]',
    canForVolts,
    { examples: ['start cap is marked one eighty nine to two twenty seven at two fifty'] },
  ),
  rule(
    '<the> (<place>|fan|fan motor|motor) is [a] <amount:rated> [motor] [<pause>] [(and|but)] [(it is|is)] (drawing|pulling) <amount>',
    wattsAndDrawn,
    { examples: ['fan motor is twelve watts drawing point three'] },
  ),
  rule('[(and|but)] i am [only] (reading|getting|seeing) [only] <amount>', itReads, {
    unheard: true,
    alone: true,
    only: isCanLast,
    examples: [],
  }),
  rule(`[(and|but)] [(it|that|and it)] ${READS} [(at|only|out at)] <amount>`, itReads, {
    alone: true,
    examples: ['reads one forty one'],
  }),
  rule(`[(and|but)] [it] ${READS} [(at|only)] <amount> so`, itReads, {
    unheard: true,
    only: (frame) => isCanLast(frame) && opensSentence(frame),
    examples: [],
  }),
  rule(
    `[(and|but)] (all three [(pins|windings|terminals|legs)]|all|all [of] (them|the (windings|pins|terminals))|every (winding|pin|terminal)|each [(winding|pin|terminal)]|both) to ground [<pause>] [(is|are|read|reads|at|all)] <amount>`,
    allToGround,
    { examples: ['all three to ground ol'] },
  ),
  rule(
    '[(and|but)] (all three [(pins|windings|terminals|legs)]|all of (them|the windings|the pins)|every (winding|pin|terminal)|both) to ground [<pause>] [(is|are|read|reads|i have|i got|shows)] (nothing|clear|clean|good|open|no reading)',
    (_tags, frame) =>
      one(readingOf('insulationResistance', amountIn({ overlimit: true }), { place: null, frame })),
    { examples: ['all three to ground nothing'] },
  ),
  rule(`${GOT} <amount> (across|on|to) it`, acrossIt, { examples: [] }),
  rule(
    `[(the|my|it is)] [${INRUSH}] (amps|current|amp draw|amperage|draw) ${SHOT} <amount> [<pause>] [(and|but|then)] [it] (came|dropped|fell|went|settled|come) [(right|straight)] (back|back down|down|back in)`,
    remark,
    { unheard: true, examples: ['amps spiked to twenty eight and came right back down'] },
  ),
  rule(
    `[(the|my|it is)] ${INRUSH} (amps|current|amp draw|amperage|draw) ${SHOT} <amount>`,
    remark,
    { unheard: true, examples: ['start amps spiked to twenty eight'] },
  ),
  rule(
    `[the] (amps|current|amp draw|amperage) [(on (it|<the> <place>))] ${SHOT} <amount> [(on|at) <the> <place>]`,
    shotUp,
    { examples: ['amps shot up to forty eight'] },
  ),
];
