import {
  choice,
  list,
  named,
  type Node,
  optional,
  pause,
  repeat,
  rest,
  scope,
  sequence,
  tag,
  tokenClass,
  unheard,
  word,
  written,
} from '../grammar/nodes.ts';
import { type Holes, parseShape } from '../grammar/shape.ts';
import type { PlaceId } from '../terms/names.ts';
import { KINDS_OF_PEOPLE, PEOPLE } from '../terms/people.ts';
import { type RefrigerantId, REFRIGERANTS } from '../terms/refrigerants.ts';
import { TIMED_WORK_NAMES } from '../terms/timed-work.ts';
import { AMOUNT, LINKS, LOOSE, WEIGHT } from './numbers/amounts.ts';
import { DROPPED, DROPPED_SURELY } from './numbers/dropped-points.ts';
import { DUE, EVERY } from './recommendations/due.ts';
import { DURATION } from './numbers/durations.ts';
import { FRACTION } from './numbers/fractions.ts';
import { namedOptions, namesNode } from './names/names-node.ts';
import { JOINED_VOLTAGES, NOMINAL_VOLTAGE, VOLTAGE_PAIR } from './numbers/nominal-voltages.ts';
import {
  COUNT,
  MINUTES,
  NTH,
  NUMBER,
  RATING,
  SHORT_NUMBER,
  SIGNED_NUMBER,
  TENTHS,
} from './numbers/numbers.ts';
import { ORDINAL } from './numbers/ordinals.ts';
import { RESTARTED } from './numbers/restarted-numbers.ts';
import { UNIT } from './numbers/units.ts';
import { CAUSE_NAMES } from './vocabulary/cause-names.ts';
import {
  DOORED_NAMES,
  EQUIPMENT_NAMES,
  METERING_NAMES,
  SIGHT_GLASS_NAMES,
} from './vocabulary/fact-names.ts';
import { PART_NAMES } from './vocabulary/part-names.ts';
import { SELDOM_PARTS } from './vocabulary/seldom-parts.ts';
import { PART_PAIRS } from './vocabulary/part-pairs.ts';
import { PLACE_NAMES } from './vocabulary/place-names.ts';
import { PLATE_ITEM_NAMES } from './vocabulary/plate-names.ts';
import { DERIVED_NAMES, QUANTITY_NAMES } from './vocabulary/quantity-names.ts';
import { REFRIGERANT_NAMES } from './vocabulary/refrigerant-names.ts';
import { JUDGED_NAMES } from './vocabulary/judged-names.ts';
import { DOING_NAMES, STATE_NAMES } from './vocabulary/state-names.ts';
import { RISKY_ACTS } from './vocabulary/risky-acts.ts';
import { TASK_NAMES } from './vocabulary/task-names.ts';
import { WORK_NAMES } from './vocabulary/work-names.ts';

const QUANTITY = namesNode('quantity', QUANTITY_NAMES);
const { testPressure } = QUANTITY_NAMES;
/** The pressure of a test alone: what is read beside it is how warm the gas is. */
const TESTED = namesNode('quantity', { testPressure }, 'tested');
const PART = named(
  'part',
  choice(...[PART_NAMES, PART_PAIRS, SELDOM_PARTS].flatMap((names) => namedOptions('part', names))),
);

const MEASURABLE = [PLACE_NAMES, QUANTITY_NAMES].flatMap((names) => Object.values(names).flat());

const WORK_RULES = { done: 'workDone', todo: 'workToDo', doing: 'workNeeded' } as const;

function workHole(form: 'done' | 'todo' | 'doing'): Node {
  const names = Object.fromEntries(
    Object.entries(WORK_NAMES).map(([id, forms]) => [id, forms[form]]),
  );
  return named(WORK_RULES[form], choice(...namedOptions('work', names)));
}

const figuresOf = (id: RefrigerantId): string => /\d+/.exec(id)?.[0] ?? '';

/** "134a", "R-404A": the designation's own figures and letters, apart as the tokeniser leaves them. */
function writtenRefrigerants(): Node {
  const options = REFRIGERANTS.map((id) => {
    const figures = figuresOf(id);
    const letters = id.slice(2 + figures.length);
    const isShared = REFRIGERANTS.filter((other) => figuresOf(other) === figures).length > 1;
    const letter = isShared ? letters.toLowerCase() : `[${letters.toLowerCase()}]`;
    const shape = letters === '' ? figures : `${figures} ${letter}`;
    return sequence(parseShape(shape), tag({ refrigerant: id }));
  });
  return written(choice(...options));
}

const REFRIGERANT = named(
  'refrigerant',
  sequence(
    optional(unheard(choice(word('r'), written(choice(word('are'), word('our'))), word('freon')))),
    choice(...namedOptions('refrigerant', REFRIGERANT_NAMES), writtenRefrigerants()),
  ),
);

const HEARD_TIMED: ReadonlySet<string> = new Set([
  'vacuum hold',
  'vacuum',
  'pressure test',
  'defrost',
  'pull down',
]);

/** Work that runs by the clock, kept in the words that it was said in. */
function timedNames(): Node {
  const options = TIMED_WORK_NAMES.map(({ words }) => {
    const node = sequence(parseShape(words), tag({ timed: words }));
    return HEARD_TIMED.has(words) ? node : unheard(node);
  });
  return named('timed', choice(...options));
}

const leg = (place: PlaceId, figure: string): Node =>
  sequence(parseShape(`(line|leg|phase|l) (${figure})`), tag({ place }));
/** One leg of a three-phase supply. */
const LEG = choice(leg('lineOne', 'one'), leg('lineTwo', 'two'), leg('lineThree', 'three'));
const IN_AMPS = optional(sequence(parseShape('amps|amp'), tag({ unit: 'A' })));
/** A leg and what was metered on it: with its point, or without one and nothing else to be meant. */
const LEG_SHOWN = sequence(LEG, LINKS, choice(AMOUNT, sequence(DROPPED_SURELY, IN_AMPS)));
const LEG_DROPPED = sequence(LEG, LINKS, DROPPED, IN_AMPS);

const pins = (place: PlaceId, figures: string): Node =>
  sequence(parseShape(figures), tag({ place }));
/** Two terminals of a three-phase motor by their figures alone, and what was metered between them. */
const PINS_SHOWN = sequence(
  choice(
    pins('terminalOneTwo', '(one (to|and) two|two to one)'),
    pins('terminalTwoThree', '(two (to|and) three|three to two)'),
    pins('terminalOneThree', '(one (to|and) three|three to one)'),
  ),
  LINKS,
  choice(AMOUNT, sequence(parseShape('[wide] open'), tag({ overlimit: true }))),
);

/** What may stand between "how long", what is waited for and its number. */
const UNTIL = parseShape(
  'will|is|does|do|until|till|before|to|for|you|we|i|think|figure|reckon|it|take|get|getting|going|gets|hit|hits|reach|reaches|be|at|back|down|up|under|below|cool|cools|pull|pulls|come|comes|make|makes',
);

/** Who else may be speaking. */
const SOMEBODY = `[the|their|~a|~another|~one of the|~one of their|~some] [~(${KINDS_OF_PEOPLE.join('|')})] (customer|${PEOPLE.map((each) => `~${each}`).join('|')}) [~[(up|out|over|back)] (at|behind|in|on|from|up) (the|their) [(front|back|deli|meat)] (counter|register|desk|front|kitchen|back|line|bar|deli|window|store|office|drive thru|bakery)] [~(up front|out front|in back|out back)]`;

function chargeCauses() {
  const { undercharge, overcharge, nonCondensables } = CAUSE_NAMES;
  return { undercharge, overcharge, nonCondensables };
}
/** Why something ought to be done: up to the next pause, its words kept. */
const REASON = named(
  'reason',
  choice(
    parseShape('(because|since|cause|as) <of>', { of: rest('because', 'pause') }),
    parseShape('[<pause>] (it|they|that) <of>', { of: rest('itIs', 'pause'), pause }),
    parseShape('(to|and) <of>', { of: rest('to', 'pause') }),
  ),
);

/** Where on the premises a part is: which of several, and it changes nothing. */
const SPOT = named(
  'spot',
  parseShape(
    '(on|of|in|to|for|at|by|from) (the|this|that) [(left|right|top|bottom|middle|back|front|lower|upper|inside|outside|far|other|first|second|third|center|main)] [hand] (side|one|section|corner|half|door|doors|lid|drawer|end|wall|walk in|cooler|freezer|box|case|unit|reach in|prep table|machine|system|roof|left|right|top|bottom|back|front|inside|outside|middle|shelf|display case|condensing unit|circuit|bank)|(in|up|out|down|over|back) (there|here)',
  ),
);

/** A bit of a part, which is found and mended as that part. */
const BIT = named(
  'bit',
  parseShape(
    '[(bottom|top|left|right|back|front|first|second|last|lower|upper|same|one|flare|old)] (u bends|u bend|return bends|return bend|tubing|tube|bottom|top|corner|inlet|outlet|flare nut|flare nuts|nut|flare|header|end|side|back|front|stem|packing|packing nut|cap|core|gland|connection|fitting|elbow|joint|joints|braze joint|distributor|seam|weld|fins|face|bend|stub|base|body|shaft) (on|of|at|in|off|to|for|into|going (to|into)|coming out of|by) (the|my|this|that)',
  ),
);

/** What tells a part from its like: its size or its rating, which no meter read. */
const SIZE = named(
  'size',
  repeat(
    scope(
      'size',
      choice(
        choice(FRACTION, tokenClass('fraction')),
        parseShape(
          '<number> (inch|amp|amps|volt|volts|v|v a|va|microfarad|watt|ton|horse|horsepower|hp|pole|foot|pound|ounce|gallon|quart|degree|rpm|cubic inch|cubic|mesh|conductor|gage|blade)',
          { number: NUMBER },
        ),
        parseShape('(single|double) pole'),
        // The volts that cans are made for: any number would read on into "one" behind it.
        parseShape(
          '<number> (microfarads|microfarad|~~(mike|mikes|mic|mics)) [by] (three (seventy|thirty|hundred)|four (forty|fifty|hundred)|two (fifty|twenty|forty|hundred)|one (ten|twenty five|sixty five)|370|330|440|450|400|250|220|240|110|125|165)',
          { number: NUMBER },
        ),
      ),
    ),
    1,
    3,
  ),
);

/** What says only how much. */
const VERY = named(
  'very',
  repeat(
    parseShape(
      'really|real|pretty|very|all|completely|totally|kind of|sort of|half|partially|partly|mostly|a little|a little bit|a bit|super|still|so|now|also|just|already|badly|quite|fairly|too|nearly|almost|absolutely|practically|basically|definitely|clearly|starting to get|getting|about half|way|extremely|slightly|somewhat|a hundred percent',
    ),
    0,
    3,
  ),
);

/** What a shape may name between angle brackets. */
export const HOLES: Holes = {
  number: NUMBER,
  signed: SIGNED_NUMBER,
  dropped: DROPPED,
  droppedSurely: DROPPED_SURELY,
  leg: named('leg', LEG),
  legShown: named('legShown', LEG_SHOWN),
  legDropped: named('legDropped', LEG_DROPPED),
  pinsShown: named('pinsShown', PINS_SHOWN),
  rating: RATING,
  none: named(
    'none',
    sequence(
      parseShape(
        'nothing|dead|zip|zilch|~[a] goose egg|~nada|~(sod|bugger|naff) all|no (voltage|volts|power)',
      ),
      tag({ number: 0 }),
    ),
  ),
  tenths: TENTHS,
  restarted: RESTARTED,
  short: SHORT_NUMBER,
  nominal: NOMINAL_VOLTAGE,
  voltages: VOLTAGE_PAIR,
  joinedVoltages: JOINED_VOLTAGES,
  fraction: named('fractionSaid', choice(FRACTION, tokenClass('fraction'))),
  ordinal: ORDINAL,
  count: COUNT,
  nth: NTH,
  minutes: MINUTES,
  amount: AMOUNT,
  weight: WEIGHT,
  duration: DURATION,
  due: DUE,
  every: EVERY,
  why: REASON,
  unit: UNIT,
  link: LINKS,
  loose: LOOSE,
  very: VERY,
  size: SIZE,
  spot: SPOT,
  bit: BIT,
  quantity: QUANTITY,
  tested: TESTED,
  /** A pressure that a control watches. */
  side: namesNode(
    'quantity',
    {
      headPressure: ['head', '~head pressure', '~high side'],
      suctionPressure: ['suction', '~suction pressure', '~low side'],
    },
    'side',
  ),
  derived: namesNode('derived', DERIVED_NAMES),
  asked: named('asked', choice(QUANTITY, namesNode('derived', DERIVED_NAMES))),
  part: PART,
  /** "Needs a valve and a drier": of the many valves the one that is changed with the drier. */
  neededPart: named(
    'neededPart',
    choice(PART, unheard(sequence(word('valve'), tag({ part: 'expansionValve' })))),
  ),
  place: namesNode('place', PLACE_NAMES),
  /** Whatever has values that instruments show, where nothing comes of which it is. */
  measurable: namesNode('of', { measurable: MEASURABLE }, 'measurable'),
  plateItem: namesNode('plateItem', PLATE_ITEM_NAMES),
  /** What somebody comes back to look at. */
  watched: namesNode('watched', {
    charge: ['charge', '(refrigerant|gas)'],
    unit: ['(unit|system)'],
    it: ['(it|this|that)'],
  }),
  state: namesNode('state', STATE_NAMES),
  doing: namesNode('doing', DOING_NAMES),
  riskyAct: namesNode('topic', RISKY_ACTS, 'riskyAct'),
  judged: namesNode('judged', JUDGED_NAMES),
  task: namesNode('task', TASK_NAMES),
  refrigerant: REFRIGERANT,
  knownSite: named('knownSite', list('sites', 'site')),
  knownUnit: named('knownUnit', list('units', 'unit')),
  knownPart: named('knownPart', list('parts', 'knownPart')),
  metering: namesNode('metering', METERING_NAMES),
  sightGlass: namesNode('sightGlass', SIGHT_GLASS_NAMES),
  equipment: namesNode('equipment', EQUIPMENT_NAMES),
  doored: namesNode('equipment', DOORED_NAMES, 'doored'),
  cause: namesNode('cause', CAUSE_NAMES),
  /** What is wrong with what is in it; a part that is wrong is a finding. */
  charge: namesNode('cause', chargeCauses(), 'charge'),
  done: workHole('done'),
  todo: workHole('todo'),
  working: workHole('doing'),
  /** Behind a value that is told before what it is of. */
  isWhat: named(
    'isWhat',
    parseShape('(is|was) [(about|right|just)] (what|where|all|the most|about (what|where)) [that]'),
  ),
  iRead: named(
    'iRead',
    parseShape(
      '((i am|we are) (getting|seeing|reading|showing|at|running)|(i|we) (have [got]|got|get|see|read|measure|measured|show|am)|it is (reading|showing|at|running)|it (reads|shows|says)|(the|my) (gage|gages|meter|thermometer|probe|clamp|scale|gun) (says|reads|shows|is (reading|showing)|gives me)|shows up|comes up)',
    ),
  ),
  byUs: named(
    'byUs',
    parseShape(
      '[(i|we|~just|~i just|~have|~i have|~we have|~went ahead and|~i went ahead and|~i have just|~also|~i also|~and)]',
    ),
  ),
  byMe: named(
    'byMe',
    parseShape('[(i|we|i have|we have|i just|just|i have got|i got|have|and|also)]'),
  ),
  /** What leads up to a value that an instrument shows. */
  got: named(
    'got',
    parseShape(
      '[(i have|i got|i have got|i am getting|i am reading|reading|there is|got|it is|we have|~~we have got|~~we are getting|showing|seeing|i see)] [~(only|just|still|barely)]',
    ),
  ),
  the: named(
    'the',
    parseShape(
      '[(the|~my|~your|~a|~an|~this|~that|~their|~our|~all the|~all my|~one of the|~both|~both the|~both of the|~them|~one|~some of the|~these|~those|~every|~each)]',
    ),
  ),
  who: named('who', parseShape(SOMEBODY)),
  timed: timedNames(),
  until: named('until', repeat(UNTIL, 0, 6)),
  clause: rest('clause', 'pause'),
  rest: rest('clause', 'end'),
  correction: named(
    'correction',
    parseShape(
      'no wait|correction|~no (hang|hold) on|~(no|wait|sorry|make that|make it|i mean|i meant|scratch that|strike that|no make that|no sorry|sorry no|wait no|no i mean|no it is|no that is|rather|actually|or rather|excuse me)',
    ),
  ),
  pause,
  clock: tokenClass('clock'),
};
