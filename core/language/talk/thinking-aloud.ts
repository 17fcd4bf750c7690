import { startsClause } from '../words/clause-start.ts';
import { holdsNumber, holdsReading } from '../words/own-reading.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { nothing } from '../plain-means.ts';

/** "I'm gonna need a new contactor" still tells what ought to be done. */
const unlessWanted: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  if (!startsClause(frame)) return null;
  return WANTED.test(words) || holdsNumber(words) || FOR_A_WHILE.test(words) ? null : {};
};
const WANTED = /\b(?:needs?|recommend|quote|order|say|call it|go with|suggest)\b/i;
const FOR_A_WHILE = /\b(?:hour|minute)\b/i;

/** How long an errand took is talk; what was read behind it is not. */
const unlessMeasured: Means = (_tags, frame) =>
  holdsReading(frame.wordsOf(frame.span)) ? null : {};

const IT = '(it|her|him|this|that|this thing|them|things|the thing|the unit|the box|everything)';
const GUESS =
  '(it is probably|probably|it could be|could be|it might be|might be|maybe it is|might just be|could just be|i wonder if|wonder if|i am wondering if|must be|it must be|that would be|that could be|i am hoping)';

/** "Gonna have to defrost this by hand" */
const unlessNumbered: Means = (_tags, frame) =>
  holdsNumber(frame.wordsOf(frame.span)) ? null : {};

/** What is said to nobody while the hands work. Nothing of it was read, found or done. */
export const ALOUD_RULES: readonly Rule[] = [
  rule(
    '[(so|yeah|yep|ok|well|and|man)] (it is|that is|she is|this thing is) [(running|reading|still|way|pretty|a little|a bit)] (high|low|up there|over (the plate|nameplate|what it should be|spec)|under (the plate|nameplate|spec)|out of (whack|line|range))',
    nothing,
    { unheard: true, alone: true, examples: ['so it is running high'] },
  ),
  rule(
    '[(and|man|boy)] (you|they) (would not|will not|would never|should have seen|should see) [(believe|know)] (what|how much|all) <clause>',
    nothing,
    { unheard: true, alone: true, examples: ['you would not believe what came out of there'] },
  ),
  rule(
    `(let us|let is|let me|going to|i am going to|i will|we will|letting|let) [(just|go ahead and)] (let ${IT}|letting ${IT}|${IT}) (run|go|settle|sit|cycle|pull down|catch up|do its thing|do it is thing|stabilize|breathe|warm up|cool down|cool off|thaw|work|drain) [(a bit|a while|for a (bit|while|minute|second|few)|a minute|a little|now|some|out|down)] [and see]`,
    nothing,
    { examples: ['let it run a bit'] },
  ),
  rule(
    `(let us|let is|let me) (see|look|think|check|take a look|have a look|go|get|grab|find|try|start|move|finish|open|pull|shut|kill|put|turn|clean|dig|poke|wait|watch|read|meter|figure|double check) [<clause>]`,
    unlessWanted,
    { examples: ['let me take a look up top'] },
  ),
  rule(
    '[(ok|so|now)] [(i am|we are)] (heading|headed|going|walking|climbing|running|on my way|coming|stepping|crawling|headed back|back) [(up|down|out|over|back|inside|outside|around|in)] [(to|on|into|up|top|top of|for|under|behind|by|at)] (the|my|a|up|down|outside|inside|top|back|out|over) [(roof|ladder|truck|van|kitchen|back|box|cooler|freezer|front|basement|top|unit|parts|panel|there|up|walk in|wall|alley|attic|shop|supply house)]',
    nothing,
    { alone: true, examples: ['heading up top', 'i am going out to the truck'] },
  ),
  rule(
    '(there (she|it|we|he) (goes|go|is|are)|here (we|it|she) (go|goes|comes)|come on [baby]|look at that|how about that|would you look at that|what do you know|well well|no kidding|figures|of course|well now|beautiful|perfect|nice|sweet|bingo|gotcha|got it|all right then|ok then|moving on|next|easy|almost|close enough|good enough|that is better|that will do|that helps|that did it|that was it|that is a start|so far so good|not bad|no wonder|thought so|just as i thought|what a mess|what the heck|what the hell|holy (cow|smokes)|oh boy|oh man|jeez|geez|shoot|dang|darn|damn|crap|ouch|son of a gun|for crying out loud|you have got to be kidding [me]|here is the problem|there is (your|the|our) problem)',
    nothing,
    { unheard: true, alone: true, examples: ['there she goes', 'no wonder'] },
  ),
  rule(
    '((there|here) (she|it|we|he) (goes|go|comes)|that is better|that did it|no wonder|thought so|moving on|ok then|sweet|bingo|beautiful)',
    (_tags, frame) => (frame.endsAtPause && startsClause(frame) ? {} : null),
  ),
  rule(
    '(that is|this is|there is|here is|that must be|that has got to be|i think that is) (your|the|our|my) (problem|trouble|culprit|issue|ticket|one|deal|answer) [right] [(there|here)]',
    nothing,
    { examples: ['that is your problem right there'] },
  ),
  rule(
    '(turn|hang|take|make|bear|go) [(a|your|the)] [(first|second|next|hard)] (left|right) (at|on|onto|past|by|when|after|before|down) <clause>',
    nothing,
    { examples: ['turn left at the light'] },
  ),
  rule(`${GUESS} <clause>`, unlessWanted, {
    examples: ['it is probably going to be the contactor again'],
  }),
  rule(
    '(it|she|this|that|this thing|he) (will|should|might|may|could|would|ought to) [(probably|likely|just|never|hopefully|all)] (limp|hold|last|make it|be fine|be ok|do|get by|run|come|go|pull|catch up|need|take|be|have|drop|recover|settle|freeze|thaw) <clause>',
    unlessWanted,
    { examples: ['it will limp along till thursday'] },
  ),
  rule(
    '[(and|so|then|now)] (i am|we are|i) [(not|just|probably)] (going to|about to|fixing to|trying to|planning to|have to|got to|better|ought to go|need to go|need to grab|need to get|need to run) <clause>',
    unlessWanted,
    { examples: ['i am going to zip tie that plug'] },
  ),
  rule(
    '([just] (going to|about to|fixing to)|(i|we) will [just] leave (it|that|this)) <clause>',
    unlessNumbered,
    { unheard: true, alone: true, examples: ['i will leave it pulling down'] },
  ),
  rule(
    '[(ok|so|well|now|yeah|just)] (((i am|we are) going to|i will|let us|let me) [just] (give|wait [(on|for)]|watch|let) (it|her|that)|give (it|her)) [(a|another|a couple|a few|some)] [(minute|minutes|second|seconds|sec|bit|while|time|more|more minutes|little (while|bit|time))] [(to (settle|run|settle out|settle down|catch up|come down|stabilize|pull down|level out)|and see [(what it does|how it does|where it settles)])]',
    nothing,
    { unheard: true, alone: true, examples: ['give it a minute'] },
  ),
  rule(
    '[(ok|so|yeah|now|well|and)] that [(sure|already)] (looks|sounds|feels|seems|is looking|is sounding) [(a lot|much|a little|way|a bit)] (better|good|more like it|about right|right|great)',
    nothing,
    { unheard: true, alone: true, examples: ['that looks better'] },
  ),
  rule(
    '[(ok|so|now|well|and)] before (i|we) (touch|do|start|change|mess with|move|open|fool with) (anything|it|a thing|any of it|anything else) [<pause>] [(let me|i am going to|i will|let us|i want to|i need to|we will)] [(just|first|go ahead and)] (get|take|grab|write down|read|record|give you) [(me|you)] [(a|some|my|the|a few|all [(my|the)])] (numbers|readings|pressures|temps|temperatures|set of (numbers|readings)) [first]',
    nothing,
    { unheard: true, alone: true, examples: ['before i touch anything let me get some numbers'] },
  ),
  rule(
    '[(and|so|yeah)] (that is|it is) [(just|right|about)] (what|where) (it|that|she) (should|ought to) be [at]',
    nothing,
    { unheard: true, apart: true, examples: ['that is what it should be'] },
  ),
  rule(
    '(hang on|hold on|one sec|one second|just a sec|wait a minute|wait) [<pause>] [(my|the|that is my)] (phone|phone is ringing|cell|boss|dispatch|radio|somebody is (calling|here|coming)|got a call|let me get (this|that))',
    nothing,
    { examples: ['hang on phone'] },
  ),
  rule(
    '(i am|we are|i|we) [have] [(only|still|just)] [got] (two|three|four|five|six|one) more (stops|stop|calls|call|units|unit) [<clause>]',
    nothing,
    { examples: ['i have got two more stops after this one'] },
  ),
  rule(
    '(two|three|four|five|six|one) more (stops|stop|calls|call) [<clause>] [<pause> (i would say|probably|maybe|be there|call it|figure) <clause:more>]',
    nothing,
    { examples: ['two more stops after this one'] },
  ),
  rule(
    '[(i|we)] (had to|have to|got to) (run|go|drive|stop|head) [(back|over|out|up|down)] (to|by|for|get|grab) <clause> [<pause> <clause:more>]',
    unlessMeasured,
    { examples: ['had to run to the supply house'] },
  ),
  rule(
    '(then|with|some|and|used|and then) [some] (c o two|co two|nitrogen|compressed air)',
    (_tags, frame) => (frame.span.from > 1 && frame.endsAtPause ? {} : null),
  ),
  rule('(medium temp|low temp|single phase)', nothing, { alone: true }),
  rule(
    '[[the] (tag|plate|nameplate|sticker|label|decal|ink) is] half (gone|worn off|worn|rusted [(off|away|out)]|rubbed off|missing|shot|torn off|off|open|closed|in|out|done|there|asleep|way|loaded|stocked)',
    nothing,
    {
      examples: ['half worn off'],
    },
  ),
  rule('[(about|like|maybe)] half an inch [(thick|on it|deep|wide|off|of <clause>)]', nothing, {
    examples: ['about half an inch of ice'],
  }),
];
