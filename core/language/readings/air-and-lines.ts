import { clauseBefore, wordBefore, wordBehind } from '../words/clause-start.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { isSetting, QUANTITIES } from '../../terms/quantities.ts';
import { thermalSystem } from '../../units/shown-unit.ts';
import { electrical, GOT } from '../electrical/electrical.ts';
import { amountIn } from '../numbers/measure.ts';
import { isPlausible } from '../numbers/plausible.ts';
import { fixed, leftToAsk, reading } from './reading-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, quantityId, tagsIn } from '../slots.ts';
import { degrees, isThermal, throughPart } from './through-part.ts';
import { remark } from '../plain-means.ts';

/** An unnamed coil blows colder than it draws; a condenser's air is warmed by it. */
const airThrough: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const words = frame.wordsOf(frame.span);
  if (part === null) return null;
  const isUnnamed = part === 'condenser' && !/\b(?:cond|outdoor)/i.test(words);
  const [on, off] = [amountIn(tagsIn(tags['in']) ?? {}), amountIn(tagsIn(tags['out']) ?? {})];
  const isCooled = on.value !== null && off.value !== null && off.value < on.value;
  return throughPart(isUnnamed && isCooled ? 'evaporator' : part, tags, frame);
};

/** "It's eighty one at the condenser": nothing there runs on so few volts. */
const airAtCondenser: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  const found = degrees('ambientTemp', tags, frame);
  return found === null || (unit === null && (value ?? 0) > MOST_AIR)
    ? null
    : { readings: [found] };
};
/** Ours: a bare number above may as well be a control voltage of 115. */
const MOST_AIR = 112;

const COLD: ReadonlySet<QuantityId> = new Set<QuantityId>([
  ...(['boxTemp', 'supplyAirTemp', 'setpointTemp', 'productTemp', 'suctionLineTemp'] as const),
]);

/** "Box thirty nine, coil twenty four": behind air it is the evaporator's, and no wire is at minus ten. */
const coilAt: Means = (tags, frame) => {
  // "Coil's pulling minus eleven air off of it" tells of the air.
  if (wordBehind(frame) === 'air') return null;
  const found = degrees('evaporatingTemp', tags, frame);
  const boiling = found === null ? null : { readings: [found] };
  if (boiling === null) return null;
  const { lastQuantity } = frame.context;
  const isSure = (found?.value ?? 0) < 0 || (lastQuantity !== null && COLD.has(lastQuantity));
  const means = (quantity: QuantityId): Meaning | null => (COLD.has(quantity) ? boiling : null);
  return { ofThat: { means, otherwise: isSure ? boiling : leftToAsk(tags) } };
};

const atBulb: Means = (tags, frame) => {
  const found = degrees('suctionLineTemp', tags, frame);
  return found === null ? null : { readings: [found] };
};

const waterPair: Means = (tags, frame) => {
  const readings = [
    degrees('enteringWaterTemp', tagsIn(tags['in']), frame),
    degrees('leavingWaterTemp', tagsIn(tags['out']), frame),
  ].filter((each) => each !== null);
  return readings.length === 2 ? { readings } : null;
};

/** Ours: nitrogen that stands in a system is no hotter than the room, and discharge gas no colder than this. */
const LEAST_DISCHARGE = { us: 130, si: 55 } as const;

/** "Gas temp's one eighty" can only be the discharge's; what is less may be nitrogen's, and is asked about. */
const gasAt: Means = (tags, frame) => {
  const { lastQuantity, units } = frame.context;
  const found = degrees('dischargeLineTemp', tags, frame);
  const isHot = found?.value !== undefined && found.value >= LEAST_DISCHARGE[thermalSystem(units)];
  return found === null || !isHot || lastQuantity === 'testPressure'
    ? leftToAsk(tags)
    : { readings: [found] };
};

const LINES: ReadonlySet<QuantityId> = new Set<QuantityId>([
  ...(['suctionLineTemp', 'liquidLineTemp', 'headPressure', 'superheat', 'subcooling'] as const),
  ...(['condensingTemp', 'condenserLeavingAirTemp'] as const),
]);

/**
 * A discharge told among line temperatures, or behind the head, is the line's, and so is one that no head can be, as 78 in
 * metric habits; alone it is the head, and said back as such.
 */
const dischargeAt: Means = (tags, frame) => {
  const line = degrees('dischargeLineTemp', tags, frame);
  const head = fixed('headPressure')(tags, frame);
  const [pressure] = head?.readings ?? [];
  if (amountIn(tags).unit !== null || pressure?.value === undefined || pressure.unit === null)
    return null;
  if (head === null || line === null) return null;
  const { value, unit } = pressure;
  const { lastQuantity, readsDischargeLine, refrigerant } = frame.context;
  const asLine = { readings: [line] };
  if (!isPlausible('headPressure', { value, unit }, refrigerant)) return asLine;
  const means = (quantity: QuantityId): Meaning => (LINES.has(quantity) ? asLine : head);
  const wasLine =
    readsDischargeLine || lastQuantity === 'suctionLineTemp' || lastQuantity === 'liquidLineTemp';
  return { ofThat: { means, otherwise: wasLine ? asLine : head } };
};

/** One line or one heat read at two places, and no volts at the second of them. */
const atBothEnds: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  if (quantity === null || !AT_ENDS.has(quantity)) return null;
  const amounts = [tags, tagsIn(tags['other']) ?? {}].map(amountIn);
  const readings = amounts.flatMap((amount) => reading(quantity, amount, frame) ?? []);
  return readings.length === amounts.length ? { readings } : null;
};
const AT_ENDS: ReadonlySet<QuantityId> = new Set<QuantityId>([
  ...(['suctionLineTemp', 'liquidLineTemp', 'dischargeLineTemp', 'superheat'] as const),
  ...(['headPressure', 'suctionPressure'] as const),
]);
const END =
  '(at|by|leaving|off|where it (leaves|comes out of|comes off|enters|goes into)) <the> <part>';

/** Which side a line or a saturation belongs to, by what was told before it in the same breath. */
const HIGH_SIDE: ReadonlySet<QuantityId> = new Set<QuantityId>([
  ...(['headPressure', 'condensingTemp', 'liquidLineTemp', 'subcooling'] as const),
]);
const LOW_SIDE: ReadonlySet<QuantityId> = new Set<QuantityId>([
  ...(['suctionPressure', 'evaporatingTemp', 'suctionLineTemp', 'superheat'] as const),
]);

const beside =
  (high: QuantityId, low: QuantityId): Means =>
  (tags, frame) => {
    const of = (quantity: QuantityId): Meaning | null => {
      const found = degrees(quantity, tags, frame);
      return found === null ? null : { readings: [found] };
    };
    const means = (read: QuantityId): Meaning | null => {
      if (HIGH_SIDE.has(read)) return of(high);
      return LOW_SIDE.has(read) ? of(low) : null;
    };
    return { ofThat: { means, otherwise: leftToAsk(tags) } };
  };
/** "Suction two bar, saturated minus ten": what stands behind a comma begins another. */
const unbroken =
  (means: Means): Means =>
  (tags, frame) =>
    /[,;]/.test(frame.wordsOf(frame.span)) ? null : means(tags, frame);

/** "Eighty six on the liquid and one oh one saturated" */
const saturatedBeside = beside('condensingTemp', 'evaporatingTemp');
/** "Saturated suction's minus four, line's at twenty two"; "line one twenty volts" is a wire's. */
const lineBeside: Means = (tags, frame) => {
  if (degrees('suctionLineTemp', tags, frame) === null || isNamedLine(frame)) return null;
  // "Line's fifty one", where that line's was asked for.
  const { asked } = frame.context;
  const answer = asked?.endsWith('LineTemp') === true ? degrees(asked, tags, frame) : null;
  if (answer !== null) return { readings: [answer] };
  return beside('liquidLineTemp', 'suctionLineTemp')(tags, frame);
};

/** "Suction line's forty six" is named, and no line beside another reading. */
const isNamedLine = (frame: Frame): boolean =>
  /^(?:suction|liquid|discharge|gas|vapor|drain|return|supply|liq)$/i.test(wordBefore(frame));

/** A condenser warms its air, and an evaporator cools it. */
const airOnAndOff: Means = (tags, frame) =>
  throughPart('evaporator', tags, frame) ?? throughPart('condenser', tags, frame);

/** "Suction line thirty eight at the coil, fifty six at the compressor": the same, further along. */
const furtherAlong: Means = (tags, frame) => {
  const amount = amountIn(tags);
  if (/^(?:fans?|motor)$/.test(wordBehind(frame))) return null;
  if (/\bbulb\b/i.test(frame.wordsOf(frame.span))) return atBulb(tags, frame);
  const isAtCondenser = /\bcondenser|condensing unit/i.test(frame.wordsOf(frame.span));
  const means = (quantity: QuantityId): Meaning | null => {
    const { dimension } = QUANTITIES[quantity];
    if (quantity === 'outdoorTemp' && isAtCondenser) return fixed('ambientTemp')(tags, frame);
    const isAlong = dimension === 'temperature' || dimension === 'temperatureDifference';
    return isAlong && isThermal(amount) ? fixed(quantity)(tags, frame) : null;
  };
  const isAtMotor = /\bcompressor\b/i.test(frame.wordsOf(frame.span));
  const metered = isAtMotor ? electrical(tags, 'compressor', frame) : null;
  const otherwise = metered === null ? leftToAsk(tags) : { readings: [metered] };
  return { ofThat: { means, otherwise } };
};

/** Ours: a compressor's overload opens far above, a defrost's klixon below. */
const MOST_OF_DEFROST = { us: 90, si: 32 } as const;
const klixonAt: Means = (tags, frame) => {
  const { value } = amountIn(tags);
  const isDefrost = value !== null && value <= MOST_OF_DEFROST[thermalSystem(frame.context.units)];
  return isDefrost ? remark(tags, frame) : null;
};

/** "Discharge one eighty five, liquid ninety eight": the line that comes behind it tells. */
const dischargeThenLine: Means = (tags, frame) => {
  const line = degrees('dischargeLineTemp', tags, frame);
  const next = degrees(
    tags['next'] === 'suctionLineTemp' ? 'suctionLineTemp' : 'liquidLineTemp',
    tagsIn(tags['other']),
    frame,
  );
  return line === null || next === null ? null : { readings: [line, next] };
};

/** The pipe at its outlet, where subcooling is read; behind the air that goes in, the air that comes out. */
const condenserOutlet: Means = (tags, frame) => {
  const pipe = degrees('liquidLineTemp', tags, frame);
  const air = degrees('condenserLeavingAirTemp', tags, frame);
  if (pipe === null || air === null) return null;
  const ofAir = { readings: [air] };
  const means = (quantity: QuantityId): Meaning | null =>
    quantity === 'ambientTemp' || quantity === 'outdoorTemp' ? ofAir : null;
  const isAir = frame.context.lastQuantity === 'ambientTemp';
  const asked: Meaning = { doubts: [{ ...pipe, why: 'expected' }] };
  return { ofThat: { means, otherwise: isAir ? ofAir : asked } };
};

const foodFine: Means = (tags, frame) => {
  const found = degrees('productTemp', tags, frame);
  const words = frame.wordsOf(frame.span);
  return found === null
    ? null
    : { readings: [found], findings: [{ part: 'product', state: 'ok', words }] };
};

const acrossDrier: Means = (_tags, frame) => ({
  remarks: [frame.wordsOf(frame.span)],
  names: 'filterDrier',
});

/** "For a ten below box": what it is kept at; that it stands there now nobody has read. */
const boxOfQuestion: Means = (tags, frame) => {
  const found = degrees('setpointTemp', tags, frame);
  return found === null || frame.span.from === 0 ? null : { readings: [found] };
};

/** "Box won't come below nine": where it stands most likely, and nobody said that he read it. */
const stuckAt: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const found = quantity === null ? null : degrees(quantity, tags, frame);
  return found === null ? null : { doubts: [{ ...found, why: 'expected' }] };
};

const thermal =
  (quantity: QuantityId): Means =>
  (tags, frame) => {
    const found = degrees(quantity, tags, frame);
    return found === null || /^(?:fan|motor|contactor)/.test(wordBehind(frame))
      ? null
      : { readings: [found] };
  };

const boiling: Means = (tags, frame) =>
  tags['quantity'] === 'evaporatingTemp' || tags['quantity'] === 'condensingTemp'
    ? thermal(tags['quantity'])(tags, frame)
    : null;

/** "Liquid line's one oh two leaving the condenser": of the line that leaves it, and no air. */
const offCondenser: Means = (tags, frame) =>
  LINE_BEFORE.test(clauseBefore(frame)) ? null : thermal('condenserLeavingAirTemp')(tags, frame);
const LINE_BEFORE = /\b(?:liquid|line|discharge|pipe|tube|water)\b/i;

/** "One twenty off the coil" is a contactor's: no evaporator blows so warm. */
const offCoil: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  return unit === null && (value ?? 0) > WARMEST_SUPPLY[thermalSystem(frame.context.units)]
    ? null
    : thermal('supplyAirTemp')(tags, frame);
};
/** Ours. */
const WARMEST_SUPPLY = { us: 80, si: 27 } as const;

const OFF_OF = '(coming off [of]|off [of]|leaving|blowing off|coming out of)';
const COIL = '(the|this|that|my) <part>';
const ON = '((going|coming|blowing) (in|on|into it)|in|on|going into it)';
const OFF = '((going|coming|blowing) (off|out)|off|out|leaving|coming off of it)';
const AND = '[(and|but|<pause> [(and|but)])] [(it is|i have|i got)] [(only|barely|just)]';
const OUTLET = '[(temp|temperature)]';

/** Air through a coil, water through a condenser, and lines told beside each other. */
export const AIR_AND_LINE_RULES: readonly Rule[] = [
  rule(
    `${GOT} <amount:in> ${ON} ${AND} <amount:out> ${OFF} (at|of|across|on) ${COIL}`,
    airThrough,
    {
      examples: ['thirty six in and twenty eight out at the evaporator'],
    },
  ),
  rule(`${GOT} <amount:out> ${OFF} ${AND} <amount:in> ${ON} (at|of|across|on) ${COIL}`, airThrough),
  rule(
    `<the> <part> (is [at]|has|has got|is got|got) [got] <amount:in> ${ON} ${AND} <amount:out> ${OFF}`,
    airThrough,
    { examples: ['condenser has got ninety two going in and one fourteen coming off'] },
  ),
  rule(
    `${GOT} <amount:in> (going|coming|blowing) (in|into|on|onto|on to) ${COIL} ${AND} <amount:out> ${OFF}`,
    airThrough,
    { examples: ['forty going into the evaporator and thirty one coming off'] },
  ),
  rule(
    '(it is|<pause>) <amount> [right] ((at|by|around|near|going into|entering|in front of|where) the condenser [coil] [(is|sits)]|where (it|the unit|the (condensing|outdoor) unit|the condenser|the machine) (is|sits|breathes|draws [its air]|is (pulling|drawing) [in] [its] air [from])|~~(by|around|near|next to) the (unit|condensing unit|machine|rack))',
    airAtCondenser,
    { examples: ['it is eighty one at the condenser'] },
  ),
  rule(
    `${GOT} <amount> ((going|coming) (in|into|to)|entering) <the> water (cooled condenser|condenser)`,
    thermal('enteringWaterTemp'),
    { examples: ['seventy four degrees going into the water cooled condenser'] },
  ),
  rule(
    `${GOT} <amount> ambient (at|by|around|near|going into|in front of) the condenser [coil]`,
    thermal('ambientTemp'),
    { examples: ['eighty nine ambient at the condenser'] },
  ),
  rule(
    '[the] (coil|evaporator|evap|condenser|system|it) is <quantity> [(at|to)] <amount>',
    boiling,
    {
      examples: ['coil is evaporating at twelve below'],
    },
  ),
  rule(`${GOT} <amount> ${OFF_OF} <the> condenser [coil]`, offCondenser, {
    examples: ['one hundred and ten coming off the condenser'],
  }),
  rule(
    `${GOT} <amount> ${OFF_OF} <the> (evaporator|evap|(evaporator|evap|cooling) coil|coil)`,
    offCoil,
    { examples: ['twenty nine degrees off the coil'] },
  ),
  rule(
    '<the> [(txv|valve|sensing)] bulb [is] (reading|reads|at|is|shows|running) <amount>',
    atBulb,
    {
      examples: ['txv bulb is reading thirty four'],
    },
  ),
  rule(
    `[the] <quantity> [<link>] ${END} <link> <amount> [<pause>] [(and|but)] [back] ${END} [(it is|i have got|i am getting)] <amount:other> [on it]`,
    atBothEnds,
    {
      unheard: true,
      examples: ['suction line at the coil is fifteen and at the compressor fifty one'],
    },
  ),
  rule(
    `[the] <quantity> <link> <amount> ${END} [<pause>] [(and|but)] <amount:other> [back] ${END}`,
    atBothEnds,
    {
      unheard: true,
      examples: ['suction line is fifteen at the coil and fifty one at the compressor'],
    },
  ),
  // "Thirty eight at the coil fifty six at the compressor"
  rule('[the] coil <link> <amount>', coilAt, {
    only: (frame) => !/^(?:at|by|near|on|across|leaving|off)$/i.test(wordBefore(frame)),
    examples: ['coil is minus twenty six'],
  }),
  rule(
    '[the] (entering|incoming) [water] [(temp|temperature)] <link> <amount:in> [<pause>] [and] (leaving|outgoing) [water] [(temp|temperature)] <link> <amount:out>',
    (tags, frame) => (/\bwater\b/i.test(frame.wordsOf(frame.span)) ? waterPair(tags, frame) : null),
    { examples: ['entering water sixty four leaving eighty eight'] },
  ),
  rule('[the] discharge <link> <amount>', dischargeAt),
  rule('<amount> (saturated|saturation|sat|s c t|s s t)', unbroken(saturatedBeside), {
    examples: [],
  }),
  rule('[the] (saturated|saturation|sat) [(at|is|is at)] <amount>', saturatedBeside, {
    examples: [],
  }),
  rule('[(and|with|but)] [the] line is [(at|running|reading)] <amount>', lineBeside),
  rule('<pause> [(and|with)] [the] line at <amount>', lineBeside),
  rule(
    '[the] air (on|in) [(coil|temp|temperature)] <link> <amount:in> [<pause>] [and] [the] air (off|out) [(coil|temp|temperature)] <link> <amount:out>',
    airOnAndOff,
    { examples: ['air on is five air off is minus one'] },
  ),
  rule(
    '<pause> [and] <amount> (at|by|near) the (compressor|evaporator|evap|coil|condenser|receiver|valve|txv|bulb|king valve|service valve|condensing unit)',
    furtherAlong,
  ),
  rule(
    '([(so|and|now)] (i am|we are|it is|that is|you are|only|just|barely)|~so) [(only|just|barely)] <amount> (subcooled|subcool|of subcooling)',
    fixed('subcooling'),
    { examples: ['i am six subcooled'] },
  ),
  rule(
    '([(so|and|now)] (i am|we are|it is|that is|you are|only|just|barely)|~so) [(only|just|barely)] <amount> (superheated|superheat|of superheat)',
    fixed('superheat'),
    { examples: ['it is twelve superheated'] },
  ),
  rule(
    '[the] defrost (term|termination|terminator|thermostat) (opened|closed|opens|closes|made|broke) at <amount>',
    klixonAt,
    { unheard: true, examples: ['defrost term opened at fifty'] },
  ),
  rule('[the] [defrost] klixon (opened|closed|opens|closes|made|broke) at <amount>', klixonAt, {
    examples: ['klixon opened at fifty'],
  }),
  rule(
    '[the] <quantity> [(stamped|printed|marked)] on the (collar|[recovery] (tank|cylinder|bottle)|side|can|switch|control|tag|plate) <link> <amount>',
    (tags, frame) => {
      const quantity = quantityId(tags['quantity']);
      return quantity !== null && isSetting(quantity) ? fixed(quantity)(tags, frame) : null;
    },
    { examples: ['tare weight stamped on the collar is seventeen pounds'] },
  ),
  rule('[the] gas (temp|temperature) <link> <amount>', gasAt, {
    examples: ['gas temp is one eighty'],
  }),
  rule(
    '[the] discharge <link> <amount> [<pause>] [and] [the] liquid [line] <link> <amount:other>',
    dischargeThenLine,
    {
      tags: { next: 'liquidLineTemp' },
      examples: ['discharge is one eighty five liquid ninety eight'],
    },
  ),
  rule(
    '[the] discharge <link> <amount> [<pause>] [and] [the] suction line <link> <amount:other>',
    dischargeThenLine,
    { tags: { next: 'suctionLineTemp' } },
  ),
  rule(`[the] condenser (outlet|out) ${OUTLET} <link> <amount>`, condenserOutlet, {
    examples: ['condenser outlet is one oh two'],
  }),
  rule(
    '[(the|all the|all)] (product|food|stuff) (is|looks) (fine|good|ok|all right|still good|still fine) [<pause>] [(it is|at|i got|i have|reads)] <amount> [(in|at) the (middle|core|center|back|thickest part)]',
    foodFine,
    { examples: ['product is fine thirty seven in the middle'] },
  ),
  rule(
    '<the> (filter dryer|dryer|line dryer) (has|has got|is got|got|is dropping|drops) [got] [a] <amount> [(drop|difference|split)] (across|through|over) it',
    acrossDrier,
    { examples: ['dryer has got four degrees across it'] },
  ),
  rule(
    '[(i have|i have got|there is|got|i got|it is)] [a] <amount> (drop|difference|split) (across|through|over) the (filter dryer|dryer|line dryer)',
    acrossDrier,
    { examples: ['there is a five degree drop across the dryer'] },
  ),
  rule(
    '(for|on|in|with|at) (a|an|this) <amount> (box|cooler|freezer|walk in|case|cabinet)',
    boxOfQuestion,
  ),
  rule(
    '[the] [defrost] (termination|terminator|term stat|termination (stat|switch|thermostat|klixon)|fan delay|~~([fan] delay (stat|switch|thermostat|klixon))) [(is|has)] (opens|closes|~opened|~closed|~made|terminates|cuts (in|out)|makes|breaks|set (at|for|to)|set|~~(brings|turns|kicks|lets|starts|cycles|holds) [the] fans [back] [(on|off|in|run|go|start)] [(till|until)]) [at] <amount>',
    remark,
    { examples: ['termination closes at twenty five'] },
  ),
  rule(
    '[the] <quantity> (will not|does not|never|can not|did not) (come|comes|go|goes|get|gets|pull|pulls) [(down|up)] (below|under|lower than|past|down to|over|above|up to|higher than|beyond) <amount>',
    stuckAt,
    { examples: ['box will not come below nine'] },
  ),
  rule(
    '[(it|the defrost|defrost)] (terminated|terminates|is terminating|came out of defrost) (at|on) <amount>',
    remark,
    { examples: ['it terminated at fifty two degrees'] },
  ),
];
