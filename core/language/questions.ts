import type { AnswerableId, QuantityId } from '../terms/quantities.ts';
import { amountIn, unitFor } from './measure.ts';
import { heardRule, type Means, type Rule, rule } from './rule.ts';
import { answerableId, placeId, quantityId, refrigerantId } from './slots.ts';
import type { PlainQuestion, Question, SafetyTopic } from './utterance.ts';

const ask = (question: Question): { readonly questions: readonly Question[] } => ({
  questions: [question],
});

const plain =
  (kind: PlainQuestion): Means =>
  () =>
    ask({ ask: kind });

/** What a question is about: a quantity, or one of those that are only ever answered. */
const aboutIn = (tags: Parameters<Means>[0]): AnswerableId | null =>
  answerableId(tags['derived']) ?? answerableId(tags['quantity']);

const about =
  (kind: 'target' | 'value' | 'compare'): Means =>
  (tags) =>
    ask({ ask: kind, about: aboutIn(tags) });

/** How near a pressure is to the control that watches it. */
const CUTOUT_OF: Partial<Record<AnswerableId, QuantityId>> = {
  headPressure: 'highCutoutPressure',
  condensingTemp: 'highCutoutPressure',
  suctionPressure: 'lowCutoutPressure',
};

const margin: Means = (tags, frame) => {
  const named = aboutIn(tags) ?? frame.context.lastQuantity ?? 'headPressure';
  return ask({ ask: 'margin', about: CUTOUT_OF[named] ?? named });
};

/** A saturation is asked by a temperature or by a pressure: without a unit it could be either. */
const saturation: Means = (tags, frame) => {
  const amount = amountIn(tags);
  if (amount.value === null) return null;
  const { units } = frame.context;
  const said = amount.unit ?? (tags['as'] === 'temperature' ? 'degrees' : null);
  const loose = said ?? (tags['as'] === 'pressure' ? (units === 'us' ? 'psi' : 'bar') : null);
  if (loose === null) return null;
  const unit = unitFor(loose, 'temperature', units) ?? unitFor(loose, 'gaugePressure', units);
  if (unit === null) return null;
  const value = unit === 'inHg' ? 0 - Math.abs(amount.value) : amount.value;
  return ask({ ask: 'saturation', value, unit, refrigerant: refrigerantId(tags['refrigerant']) });
};

const switchOpen: Means = (tags) => {
  const place = placeId(tags['place']);
  return place === null ? null : ask({ ask: 'switch', about: place });
};

const limit =
  (topic: 'testPressure' | 'cylinderFill' | 'charge'): Means =>
  () =>
    ask({ ask: 'limit', about: topic });

const safety =
  (topic: SafetyTopic): Means =>
  () =>
    ask({ ask: 'safety', about: topic });

const eta: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  if (quantity === null) return null;
  const { value, unit: said } = amountIn(tags);
  if (value === null) return ask({ ask: 'eta', about: quantity });
  const unit = unitFor(said ?? 'degrees', 'temperature', frame.context.units);
  return unit === null ? null : ask({ ask: 'eta', about: quantity, value, unit });
};

const trend: Means = (tags) => ask({ ask: 'trend', about: quantityId(tags['quantity']) });

const MY = '[(my|~the|~our|~your|~a|~this)]';
const NOW = '[~(now|right now|at|at now|currently|reading|at right now|again)]';
const ON = '[(on|~for|~with|~of|~in) [~the] <refrigerant>]';

/** What is asked, most specific first. */
export const QUESTION_RULES: readonly Rule[] = [
  heardRule(
    `what should ${MY} <asked> be [~(at|running|sitting at|reading|right now|here|on this|at right now)]`,
    about('target'),
    {
      examples: ['what should head be', 'what should my suction be'],
    },
  ),
  rule(`where should ${MY} <asked> be [(at|running|sitting)]`, about('target'), {
    examples: ['where should head be'],
  }),
  rule(
    `what (should|would) (i|we) (have|see|expect|be seeing|be getting|be looking for|get|look for|want) (for|on|in|at) ${MY} <asked>`,
    about('target'),
    {
      examples: ['what should i see for suction'],
    },
  ),
  rule(
    `(what is|what is a|what is the|give me the|give me a|what would be a|tell me the|and the|what is my) (target|normal|good|right|proper|ideal|correct|expected) <asked>`,
    about('target'),
    {
      examples: ['what is the target suction'],
    },
  ),
  rule(
    `what <asked> (should i|am i supposed to|do i want to|would you) (have|see|expect|want|be at|look for)`,
    about('target'),
    {
      examples: ['what superheat should i have'],
    },
  ),
  rule(`what is ${MY} <asked> supposed to be [at]`, about('target'), {
    examples: ['what is head supposed to be'],
  }),
  rule('what should (it|that|this) be [at]', () => ask({ ask: 'target', about: null }), {
    examples: ['what should it be'],
  }),
  heardRule(`what is ${MY} <asked> ${NOW}`, about('value'), { examples: ['what is my superheat'] }),
  rule(
    `(what are|what was|give me|tell me|how much is|how much|what do i have for|calculate|figure|work out|read me|what have i got for|what did i get for) ${MY} <asked> ${NOW}`,
    about('value'),
    {
      examples: ['give me the subcooling'],
    },
  ),
  heardRule('how far off am i', () => ask({ ask: 'compare', about: null }), {
    examples: ['how far off am i'],
  }),
  rule(
    '(how far off (is that|is it|are we|is this)|how is (that|it|this) looking|is (that|it|this) (ok|good|normal|right|high|low|too high|too low|all right|where it should be|in range|bad)|how does (that|it) look|how am i doing|am i (close|high|low|ok|good))',
    () => ask({ ask: 'compare', about: null }),
    {
      examples: ['is that normal', 'how does that look'],
    },
  ),
  heardRule(`how far off is ${MY} <asked>`, about('compare'), {
    examples: ['how far off is my condensing'],
  }),
  rule(`how far off (am i|are we) (on|with|for) ${MY} <asked>`, about('compare'), {
    examples: ['how far off am i on suction'],
  }),
  rule(`(how is|how does|how are) ${MY} <asked> [(looking|look|doing|compare)]`, about('compare'), {
    examples: ['how is my suction looking'],
  }),
  rule(
    `is ${MY} <asked> [(too|running|a little|a bit)] (high|low|ok|good|normal|right|all right|where it should be|in range|off|fine)`,
    about('compare'),
    {
      examples: ['is my head too high'],
    },
  ),
  heardRule(`what is <amount> ${ON}`, saturation, {
    examples: ['what is one hundred degrees on two ninety'],
  }),
  rule(`what (pressure|psi) is <amount> ${ON}`, saturation, {
    tags: { as: 'temperature' },
    examples: ['what pressure is one ten on four oh four a'],
  }),
  rule(`what (temperature|temp) is <amount> ${ON}`, saturation, {
    tags: { as: 'pressure' },
    examples: ['what temperature is one forty six'],
  }),
  rule(
    `(what is the|what is|give me the|saturation|the) (saturation|saturation temp|saturated temperature|saturation temperature|saturation pressure|boiling point|pressure|temperature) (at|for|of) <amount> ${ON}`,
    saturation,
    {
      examples: ['what is the saturation temperature for one forty six psi'],
    },
  ),
  rule(
    '(saturation|convert|p t for|pt for) [(at|for|of)] <amount> [(on|for|with|of|in) <refrigerant>]',
    saturation,
    { examples: ['saturation at one ten degrees'] },
  ),
  rule('[for] <refrigerant> (at|what is) <amount>', saturation, {
    examples: ['two ninety at one hundred degrees'],
    alone: true,
  }),
  rule(
    '(what is the|what is|give me the|the) (saturation|saturation temp|saturation temperature|saturation pressure|boiling point) (for|of|on) <refrigerant> at <amount>',
    saturation,
    { examples: ['what is the saturation temperature for 404a at 50 psi'] },
  ),
  heardRule('how close is [(my|the)] <side> to [the] cut out', margin, {
    examples: ['how close is head to the cut out'],
  }),
  rule(
    `how close is ${MY} <asked> to [the] (cut out|~cutting out|~tripping|~switch|~limit|~high limit|~high pressure (cut out|switch|control)|~low pressure (cut out|switch|control)|~trip [point])`,
    margin,
    {
      examples: ['how close is head to tripping'],
    },
  ),
  rule(
    'how (close|near) (am i|are we|is it|is that|i am) [(getting|coming)] to [the] [high] [pressure] (cut out|cutting out|tripping|switch|limit|trip)',
    margin,
    { examples: ['how close am i to the cut out'] },
  ),
  rule(
    `how (far|close) (is|am i|are we) [${MY} <asked>] (from|to|off) [the] [high] [pressure] (cut out|cutting out|tripping|limit)`,
    margin,
    {
      examples: ['how far is head from the cut out'],
    },
  ),
  rule(
    'how much (room|margin) (is there|do i have|is left|have i got) [(to|before|until|on)] [the] [high] [pressure] [(cut out|it trips|tripping|it cuts out|limit)]',
    margin,
    { examples: ['how much room do i have before it trips'] },
  ),
  heardRule(
    'is [the] <place> (open|~closed|~tripped|~open or closed|~making|~stuck open|~made|~bad)',
    switchOpen,
    {
      examples: ['is the high pressure switch open'],
    },
  ),
  rule(
    '(did [the] <place> (open|trip|cut out)|has [the] <place> (opened|tripped)|which way is [the] <place>)',
    switchOpen,
    { examples: ['did the low pressure switch open'] },
  ),
  heardRule(
    '(what (is|would be|could be) causing (this|that|it)|~what is (wrong|the problem|going on|the matter) [(with it|with this|here)]|~what (could|would|might) (cause|be causing|make it do) (this|that|it)|~why is (it|that|this) (high|low|so high|so low|off|happening|doing that|doing this|tripping|warm|not cooling)|~what do you think [(it is|is wrong|is going on)]|~what are the (likely|possible) causes|~any ideas|~possible causes|~likely causes)',
    plain('causes'),
    {
      examples: ['what is causing this', 'why is it so high'],
    },
  ),
  rule(
    `(why is|what makes|what would make|what causes|what could cause|why are) ${MY} <asked> [(to be|be)] [(so|running|too|a|this)] (high|low|off)`,
    plain('causes'),
    {
      examples: ['why is head so high'],
    },
  ),
  rule(
    `(why is|what makes|what would make|what causes|what could cause) [(a|the)] (high|low) <asked>`,
    plain('causes'),
    { examples: ['what causes high head pressure'] },
  ),
  heardRule(
    '(what should i check next|~what (do i|should i|would you|should we) (check|look at|do|try|measure|test) [(next|now|first)]|~what is next|~what next|~what is the next (check|step|thing)|~next (check|step)|~where do i (go|look) (next|from here)|~what else should i check)',
    plain('nextCheck'),
    {
      examples: ['what should i check next'],
    },
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
  rule('(what is the|the) (max|maximum|highest) test pressure', limit('testPressure'), {
    examples: ['what is the maximum test pressure'],
  }),
  rule(
    'how (much|full) (can i|may i|will|can|should i|does) [(put in|fill|get in|recover into)] [(the|this|a|my)] [recovery] (cylinder|tank|bottle|drum|jug) [(be|hold|take|go)] [(filled|to)]',
    limit('cylinderFill'),
    { examples: ['how much can i put in the cylinder', 'how full can the tank be'] },
  ),
  rule(
    'how much (charge|refrigerant|gas|freon) (does (it|this|the unit) (take|hold|need|get)|can i (add|put in|charge)|should (it|this) (take|have|hold|get)|is (it|this) supposed to have)',
    limit('charge'),
    { examples: ['how much charge does it take'] },
  ),
  rule('how much can i (add|charge) [(it with|to it|in)]', limit('charge'), {
    examples: ['how much can i add'],
  }),
  rule(
    '(is it|is this|am i) (safe|ok|clear|good) to (braze|solder|use a torch|use the torch|light the torch|weld|torch) [(on [it|this]|this|it|here|now|this joint)]',
    safety('brazing'),
    { examples: ['is it safe to braze'] },
  ),
  rule(
    'can i (braze|solder|use a torch|use the torch|weld|torch) [(on [it|this]|this|it|here|now|this joint)]',
    safety('brazing'),
    { examples: ['can i braze this joint'] },
  ),
  rule(
    '(can i|is it safe to|is it ok to|am i ok to|am i good to|is this safe to) (open [up] (it|the system|this|the valve|the service valve|up)|cut into (it|the system)|open up|break into (it|the system))',
    safety('opening'),
    { examples: ['is it safe to open the system'] },
  ),
  rule(
    '(can i|is it safe to|is it ok to|am i good to|should i) (add [(gas|refrigerant|charge|some gas|some refrigerant|liquid)]|charge [(it|liquid|this|the system)]|top it off|put more in|charge liquid into the suction)',
    safety('charging'),
    { examples: ['is it safe to charge it'] },
  ),
  rule(
    '(can i|is it ok to|is it safe to|is it legal to|am i allowed to) (vent|release|let go|dump|blow off|purge) [(it|the refrigerant|the gas|this|the charge|refrigerant|this gas)]',
    safety('venting'),
    { examples: ['can i vent the refrigerant'] },
  ),
  rule(
    '(can i|is it safe to|is it ok to|should i) reset [(it|the switch|the high pressure switch|the control|the breaker|the overload|this)]',
    safety('resetting'),
    { examples: ['is it safe to reset it'] },
  ),
  rule(
    '(can i|is it safe to|is it ok to|am i good to|should i) (turn it (on|back on)|energize [it]|power it [(up|on|back up)]|start it [up]|turn the power [back] on|put power to it|run it)',
    safety('energising'),
    { examples: ['is it safe to turn it back on'] },
  ),
  rule(
    `when will ${MY} <quantity> (be|hit|reach|get to|get down to|be down to|be at|come down to|make|pull down to) [(at|down to)] <amount>`,
    eta,
    { examples: ['when will the box be at thirty six'] },
  ),
  rule(
    `how long (until|till|before|will it take|for) [(to get|for)] ${MY} <quantity> [(to|is|will|gets)] (be|hit|hits|reach|reaches|get to|gets to|at|down to|to|make|get down to|gets down to|comes down to) [(at|down to)] <amount>`,
    eta,
    { examples: ['how long until the box is at thirty six'] },
  ),
  rule(
    'how long (until|till|before) it (is|gets|hits|reaches|is down|gets down|comes down) [(at|to|down to)] <amount>',
    (tags, frame) => eta({ ...tags, quantity: frame.context.lastQuantity ?? 'boxTemp' }, frame),
    { examples: ['how long until it is down to thirty six'] },
  ),
  rule(
    `(when will|how long (until|till|before|for)) ${MY} <quantity> (be|is|comes|come|gets|get|to be|to come|to get|makes|make) [(down|at|back)] [to] (temperature|temp|down|set point|cold|there)`,
    eta,
    { examples: ['when will the box be down to temperature'] },
  ),
  heardRule('compare before and after', plain('beforeAfter'), {
    examples: ['compare before and after'],
  }),
  rule(
    '(what (changed|is different|has changed|is the difference)|before and after|before versus after|before verses after|how does [the] after compare [(to|with) [the] before]|compare [the] after (to|with|and) [the] before|compare [it] (to|with) [the] before|show me before and after|did it (help|get better|improve)|how much better is it|what is the difference (between|from) before and after|compare the before and [the] after)',
    plain('beforeAfter'),
    { examples: ['what changed'] },
  ),
  rule(
    '(what is my before|what (was|were) [(it|that|my|the)] (before|before readings|before numbers|readings before)|(read|give|tell) me [(my|the)] (before|before readings|before numbers)|what did i have before|what was my before|what are my before readings|what was it before)',
    plain('before'),
    { examples: ['what were my before readings'] },
  ),
  heardRule(
    '(read it back|what have i got so far|~read (that|them|those|everything|it all|my readings|the readings|me the readings|me my readings|me back) [back]|~what (do you|have you|did you) (have|got|get) [so far]|~what do i have [so far]|~what are my (readings|numbers)|~read me (everything|what you have|what you got)|~give me my readings|~summary|~sum it up|~list [my] readings)',
    plain('readback'),
    { examples: ['read it back', 'what do you have so far'] },
  ),
  heardRule(
    '(read me the note|~read [me] [back] (the|my) (note|notes|report|ticket|write up)|~read the note back|~what does the note say|~(show me|give me|let me hear|let me see|play) the (note|report|write up)|~what is in the note|~how does the note read)',
    plain('note'),
    { examples: ['read me the note'] },
  ),
  heardRule(
    '(where does that number come from|~where (did|do|does) (that|you|this|it|those) [(number|numbers)] (get that|come from|get [that] number)|~how (did|do) you (get|figure|calculate|work out|know|come up with) (that|it|this) [number]|~(show|tell|explain) [me] (your work|the math|your math|how)|~says who|~what is that based on|~where is that from|~how is that (calculated|figured|worked out)|~why that number|~what formula|~explain that)',
    plain('working'),
    { examples: ['where does that number come from', 'how did you get that'] },
  ),
  rule(
    `is ${MY} <quantity> [still] (coming down|going down|dropping|falling|rising|climbing|going up|coming up|moving|trending [(up|down)]|holding|steady|changing|stable)`,
    trend,
    { examples: ['is the box coming down'] },
  ),
  rule(
    `(how is [the] <quantity> (trending|moving)|what is [the] <quantity> (doing|trend)|which way is ${MY} <quantity> (going|moving|headed|trending))`,
    trend,
    { examples: ['which way is suction going'] },
  ),
  rule(
    '(is it (coming down|going down|dropping|falling|rising|climbing|going up|trending [(up|down)]|holding|steady|pulling down)|which way is it going|what is the trend|how is it trending)',
    () => ask({ ask: 'trend', about: null }),
    { examples: ['is it coming down'] },
  ),
  rule(
    '(how (much time|long|many minutes) (is|are|do i have|have i got) left [on [(the|my)] timer]|how much time left|how much longer|time left|how long is left|how is the timer|what is left on the timer|how much time on the timer|where is the timer|how many minutes left)',
    plain('timeLeft'),
    { examples: ['how much time is left'] },
  ),
  heardRule(
    '(what was done here last time|~what (did|was|happened) (we|i|they|you|done|someone|anybody|on the) [(do|did|done)] [(here|on this|on this unit|to this|to it|to this unit)] (last time|last visit|the last time|before)|~what (did|were) (the|my) [(last|previous)] readings [(say|be)] (last time|last visit)|~(any|the|show me the|show me|give me the|what is the|is there any) [(service|unit)] history [(on this|on this unit|here|on it|for this unit)]|~when (was|were) (this|it|we|i) [(last|here)] (serviced|last|here last|here|worked on)|~last (visit|time)|~what was (wrong|it|the problem|head|suction|the charge) last time|~who was here last [time]|~what did i do here last time|~has this (been worked on|happened) before)',
    plain('history'),
    { examples: ['what was done here last time'] },
  ),
];
