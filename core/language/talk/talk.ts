import { TO_TWELVE } from '../../terms/number-words.ts';
import { ANY_WEEKDAY } from '../../terms/calendar.ts';
import { isCutShort } from '../numbers/cut-numbers.ts';
import { adviceIn } from '../recommendations/as-said.ts';
import { HEARSAY_RULES } from './hearsay.ts';
import { HOPE_RULES } from './hopes.ts';
import { BID, NOT_OF_THIS_UNIT } from './not-of-this-unit.ts';
import { atClock, unlessQuotedByUs } from './errands.ts';
import { startsClause, wordBefore, wordBehind } from '../words/clause-start.ts';
import { goesOnMeasured, holdsFigure, holdsNumber, namesReading } from '../words/own-reading.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, signedIn } from '../slots.ts';
import { WordSet } from '../words/word-set.ts';
import { nothing, remark, remarkOfNumber } from '../plain-means.ts';

const unlessBroken: Means = (_tags, frame) => (/[,;]/.test(frame.wordsOf(frame.span)) ? null : {});

/** Of whatever lasts or is full. */
const MOST_TOLD = 999;

const PAST =
  /^when (?:we|i|it|they|you) (?:started|began|got|arrived|came|walked|showed|was|were|went)\b/i;
/** "I'd say it's twelve low" is a guess, "I'd say it's short cycling" none. */
const SAYS_NAMED = /^say (?!(?:it|that|this|they|we|you|he|she)\b)/i;

/** "When we started" is no condition, and "I'd say suction's forty" no supposition. */
const unlessPast: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const isSure = SAYS_NAMED.test(words) || (/^say\b/i.test(words) && !holdsNumber(words));
  const isEstimate = isSure && /'d$|would$/i.test(wordBefore(frame));
  if (EACH_TIME.test(words) && namesReading(words)) return { remarks: [words] };
  return PAST.test(words) || isEstimate || headsReadings(words) ? null : { supposed: true };
};
/** "When it starts, suction goes down to eleven and it shuts off": what it does each time was seen. */
const EACH_TIME =
  /^when(?:ever)? (?:it|she|the (?:unit|compressor|fan)|he|that) (?:starts|kicks|comes|cuts|shuts|runs|stops|cycles|fires|goes into|goes off|turns) (?!.*\b(?:call|tell|let me|make sure|you|should|will|'ll|we'll)\b)/i;
/** "Before: head one ninety" says what the readings are; most recognisers write no mark. */
const headsReadings = (words: string): boolean =>
  /^before\s*[,:.]/i.test(words) || holdsFigure(BEFORE_HEAD.exec(words)?.[1] ?? '');
const BEFORE_HEAD = /^before head (\S+)/i;

/** "Quote her one of those and I replaced the caps": what we did is told behind it. */
const unlessWeDid: Means = (_tags, frame) =>
  /\b(?:and|but|so) (?:i|we)(?:'ve)? (?!was|were|am|are|think|guess|had|have)[a-z]+\b/i.test(
    frame.wordsOf(frame.span),
  )
    ? null
    : {};

/** "Two of the bolts are stripped"; but what we have names for is told of the job. */
const ofOtherThings: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  if (OURS.test(words) || ARE_SO_MANY.test(words)) return null;
  return TOLD_OF_THEM.test(words) ? remark(tags, frame) : unlessWeDid(tags, frame);
};
/** "One of them is out": of which it is said stands before it, and the words are kept. */
const TOLD_OF_THEM =
  /^\S+ of (?:them|'?em|these|those) (?:is|are|isn't|aren't|was|were|won't|will not|has|have|had|doesn't|don't|does not|do not|keeps?|reads?|looks?|sounds?|quit|went|tripped|burnt|blew) (?!(?:in|at|on|from|here|there|out to|off today|gone)\b)/i;

/** "Evap fans, two of em, left one's dead": what stands behind it is told of one of them. */
const ARE_SO_MANY = /^\S+ of \S+[,;.]/;
const OURS =
  /^\S+(?: \S+)? of [\w.]+ (?:[\w.]+ ){0,2}(?:fans?|motors?|compressors?|contactors?|fuses|legs|breakers|coils?|valves?|switch(?:es)?|heaters?|probes?|sensors?|drains?|pans?|blades?|belts?|hoses?|gaskets?|doors?|(?:hinges?|latch(?:es)?|closers?|casters?)(?= (?:is|are|was|were)\b))\b/i;

/** "Swings from twenty eight to forty four every minute" */
const endsRange = (frame: Frame): boolean => {
  const { from } = frame.span;
  return from > 1 && / to$/i.test(frame.wordsOf({ from: from - 2, to: from }));
};

/** What they were told is for the note, a price and a time with it. */
const toldThem: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const advice = adviceIn(words);
  if (advice !== null) return { recommendations: [advice] };
  return TOLD_WHAT.test(words) ? {} : { remarks: [words] };
};

const TOLD_WHAT = /^i \w+ (?:the )?\w+ (?:what|how|why|who|which|when|where|all about|about)\b/i;

/** "Is head two hundred": what stands in the middle of a sentence asks nothing. */
const opensQuestion: Means = (_tags, frame) => (frame.span.from <= 1 ? {} : null);

const TIME_WORDS = new WordSet(
  'oclock am pm a p morning afternoon tonight today tomorrow yesterday',
);

/** A number put right without a quantity: only the second one is left to ask about. */
const unclaimedAfterAll: Means = (tags) => {
  const number = signedIn(tags);
  return number === null ? null : { unclaimed: [String(number)] };
};

/** "One forty on the head, wait no one forty three" */
const unlessNumberGoesOn: Means = (_tags, frame) =>
  !frame.endsAtPause && holdsNumber(wordBehind(frame)) ? null : {};

const correction: Means = () => ({ correction: true });

/** Things that are counted but never measured on this job. */
const FOREIGN =
  '(miles|mile|minutes|minute|hours|hour|seconds|second|days|day|weeks|week|months|month|years|year|dollars|dollar|bucks|cents|percent|feet|foot|people|guys|times|calls|stops|units|customers|gallons|gallon|oclock|am|pm|a m|p m|screws|bolts|fuses|fans|doors|door|shelves|cases|pounds of (meat|ice|cheese)|more (minutes|hours|stops|calls)|bags|boxes|floors|blocks|years old|o seven|footer|ton|tons|horse|horsepower|hp|kids|beers|trips|steps|ways|sides|employees|tables|wires|screens|pieces|things|parts|inches thick|inch thick|inch off|inches off|inch wide|inch deep|of them|of these|of those|of (the|my) (guys|kids|trucks))';

/** A rating or a measure that names a thing: no meter read it. */
const SIZE =
  '(amp|volt|watt|ton|horsepower|hp|horse|inch|foot|pound|ounce|gallon|wire|pole|microfarad|degree|psi)';
const SIZED =
  '(breaker|fuse|motor|fan|compressor|contactor|coil|transformer|relay|heater|capacitor|wrench|pipe|line|tubing|wire|outlet|circuit|bit|socket|hose|fitting|nut|nut driver|drill|copper|ladder|driver|flare|flare nut|screwdriver|cylinder|tank|jug|bottle|bucket|box|plug|cord|day|gage|controller|relief|roll|tape|hammer|screw|bolt|elbow|coupling|battery|bulb|light|adapter|charger|impact|saw|strap|generator|magnet|gauge|drop light|extension cord|ratchet|key|hole saw|disconnect|whip|lift|extension|ladder rack)';

const PLAIN_UNITS = '(pounds|ounces|psi|degrees|volts|amps|ohms|microns|grams)';

/** What is said but is not for us: nothing of it is recorded, and its numbers are not asked about. */
export const TALK_RULES: readonly Rule[] = [
  rule(
    '[(i am|we are)] (pulling a vacuum|pulling it down|pulling down|letting it (run|settle|pull down)|recovering [(it|the charge|the gas|the refrigerant)]|running nitrogen|flowing nitrogen) [now]',
    nothing,
    { alone: true, examples: ['we are pulling a vacuum'] },
  ),
  rule(
    '[the] (nitrogen|vacuum pump|pump|recovery machine|recovery unit) is (on|in|in it|running|going|trickling|flowing|hooked up) [now]',
    nothing,
    { alone: true, examples: ['nitrogen is on'] },
  ),
  rule(
    '(if|unless|suppose|supposing|assume|pretend|what if|in case|as long as|assuming|imagine|say it|whenever|as soon as|once (the|it|head|suction|we|i|they|that)|until (the|it|head|suction|we|i|they)|till [the] (superheat|subcooling|head|suction|box) is|when (it|the|head|suction|they|that|you|he|she|we|box)|before (it|the head|head)|let us say|let is say|lets say|say (the|it is|it was|head|suction|you|i|we)) <clause>',
    unlessPast,
    {
      examples: ['if head goes over two hundred call me'],
    },
  ),
  rule(
    '((i|we|you) (would|had) (hate|love|rather|not want) [to] <clause>|i (wish|doubt) <clause>)',
    nothing,
    { examples: ['i would hate to see it hit a hundred out here'] },
  ),
  rule(
    '(i bet|i would bet|i will bet|i would guess|i am guessing|my guess is|i am betting|i figured|i figure|i was thinking|i was expecting|i expect|i expected|i am expecting|hopefully|i hope|i am hoping) <clause>',
    nothing,
    { examples: ['i bet suction is around ten'] },
  ),
  rule(
    '[(it|that|he|she|they|this|bill|price|invoice|part|we|i)] [(is|was|will)] (cost|costs|quoted|paid|spent|billed|owe|owes|charge|charged) [(it|that|him|her|them|me|us|the customer)] [about] <number> [(an|a|per) (hour|piece|trip|call|month)]',
    unlessQuotedByUs,
    { examples: ['it costs eighty five an hour'] },
  ),
  rule(
    '(call|text|email|phone|ring) (the (office|customer|manager|owner|boss|shop)|dispatch|me|you|him|her|them|my boss) [back] [(at|around|by|in)] [<number>]',
    nothing,
    { examples: ['call the office at two'] },
  ),
  rule(
    'i (told|quoted|promised) (him|her|them|the (customer|owner|manager|lady|guy)) <clause>',
    toldThem,
    {
      examples: ['i told him it would be six fifty for the compressor'],
    },
  ),
  rule(
    '[(i|we|and)] [(also|just)] told (him|her|them|<who>) [(that|it is)] (he|she|they|we|i|nobody|no one|it (is|was|had|has|would|could|will not|might)) <clause>',
    toldThem,
    {
      unheard: true,
      only: startsClause,
      examples: ['told the manager he should not have kept resetting it'],
    },
  ),
  rule(
    '[(he|she|they|who|the (customer|boss|owner|manager))] (wants|needs|need|want|expects|expect) (me|us|him|you) [(there|here|back|done|out|gone)] (by|at|before|around) <number>',
    nothing,
    { examples: ['he wants me there by four'] },
  ),
  rule(
    '[(it|this thing|this one|this unit|these|they|that thing)] (run|runs|ran|hits|gets) [(about|around|at|up to|to)] <number> [(psi|pounds|degrees)] ((in|all) [the] (summer|winter|heat)|all (summer|winter|day)|on a hot day)',
    nothing,
    { examples: ['this thing runs around two hundred in the summer'] },
  ),
  rule('[i] (do not|did not) (think|believe|know (if|that|whether)|see) <clause>', nothing, {
    examples: ['i do not think the compressor is bad'],
  }),
  rule('(traffic|[the] (accident|construction|wreck)|stuck in traffic) <clause>', nothing, {
    examples: ['traffic was terrible on ninety five'],
  }),
  rule(
    'my (kid|kids|son|daughter|wife|husband|boy|girl|dog|cat|mom|dad|brother|sister|girlfriend|boyfriend|back|knee|truck|van|car|birthday|day off) <clause>',
    nothing,
    { examples: ['my kid turned seven yesterday'] },
  ),
  rule(
    '[(the|that|my|his|this|an)] other (unit|one|box|cooler|freezer|machine|system|rack|case|store|walk in|reach in) [(was|is|has|reads|had|over there|next to it)] <clause>',
    remarkOfNumber,
    { examples: ['the other unit is at forty'] },
  ),
  ...NOT_OF_THIS_UNIT,
  ...HOPE_RULES,
  rule(
    '(lunch|breakfast|dinner|break|quitting time|coffee break) [(is|was)] (at|till|until|around|by) <number>',
    nothing,
    {
      examples: ['lunch at twelve thirty'],
    },
  ),
  rule('(wants|want|asking|asked|charging) [(him|her|them|me|us)] <number> for <clause>', nothing, {
    examples: ['the supply house wants two hundred for that fan motor'],
  }),
  // "Vacuum fifteen minutes" times it, and no tank weighs eighty percent.
  rule(
    '[the] <quantity> <link> [(about|around|like|maybe|almost|over|only)] <number> (percent|minutes|minute|hours|hour|seconds|days|feet) [(full|empty|loaded|stocked|humidity|ago|old|away|long)]',
    // "Suction's holding at fourteen fifteen minutes on the pump": two numbers.
    (tags) => ((numberIn(tags['number']) ?? 0) > MOST_TOLD ? null : {}),
    {
      examples: ['recovery tank is at eighty percent'],
    },
  ),
  rule(
    '[(about|another|by|just|only|maybe)] [(a|one)] (half|quarter|third|full|whole|three quarters) [(of a|a|of)] (turn|turns) [(clockwise|counterclockwise|in|out|open|closed)]',
    nothing,
    { examples: ['about a quarter turn'] },
  ),
  rule('[(there is|i have [got]|they have [got])] <number> of (them|those|these)', nothing, {
    unheard: true,
    apart: true,
    examples: ['there is two of them'],
  }),
  rule('<number> of (the|these|those|my|our|them|us) <clause>', ofOtherThings, {
    examples: ['two of the bolts are stripped'],
  }),
  rule(
    '[(the|this|their|my)] (book|chart|manual|spec|specs|spec sheet|instructions|directions|guide|bulletin|internet|phone|app|video|diagram|wiring diagram|schematic|drawing|prints|literature|website|factory|manufacturer) (says|say|said|calls for|call for|shows|show|wants|tells you|recommends|recommend) <clause>',
    nothing,
    {
      examples: ['the book says head should be one seventy'],
    },
  ),
  rule(
    `[(it|this)] says [right] here [(to|you|that you|you need to|you have to|you should|do not|never|always)] ${BID} <clause>`,
    nothing,
    { examples: ['it says here set the low pressure control to cut in at twenty'] },
  ),
  rule('did <who> (say|mention|tell you|tell us|think) <rest>', nothing, {
    examples: ['did the customer say it was at fifty'],
  }),
  rule(
    '[(i|we|you|he|they)] [(am|are|is)] (going to|about to|planning to|might|may|need to|have to|has to|want to|trying to|try to|will|would|could|should|do not|not going to) [just] (add|put in|put|recover|pull out|pull|take out|charge|weigh in|set it (to|at)|bring it (up|down) to|get it (up|down) to|go to|pump it (up|to)) [(another|more than|up to|it (to|with))] <amount> [of] [<refrigerant>]',
    nothing,
    { examples: ['i might add eight ounces'] },
  ),
  rule(
    '[(is|are)] [(going to|will|would|has to|could)] (run|cost|set|charge|bill|quote|be about|be around) (you|him|her|them|me|us|the customer) [back] [(about|around|like|roughly|maybe)] <number> [(plus|before|with) (tax|labor|parts)]',
    nothing,
    { examples: ['it is going to run you about four fifty plus tax'] },
  ),
  rule(
    '[(about|around|like|roughly)] <number> (plus (tax|labor|parts)|all in|out the door|flat rate|an hour labor|on the (invoice|bill|quote))',
    nothing,
    { examples: ['four fifty plus tax'] },
  ),
  rule(
    '[(making|makes|only|it is making|it makes)] <amount> (a|an|per|every) (day|hour|minute|week|month|year|batch|cycle|harvest|time|visit|call|trip|shift|night|pop|foot|piece)',
    (tags, frame) =>
      tags['unit'] === 'V' || tags['unit'] === 'A' || endsRange(frame)
        ? null
        : nothing(tags, frame),
    { examples: ['it is making maybe three hundred pounds a day'] },
  ),
  rule(
    '[and] (i|we|you|they|he) [really] (want|need|would like|like|wanted|needed|am (shooting|looking|aiming) for|are (shooting|looking|aiming) for|was (expecting|hoping for)) [(to (see|be|get|have) [it] [(at|to|up to|down to)]|it (at|to be [at]))] <amount>',
    (tags, frame) => (isCutShort(frame) ? null : nothing(tags, frame)),
    { examples: ['i want to see ten'] },
  ),
  rule(
    '(is|was|did) [(my|the|your)] <quantity> [(at|over|under|above|below|hit|reach)] <amount>',
    opensQuestion,
    {
      examples: ['is head two hundred'],
    },
  ),
  rule(
    '(normally|usually|typically|generally|ideally|most of (these|them)|these things|(these|they) (usually|normally|typically|should [(really|usually|normally|all)] (be|run|read|hold|sit|show|come|make|pull|draw|cycle|last|go|cost|take|look|stay|work)|run|like)|these should [(really|usually|normally|all)] (have|get)|this one (usually|normally)|(it|this|that) (usually|normally|typically|used to)) <clause>',
    nothing,
    { examples: ['normally these run about one fifty'] },
  ),
  rule(
    `(last (time|visit|week|month|year|summer|winter|night|${ANY_WEEKDAY})|yesterday|the other day|previously|(a|one) (week|month|year) ago) <clause>`,
    (_tags, frame) => (goesOnMeasured(frame.wordsOf(frame.span)) ? null : {}),
    { examples: ['last time head was two ten'] },
  ),
  rule(
    '[(it is|that is|they are|it was|[the] <quantity> (is|was))] supposed to (be|run|read|sit|hold) [at] <amount>',
    nothing,
    {
      examples: ['it is supposed to be thirty eight'],
    },
  ),
  rule(
    '(it|that|this|they|we) (should|ought to|needs to|need to|has to|have to) (be|run|read|sit|stay|hold) [at] <amount> (in here|in there|today|by now|out here|up here)',
    nothing,
    {
      examples: ['it should be thirty five in there'],
    },
  ),
  rule(
    `[(it|that|they|which|and)] (should|ought to) [all] be [(at|like|right at)] <amount> (for|on|with|across|between|through) (the|all|both|all of the) [(two|three|four|six)] [of] (them|these|those|heaters|motors|fans|legs)`,
    nothing,
    { unheard: true, examples: ['should be about nineteen for the three of them'] },
  ),
  ...HEARSAY_RULES,
  rule(
    '[(about|around|like|in|at|over|only|for|took|takes|it takes|it took|be there in|back in)] [about] an hour and a half [(ago|away|late|early|from here|left|long|each|total)]',
    nothing,
    { unheard: true, examples: ['back in about an hour and a half'] },
  ),
  rule(
    `[(about|around|another|like|at|in|over|under|almost|only|for|took|takes|it takes|it took|be there in|back in)] <number> [(to|or) <number:other>] [more] ${FOREIGN} [(ago|away|old|late|early|out|from here|left|left over|long|wide|tall|each|total|in a row)]`,
    nothing,
    {
      examples: ['it took about two hours'],
    },
  ),
  rule(
    '(i|we) (held|let|left|kept|ran|had|waited|timed) [(it|that|the vacuum|the unit|on it)] [(run|running|settle|sit|on|hold|off)] [for] [about] <number> (minutes|minute|hours|hour)',
    nothing,
    { examples: ['i held the vacuum for ten minutes'] },
  ),
  rule(
    '[(at|around|about|by|until|till|after|before)] <number> (oclock|thirty|fifteen|forty five) [(this morning|this afternoon|tonight|today|am|pm|tomorrow|yesterday|a m|p m)]',
    nothing,
    { needs: TIME_WORDS, examples: ['at five oclock this morning'] },
  ),
  rule(
    `(by|until|till|around|at|for|before|after|since) <number> (tomorrow|today|tonight|this morning|this afternoon|this evening|yesterday|in the morning|${ANY_WEEKDAY})`,
    nothing,
    {
      examples: ['i will be by at two tomorrow'],
    },
  ),
  rule(
    '(that|this|the|another|other|which|good|bad|new|old|next|last|every|each|any|no|same|only|big|little|small|left|right|first|second|third|wrong|it is (the|that)|different) one',
    unlessNumberGoesOn,
    {
      examples: ['that one is bad'],
    },
  ),
  rule(
    'one (is|was|has|like|of|more|thing|guy|second|sec|moment|last|other|day|time|sided|by one|at a time|way)',
    nothing,
    { examples: ['one thing'] },
  ),
  rule(
    '(number|model|model number|serial|serial number|part number|suite|apartment|room|store|store number|highway|route|interstate|exit|aisle|gate|unit number|truck|van|circuit|drawer|row|bank|section|zone|slot|stage|terminal|dock|extension|bay|station|cooler number|case number|door number|table) [(is|number|numbers)] <number>',
    nothing,
    {
      examples: ['store number fourteen'],
    },
  ),
  // "Forty two on the suction line, twenty on the gauge" counts no lines.
  rule('(line|leg|phase) [(number|numbers)] <number>', unlessBroken, { examples: ['leg two'] }),
  rule(
    `[(it is|that is|need|i need|get me|hand me|give me|grab|grab me|bring|bring me|order|order me|find|find me|it has [got]|it is got|there is|got|we have|i have)] [(a|an|the|that|my|another)] [about] <number> ${SIZE} [(nitrogen|recovery|steel|round|flat|oxygen|acetylene|run|start|pull out)] ${SIZED} [(in it|in there|in here|on it|up here|here)]`,
    nothing,
    { examples: ['that is a twenty amp breaker'] },
  ),
  rule(`[(need|i need|get me|hand me|give me)] [(a|an|the)] <fraction> [inch] ${SIZED}`, nothing, {
    examples: ['i need a three eighths flare nut'],
  }),
  rule(
    '[(on|since|until|till|by|from)] [(the|a|my|our|his|her|every|each|about the|around the)] <ordinal> of (the|this|last|next|every) (month|year)',
    nothing,
    { examples: ['twenty first of the month'] },
  ),
  rule('(the|a|my|our|his|her|every|each) <ordinal>', nothing, {
    examples: ['i was there on the twenty first'],
  }),
  rule('<ordinal>', nothing, { alone: true, examples: ['twenty first'] }),
  rule(`[(at|around|about|by|until|till|after|before)] (${TO_TWELVE.join('|')}) o clock`, nothing, {
    examples: ['at five o clock'],
  }),
  rule('<number> (st|nd|rd|th)', nothing, { examples: ['may 3rd'] }),
  rule(
    '(a couple|couple|a few|few|several|many|hundreds of) [of] (hundred|thousand|million|hundreds|thousands|dozen)',
    nothing,
    { examples: ['a couple hundred'] },
  ),
  rule(
    '[the] [(walk in|box|room|cooler|freezer|case|coil|it)] [is] [a] <number> by <number:other> [(feet|foot|inches|inch)]',
    nothing,
    { examples: ['the walk in is twelve by fourteen feet'] },
  ),
  rule(
    '(be|get|meet (you|me|him|her|them|us)|see (you|me)|call (me|you|him|them|back)|pick (it|me|you) up|back) [(there|back|done|here|home)] (at|by|around) <number>',
    atClock,
    {
      examples: ['i will be there at three thirty'],
    },
  ),
  rule('[(my|the|his|her|their)] (phone|cell|fax|office) number [is] <clause>', nothing, {
    examples: ['my phone number is five five five one two one two'],
  }),
  rule(
    '(half (full|empty|a tank|a day|way|of it|of them|the time)|in half [(clean|almost|nearly)])',
    nothing,
    {
      examples: ['it is half full'],
    },
  ),
  rule('(turn|shut|switch|leave|put|cut) <the> <part> (on|off|up|down|back on|open)', nothing, {
    examples: ['turn the light on'],
  }),
  rule(
    `<signed:wrong> ${PLAIN_UNITS} [(in (it|there|the (tank|jug|cylinder|system))|on it|or so|now)] <correction> [<correction>] [(it is|that is|make it)] <signed> [${PLAIN_UNITS}]`,
    unclaimedAfterAll,
    { examples: ['twenty two pounds in it no scratch that twenty three pounds'] },
  ),
  rule('<signed:wrong> <correction> <signed>', unclaimedAfterAll, {
    examples: ['one sixty no wait one sixty two'],
  }),
  rule(
    `[it is] [(about|almost|nearly|at|by|till|until)] [a] (quarter|half|ten|five|twenty) (after|past|till) (${TO_TWELVE.join('|')})`,
    nothing,
    { examples: ['quarter after two'] },
  ),
  rule('[(at|by|until|around|till|about)] <clock> [(am|pm|a m|p m)]', nothing, {
    examples: ['at 2:30'],
  }),
  rule('[(good|well)] (morning|afternoon|evening|hello|hi|hey there) [there]', nothing, {
    alone: true,
    examples: ['good morning'],
  }),
  rule(
    '(how are you [doing]|how is it going|how you doing|what is up|thanks [a lot]|thank you [very much]|no problem|you bet|see you [(later|around)]|have a good (day|one)|good job|nice job|never mind|nice weather for it) [(buddy|man|boss|there|today|again)]',
    nothing,
    { examples: ['thank you very much'] },
  ),
  rule('<correction>', correction, { examples: ['make that'] }),
];
