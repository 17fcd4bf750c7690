import type { QuantityId } from '../../terms/quantities.ts';
import { startsClause, wordBehind } from '../words/clause-start.ts';
import { heardRule, type Means, type Rule, rule } from '../rule.ts';
import { tagsIn } from '../slots.ts';
import { supposedIn } from './supposed.ts';
import { isNotTold, standsByItself } from './told-behind.ts';
import { aboutIn, ask, askOfThat, MY, TELL, TODAY } from './asking.ts';

const about =
  (kind: 'target' | 'value' | 'compare'): Means =>
  (tags, frame) => {
    const about = aboutIn(tags);
    const supposed = about === null || kind !== 'target' ? null : supposedIn(about, tags, frame);
    return ask(supposed === null ? { ask: kind, about } : { ask: 'target', about, supposed });
  };

const NOW =
  '[~(now|right now|at|at now|currently|reading|at right now|again|i gave you|i told you|i said|you got|you have|here)]';
/** Whether it is as it should be. */
const RIGHT =
  '(high|low|ok|good|normal|right|all right|where it (should|needs to|ought to) be|in range|off|fine|close|too high|too low|high or low|on target|in line|about right|bad|any good|[(good|cold|warm|hot|high|low)] enough|where it is (supposed|meant) to be|too (cold|warm|hot|much)|acceptable|reasonable|up to par|way (off|high|low|up)|in spec|out of range|out of line|where (i|we|you) (want|need) it|out of whack)';

/** Two quantities in one question are two questions. */
const aboutBoth =
  (kind: 'target' | 'value' | 'compare'): Means =>
  (tags, frame) => {
    const second = aboutIn(tagsIn(tags['second']) ?? {});
    const first = aboutIn(tags);
    if (first === null || second === null || !isNotTold(frame)) return null;
    return { questions: [first, second].map((each) => ({ ask: kind, about: each })) };
  };

/** What it is, and what it should be: of the one quantity that was named. */
const isAndShould: Means = (tags) => {
  const named = aboutIn(tags);
  return named === null
    ? null
    : {
        questions: [
          { ask: 'value', about: named },
          { ask: 'target', about: named },
        ],
      };
};

const SATURATED: Partial<Record<QuantityId, QuantityId>> = {
  headPressure: 'condensingTemp',
  suctionPressure: 'evaporatingTemp',
};

/** A pressure last spoken of, as the temperature that it boils or condenses at. */
const saturatedLast: Means = (_tags, { context: { lastQuantity } }) => {
  const about = lastQuantity === null ? undefined : SATURATED[lastQuantity];
  return about === undefined ? null : ask({ ask: 'value', about });
};

const valueOf =
  (quantity: QuantityId): Means =>
  () =>
    ask({ ask: 'value', about: quantity });

/** "Is it okay if I move the beer" asks nothing of a reading. */
const OF_ELSE = /^(?:if|to|there|that|when|with|pressure|side|head|limit|end)$/;

/** What something should be, what it is, and how far apart the two are. */
export const VALUE_QUESTIONS: readonly Rule[] = [
  rule(
    `(what is|how is|where is|tell me|give me) ${MY} <asked> [at] and (what|where) (should|would|ought) (it|that) [to] be [at]`,
    isAndShould,
    { examples: ['what is my subcooling and what should it be'] },
  ),
  heardRule(
    `(what|where) (should|~ought|~must|~would|~does) ${MY} <asked> [~(to|need to|have to|want to)] (be|~run|~read|~sit) [~(at|running|sitting at|reading|right now|here|on this|at right now|today|with this weather)]`,
    about('target'),
    { examples: ['what should head be', 'where should my head be at'] },
  ),
  rule(
    `what (should|would) (i|we) (have|see|expect|be seeing|be getting|be looking for|get|look for|want) (for|on|in|at) ${MY} <asked>`,
    about('target'),
    { examples: ['what should i see for suction'] },
  ),
  rule(
    `(what is|what is a|what is the|give me the|give me a|i need (a|the|my)|what would be a|tell me the|and the|what is my) (target|normal|good|right|proper|ideal|correct|expected) <asked> [(on|for) [a] <refrigerant>]`,
    about('target'),
    { examples: ['what is the target suction'] },
  ),
  rule(
    `(what|what kind of|what sort of|which|how much|how many degrees [of]) <asked> (should (i|we|you|it|this)|am i supposed to|do (i|we|you) want to|would you|must (i|it)|can i|does (it|this)) (have|see|expect|want|be at|look for|be seeing|be running|run|be|get|need|like)`,
    about('target'),
    {
      examples: ['what superheat should i have', 'how much subcooling should i have'],
    },
  ),
  rule(
    `what (am i|are we|should i be|would i be|do i) (looking|look|shooting|shoot|aiming|aim|hoping) for (on|for|with|in|at) ${MY} <asked>`,
    about('target'),
    { examples: ['what am i looking for on the head'] },
  ),
  rule(
    `[the] <asked> ([it] (should|ought to|needs to|has to|must) be|[is] supposed to be|supposed to run) [at] what`,
    about('target'),
    { examples: ['suction should be what'] },
  ),
  rule(
    `(where|what) (do|would|should|can|must) (i|we|you) (want|like|need|expect|get|bring|run|keep|have|set) ${MY} <asked> [(to be [at]|at|be [at]|to)]`,
    about('target'),
    { examples: ['where do i want my suction'] },
  ),
  rule(
    `[${TELL}] (what|where|how high|how low) ${MY} <asked> (should be|is supposed to be|ought to be|needs to be|has to be) [at] ${TODAY}`,
    about('target'),
    { examples: ['tell me what head should be'] },
  ),
  rule(
    `(what|where) is ${MY} <asked> (supposed to|meant to) (be|run|sit) [at] ${TODAY}`,
    about('target'),
    { examples: ['what is head supposed to be today'] },
  ),
  rule(
    `what (should|would|do) (i|we|you) (be (running|seeing|getting|at|looking at)|want to (see|have|be at|get)|like to see|expect to see) (for|on|in|at|with) ${MY} <asked> ${TODAY}`,
    about('target'),
    { examples: ['what should i be running for head pressure today'] },
  ),
  rule(
    `(give me|i need|what is|get me|have you got) (a|the|my) (target|goal|number) (for|on) ${MY} <asked>`,
    about('target'),
    { examples: ['give me a target for suction'] },
  ),
  rule(
    `(what|where) should ${MY} <asked> and ${MY} <asked:second> be [at] ${TODAY}`,
    aboutBoth('target'),
    { examples: ['what should head and suction be'] },
  ),
  rule(
    `(what is|what are|give me|tell me|calculate|~read me [back]|~read back|~what (was|were)) ${MY} <asked> and ${MY} <asked:second>`,
    aboutBoth('value'),
    {
      examples: ['what is my superheat and subcooling'],
    },
  ),
  rule(
    `(how far off is|how far off are|how is|how are) ${MY} <asked> and ${MY} <asked:second>`,
    aboutBoth('compare'),
    {
      examples: ['how far off is head and suction'],
    },
  ),
  rule(
    'what should [(the|my|those|these)] [(compressor|motor)] (windings|winding) (read|ohm [out]|be|measure|show) [(at|like)]',
    () => ask({ ask: 'target', about: 'resistance' }),
    { examples: ['what should the windings read'] },
  ),
  rule(
    '(what is|give me|have you got|i need) (my|the|a) target',
    () => ask({ ask: 'target', about: null }),
    {
      examples: ['what is my target'],
    },
  ),
  rule(`[the] <asked> (where|what) (should|ought|must) it [to] be [at]`, about('target'), {
    examples: ['head where should it be'],
  }),
  rule(
    `how (high|low|cold|warm|hot|much) (should|must|ought) (${MY} <asked> [to] (be|run|get|go)|be ${MY} <asked>)`,
    about('target'),
    { examples: ['how high should head be'] },
  ),
  rule(
    `(what|which) (value|pressure|number|temperature|temp) (should|must) ${MY} <asked> (have|be|show)`,
    about('target'),
    { examples: ['what value should the suction have'] },
  ),
  rule(
    `(what|which) (value|pressure|number|temperature|temp) (should|must) (have|be) ${MY} <asked>`,
    about('target'),
  ),
  rule(
    `(what|where) (is|should) <the> (evaporator|evap|coil) [supposed to] (be|run|sit) at`,
    () => ask({ ask: 'target', about: 'evaporatingTemp' }),
    { examples: ['what is the evaporator supposed to run at'] },
  ),
  rule(
    `([what is] [(the|my)] (target|ideal|goal)|[(the|my)] normal) [for] <asked> ${TODAY}`,
    about('target'),
    {
      only: standsByItself,
      examples: ['target superheat', 'what is my target head at ninety two ambient'],
    },
  ),
  rule(`(what is|what are) [(the|my)] <asked> target`, about('target'), {
    examples: ['what is my suction target'],
  }),
  rule(`[(what is|what are)] [(the|my)] <asked> (target|goal)`, about('target'), {
    alone: true,
    examples: ['superheat target'],
  }),
  rule(
    `(what <asked>|which <asked>|how much <asked>|how (high|low) a <asked>) ((am i|are we) (after|looking for|shooting for|aiming for|wanting)|is (normal|good|right|ok|enough|typical|correct|usual) [(here|for this|on this|on this unit|on this one)]|do (i|we|you) (want|need)|should (i|we) be getting)`,
    about('target'),
    { examples: ['what superheat do i want'] },
  ),
  rule(
    `(what do (you|i|we) (want|need|like)|what would you (want|like|expect)|what (should|do) i (shoot|look|aim) for) [(for|on|with)] ${MY} <asked>`,
    about('target'),
    { examples: ['what do you want for subcooling'] },
  ),
  rule(
    `what is (normal|good|typical|right|the right [number]|a (good|normal|decent) [(number|value|reading)]|the (target|goal|number)) (for|on) ${MY} <asked> [here]`,
    about('target'),
    { examples: ['what is normal for condensing temp'] },
  ),
  rule(
    `(what is|what would be) a (good|normal|decent|healthy|proper) <asked> [(here|for this|on this|on this unit|for this unit|today)]`,
    about('target'),
    {
      examples: ['what is a good head pressure here'],
    },
  ),
  // "Is eight degrees enough?" tells no reading: it asks what is right.
  rule(`(is|would|are) <amount> (of|on|for) ${MY} <asked> ${RIGHT}`, about('compare'), {
    examples: ['is eight degrees of superheat enough'],
  }),
  rule(`(is|would) (a|an) <amount> <asked> [be] ${RIGHT}`, about('compare'), {
    examples: ['is a seventy degree split bad'],
  }),
  rule(
    `(is|would) <amount> [be] (high|low|good|ok|normal|right|much|a lot|[a little] too (much|high|low)) (for|on) ${MY} <asked>`,
    about('compare'),
    {
      examples: ['is two hundred high for head'],
    },
  ),
  rule(
    `(is|would) <amount> [be] (a|an) (normal|good|high|low|decent|bad|ok|typical|reasonable) <asked> ${TODAY}`,
    about('compare'),
    { examples: ['is one eighty four a normal head'] },
  ),
  rule('what should (it|that|this) be [at]', () => ask({ ask: 'target', about: null }), {
    examples: ['what should it be'],
  }),
  heardRule(`what is ${MY} <asked> ${NOW}`, about('value'), { examples: ['what is my superheat'] }),
  rule(
    `((what (does|would|is|did|will) that (make|put)|where (does|is|did) that put) ${MY} <asked> [at]|what (does|did|would) ${MY} <asked> (come|work|figure) [out] (to|at))`,
    about('value'),
    { examples: ['what does that make my condensing temp'] },
  ),
  rule(
    '[and] what (is|does) (that|it|this) [come to] (in|as|at) [a] (saturation|saturated|saturation (temp|temperature)|degrees|temperature|temp)',
    saturatedLast,
    { examples: [] },
  ),
  rule(
    `(is|would|are) <amount> [(after|in|for) <duration:after>] (any good|good|ok|okay|bad|too (high|low|warm|cold|hot|much)|high|low|warm|hot|cold|normal|about right|right|fine|all right|acceptable|enough|a good number|where (i|it) should be)`,
    (_tags, frame) => (startsClause(frame) ? ask({ ask: 'compare', about: null }) : null),
    { examples: ['is four ninety after ten minutes any good'] },
  ),
  rule(
    'how much [(gas|refrigerant|freon|of it|<refrigerant>)] (is|have i got|have we got|do i have|do we have|do i still have|is still) [still] left [over] in [(the|this|my|that)] [(recovery|refrigerant|gas|virgin|<refrigerant>)] (jug|tank|cylinder|bottle|drum)',
    valueOf('cylinderWeight'),
    { examples: ['how much is left in the jug'] },
  ),
  rule(`(say|repeat|run) ${MY} <asked> [(number|reading)] (again|by me)`, about('value'), {
    unheard: true,
    examples: ['say the superheat again'],
  }),
  rule(`[the] (last|latest|current|present) <asked>`, about('value'), {
    alone: true,
    examples: ['last box temp'],
  }),
  rule(`what (is|was) ${MY} (last|latest|current|actual|present) <asked> ${NOW}`, about('value'), {
    examples: ['what is the last head i gave you'],
  }),
  rule(
    `what (did|do|have|would) (i|we|you) (say|have|read|tell you|put [down]|write [down]) ${MY} <asked> (was|is|at|were|as) [at]`,
    about('value'),
    { examples: ['what did i say the box was'] },
  ),
  rule(
    `[(can you|could you|do you|will you)] (tell me|remind me|remember|know|recall|read me) what (i|we|you) (said|had|have|put [down]|wrote [down]|told you|gave you|got) [(for|that)] ${MY} <asked> [(was|is|were)]`,
    about('value'),
    { examples: ['can you tell me what we said the box was'] },
  ),
  rule(
    `(what are|what was|give me|tell me|how much is|how much|what do i have for|calculate|figure|work out|read me|read [me] back|show me|remind me of|what have i got for|what did i get for) ${MY} <asked> ${NOW}`,
    about('value'),
    {
      examples: ['give me the subcooling'],
    },
  ),
  rule(
    `what <asked> (have i got|do i have|have we got|am i (at|getting|running|seeing|reading)|did (i|we|you) (get|give you|say|read|have|write [down]|put [down]|take)|do you (have|show))`,
    about('value'),
    { examples: ['what superheat have i got'] },
  ),
  rule(
    `what (did i|did we|have i|do we|do you|have you|did you|would i|would we|would you|are you) (say|said|give you|given you|tell you|told you|get|got|have|put|put down|read|show|showing|write down) (for|on|as) ${MY} <asked>`,
    about('value'),
    { examples: ['what did i say for head'] },
  ),
  rule(
    `(where is ${MY} <asked> [(at|sitting|running|now|right now)]|where (am i|are we|am i sitting) (on|with|at on|at with) ${MY} <asked>)`,
    about('value'),
    {
      examples: ['where is my head at'],
    },
  ),
  rule(
    '(what|what (temperature|temp)|where) (am i|are we|is it) condensing [at]',
    valueOf('condensingTemp'),
    {
      examples: ['what am i condensing at'],
    },
  ),
  rule(
    '(what|what (temperature|temp)|where) (am i|are we|is it) (evaporating|boiling) [at]',
    valueOf('evaporatingTemp'),
    {
      examples: ['what am i evaporating at'],
    },
  ),
  heardRule(
    '(how far off am i|am i (high|low)|is that normal)',
    () => ask({ ask: 'compare', about: null }),
    {
      examples: ['how far off am i', 'am i high', 'is that normal'],
    },
  ),
  rule(
    '(how far off (is that|is it|are we|is this|~~are (those|these|they))|~~how are (those|these|they) looking|~~how do (those|these|they) (look|compare)|~~are (those|these|they) (ok|good|alright|all right|right|normal|high|low|in line|where they should be)|how is (that|it|this) looking|is (it|this) (normal|right)|is (that|it|this) (ok|good|alright|high|low|in line|about right|too high|too low|all right|where it should be|in range|bad)|how does (that|it) look|how am i (doing|looking)|am i (close|ok|good|running high|running low|in range|on target|too high|too low|off)|is that right|how does (that|it|this) compare|how do (i|we) (look|compare)|how (much|far) (over|under|high|low|above|below|out) (am i|are we|is it|is that)|how (high|low) am i|what is the difference|am i (high or low|over or under|above or below)|how close am i|(am i|is it|is that) (in the ballpark|~in the ball park|in the neighborhood|anywhere close|about right|on the money|where i should be|where i need to be)|(is|are) (it|that|this|they) supposed to be (that|this|so) (high|low|hot|cold)|(is that|is it) where it (should|needs to) be|[(does|do)] (that|this|it|those|these|they) (look|sound|seem) (right|good|ok|normal|about right|high|low) [to you])',
    (tags, frame) => (OF_ELSE.test(wordBehind(frame)) ? null : askOfThat('compare')(tags, frame)),
    {
      examples: ['is it normal'],
    },
  ),
  rule(
    '(what (should|ought|would) (it|that|they|those|these|this) [(both|all)] [to] be [(at|around|running|reading)]|what (is|are) (it|that|they|those|these|this) supposed to be [at]|where should (it|that|they|those) be)',
    askOfThat('target'),
    { examples: ['what should they be', 'what is it supposed to be'] },
  ),
  heardRule(`how far off is ${MY} <asked>`, about('compare'), {
    examples: ['how far off is my condensing'],
  }),
  rule(
    `(we|you|i|it is|are we|are you) (good|ok|all right|close|in range|in line|where we (need|want) to be) (on|with|for) ${MY} <asked>`,
    about('compare'),
    { examples: ['we good on the box temp'] },
  ),
  rule(
    `(am i (high|low|high or low|over or under|good|ok|close|off|too high|too low)|how (am i|are we|we|i) [(doing|looking)]|how close am i|how do i look|how (much|far) (over|under) am i) (on|with|for) ${MY} <asked>`,
    about('compare'),
    { examples: ['am i high or low on the head'] },
  ),
  rule(
    `how (much|far) is ${MY} <asked> (off|over|under|high|low|out|above|below)`,
    about('compare'),
    {
      examples: ['how much is the suction off'],
    },
  ),
  rule(`how (bad|good|high|low|wrong|far off) (is|are) ${MY} <asked>`, about('compare'), {
    examples: ['how bad is the head'],
  }),
  rule(
    `[(should|do) (i|we)] ((be worried|worry|be concerned|need to worry|worried) about|is there (anything wrong|a problem|something wrong|something off) with|what do you (think|make) (of|about)|any (problem|concern|concerns) with|what about) ${MY} <asked>`,
    about('compare'),
    { examples: ['should i be worried about that superheat'] },
  ),
  rule(
    `how (deep|low|far [down]) (should|do|would) (i|we|you) (pull|take|go|vacuum|evacuate|want) [(it|down|the vacuum|this|the system)] [(to|down|down to)]`,
    () => ask({ ask: 'target', about: 'vacuum' }),
    { examples: [] },
  ),
  rule(
    `how (far|close|near|much) (is|are) ${MY} <asked> (from|to|above|below|over|under|off) [(the|my|it is)] (target|normal|right|goal|where (it|they) (should|needs to|ought to) be|what it (should|ought to) be)`,
    about('compare'),
    { examples: ['how far is suction from where it should be'] },
  ),
  rule(
    `how (far|much|close) (above|below|over|under|to|from|off) [of] [(the|my)] target (is|are) ${MY} <asked>`,
    about('compare'),
    { examples: ['how far above target is the head'] },
  ),
  rule(
    `[the] <asked> [(is|it is)] (good or bad|good or not|ok or not|high or low|normal or not|too high or too low)`,
    about('compare'),
    { examples: ['head is good or bad'] },
  ),
  rule(
    `how (much|far) (over|under|high|low|off|out|above|below) is ${MY} <asked>`,
    about('compare'),
    {
      examples: ['how far under is my suction'],
    },
  ),
  rule(
    `((does|do) ${MY} <asked> (look|sound|seem) ${RIGHT} [to you]|${MY} <asked> (look|looking|seem|sound|good|ok) [${RIGHT}] to you|is (that|this|it) (a|an|the) (good|normal|ok|decent|right|healthy|bad|high|low) <asked>)`,
    about('compare'),
    {
      examples: ['does my head look right'],
    },
  ),
  rule(`how far off (am i|are we) (on|with|for) ${MY} <asked>`, about('compare'), {
    examples: ['how far off am i on suction'],
  }),
  rule(`(how is|how does|how are) ${MY} <asked> [(looking|look|doing|compare)]`, about('compare'), {
    examples: ['how is my suction looking'],
  }),
  rule(
    `(is|are) ${MY} <asked> [(too|running|a little|a bit|looking|still|way|really)] ${RIGHT} [(now|here|today|for this|for you|(for|at|in|with) <amount>)]`,
    about('compare'),
    {
      examples: ['is my head too high'],
    },
  ),
];
