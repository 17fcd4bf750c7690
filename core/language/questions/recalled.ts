import { type Means, type Rule, rule } from '../rule.ts';
import { aboutIn, ask, MY, plain } from './asking.ts';

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

/** What was told before, asked for in other words than those of a reading. */
export const RECALLED_QUESTIONS: readonly Rule[] = [
  rule(
    'what (was|were) (it|that|she|the numbers|the readings|everything) [(at|like|doing|reading)] (when (i|we) (got here|got in|walked in|came in|showed up|started|pulled up|turned up|first got here)|before (i|we) (started|touched (it|anything)|did anything))',
    plain('before'),
    { unheard: true, examples: ['what was it when i got here'] },
  ),
  rule(
    `what would (i|we|you) (get|have|say|put [down]|read) (for|on|in|at|as) ${MY} <asked> [(again|earlier|last|last time|just now)]`,
    valueGot,
    { unheard: true, examples: [] },
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
    plain('before'),
    { unheard: true, examples: ['what would i have for amps earlier'] },
  ),
  rule(
    `(how (cold|low|warm|hot) (is|am i (at|on|with)) ${MY} (coil|evaporator|evap)|what (is|are) ${MY} (coil|evaporator|evap) [coil] (at|running [at]|doing|down to|boiling at|sitting at|temp|temperature|getting to)) [(at|now|right now|running|getting)]`,
    valueOf('evaporatingTemp'),
    { unheard: true, examples: ['how cold is my coil', 'what is the coil running at'] },
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
