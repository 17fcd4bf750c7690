import { heardRule, type Means, type Rule, rule } from '../rule.ts';
import { partId, workId } from '../slots.ts';
import type { Question } from '../utterance.ts';
import { ask, askedBefore, MY, plain } from './asking.ts';

type HistoryQuestion = Extract<Question, { readonly ask: 'history' }>;

const history =
  (of: Omit<HistoryQuestion, 'ask'>): Means =>
  () =>
    ask({ ask: 'history', ...of });

const lastDone: Means = (tags) => {
  const did = workId(tags['work']);
  const part = partId(tags['part']);
  if (did === null) return null;
  return ask({ ask: 'history', did, ...(part === null ? {} : { part }) });
};

/** "What did we find last time" asks for another visit. */
const ofThisVisit: Means = (tags, frame) =>
  /^what did you say(?: (?:right )?(?:now|here))?$|\b(?:last|before|previous\w*)\b/i.test(
    frame.wordsOf(frame.span),
  )
    ? null
    : plain('note')(tags, frame);

/** What has been written down, on this visit and before. */
export const RECORD_QUESTIONS: readonly Rule[] = [
  rule(
    '[so] how much (did|have) (i|we) (get|got|pull|pulled|recover|recovered|take|taken) [(out|back|out of it|out of there)]',
    plain('moved'),
    { examples: ['how much did i get out'] },
  ),
  rule(
    '[(so|and)] (what did (i|we) (get|pull|recover|take) (out|back|out of it|out of there)|(how much|what) (is in|do i have in|have i got in) (the|my|that|this) [recovery] (tank|cylinder)) [now]',
    plain('moved'),
    { unheard: true, examples: ['what did i get out of it', 'how much is in the tank'] },
  ),
  heardRule('compare before and after', plain('beforeAfter'), {
    examples: ['compare before and after'],
  }),
  rule(
    '(what (changed|is different|has changed|is the difference)|before and after|before versus after|before verses after|how does [the] after compare [(to|with) [the] before]|compare [the] after (to|with|and) [the] before|compare [it] (to|with) [the] before|how does (it|that|this) compare (to|with) [the] before|how is it compared (to|with) before|show me before and after|did it (help|get better|improve)|how much better is it|what is the difference (between before and after|from before [(and|to) after])|compare the before and [the] after|(show|give|read|tell) me [the] before and [the] after|how much (did|has) [(my|the)] <quantity> (come down|come up|drop|dropped|go (up|down)|gone (up|down)|change|changed|improve|improved|rise|risen|fall|fallen)|how much (did|have) (i|we) (improve|gain|gained|improved) [it]|is it (better|any better) [than before]|what is the improvement|did that (help|fix it|do anything|make a difference))',
    plain('beforeAfter'),
    { examples: ['what changed'] },
  ),
  rule(
    '(what is my before|what (was|were) [(it|that|my|the)] (before|before readings|before numbers|readings before)|(read|give|tell) me [(my|the)] (before|befores|before readings|before numbers)|what did i have before|~~what (did|would) i have (before (on|for)|on|for) [(my|the)] <quantity> before|~~what (did|would) i have before (on|for) [(my|the)] <quantity>|what was my before|what (was|were) [(my|the)] <quantity> before [(i started|work|that|we started)]|what did ([(my|the)] <quantity>|it|i|we) start (at|out at|with|out with)|what were (my|the) (numbers|readings) before|where did [(my|the)] <quantity> start [(at|out)]|what are my before readings|what was it before|what did [(my|the)] <quantity> (use|used) to be|where (were|was) (we|it) before|what (was|were) [(my|the)] <quantity> when (i|we) (started|got here|arrived|showed up|began|walked in)|what (were|was) (we|it|i) at (before|first|to start)|how was it before)',
    askedBefore,
    { examples: ['what were my before readings'] },
  ),
  rule(
    `[(and|so)] (what|where|how high) (was|were|did (i|we|you) (say|tell you|have|write down)) (${MY} <asked>|${MY} <asked> (was|were)|(it|this|she|we) [was] [(doing|running|like|reading)]) [at] before (i|we|you) <clause>`,
    askedBefore,
    { examples: ['what did i say the head was before i washed it'] },
  ),
  rule(
    'how (many (ounces|pounds|grams|kilos)|much [(gas|refrigerant)]) (went|have gone|has gone|did go|came) (in|out|back in|back out) [(altogether|all together|total|so far|in all|all told)]',
    plain('moved'),
    { unheard: true, examples: ['how many ounces went in altogether'] },
  ),
  rule(
    '[(and|so)] what (did|have) (i|we) [(have|end up)] (put|add|added|weigh|weighed|charge|charged|putting) [back] in [(altogether|all together|total|so far|in all|all told|in total)]',
    plain('moved'),
    { unheard: true, apart: true, examples: ['what did i put in all told'] },
  ),
  rule(
    '[(and|so)] what (was|were) (it|she|that|this|everything|things|they|we|i) [(at|like|doing|running|reading|sitting at)] ((when|before) (i|we) [first] (got here|got in|arrived|came in|walked (in|up)|showed up|hooked up|started|began|pulled up)|on arrival|to (start|begin) with|at the start)',
    askedBefore,
    { unheard: true, examples: ['what was it when i got here'] },
  ),
  heardRule(
    '(read it back|what have i got so far|~read (that|them|those|everything|it all|my readings|the readings|me the readings|me my readings|me back) [back] [to me]|~read [me] back (my|the|all the|all my|those|everything|what) [(readings|numbers|you have|i have|you got|i said)]|~(give|tell|show) me ((all the|all my|the|my) (readings|numbers|values)|everything|all (you have|you got|i have|of it|of them)) [(you have|you got|i have)] [so far]|~go over (my|the) (readings|numbers)|~(tell|show|give|read) me what (you|i) [have] (got|have) [so far]|~what (numbers|readings) (do you have|have you got|have i given you) [so far]|~what (do you|have you|did you) (have|got|get) [so far]|~what do i have [so far]|~(say|read|repeat) [me] (my|the|those|all the|all my) (readings|numbers) [back] [to me]|~(what|which) (readings|numbers) (are there|did i give|have you)|~what are my (readings|numbers)|~read me (everything|what you have|what you got)|~give me my readings|~summary|~sum it up|~list [my] readings)',
    plain('readback'),
    { examples: ['read it back', 'what do you have so far'] },
  ),
  heardRule(
    '(read me the note|~(hear|read|show|see) (the|my) note|~read [me] [back] (the|my) (note|notes|report|ticket|write up)|~read the note back|~read [me] (the|my) (note|report|write up) [back] to me|~what (is|does) the (note|report|write up|ticket) (say|look like|read|look like so far|say so far)|~how is the (note|report|write up) (look|looking|coming)|~(show me|give me|let me hear|let me see|play) the (note|report|write up)|~what is in the note|~how does the note read)',
    plain('note'),
    { examples: ['read me the note'] },
  ),
  rule(
    '((read me what|what does|what will|let me hear what) the customer (gets|get|sees|see)|(read me|what is in) the (customer|customer is) (part|copy|side|note))',
    plain('tellCustomer'),
    { unheard: true, examples: ['read me what the customer gets'] },
  ),
  rule(
    '(which|what|where|what all) [(one|unit|fan|coil|part|parts|side)] did (i|we|you) (say|find|write down|tell you|put down|have down) [<clause>]',
    ofThisVisit,
    { examples: ['which one did i say was iced'] },
  ),
  rule(
    `what (did|would) (i|we|you) (say|have|read|write down|put down) ${MY} <quantity> (was|were|is|for) [(before|at first|to start|earlier)]`,
    askedBefore,
    { examples: ['what did i say the amps were before'] },
  ),
  rule(
    '((read|tell|give|show) me [(what|all)] [(you|i|we|have)] [(got|have|said)] [for] [(the|my|your)] (recommendations|recommends)|what (have|am) (i|we) (recommended|recommending)|what is on (the|my) (to do|recommended) list)',
    plain('note'),
    { examples: ['what am i recommending'] },
  ),
  rule('[(so|ok)] where (was|were) (i|we)', plain('readback'), {
    alone: true,
    examples: ['where was i'],
  }),
  heardRule('[~the] note', plain('note'), { alone: true, examples: ['note'] }),
  rule('(notes|read [it] [the] note|read [it] [the] notes|note please)', plain('note'), {
    alone: true,
    unheard: true,
    examples: ['notes'],
  }),
  heardRule(
    '(what have i left open|~what is [still] [left] open|~what (did|have) (i|we) (leave|left) (open|off|out|on|undone|bypassed|jumped out)|~am i (done|finished|good to go|all set)|~did (i|we) (forget|leave) (anything|something) [(open|off|out|behind)]|~(is|are) (everything|all of it|it all) (put back|closed [up]|back [together]|restored|buttoned up|back on|back to normal)|~[is (there|anything)] anything [still] [left] (open|to restore|to put back|undone)|~can i leave|~[is there] (anything|something) (i|we) [(have|still)] (forgot|forgotten|left|missed|need) [to] [(put back|open|off|out|hook back up|close up|undone|do)]|~(got|have i got|have we got|do i have) anything (else|still) (open|left open|off|undone|jumped out)|~anything else open)',
    plain('leftOpen'),
    { examples: ['what have i left open', 'am i done'] },
  ),
  heardRule(
    '(how much did i move|~how much [(gas|refrigerant|charge|freon)] (did|have) (i|we) (move|moved|put in|add|added|recover|recovered|take out|taken out|pull out|lose|lost|used|use)|~how much [(gas|refrigerant|charge)] (went|has gone|is) (in|out|in and out)|~(what is|give me|read me) (the|my) refrigerant (account|balance|total|count))',
    plain('moved'),
    { examples: ['how much did i move'] },
  ),
  heardRule(
    '(what was done here last time|~what (did|was|happened) (we|i|they|you|done|someone|anybody|on the) [(do|did|done)] [(here|on this|on this unit|to this|to it|to this unit)] (last time|last visit|the last time|before)|~what (did|were) (the|my) [(last|previous)] readings [(say|be)] (last time|last visit)|~(any|the|show me the|show me|give me the|what is the|is there any) [(service|unit)] history [(on this|on this unit|here|on it|for this unit|on this one|for this one|on that)]|~when (was|were) (this|it|we|i) [(last|here)] (serviced|last|here last|here|worked on)|~what (did (we|i|they|you) find|was found|was recommended|did (we|i|they|you) recommend) [(here|on (it|this|this unit))] [(last time|last visit|the last time|before)]|~what was (wrong|it|the problem|head|suction|the charge) last time|~who was here last [time]|~what (did|would) the (last|previous|other) (guy|tech|company|person|one) (do|find|say) [(here|to it|on it|to this|on this)]|~has (this|that) (unit|one|box|cooler|machine|thing) been (worked on|serviced|repaired|charged) before|~did (we|i|you|they|anybody) (clean|replace|do|work on|fix|change) (this|it|anything|<the> <part>) (last time|before|last visit)|~what did i do here last time|~has (this|anyone|anybody|somebody|someone|it) (been worked on|happened|been here|been serviced|worked on (this|it)) before)',
    history({}),
    { examples: ['what was done here last time'] },
  ),
  rule(
    '(what (would|did) (i|we) (leave|forget) [(undone|open|off|out|to (do|close|put back))]|what (have i|have we|is) [(still|got)] left (undone|to put back|to close)|what (have i|have we) [still] [got] left [to do [here]]|what is left to do [here])',
    plain('leftOpen'),
    { unheard: true, examples: ['what would i leave undone'] },
  ),
  rule(
    '(that|it|this) (should be|is|makes|would be|makes it|adds up to|ought to be|comes to) [(the|its|it is|a)] (whole|full|entire|total|complete) [(charge|thing|amount)] [of] [<amount>] [<pause>] [(right|is that right|is it not|correct|does it not)]',
    plain('moved'),
    {
      unheard: true,
      alone: true,
      examples: ['that should be the whole eleven and three quarters right'],
    },
  ),
  rule(
    '(was it|was that) (me|us|you|somebody|someone) [else] [or (me|us|you|somebody|someone) [else]] (that was|who was|that came|out|that worked) [out] (here|on (it|this)|at this) [<clause>]',
    history({}),
    { examples: ['was it me or somebody else that was here in june'] },
  ),
  rule(
    'who (was|worked) (here|out here|on (it|this)) (in|back in|before|on) <clause>',
    history({}),
    {
      examples: ['who was here in june'],
    },
  ),
  rule(
    '[(last time|last visit|the last time|on the last (visit|trip|call)|last trip|when (i|we) (was|were) here last)] [(i|we) (was|were) (here|out here|out)] [<pause>] how (much|many (ounces|pounds)) [of] [(gas|refrigerant|charge|freon)] did (i|we|they|you) (add|put in|put back|recover|take out|pull out|charge|use) [(last time|last visit|on the last (visit|trip|call)|(when|the last time) (i|we) (was|were) here [last])]',
    (tags, frame) =>
      /\blast\b/i.test(frame.wordsOf(frame.span)) ? history({})(tags, frame) : null,
    { unheard: true, examples: ['last time i was here how much gas did i add'] },
  ),
  rule(
    '(let me (hear|see)|show me|read me|tell me|play [me] back|read back) what (you|i|we) [have] (wrote|written|put|jotted|recorded) [down] [so far]',
    plain('note'),
    { unheard: true, examples: ['let me hear what you wrote down'] },
  ),
  rule('last (visit|time)', history({}), { alone: true, examples: ['last visit'] }),
  rule(
    '(does|did|will) (the|my) (note|report|ticket|write up) (say|have|show|mention|include) <clause>',
    plain('note'),
    {
      examples: ['does the note say i changed the dryer'],
    },
  ),
  rule(
    '((has|did) (this|it|that|the same thing|the problem) (come back|happen again|happened again|happened before|happen before|happen last time)|is (this|it|that) [the] same (problem|thing|fault) [(as|we had)] [(last time|last visit|before)]|(have|did) (we|i|you) (see|seen|find|found|had|have) (this|it|that) (before|last time|last visit))',
    history({ about: 'again' }),
    { examples: ['has this come back'] },
  ),
  rule(
    '(has|have|did) (anybody|anyone|somebody|someone|we) [(ever|already)] (<done>|<todo>) <the> (it|<part>) [(before|lately|recently|in here|on this)]',
    lastDone,
    { examples: ['has anybody replaced this compressor'] },
  ),
  rule(
    'when did (we|i|they|you|somebody) (put|get|install) [in] <the> [new] <part> [(in|on)]',
    lastDone,
    {
      tags: { work: 'replace' },
      examples: ['when did we put that dryer in'],
    },
  ),
  rule(
    'when (we|i|they|you|somebody|anybody|anyone|someone) last <done> <the> (it|<part>)',
    lastDone,
    { alone: true, unheard: true, examples: ['when we last replaced the dryer'] },
  ),
  rule(
    '(when (was|were) (it|this|<the> <part>) last <done>|when did (we|i|they|you|somebody|anybody|anyone|someone) last <todo> <the> (it|<part>)|when (was|is) the last time (it|this|<the> <part>|we|i|they|you|somebody|anybody|anyone|someone) [was] <done> [<the> (it|<part>)])',
    lastDone,
    { examples: ['when was it last cleaned', 'when was the condenser last cleaned'] },
  ),
];
