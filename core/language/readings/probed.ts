import type { Tags } from '../../grammar/nodes.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { QUANTITIES } from '../../terms/quantities.ts';
import { startsClause, wordBehind } from '../words/clause-start.ts';
import { amountIn } from '../numbers/measure.ts';
import { canBeColdBox } from '../numbers/plausible.ts';
import { fixed, leftToAsk } from './reading-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, quantityId, tagsIn } from '../slots.ts';
import { degrees, isThermal, throughPart } from './through-part.ts';

/** A side that is named where a thermometer sits is its line. */
const LINE_OF: Partial<Record<QuantityId, QuantityId>> = {
  headPressure: 'dischargeLineTemp',
  suctionPressure: 'suctionLineTemp',
};

function thermometerOn(tags: Tags, frame: Frame): Meaning | null {
  const named = quantityId(tags['quantity']);
  const quantity = named === null ? null : (LINE_OF[named] ?? named);
  if (quantity === null || QUANTITIES[quantity].dimension !== 'temperature') return null;
  const found = degrees(quantity, tags, frame);
  return found === null ? null : { readings: [found] };
}

/** "Clamped the suction line, forty four": what holds a thermometer is read by it, and nothing was tightened. */
const probed: Means = (tags, frame) => thermometerOn(tags, frame) ?? leftToAsk(tags);

/** "Discharge two twenty six off my clamp": of a pipe; a probe may be one for pressure, and a clamp one for amps. */
const shownBy: Means = (tags, frame) => {
  const named = quantityId(tags['quantity']);
  const isPressure = named !== null && LINE_OF[named] !== undefined;
  const mayBePressure = isPressure && /\b(?:probes?|leads?)$/i.test(frame.wordsOf(frame.span));
  return mayBePressure && amountIn(tags).unit === null ? null : thermometerOn(tags, frame);
};

/** "Six inches from the compressor discharge is two oh eight": so far along a pipe it is the pipe that is read. */
const along: Means = (tags, frame) => {
  const found = thermometerOn(tags, frame);
  return found !== null || amountIn(tags).unit === null ? found : null;
};

/** Air at both ends of a coil: of the one that was named, else of the one that can do so to it. */
const airEnds: Means = (tags, frame) => {
  const slots = [tags, ...['where', 'into', 'from'].map((slot) => tagsIn(tags[slot]))];
  const named = slots.map((slot) => partId(slot?.['part'])).find((part) => part !== null) ?? null;
  // "Coil" is either of the two.
  const isEither = named === 'condenser' && !/\b(?:cond|outdoor)/i.test(frame.wordsOf(frame.span));
  if (named !== null && !isEither) return throughPart(named, tags, frame);
  return throughPart('evaporator', tags, frame) ?? throughPart('condenser', tags, frame);
};

/** "Evap in thirty eight, evap out twenty six": what it cools is air; what else goes through it is asked about. */
const evapInOut: Means = (tags, frame) =>
  throughPart('evaporator', tags, frame) ?? {
    unclaimed: (['in', 'out'] as const).flatMap(
      (end) => leftToAsk(tagsIn(tags[end]) ?? {}).unclaimed ?? [],
    ),
  };

/** "Air on ninety", behind the air that comes off. */
const BEFORE: Partial<Record<QuantityId, QuantityId>> = {
  condenserLeavingAirTemp: 'ambientTemp',
  supplyAirTemp: 'boxTemp',
};
const AFTER: Partial<Record<QuantityId, QuantityId>> = {
  ambientTemp: 'condenserLeavingAirTemp',
  boxTemp: 'supplyAirTemp',
};
const otherEnd =
  (ends: Partial<Record<QuantityId, QuantityId>>): Means =>
  (tags, frame) => {
    const means = (quantity: QuantityId): Meaning | null => {
      const end = ends[quantity];
      const found = end === undefined ? null : degrees(end, tags, frame);
      return found === null ? null : { readings: [found] };
    };
    return { ofThat: { means, otherwise: leftToAsk(tags) } };
  };

/** "Air's leaving the coil at one twenty two": which coil it is, is told by how warm it blows or draws. */
const airAtPart: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const words = frame.wordsOf(frame.span);
  const isOn =
    /\b(?:going (?:in|into|onto)|coming (?:in|into|onto)|entering|hitting|onto|inlet|face|intake|entrance)\b/i.test(
      words,
    );
  if (part !== 'condenser' && part !== 'evaporator') return null;
  const { value } = amountIn(tags);
  const isNamed = part === 'evaporator' || /\b(?:cond|outdoor)/i.test(words);
  const isWarm = value !== null && !canBeColdBox(value, frame.context.units);
  const isCondenser = isNamed ? part === 'condenser' : isWarm;
  const quantity = isCondenser
    ? (['ambientTemp', 'condenserLeavingAirTemp'] as const)
    : (['boxTemp', 'supplyAirTemp'] as const);
  const found = degrees(quantity[isOn ? 0 : 1], tags, frame);
  return found === null ? null : { readings: [found] };
};

/** "Filter drier ninety six in, ninety four out": of what a fluid goes through; a contactor is metered. */
const throughNamed: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === 'filterDrier' || part === 'liquidLine' ? throughPart(part, tags, frame) : null;
};

/** "It's ninety one in that closet": where a condenser stands it breathes that air. */
const aroundUnit: Means = (tags, frame) => {
  const found = degrees('ambientTemp', tags, frame);
  return found === null ? null : { readings: [found] };
};

/** "Minus eighteen in the chest": a few in it may be bottles. */
const inKept: Means = (tags, frame) => {
  const { value, unit } = amountIn(tags);
  const isOne = unit !== null || (value !== null && (value < 0 || value >= LEAST_BARE));
  return isOne && isThermal(amountIn(tags)) ? fixed('boxTemp')(tags, frame) : null;
};
const LEAST_BARE = 20;

const OF_BOX: readonly (QuantityId | null)[] = ['boxTemp', 'setpointTemp'];
/** "I've got my own probe in there and it says twenty one", behind what the box's own thermometer said. */
const inThere: Means = (tags, frame) => {
  const isNamed = /\b(?:box|cooler|freezer|case)\b/i.test(frame.wordsOf(frame.span));
  const found =
    isNamed || OF_BOX.includes(frame.context.lastQuantity) ? degrees('boxTemp', tags, frame) : null;
  return found === null ? leftToAsk(tags) : { readings: [found] };
};

/** "It's one oh two in the shade" */
const inShade: Means = (tags, frame) => {
  const named = quantityId(tags['quantity']);
  if (named !== null && named !== 'outdoorTemp' && named !== 'ambientTemp') return null;
  const isAll = named !== null || wordBehind(frame) === '' || !startsClause(frame);
  return isAll ? fixed(named ?? 'outdoorTemp')(tags, frame) : null;
};

/** "Red one's at two oh five": of two gauges the one that was not told yet. */
const gaugeOf =
  (quantity: QuantityId): Means =>
  (tags, frame) => {
    const found = fixed(quantity)(tags, frame);
    const means = (last: QuantityId): Meaning | null =>
      last === 'headPressure' || last === 'suctionPressure' ? found : null;
    const last = frame.context.lastQuantity;
    return { ofThat: { means, otherwise: (last && means(last)) ?? leftToAsk(tags) } };
  };

/** What stands in the pans of a rail is food. */
const pans: Means = (tags, frame) => {
  const found = degrees('productTemp', tags, frame);
  return found === null || !startsClause(frame) ? null : { readings: [found] };
};

/** "Rear section's thirty four, front's forty one": of one case two airs. */
const sections: Means = (tags, frame) => {
  const [one, other] = [
    degrees('boxTemp', tags, frame),
    degrees('boxTemp', tagsIn(tags['own']), frame),
  ];
  const isOfAir = /\b(?:case|box|cooler|door|section)\b/i.test(frame.wordsOf(frame.span));
  if (one === null || other === null || !isOfAir || !startsClause(frame)) return null;
  return { readings: [one, other] };
};

/** "It's a cold day, thirty six out" */
const weather: Means = (tags, frame) => {
  const found = degrees('outdoorTemp', tags, frame);
  return found === null ? null : { readings: [found] };
};

/** How hot its shell is has no name: kept as it was told. */
const shell: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  const isHeat = unit === null || unit === 'degrees' || unit === 'degF' || unit === 'degC';
  return isHeat ? { remarks: [frame.wordsOf(frame.span)], names: 'compressor' } : null;
};

const SECTION = '(rear|front|back|left|right|top|bottom|middle|center|end|upper|lower)';
const THERMOMETER =
  '(clamp|pipe clamp|probe|probes|thermometer|thermocouple|thermistor|temp (clamp|probe|lead|sensor)|lead|bead|infrared|ir|gun|temp gun|laser|heat gun|stem|pocket thermometer|pipe probe|k type)';
const DEVICE = `(my|a|the) [temp] ${THERMOMETER} [(on|onto|on to|in|into|to|across|at|down in)]`;
const WITH = `(my|a|the) [temp] ${THERMOMETER}`;
const TO = '[(to|on|in|at)]';
const PUT = `[(i|we|just|and|so|i just|then)] ((clamped|strapped|taped|shot|probed|temped|zapped|lasered) [on] [${DEVICE}] ${TO}|(stuck|put|hooked|clipped|hung|laid|dropped|shoved|jammed|poked|got|have [got]|set|placed|pushed) ${DEVICE} ${TO})`;
const HOLDS =
  '[(a|the|one of the|some of the|that)] [((tub|pan|case|tray|bucket|box|bin|carton|gallon|jug|rail|pot|cup|package|pack|block|wheel|bottle|can|container|bag|sheet pan|hotel pan|well) of|top|bottom|middle|center)]';
const FAR = '[(about|maybe|like|right at|right|just)] <number:far> (inch|inches|foot|feet)';
const FROM =
  '[(up|down|out|back|away|over|off)] (from|of|off|off of|before|ahead of|upstream of|downstream of|past|short of) <the> <part:where>';
const THERE = `[(${FAR} ${FROM}|[right] (at|by|near|before|ahead of|coming off|leaving|off|on|in) <the> <part:where>)]`;
const SHOWS =
  '[<pause>] [(and|so)] [(it is|i got|i have got|i have|i am (getting|reading|seeing)|it (reads|says|shows)|got|reads|reading|that is|says|showing|came up|comes up|it came up|gives me|getting)] [(at|with)]';
const ONTO =
  '((air|temp|temperature) (on|onto|into|in|entering|going (in|into|on)|coming (in|on)|(going|coming|returning) back [(in|to)])|(entering|incoming|inlet|intake|returning) [air]) [[to] <the> <part:into>] [(temp|temperature|side)]';
/** "Air going back in's thirty four" */
const BACK_IN =
  '(going|coming|returning) [back] (in|on|to it|into it)|going back|coming back|returning|back in';
const OUT_OF_IT = '(coming|blowing|going) (off|out) [of it]|leaving';
const OFF_OF =
  '([air] (off|out of|out|leaving|coming (off|out of|out)|going out)|(leaving|outgoing|outlet|discharge|exhaust) [air]) [[of] <the> <part:from>] [(temp|temperature|side)]';

/** What thermometers show where they were put, and the air at both ends of a coil. */
export const PROBED_RULES: readonly Rule[] = [
  rule(
    `[(so|and|but|well)] (i have [got]|i put|i stuck|i hung|i got|i left) (my|a) [own] ${THERMOMETER} [(in|inside|hanging)] (there|in there|in it|in here|in the (box|cooler|freezer|case|middle)) [<pause>] [(and|so|now)] (it|that|she|mine) (says|reads|shows|is reading|is at|is) [at] <amount>`,
    inThere,
    { unheard: true, examples: ['i have got my own probe in there and it says twenty one'] },
  ),
  rule(
    '[the] ((evaporator|evap) [coil]|coil) (in|inlet) [(is|at|is at)] <signed:in> [<pause>] [and] [(the|it is)] [((evaporator|evap) [coil]|coil)] (out|outlet) [(is|at|is at)] <signed:out>',
    evapInOut,
    { unheard: true, examples: ['evap in thirty eight evap out twenty six'] },
  ),
  rule(`${PUT} ${HOLDS} <the> <quantity> [with ${WITH}] ${THERE} ${SHOWS} <amount>`, probed, {
    only: startsClause,
    unheard: true,
    examples: [
      'clamped the suction line six inches off the compressor forty four degrees',
      'shot the product with the infrared forty one',
    ],
  }),
  rule(`${FAR} ${FROM} [<pause>] [the] <quantity> <link> <amount>`, along, {
    unheard: true,
    examples: ['six inches out from the compressor discharge is two oh eight'],
  }),
  rule(`[the] <quantity> <link> <amount> [<pause>] ${FAR} ${FROM}`, along, {
    unheard: true,
    examples: ['suction line is forty two six inches off the compressor'],
  }),
  rule(`[the] <quantity> [(at|is)] ${FAR} ${FROM} <link> <amount>`, along, {
    unheard: true,
    examples: ['discharge six inches out from the compressor is two oh eight'],
  }),
  rule(
    `[<the> <part:where> [<pause>]] [the] ${ONTO} <link> <amount:in> [<pause>] [and] [the] ${OFF_OF} <link> <amount:out>`,
    airEnds,
    {
      unheard: true,
      examples: ['air on the coil thirty eight air off twenty nine'],
    },
  ),
  rule(
    `[<the> <part:where> [<pause>]] [the] ${OFF_OF} <link> <amount:out> [<pause>] [and] [the] ${ONTO} <link> <amount:in>`,
    airEnds,
    { unheard: true, examples: ['air off the condenser one ten air on ninety'] },
  ),
  rule(`[the] air (on|in|${BACK_IN}) <link> <amount>`, otherEnd(BEFORE), {
    unheard: true,
    examples: [],
  }),
  rule(`[the] air (off|out|${OUT_OF_IT}) <link> <amount>`, otherEnd(AFTER), {
    unheard: true,
    examples: [],
  }),
  rule(
    `[(the|my|what is)] [air] [(it is|is|i have got|i got)] (dumping|blowing|coming|discharging|spilling|throwing) [air] [(out|off|out of|from)] [of] the (front|top|honeycomb|grille|grill|louver|louvers|discharge|duct|air curtain|fans|vents|bottom) [(of|on|in) (the|this) (case|box|cooler|freezer|unit|coil|evap|evaporator)] [(is|was)] ${SHOWS} <amount>`,
    fixed('supplyAirTemp'),
    {
      unheard: true,
      examples: ['dumping out the front of the case at twenty eight'],
    },
  ),
  rule(
    '[(the|my)] [(top|front|back|rail|upper|cold|hotel|left|right)] (pans|wells) [(up top|on top|up front|in the (top|rail|front|back)|on the (left|right|end))] (<link>|<loose>) <amount>',
    pans,
    { unheard: true, examples: ['pans up top are reading forty eight'] },
  ),
  rule(
    `[the] ${SECTION} [(case|box|door|cooler)] [(section|side|end|half|part)] <link> <amount> [<pause>] [(and|but)] [the] ${SECTION} [(one|section|side|end|half|shelf|part)] [(is|is at|at|reads)] <amount:own>`,
    sections,
    { unheard: true, examples: ['rear case section is thirty four front is forty one'] },
  ),
  rule(
    `[the] (bottom|top|shell|body|dome|side|sump|belly|head|can) (of|on) the compressor (is|was|reads|at|reading) [(running|sitting|reading|up)] [at] <amount>`,
    shell,
    { unheard: true, examples: ['bottom of the compressor is running one sixty'] },
  ),
  rule(
    '[(it is|been|today is|it has been)] (a|an) [(really|real|pretty)] (cold|hot|warm|cool|nice|mild|chilly|scorching|freezing) (day|one|morning|afternoon|night|evening) [(out|out here|up here|today)] [<pause>] [(it is|at|like)] <amount> [(out|outside|out here|up here|today|out there|already)]',
    weather,
    { unheard: true, examples: ['it is a cold day thirty six out'] },
  ),
  rule(
    `[the] <quantity> <link> <amount> (off|on|by|with|from|per|according to) [of] ${WITH}`,
    shownBy,
    { unheard: true, examples: ['discharge is two twenty six off my clamp'] },
  ),
  rule(
    '[(it is|i have|i got|i have got|got|only|still)] <amount> in (the|this|that|their|my) (chest [freezer]|upright|bottle cooler|back bar|keg (cooler|room)|sandwich (table|unit)|prep (table|unit)|pizza table|(deli|dairy|meat|ice cream) case)',
    inKept,
    { unheard: true, only: startsClause, examples: ['minus eighteen celsius in the chest'] },
  ),
  rule(
    '[(it is|i have|i have got|i got|got)] <amount> (at|on|in front of|going into|into) the <part> (inlet|face|intake|entrance|air inlet|entering side)',
    airAtPart,
    { unheard: true, examples: ['ninety six at the coil inlet'] },
  ),
  rule(
    `<the> <part> [(is|was|at|has|has got|reads)] [(at|got)] <amount:in> [(going|coming|flowing)] in [<pause>] [(and|but)] [(it is|is)] <amount:out> [(going|coming)] (out|back out)`,
    throughNamed,
    { unheard: true, examples: ['filter dryer ninety six in ninety four out'] },
  ),
  rule(
    '[(it is|got|i have|i got|only|still)] <amount> (in|on) [all] (the|their|my) [(top|front|back|left|right|cold|salad)] (pans|wells|inserts)',
    pans,
    { unheard: true, examples: ['forty nine in the pans'] },
  ),
  rule(
    '[the] air [is] (leaving|coming (off|out of)|blowing off|going out of|going (in|into|onto)|coming (in|into|onto)|entering|hitting|onto) [of] <the> <part> <link> <amount>',
    airAtPart,
    { unheard: true, examples: ['air is leaving the coil at one twenty two'] },
  ),
  rule(
    '[(and|but)] [(it is|i have|i have got)] [(only|still)] <amount> in (that|the|this|their) (closet|(mechanical|machine|equipment|compressor|plant|boiler|engine) room|basement|attic|machinery room)',
    aroundUnit,
    { unheard: true, examples: ['it is ninety one in that closet'] },
  ),
  rule('[[the] <quantity> <link>] [it is] <amount> in the (shade|sun)', inShade, {
    unheard: true,
    examples: ['one oh two in the shade'],
  }),
  rule('[(the|and|and the|my)] red one <link> <amount>', gaugeOf('headPressure'), {
    unheard: true,
    examples: [],
  }),
  rule('[(the|and|and the|my)] blue one <link> <amount>', gaugeOf('suctionPressure'), {
    unheard: true,
    examples: [],
  }),
];
