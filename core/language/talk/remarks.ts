import { ANY_WEEKDAY } from '../../terms/calendar.ts';
import { opensSentence } from '../words/clause-start.ts';
import { FOOD, THEM } from '../words/food-words.ts';
import { timeTold } from '../facts/time-told.ts';
import type { WorkKindId } from '../../terms/names.ts';
import { spanIn } from '../slots.ts';
import { heardRule, type Means, type Rule, rule } from '../rule.ts';
import { remark } from '../plain-means.ts';

/** The customer's trouble, in the words that it was told in. */
const complaint: Means = (_tags, frame) => ({ memos: [frame.wordsOf(frame.span)] });

/** "Told Denise don't load it till it's down to zero": whom one tells to do something may have any name. */
const toldByName: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  return span !== null && BY_NAME.test(frame.wordsOf(span)) ? remark(tags, frame) : null;
};
const BY_NAME =
  /^(?!(?:me|us|you|you're|it|that|this|they|to|not|about|i|i'm|we) )[a-z]+ (?:(?:and|&) [a-z]+ )?(?:to|not to|don't|do not|keep|leave|shut|close|call|watch|clean|use|never|about|that|(?:he|she|they) (?:should|need|needs|have|has|can|can't)) \S/i;

/** A test, and how it came out. */
const tested =
  (did: WorkKindId): Means =>
  (tags, frame) => ({
    ...remark(tags, frame),
    work: [{ did, part: null, words: frame.wordsOf(frame.span) }],
  });

const VERY = '(really|real|pretty|very|a little|kind of)';
const IT =
  '(it|she|this thing|the thing|<the> (unit|box|machine|system|cooler|freezer|case|cabinet)|<the> <equipment>)';
const IS_NOT =
  '(is not|was not|will not|does not|did not|would not|is no longer|is hardly|is barely)';
const COOLS =
  '(cool|cooling|freeze|freezing|(make|making) [(any|enough|much)] ice|(hold|holding|keep|keeping) [(the|its|it is)] (temp|temperature|cold)|(get|getting) [(any|very)] (cold|cold enough|cooler)|cold enough|keep up|keeping up|(shut|shutting|turn|turning) off|stay on|staying on|dispensing|dispense|(drop|dropping) [(the|any)] ice|harvest|harvesting)';
const SINCE = `[(since|as of) (${ANY_WEEKDAY}|yesterday|last night|this morning|last week|the weekend|noon|lunch)|(last night|this morning|yesterday|over the weekend|all day|all night|overnight|today)]`;
const TROUBLE =
  '((quit|stopped) (cooling|freezing|making ice|working)|(is|has been|was) running warm|runs warm|(keeps|kept|has been) (tripping|popping|blowing) [(the|its|it is)] (breaker|fuse|fuses|gfci|gfi)|(is|has been) leaking water [(on|all over|onto) the floor]|(runs|is running|has been running) (all the time|constantly|non stop|nonstop)|(is|has been|went|was|keeps going) (down|out) [again]|(is|has been|was) acting up)';

const PASSED =
  '(passed|passes|is good|was good|good|ok|is ok|came back (clean|good)|came out (clean|good)|is clean|clean|negative|is negative|showed nothing|shows nothing|found nothing|turned up nothing|all (good|clear|clean))';
const HELD = '(held|is holding|holding|holds|held (good|fine|steady|tight)|is tight)';
const GOOD =
  '(good|ok|fine|great|perfect|all right|normal|clear|full|solid|clean|bad|cloudy|thin|hollow|slow|short|soft|wet|small|late|early)';
const WHO =
  '[(i|we|they|he|she|customer|staff|manager|owner|the (customer|staff|manager|owner|chef|cook|kitchen|cooks))]';
const HAVE =
  '[(have|has|had|already|went ahead and|have already|has already|just|are|is|already have)]';
const ALL =
  '(it|it all|everything|all of it|all of that|that|them|<the> [(whole|entire|rest of the|bad|warm|spoiled)] FOOD|all the FOOD|most of the FOOD)'.replaceAll(
    'FOOD',
    FOOD,
  );

/** What is told of the job and names no part, reading or work: word for word, the trouble first. */
export const REMARK_RULES: readonly Rule[] = [
  rule(
    '[(so|and|ok|now)] ([the] vacuum pump is [(now|finally)] (on|running|going|hooked up and running) [now]|(i have|i have got|i got|we have|we have got|got) the vacuum pump (on|running|going) [(it|now)]|(started|i started|just started|turned on|i turned on|fired up) the vacuum [pump] [now])',
    remark,
    {
      alone: true,
      unheard: true,
      examples: ['vacuum pump is on', 'i have got the vacuum pump on'],
    },
  ),
  rule(
    `[the] (display|readout|digital display|controller|screen) [(is|still)] (says|reads|shows|reading|showing|saying|flashing|is at|at|displays) [(now|still)] (<amount>|[(a|an|code|error|alarm|the)] [(e|f|a|h|l|p|er|ha|la|hi|lo)] [<number>] [(code|alarm|error)]) [now]`,
    remark,
    { examples: ['display says twenty'] },
  ),
  rule(
    '[(i|we)] (reset|silenced|cleared|acknowledged|shut off|turned off) the (alarm|alarms|code|codes|error|fault)',
    remark,
    { examples: ['reset the alarm'] },
  ),
  rule(
    '[(i|we)] (changed|set|moved|bumped|adjusted|programmed|put) [the] (defrost|defrosts|differential|delay|time delay|fan delay|drip time|alarm limit|parameter|parameters|defrost (time|interval|termination)) (to|for|at|from) <clause>',
    remark,
    { examples: ['changed the defrost to every six hours'] },
  ),
  rule(
    `[the] oil [in (it|the compressor)] (smells|looks|is|smelled|looked|was) [${VERY}] (burnt|burned|black|dark|acidic|clean|good|clear|milky|bad|dirty|fine|brown)`,
    remark,
    { examples: ['oil smells burnt'] },
  ),
  rule(
    `[the] (acid|oil) test [(is|was|came (back|out|up)|reads|shows|showed|came)] (positive|negative|clean|good|bad|passed|failed|ok|positive for acid|no acid|acid)`,
    remark,
    { examples: ['acid test positive'] },
  ),
  rule(
    '((everything|all of it|it all|the whole thing) (looks|is|checks|checked|tests|checks out) [out] (good|ok|fine|normal|great|clean)|all good|all (checks|checked) out|(nothing|not a thing) wrong [with (it|this (one|unit)|that)]|(no|found no) (problems|issues|trouble) [(found|here|with (it|this one|this unit))]|(found|i found) nothing wrong [with it])',
    remark,
    { alone: true, examples: ['all good', 'nothing wrong with it'] },
  ),
  rule(
    '[the] (customer|manager|owner) is (happy|good|fine|satisfied|ok with it|not happy|upset)',
    remark,
    { examples: ['customer is happy'] },
  ),
  rule(
    '[(i|we)] (poured|ran|dumped|flushed) [(some|a bucket of|a cup of|hot)] water (in|in it|through it|through|down it|in the (pan|drain)|down the drain|through the drain) [[<pause>] [and] [(it|that)] (drains|drained|runs|ran|flows|is draining|went) [(fine|good|clear|out|through|right (out|through)|free)]]',
    remark,
    { examples: ['poured water in and it drains'] },
  ),
  rule(
    'quote (them|him|her|the customer) [(on|for)] (a|an|the) (cleanup|clean up|burnout|burn out|deep clean|contract|new (unit|box|machine)|maintenance (plan|contract)) [(kit|procedure)]',
    remark,
    {
      examples: ['quote them on a cleanup'],
    },
  ),
  rule(
    '[(and|now)] ([the] (low side|suction|low pressure side|system|compressor) (is|was|goes|went|is going|is pulling|pulls|pulled|is running|runs) [right] (in|into|down (in|into)|down to) (a|deep) vacuum|(it|she) (is pulling|pulls|is going|goes|went|runs|is running) [itself] [down] (in|into) (a|deep) vacuum)',
    remark,
    { alone: true, examples: ['low side is in a vacuum', 'it is pulling into a vacuum'] },
  ),
  rule(
    '[(i|we)] (was|were|have been|been|am|had been) (here|there|on (it|site|this (job|call|unit))|out here) [(for|about|around|like|almost|maybe)] <duration> [(total|all in|all together|altogether|today)]',
    timeTold,
    { examples: ['i was here an hour and a half'] },
  ),
  rule(
    '[(i|we|and)] [(also|then|just)] (purged|flowed|flowing|swept|bled|purging|ran) [(it|the (lines|line|system|joints|pipe))] [with] [dry] nitrogen [(through it|through)] [(while|as|when) ([(i|i was)] (brazed|brazing) [it] [<amount> [just a trickle]])]',
    remark,
    { examples: ['ran nitrogen while i brazed it two pounds or so'] },
  ),
  rule(
    '[(it|the (motor|fan|blade|shaft)|that motor|motor|fan|shaft)] (spins|turns|spun|turned|moves) [(free|freely|easy|fine|ok|hard|rough)] by hand',
    remark,
    { examples: ['spins free by hand'] },
  ),
  heardRule('no power', complaint, { alone: true, examples: ['no power'] }),
  rule('<pause> no power', complaint),
  rule(
    `(${IT} (has|has got|is getting|gets|is not getting|does not have) [got] (no|any) (power|juice|electricity)|there is no (power|juice) [at all] (to|at|on) ${IT}|no (power|juice) [at all] (to|at|on) ${IT})`,
    complaint,
    { examples: ['unit has no power', 'there is no power to the unit'] },
  ),
  rule(
    '[(i am|we are|just|it is|this is|today is|only)] [(doing|here for)] [(a|the|my|their)] [(spring|fall|summer|winter|quarterly|monthly|yearly|annual|scheduled|regular|routine)] (pm|p m|preventive maintenance|maintenance|tune up) [(visit|call|today|on this one|on it|here)]',
    remark,
    { alone: true, examples: ['doing a pm', 'just a pm today'] },
  ),
  rule(
    '[(i am|we are)] [(back|here|back here|back out|returning|return visit|follow up|callback)] (back|here|returning|return visit|follow up|callback) to (finish|replace|install|put in|put the|do|check|change|swap|repair|fix) <clause>',
    remark,
    { only: opensSentence, examples: ['back to finish the motor from last week'] },
  ),
  rule(`${IT} ${IS_NOT} ${COOLS} ${SINCE}`, complaint, { examples: ['it is not making ice'] }),
  rule(`(<pause>|<pause> [and] [it is]) (not|will not|does not) ${COOLS} ${SINCE}`, complaint),
  // "Not cooling, compressor runs": what opens a sentence so is why we were called.
  rule(`(not|will not|does not) ${COOLS} ${SINCE}`, complaint, {
    only: opensSentence,
    examples: ['not making ice'],
  }),
  rule(
    `[(there is|we have|they have|got)] [(a lot of|some)] water [(all over|running|leaking|pooling)] (on|onto|over|all over) the floor [(and|<pause> [and]) (it is|the alarm is|it keeps) (beeping|alarming|noisy|warm|going off)] ${SINCE}`,
    complaint,
    { examples: ['water on the floor and it is beeping'] },
  ),
  rule(
    `${IT} ${TROUBLE} ${SINCE}`,
    (tags, frame) => (frame.endsAtPause ? complaint(tags, frame) : null),
    { examples: ['unit is running warm'] },
  ),
  rule(
    `(keeps (tripping|popping) [the] (breaker|gfci|gfi)|running warm|quit cooling|quit making ice|stopped cooling|stopped making ice) ${SINCE}`,
    complaint,
    { alone: true, examples: ['keeps tripping the breaker'] },
  ),
  rule(
    `${WHO} ${HAVE} (threw|thrown|tossed|dumped|pitched|discarded|trashed|got rid of|throwing|tossing|dumping|disposed of) [(out|away)] ${ALL} [(out|away|already)]`,
    remark,
    { examples: ['discarded the milk', 'they threw out the chicken'] },
  ),
  rule(
    `${WHO} ${HAVE} (moved|moving|transferred|transferring|shifted|took|carried|carrying) ${ALL} (to|into|over to|in|out to) (the|another|their|an|a) <clause>`,
    remark,
    { examples: ['moved the product to the walk in'] },
  ),
  rule(
    `[(i|we)] (told|tell|advised|advise|asked|warned|reminded|instructed|showed) ${THEM} (to|not to|~~do not|keep|leave|shut|close|call|watch|clean|use|never|about|how to|that|they (should|need to|have to|can)|it is not|it is safe|~~it was|~~why|~~if) <clause>`,
    remark,
    { examples: ['told them to throw it out'] },
  ),
  rule('[(i|we)] (told|warned|reminded|advised|instructed) <clause>', toldByName, {
    unheard: true,
    examples: ['told denise not to load it'],
  }),
  rule(
    `[the] (leak|soap|bubble|sniffer|leak detector) (check|test|search) ${PASSED}`,
    tested('leakCheck'),
    {
      examples: ['leak check passed'],
    },
  ),
  rule(`[the] (passed|good) [(the|a)] leak (check|test|search)`, tested('leakCheck')),
  rule(
    '(no leaks|no leak|zero leaks|not a leak|no sign of a leak|no leaks at all) [found] [(anywhere|that i can find|i can find|showing|now)] [(with|by|on) (the|my|a) (detector|sniffer|leak detector|electronic leak detector|electronic detector|soap|bubbles|bubble solution|soap bubbles)]',
    remark,
    { apart: true, examples: ['no leaks found'] },
  ),
  rule(
    '[(and|so)] [(i am|we are)] not (putting|hooking up|hooking|tapping) [(my|the|any)] (gages|manifold|hoses|taps) [(on|up to|to|into)] [(it|this|that|this one)] [<pause>] [(because|since)] [(it is|that is|is)] [(a|all)] [(sealed|critically charged|critical charge|tiny|little)] [(system|unit)]',
    remark,
    { unheard: true, alone: true, examples: ['not putting gages on it it is a sealed system'] },
  ),
  rule('<pause> [(and|found)] (no leaks|no leak|not a leak|no leaks found)', remark),
  rule(
    `[the] (pressure|nitrogen|standing pressure) test (${PASSED}|${HELD})`,
    tested('pressureTest'),
    { examples: ['pressure test passed'] },
  ),
  rule(`[(the|it)] (vacuum ${HELD}|held [(a|the)] vacuum|held vacuum)`, remark, {
    apart: true,
    examples: ['vacuum held'],
  }),
  rule(
    '[the] water [(supply|valve|line)] (is|is turned|is back|was) (on|off|running|flowing|shut off|turned off|turned on|back on)',
    remark,
    { examples: ['water is on'] },
  ),
  rule('water (on|off|back on)', remark, { alone: true }),
  rule(
    '[(i|we|and|ok)] ([(the|that)] [(range|stove|oven|grill|griddle|fryer|flat top|water heater|broiler)] (pilot|pilots|pilot light|pilot lights) (is|are) [(all|back|still)] (lit|on|off|out|shut off|burning) [(again|back up|now)]|(lit|relit|shut off|shut|turned off|killed|put out) (the|that|their|all the) [(range|stove|oven|grill|griddle|fryer|flat top|water heater|broiler)] (pilot|pilots|pilot light|pilot lights) [(off|out|again|back|back up)])',
    remark,
    { unheard: true, examples: ['range pilot is lit again'] },
  ),
  rule(
    '[(and|but)] [the] rest [of (it|the (coil|evaporator|evap|condenser))] is [all] (dry|bare|warm|clear|clean|wet|sweating|fine|clear as can be|not frosted|soft)',
    remark,
    { unheard: true, alone: true, examples: ['rest of it is dry'] },
  ),
  rule(
    '[(and|but|so|ok|well)] (it|that) (is|was) not <the> (<part>|bearing|bearings) [(then|anyway|at least)]',
    remark,
    { unheard: true, alone: true, examples: ['so it is not the bearings'] },
  ),
  rule(
    `[(the|my|a|that)] [(first|second|third|last|next|new|whole)] (harvest|batch|freeze|slab|sheet|ice|cubes|bin|defrost cycle|freeze cycle|harvest cycle|cycle|drop) [(is|was|are|looks|looked|came out|dropped|comes out|are coming out)] ${GOOD}`,
    remark,
    { examples: ['harvest ok', 'first batch was good'] },
  ),
  rule(
    `[(it|she|machine|the machine)] [(just|finally)] (dropped|made|drops|harvested) [(a|the|its|it is)] [(good|full|first|second|nice|whole)] (batch|slab|sheet|harvest|load of ice)`,
    remark,
    { examples: ['dropped a good batch'] },
  ),
  rule(
    `([(it|she|<the> machine|<the> ice machine)] is making (ice|good ice|full cubes) [(now|again|fine|good)]|[the] (defrost cycle|defrost|harvest cycle|harvest|alarm|display) (works|is working|worked) [(now|again|fine|good)])`,
    remark,
    { examples: ['it is making ice now', 'defrost cycle works'] },
  ),
];
