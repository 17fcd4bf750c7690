import { startsClause, wordBehind } from '../words/clause-start.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { amountIn } from '../numbers/measure.ts';
import { asReading } from '../readings/reading-means.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { quantityId } from '../slots.ts';
import { aboutIn, ask, askOfThat, MY, plain, TODAY } from './asking.ts';
import { MOVING } from './waiting.ts';
import { supposedIn } from './supposed.ts';

const compareLast = askOfThat('compare');
const targetLast = askOfThat('target');

/** A clause of its own: "where should I be careful" asks something else. */
const isWhole = (frame: Frame): boolean => frame.endsAtPause && startsClause(frame);

/** "Eleven subcool, where do we want that": where it stands is told with the question. */
const toldAndWanted: Means = (tags, frame) => {
  const about = quantityId(tags['quantity']);
  const found = about === null || isElectrical(about) ? null : asReading()(tags, frame);
  return found === null ? null : { ...found, ...ask({ ask: 'target', about }) };
};

/** "What pressure should I see": of the two the head, which the day decides. */
const pressureWanted: Means = (tags, frame) => {
  const supposed = supposedIn('headPressure', tags, frame);
  return ask({ ask: 'target', about: 'headPressure', ...(supposed === null ? {} : { supposed }) });
};

/** What the pressure last spoken of boils or condenses at; of none, what the coil does. */
const saturationNow: Means = (_tags, { context: { lastQuantity } }) => {
  const isHigh = lastQuantity === 'headPressure' || lastQuantity === 'condensingTemp';
  return ask({ ask: 'value', about: isHigh ? 'condensingTemp' : 'evaporatingTemp' });
};

const boxEta: Means = () => ask({ ask: 'eta', about: 'boxTemp' });

/** "How did you come up with fourteen on the suction": what goes on behind it may ask of something else. */
const workingOf: Means = (tags, frame) =>
  wordBehind(frame) === '' ? plain('working')(tags, frame) : null;

const ROUGHLY = '[(roughly|about|now|right now|ballpark|here|today|would you say|you think)]';
const AM_I = '(am i|are we|is it|is she|is that|is this)';
const OFF =
  '((way|very|really|that|too far|pretty|much) (off|over|under|high|low)|[(way|anywhere)] (in the weeds|in the ballpark|in the neighborhood|out of (line|range|whack)|off (target|base)|on target|out in left field|where (i|we|it) (should|need|needs|ought) to be|where (i|we|it) should be|close to (right|target|normal)))';
const ON_A_DAY = '(at|with|in) [(a|an)] <amount> [(ambient|outside|outdoors|out|day|weather)]';
const WHICH_PRESSURE =
  '(what|which|what kind of|what sort of) (pressure|pressures|head) should (i|we) (see|have|be (at|seeing|getting|running)|expect|get|look for|want)';
const BE =
  '(be [(at|running|seeing|reading|getting|sitting|looking at)]|run|see|want to (be|see) [at])';
const AGAIN = '[(again|one more time|back|so far|please)]';
const WAS_HERE =
  '(out (here|on (this|it|this one|this unit)|to this)|on (this one|this unit|it|this thing)|in here|here|to (this one|this unit|look at it|see it))';

/** "Low side's at twenty eight, want it where": of what was just read. */
const wantedWhere: Means = () => {
  const means = (about: QuantityId): Meaning | null =>
    isElectrical(about) ? null : ask({ ask: 'target', about });
  return { ofThat: { means, otherwise: ask({ ask: 'target', about: null }) } };
};

const targetOf: Means = (tags) => {
  const about = aboutIn(tags);
  return about === null ? null : ask({ ask: 'target', about });
};

const trendOf: Means = (tags) => {
  const about = quantityId(tags['quantity']);
  return about === null || isElectrical(about) ? null : ask({ ask: 'trend', about });
};

const compareOf: Means = (tags) => {
  const about = aboutIn(tags);
  return about === null ? null : ask({ ask: 'compare', about });
};

/** "Will she hold at five hundred": asked of a vacuum or of a test, and no reading of it. */
const willHold: Means = (tags, { context: { lastQuantity } }) => {
  const isVacuum = amountIn(tags).unit === 'micron' || lastQuantity === 'vacuum';
  return isVacuum
    ? ask({ ask: 'trend', about: 'vacuum' })
    : ask({ ask: 'judge', about: 'pressureTest' });
};

const ofSplit =
  (kind: 'target' | 'value'): Means =>
  () =>
    ask({ ask: kind, about: 'split' });

const SPLITS = '(it|she|this|that|we|i|the (condenser|coil|unit)|this (one|condenser|unit))';
const A_BOX =
  '(a|an|this|that|the|my|these|one of these) [(two|three|one|single|double) door] (<equipment> [(box|unit|one|system|thing|machine|setup)]|[(box|boxes|case|cooler|freezer|unit|one|system|thing|machine|setup)])';

/** Questions put in passing, and cut short: what they are of was spoken of. */
export const PASSING_QUESTIONS: readonly Rule[] = [
  rule(
    '[(and|so|well)] ((is|are) (that|it|this|those|these|we) [looking] (any good|(deep|tight|good) enough)|(that|this|those|we|it) [(all|looking)] (good|ok|okay|all right|alright|fine|any good|good enough|good or bad))',
    compareLast,
    { alone: true, unheard: true, examples: ['that good', 'is that any good'] },
  ),
  rule(`[(so|well|ok)] ${AM_I} ${OFF} ${ROUGHLY}`, compareLast, {
    only: isWhole,
    unheard: true,
    examples: ['am i way off', 'am i in the weeds'],
  }),
  rule(
    `what (is|does|do|would|should|will) ${A_BOX} (want|like|need|run|wanting|needing|running|be (running|at|seeing|pulling|getting)|(supposed|meant) to (run|be|have|see)|normally run|usually run) [to (be|run|see|have) [at]] (on|for|in|at|with) ${MY} <asked> [(on|with|for) <refrigerant>] ${TODAY}`,
    targetOf,
    { unheard: true, examples: ['what does a reach in want on suction with one thirty four'] },
  ),
  rule(
    `(where|what) (should|would|must|do) (i|we|you|it|she|this) [(want|need|have) to] be [at] (on|for|with) ${MY} <asked> [(with|on) [(a|an)] (<metering>|<refrigerant>)] ${TODAY}`,
    targetOf,
    { unheard: true, examples: ['where should i be on subcooling with a txv'] },
  ),
  rule(
    `((what|how much) (should|ought|would) ${SPLITS} [to] (be splitting|split)|(what|how much) is ${SPLITS} (supposed|meant) to (be splitting|split))`,
    ofSplit('target'),
    { unheard: true, examples: ['what is it supposed to be splitting'] },
  ),
  rule(`(what|how much) (is|am|are) ${SPLITS} splitting [at] [(now|right now)]`, ofSplit('value'), {
    unheard: true,
    examples: ['what is it splitting now'],
  }),
  rule(
    '[(and|so)] [(i|we|you)] (want|wanting|need|like|should be) [(it|that|her|him|this)] [(at|to be)] (where|what)',
    wantedWhere,
    {
      unheard: true,
      only: isWhole,
      examples: ['want it where'],
    },
  ),
  rule(
    `[(is|are)] (it|she|that|he|this|they|we) [(still|even)] (${MOVING}) [(any|at all)] (or what|or not|or is it not|or are we stuck)`,
    () => ask({ ask: 'trend', about: null }),
    { unheard: true, only: isWhole, examples: ['she coming down or what'] },
  ),
  rule(
    `${MY} <quantity> [still] (${MOVING}) [(any|at all)] (or what|or not|or is it not)`,
    trendOf,
    { unheard: true, only: isWhole, examples: ['head coming down or what'] },
  ),
  rule(
    `how (did|would) ${MY} <quantity> (do|change|respond|look|react|come (out|back)|end up) [now] (after|with|since|from) <clause>`,
    plain('beforeAfter'),
    { unheard: true, examples: ['how did the head do after the clean'] },
  ),
  rule(
    '(what is|how much is|give me|what would be) the (spread|difference|split|td|t d|delta [t]|temperature difference) (between|from) <the> (box|return|return air|air|case|cooler) (and|to) <the> (coil|evaporator|evap|evaporating [temp])',
    () => ask({ ask: 'value', about: 'temperatureDifference' }),
    { unheard: true, examples: ['what is the spread between box and coil'] },
  ),
  rule(
    '(what is|how much is|give me|what would be) the (spread|difference|split|td|t d|delta [t]|temperature difference) (between|from) <the> (condensing [temp]|condenser|head) (and|to) <the> (ambient|air|outside air|outside)',
    ofSplit('value'),
    { unheard: true, examples: ['what is the difference between condensing and ambient'] },
  ),
  rule(
    `(does|do) ${MY} <quantity> (go|fit|match|jive|square|line up|make sense|add up) (with|for|to|at|on) <clause>`,
    compareOf,
    { unheard: true, examples: ['does that head go with that ambient'] },
  ),
  rule(
    '(would|do) you (call|say|consider|think) (that|it|this) [(is|was)] [(too|pretty|kind of|a little|really)] (high|low|ok|normal|good|bad|right|off|hot|cold|warm|all right)',
    compareLast,
    { unheard: true, only: isWhole, examples: ['would you call that high'] },
  ),
  rule(
    '(will|would|does|did|can|is) (it|she|this|that|the vacuum) [going to] (hold|stay|sit|stop) [(at|under|below)] <amount>',
    willHold,
    { unheard: true, examples: ['will she hold at five hundred'] },
  ),
  rule(
    `how far (off|out) (am i|are we|is it|is she|is this) (on|with|for|in) ${MY} <asked>`,
    compareOf,
    { unheard: true, examples: ['how far out am i on the suction'] },
  ),
  rule(
    `how (many (degrees|pounds|psi)|far|much) (over|under|high|low|off|above|below|out) ${AM_I} ${ROUGHLY}`,
    compareLast,
    { unheard: true, only: isWhole, examples: ['how many degrees over am i'] },
  ),
  rule(
    `[well] (that|this|it) (is not|does not (look|seem|sound)|can not be|is) (right|normal|good|ok|high|low) <pause> [or] (is (it|that)|does (it|that)|can (it|that)|is not (it|that))`,
    compareLast,
    { unheard: true, examples: [] },
  ),
  rule(`[(so|and|ballpark|roughly)] (where|what) should (i|we) ${BE} ${ROUGHLY}`, targetLast, {
    unheard: true,
    only: isWhole,
    examples: ['where should i be', 'what should i be at'],
  }),
  rule(
    `(${ON_A_DAY} [<pause>] ${WHICH_PRESSURE}|${WHICH_PRESSURE} [${ON_A_DAY}])`,
    pressureWanted,
    {
      unheard: true,
      examples: ['at ninety degrees ambient what pressure should i see'],
    },
  ),
  rule(
    '[(i have|i got|i have got|got|at)] [(a|an)] <amount> [of] <quantity> <pause> ((where|what) (do|should|would) (i|we|you) (want|need|like) (it|that) [(at|to be [at])]|(what|where) should (it|that|i|we) be [at])',
    toldAndWanted,
    { unheard: true, examples: [] },
  ),
  rule(
    `what (is|are) ${MY} (saturation|saturated) [(temp|temperature)] [(at|right now|now|at now|here)]`,
    saturationNow,
    { unheard: true, only: isWhole, examples: ['what is my saturation right now'] },
  ),
  rule(
    `how (long|much longer|much more time|many more minutes) [(do|would) you (figure|think|reckon|say)] [you (figure|think|reckon|say)] [<pause>] (before|until|till) (she|it|<the> (box|cooler|freezer|case|walk in)|we) (is|are|gets|get|will be|comes|hits) [(back|down)] [(at|to|down to)] (temp|temperature|set point|where (it|we) (should|needs to|need to) be)`,
    boxEta,
    { unheard: true, examples: ['how much longer before she is at temp'] },
  ),
  rule(
    `(read|give|tell|say|repeat|run) [me] [back] [(my|the|those|all my|all the)] (pressures|temps|temperatures|both pressures) ${AGAIN}`,
    plain('readback'),
    { unheard: true, only: isWhole, examples: ['read me my pressures again'] },
  ),
  rule(
    'how (did|would|do) you (come up with|get|figure|arrive at|land on|come to) [(the|that)] <amount>',
    workingOf,
    { unheard: true, examples: ['how would you come up with fourteen'] },
  ),
  rule(
    'what (did|would) (they|he|we|i|she|the last (guy|tech|company|crew)|somebody|anybody) (do|find|change|replace|put in|fix|adjust) [(to|on|with)] [(here|it|this|this one|this unit)] (last (time|visit|month|week|year)|the last time)',
    () => ask({ ask: 'history' }),
    { unheard: true, examples: ['what would they do here last time'] },
  ),
  rule(
    `(was|has|have|were|had) (anybody|anyone|somebody|someone|another tech|any of us|we|they) [(been|ever|already)] [(been|working|already)] ${WAS_HERE} [(before|lately|recently|already|this (week|month|year)|last (week|month|year))]`,
    () => ask({ ask: 'history' }),
    { unheard: true, only: isWhole, examples: ['was anybody out on this one before'] },
  ),
];
