import { wordBehind } from '../words/clause-start.ts';
import { holdsNumber } from '../words/own-reading.ts';
import { type Frame, heardRule, type Means, type Rule, rule } from '../rule.ts';
import { quantityId, spanIn } from '../slots.ts';
import { tokenise } from '../words/tokenise.ts';
import { ask, MY, plain } from './asking.ts';
import { startsWithPart } from './named-in.ts';

/** "Why is the manager upset" is not ours to answer: what it asks of must be a part, or the unit. */
const ofOurs: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  const asked = span === null ? '' : frame.wordsOf(span);
  const words = ` ${tokenise(asked)
    .map(({ text }) => text)
    .join(' ')} `.replace(LEADING, ' ');
  const isNamed = startsWithPart(words) || UNITS.test(words);
  return isNamed && words.trim().split(' ').length > 1 ? plain('causes')(tags, frame) : null;
};
const LEADING = /^ (?:not )?(?:(?:the|my|your|a|an|this|that|their|our|both|all the|one) )+/;
const UNITS = /^ (?:unit|box|system|freezer|cooler|case|thing|machine) /;

/** "Why do you say one seventy four" asks how it was worked out; of a part it asks what is behind it. */
const ofANumber: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  const isOfFigure =
    span !== null && (holdsNumber(frame.wordsOf(span)) || SHOULD.test(frame.wordsOf(span)));
  return isOfFigure ? plain('working')(tags, frame) : plain('causes')(tags, frame);
};
/** "What do you want for lunch" wants no reading. */
const nextCheck: Means = (tags, frame) =>
  wordBehind(frame) === 'for' || (wordBehind(frame) !== '' && leadsOn(frame))
    ? null
    : plain('nextCheck')(tags, frame);
/** "So then, what can I take it to": two words that ask nothing where the question goes on. */
const leadsOn = (frame: Frame): boolean => /^then,? what$/i.test(frame.wordsOf(frame.span));
const SHOULD = /\b(?:should|supposed|ought|target|that|so)\b/i;

/** "How come suction's so low, it's down to two": what it is down to is that quantity's. */
const speakingOf: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const causes = plain('causes')(tags, frame);
  return quantity === null ? causes : { ...causes, speaksOf: quantity };
};

/** What is behind it, what to look at next, and where an answer came from. */
/** "What would cause high head" asks in general, "why is the high head" of this one. */
const inGeneral: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const named = quantityId(tags['quantity']);
  const isLow = /\blow\b/i.test(words);
  if (/^why\b/i.test(words) || isUnderAnother(frame)) return plain('causes')(tags, frame);
  if (named === 'headPressure' && !isLow) return ask({ ask: 'guide', about: 'highHead' });
  if (named === 'suctionPressure' && isLow) return ask({ ask: 'guide', about: 'lowSuction' });
  return plain('causes')(tags, frame);
};

/** "Low suction and high superheat" together are no single reading. */
const isUnderAnother = (frame: Frame): boolean =>
  ['and', 'with', 'but'].includes(wordBehind(frame));

/** "Suction eight, evap's iced up why": the last word of what was told. */
const askedLast: Means = (tags, frame) => {
  const { from, to } = frame.span;
  const isLast = from > 1 && frame.wordsOf({ from: to, to: to + 1 }) === '';
  return isLast &&
    !/\b(?:know|see|sure|wonder|wondering|me|that's|is|tell|idea)$/i.test(
      frame.wordsOf({ from: 0, to: from }),
    )
    ? plain('causes')(tags, frame)
    : null;
};

/** "Tell me how" asks for the working, "tell me how many amps it should draw" does not. */
const isAsked = (frame: Frame): boolean =>
  ['', 'you'].includes(wordBehind(frame)) || !/\bhow$/i.test(frame.wordsOf(frame.span));

/** What may be behind a reading beside the parts. */
const BLAMED =
  '(charge|gas|refrigerant|dirt|grease|cottonwood|lint|air flow|airflow|air|load|heat|weather|ice|frost|something else)';
const OF_EITHER = '[(just|from|because of)] <the> [(dirty|plugged|bad|dead|weak|iced [up])]';
const MATTER = '[(problem|issue|thing)]';

export const REASON_QUESTIONS: readonly Rule[] = [
  rule(
    '((does|do you see|do you think) [anything] [(look|looks)]|do you|anything|does anything|do any of (these|those|my (numbers|readings))) (look|looks|see|seem|looking) [(anything|a little|kind of)] (off|wrong|funny|odd|bad|out of (line|whack|place)) [(to you|here|with this|with it|on this)]',
    plain('causes'),
    { examples: ['does anything look off', 'anything look wrong'] },
  ),
  rule('[do you] see (anything|something) (wrong|off|funny|odd|bad|out of line)', plain('causes'), {
    examples: ['see anything wrong'],
  }),
  rule(
    '(am i|are we|is this|is that|could (this|that) be|do i have|have i got|is there|would that be|do you think (it|this) is|does that (look|sound) like) [(just|maybe|a|an|the|some)] <cause> [or (is (it|that)|am i|do i have|not|just|a|an|maybe) [(a|an)] [<cause:other>]]',
    plain('causes'),
    { examples: ['am i low on charge or is that a restriction'] },
  ),
  heardRule(
    '(what (is|would be|could be) causing (this|that|it)|~what is (wrong|the problem|going on|the matter) [(with it|with this|here)]|~what (could|would|might) (cause|be causing|make it do) (this|that|it)|~why is (it|that|this) (high|low|so high|so low|off|happening|doing that|doing this|tripping|warm|not cooling)|~what do you (think|figure|reckon|suppose) [(it is|is wrong|is going on|the problem is|is causing (this|that|it)|is the matter)] [with (it|this)]|~what are the (likely|possible) causes|~any ideas|~what (could|can|might|else could|else might) (it|this|that) be|~what else could cause (it|this|that)|~diagnose (it|this|that|the unit)|~what is your (diagnosis|guess|best guess|take)|~what is (likely|the likely cause|the cause|the most likely [cause]|causing the problem|making it do (that|this))|~why is it doing (that|this)|~why will it not (cool|start|run|hold temp)|~any idea (what is wrong|why)|~what do you make of (it|this|that)|~what am i looking at|~possible causes|~likely causes|~what are we looking at|~what is (up|wrong) with (it|this|that|her) [(thing|one|unit)]|~what gives|~what happened|~what (is|does|do) (this|that|it|those|these) [all] (tell (you|me|us)|mean|say to you|point (to|at)))',
    plain('causes'),
    {
      examples: ['what is causing this', 'why is it so high'],
    },
  ),
  rule(
    `(why is|what makes|what would make|what causes|what could cause|why are|what is making|why would|why does|what could make|how come) ${MY} <asked> [(is|be|to be|run|running|to run|go|read|sitting|staying)] [(so|too|that|really|this|a|way|still|all the way|clear)] (high|low|off|up|down) [(there|here)]`,
    speakingOf,
    {
      examples: ['why is head so high', 'how come head is way up there'],
    },
  ),
  rule(
    '[(do you|would you|did you|you)] (want me to|should i|suggest i|have me) [(go|start by|start with)] (check|look at|test|start with|meter|ohm|checking|looking at) <clause>',
    plain('nextCheck'),
    { examples: ['do you want me to check the fan or the coil first'] },
  ),
  rule(
    '(is (it|this|that)|could it be|do you think it is) <the> <part> or <the> (charge|gas|refrigerant|<part:other>|something else)',
    plain('causes'),
    { examples: ['is it the txv or the charge'] },
  ),
  rule(
    `[so] (is (it|this|that)|was (it|that)|could (it|that) be|would (it|that) be|do you think (it|that) is) ${OF_EITHER} (<part>|${BLAMED}) ${MATTER} or [is it] ${OF_EITHER} (<part:other>|${BLAMED}) ${MATTER} [(doing|causing|making it do) (this|that|it)]`,
    plain('causes'),
    { unheard: true, examples: ['is that the fan or the dirt doing that'] },
  ),
  rule(
    '(why|how come) (do|would|did|are) you (say|saying|think|want|wanting|figure|tell me|call|calling) <clause>',
    ofANumber,
    { examples: ['why do you say it should be one seventy four'] },
  ),
  rule('[but] (why|how come) [(is it|at)] <amount>', plain('working'), {
    alone: true,
    examples: ['why one seventy four'],
  }),
  rule(
    '(where|how) (did|would|does) [(the|that)] <amount> (come from|get figured|get worked out)',
    plain('working'),
    { examples: ['where did one eighteen come from'] },
  ),
  rule(
    '((do i have|have i got|is there|does it have|has it got) enough (gas|refrigerant|charge|freon) [(in (it|there|here|this)|on it)]|(how is|is) (my|the) (charge|gas) [(look|looking|right|ok|good|low|high|off)])',
    plain('causes'),
    { examples: ['do i have enough gas in there'] },
  ),
  rule('(could|might) (it|that|this) [just] be <the> [bad] <part>', plain('causes'), {
    alone: true,
    examples: ['could it be the txv'],
  }),
  rule(
    '(is it|could it be|could it just be|do you think it is) [(a|an|the|some)] <cause> [or (is (it|that)|not|just|a|an|maybe) [(a|an)] [<cause:other>]]',
    plain('causes'),
    {
      examples: ['is it low on charge', 'could it be a restricted drier'],
    },
  ),
  rule('how come <clause>', ofOurs, {
    unheard: true,
    examples: ['how come the compressor is hot'],
  }),
  rule('(why|how come) (is|was|does|did|do|will|would|has) <clause>', ofOurs, {
    examples: ['why will not the compressor start'],
  }),
  rule(
    '(why|how come) [(is|does|did|will|would|do|has)] [not] (it|this|she|that thing) [(is|does|will|keeps|kept|has been|been|to|not|have|has)] [not] [(keep|start|stay)] (short cycling|short cycle|tripping|trip|icing up|icing|ice up|freezing up|freeze up|freezing|running (warm|hot|long|all the time)|run|running|start|starting|cool|cooling|leaking|leak|making noise|flooding|starving|low on (gas|charge|refrigerant)|cycling|hunting|pulling down|pull down|hold temp|holding temp)',
    plain('causes'),
    { examples: ['why is it short cycling'] },
  ),
  rule(
    `(why|how come) (do|does|am|is|are) (i|it|we|there|you) [not] [(have|got|getting|have got|get|show|showing)] (no|so much|so little|low|high|too much|any|that much|a lot of) <asked>`,
    plain('causes'),
    { examples: ['why do i have no superheat'] },
  ),
  rule('<pause> (why|how come|any idea why|what gives)', plain('causes'), {
    examples: [],
  }),
  rule('(why|how come|any idea why|what gives)', askedLast, { examples: [] }),
  rule('(why|why is that|how come|why so (high|low))', plain('causes'), {
    alone: true,
    examples: ['why'],
  }),
  rule(
    `(why is|what makes|what would (make|cause)|what causes|what could cause) [(a|the)] (high|low) <asked>`,
    inGeneral,
    { examples: ['what causes high head pressure'] },
  ),
  rule(
    `(what (does|would) [(a|the|my|this|that)] (high|low|zero|no) <asked> [(with|and|but) [(a|the)] (high|low|zero|no) <asked:second>] (mean|tell (me|you|us)|point (to|at)|indicate)|what is [(a|the|my|this|that)] (high|low) <asked> (telling|tell) (me|you|us)|what does it mean (when|if) ${MY} <asked> is [(so|too|that|really)] (high|low|up|down|zero))`,
    plain('causes'),
    { unheard: true, examples: ['what does high superheat mean'] },
  ),
  heardRule(
    '(what should i check next|~what (do i|should i|would you|should we) (check|look at|do|try|measure|test|be checking|be looking at|be doing|be measuring|be testing) [(next|now|first)]|~what is next|~what next|~what is the next (check|step|thing)|~next (check|step)|~where (do|should|would) i (go|look|test|check|measure|start looking) (next|from here|now|first)|~what (test|tests|check|checks) (should|do|would) (i|you) (do|run|make|start with) [(next|now|first)]|~what is the (next|first) (thing|test|place) to (check|do|look at|test|try|measure|look)|~where (do|should|would) i (put|stick|place) (the|my) (leads|meter|probes|meter leads|test leads|clamp) [(next|now)]|~what (do|would) you (need|want) [(from me|to know|next|me to (check|measure|do|read|look at))]|~what (reading|readings|number|numbers) (do you|are you) (need|missing|want)|~what (am i|are you|are we) missing|~what (should|do) i (get|read|give you|take) [(next|now)]|~where to [next]|~what now|~now what|~so what now|~what then|~then what|~what else (should|can|do|would) (i|you|we) (check|look at|test|try|do)|~what to (check|do|look at|test|measure) [(next|now|first)]|~what comes next|~where (do|should) i (start|begin))',
    nextCheck,
    {
      examples: ['what should i check next'],
    },
  ),
  rule(
    '[so] (next|next one|next step|and next|and now|what about now|and then what|now then what|what after that|and after that)',
    plain('nextCheck'),
    { alone: true, unheard: true, examples: ['and now'] },
  ),
  heardRule(
    '(where does that number come from|~where (did|do|does|would) (that|you|this|it|those) [(number|numbers)] (get that|come from|get [that] number)|~where (did|would|do) you come up with (that|it|this) [number]|~how (did|do|would|are) you (get|getting|figure|calculate|work out|know|come up with) (that|it|this) [number]|~(show|tell|explain) [me] (your work|the math|your math|how)|~says who|~what is that based on|~where is (that|this) [number] from|~where are (those|these) [numbers] from|~where (do|did) (those|these) [numbers] come from|~how is (that|this|it) worked out|~how did that (come out|get figured)|~what is the (formula|math|equation|source)|~what are you (basing|going by) [that] [on]|~according to (what|who)|~how is (that|this|it) (calculated|figured|worked out)|~how do you figure|~how would you figure|~how so|~prove it|~who says|~where did you find (that|it)|~how do you know|~why that number|~what formula|~explain that)',
    plain('working'),
    { only: isAsked, examples: ['where does that number come from', 'how did you get that'] },
  ),
];
