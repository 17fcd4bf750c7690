import { thermalSystem } from '../../units/shown-unit.ts';
import { headOverSuction } from '../readings/both-gauges.ts';
import { startsClause } from '../words/clause-start.ts';
import { unitByName } from '../facts/facts.ts';
import { GOT, NO_VOLTS, noVolts, placeFirst } from '../electrical/electrical.ts';
import { finding } from './finding-of.ts';
import { stateOf } from './state-of.ts';
import { amountIn, unitFor } from '../numbers/measure.ts';
import { asReading, fixed } from '../readings/reading-means.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { partId, tagsIn, workId } from '../slots.ts';

/** A weight: "the charge was too much" and "charge was thirty" are none. */
const chargeWas: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  const isWeight =
    unit === 'pounds' || (unit !== null && unitFor(unit, 'mass', frame.context.units) !== null);
  return isWeight ? fixed('refrigerantCharge')(tags, frame) : null;
};

/** Of a part the face that shows what it does. */
const blankFace: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null ? null : { findings: [finding(part, 'failed', frame)] };
};

const PUT_IN =
  '(probed|checked|measured|temped|took|read|((stuck|put|stabbed|dropped|poked|shoved) (a|my|the) (probe|thermometer|stem thermometer|stick) (in|into|between|on)))';
const CAME_AT =
  '(is|was|came (in|out|up) [at]|reads|read|shows|showed|says|said|is reading|was reading|is sitting at|was sitting at) [(at|right at)]';
const WHERE =
  '(in|on|inside|at|by|over|behind|under) (the|this|that) (cabinet|box|case|cooler|freezer|walk in|reach in|lid|wall|front|back|top|kitchen|ceiling|door|[air] (intake|inlet|outlet|return|supply)|return air|grille|grill|vent|louver|side|left|right|bottom|roof|floor|rack|shelf|hallway|hall|basement|unit|machine)';
const SIDE = '[(the|a|my)] [(suction|low side|low)]';

/** "Unit is the left hand cooler by the bar": which one, told by where it stands. */
const unitWhere: Means = (tags, frame) =>
  BY_PLACE.test(frame.wordsOf(frame.span)) ? unitByName(tags, frame) : null;
const BY_PLACE =
  /\b(?:left|right|middle|end|first|second|last|front|back|upstairs|downstairs)\b.*\b(?:cooler|freezer|box|case|fridge|cabinet|unit|machine|walk-?in|reach-?in)\b.*\b(?:by|next to|near|beside|behind|under|across from|closest to|in the|at the|on the)\b/i;

const sensorDone: Means = (tags, frame) => {
  const did = workId(tags['work']);
  return did === null
    ? null
    : { work: [{ did, part: 'sensor', words: frame.wordsOf(frame.span) }] };
};

/** "One forty on the head, wait no, one forty three": the second one was read. */
const putRight: Means = (tags, frame) => {
  const right = tagsIn(tags['right']);
  const { quantity } = tags;
  return right === null || quantity === undefined
    ? null
    : asReading()({ ...right, quantity }, frame);
};

/** One figure for two quantities. */
const bothRead: Means = (tags, frame) => {
  const other = tagsIn(tags['other'])?.['quantity'];
  const first = asReading()(tags, frame);
  const second = other === undefined ? null : asReading()({ ...tags, quantity: other }, frame);
  if (first?.readings === undefined || second?.readings === undefined) return null;
  return { readings: [...first.readings, ...second.readings] };
};

/** Of a difference alone: "480 k" is ohms. */
const inKelvin: Means = (tags, frame) =>
  tags['quantity'] === 'superheat' || tags['quantity'] === 'subcooling'
    ? asReading()(tags, frame)
    : null;

/** Of two like it, and no pressure of one: "high side one is at two ten". */
const ofOneOfTwo: Means = (tags, frame) =>
  tags['quantity'] === 'headPressure' || tags['quantity'] === 'suctionPressure'
    ? asReading()(tags, frame)
    : null;

/** Nothing breathes such air in at a condenser, and what is less may be feet or minutes. Ours. */
const COLDEST = { us: 30, si: 0 } as const;
const airAround: Means = (tags, frame) => {
  const { value } = amountIn(tags);
  return value === null || value < COLDEST[thermalSystem(frame.context.units)]
    ? null
    : fixed('ambientTemp')(tags, frame);
};

/** What is told in plain words around a name that the rules know. */
export const PLAINLY_SAID_RULES: readonly Rule[] = [
  rule(
    `${GOT} (${NO_VOLTS} (at|across|on|to) <the> <place> <pause> [(it is|reading)] zero (volts|voltage)|dead (at|across|on|to) <the> <place> [<pause> [(it is|reading)] zero (volts|voltage)])`,
    noVolts(),
    { unheard: true, examples: ['dead across the overload'] },
  ),
  ...(['start', 'run', 'common'] as const).map((winding) =>
    rule(
      `[the] ${winding} (winding|terminal|pin) to (ground|the (shell|case|frame)) (<link>|<loose>) <amount>`,
      (tags, frame) => placeFirst({ ...tags, place: `${winding}Ground` }, frame),
      { unheard: true },
    ),
  ),
  rule(
    '<byUs> <done> [(the|a|their)] [(new|old|bad)] (box|cabinet|return air|supply air|coil|space) [(temp|temperature)] (sensor|thermistor|probe)',
    sensorDone,
    { unheard: true, examples: ['replaced the box temperature sensor'] },
  ),
  ...(
    [
      ['(high side|high|head) gage', 'headPressure'],
      ['(low side|low|suction) gage', 'suctionPressure'],
      ['(big|bigger|fat|large|larger) (pipe|line)', 'suctionLineTemp'],
      ['(small|smaller|little|skinny|thin) (pipe|line)', 'liquidLineTemp'],
    ] as const
  ).map(([name, quantity]) =>
    rule(
      `[(my|the|a) (clamp|probe|thermocouple|thermometer) on] [(the|my)] ${name} (<link>|<loose>) <amount>`,
      fixed(quantity),
      { unheard: true },
    ),
  ),
  rule(
    `[${GOT}] <amount:wrong> (on|at|for) [(the|my)] <quantity> [<pause>] (no|nope|wait|no wait|wait no|no no|i mean|i meant|sorry|no sorry|make that|scratch that|correction|actually) [<pause>] [(it is|that is|make that|make it|i mean)] <amount:right>`,
    putRight,
    { unheard: true, examples: ['one forty on the head wait no one forty three'] },
  ),
  rule(
    '<the> <part> (is|was) the (one|part|thing|culprit|problem) [(that|which) (is|was|has|went)] <very> <state>',
    stateOf('state'),
    { unheard: true, examples: ['the start relay is the one that is burnt'] },
  ),
  rule(
    '[the] <quantity> and [the] <quantity:other> (are|is|were) both [(at|reading|sitting at|about)] <amount>',
    bothRead,
    { unheard: true, examples: ['head and suction are both ninety five'] },
  ),
  rule(
    '[the] <quantity> (went|came|climbed|rose|jumped|dropped|fell|crept|has gone|has come|is) (up|down|back) [(by|another)] <amount:by> [(and is now|now|so it is|and it is)] (to|at) <amount>',
    asReading(),
    { unheard: true, examples: ['head went up ten pounds to two oh two'] },
  ),
  rule('[the] <quantity> [(is|is at|at)] oh <number>', ofOneOfTwo, {
    unheard: true,
    examples: ['low side is oh four'],
  }),
  rule('[the] <quantity> [(is|at|is at)] <number> (k|kelvin)', inKelvin, {
    unheard: true,
    tags: { unit: 'dC' },
    examples: ['superheat four k'],
  }),
  rule(
    '[the] <quantity> [(on|for)] [(circuit|number|compressor|side)] (one|two|1|2) (is|is at|at|is sitting at|reads) <amount>',
    ofOneOfTwo,
    { unheard: true, examples: ['high side one is at two ten'] },
  ),
  rule(
    '(it is|it has got to be|it feels like|must be) [(like|about|around|probably|easily)] <amount> [(out|outside|up|back|down)] [here] (behind|around|in front of|back of|on the side of|(out|outside|back|here) (by|at|next to|near)) (the|this) (unit|condenser|condensing unit|condenser coil|machine)',
    airAround,
    { unheard: true, examples: ['it is like a hundred and two back here behind the unit'] },
  ),
  rule('[the] unit is (the|our|their) <clause>', unitWhere, {
    unheard: true,
    yields: 'name',
    examples: ['unit is the left hand cooler by the bar'],
  }),
  rule(
    '[the] [(old|original|whole|total)] charge was [(about|only|at)] <amount> [total]',
    chargeWas,
    {
      unheard: true,
      only: startsClause,
      examples: ['the charge was four pounds'],
    },
  ),
  rule(
    `[(i|we)] [(just|also|then)] ${PUT_IN} [(the|some|that)] <quantity> [<pause>] [and] (it|that) ${CAME_AT} <amount>`,
    asReading(),
    { unheard: true, examples: ['i probed the product and it was thirty nine degrees'] },
  ),
  rule(
    `[the] (head [pressure]|high side|high) <link> <amount:head> over ${SIDE} <amount:suction> [(on (the suction|the low side|the low)|suction|low)]`,
    headOverSuction,
    { unheard: true, examples: ['head two fifteen over twenty two suction'] },
  ),
  rule(
    '(sucking|pulling|drawing) <amount:suction> [<pause>] [and] (pushing|pumping|blowing) <amount:head>',
    headOverSuction,
    { unheard: true, examples: ['sucking six pushing one forty'] },
  ),
  rule(
    '<the> <part> (is|s) (display|screen|readout|face|keypad) (is|was|has|went|goes) [(gone|all|completely)] (dead|blank|out|dark|black|broken|cracked|garbled|scrambled|not working|not lit [up])',
    blankFace,
    { unheard: true, examples: ['controller is display is dead'] },
  ),
];

/** Behind what the rules know by where it stands: "the fan in the box" is the evaporator's. */
export const FOUND_WHERE_RULES: readonly Rule[] = [
  rule(`<the> <part> ${WHERE} (is|are|was|were|looks|has) <very> <state>`, stateOf('state'), {
    unheard: true,
    examples: ['thermometer in the cabinet is broken'],
  }),
];
