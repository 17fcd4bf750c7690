import { HEATERS } from '../../terms/names.ts';
import { wordBefore, wordBehind } from '../words/clause-start.ts';
import { isCounted, isCutShort } from '../numbers/cut-numbers.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { minutesIn } from '../numbers/durations.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { fanPlace } from '../words/fans.ts';
import { amountIn, isVacuumUnit, withMore } from '../numbers/measure.ts';
import { nowAt } from './now-at.ts';
import { pointedBeside } from '../numbers/dropped-points.ts';
import { asReading, reading } from './reading-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { placeId, quantityId, tagsIn } from '../slots.ts';
import type { Tags } from '../../grammar/nodes.ts';
import type { NameplateItem, Reading } from '../utterance.ts';

/** What a meter reads is said of a place, by rules of its own. */
const offInstruments = (tags: Tags): QuantityId | null => {
  const quantity = quantityId(tags['quantity']);
  return quantity === null || isElectrical(quantity) ? null : quantity;
};

const said: Means = (tags, frame) =>
  offInstruments(tags) === null ||
  isCutShort(frame) ||
  isCounted(amountIn(tags), frame, quantityId(tags['quantity'])) ||
  isMeans(tags, frame)
    ? null
    : asReading()(tags, frame);

/** A test is of its time, and what else stood so long is read. */
const saidAfter: Means = (tags, frame) => {
  const read = said(tags, frame);
  const minutes = minutesIn(tagsIn(tags['held']));
  const isAfter = / after /i.test(frame.wordsOf(frame.span));
  if (minutes === null || !isAfter || read?.readings === undefined) return read;
  return {
    ...read,
    readings: read.readings.map((each) =>
      TESTS.includes(each.quantity) ? withMore(each, { afterMinutes: minutes }) : each,
    ),
  };
};
const TESTS: readonly QuantityId[] = ['vacuum', 'testPressure'];

/** "Broke it with nitrogen, pulled again, now two ninety": what was used is not what was read. */
const isMeans = ({ quantity }: Tags, frame: Frame): boolean =>
  quantity === 'testPressure' && /^with$/i.test(wordBefore(frame));

/** "Coming out at a hundred and one, head two fifteen": what stands behind the comma begins another. */
const saidUnbroken: Means = (tags, frame) =>
  /[,;]\s*[a-z' ]+$/i.test(frame.wordsOf(frame.span)) ? null : said(tags, frame);

/** "Evap's nine degrees superheat": those two alone are said behind their value. */
const ofSaidBehind: Means = (tags, frame) => {
  const { quantity } = tags;
  return quantity === 'superheat' || quantity === 'subcooling' ? said(tags, frame) : null;
};

/** A value that was and the one that is now: both were read, the old one first. */
export const thenAndNow: Means = (tags, frame) => {
  const quantity = offInstruments(tags);
  const before = tagsIn(tags['before']);
  if (quantity === null || before === null) return null;
  return both(quantity, [before, tags], frame);
};

/** Of food each has the name of its place, and is read by itself. */
const inTwoSpots: Means = (tags, frame) =>
  tags['quantity'] === 'productTemp' ? null : thenAndNow(tags, frame);

/** "Low side'll run between eighteen and twenty four": between which two it was seen to go; one value would be a forecast. */
const ranges: Means = (tags, frame) => {
  const isHedged = /\b(?:thereabouts|or so|give or take)$/i.test(frame.wordsOf(frame.span));
  return amountIn(tags).low === null
    ? null
    : said(isHedged ? { ...tags, hedged: true } : tags, frame);
};

/** What was set otherwise was adjusted. */
const setAnew: Means = (tags, frame) => {
  const meant = thenAndNow(tags, frame);
  if (meant === null || tags['quantity'] !== 'setpointTemp') return meant;
  const words = frame.wordsOf(frame.span);
  return { ...meant, work: [{ did: 'adjust', part: 'temperatureControl', words }] };
};

function both(quantity: QuantityId, amounts: readonly Tags[], frame: Frame): ReturnType<Means> {
  const readings = amounts.flatMap((tags): readonly Reading[] => {
    const found = reading(quantity, amountIn(tags), frame);
    return found === null ? [] : [found];
  });
  return readings.length === amounts.length ? { readings } : null;
}

/** Microns and inches name what they are of. */
const startedAt: Means = (tags, frame) => {
  const before = tagsIn(tags['before']);
  const unit = before === null ? null : amountIn(before).unit;
  return isVacuumUnit(unit) && before !== null ? both('vacuum', [before, tags], frame) : null;
};

const WATER: readonly [QuantityId, QuantityId] = ['enteringWaterTemp', 'leavingWaterTemp'];

/** What goes into a part and comes out of it is one quantity read twice; of water it is two. */
const inAndOut: Means = (tags, frame) => {
  const [entering, leaving] = [tagsIn(tags['in']), tagsIn(tags['out'])];
  const own = offInstruments(tags);
  const [first, second] = tags['of'] === 'water' ? WATER : [own, own];
  if (entering === null || leaving === null || first == null || second == null) return null;
  const before = reading(first, amountIn(entering), frame);
  const after = reading(second, amountIn(leaving), frame);
  return before === null || after === null ? null : { readings: [before, after] };
};

/** What an evaporator is said to be at is what boils in it. */
const ofTheCoil: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  const isThermal = unit === null || unit === 'degrees' || unit === 'degF' || unit === 'degC';
  // "Evap's running a ten degree TD"
  const isOfElse = /^(?:t|td|split|difference|delta|drop|spread|superheat|subcooling)$/.test(
    wordBehind(frame),
  );
  // "Leaving the evap, twelve" is of the air or of the line, and no word tells which.
  const { from } = frame.span;
  const isPassing = PASSING.test(frame.wordsOf({ from: Math.max(0, from - 2), to: from }));
  return isThermal && !isOfElse && !isPassing && !isCounted(amountIn(tags), frame)
    ? asReading()({ ...tags, quantity: 'evaporatingTemp' }, frame)
    : null;
};

const PASSING = /\b(?:leaving|entering|into|off|hitting)(?: the)?$/i;

const waterIn =
  (quantity: QuantityId): Means =>
  (tags, frame) => {
    const found = reading(quantity, amountIn(tags), frame);
    return found === null ? null : { readings: [found] };
  };

/** "City water sixty, coming out at a hundred and one": what goes in was told in the same breath. */
const leavingThat: Means = (tags, frame) => {
  const amount = amountIn(tags);
  const means = (entering: QuantityId): Meaning | null => {
    const quantity = LEAVING[entering];
    const found = quantity === undefined ? null : reading(quantity, amount, frame);
    return found?.quantity === quantity && found !== null ? { readings: [found] } : null;
  };
  const volts = amount.unit === null || amount.unit === 'V' ? amount.value : null;
  const otherwise = volts === null ? {} : { unclaimed: [String(volts)] };
  return { ofThat: { means, otherwise } };
};
const LEAVING: Partial<Record<QuantityId, QuantityId>> = {
  enteringWaterTemp: 'leavingWaterTemp',
  ambientTemp: 'condenserLeavingAirTemp',
  boxTemp: 'supplyAirTemp',
};

/** Where it was read, or of which unit: it changes nothing of what was read. */
export const HERE =
  '[((in|during|on|at) (freeze|harvest|defrost|start up|startup|pull down|shutdown|idle)|(in|on|at|by|near|off|from|toward) (the|this|that|my) [(left|right|top|bottom|middle|back|front|lower|upper|far|same|very)] (shelf|side|coil|evaporator|evap|circuit|rack|corner|door|wall|ceiling|floor|tray|pan|left|right|top|bottom|middle|back|front|roof|outlet|inlet|cooler|freezer|case|display)|(on|in|for|at|of) (this|that|the) (thing|unit|one|box|guy|system|machine|rig|puppy|job|side|roof)|(on|in|with) it|up here|in here|out here|down here|back here|here|right now|at the moment|this time)]';
const SPOT_READ =
  '(on|in|at|by|near) the [(top|bottom|middle|back|front|left|right|upper|lower)] (shelf|shelves|rack|side|corner|door|wall|top|bottom|middle|back|front|left|right)';
/** What moves, from one value to another. */
const WENT =
  '[(has|is|have)] [just] (went|goes|come|came|comes|gone|drops|falls|climbs|rises|runs|cycles|dropped|fell|fallen|rose|risen|climbed|jumped|moved|pulled down|crept|changed|improved|down|up|gone down|gone up|come down|come up|coming down|coming up) [(up|down|back)]';
const INTO = '[(going|coming|flowing)] (in|into [<the> <part:into>])';
const OUT = '[(going|coming|flowing)] (out|out of [<the> <part:from>]|leaving|off)';
const I_GET =
  '(i am (getting|seeing|reading|at|running)|i have [got]|i got|i see|it is (reading|showing|at|running)|it (reads|shows|says)|the (gage|gages|meter|thermometer) (says|reads|shows|is reading)|we have [got]|we are (getting|seeing|at))';

/** "Box is thirty eight, was fifty when I walked in": of what was read before in the same sentence. */
const wasAt: Means = (tags, frame) => {
  const amount = amountIn(tags);
  const means = (quantity: QuantityId): Meaning | null => {
    const found = isElectrical(quantity) ? null : reading(quantity, amount, frame);
    return found === null ? null : { readings: [withMore(found, { when: 'arrival' })] };
  };
  const numbers = [amount.value].filter((value) => value !== null);
  return { ofThat: { means, otherwise: { unclaimed: numbers.map(String) } } };
};

const PLATE: Partial<Record<QuantityId, NameplateItem>> = {
  current: 'ratedLoadAmps',
  voltage: 'voltage',
};

/** "Amps are seven, plate says nine": the plate is of the same quantity. */
const besideItsPlate: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']) ?? 'current';
  const item = PLATE[quantity];
  const read = reading(quantity, amountIn(tags), frame);
  const plate = reading(quantity, amountIn(tagsIn(tags['plate']) ?? {}), frame);
  if (item === undefined || read === null || plate?.value === undefined || plate.unit === null)
    return null;
  const { unit, words } = plate;
  const value =
    quantity === 'current' ? pointedBeside(plate.value, read.value ?? null, words) : plate.value;
  const place = placeId(tags['place']);
  // A heater's own rating, or a fan's, is on no plate of the unit.
  const heater = HEATERS.find((each) => each === place);
  if (quantity === 'current' && heater !== undefined)
    return {
      readings: [{ ...read, place }],
      facts: [{ fact: 'heaterRating', heater, value, unit: 'A', words }],
    };
  if (quantity === 'current' && place !== null && place !== 'compressor')
    return { readings: [{ ...read, place }], remarks: [words] };
  return {
    readings: [withMore(read, { place })],
    facts: [{ fact: 'nameplate', item, value, unit, words }],
  };
};

/** Of a fan, settled as any is; what its own tag says is on no plate of the unit. */
const ampsBesidePlate: Means = (tags, frame) => {
  if (placeId(tags['place']) === 'compressor') return besideItsPlate(tags, frame);
  const read = reading('current', amountIn(tags), frame);
  const place = placeId(tags['place']) ?? fanPlace(frame.context);
  return read === null
    ? null
    : { readings: [{ ...read, place }], remarks: [frame.wordsOf(frame.span)] };
};

/**
 * Readings in looser words than those that are listened for: any run of words that tell nothing may stand between a
 * quantity and its value.
 */
export const LOOSE_RULES: readonly Rule[] = [
  rule(
    `[the] <quantity> ${HERE} ${WENT} from <amount:before> [all the way] [(up|down|back)] to <amount>`,
    thenAndNow,
    { examples: ['head went from two forty down to one eighty'] },
  ),
  rule(`[the] <quantity> (on|in|with) it [<loose>] <amount>`, said, {
    examples: ['nitrogen on it one fifty'],
  }),
  rule(`[the] <quantity> [(is|was)] [still] (sitting|holding|standing|parked) on <amount>`, said, {
    examples: ['nitrogen is still sitting on three hundred'],
  }),
  rule(
    `[the] <quantity> ${HERE} [(is|was|has|stayed|staying)] [(still|now|been|right|holding|stayed)] [(about|pretty much|exactly|basically|nearly|almost|roughly|just about|more or less)] (the same|same|unchanged|no different|identical) [(as (before|last time|it was|this morning))] [(at|still at|still|right at|there at|<pause> [(it is|still|at)])] <amount>`,
    said,
    { unheard: true, examples: ['superheat is about the same twelve'] },
  ),
  rule(`[the] <quantity> ${HERE} <loose> <amount>`, said, {
    examples: ['head is only riding at two seventy five', 'suction on this thing is down to four'],
  }),
  rule(
    `[the] <quantity> ${HERE} [<loose>] <amount> [now] [(up|down)] from <amount:before>`,
    thenAndNow,
    { examples: ['head is down to one forty from one ninety'] },
  ),
  rule(
    `[the] <quantity> ${HERE} (was|started [out] at|used to be|had been|started) [at] <amount:before> [(and|but|then)] [now] ((it is|is|i am|we are|it has|it) <loose>|now|it is) [(down|up)] [to] <amount> [now]`,
    thenAndNow,
    { examples: ['superheat was twenty two now it is twelve'] },
  ),
  rule(
    `[(and|but|so|then)] (it is (at|sitting [at]|up at|down at|running at|holding at)|now (it is|we are|i am|she is|at|is)|it is now|[it] (came [(up|down|back)] to|dropped to|went [(up|down|back)] to|climbed to|is (down|up|back) to|is back (up|down) to|pulled down to)|(i am|we are) (down to|up to|now at)) [(down|up|back)] [(to|at)] <amount> [now]`,
    nowAt,
    { examples: ['and now it is at two twelve'] },
  ),
  rule(
    '[(and|but|then|and then)] [(it|she|he|that)] (ends|ended|winds|wound|finishes|finished|bottoms|bottomed|tops|topped) [(up|out)] [(down|up)] [(at|to)] <amount> [(at the end|by the end|when it (drops|harvests|dumps))]',
    nowAt,
    { unheard: true, examples: ['and ends up down around thirty'] },
  ),
  rule(
    `[the] <quantity> (is|keeps|was) (cycling|switching|kicking|running|turning) <the> (fan|fans|condenser (fan|fans)|compressor|unit) [on and off] [(at|from)] <amount>`,
    ranges,
    { unheard: true, examples: ['head is cycling the fan between two fifty and three hundred'] },
  ),
  rule(
    '[(and|but|so)] [it is] still (swinging|bouncing|hunting|going) [(from|between)] <amount>',
    (tags, frame) => (amountIn(tags).low === null ? null : nowAt(tags, frame)),
    { unheard: true, examples: ['but it is still swinging six to thirteen'] },
  ),
  rule(
    '[(and|but|so)] it is [(only|still|up|down|back|already)] [(at|to|up to|down to)] <amount> (now|right now|at the moment|currently)',
    nowAt,
    { examples: ['it is forty seven right now'] },
  ),
  rule(
    '(it was|<pause> [it] was|and it was|was) [(at|up at|sitting at|down at)] <amount> when (i|we) (got here|got there|arrived|came in|walked in|walked up|pulled up|showed up|first (looked|got here|hooked up)|hooked up|started)',
    wasAt,
    { examples: ['it was fifty when i walked in'] },
  ),
  // "Head's at two eighty for twenty minutes" is no 284.
  rule(
    `[the] <quantity> ${HERE} (<link>|<loose>) <amount> (for|over|after) [(the (last|past)|a good|at least|going on|nearly|almost|maybe|about|like|only|just)] <duration:held> [(now|straight|already|solid|so far)]`,
    saidAfter,
    { unheard: true, examples: ['head has been at two eighty for twenty minutes'] },
  ),
  rule(
    '[the] <quantity> (at|near|toward|by|through) the (end|start|beginning|middle|top|bottom) of [(the|a|each)] (freeze|harvest|cycle|defrost|pull down|run|freeze cycle) (<link>|<loose>) <amount>',
    said,
    { unheard: true, examples: ['suction at the end of freeze is thirty eight'] },
  ),
  rule(
    `[the] <quantity> will (run|sit|bounce|swing|hunt|float|hover|ride|range|cycle|drift|wander|go) [(anywhere|all the way|back and forth)] <amount> [<pause>] [(thereabouts|or thereabouts|or so|give or take)]`,
    ranges,
    { unheard: true, examples: ['low side will run between eighteen and twenty four thereabouts'] },
  ),
  rule(
    `[the] <quantity> (is|was|was set|had) [at] <amount:before> [(and|so)] (i|we) (put|set|moved|turned|bumped|dropped|raised|lowered|changed|backed|brought) it [(up|down|back)] (to|at) <amount>`,
    setAnew,
    { examples: ['set point was thirty three i put it at thirty six'] },
  ),
  rule(
    '[(i|we)] [just] (turned|set|moved|bumped|dropped|lowered|raised|brought|backed|knocked|cranked|changed) [the] (thermostat|stat|controller|control|set point|temp|temperature) [(up|down|back)] from <amount:before> [(up|down|back)] to <amount>',
    setAnew,
    {
      tags: { quantity: 'setpointTemp' },
      unheard: true,
      examples: ['turned the thermostat down from forty to thirty five'],
    },
  ),
  rule(
    `(running|has|have|seeing|with|carrying|showing|reading|getting|at|on|${I_GET}) (a|an) <amount> <quantity>`,
    saidUnbroken,
    { examples: ['it is running a one ninety five head'] },
  ),
  rule(
    '(call it|let us call it|we will call it|figure|i would call it) <amount> (on|for|at) <the> <quantity>',
    said,
    {
      examples: ['let us call it two hundred on the head'],
    },
  ),
  rule(
    '[the] (evaporator|evap|coil|case|system|unit|txv|valve) (<link>|<loose>) <amount> [of] <quantity> [now]',
    ofSaidBehind,
    { examples: ['evaporator is nine degrees superheat'] },
  ),
  rule('[the] (evaporator|evap) [<loose>] <amount>', ofTheCoil, {
    examples: ['evaporator is running at fifteen degrees'],
  }),
  rule(
    '[it] started [(out|off)] at <amount:before> [(and|but|then|<pause>)] [(and|it is)] now [(it is|i am|we are)] [(at|down to|up to)] <amount>',
    startedAt,
    { examples: ['started at nineteen hundred microns now three fifty'] },
  ),
  rule(
    `[the] <quantity> [(is|was|were)] <amount:before> ${SPOT_READ} [<pause>] [and] <amount> ${SPOT_READ}`,
    inTwoSpots,
    { examples: ['box was fifty three on the top shelf and forty six on the bottom'] },
  ),
  rule('with <amount> <quantity>', saidUnbroken, { examples: ['with ninety five ambient'] }),
  rule(
    `[the] <quantity> ${HERE} [just] (keeps|kept|is|was|started|starts) [(slowly|still|just|really)] (creeping|climbing|rising|dropping|falling|going|coming|moving|drifting|jumping) [(up|down|around)]`,
    (tags) => {
      const quantity = offInstruments(tags);
      return quantity === null ? null : { speaksOf: quantity };
    },
    { examples: ['head on this thing just keeps creeping up'] },
  ),
  rule(
    `<the> <place> [is] (pulling|drawing|pulls|draws|running|at) <amount> [(and|but)] [the] [name] (plate|nameplate|tag|sticker|data plate|rla) (is|says|reads|calls for|shows|rating is|is rated|has) <amount:plate>`,
    besideItsPlate,
    { examples: ['compressor is pulling twelve amps nameplate is ten'] },
  ),
  rule(
    `<the> (<place>|fan|fans|fan motor) (amps|amp draw|amperage|current|draw) <link> <amount> [(and|but)] [the] [name] (plate|nameplate|tag|sticker|data plate|rla) (is|says|reads|calls for|shows|rating is|is rated|has) <amount:plate>`,
    ampsBesidePlate,
    { examples: ['fan motor amps point nine tag is point six'] },
  ),
  rule(
    `[the] <quantity> [<loose>] <amount> [(and|but)] [the] [name] (plate|nameplate|tag|sticker|data plate|rla) (is|says|reads|calls for|shows|rating is|is rated|has) <amount:plate>`,
    besideItsPlate,
    { examples: ['amp draw is seven point eight plate says nine point two'] },
  ),
  rule(
    `[the] <quantity> in [(at|is)] <amount:in> [<pause>] [and] out [(at|is)] <amount:out> [(across|through) <the> <part:into>]`,
    inAndOut,
    { examples: ['liquid line in at ninety six out at eighty nine across the dryer'] },
  ),
  rule(
    `[the] <quantity> [(is|was)] <amount:in> ${INTO} [(and|but)] <amount:out> ${OUT}`,
    inAndOut,
    {
      examples: ['liquid line is ninety eight going in and eighty three coming out of the dryer'],
    },
  ),
  rule(
    `[the] water [(temp|temperature)] [(is|was)] <amount:in> ${INTO} [(and|but)] [(is|it is)] <amount:out> ${OUT}`,
    inAndOut,
    { tags: { of: 'water' }, examples: ['water is sixty eight in and eighty four out'] },
  ),
  rule(
    `[the] [condenser] water [(temp|temperature)] [is] in [(at|is)] <amount:in> [<pause>] [and] [water] out [(at|is)] <amount:out>`,
    inAndOut,
    { tags: { of: 'water' }, examples: ['water in at seventy two out at eighty four'] },
  ),
  rule(
    '(<pause>|and|<pause> and) [(it is|and it is|it)] (coming out|going out|leaving|comes out|leaves|out|coming off|comes off) [((of|off) [of] it|it)] [(at|it is)] <amount>',
    leavingThat,
  ),
  rule('[the] water is (coming|going|getting) in at <amount>', waterIn('enteringWaterTemp'), {
    examples: ['water is coming in at sixty'],
  }),
  rule(
    '[the] water is (leaving|coming out|going out|exiting) at <amount>',
    waterIn('leavingWaterTemp'),
    {
      examples: ['water is leaving at ninety two'],
    },
  ),
  rule(
    '[the] water [(temp|temperature)] is <amount> (coming|going) in',
    waterIn('enteringWaterTemp'),
    {
      examples: ['water is sixty three coming in'],
    },
  ),
  rule(
    '[the] water [(temp|temperature)] is <amount> (coming|going) out',
    waterIn('leavingWaterTemp'),
  ),
  rule(
    `[the] water (going|coming) in [(is|at|is at|reads)] <amount:in> [<pause>] [and] [(it is|is|it)] ((coming|going) out|leaving|comes out) [(is|at|is at|reads)] <amount:out>`,
    inAndOut,
    {
      unheard: true,
      tags: { of: 'water' },
      examples: ['water going in is sixty eight coming out seventy nine'],
    },
  ),
  rule(
    `[the] water is (coming|going) in [at] <amount:in> [and] [(is|it is)] ((coming|going) out|leaving) [at] <amount:out>`,
    inAndOut,
    {
      tags: { of: 'water' },
      examples: ['water is coming in at sixty eight and leaving at eighty four'],
    },
  ),
];
