import { type Means, type Rule, rule } from '../rule.ts';
import { wordBefore } from '../words/clause-start.ts';
import { TENS } from '../numbers/number-words.ts';
import { nothing, nothingAtClauseStart, remark } from '../plain-means.ts';

/** "I always add eight ounces" tells what we do. */
const ofNobody = nothingAtClauseStart;

/** What went out was read by no meter of today. */
const oldOne = remark;

/** "The one behind it"; "eighty one behind this bar" is a number. */
const ofOtherOne: Means = (tags, frame) =>
  TENS_BEFORE.has(wordBefore(frame).toLowerCase()) ? null : nothing(tags, frame);
const TENS_BEFORE: ReadonlySet<string> = new Set(TENS);

/** "Either way suction is twelve" */
const unlessEitherWay: Means = (_tags, frame) =>
  /\beither (?:way|side|end|one|leg|line|of|door|fan|circuit)\b/i.test(frame.wordsOf(frame.span))
    ? null
    : {};

/** What somebody is told to do: nobody did it. */
export const BID =
  '(set|put|turn|adjust|change|use|add|charge|run|pressurize|exceed|open|close|pull|leave|let|check|hook|purge|take|trust|go|vent|braze|recover|weigh|start|stop|wear|bleed|keep|make sure|remove|install|evacuate|test|clean|allow|connect|disconnect|replace|break)';

/** What is told of other units, of units in general, of hopes, and of what would have to be paid for. */
export const NOT_OF_THIS_UNIT: readonly Rule[] = [
  rule(
    '[the] old (one|motor|compressor|pump|fan [motor]) (had|has|was|is|says|said|drew|pulled|was (pulling|drawing)) [(a|rated)] <amount> [(on|in) <the> (nameplate|plate|tag|data plate|name plate|sticker|label)] [[<pause>] (and|but) [the] new (one|motor|compressor|pump|fan [motor]) (has|is|says|say|pulls|draws|is (pulling|drawing)) [(a|rated)] <amount:new>]',
    oldOne,
    {
      examples: [
        'the old motor had one point one amps on the plate and the new one says one point two',
      ],
    },
  ),
  rule(
    '(on|with|at|over at) [(the|my|that|his)] (last|other|previous) (one|unit|box|job|call|machine|system|store|stop|place|site|account|house) <clause>',
    nothing,
    { examples: ['on the last one suction was ten'] },
  ),
  rule(
    '[(my|his|her|their)] (buddy|neighbor|cousin|uncle|friend) is (box|walk in|cooler|freezer|fridge|unit|system|machine|place|store|house) <clause>',
    nothing,
    { examples: ["my buddy's walk-in runs at thirty eight"] },
  ),
  rule(
    '[(most|any)] (a|any|most) (good|normal|healthy|typical|clean|new|well charged) (system|systems|unit|units|box|one|ones|compressor|machine|reach in|walk in) (runs|run|is|are|has|have|will|would|should|holds|pulls|reads|likes|like) <clause>',
    nothing,
    { examples: ['a good system runs about eight degrees subcooling'] },
  ),
  rule(
    '(if|when|in case|unless) (it|you|they|we|he|she|somebody) (need|needs|needed|want|wants|wanted|have to|had to) [(to|a|an|the)] [new] <part> [<pause>] [and] [(a|an|the)] [new] <part:second> [[<pause>] and [(a|an|the)] [new] <part:third>] <clause>',
    () => ({ supposed: true }),
    { examples: ["if you need a new compressor, drier and contactor that's four grand"] },
  ),
  rule(
    '[(the|that|their|his|my|our)] (sister|twin|identical|neighboring|adjacent) (unit|box|system|machine|cooler|freezer|case|one|rack) <clause>',
    nothing,
    { examples: ['the sister unit has head at one ninety'] },
  ),
  rule(
    '[(the|that|another|a|their)] (one|unit|box|cooler|freezer|system|machine|rack|case|guy) ((next to|beside|across from|above|below|behind|on the other side of|just like) (it|this|that|this one|that one|him|her)|next door) <clause>',
    ofOtherOne,
    { examples: ['the one next to it is running twenty pounds suction'] },
  ),
  rule('next door <clause>', ofNobody, {
    unheard: true,
    examples: ['next door they have got one ninety on the head'],
  }),
  rule(
    '[(the|that)] same (model|unit|thing|box|system|kind|machine) (over|down|up|out|at|across|as|they have|i did|we did) <clause>',
    nothing,
    { examples: ['same model over at the bank runs two ten head all summer'] },
  ),
  rule(
    '(i|we|they|he) (had|have|have got|did|saw|got) (one|another one|a (unit|box|system|job|call|walk in|case|freezer|cooler|rack)) ((over|out|down|up|back) (at|on|in|by)|at (the|a|that|this|my|our)|just like|like (this|that)|last|once) <clause>',
    nothing,
    { examples: ['we had one at the school sitting at eighty psi suction'] },
  ),
  rule(
    '[(i|we|he|they)] (had|knew|know|saw|worked with|got) (a|this|one) (guy|tech|kid|helper|apprentice|fella|dude|buddy|customer|lady) [(once|one time)] <clause>',
    ofNobody,
    { examples: ['had a guy once charge one to four hundred on the head'] },
  ),
  rule(
    '(you|they) can [(always|usually|really)] (tell|see|hear|smell|feel|know) (when|if|that|it is) <clause>',
    () => ({ supposed: true }),
    { examples: ["you can tell when a condenser's dirty"] },
  ),
  rule('(you|they|he|she) would (have to|need to|want to|end up) <clause>', ofNobody, {
    examples: ['you would have to pull the compressor to get at that'],
  }),
  rule(
    '(i|we) [always] (tell|told|advise|remind) (every|all [(my|the|our)]|my|these|most|each|any) (customer|customers|people|guys|one|owners) <clause>',
    nothing,
    { examples: ['i tell every customer clean your condenser twice a year'] },
  ),
  rule('[it is] either <clause>', unlessEitherWay, {
    examples: ["either the txv's bad or it is low on gas"],
  }),
  rule(
    '(do not tell me|thank god|thank goodness|i was afraid|i am afraid|i swear if) <clause>',
    ofNobody,
    {
      examples: ["do not tell me the compressor's shot"],
    },
  ),
  rule('(before|until|unless|after|once) you <clause>', () => ({ supposed: true }), {
    examples: ['before you cut the dryer out'],
  }),
  rule(
    '(i|we|he|they) (did|had|put|changed|replaced|found|lost) (a|an|two|three) [(bad|new)] <part> (on|in|out of|at) (one of (these|those)|one like (this|that)|another one|the other one|his|theirs|that other one) [<clause>]',
    nothing,
    { examples: ['i did a compressor on one of these yesterday'] },
  ),
  rule(
    '<the> <part> is [(only|just)] (a|an) <number> (amp|volt|pole|inch|watt|horse|horsepower) [(one|model|contactor|motor)]',
    nothing,
    { examples: ["this contactor's a thirty amp"] },
  ),
  rule(
    '(every time|each time|any time|anytime) (somebody|someone|people|they|you|he|she|anybody|anyone|<who>) <clause>',
    () => ({ supposed: true }),
    { examples: ['every time somebody leaves that door open it will climb to fifty'] },
  ),
  rule(
    '[(i|we|he|she|they)] [(am|was|were|are)] (hoping|looking|shooting|aiming|praying|wishing) for <amount>',
    nothing,
    { examples: ['was hoping for two hundred megs'] },
  ),
  // Bubbles of soap are not those in the glass.
  rule(
    '[(and|but|there is|there are|i see|got|saw)] (no|no more|not any more|not any) bubbles [(coming)] (with|from|in|off|on) [(the|my)] (soap|soap bubbles|bubble mix|leak spray|suds)',
    nothing,
    { examples: ['no more bubbles with soap'] },
  ),
  rule(
    '(on|with|for) (a|an) <refrigerant> (unit|system|box|machine|one|job) (you|they|it) (would|will|should|want|always|usually|normally|see|get|look|like|run|runs|have to|need) <clause>',
    nothing,
    { examples: ['on a twelve unit you would see like sixty'] },
  ),
  rule(
    '(i|we) (have|had) [(also|even|already|just)] (seen|known|run into|worked on) (guys|people|techs|somebody|these|those|them|units|systems|plenty [of]|(one|ones) (that|like|with|where)) <clause>',
    nothing,
    { examples: ['i have seen guys charge these by the frost line'] },
  ),
  rule(
    '(what|all|the (way|trick|first thing|next thing|main thing|best thing|only thing)) (you|we|i) [(always|usually|really|just|normally)] (do|want to do|got to do|have to do|need to do|like to do) [here] is <clause>',
    nothing,
    { examples: ['what you do is you set it for six degrees of superheat'] },
  ),
  rule(`[(you|so|and|just)] (never|always|do not ever|do not you ever) ${BID} <clause>`, ofNobody, {
    examples: ['never put more than one fifty on the low side'],
  }),
  rule('<the> <part> (is|was|should be) good for <clause>', nothing, {
    examples: ['this compressor is good for about ten years'],
  }),
];
