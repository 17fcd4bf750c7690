import { startsClause, wordBefore } from '../words/clause-start.ts';
import { holdsNumber } from '../words/own-reading.ts';
import { tokenise } from '../words/tokenise.ts';
import { type Frame, heardRule, type Means, type Rule, rule } from '../rule.ts';
import { idIn, spanIn } from '../slots.ts';
import type { SafetyTopic } from '../utterance.ts';
import { RISKY_ACTS } from '../vocabulary/risky-acts.ts';
import { ask, TELL } from './asking.ts';

const OK_TO =
  '(can i|may i|could i|should i|is it (safe|ok|all right|alright|fine|good|clear) to|is it (safe|ok|all right|alright|fine) if i|(ok|safe|good|clear) to|(am i|are we|is this) (ok|safe|good|clear|allowed) to|safe for me to)';

const CAN =
  '((can|may|could|should) (i|we) [(just|still|ever|go ahead and|be)]|is it [(still|really)] (safe|ok|all right|alright|fine|good|clear|smart|dangerous|bad|a bad idea) (to|if (i|we))|(ok|alright|safe|good|clear) (to|if (i|we))|(am i|are we|is this) (ok|safe|good|clear|allowed) to|safe for (me|us) to|do (i|we) [(really|even|still)] ((need|have) to|need (a|an|any|the|my))|do you think (i|we) (can|could|should))';

const CAPACITORS =
  '(the|this|that|these|those|a|my) [(run|start)] (capacitor|cap|capacitors|caps|can)';

const isWet = (frame: Frame): boolean => {
  const words = frame.wordsOf(frame.span);
  return (
    (/^sweat(?:ing)? on\b/i.test(words) && wordBefore(frame) !== '') ||
    /^sweat(?:ing)? on .*\b(?:doors?|gaskets?|pan|box|case|glass|product|filter|fans?)$/i.test(
      words,
    )
  );
};

/** What is asked about, told by what would be done and to what: the first that fits. */
const TOPICS: readonly (readonly [SafetyTopic, RegExp])[] = [
  ['cylinder', / (?:heat|warm|hot|torch|blanket|heater) .*(?:cylinder|tank|bottle|drum|jug) /],
  ['cylinder', / (?:cylinder|tank|bottle|drum|jug) .*(?:heat|warm|hot|torch|blanket|sun) /],
  ['brazing', / (?:braze|brazing|weld|welding|solder|soldering|sweat|torch|flame|fire) /],
  // "Can I put oxygen in it" is about nothing else.
  ['nitrogen', / (?:nitrogen|oxygen|air compressor|shop air|compressed air|regulator|acetylene) /],
  [
    'capacitor',
    / (?:touch|short|discharge|bleed|grab|handle|pull) .*(?:capacitor|capacitors|cap) /,
  ],
  [
    'capacitor',
    / (?:hands?|reach|fingers?) .*(?:capacitors?|caps?) .*(?:charged?|hot|discharged) /,
  ],
  ['terminals', / (?:pull|take|open|touch|check|remove|get at|unplug|meter) .*terminals? /],
  [
    'bypassing',
    / (?:jump|jumped|jumper|jumpered|jumping|bypass|bypassed|tie|tied) .*(?:out|across|around|up|safety|switch|control|it) /,
  ],
  ['bypassing', / leave .*(?:jumped|jumpered|bypassed|tied) /],
  [
    'resetting',
    / (?:reset|resetting) (?:it|this|that|(?:\w+ ){0,4}(?:breaker|switch|control|overload|safety|button|limit|cut out)) /,
  ],
  [
    'venting',
    / (?:vent|venting|dump|release|bleed|blow|let) .*(?:gas|refrigerant|charge|freon|it|this|propane|r) (?:off |out |go |loose |down |away )*(?:\w+ )*/,
  ],
  ['lockOut', / (?:lock|tag|kill) .*(?:out|power|disconnect|breaker|it) /],
  ['air', / (?:breathe|breathing|stay|stand|be|work) (?:in|inside) /],
  ['touching', / (?:touch|grab|hold|feel|hand) .*(?:line|pipe|compressor|shell|tubing|muffler) /],
  [
    'opening',
    / (?:open|cut|break|crack|unscrew|take) (?:into |apart |loose )*(?:up |it |this |that |the |a )*(?:\w+ )*(?:up|apart|loose|open|system|line|fitting|flare|joint|sealed|pressure|charge|into) /,
  ],
  [
    'charging',
    / (?:add|adding|charge|charging|put|putting|top|dump|throw|use) .*(?:gas|refrigerant|charge|liquid|freon|propane|isobutane|butane|off|suction) /,
  ],
  // Whatever is powered, in a vacuum it is not to be.
  ['underVacuum', / (?:under|in|into) (?:a )?(?:deep )?vacuum /],
  [
    'energising',
    / (?:turn|power|throw|flip|plug|start|fire|run|energize) .*(?:on|power|up|in|breaker|disconnect|vacuum) | put (?:the |it |her |this |that )*(?:power|breaker|disconnect|back on|on) /,
  ],
  [
    'handling',
    / (?:handle|handling|work (?:on|with|around)|get) .*(?:gas|refrigerant|freon|propane) /,
  ],
];

/** Of what else may be done nothing is known here: "should I replace the valve". */
const topicOf: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  // What was read must not vanish in a question: "is it safe to light it head's at one ninety".
  if (span === null || holdsNumber(frame.wordsOf(span))) return null;
  const words = tokenise(frame.wordsOf(span)).map(({ text }) => text);
  const said = ` ${words.join(' ')} `;
  if (ASKS_US.test(said) || LEFT_OVER.test(said)) return null;
  const [topic] = TOPICS.find(([, tells]) => tells.test(said)) ?? [];
  return topic === undefined ? null : ask({ ask: 'safety', about: topic });
};

/** What belongs to the question before it. */
const LEFT_OVER = /^ (?:just|still|ever|be|go ahead and) /;

/** "Can you tell me how much gas I put in" */
const ASKS_US = /^ (?:tell|give|show|say|read|remind|explain|hear|walk|let|help) (?:me|us|again) /;

const safety =
  (about: SafetyTopic): Means =>
  () =>
    ask({ ask: 'safety', about });

const actId = idIn(RISKY_ACTS);
const ofAct: Means = (tags, frame) => {
  const topic = actId(tags['topic']);
  return topic === null ? null : safety(topic)(tags, frame);
};

const jumpOrBraze: Means = (tags, frame) =>
  safety(JUMPS.test(frame.wordsOf(frame.span)) ? 'bypassing' : 'brazing')(tags, frame);
const JUMPS = /\b(?:jump|jumper|bypass|tie)\b/i;

/** Whether something may be done, whatever it is done with: all of the clause is asked, and nothing in it was done. */
export const SAFE_TO_QUESTIONS: readonly Rule[] = [
  heardRule(
    '(is it safe|~is it (ok|clear|good)|~(ok|safe)|~(is this|am i) (safe|ok|clear|good)) to (braze|~(solder|use a torch|use the torch|light the torch|weld|torch)) [~(on [it|this]|this|it|here|now|this joint)]',
    safety('brazing'),
    { examples: ['is it safe to braze'] },
  ),
  rule(
    `${CAN} (braze|solder|use a torch|weld|sweat|torch) [(on it|it|here|now)] with [(about|still|only)] <amount> [(of|worth of)] [(pressure|nitrogen|gas|refrigerant)] [(still|left)] (on|in) (it|the (system|unit|lines|line)|there|this|here)`,
    safety('brazing'),
    { unheard: true, examples: ['ok to braze with two pounds still on the system'] },
  ),
  // Nobody asks before lighting a torch: that it is about to burn is reason enough for the caution.
  rule(
    '[(i am|we are)] [(going to|about to)] (braze|brazing|sweat|sweating|solder|soldering) [(in|out|on)] (it|this|<the> [new] <part>) [now]',
    // "Bubbles at the braze joint": a joint that was brazed. "Drier's sweating on the outlet" is wet.
    (tags, frame) =>
      /^(?:braze|brazing) joints?\b/i.test(frame.wordsOf(frame.span)) || isWet(frame)
        ? null
        : safety('brazing')(tags, frame),
    { examples: ['i am going to braze in a new dryer', 'brazing it now'] },
  ),
  rule('[(i am|we are)] [(going to|about to)] (light|lighting) the torch', safety('brazing'), {
    examples: ['lighting the torch'],
  }),
  rule('(i am|we are) (brazing|about to braze|going to braze) [now]', safety('brazing'), {
    examples: ['i am about to braze'],
  }),
  rule(`${OK_TO} <riskyAct>`, ofAct, {
    examples: [
      'can i open the system',
      'is it safe to heat the tank',
      'can i touch the discharge line',
    ],
  }),
  rule(
    `${OK_TO} (jump out|jumper|jumper out|bypass|jump|run a jumper across|put a jumper (on|across)|tie (up|out)|braze|solder|weld|unsweat|sweat|put (a|the|my) torch (on|to)) [(it|<the> <part>)]`,
    jumpOrBraze,
    { examples: ['can i jump out the high pressure switch', 'can i braze this joint'] },
  ),
  rule(
    '(how do i (discharge|bleed|drain) <the> (capacitor|cap|capacitors|run capacitor|start capacitor))',
    safety('capacitor'),
    {
      examples: ['how do i discharge the capacitor'],
    },
  ),
  rule(
    `(((will|would|can|could|is|are) ${CAPACITORS} [(going to|still)] (bite|hurt|shock|zap|get|knock|kill|burn) (me|you|us|somebody|anybody)|(is|are) ${CAPACITORS} [(still|really)] (charged|hot|live|loaded|holding [a charge]|dangerous)|is there [(still|any)] [(a|any)] (charge|voltage|juice) [(left|still)] (on|in) ${CAPACITORS}|(does|do) ${CAPACITORS} [still] (hold|have) a charge) [(on|in|to) (it|them)])`,
    safety('capacitor'),
    { unheard: true, examples: ['will this cap bite me', 'is that capacitor still charged'] },
  ),
  rule(
    `(will|would|can|could|is) <the> (gas|refrigerant|freon|<refrigerant>) [going to] (hurt|kill|burn|choke|blow up on|poison|gas) (me|you|us|somebody|anybody)`,
    safety('handling'),
    { unheard: true, examples: ['will this gas hurt me'] },
  ),
  rule('is the air (safe|ok|good) [in here]', safety('air'), { examples: ['is the air safe'] }),
  rule(
    '(do i (need to|have to)|should i|how do i|must i) (lock it out|lock out|lock and tag [it]|lock this out|kill the power|tag it out)',
    safety('lockOut'),
    { examples: ['do i need to lock it out'] },
  ),
  rule(
    `((is|does) (this|that|the) (gas|refrigerant|freon) (safe|dangerous|flammable|toxic|poisonous|burn|explosive|bad to breathe)|(does|will) it burn|is it flammable)`,
    safety('handling'),
    { examples: ['is this gas flammable'] },
  ),
  rule(
    '[(so|and|ok|wait)] (is (that|this|it|<refrigerant>) [(gas|refrigerant|stuff)] [(the|one of the|a)] (flammable|explosive|burnable) [(one|ones|stuff|gas)]|(does|will) (<refrigerant>|this stuff|that stuff) burn)',
    safety('handling'),
    { unheard: true, examples: ['is that the flammable one'] },
  ),
  rule(
    `(any|are there any|is there any|what are the|what is the|what) (caution|cautions|warning|warnings|precautions|danger|dangers|hazard|hazards|safety rules) (for|with|on|about|of|working with|using) [(the|this)] (<refrigerant>|gas|refrigerant|it|this|freon|this one)`,
    safety('handling'),
    { examples: ['any caution for propane'] },
  ),
  rule(
    `(what (do|should) (i|we) [(need|have) to] (watch|look) [out] for|(is there|do i have|any) [(anything|something)] [(i (should|need to))] [to] (watch|look) [out] for|anything to (watch|look) [out] for|anything special|how do i handle) [(with|on|about|working on)] [(the|this)] (<refrigerant>|gas|refrigerant)`,
    safety('handling'),
    { examples: ['what do i watch out for with propane'] },
  ),
  rule(`[${TELL} [if]] ${CAN} <clause>`, topicOf, {
    only: startsClause,
    examples: ['can i cut into the line with pressure still on it'],
  }),
  rule(
    'do (i|we) [(really|even)] (need|have) [to (wear|have|use)] [my] (gloves|glasses|goggles|a mask|a respirator|eye protection|safety glasses) [(for|with|on|to|when) <clause>]',
    safety('handling'),
    { unheard: true, examples: ['do i need gloves for this'] },
  ),
  rule(
    `[${TELL}] what (gloves|glasses|gear|protection|goggles|mask|respirator|eye protection) (do|should|would) (i|we) (need|wear|use|want|have on) [<clause>]`,
    safety('handling'),
    { unheard: true, examples: ['what gloves do i need for this refrigerant'] },
  ),
  rule(
    `[${TELL}] what (to wear|should i wear|do i [(need|have) to] wear) [<clause>]`,
    safety('handling'),
    {
      unheard: true,
      examples: ['what should i wear handling liquid refrigerant'],
    },
  ),
  rule(
    '(what if|what do i do if|what happens if|what should i do if) <the> [(gas|refrigerant|freon|<refrigerant>|it)] (leaks|is leaking|gets out|lets go|blows) (in|inside|out in) <clause>',
    safety('air'),
    { examples: ['what do i do if this gas leaks in a closed room'] },
  ),
];
