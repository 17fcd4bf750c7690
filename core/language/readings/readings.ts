import { everyWordOf } from '../../grammar/vocabulary.ts';
import { headOverSuction, highAndLow, openingWithBoth } from './both-gauges.ts';
import { ONES } from '../numbers/number-words.ts';
import { wordBehind, wordsBehind } from '../words/clause-start.ts';
import type { EquipmentId, PartId, PlaceId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { expectsNumber, ofAskedAbout } from './expected.ts';
import { thermalSystem } from '../../units/shown-unit.ts';
import { isCounted } from '../numbers/cut-numbers.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { type Amounted, amountIn, isVacuumUnit, withMore } from '../numbers/measure.ts';
import { type Frame, heardRule, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { FIGURE, holdsNumber, spelledOut } from '../words/own-reading.ts';
import { partId, quantityId } from '../slots.ts';
import { asReading, fixed, isWeather, reading } from './reading-means.ts';
import { isPlausible } from '../numbers/plausible.ts';
import { UNIT } from '../numbers/units.ts';
import { vacuumByUnit, VACUUM_AND_TEST_RULES } from './vacuum-and-test.ts';
import { WEIGHED_RULES } from '../work-done/weighed.ts';
import { WordSet } from '../words/word-set.ts';

/** Only with a unit of its kind: a bare number there could be anything. */
const withUnit =
  (quantity: QuantityId): Means =>
  (tags, frame) =>
    amountIn(tags).unit === null ? null : fixed(quantity)(tags, frame);

/**
 * A value behind which the quantity stands alone ("fourteen psi suction") needs its unit to hold them together,
 * but for the two that are said so: "ten superheat".
 */
const valueFirst: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  // "Two pound bottle" is its size.
  if (/\b(?:pound|ounce) (?:bottle|cylinder|tank|jug|drum|can)\b/i.test(frame.wordsOf(frame.span)))
    return null;
  // "One eighty five and twenty one, superheat nine": behind its comma a quantity has its own value.
  if (BREAKS.test(frame.wordsOf(frame.span)) && isFollowed(frame)) return null;
  // "Two degrees cooler" is how much, not where.
  if (/\bcooler$/i.test(frame.wordsOf(frame.span))) return null;
  return amountIn(tags).unit === null && !isSaidSo(quantity) ? null : asReading()(tags, frame);
};

const BREAKS = /[,;]/;
const isFollowed = (frame: Frame): boolean =>
  holdsNumber(wordBehind(frame)) ||
  (!frame.endsAtPause && FOLLOWED.test(spelledOut(wordsBehind(frame, MOST_BETWEEN))));
/** "…, supply air's at thirty two": so many words stand between at most. */
const MOST_BETWEEN = 3;
const FOLLOWED = new RegExp(`^(?:(?:is|are|was|at|reads|of|now|about|only) ?)+ (?:${FIGURE})`, 'i');

/** Named behind its value, or behind "no". */
const isSaidSo = (quantity: QuantityId | null): boolean =>
  quantity === 'superheat' || quantity === 'subcooling';

/** A number alone answers what was asked, or is known by a unit that only one quantity has. */
export const bareAmount: Means = (tags, frame) => {
  const amount = amountIn(tags);
  const { asked, askedPlace } = frame.context;
  const { unitless, lastQuantity } = frame.context;
  // "Now it is one ninety eight" and "so that's what, five ounces" go on with what was read last, whatever was asked before that.
  if (
    GOES_ON.test(frame.wordsOf({ from: 0, to: frame.span.to })) &&
    lastQuantity !== null &&
    lastQuantity !== asked
  )
    return null;
  // Of a current it may have been said without its point.
  if (asked === 'current' && IN_FIGURES.test(frame.wordsOf(frame.span))) return null;
  if (unitless !== null && amount.unit !== null && !isVacuumUnit(amount.unit)) {
    const answer = fixed(unitless.quantity)(tags, frame);
    if (answer !== null) return answer;
  }
  const answer = asked === null ? null : placedAt(askedPlace, fixed(asked)(tags, frame));
  if (answer !== null) return answer;
  const spokenOf = ofAskedAbout(tags, frame);
  if (spokenOf !== null) return spokenOf;
  return amount.unit === 'inches' || amount.unit === 'inHg' || isVacuumUnit(amount.unit)
    ? vacuumByUnit(tags, frame)
    : null;
};

const IN_FIGURES = new RegExp(`\\b(?:${ONES.join('|')}) (?:${ONES.join('|')})$`, 'i');

const GOES_ON = /^(?:(?:and |but )?now|(?:so )?(?:that's|that is|it's|that makes) what)\b/i;

/** A meter's reading that was asked for at a place is of that place. */
function placedAt(place: PlaceId | null, meaning: Meaning | null): Meaning | null {
  if (place === null || !meaning?.readings) return meaning;
  return { ...meaning, readings: meaning.readings.map((each) => withMore(each, { place })) };
}

/** A pressure control that opens tells its side's pressure at that moment. */
export const trippedAt: Means = (tags, frame): Meaning | null => {
  const part = partId(tags['part']);
  if (part !== 'highPressureSwitch' && part !== 'lowPressureSwitch') return null;
  const side = part === 'highPressureSwitch' ? 'headPressure' : 'suctionPressure';
  const found = reading(side, amountIn(tags), frame);
  if (found === null) return null;
  return {
    readings: [withMore(found, { event: 'tripped' })],
    findings: [{ part, state: 'tripped', words: found.words }],
  };
};

/** A pressure control that closes tells its side's pressure, too. */
const closedAt: Means = (tags, frame): Meaning | null => {
  const tripped = trippedAt(tags, frame);
  const [read] = tripped?.readings ?? [];
  const [found] = tripped?.findings ?? [];
  if (read === undefined || found === undefined) return null;
  const { event: _tripped, ...closing } = read;
  return { readings: [closing], findings: [{ ...found, state: 'closed' }] };
};

/** A dial goes from one to nine: no control in degrees is turned all the way to such a figure. */
const theySet: Means = (tags, frame) => {
  const { value, unit } = amountIn(tags);
  const words = frame.wordsOf(frame.span);
  const isDial = unit === null && value !== null && value > 0 && value < 10;
  return isDial && /\bway\b/i.test(words)
    ? { remarks: [words] }
    : fixed('setpointTemp')(tags, frame);
};

/** A probe goes into what is kept. */
const probed: Means = (tags, frame) =>
  tags['quantity'] === 'productTemp' ? asReading()(tags, frame) : null;

/** A word behind a quantity where only its number can follow. */
const homophone =
  (number: number): Means =>
  (tags, frame) =>
    notElectrical(asReading())({ ...tags, number }, frame);

/** "It's ninety two out" is the weather, unless something was just metered: then it is what comes out of it. */
const outdoors: Means = (tags, frame) =>
  frame.context.lastPlace === null || isWeather(frame) ? fixed('outdoorTemp')(tags, frame) : null;

/** "Head's one ten and it's forty out": behind volts it is what comes out. */
const outdoorsBehind: Means = (tags, frame) => {
  const weather = outdoors(tags, frame);
  const means = (quantity: QuantityId): Meaning | null =>
    isElectrical(quantity) ? leftToAsk(tags) : weather;
  return { ofThat: { means, otherwise: weather ?? leftToAsk(tags) ?? {} } };
};

const isThermal = ({ unit }: Amounted): boolean =>
  unit === null || unit === 'degrees' || unit === 'degF' || unit === 'degC';

/** Of the room, or of what stands in it? */
const leftToAsk = (tags: Parameters<Means>[0]): Meaning | null => {
  const { value } = amountIn(tags);
  return value === null ? null : { unclaimed: [String(value)] };
};

const notElectrical =
  (means: Means): Means =>
  (tags, frame) => {
    const quantity = quantityId(tags['quantity']);
    return quantity !== null && isElectrical(quantity) ? null : means(tags, frame);
  };

/** "Two twenty eight at the hot gas valve", "one fifteen on the box fan": behind such words it is no quantity. */
const unlessOfPart: Means = (tags, frame) =>
  /^(?:valve|solenoid|switch|control|fans?|heaters?|motor|relay|light|contactor|coil|terminals?|timer)$/.test(
    wordBehind(frame),
  )
    ? null
    : asReading()(tags, frame);

/** "Ninety six liquid, so ten subcooled": what is concluded is another. */
const CONCLUDES = /[,;] so\b/i;
const unlessCounted: Means = (tags, frame) =>
  CONCLUDES.test(frame.wordsOf(frame.span)) ||
  isCounted(amountIn(tags), frame, quantityId(tags['quantity']))
    ? null
    : asReading()(tags, frame);

const ARRIVAL =
  '(when i got here|on arrival|~when we (got here|got there|arrived|came in|first got here|showed up|pulled up|walked in)|~when i (got there|arrived|came in|first got here|showed up|pulled up|walked (in|up)|first (walked (in|up)|came in|looked at it)|got to it|first hooked up|hooked up)|~(at|upon) arrival)';
/** Where or when it was read: it changes nothing of what was read. */
const THERE =
  '(right now|now|just|just now|currently|today|here|up here|in here|[right] (at|by|near|leaving|off|on|coming out of|coming off|going into|into|entering|where it leaves) <the> (compressor|evaporator|evap|coil|condenser|receiver|~~(receiver (outlet|king|valve))|txv|valve|expansion valve|unit|king valve|service valve|outlet|inlet|bulb))';
/** "set the thermostat to thirty six": what it is set to now, and that it was adjusted. */
const setTo: Means = (tags, frame) => {
  const found = reading('setpointTemp', amountIn(tags), frame);
  if (found === null) return null;
  return {
    readings: [found],
    work: [{ did: 'adjust', part: 'temperatureControl', words: found.words }],
  };
};

const CONTROLS: Partial<Record<PartId, QuantityId>> = {
  highPressureSwitch: 'highCutoutPressure',
  lowPressureSwitch: 'lowCutoutPressure',
  fanControl: 'fanCutinPressure',
};

/** As what was settled before says, but for a control that was named in the same sentence. */
const setAt: Means = (tags, frame) => {
  const otherwise = setAtLast(tags, frame);
  const means = (part: PartId): Meaning | null => {
    const control = CONTROLS[part];
    return control === undefined ? null : fixed(control)(tags, frame);
  };
  return { ofIt: { means, inSentence: true, otherwise: otherwise ?? leftToAsk(tags) ?? {} } };
};

/** "Box forty one, set thirty six": behind air it is the air that is wanted. */
const setBeside: Means = (tags, frame) => {
  const found = reading('setpointTemp', amountIn(tags), frame);
  const means = (quantity: QuantityId): Meaning | null =>
    found !== null && AIRS.includes(quantity) ? { readings: [found] } : null;
  return { ofThat: { means, otherwise: leftToAsk(tags) ?? {} } };
};
const AIRS: readonly QuantityId[] = ['boxTemp', 'supplyAirTemp', 'productTemp'];

/** What "it's set at thirty five" sets: the control last spoken of, else the box where that can be its temperature. */
const setAtLast: Means = (tags, frame) => {
  const { lastPart, lastPlace, refrigerant, units } = frame.context;
  const last = [lastPart, lastPlace];
  if (last.includes('highPressureSwitch')) return fixed('highCutoutPressure')(tags, frame);
  if (last.includes('lowPressureSwitch')) return fixed('lowCutoutPressure')(tags, frame);
  if (lastPart === 'fanControl') return fixed('fanCutinPressure')(tags, frame);
  const found = reading('setpointTemp', amountIn(tags), frame);
  if (found?.value === undefined || found.unit === null) return null;
  const amount = { value: found.value, unit: found.unit };
  return thermalSystem(units) === 'us' && !isPlausible('setpointTemp', amount, refrigerant)
    ? null
    : { readings: [found] };
};

/** As `setAt`, by whoever speaks; a control that was named is adjusted, the box's too. */
const setIt: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  return unit === null || unit === 'degrees' ? setAt(tags, frame) : null;
};

const zero: Means = (tags, frame) =>
  isSaidSo(quantityId(tags['quantity'])) ? asReading()({ ...tags, number: 0 }, frame) : null;

const noPressure: Means = (tags, frame) => asReading()({ ...tags, number: 0 }, frame);

/** In a walk-in one may stand, and its air or the room's may be told; beside a cabinet it is the room's. */
const inHere: Means = (tags, frame) => {
  if (!isThermal(amountIn(tags))) return null;
  return CABINETS.has(frame.context.equipment)
    ? fixed('ambientTemp')(tags, frame)
    : leftToAsk(tags);
};
const CABINETS: ReadonlySet<EquipmentId | null> = new Set<EquipmentId | null>([
  ...(['reachIn', 'prepTable', 'displayCase', 'iceMachine'] as const),
]);

/** Readings off gauges, thermometers and scales. */
export const READING_RULES: readonly Rule[] = [
  heardRule('[the] <quantity> <link> <amount>', notElectrical(unlessCounted), {
    heardWhen: ['anything', 'number'],
    examples: ['head one forty six', 'suction at twelve', 'box is minus three'],
  }),
  heardRule(
    `[the] <quantity> <link> <amount> ${ARRIVAL}`,
    notElectrical(asReading({ when: 'arrival' })),
    { examples: ['head was two hundred when i got here'] },
  ),
  rule(
    `${ARRIVAL} [the] <quantity> <link> <amount>`,
    notElectrical(asReading({ when: 'arrival' })),
    {
      examples: ['when i got here head was two hundred'],
    },
  ),
  rule(
    '[(i have|i got|i am getting|i have got|i see|i am seeing|we have|we got|there is|it is|reading|got|showing)] <amount> (on|at|for|of|in) <the> <quantity>',
    notElectrical(unlessOfPart),
    {
      examples: [
        'seven degrees of superheat',
        'one ninety on the head',
        'i have got fourteen on the suction',
      ],
    },
  ),
  rule(
    '[(and|but|now|yeah|ok)] ((it|she|that|everything) is|i am|we are) [(still|now|only|just|back|right)] [(sitting|holding|running|hanging|riding|reading|showing|hovering|stuck|up|down|looking)] [(steady|up|down)] [(at|to)] <amount> (on|for|at) <the> <quantity>',
    notElectrical(unlessOfPart),
    { unheard: true, examples: ['it is still sitting at one ninety on the high side'] },
  ),
  rule(
    `[(it was|i had|there was|it had)] <amount> (on|at|of|~~in) <the> <quantity> ${ARRIVAL}`,
    notElectrical(asReading({ when: 'arrival' })),
    { examples: ['it was eighteen pounds on the suction when i hooked up'] },
  ),
  rule(
    '[the] <quantity> [in <the> [(front|back)] (pan|pans|well|rail|drawer)] ((probes|probed|temps|temped) [out]|is (probing|temping)) [at] <amount>',
    probed,
    { unheard: true, examples: ['food in the front pan probes at eight'] },
  ),
  rule(`[the] <quantity> ${THERE} <link> <amount>`, notElectrical(asReading()), {
    examples: ['suction pressure right now is sixteen', 'superheat at the evaporator is eight'],
  }),
  rule(
    '[the] <quantity> <link> <amount> [~~(back|right|right back)] (at|by|near|leaving|off|coming off) [the] (coil|coils|evap coil|evaporator coil|cooling coil|bulb|compressor|evaporator|evap|txv|valve|outlet|receiver|king valve|service valve)',
    notElectrical(asReading()),
    { examples: ['superheat is six at the coil'] },
  ),
  rule('[the] <quantity> [is] [at] (to|too)', homophone(2), {
    apart: true,
    examples: ['suction to'],
  }),
  rule('[the] <quantity> [is] [at] (for|fore)', homophone(4), {
    apart: true,
    examples: ['suction for'],
  }),
  rule('[the] <quantity> <link> <amount> not [<link>] <amount:wrong>', notElectrical(asReading()), {
    examples: ['head one sixty two not one sixty'],
  }),
  rule(
    '[(gages|gage|it|they)] [(say|says|read|reads|show|shows|is|are)] <amount:head> [(on|at|on the)] high [side] [and] <amount:suction> [(on|at|on the)] low [side]',
    highAndLow,
    { examples: ['gage says one ninety high sixteen low'] },
  ),
  rule(
    '[(gages|gage|it|they)] [(say|says|read|reads|show|shows|is|are)] <amount:suction> [(on|at|on the)] low [side] [and] <amount:head> [(on|at|on the)] high [side]',
    highAndLow,
  ),
  rule(
    '[(i have|i got|i have got|i am getting|i am seeing|seeing|there is|got|reading|it is)] <amount> (on|at) [the] high [side]',
    fixed('headPressure'),
    { examples: ['i have one eighty psi on the high'] },
  ),
  rule(
    '[(i have|i got|i have got|i am getting|i am seeing|seeing|there is|got|reading|it is)] <amount> (on|at) [the] low [side]',
    fixed('suctionPressure'),
    { examples: ['sixteen on the low'] },
  ),
  rule('<amount> <quantity>', notElectrical(valueFirst), {
    examples: ['fourteen psi suction', 'seven degrees superheat'],
  }),
  rule(
    '[it is] <amount> (at|by|on|around|near|going into|into|entering|in front of) <the> condenser [coil]',
    withUnit('ambientTemp'),
    {
      examples: ['twenty six celsius at the condenser', '92 degrees at the condenser'],
    },
  ),
  rule(
    '(somebody|someone|they|he|she|the (cook|owner|manager|staff|customer|chef)) [(had|has|must have|have)] (set|reset|turned|adjusted|lowered|raised|bumped|changed|cranked) [the] (thermostat|stat|controller|set point|temperature control|temp control) [(all the way|way)] [(up|down|back)] to <amount>',
    theySet,
    { examples: ['somebody turned the thermostat down to twenty eight'] },
  ),
  rule(
    '[(i|we)] (set|reset|turned|adjusted|lowered|raised|bumped|changed|cranked) [the] (thermostat|stat|controller|set point|temperature control|temp control|~[walk in] (box|cooler|freezer)|~(reach in|case|cabinet|fridge|walk in|unit|temp|temperature)) [(up|down|back)] (to|at|for) <amount>',
    setTo,
    { examples: ['set the thermostat to thirty six'] },
  ),
  rule(
    '[(i|we)] (set|put|turned|moved|bumped|dialed|lowered|raised) it [(back|down|up|over)] [(up|down)] (to|at) <amount>',
    setIt,
    { examples: ['set it back to thirty seven'] },
  ),
  rule(
    '[the] (fridge|unit|stat|thermostat|control|controller) [(is|was)] set (at|to|for|on|down to|up to) <amount>',
    fixed('setpointTemp'),
    { examples: ['fridge is set on thirty six'] },
  ),
  rule('[(it is|they have it|thermostat is|control is)] set (at|to|for) <amount>', setAt, {
    examples: ['it is set for thirty five'],
  }),
  rule('set <amount>', setBeside, { examples: [] }),
  rule('[(it is|i have|i got|reading)] <amount> (at|on) the bulb', fixed('suctionLineTemp'), {
    examples: ['forty two at the bulb'],
  }),
  rule('(no|zero) pressure [at all] (on|in|at) [the] <side>', noPressure, {
    examples: ['no pressure at all on the low side'],
  }),
  rule('(no|zero) <quantity>', zero, { apart: true, examples: ['no superheat'] }),
  rule('(i have|i have got|i am getting|there is|it has|we have) (no|zero) <quantity>', zero, {
    examples: ['i have no subcooling'],
  }),
  rule(
    '(it is|i have|i got|i have got|reading|it is reading|i am (getting|seeing)|it is still|it says|<pause>) <amount> (in there|in the (box|cooler|freezer|walk in|cabinet|case|reach in|display|~chest [freezer]|~upright)|inside [(the|of the) (box|cooler|freezer|walk in|cabinet|case)])',
    (tags, frame) => (isThermal(amountIn(tags)) ? fixed('boxTemp')(tags, frame) : null),
    { examples: ['it is thirty five in there'] },
  ),
  rule('(it is|i have|i got|it is still) <amount> in here', inHere, {
    examples: ['it is ninety in here'],
  }),
  rule('with it <amount> (out|outside|outdoors)', fixed('outdoorTemp'), {
    examples: ['with it forty out'],
  }),
  rule(
    '[it is] <amount> (outside|outdoors|out there|out (here|today)|up here|[(up|~~out|~~over)] on [the] roof)',
    fixed('outdoorTemp'),
    {
      examples: ['it is ninety two outside'],
    },
  ),
  rule('(and|but|<pause>) it is <amount> out', outdoorsBehind),
  rule('it is <amount> out', outdoors, { apart: true, examples: ['it is ninety two out'] }),
  ...VACUUM_AND_TEST_RULES,
  ...WEIGHED_RULES,
  rule(
    '[the] <part> [(just|finally)] (closed|closes|made|reset) [(again|back|back (up|in|on)|right back (up|in|on))] at <amount>',
    closedAt,
    { unheard: true, examples: ['low pressure switch closed again at thirty two'] },
  ),
  rule(
    '[the] <part> (opened|tripped|cut out|kicked out|went out|opens|trips|cuts out|tripped out|broke|dropped out|popped) [(out|open)] at <amount>',
    trippedAt,
    {
      examples: ['high pressure switch opened at three eighty'],
    },
  ),
  rule(
    '(the|my|we are|running|i am running|we are running|pressures are|it is running|i have|i have got|i am at|pressure is|it is|reading|sitting at|got|[now] (she|it) is [(at|running|sitting at|running at|back (to|at)|down to|up to)]|[now] (we|i) are [(at|running|back (to|at))]) [pressures] [are] <amount:head> over <amount:suction>',
    headOverSuction,
    {
      examples: ['running one ninety over fourteen'],
    },
  ),
  rule('<amount:head> over <amount:suction>', headOverSuction, { apart: true }),
  rule('<amount:head> over <amount:suction> [(and|with)]', openingWithBoth),

  heardRule(
    '[(it is|i have|~that is|~i have got|~reads|~i am at|~it reads|~we are at|~now it is|~it says|~that would be|~looks like)] <amount>',
    bareAmount,
    {
      alone: true,
      only: expectsNumber,
      heardWhen: ['number', 'yesOrNo'],
      examples: [],
    },
  ),
  rule(
    '<amount>',
    (tags, frame) =>
      frame.context.asked === null &&
      /micron|millibar|mbar|pascals?$|vacuum|mercury|hg/i.test(frame.wordsOf(frame.span))
        ? vacuumByUnit(tags, frame)
        : null,
    {
      // "the half inch wrench" is no vacuum.
      needs: new WordSet(
        everyWordOf(UNIT).filter((word) =>
          /micron|millibar|mbar|pascals?$|vacuum|mercury|hg/.test(word),
        ),
      ),
      examples: ['the pump has it at four hundred microns'],
    },
  ),
];
