import type { GuideId, LackedId } from '../../terms/guides.ts';
import { startsClause } from '../words/clause-start.ts';
import { THEM } from '../words/food-words.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { partId } from '../slots.ts';
import { EXPLAINED_PARTS, type Explains } from '../../terms/explained-parts.ts';
import type { PartId } from '../../terms/names.ts';
import { ask, plain } from './asking.ts';

const guide =
  (about: GuideId): Means =>
  () =>
    ask({ ask: 'guide', about });

const without =
  (about: LackedId): Means =>
  () =>
    ask({ ask: 'nextWithout', about });

const isExplained = (about: PartId): boolean => EXPLAINED_PARTS.some((each) => each === about);

/** "Where's the light" may be asked of anybody: only whoever wants to find one asks us. */
const part =
  (of: Explains): Means =>
  (tags, frame) => {
    const about = partId(tags['part']);
    if (about === null) return null;
    const isOfAnybody = /\bwhere(?: is|'s| are)\b/i.test(frame.wordsOf(frame.span));
    return isOfAnybody && !isExplained(about) ? null : ask({ ask: 'part', about, of });
  };

/** Of a part that has no name here, or of the one that was asked about last. */
const someThing =
  (of: Explains): Means =>
  () =>
    ask({ ask: 'part', about: null, of });

const plate =
  (of: Explains): Means =>
  () =>
    ask({ ask: 'part', about: 'nameplate', of });

/** "Can they keep it", right behind what was probed. */
const ofProbed: Means = (_tags, { context }) =>
  context.lastQuantity === 'productTemp' ? ask({ ask: 'judge', about: 'food' }) : null;

/** A sentence of its own, or the end of one. */
const asksLast = (frame: Frame): boolean => startsClause(frame) && frame.endsAtPause;

const OWN = { unheard: true, only: asksLast } as const;

const SO = '[(so|and|ok|then|now|well|but)]';
const IT = '(it|that|this|she|the unit)';
const A = '[(the|a|an|that|this|my|your|their|one of those)]';
const PLATE = '(nameplate|data plate|data tag|rating plate|model tag|rating tag|plate|data label)';
const USUALLY =
  '[(usually|normally|generally|typically|at|located|supposed to be|found|mounted|on (it|this|one|these)|in (it|this))]';
const BAD =
  '(bad|good|ok|normal|shot|gone|failed|broken|open|a problem|a (good|bad) sign|a bad thing|a good thing|wrong|fine|how it should be|what (i|we) want [to see])';

/** What something means that was told just now. */
const MEANING: readonly Rule[] = [
  rule(
    `${SO} ((does|would|do) (that|it|this|those) mean [that] (it is|that is|she is|this is|the thing is|they are|[the] (switch|valve|coil|motor|board) is) ${BAD}|what (does|would|could|might) (that|this|it|all that|those) [all] mean|what (does|would|do) (that|this|those|these) (drop|rise|reading|readings|number|numbers|difference|voltage|pressure|temperature|temp|temps|figure|split) [even] (mean|tell (me|you|us)|say|point to)|(meaning|which means) what|what is (that|it) [even] (supposed to mean|telling (me|us)))`,
    plain('meaning'),
    { unheard: true, examples: ['does that mean it is bad', 'what would that drop mean'] },
  ),
  rule(
    `${SO} (is (that|this|it) (a problem|a (good|bad) sign|a bad thing|a good thing|supposed to (do|be like) that|how it should be)|(that|this) is ${BAD} (right|huh|then|is it not)|should (i|we) (be worried|worry) [about (that|it)])`,
    plain('meaning'),
    { ...OWN, examples: ['is that a problem', 'so that is bad right'] },
  ),
  rule(
    `${SO} ((is|was) (that|this|it) (what|why) [(has|would have)] (shut|tripped|stopped|killed|knocked|kicked|took|cut) (${IT}|the compressor) [(off|out|down)]|(is|was) (that|this|it) (why) ${IT} (is|was|has been) [(shut|tripped|kicked)] (off|out|down|stopped|not running)|what (shut|tripped|stopped|killed|knocked|kicked|cut) (${IT}|the compressor) [(off|out|down)]|did (that|this|it) (shut|trip|stop|kill|kick|knock|cut) (${IT}|the compressor) [(off|out|down)])`,
    plain('whatStopped'),
    { unheard: true, examples: ['is that what shut it off', 'what shut it off'] },
  ),
];

/** What tells causes apart, and what it is after all. */
const SETTLING: readonly Rule[] = [
  rule(
    `${SO} (what|how) (would|will|could|can|do|should) [(i|we|you)] (tell|know|show|prove|find out|figure out) [(me|us|you)] (which [(one|it is|one it is)]|(them|the two|those) apart|one from the other|the difference)`,
    plain('nextCheck'),
    { ...OWN, examples: ['what would tell me which', 'what would tell them apart'] },
  ),
  rule('so what is it [then]', plain('causes'), {
    alone: true,
    unheard: true,
    examples: ['so what is it'],
  }),
  rule(
    `${SO} (how am i doing|how are we doing|how (is|are) (that|it|we|those|things) [(look|looking|now|then)]|how does everything look [now]|(what is|what does) (that|this|it|all that) (give|put|leave) (me|us) [(at|now|then)]|is everything [(looking|look)] (ok|good|right|where it should be))`,
    plain('overall'),
    { alone: true, unheard: true, examples: ['how am i doing'] },
  ),
  rule(
    `${SO} (what (should|would|will|do) (i|we) [(expect to|want to|be)] (see|seeing|get|getting|have|looking for|look for) (now|next|after (that|this))|what should (it|everything|the (gages|numbers|readings)) (look like|be|read|say) now)`,
    plain('overall'),
    { ...OWN, examples: ['what should i see now'] },
  ),
  rule(
    `${SO} (how long (do|should|must|would|will) (i|we) [(have to|need to|got to)] (wait|let it (run|go|settle|sit)|give it|run it) [(for|now|before (i|we) (read|check) [(it|again)])]|how long (till|until|before) it (settles|has settled|levels out|is settled|settles (down|out)))`,
    plain('wait'),
    { ...OWN, examples: ['how long do i wait'] },
  ),
  rule(
    `${SO} (should|do|must|can) (i|we) [(need to|have to|got to|just)] (wait|stick around|hang around|wait around|let it run) [(longer|more|a while)] [(for|on|until|till) <clause>]`,
    plain('wait'),
    { ...OWN, examples: ['should i wait for zero'] },
  ),
  rule(
    `${SO} (should|do) (i|we) [(need to|have to|got to)] (worry|care|be (worried|concerned)) about (that|those|the) <number> (pounds|pound|ounces|ounce) [of (gas|refrigerant|freon)] [that] (he|she|they|somebody|the (last|other) (guy|tech)) [(had|has)] (added|put in|charged|dumped in) [<clause>]`,
    plain('overall'),
    { ...OWN, examples: ['should i worry about that three pounds he added in june'] },
  ),
  rule(
    `${SO} (should|do|must|will|would) (i|we) [(need to|have to|got to)] come back [(here|for (it|this)|out|again)]`,
    plain('comeBack'),
    { ...OWN, examples: ['should i come back'] },
  ),
  rule(
    `${SO} ((what|how much) (do|should|can|will|would) (i|we) [(need to|have to)] (tell|say to|explain to) ${THEM}|(should|do) (i|we) [(need to|have to)] (tell|say to|explain to) ${THEM} (anything|something)|(is there anything|anything) [(i|we) (should|need to)] [to] tell ${THEM})`,
    plain('tellCustomer'),
    { ...OWN, examples: ['what do i tell the manager', 'should i tell them anything'] },
  ),
  rule(
    `${SO} ((can|could|should|may) (they|we|he|she|the customer) [still] (keep|sell|use|serve|save|eat) (it|that|this|them|those|these|any of it)|(is|are) (it|that|they|those) still (good|ok|any good|safe) [to (keep|sell|eat|use|serve)])`,
    ofProbed,
    { ...OWN, examples: [] },
  ),
  rule(
    `${SO} (what should (the|that|this|a|my) [(solenoid|contactor|relay|valve|control)] coil (read|ohm [out] [(at|to)]|be [reading]|measure|show)|how many ohms (should|does|on) (the|that|this|a|my) [(solenoid|contactor|relay|valve|control)] coil [(read|be|have|show)])`,
    guide('coilOhms'),
    { ...OWN, examples: ['what should the coil read'] },
  ),
];

/** What a fault shows, and what may be left off: asked in general, of any unit. */
const LOOKS =
  '[(usually|normally|typically|look like|show [up] [as]|do|cause|give (you|me)|read like|act like|tell (me|you))]';
const HOW_MUCH = '(how (much|many|big) [(of|a)]|what [kind of]|what size)';
const DROP = '[(temp|temperature|pressure)] (drop|difference|split|change|degrees|delta)';
const OVER_DRIER =
  '(across|over|through|on|at) (the|a|my|this|that) [(filter|liquid|liquid line)] dryer';
const GENERAL: readonly Rule[] = [
  ...(
    [
      ['lowChargeShows', '(low charge|undercharge|low refrigerant|shortage of (gas|refrigerant))'],
      ['overchargeShows', '(overcharge|over charge|high charge)'],
    ] as const
  ).map(([about, fault]) =>
    rule(
      `${SO} (what (does|would|will|do|should) [(a|an|the)] ${fault} ${LOOKS} [(look like|on the gages)]|[(a|an|the)] ${fault} (would|will|does|should) (show|look like|do|give) what|(what are|what is) the (signs|symptoms|sign|symptom) of [(a|an)] ${fault}|how (do|would|can|will) (i|you|we) (know|tell|spot|see) [(if|that|when)] [(a|an|it is|there is a|there is an|i have a|i have got a)] ${fault})`,
      guide(about),
      { ...OWN, examples: [] },
    ),
  ),
  rule(
    `${SO} how (do|would|can|will) (i|you|we) (know|tell|see) (if|that|when) (it is|the unit is|the system is|she is) (low on (charge|gas|refrigerant)|undercharged|short of (gas|refrigerant|charge))`,
    guide('lowChargeShows'),
    { ...OWN, examples: ['how do i know if it is low on charge'] },
  ),
  rule(
    `${SO} (should|do|must|shall|can|would) (i|we|you) [(really|even|have to|need to|want to)] (put|hook|hook up|get|connect|need|need to put|need to hook up) [(my|the|some|any|a set of)] gages [up] [(on|to)] [(it|this|that|this one|here|there|the unit|this thing)] [(at all|yet|for this)]`,
    guide('gaugesOrNot'),
    { ...OWN, examples: ['should i put gages on it', 'do i need gages on this'] },
  ),
  rule(
    `${SO} (${HOW_MUCH} ${DROP} [(should|can|would) (there|i|it|you) (be|see|have|get|read)|is (normal|ok|allowed|too much|a lot|acceptable|good)] ${OVER_DRIER} [(should|can) (there|i|it|you) (be|see|have|get|read)|is (normal|ok|allowed|too much|too many|a lot|acceptable|good)]|what (should|would) [the] ${DROP} be ${OVER_DRIER}|what (should|would) (i|you|it) (see|read|get|have|be) ${OVER_DRIER}|what is [(a|the)] (normal|good|acceptable|ok|allowed|right) ${DROP} ${OVER_DRIER})`,
    guide('drierDrop'),
    {
      ...OWN,
      examples: [
        'what should the drop be across the drier',
        'how much drop is normal across the drier',
      ],
    },
  ),
];

const COVER =
  '(panel|cover|electrical panel|electrical box|control panel|control box|disconnect [box]|box cover|access panel|electrical cover|cabinet)';
const OPEN_IT = `((open|take (off|apart)|pull [(off|apart)]|get in|get into|go in|go into|reach in|reach into|stick my hand in|put my hand in) [(the|that|this|my)] ${COVER}|(take|pull|get) (the|that|this) ${COVER} off [[of] (the|that|this) (panel|disconnect|box|contactor|unit)])`;
const FIRST = '[(up|first|now|before (i|we) (start|touch it|go in))]';

/** What can hurt: always told with who decides. */
const SAFE: readonly Rule[] = [
  rule(
    `${SO} ((is it|would it be|will it be) [(still|really|even)] (safe|ok|all right|alright) (to|if i) ${OPEN_IT} ${FIRST}|can i [(just|safely)] ${OPEN_IT} ${FIRST}|how (do|should|would|can) (i|we) (make|get|render) (it|this|that|the unit|the thing) (safe|dead|de energized) ${FIRST}|how (do|should|would|can) (i|we) (know (it is|that it is|if it is|when it is) (dead|safe|off)|kill (the power|it|power)|shut (the power|it) (off|down) safely|prove (it|it is) dead|make sure (it|the power) is (dead|off|safe))|(how|what) (do|should) (i|we) do to (make it safe|be safe|work safe|work on it safely)|is it safe to ((work on|put my hands in) (it|this|there|here)|touch [(it|this|that)]) ${FIRST})`,
    guide('makeSafe'),
    { unheard: true, examples: ['is it safe to open the panel', 'how do i make it safe'] },
  ),
  rule(
    `${SO} (can|could|may|should|do) (i|we) [(just|simply|go ahead and)] (change|replace|swap|cut|pull|take|open|unsolder|unsweat|sweat) [(it|that|this|<the> <part>)] [(out|off|in)] (without|with no|and not) (recovering|recovery|reclaiming|pulling [the] (charge|gas|refrigerant|freon|it down)|pumping [it] down|recover|pump [it] down|a pump down|evacuating) [(it|first|anything|the (charge|gas|refrigerant|system))]`,
    guide('openWithoutRecovery'),
    { unheard: true, examples: ['can i just change it without recovering'] },
  ),
  rule(
    `${SO} do (i|we) [(really|even)] (have|need) to (recover|pump [it] down|pull the charge) (to|before (i|we)) (change|replace|swap|cut|pull|take) [(it|that|this|<the> <part>)] [(out|off)]`,
    guide('openWithoutRecovery'),
    { unheard: true, examples: ['do i really have to recover to change the dryer'] },
  ),
  rule(
    `${SO} (how (deep|low|far) [of] [(a|the|my|should the)] [(vacuum|microns)] (do|should|must|would|will|to) [(i|we|you)] [(need to|have to|want to|need|want)] [(pull|go|get|be|take it|pull down to|vacuum)] [(on|for|with) (it|this|this one)] [down] [to]|(what|how deep a|how good a|how low a) vacuum (do|should|must|would|will) (i|we|you) [(need to|have to|want to)] [(need|want|pull|see|have|get|go to)] [(on|for|with) (it|this|this one)]|how many microns (do|should|must|would) (i|we|you) [(need to|have to|want to)] [(need|want|pull|see|get|go)] [(down to|to)] [(on|for|with) (it|this|this one)]|how long (does|must|should) (it|the vacuum) [(have to|need to)] hold)`,
    () => ask({ ask: 'target', about: 'vacuum' }),
    { ...OWN, examples: ['how deep a vacuum do i need'] },
  ),
];

/** What is not to be had steers the next check away from it. */
const LACKING: readonly Rule[] = [
  rule(
    '[(but|well|ok|no|yeah)] ([(i|we)] (have not|do not have|have not got|did not put|do not|have not put|am not) [(got|put|any|have)] [(my|the|any|a [set of])] (gages|gage|manifold|hoses) [(on|here|with me|hooked up|connected|on it|yet)] [yet]|[(the|my)] gages are (not on|not hooked up|not connected|in the truck|still in the (truck|van|bag)) [yet]|no gages [(on|here|with me|yet|on it)] [yet])',
    without('gauges'),
    { alone: true, unheard: true, examples: ['i have not got gages on'] },
  ),
  rule(
    '[(but|well|ok|no|yeah)] ([(i|we)] (do not have|have not got|do not own|have no|am without) [(a|my|any|the|got a)] (meter|volt meter|multimeter|clamp|clamp meter|amp clamp) [(here|with me|on me|in the truck|at the shop|today|yet)]|[(the|my)] (meter|multimeter|clamp|volt meter) is (in the (truck|van)|at the shop|dead|broken|not here|out of battery)|no meter [(here|with me|on me)])',
    without('meter'),
    { alone: true, unheard: true, examples: ['i do not have a meter'] },
  ),
  rule(
    '[(but|well|ok|no|yeah)] ([(i|we)] (can not|could not) (get (to|at) (it|that|them|there)|reach (it|that|them)|see (it|that|them) [from here]|do that|find (it|that|one))|(it|that) (is not|can not be) (reachable|accessible|reached|got to|gotten to)|there is no way to (get to|get at|reach|see) (it|that))',
    without('reach'),
    { alone: true, unheard: true, examples: ['i can not get to it'] },
  ),
];

/** What a part does, and where to look for it. */
const PARTS: readonly Rule[] = [
  rule(
    `${SO} (what (does|do|is|are) ${A} ${PLATE} (do|for|good for|say)|what is ${A} ${PLATE})`,
    plate('does'),
    { ...OWN, examples: ['what is the nameplate for'] },
  ),
  rule(
    `${SO} (where (is|are|would be) ${A} ${PLATE} ${USUALLY}|where (do|would|can|should|could) (i|we|you) [(usually|normally|even)] (find|look for|see) ${A} ${PLATE} ${USUALLY})`,
    plate('sits'),
    { ...OWN, examples: ['where is the nameplate usually'] },
  ),
  rule(
    `${SO} (what (does|do|would) ${A} <part> [(even|actually)] do [(anyway|exactly)]|what (is|are) ${A} <part> [(even|actually)] (for|good for|do|supposed to do|there for)|what is the (point|purpose|job) of ${A} <part>|what is (a|an) <part>)`,
    part('does'),
    { ...OWN, examples: ['what is a solenoid do', 'what does the receiver do'] },
  ),
  rule(
    `${SO} (where (is|are) ${A} <part> ${USUALLY}|where (do|would|can|should|could) (i|we|you) [(usually|normally|even)] (find|look for|see) ${A} <part> ${USUALLY}|where (does|do|would) ${A} <part> [(usually|normally)] (sit|go|live|be|hide) [(at|on (it|this))]|(where about|whereabouts) is ${A} <part> ${USUALLY}|~~where ((is|are) ${A} <part> (supposed|meant) to (be|go|sit)|should ${A} <part> (be|go|sit)|(does|do) ${A} <part> go) [(mounted|strapped|on)] [(on|at|in) (the|a|an|this) [<size>] (line|pipe|suction line|tube|coil|outlet|unit)])`,
    part('sits'),
    {
      ...OWN,
      examples: ['where do i find the low pressure switch', 'where is the receiver'],
    },
  ),
  rule(
    `${SO} (where (do|would|can|should|could) (i|we|you) [(usually|normally|even)] (find|look for) (it|that|one|that one)|where (is|would) (it|that) [(be|sit)] (usually|normally|located|at|be|sit))`,
    someThing('sits'),
    { ...OWN, examples: ['where do i find it'] },
  ),
  rule(
    `${SO} (what does (it|that|that one|one) [even] do|what is (it|that) for)`,
    someThing('does'),
    { ...OWN, examples: ['what does it do'] },
  ),
];

/** What is asked by whoever must be led: what to make of it, whether it is safe, where it is, how long, what to say. */
export const LED_QUESTIONS: readonly Rule[] = [
  ...SAFE,
  ...MEANING,
  ...SETTLING,
  ...GENERAL,
  ...LACKING,
  ...PARTS,
];
