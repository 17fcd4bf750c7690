import { adviceIn } from '../recommendations/as-said.ts';
import { stateOf } from '../findings/state-of.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { nothing, remark } from '../plain-means.ts';

const asSaid: Means = (_tags, frame) => {
  const made = adviceIn(frame.wordsOf(frame.span));
  return made === null ? {} : { recommendations: [made] };
};

/** "Cap tube's restricted, I think" is found as surely as with "I think" before it; what only might be is a guess. */
const unlessThought: Means = (tags, frame) =>
  THOUGHT.test(frame.wordsOf(frame.span)) ? stateOf('state')(tags, frame) : {};
const THOUGHT = /^(?!.*\b(?:might|could|may|must) be\b).*\bi(?:'d say| would say| think)$/i;

/** "Three fans": how many there are, of what there can be several; "one condenser fan" is one of them. */
const countsParts: Means = (tags, frame) =>
  tags['number'] !== 1 && /s\b/i.test(frame.wordsOf(frame.span)) ? {} : null;

/** A coil that is frosted in part is starved, and not iced up; how it stood while something was read was not found so. */
const inWords = remark;

const ME = '(me|us)';
const THINK =
  '(i (bet|think|guess|suspect|would guess|would bet|imagine|figure|suppose)|probably|maybe|most likely|more than likely|or something|if i had to guess|i am (pretty sure|thinking|guessing|betting)|if you ask me|i would say)';
const SUPPOSED =
  '(should|ought to|needs to|has to|must|is supposed to|are supposed to|supposed to|would normally|is meant to|could)';

/** Said beside what is told: guesses, wishes, errands, plans and what ought to be. None of it was read, found or done. */
export const ASIDE_RULES: readonly Rule[] = [
  rule(
    '[(even|but|and|only)] with [(the|both|all|all the|both the)] (door|doors|lid|lids) [(all|both)] (closed|shut)',
    inWords,
    { unheard: true, examples: ['with the doors closed'] },
  ),
  rule(
    `<the> <part> (is|are|has|might be|could be|may be|must be|looks) [got] <very> <state> ${THINK}`,
    unlessThought,
    {
      examples: ['cap tube is plugged i bet'],
    },
  ),
  rule(
    '[(and|so|but)] [(about|only|maybe|like|the)] (a third|a quarter|half|two thirds|three quarters|one third|a few (rows|passes)|[(first|last|top|bottom|left|right|front|back|inlet|outlet)] (half|third|quarter|row|rows|part|side|end|couple of rows)) of <the> (coil|evaporator|evap) (has [got]|is|was|got) [(the|some|any|all)] (frost|frosted|ice|iced|bare|clear|warm|dry|cold) [(on it|over|up)] [[<pause>] (and|but) the (rest|other half|other side|top|bottom) [of it] is [(just|all|totally)] (bare|clear|dry|clean|warm|frosted|iced [(up|over)]|cold)]',
    inWords,
    { examples: ['about a third of the coil has frost on it and the rest of it is bare'] },
  ),
  rule(`<pause> [(and|but|so)] [(it|that|this|they)] ${SUPPOSED} be [at] <amount>`, nothing),
  rule('(i|we) would have (thought|expected|guessed|figured|bet|liked) <clause>', nothing, {
    examples: ['i would have thought suction would be more like twenty'],
  }),
  rule(`(grab|hand|pass|bring|toss|fetch|find|lend|throw) ${ME} <clause>`, nothing, {
    examples: ['grab me a nut driver and two wire nuts'],
  }),
  rule(
    '(supposedly|apparently|allegedly|i guess|i reckon|i heard|word is|they tell me|from what i hear|rumor is) (they|he|she|somebody|someone|the (last|other) (guy|tech|company)|it) <clause>',
    nothing,
    { examples: ['supposedly they replaced the compressor in march'] },
  ),
  rule(
    '[(you|i|we)] [(just|need to|have to|got to|can|could|should|will)] (pull|take|bring|get|run|let|drop|drive|suck) (it|her|this|the system|that|the vacuum) [(down|up|back)] to <amount>',
    nothing,
    { examples: ['pull it to five hundred and hold'] },
  ),
  rule(
    '<number> [(of (the|them|those|my))] [(good|bad|new|old|separate)] <part> [(in|on) (here|there|it|this|the (box|unit|roof|condenser|walk in))]',
    countsParts,
    {
      examples: ['it has three evaporator fans'],
    },
  ),
  rule(
    '(only|just|all) <number> [(of them|of those)] (is|are|was|were) [(still|even)] <state>',
    nothing,
    {
      examples: ['only two are turning'],
    },
  ),
  rule(
    '[(and|so|then)] [(it|that|she|the (defrost|heaters|stat|termination)|defrost)] terminated [(itself|on its own|on (temp|temperature|the (stat|klixon|temp|termination)))] [(at|on)] <amount> [(in|after) <duration:after>]',
    inWords,
    { unheard: true, examples: ['it terminated on temperature at fifty two degrees'] },
  ),
  rule(
    '[(and|with|with a)] [(the|a)] (differential|diff) [(is|of|at|set at)] <number> [(degrees|degree)]',
    inWords,
    { unheard: true, examples: ['differential four'] },
  ),
  rule(
    '[(the|my)] [defrost] (termination|fan delay|drip time|fail safe|failsafe|differential|defrost interval) [(temp|temperature|time|setting)] [(is|is set|set|was|was set)] [(at|to|for)] <amount> [(minutes|hours)]',
    inWords,
    { unheard: true, apart: true, examples: ['fan delay at twenty five'] },
  ),
  rule(
    '(code|error|error code|fault|fault code|alarm|flash code|blinking|flashing) [(is|of)] [(e|f|a|h|l|p)] <number>',
    inWords,
    {
      examples: ['error code e two'],
    },
  ),
  rule(
    '[(it is|that is|this is)] [a] (single|three|one) phase [(unit|power|compressor|motor)]',
    nothing,
    {
      examples: ['it is three phase'],
    },
  ),
  rule('[(the|a)] code <pause> [(e|f|a|h|l|p)] <number>', nothing),
  rule(
    '[(it is|at|and|frequency is|line frequency is|the frequency is)] <number> (hertz|hz|cycle power|cycle)',
    nothing,
    { examples: ['sixty hertz'] },
  ),
  rule(
    '(a|an|the) (half|quarter|third|fifth|three quarter|three quarters) (horse|horsepower|hp|inch|ton) [(motor|pump|pipe|line|fitting|flare|nut|unit|compressor)]',
    nothing,
    { examples: ['a three quarter horse motor'] },
  ),
  rule(
    '[i] (started|stopped|shut|turned|finished|began|fired|kicked) <the> (pump|vacuum pump|vacuum|timer|defrost|recovery|machine|unit|test|it|her) [(up|down|off|on)] (at|around) <number> [(this morning|today|am|pm)]',
    nothing,
    { examples: ['started the pump at ten fifteen'] },
  ),
  rule(
    '[((away|off|out|back|down) from|off|out from) the (wall|floor|ceiling|counter|fryer|grill)] [(about|like|maybe|another)] <number> (inches|inch|feet|foot) (away|back|over|apart|of clearance|clearance|off the wall|from the wall|from the ceiling)',
    nothing,
    { examples: ['six inches from the wall'] },
  ),
  rule(
    '(away|off|out|back) from the (wall|floor|ceiling|counter|fryer|grill) [(about|like|maybe|another)] <number> (inches|inch|feet|foot)',
    nothing,
    { examples: ['away from the wall about six inches'] },
  ),
  rule(
    '[(it is|he is|they are)] supposed to (hit|get to|reach|go to|get up to) <amount> [(today|tomorrow|tonight|out|here|this (week|afternoon))]',
    nothing,
    {
      examples: ['supposed to hit ninety eight today'],
    },
  ),
  rule('with <the> <part> (running|going|on|spinning|turning)', nothing, {
    examples: ['with both fans going'],
  }),
  rule(
    '(they|you|he|she|somebody|the customer|customer|people|the (cooks|staff|employees)) (ought to|should|need to|needs to|have to|got to|has to) (keep|leave) <the> <part> <state>',
    asSaid,
    { examples: ['they ought to keep the lids closed'] },
  ),
  rule(
    '(got|had|put|have) (a|an|my) (fan|light|bucket|towel|rag|meter|gage) (on|under|behind|over) (it|them|there|that)',
    nothing,
    {
      examples: ['got a fan on it'],
    },
  ),
  rule(
    '[(a|an|about a|about an|like a)] (quarter|half|eighth) [of an] inch [(thick|wide|long|deep|off|apart|gap|short)]',
    nothing,
    { examples: ['a quarter inch thick'] },
  ),
  rule('(from|since|back in|built in|made in|installed in|dated|out of) (oh|o) <number>', nothing, {
    examples: ['it is from oh nine'],
  }),
  rule(
    '[(the|this|that)] [whole] (bottom|top|other|left|right|back|front|first|second|upper|lower|better|whole) half [(of|is)]',
    nothing,
    { examples: ['the bottom half'] },
  ),
  rule(
    'half (the|of|that|this|my|it is|their|his|her|our|an hour|a minute|asleep|dead|a mile|price|again)',
    nothing,
    {
      examples: ['half of'],
    },
  ),
];
