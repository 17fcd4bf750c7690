import { amountIn, unitFor } from '../numbers/measure.ts';
import { heardRule, type Means, type Rule, rule } from '../rule.ts';
import { ask, TELL } from './asking.ts';

const limit =
  (topic: 'testPressure' | 'cylinderFill' | 'charge'): Means =>
  () =>
    ask({ ask: 'limit', about: topic });

/** After recovering the question is of the cylinder, else of the charge. */
const limitOfWhatMoves: Means = (tags, frame) => {
  const { lastQuantity } = frame.context;
  const isRecovering = lastQuantity === 'refrigerantRecovered' || lastQuantity === 'cylinderWeight';
  return limit(isRecovering ? 'cylinderFill' : 'charge')(tags, frame);
};

/** A weight is the charge's limit, a pressure the test's. */
const limitByUnit: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  if (unit === null) return null;
  if (unitFor(unit, 'mass', frame.context.units) !== null && unit !== 'pounds')
    return limit('charge')(tags, frame);
  return unit === 'psi' || unit === 'bar' ? limit('testPressure')(tags, frame) : null;
};

/** "Is it safe to put three hundred on the low side": asked, and not put on; ounces are gas. */
const testedWith: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  const isGas = unit === 'pounds' && value !== null && value <= MOST_POUNDS;
  if (isGas || unit === 'oz' || unit === 'g' || unit === 'kg') return limit('charge')(tags, frame);
  const isPressure = unit === null || unit === 'psi' || unit === 'pounds' || unit === 'bar';
  return isPressure ? limit('testPressure')(tags, frame) : null;
};
/** Ours: more pounds than a unit on site takes at once are a pressure. */
const MOST_POUNDS = 20;

/** How much may be put in. */
export const LIMIT_QUESTIONS: readonly Rule[] = [
  rule(
    '(what is|what does|what did|does|how much does) the (plate|nameplate|tag|sticker|data plate|name plate|label) (say|call for|list|have|want) (for|on) [(a|the|it is)] [(factory|full|total)] charge [again]',
    limit('charge'),
    { examples: ['what does the plate say for charge'] },
  ),
  rule(
    '(how much|how high|what) (nitrogen|pressure|test pressure) (can|should|may|do) i (use|put in|test [it] (to|at|with)|go|put on it|test with)',
    limit('testPressure'),
    { examples: ['how much nitrogen can i use'] },
  ),
  rule(
    'how high can i (pressure test|test|go|pressurize|take the nitrogen|pressure up) [(it|this|to)]',
    limit('testPressure'),
    { examples: ['how high can i pressure test'] },
  ),
  rule(
    '(what|how high) (can|should|do|may) i pressure test (it|this|them|this system) [(to|at)]',
    limit('testPressure'),
    {
      examples: ['what can i pressure test it to'],
    },
  ),
  rule(
    '(what is|what are) the (limit|max|maximum|most) (on|for|of) [the] (nitrogen|pressure test|test pressure|low side test|nitrogen test)',
    limit('testPressure'),
    { examples: ['what is the limit on the nitrogen'] },
  ),
  rule(
    '(what is|how much is) the (limit|max|maximum|most|capacity) (on|for|of|in) [(the|this|my|a)] [recovery] (cylinder|tank|bottle|drum|jug)',
    limit('cylinderFill'),
    { examples: ['what is the limit on the recovery cylinder'] },
  ),
  rule(
    'how much (more|room) (can (go|fit|i put)|is left|is there|do i have|have i got) in [(the|this|my)] [recovery] (cylinder|tank|bottle|drum|jug)',
    limit('cylinderFill'),
    { examples: ['how much room is left in the tank'] },
  ),
  rule(
    '(what|how much) (is it|does it|does this|will it|is this one) (want|take|call for|hold|get|wanting) for [(a|the|it is)] [(factory|full|total)] charge',
    limit('charge'),
    { examples: ['what is it want for a charge'] },
  ),
  rule(
    'how much more (does|will|would|do|did) (it|this|i|we|she) [still] (need|take|want|get|hold)',
    limitOfWhatMoves,
    { examples: ['how much more does it need'] },
  ),
  rule(
    'how much more (can|should|do|may) i (add|put in|charge|need [to add]|put back [in])',
    limitOfWhatMoves,
    {
      examples: ['how much more can i add'],
    },
  ),
  rule(
    '(what is|how much is) the (max|maximum|most|limit) [on [the]] (charge|i can (add|charge|put in)) [(on|for|of) [a] <refrigerant>]',
    limit('charge'),
    {
      examples: ['what is the maximum charge'],
    },
  ),
  rule(
    `[${TELL}] (what (is|was)|what should|what (did|do|have) (i|we|you) (say|have|put|tell you)|what (i|we|you) [have] (said|had|have|put|told you)) (the|my|our) [(plate|nameplate|factory|total|full)] charge [(was|is|were|be|supposed to be)] [(on (it|this|the plate)|here|again)]`,
    limit('charge'),
    { examples: ['what did we say the charge was'] },
  ),
  rule(
    '(what|how much) (pressure|psi) should [the] (nitrogen|test|pressure test|nitrogen test) be [at]',
    limit('testPressure'),
    {
      examples: ['what pressure should the nitrogen be at'],
    },
  ),
  rule(
    'what is the (most|max|maximum|highest|limit) [(pressure|nitrogen)] [that] i can (pressurize|test|pressure test|take|go|put|use|pump) [(this|it|the system|nitrogen)] [(to|on|in|up to|with)] [(it|this|nitrogen)]',
    limit('testPressure'),
    { examples: ['what is the most i can pressurize this to'] },
  ),
  rule(
    'how much [(more|test)] (pressure|nitrogen) (can|should|may|could) (i|we|you) (put|use|run|have|go with|get away with) [up] (on|in|into|to) (it|this|that|the (low side|high side|coil|evaporator|condenser|system|line set|unit|box))',
    limit('testPressure'),
    { examples: ['how much pressure can i put on the low side'] },
  ),
  rule(
    'how (high|far|much) (can|may|should|do) i (pressurize|test|pressure test|take|pump) [up] (it|this|the system|the (low|high) side|the nitrogen) [(to|up|up to|with nitrogen)]',
    limit('testPressure'),
    { examples: ['how far can i pressurize the system'] },
  ),
  rule(
    '[(what is the|the)] (max|maximum|highest) [nitrogen] test pressure',
    limit('testPressure'),
    {
      examples: ['what is the maximum test pressure'],
    },
  ),
  rule(
    '(what|how high) (can|may|should|do) i (test|pressure test|pressurize|take) (it|this|the system|the (low|high) side|the (coil|evaporator|condenser)) (to|at)',
    limit('testPressure'),
    { examples: ['what can i test it to'] },
  ),
  rule(
    '(how full can i (fill|get) (it|this|that) [up]|how much (more|room) (can i (put|get|fit)|is [there] left|do i have) [left] [in [(the|this|my)] [recovery] (cylinder|tank|bottle|drum|jug)]|how much [more] can i (get|fit|recover) (in|into) (this|the|my|that|your) [recovery] (cylinder|tank|bottle|drum|jug))',
    limit('cylinderFill'),
    { examples: ['how full can i fill it'] },
  ),
  rule(
    '(is|would|are) <amount> [be] [(all|still)] (the (max|maximum|limit|most|cap|full charge)|too much|over (charged|the limit|the max)|allowed|legal) [(i can (put|have|use) [in]|in here|on (this|here|it)|for (this|it))]',
    limitByUnit,
    { examples: ['is thirty two ounces the max on this'] },
  ),
  rule(
    'how many (ounces|pounds|grams) (do|should|can|must|would) (i|we|you) (add|put in|weigh in|need|charge)',
    limit('charge'),
    { examples: ['how many ounces should i add'] },
  ),
  rule(
    'how much (do i|should i|do we) (weigh in|charge [it] [with]|put back [in])|how much is left to (weigh in|put in|charge)',
    limit('charge'),
    { examples: ['how much do i weigh in'] },
  ),
  rule(
    '[(the|this|my)] [recovery] (cylinder|tank|bottle|drum|jug) <pause> how (much|many pounds|full|much more) (can|may|should) i (put in|fill|get in|get|fit in|go) [it]',
    limit('cylinderFill'),
    { examples: [] },
  ),
  rule(
    'how (much|full) (can i|may i|will|can|should i|does) [(put in|fill|get in|recover into)] [(the|this|a|my|that|your)] [recovery] (cylinder|tank|bottle|drum|jug) [(be|hold|take|go)] [(filled|to)]',
    limit('cylinderFill'),
    { examples: ['how much can i put in the cylinder', 'how full can the tank be'] },
  ),
  rule(
    'how much (charge|refrigerant|gas|freon|<refrigerant>) ((can|may) (it|this|the unit|this unit|i) (have|hold|take|use)|(is|am i) allowed [(in here|in this|here)]|does (it|this|the unit|this (unit|thing|one|box)) (take|hold|need|get)|(can|should|do|would|must) (i|we|you) (add|put in|put back [in]|charge|weigh in|need|use)|should (it|this) (take|have|hold|get)|is (it|this) supposed to have)',
    limit('charge'),
    { examples: ['how much charge does it take'] },
  ),
  rule(
    '(what|how much) (is (it|she|this [(one|unit|thing|box)]) supposed to|does (it|she|this [(one|unit|thing|box)])|should (it|she|this [(one|unit|thing|box)])|will (it|she)) (hold|have [in it]|take)',
    limit('charge'),
    { alone: true, unheard: true, examples: ['what is she supposed to hold'] },
  ),
  rule(
    'how much [(pressure|nitrogen)] (can|should|may|could) (i|we) put [up] (on|in|into|to) (it|this|that|the (low side|high side|coil|evaporator|condenser|system|line set|unit|box)) (for|to) [(a|the)] [(leak|pressure|nitrogen|standing)] test',
    limit('testPressure'),
    { unheard: true, examples: ['how much can i put on the low side for a test'] },
  ),
  rule(
    '(what|how high|how far|where) (can|could|may|should|do|would) (i|we|you) [safely] (take|run|bring|push|go|put|pump|set|raise|send) [the] [(dry|test)] (nitrogen|nitro|n two|pressure test|test pressure|nitrogen pressure) [up] (to|at) [(on|with|in|for) (this|it|here|that|her|this (one|unit|box|thing|system)|the (low side|high side|coil|system))]',
    limit('testPressure'),
    { unheard: true, examples: ['what can i take the nitrogen to on this'] },
  ),
  rule(
    'how much does (the|that|this) (plate|nameplate|tag|sticker|data plate|label) (call for|say|want|list|show|have)',
    limit('charge'),
    { unheard: true, examples: ['how much does the tag call for'] },
  ),
  rule(
    '(is it|would it be|is that) (safe|ok|all right|alright|too much|dangerous|fine) (to|if (i|we)) (put|run|use|throw|have) <amount> [of [dry] (nitrogen|pressure|nitro)] (on|in|into) (it|this|that|the (low side|high side|coil|evaporator|condenser|system|line set|unit|box))',
    testedWith,
    { unheard: true, examples: ['is it safe to put three hundred on the low side'] },
  ),
  rule(
    '(can|could|should|may) (i|we) [(safely|just|ever)] (put|run|use|throw) <amount> [of [dry] (nitrogen|pressure|nitro)] (on|in|into) (it|this|that|the (low side|high side|coil|evaporator|condenser|system|line set|unit|box))',
    testedWith,
    { unheard: true, examples: ['can i put three hundred on the low side'] },
  ),
  rule(
    '((can|could|should|may) (i|we) [(safely|just|ever)]|is it (safe|ok|all right|alright|fine) (to|if (i|we))) ((test|pressure test|pressurize|take|bring|run) (it|this|that|the (low side|high side|coil|evaporator|condenser|system|line set|unit|box|nitrogen)) [up] (to|at|with)|go [up] to) <amount> [(of|with) [dry] (nitrogen|pressure|nitro)] [on (it|this|that|the (low side|high side|coil|evaporator|condenser|system|line set|unit|box))]',
    testedWith,
    { unheard: true, examples: ['can i test the low side to three hundred'] },
  ),
  rule('how much (charge|refrigerant|gas|freon)', limit('charge'), {
    alone: true,
    unheard: true,
    examples: ['how much charge'],
  }),
  heardRule(
    'how much can i (put in|~(add|charge|put in it|put back|put back in) [(it with|to it|in)])',
    limitOfWhatMoves,
    { examples: ['how much can i put in', 'how much can i add'] },
  ),
];
