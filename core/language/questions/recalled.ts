import { type Means, type Rule, rule } from '../rule.ts';
import { aboutIn, ask, askedBefore, MY, plain } from './asking.ts';

/** What a quantity came to, by the readings so far. */
const valueAsked: Means = (tags) => {
  const about = aboutIn(tags);
  return about === null ? null : ask({ ask: 'value', about });
};

/** "What'd I get on the liquid line": did; "what would I get" looks for what should be there. */
const valueGot: Means = (tags, frame) =>
  /^what'?d\b/i.test(frame.wordsOf(frame.span)) ? valueAsked(tags, frame) : null;

const valueOf =
  (about: 'evaporatingTemp' | 'condensingTemp'): Means =>
  () =>
    ask({ ask: 'value', about });

const SO_FAR = '[(already|yet|so far|today|for this (unit|one|job)|in there)]';

const LAST_VISIT =
  '(([on] (the|my|our)|on|at the) last (visit|trip|call|job|one)|[the] last (time|visit|trip|go round|go around)|last (week|month|year|summer|winter|spring|fall))';
const WE_WERE =
  '[((i|we|somebody|anybody|they|you) (was|were|came)|out|around|here|there) [(out|around|by)] [(here|to (it|this [one])|there|on (it|this [one])|to look at (it|this))]]';
const NUMBERS = '(numbers|readings|pressures|temps|figures)';

/** What was told before, asked for in other words than those of a reading. */
export const RECALLED_QUESTIONS: readonly Rule[] = [
  rule(
    `what would (i|we|you) (get|have|say|put [down]|read) (for|on|in|at|as) ${MY} <asked> [(again|earlier|last|last time|just now)]`,
    valueGot,
    { unheard: true, examples: [] },
  ),
  rule(
    `what (did|would|was|were) ((i|we|you|they|somebody|the last (guy|tech)) (get|have|say|read|write down|put down|find|see|leave|show) [(for|on|in|at|as)] (${MY} <asked>|[(the|my|our|all the)] ${NUMBERS})|(${MY} <asked>|(the|my|our) ${NUMBERS})) [(at|like|running|reading)] ${LAST_VISIT} ${WE_WERE}`,
    () => ask({ ask: 'history' }),
    { unheard: true, examples: ['what did we get for suction last time out here'] },
  ),
  rule(
    `how (is|does|are|do|am) (it|she|he|that|this|things|they|we|i|the (numbers|readings)) [(look|looking|doing|do|compare|running|run|sitting|sit)] [(now|today)] (against|versus|compared (to|with|against)|next to|beside|from|to) ((when|how|where|what) (i|we|it|she) [(was|were|had|first)] [(started|got here|got in|walked in|showed up|came in|began|had|was|were)] [(before|at|at first|to start|when <clause>)]|[(the|my|our)] (before|befores|before (numbers|readings)))`,
    plain('beforeAfter'),
    { unheard: true, examples: ['how does she look now against when i started'] },
  ),
  rule(
    `(did|have) (i|we) [(already|ever)] (write|written|wrote|put|jot|jotted|note|noted|record|recorded|log|logged|enter|entered) [(down|in)] ${MY} <asked> [(down|in)] ${SO_FAR}`,
    valueAsked,
    { unheard: true, examples: ['did i write down the ambient'] },
  ),
  rule(
    `do (you|we|i) [(still|already)] have ${MY} <asked> [(down|in there|written down|recorded|noted)] ${SO_FAR}`,
    valueAsked,
    { alone: true, unheard: true, examples: ['do you have the ambient'] },
  ),
  rule(
    `what would (i|we|you) (have|say|get|read|put|write) [down] (for|on) ${MY} <asked> (before|earlier|first|at first|the first time|to start|last|when (i|we) (got here|started|came in))`,
    askedBefore,
    { unheard: true, examples: ['what would i have for amps earlier'] },
  ),
  rule(
    `what did (i|we|you) (have|say|get|read|put|write) [down] (for|on|as) ${MY} <asked> (before|at first|the first time|to start [with]|when (i|we) (got here|started|came in))`,
    askedBefore,
    { unheard: true, examples: ['what did i have for head before'] },
  ),
  rule(
    `what (did i (have|get|read)|would i (have|get|read)|did we have|was it|were they|was i at|was everything) before (i|we) (cleaned|washed|brushed|touched|did|changed|replaced|adjusted|charged|started|fixed) [<clause>]`,
    askedBefore,
    { unheard: true, examples: ['what did i have before i cleaned it'] },
  ),
  rule(
    `(how (cold|low|warm|hot) (is|am i (at|on|with)) ${MY} (coil|evaporator|evap)|what (is|are) ${MY} (coil|evaporator|evap) [coil] (at|running [at]|doing|down to|boiling at|sitting at|temp|temperature|getting to)) [(at|now|right now|running|getting)]`,
    valueOf('evaporatingTemp'),
    { unheard: true, examples: ['how cold is my coil', 'what is the coil running at'] },
  ),
  rule(
    `((what (temp|temperature)|how (cold|low)) (should|ought|does|would|will|do i want) ${MY} (coil|evaporator|evap) [(to|need to|have to)] (be|run|get|sit)|what (should|does|would) ${MY} (coil|evaporator|evap) (run|be running|be sitting|sit)|(what (temp|temperature)|how (cold|low)) is ${MY} (coil|evaporator|evap) supposed to (be|run|get)) [(at|running|running at|sitting at|down to)] [(now|right now)]`,
    () => ask({ ask: 'target', about: 'evaporatingTemp' }),
    { unheard: true, examples: ['what temp should the coil be'] },
  ),
  rule(
    `(how (hot|warm|high) (is|am i (at|on|with)) ${MY} condenser|what is ${MY} condenser [coil] (at|running [at]|doing|sitting at|temp|temperature)) [(at|now|right now|running)]`,
    valueOf('condensingTemp'),
    { unheard: true, examples: ['how hot is the condenser running'] },
  ),
  rule(
    `(what is|what was|how much is|give me) [(the|my|our)] (total|amount|grand total) [(of (gas|refrigerant|freon|charge))] [i] (recovered|reclaimed|taken out|pulled out|out) ${SO_FAR}`,
    () => ask({ ask: 'value', about: 'refrigerantRecovered' }),
    { unheard: true, alone: true, examples: ['what is the total recovered'] },
  ),
  rule(
    `(what is|what was|how much is|give me) [(the|my|our)] (total|amount|grand total) [(of (gas|refrigerant|freon|charge))] [i] (added|put in|weighed in|charged|in) ${SO_FAR}`,
    () => ask({ ask: 'value', about: 'refrigerantAdded' }),
    { unheard: true, alone: true, examples: ['what is the total added'] },
  ),
  rule(
    `how many (ounces|pounds|grams|kilos|pounds and ounces) [of (<refrigerant>|gas|refrigerant|freon|it)] (did|have) (i|we) (add|added|put|recover|recovered|pull|pulled|take|taken|get|got|gotten|weigh|weighed|use|used|charge|charged|lose|lost|move|moved) [(in|out|back|in it|out of it|back out|back in)] ${SO_FAR}`,
    plain('moved'),
    { unheard: true, examples: ['how many ounces have i put in'] },
  ),
  rule(
    `[(you can|go ahead and|can you|let us|ok|so)] (start|begin|draft|write|do|make|put together|pull up|work on|get going on) ${MY} (note|notes|report|write up|paperwork) [(for (me|this|this one|this unit|the office))]`,
    plain('note'),
    { alone: true, unheard: true, examples: ['start the notes'] },
  ),
];
