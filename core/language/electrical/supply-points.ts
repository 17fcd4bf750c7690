import type { Tags } from '../../grammar/nodes.ts';
import type { PartId, PlaceId } from '../../terms/names.ts';
import { electrical, GOT, NO_VOLTS, one } from './electrical.ts';
import { finding } from '../findings/finding-of.ts';
import { amountIn } from '../numbers/measure.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, placeId, tagsIn } from '../slots.ts';
import { FEED, SIDES, UNPLACED } from './supply-words.ts';

/** Ours: less is no supply's; a bare figure may be amps or a size. */
const LEAST_VOLTS = 20;

/** Volts that a supply or its control circuit can have, or none at all. */
function voltsOf(tags: Tags | null, place: PlaceId | null, frame: Frame): Meaning | null {
  if (tags === null) return null;
  const { unit, value, overlimit, low } = amountIn(tags);
  if ((unit !== null && unit !== 'V') || overlimit || low !== null || value === null) return null;
  if (unit === null && value !== 0 && value < LEAST_VOLTS) return null;
  return one(electrical({ ...tags, unit: 'V' }, place, frame));
}

/** Which side of it the leads were on, where that was told. */
function sideOf(words: string): PlaceId | null {
  if (/\b(?:load side|secondary)\b/i.test(words)) return 'loadSide';
  if (/\b(?:line side|primary)\b/i.test(words)) return 'lineSide';
  // "The top fuse" is one of three.
  if (/\bfuses?\b/i.test(words)) return null;
  if (/\bbottom\b/i.test(words)) return 'loadSide';
  return /\btop\b/i.test(words) ? 'lineSide' : null;
}

const FED: readonly (readonly [RegExp, PartId])[] = [
  [/\bfuses?\b/i, 'fuse'],
  [/\bbreakers?\b/i, 'breaker'],
  [/\bdisconnect\b/i, 'disconnect'],
  [/\btransformer\b/i, 'transformer'],
  [/\bcontactor\b/i, 'contactor'],
];
const partOf = (words: string): PartId | null =>
  FED.find(([names]) => names.test(words))?.[1] ?? null;

const together = (each: readonly (Meaning | null)[]): Meaning | null => {
  const all = each.filter((meaning) => meaning !== null);
  return all.length < each.length
    ? null
    : { readings: all.flatMap(({ readings = [] }) => readings) };
};

/** What was metered, and what is "it" from here on. */
function at(meaning: Meaning | null, frame: Frame): Meaning | null {
  const names = partOf(frame.wordsOf(frame.span));
  return meaning === null || names === null ? meaning : { ...meaning, names };
}

/** "Two thirty coming in but only one ninety eight at the compressor": what the wires between them lose. */
const inAndThere: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  if (place === null) return null;
  const there = tagsIn(tags['there']);
  return together([
    voltsOf(tagsIn(tags['first']), 'lineSide', frame),
    voltsOf(there, place, frame),
  ]);
};

/** What goes in and what comes out, where it is said to be power. */
const throughPlace: Means = (tags, frame) => {
  if (!/\b(?:power|voltage|volts)\b/i.test(frame.wordsOf(frame.span))) return null;
  const both = together([
    voltsOf(tagsIn(tags['first']), 'lineSide', frame),
    voltsOf(tagsIn(tags['there']), 'loadSide', frame),
  ]);
  const part = partId(tags['place']);
  return both === null || part === null ? both : { ...both, names: part };
};

const placeHas: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  return place === null ? null : voltsOf(tags, place, frame);
};

/** "It's got power to it, one eighteen": at what was spoken of. */
const itHas: Means = (tags, frame) => {
  const means = (part: PartId): Meaning | null => voltsOf(tags, placeId(part), frame);
  return { ofIt: { means, inSentence: false, otherwise: voltsOf(tags, null, frame) ?? {} } };
};

/** "Two oh eight across that fuse", "one twenty at the breaker" */
const atFeed: Means = (tags, frame) =>
  at(voltsOf(tags, sideOf(frame.wordsOf(frame.span)), frame), frame);

/** "Fuse thirty", "disconnect is sixty" may be what it is built for: a bare figure is volts where it says that something is there. */
const feedHas: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  const words = frame.wordsOf(frame.span);
  if (unit === null && !HAS_VOLTS.test(words)) return null;
  // "Over at the contactor I've got twenty four" may be amps.
  const isDrawnThrough = /\bcontactor\b/i.test(words) && !/\bside\b/i.test(words);
  return unit === null && isDrawnThrough && (value ?? 0) < MAINS ? null : atFeed(tags, frame);
};
/** Ours: less is no supply's but a control's. */
const MAINS = 100;
const HAS_VOLTS =
  /\b(?:has|have|got|reads?|reading|shows?|showing|gets|getting|puts?|putting|gives|gave|making|seeing|side|primary|secondary|across|volts?|voltage)\b/i;

const noneAtFeed: Means = (_tags, frame) =>
  at(voltsOf({ number: 0 }, sideOf(frame.wordsOf(frame.span)), frame), frame);

/** "Transformer, primary two oh eight, secondary nothing" */
const bothSides: Means = (tags, frame) => {
  const fed = voltsOf(tagsIn(tags['in']), 'lineSide', frame);
  const given = voltsOf(tagsIn(tags['out']), 'loadSide', frame);
  return at(together([fed, given]), frame);
};

/** "Two thirty in the top of the contactor, one eighteen out the bottom"; "thirty eight on top" may be a shelf's. */
const topAndBottom: Means = (tags, frame) =>
  SAYS_WHAT.test(frame.wordsOf(frame.span))
    ? bothSides({ in: tags, out: tags['out'] ?? {} }, frame)
    : null;
const SAYS_WHAT =
  /\b(?:contactor|breaker|disconnect|fuse|block|transformer|strip|line|load|in the top|into the top|out the bottom)\b/i;

/** Of a transformer, which alone has both: "high side two ten, low side forty" is the gauges'. */
const primaryAndSecondary: Means = (tags, frame) =>
  /\b(?:transformer|primary|secondary)\b/i.test(frame.wordsOf(frame.span))
    ? bothSides(tags, frame)
    : null;

/** "One eighteen in, one eighteen out on the low pressure control" */
const inAndOutOf: Means = (tags, frame) => {
  const named = bothSides(tags, frame);
  const part = partId(tags['part']);
  return named === null || part === null ? null : { ...named, names: part };
};

/** Against neutral and against ground, each figure for itself: no place has a name for it. */
const toNeutral: Means = (tags, frame) => voltsOf(tags, placeId(tags['place']), frame);

const deadToNeutral: Means = (tags, frame) => voltsOf({ number: 0 }, placeId(tags['place']), frame);

const LINES = ['lineOne', 'lineTwo', 'lineThree'] as const;

/** "Each leg to ground one twenty, one twenty one, and zip on the third" */
const eachToGround: Means = (tags, frame) =>
  together(
    LINES.map((line, place) =>
      voltsOf(tagsIn(tags[['one', 'two', 'three'][place] ?? '']), line, frame),
    ),
  );

/** "I've got one eighteen up to the stat": it is there, and nothing is told yet of what comes behind. */
const upTo: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const part = partId(place ?? undefined);
  const volts = voltsOf(tags, place, frame);
  return volts === null || part === null ? at(volts, frame) : { ...volts, names: part };
};

/** "Low voltage, only a hundred and one under load" */
const lowSupply: Means = (tags, frame) => voltsOf(tags, null, frame);

/** "Three has none", behind what a clock has at its other terminals. */
const noneAtTerminal: Means = (tags, frame) => {
  const place = TIMER_TERMINALS[Number(tags['terminal']) - 1];
  const dead = place === undefined ? null : voltsOf({ number: 0 }, place, frame);
  const before = frame.wordsOf({ from: 0, to: frame.span.from });
  return /\b(?:timer|clock)\b/i.test(before) ? dead : null;
};
const TIMER_TERMINALS: readonly PlaceId[] = ['timerOne', 'timerTwo', 'timerThree', 'timerFour'];

const SWITCHES: readonly (PartId | null)[] = [
  ...(['highPressureSwitch', 'lowPressureSwitch', 'temperatureControl', 'overload'] as const),
  ...(['doorSwitch', 'fanControl', 'defrostTermination', 'disconnect', 'breaker'] as const),
];

/** "Power goes in the low pressure, don't come out" */
const opensThere =
  (side: PartId | null): Means =>
  (tags, frame) => {
    const part = side ?? partId(tags['part']);
    if (part === 'fuse') return { findings: [finding(part, 'failed', frame)] };
    return part === null || !SWITCHES.includes(part)
      ? null
      : { findings: [finding(part, 'open', frame)] };
  };

const AT =
  '([(dropped|right|good|dead)] (at|across|on|over|through|into|in|out of|off|off of|to|from|between|coming (in|into|out of|off)|going (to|into|through)|up to|as far as|all the way to|leaving))';
const WHICH =
  '[(left|right|middle|center|first|second|third|other|control|main|line|condenser|fan|heater|compressor|unit|same|bad|each)] [hand]';
const THE = '[(the|my|that|this|each|both|all three|either|one of the|every|those|these)]';
const OF_SIDE = `[(${SIDES} [(of|on) (the|that|this|my)]|(one|a|each|the) (pole|set|leg) (of|on) (the|that|this|my))]`;
const HAS =
  '(is|has|has got|is got|have|got|reads|reading|is reading|shows|is showing|showing|is getting|gets|is putting out|puts out|putting out|is giving me|gives me|gave me|is making|is at|at|i have|i got|i have got|i am (getting|reading|seeing))';
const NONE = '(not a thing|<none>)';
const ONLY = '[(only|just|still|a good|right at|about)]';
const LEG_TO = '<leg> to (ground|neutral)';
const POLES =
  '((hot|either hot|line|black|red|hot leg|hot side|load|neutral) to (neutral|ground|hot|white|the white)|(ground|neutral|white) to (hot|black|neutral|ground)|(leg|line|phase) to (ground|neutral))';
const GOES =
  '((power|voltage|juice|control voltage|hot|it) (goes|comes|is going|gets|is getting|makes it|came|went)|(i have|i got|i have got|there is|got) (power|voltage|juice) [(going|coming)])';
const NO_OUT =
  '[<pause>] [(and|but)] [it] ((does|do|did) not (come|go|make it|get) (out|through)|(is|are) not (coming|getting|making it) (out|through)|never (comes|makes it|gets) (out|through)|will not (come|go) (out|through)|nothing (comes|is coming|gets|going) (out|through)|no (power|voltage|juice) [(coming|going)] (out|leaving|through)|not out|dies (there|in it))';

/** A supply is named by its volts: "no twenty four at the board" is no number that somebody puts right. */
const NOMINAL =
  '(twenty four|24|one twenty|120|one fifteen|115|two forty|240|two thirty|230|two oh eight|208)';

const noNominal: Means = (tags, frame) =>
  PUTS_RIGHT.test(frame.wordsOf(frame.span))
    ? null
    : voltsOf({ number: 0 }, placeId(tags['place']), frame);
const PUTS_RIGHT = /^no\s*[,;.—-]/i;

/** Alone it says so where nothing was read yet that could be put right. */
const noNominalAlone: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const { lastQuantity, asked, openNumber, asksYes } = frame.context;
  const isFirst = lastQuantity === null && asked === null && openNumber === null && !asksYes;
  return isFirst && !PUTS_RIGHT.test(words) ? { remarks: [words] } : null;
};

/** "No twenty four": before what puts a number right. */
export const NO_SUPPLY_RULES: readonly Rule[] = [
  rule(
    `[(i have|i have got|i got|there is|got|we have)] no ${NOMINAL} [(volts|volt)] [(coming|going|getting)] (at|on|to|across|into|in|out of|from|off of) <the> (<place>|(control board|board|coil)|${UNPLACED})`,
    noNominal,
    { unheard: true, examples: ['no twenty four at the contactor'] },
  ),
  rule(`no ${NOMINAL}`, noNominalAlone, { alone: true, unheard: true, examples: [] }),
];

/** What is metered between the panel and the unit, where no place of ours has the name: the volts, and the side they were on. */
export const SUPPLY_POINT_RULES: readonly Rule[] = [
  rule(
    `${GOT} <amount> [(coming|going)] (in|into|on|at) [the] (top|line|line side) [(of|on) ${THE} ${FEED}] [<pause>] [(and|but)] (<amount:out>|<none:out>) [(coming|going)] (out|off|on|at|out of) [the] (bottom|load|load side) [(of it|(of|on) ${THE} ${FEED})]`,
    topAndBottom,
    {
      unheard: true,
      examples: ['two thirty in the top of the contactor one eighteen out the bottom'],
    },
  ),
  rule(
    `${GOT} <amount> (in|into|on|at|out|off|out of|across) [the] (top|bottom) (of|on) ${THE} ${FEED}`,
    atFeed,
    { unheard: true, examples: ['two thirty on the top of the contactor'] },
  ),
  rule(
    `[${THE} transformer] [the] (primary|line side|high side) [side] [${HAS}] <amount:in> [<pause>] [(and|but)] [the] (secondary|load side|low side) [side] [${HAS}] (<amount:out>|<none:out>)`,
    primaryAndSecondary,
    {
      unheard: true,
      examples: ['transformer primary two oh eight secondary nothing'],
    },
  ),
  rule(
    `[${THE} transformer] [${HAS}] <amount:in> (on|at|to|into) [the] primary [side] [<pause>] [(and|but)] [${HAS}] (<amount:out>|<none:out>) (on|at|off|out of|from) [the] secondary [side]`,
    bothSides,
    {
      unheard: true,
      examples: ['transformer has two thirty on the primary and twenty six on the secondary'],
    },
  ),
  rule(`${GOT} <amount> ${AT} ${THE} ${OF_SIDE} ${WHICH} ${FEED}`, atFeed, {
    unheard: true,
    examples: ['two oh eight across that fuse', 'one twenty at the breaker'],
  }),
  rule(`${GOT} (${NO_VOLTS}|zip|zilch) ${AT} ${THE} ${OF_SIDE} ${WHICH} ${FEED}`, noneAtFeed, {
    unheard: true,
    examples: ['nothing across the fuse'],
  }),
  rule(
    `[(at|on|across)] ${THE} ${OF_SIDE} ${WHICH} ${FEED} [${SIDES}] [(voltage|volts)] [<pause>] [${HAS}] ${ONLY} <amount> [across it]`,
    feedHas,
    { unheard: true, examples: ['transformer is putting out twenty six'] },
  ),
  rule(
    `[(at|on|across)] ${THE} ${SIDES} [(of|on) (the|that|this|my)] ${WHICH} ${FEED} [<pause>] [${HAS}] ${NONE}`,
    noneAtFeed,
    { unheard: true, examples: ['load side of the disconnect zip'] },
  ),
  rule(
    `${GOT} <amount:in> [(coming|going)] in [<pause>] [(and|but)] (<amount:out>|<none:out>) [(coming|going)] [back] out (on|of|at|through|across|for) <the> <part>`,
    inAndOutOf,
    { unheard: true, examples: ['one eighteen in one eighteen out on the low pressure control'] },
  ),
  rule(
    `${GOT} <amount> ([all the way|clear|clean|good] (to|up to|through to)|as far as|until) <the> <place>`,
    upTo,
    { unheard: true, examples: ['one twenty all the way to the overload'] },
  ),
  ...(['high', 'low'] as const).map((side) =>
    rule(
      `${GOT} <amount> ([all the way|clear|clean|good] (to|up to|through to)|as far as) [the] ${side} (pressure|side)`,
      (tags, frame) => upTo({ ...tags, place: `${side}PressureSwitch` }, frame),
      { unheard: true, examples: [] },
    ),
  ),
  rule(
    `[the] (voltage|volts|line voltage|supply voltage) ${AT} ${THE} ${OF_SIDE} ${WHICH} (${FEED}|unit|box|machine|plug|outlet|receptacle|whip|pigtail|service) [<pause>] [${HAS}] ${ONLY} <amount>`,
    atFeed,
    { unheard: true, examples: ['voltage at the unit is two oh four'] },
  ),
  rule(`[(from|on|at)] ${POLES} [<pause>] [${HAS}] ${ONLY} <amount>`, toNeutral, {
    unheard: true,
    examples: ['hot to neutral one twenty two'],
  }),
  rule(`[(from|on|at)] ${LEG_TO} [<pause>] [${HAS}] ${ONLY} <amount>`, toNeutral, {
    unheard: true,
    examples: ['l two to ground one twenty'],
  }),
  rule(`${GOT} <amount> [(from|on|at)] (${POLES}|${LEG_TO})`, toNeutral, {
    unheard: true,
    examples: ['one twenty two hot to neutral'],
  }),
  rule(`[(from|on|at)] (${POLES}|${LEG_TO}) [<pause>] [${HAS}] ${NONE}`, deadToNeutral, {
    unheard: true,
    examples: ['l three to ground is dead'],
  }),
  rule(
    `[(each|every|all three|the|my|three)] (leg|legs|phase|phases|line|lines) to (ground|neutral) [<pause>] [${HAS}] <amount:one> [<pause>] [and] <amount:two> [<pause>] [(and|but)] (<amount:three>|<none:three>) [(on|for) (the|my) (third|last|other) [(one|leg|phase)]]`,
    eachToGround,
    { unheard: true, examples: ['each leg to ground one twenty one twenty one and zip'] },
  ),
  rule(
    `[(i have|i got|we have|there is|got|it is)] (low|high) (voltage|line voltage|supply voltage) [<pause>] [(it is|i have|i got|with|at)] ${ONLY} <amount> [(under load|running|with it running|on start)]`,
    lowSupply,
    { unheard: true, examples: ['low voltage only one oh one under load'] },
  ),
  rule(
    `[the] [(power|voltage|volts)] [going] in (at|to|on|into) <the> <place> [(is|reads|reading)] <amount:first> [<pause>] [(and|but)] [(power|voltage|volts)] [(coming|going)] out [(is|reads|reading)] <amount:there>`,
    throughPlace,
    { unheard: true, examples: ['power in at the defrost timer is one sixteen out is zero'] },
  ),
  rule(
    `(across|at|on) <the> <place> [coil] (i have [got]|i got|i read|i am (getting|reading|seeing)|i get|i see|we have [got]|there is|it is|it reads) [(only|about)] <amount>`,
    placeHas,
    { unheard: true, examples: ['on the high pressure switch i have got 120'] },
  ),
  rule(
    `[(and|but)] (it|that|that one) (has|has got|is got|got|is getting|gets) [good] (power|juice|voltage|volts) [(to it|at it|there|on it)] [<pause>] [(at|it is|reading|about|of|i have)] <amount>`,
    itHas,
    { unheard: true, examples: [] },
  ),
  rule(
    '[(and|but|so)] [(i|we|i have|we have)] (got|have|have got|there is|i have got|we have got) [good] (power|juice|voltage) (to|at|on|going to|getting to) (it|that|that one|them) [<pause>] [(at|it is|reading|about|of|i have)] <amount>',
    itHas,
    { unheard: true, apart: true, examples: [] },
  ),
  rule(
    `<the> <place> [coil] (has|has got|is got|got|does have) (power|juice|voltage|volts) [<pause>] [(at|it is|reading|about|of)] <amount>`,
    placeHas,
    { unheard: true, examples: ['contactor coil has got power two twenty nine'] },
  ),
  rule(
    `${GOT} <amount:first> (coming in|going in|in|on the line side|at the line side) [<pause>] [(but|and)] [(i have|i got|i am getting|it is)] [(only|just)] <amount:there> (at|on|across|to) <the> <place>`,
    inAndThere,
    {
      unheard: true,
      examples: ['got two thirty coming in but only one ninety eight at the compressor'],
    },
  ),
  ...['one|1', 'two|2', 'three|3', 'four|4'].map((figure, place) =>
    rule(
      `[(and|but)] [(terminal|number)] (${figure}) (has|has got|is got|is|got|shows|gets) (none|nothing|dead|zip|zero|no (power|voltage))`,
      noneAtTerminal,
      { unheard: true, tags: { terminal: String(place + 1) }, examples: [] },
    ),
  ),
  rule(
    `${GOES} (in|into|in to|to) [the] (high pressure|high side|high head) [(switch|control)] ${NO_OUT}`,
    opensThere('highPressureSwitch'),
    { unheard: true, examples: ['power goes in the high pressure and does not come out'] },
  ),
  rule(
    `${GOES} (in|into|in to|to) [the] (low pressure|low side) [(switch|control)] ${NO_OUT}`,
    opensThere('lowPressureSwitch'),
    { unheard: true, examples: ['power goes in the low pressure and does not come out'] },
  ),
  rule(`${GOES} (in|into|in to|to) <the> <part> ${NO_OUT}`, opensThere(null), {
    unheard: true,
    examples: ['power goes into the thermostat but nothing comes out'],
  }),
];
