import type { PartId, WorkKindId } from '../../terms/names.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { nothing, remark } from '../plain-means.ts';
import { startsClause } from '../words/clause-start.ts';

const complaint: Means = (_tags, frame) => ({ memos: [frame.wordsOf(frame.span)] });

const doing =
  (did: WorkKindId, part: PartId | null): Means =>
  (_tags, frame) => ({ work: [{ did, part, words: frame.wordsOf(frame.span) }] });

/** Which way a gauge goes, without a number. */
const MOVES =
  '[the] (head|suction|head pressure|suction pressure|high side|low side|superheat|subcooling) is [(slowly|still|now)] (dropping|falling|rising|climbing|coming (up|down)|going (up|down)|pulling down)';

/** What was looked for and not found, and the looking. */
const checkedClear: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  return { work: [{ did: 'leakCheck', part: null, words }], remarks: [words] };
};

const EVERYTHING =
  '(it|everything|all of it|all the (joints|fittings|flares)|every joint|the whole thing|it all|all my joints|every fitting)';
const NONE =
  '((no|not a|zero|not one) (bubbles|bubble|hits|hit|foam)|no leaks (at all|on anything|on any of it|on any of them)) [(anywhere|at all|on anything|on any of it|showing|nowhere|on any of them)]';
const NOW = '[(now|here|right now|next|real quick)]';
const I = '[(i am|i will|i|we are|going to|i am going to|let me|about to|time to|and|then|now)]';

const OPENS =
  '[(a|the|their|both|all the)] [(back|front|kitchen|side|outside|overhead|roll up|dock|exhaust|box|floor|shop)] (door|doors|window|windows|fan|fans|hood|hoods|vent)';
const OPENED =
  '[(is|are)] [(propped|wide|cracked|standing|running|going|blowing|on|held|blocked)] [(open|on|up|high|full blast)]';
/** What the air is moved for where something burns. */
const FOR_AIR =
  '(for [(some|the|a little)] (air|ventilation|fresh air|air flow|airflow|propane|gas|fumes|vapor|safety)|to (air (it|the (place|room|kitchen)|things) out|ventilate [(it|the (place|room|kitchen))]|(get|keep) [(the|some)] air moving|move [(some|the)] air|let (it|the (gas|propane|fumes)) (out|clear [out])|clear (it|the (gas|fumes|propane|air)) [out])|so (nothing (builds|can build) up|it (does not|will not|can not) build up|(the (gas|propane|fumes)|it) (can|will) (clear|clear out|get out)))';

/** Steps that are told as they are taken, and what is said of the job in passing. */
export const PASSING_RULES: readonly Rule[] = [
  // No door of the box was found open: somebody airs the room.
  rule(
    `[(and|so|ok|alright)] [(i|we)] [(have|have got|got|put|set|propped|opened|left|kept|keeping|turned|there is)] ${OPENS} ${OPENED} [and ${OPENS} ${OPENED}] ${FOR_AIR}`,
    remark,
    {
      unheard: true,
      only: startsClause,
      examples: ['got the door propped open and the fan going for air'],
    },
  ),
  rule('(start|fire|kick|crank|turn) (it|her|this thing) (up|on|over)', nothing, {
    alone: true,
    examples: ['start it up'],
  }),
  rule(
    '[(the|my)] [vacuum] pump is (isolated|valved off|shut off|off|blanked off) [<pause>] [(and|so|now)] [[(i am|we are)] (starting|watching|running|timing) (the|a|my) (decay|hold|test|rise|decay test|rise test)]',
    nothing,
    { alone: true, examples: ['pump is isolated starting the decay'] },
  ),
  rule(
    '<the> <part> (has|has got|is got|got) [(an|a)] (even|good|full|nice|light|thin|uneven|spotty|patchy|heavy) (frost|frost pattern|coat of frost|coating of frost|frost line)',
    remark,
    { examples: ['evaporator has got even frost'] },
  ),
  rule(
    '[the] (fan delay|delay|defrost|drip time|pump down|drain|door heat|interlock|timer) (is|looks|works|is working|checks out) (fine|good|ok|all right|normal|right)',
    remark,
    { examples: ['fan delay is fine'] },
  ),
  rule(
    '<pause> [(a|it is a|the)] <number> pole [<number:amps> (amp|amps)] [(contactor|one)]',
    nothing,
  ),
  rule('[(a|it is a)] <number> pole <number:amps> (amp|amps) [(contactor|one)]', nothing, {
    examples: ['three pole forty amp'],
  }),
  rule(
    '(they|he|she|you|the (cooks|staff|customer)|customer|staff|everybody|somebody) [really] (need to|needs to|should|have to|has to|have got to|got to|ought to|better) (quit|stop|cut out) <clause>',
    remark,
    { examples: ['they need to quit leaving the lids open'] },
  ),
  rule(
    '<the> (stat|thermostat|temperature control|temp control|controller|cold control|control) [(just|is)] (cut|cuts|cutting|kicks|kicked|came|comes|made|makes) (in|on) at <amount> [(and|but)] [(cuts|kicks|goes|cut|went|breaks|opens)] (out|off|open) at <amount:out>',
    (tags, frame) =>
      /\b(?:stat|thermostat|temp|temperature|cold)\b/i.test(frame.wordsOf(frame.span))
        ? remark(tags, frame)
        : null,
    { examples: ['the stat cut in at forty one and out at thirty four'] },
  ),
  rule(
    '[the] (oil|oil level|level|charge) (is|looks) [level] (fine|good|ok|all right|normal|right on|perfect)',
    remark,
    { examples: ['oil level is fine'] },
  ),
  rule(
    '[the] (receiver|reservoir|bin) (is|was|feels) [about] (half|a third|a quarter|three quarters|two thirds|mostly|nearly) (full|empty) [(by the feel of it|by feel|by the feel)]',
    remark,
    { examples: ['receiver is about half full by the feel of it'] },
  ),
  rule(
    '[(i|we|just)] [(had to|have to|will|going to)] lock it out [<pause>] [(and|then)] [(pull|pulling|get) <the> <part>]',
    nothing,
    { alone: true, examples: ['lock it out pull the relay'] },
  ),
  rule(
    '[the] (defrost|last defrost|harvest|last cycle) was [about] <duration> ago [[so] <the> <part> (should|ought to|has to) be <state>]',
    nothing,
    { examples: ['defrost was two hours ago'] },
  ),
  rule(
    '[(and|so|ok|yeah)] (that|this|it|everything|all of (that|it)) is [(all|right)] (in line|about right|right on|where it (should|ought to) be|where i want it|in the ballpark|in the range)',
    nothing,
    { unheard: true, apart: true, examples: ['so that is in line'] },
  ),
  rule(
    '[(so|ok|yeah|well)] [(looks like|i think|i would say)] (he|they|we) (is|are|was|were|came up) [(a little|a bit|way)] short [on (gas|charge|refrigerant)]',
    remark,
    { unheard: true, apart: true, examples: ['so he is short'] },
  ),
  rule('so <the> <part> (should|ought to|has to) be <state> [(now|by now)]', nothing, {
    examples: ['so the evaporator should be clear'],
  }),
  rule(
    '[(man|wow|boy|well)] (that|this|it) is (way|really|pretty|too|kind of|awful|a little|still|way too|still too) (high|low|hot|warm|much) [(for (this|that)|now|man)]',
    nothing,
    { alone: true, examples: ['that is way high'] },
  ),
  rule(
    '[the] oil [level] (is|looks|was|~~((came|comes|went|dropped|sits|holds|is (coming|going)) [(back|right)] [(up|down)]|is (back|right) [(up|down)])) [(at|about|only|up to|down to|~~to)] (half|a half|a quarter|quarter|a third|three quarters|halfway|half way) [[(a|of the|up the|in the|of a|of)] [sight] glass]',
    remark,
    { examples: ['oil is half a glass'] },
  ),
  rule(
    `[the] (rotation|phasing|phase rotation) (is|looks|checks) [(all|out)] (right|good|correct|fine|ok) [<pause>] [and] [${MOVES} [<pause>] [and] [${MOVES}]]`,
    remark,
    { unheard: true, examples: ['rotation is right'] },
  ),
  rule(
    '[(ok|so)] (this is|it is|we are doing|i am doing|i am here (for|to do)|here (for|to do)) (a|the) (start up|startup|commissioning|first start) [(on|for|of) <clause>]',
    remark,
    { unheard: true, examples: ['this is a start up on a new condensing unit'] },
  ),
  rule(`${MOVES} [<pause>] [(and|while|as)] ${MOVES}`, remark, {
    unheard: true,
    apart: true,
    examples: ['suction is dropping and head is coming up'],
  }),
  rule(
    '[(it|the oil|oil)] is coming back [(slow|slowly|now|good|nice|a little at a time)]',
    remark,
    { unheard: true, apart: true, examples: ['it is coming back slow'] },
  ),
  rule(
    `[(i|we|just|i have|have)] (soaped|bubbled|sprayed|sniffed|checked|leak checked|went over|soaped up) ${EVERYTHING} [(down|up|twice|again)] [<pause>] [(and|there is|i have|i see|got)] ${NONE}`,
    checkedClear,
    { examples: ['soaped everything no bubbles anywhere'] },
  ),
  rule(
    `[(i|we|just|i have|have)] (went|gone|going) (around|over|through|all over|back over) ${EVERYTHING} [(again|twice|once more)] [with (the|my|a) (sniffer|leak detector|detector|soap|bubbles)] [<pause>] [(and|it is|and it is|they are|all)] (clean|clear|tight|${NONE})`,
    checkedClear,
    { unheard: true, examples: ['went around everything again with the sniffer it is clean'] },
  ),
  rule(
    '(no|not a|not one|zero) (beeps|beep|hits|hit|chirps|chirp|alarms) [(out of it|from it|on the (sniffer|detector)|anywhere|at all)]',
    remark,
    { unheard: true, alone: true, examples: ['no beeps'] },
  ),
  rule(
    `[(i|we)] [(even|also)] tried (it|her|that|the compressor) with (a|my|the) (hard start [kit]|start kit|[new] [(start|run)] cap|jumper) [<pause>] [(and|but)] [(it|she)] (still|just) <clause>`,
    remark,
    { unheard: true, examples: ['tried it with a hard start kit still would not go'] },
  ),
  rule(
    '(no|not any|zero) bubbles (anywhere|at all|on (it|them|anything|any of (it|them)|the joints|any joint)|at (the|any) (joint|joints|flare|flares|fitting|fittings))',
    remark,
    { examples: ['no bubbles anywhere'] },
  ),
  rule(
    `[(i am|alright|ok)] (powering|firing|turning|kicking|bringing|switching) (it|her|this thing|the unit) (back up|back on|up|on)`,
    doing('restore', 'disconnect'),
    { examples: ['powering it back up'] },
  ),
  rule(
    `[(i am|we are|ok|just)] (killing|cutting|opening|pulling|throwing|shutting off|turning off|locking out) (the|my|this|her) (disconnect|power|main|main disconnect|main switch|breaker|switch) [(off|out|now|here|first|real quick)]`,
    doing('isolate', 'disconnect'),
    { unheard: true, apart: true, beforeTold: true, examples: ['i am killing the disconnect'] },
  ),
  rule(`[(i|i have|just|ok)] killed it`, doing('isolate', 'disconnect'), {
    examples: ['killed it'],
  }),
  rule(
    `[(i am|just)] (pulling|taking|popping) (the|my|this) [~~(evap|evaporator|fan|back|bottom|coil)] (panel|cover|front cover|access panel) [(off|~~down|~~out)] ${NOW}`,
    doing('remove', 'panel'),
    { examples: ['pulling the panel now'] },
  ),
  rule(
    '[(i|we|just|i have)] (turned|turn|advanced|rolled|cranked|dialed|spun|ran|moved) (it|her|the (dial|timer|clock|knob|time clock)) [(through|around|over|by hand|manually)] [by hand] (in|into|to|in to) defrost',
    doing('defrost', null),
    { examples: ['turned the dial by hand into defrost'] },
  ),
  rule(
    '[(i|we|just|i have)] (cut|recut|trimmed) (the|that) (flare|old flare|line|tubing) [(back|off)] [(and|<pause> [and]) (made|put|flared|did|ran) (a new one|a new flare|it again|it over)]',
    doing('repair', 'joint'),
    { examples: ['cut the flare back and made a new one'] },
  ),
  rule(
    '[(i|we|just|i have)] (reflared|re flared|remade|redid) (it|that|the (flare|joint|fitting|connection))',
    doing('repair', 'joint'),
    { examples: ['reflared it'] },
  ),
  rule(
    `${I} (pumping|pump) (it|her|the system|the unit|this thing|everything) down [(to|down to) <amount>] ${NOW}`,
    nothing,
    { examples: ['pumping it down to zero'] },
  ),
  rule(
    `${I} (bleed|bleeding|blow|blowing|let|letting) (it|the nitrogen|the nitro|that) (off|down|out|go) [(and|then) (hook|put|get|hooking|pull|throw) [up] (the|my) [vacuum] pump [(up|on|on it)]]`,
    nothing,
    { examples: ['bleed it off and hook up the pump'] },
  ),
  rule(
    `${I} (hook|hooking|hooked|put|putting|get|getting) [up] (the|my) [(vacuum|recovery)] (pump|machine) [(up|on|on it)] ${NOW}`,
    nothing,
    { examples: ['hooking up the vacuum pump'] },
  ),
  rule(
    '[(the|my)] [vacuum] pump is (on|running|going|hooked up|on it) <pause> [(with|it has|got|changed)] [(fresh|new|clean|the)] oil [(is (fresh|clean|new))]',
    nothing,
    { examples: [] },
  ),
  rule(
    `${I} (ohming|metering|checking|testing|megging|amping|reading|tracing) (<the> <part>|<the> windings|it|them) [(out|now|up)] ${NOW}`,
    nothing,
    { examples: ['ohming the heater out now'] },
  ),
  rule(
    '[(and|so|but)] [(it|she|<the> (unit|box|coil|freezer)|this thing)] [(is|has been|was)] not (defrosting|going into defrost|coming out of defrost|terminating)',
    remark,
    { examples: ['so it is not defrosting'] },
  ),
  rule(
    `<who> (has|have|is|are) been (chipping|knocking|beating|resetting|unplugging|kicking|flipping|adding|topping|turning|running|cranking|propping|hosing|cleaning|using|scraping) <clause>`,
    complaint,
    { examples: ['customer has been chipping ice off the evap all week'] },
  ),
  rule(
    '[(it is|set for|set at|it is set for|runs|it runs|it does|does|<the> [defrost] (timer|clock|time clock) is [set] (for|at|to))] <number> [defrosts] (a|per) day [[<pause>] (at|for|of|with|and)] [[<pause>] <duration> [(fail safe|failsafe|max|each|defrost|defrosts)]]',
    remark,
    { examples: ['four a day at thirty minutes'] },
  ),
  rule(
    '[(i|we|just)] (set|changed|moved|put) (it|the (timer|clock|defrost|defrosts|time clock)) (for|to|at) <number> [defrosts] (a|per) day [[<pause>] (at|for|of|with|and)] [[<pause>] <duration> [(fail safe|failsafe|max|each)]] [~~([<pause>] (with|and) [a] ([<number:drip> [minute]] drip [time] [(of|at|for)] [<number:drip>] [minutes]))]',
    (_tags, frame) => {
      const words = frame.wordsOf(frame.span);
      return { work: [{ did: 'adjust', part: 'defrostTimer', words }], remarks: [words] };
    },
    { examples: ['set it for four a day'] },
  ),
  rule(
    '[(and|so|but|<pause>)] [(it|that|they)] (should|ought to|is supposed to|supposed to|needs to|has to) be (open|closed|made|shut) [(at that|by now|at (this|that) temp|there|then|cold)]',
    nothing,
    { examples: ['it should be closed'] },
  ),
];
