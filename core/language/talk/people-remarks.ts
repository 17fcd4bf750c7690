import { FOOD, KEPT, THEM } from '../words/food-words.ts';
import { holdsNumber, holdsReading, spelledOut } from '../words/own-reading.ts';
import { startsClause } from '../words/clause-start.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { partId, spanIn } from '../slots.ts';
import { BREAKS } from '../words/state-at.ts';
import { ask } from '../questions/asking.ts';
import { nothing } from '../plain-means.ts';

/** Word for word, unless a reading stands in it. */
export const remark: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  return holdsReading(words) ? null : { remarks: [words] };
};

/** The customer's trouble in the words that it was told in. */
export const complaint: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  return holdsReading(words) ? null : { memos: [words] };
};

/** The names of a choice, for a pattern. */
function namesOf(choice: string): string {
  return `(?:${choice.replace(/^\(|\)$/g, '').replaceAll(/ ?\[.*?\]/g, '')})`;
}

const wordsAt = (tags: Parameters<Means>[0], frame: Frame): string => {
  const span = spanIn(tags['clause']);
  return span === null ? '' : spelledOut(frame.wordsOf(span));
};

/** What people on the premises do to a unit and to what is kept in it, and what they decide. */
const TELLING =
  /^(?:(?:already|just|also|finally|even|probably|always|all|both|really|actually|never|only|apparently|went ahead and|had to|have to|has to|ended up|been|have|has|had|have been|has been|had been|got|keep|keeps|kept|is|are|was|were|did not|do not|does not) )*(?:order(?:ed|s|ing)?|fix(?:ed|es)?|repair(?:ed|s)?|rewired|wired|yank(?:ed|s)|shov(?:ed|es)|jamm(?:ed|s)|rigged|taped|wedged|jump(?:ed|ers?)|bypass(?:ed|es)?|clean(?:s|ing)?|wash(?:es|ing)?|brush(?:ed|es)?|chang(?:es|ing)|works on|told|toss|tossing|tossed|discard(?:ed|s|ing)?|throw|threw|thrown|throwing|dump|dumped|dumping|pitch|pitched|trash|trashed|lose|lost|moved?|moving|unplug|unplugged|plugged|propp?|propped|propping|left|leav(?:e|es|ing)|shut|turn(?:ed|s|ing)? (?:it|the|them|on|off|up|down|this|that|everything)|switched|set|reset|resetting|kicked|kicking|hit|hits|hitting|bang(?:s|ed|ing)?|slam(?:s|med|ming)? (?:the|it)|open(?:ed|s|ing)?|closed?|cleaned|hosed|hoses|sprayed|spray|washed|mopp(?:ed|ing)|stack(?:s|ed|ing)?|load(?:s|ed|ing)?|overload(?:s|ed|ing)?|pack(?:s|ed|ing)?|block(?:s|ed|ing)?|cover(?:s|ed|ing)?|put|stuff(?:s|ed|ing)?|store[sd]?|adjusted|messed|messing|fooled|fooling|played|playing|tried|added|topped|charged|over ?charged|under ?charged|gassed|installed|changed|replaced|swapped|worked|been (?:out|in|having|getting)|came|had|noticed|heard|saw|smell(?:s|ed)|found|wiped|iced|defrosted|chipp(?:ed|ing)|pok(?:ed|ing)|jabb(?:ed|ing)|bumped|backed|ran|broke|bent|ripped|tore|cut|pulled|took|signed|approv(?:e|es|ed)|declin(?:e|es|ed)|refus(?:e|es|ed)|okayed|authoriz(?:e|es|ed)|sign(?:s|ed)? off|agreed?|know[sn]?|knew|not know|call(?:s|ed) (?:it|this|us|in|for)|complain(?:s|ed)?|gave|give|bought|use[sd]?|using|run out|running|scrap(?:ed|ing)|lost|sold|sent|bring|brought|borrowed|using|forgot|forgets?|locked|tripped|flipped|climb(?:ed|s)|rest(?:s|ing)?|lean(?:s|ing)?|stor(?:e|es|ing)|keep(?:s|ing)?|wants? (?:a (?:call|quote|price|copy|estimate)|us to|me to|to (?:know|see|wait|think|hold|talk|be|get a|spend|pay|do|fix|replace|keep|go|have|try|save))|want to (?:spend|pay|do|fix|replace|keep|wait|go|have)|will not (?:pay|spend|approve|sign|let)|can not (?:afford|pay|wait)|(?:red )?tag(?:s|ged)?|fail(?:s|ed) (?:it|them|us)|pass(?:es|ed) (?:it|them|us)|inspect(?:s|ed)?|wr(?:ote|itten|ites) (?:it|them|us|him|her) up|docked|shut (?:it|them|us) down|happy|upset|satisfied|[a-z]+ing (?:it|them|down|off|out|in|up|ice|gas|water|salt|food|product|the|this|that)|here (?:when|yesterday|today|this|last|earlier|and)|not here|gone for)\b/i;
/** Of their lives, their money and our day. */
const NOT_OF_THE_JOB =
  /\b(?:lunch|dinner|breakfast|coffee|vacation|birthday|married|wife|husband|kids?(?! you not)|son|daughter|football|game|movie|golf|fishing|hunting|weather|rain(?:ing)?|snow(?:ing)?|traffic|parked|parking|paid|pays?|raise|overtime|hired|fired|quit his|quit her|promoted|retir\w+|divorc\w+|dog|cat|school for|college|mile|miles|truck|van|invoice|dollars?|bucks|gave (?:us|me|him|her|them) an?|one of (?:these|those))\b/i;
const OF_FOOD = new RegExp(`\\b${namesOf(FOOD)}\\b`, 'i');
/** "They close at ten" */
const HOURS =
  /^(?:(?:is|are|been|have|has) )*(?:opens?|closes?|closed)(?: (?:at|till|until|on|in|since|for|early|late|now|today|up)\b|$)/i;
/** What a rule of its own reads: how the door is kept, what the control is set at. */
const READ_OTHERWISE =
  /\b(?:doors?|lids?) (?:open|propped)\b|\b(?:stat|thermostat|set ?point|dial|control)\b.* (?:to|at) /i;

/** "Somebody propped the door with a keg" is told of the job; "he's getting married" is not. */
const toldOfPeople: Means = (tags, frame) => {
  const told = wordsAt(tags, frame);
  if (NOT_OF_THE_JOB.test(told) && !OF_FOOD.test(told)) return null;
  if (HOURS.test(told) || READ_OTHERWISE.test(told)) return null;
  // "She's running sixteen on the low side": the unit is.
  if (/^is running\b/.test(told) && holdsNumber(told)) return null;
  return TELLING.test(told) ? remark(tags, frame) : null;
};

/** What somebody else is going to do is no work of ours; what they are going to need is. */
const theirPlan: Means = (tags, frame) =>
  startsClause(frame) && PLANNED.test(wordsAt(tags, frame)) ? remark(tags, frame) : null;
const PLANNED =
  /^(?:replace|fix|repair|clean|change|install|put|swap|pull|move|run|add|bring|order|wire|build|take|shut|turn|paint|rebuild|remodel|tear|sell|buy|get rid|throw|toss|defrost|unplug|call|send)\b/i;

const isOfFood = (tags: Parameters<Means>[0], frame: Frame): boolean =>
  spanIn(tags['clause']) === null || OF_FOOD.test(wordsAt(tags, frame));

const SIDE = '[(night|day|morning|evening|dish|prep|fry|line|delivery|bread|beer|soda|milk)]';
const PEOPLE = `(<who>|he|she|they|somebody|someone|nobody|no one|everybody|everyone|whoever|(the|their|another|some|that|a different|an other|one of the|one of their) [(last|other|previous|first|same)] ${SIDE} (guy|guys|tech|company|outfit|crew|mechanic|shift|girl|girls|kid|kids|help|driver|vendor|cooks|employees|employee|workers|worker|contractor|plumber|electrician|cleaning (crew|people|lady))|(last|other|previous) (guy|tech|company|outfit|crew|mechanic)|the (staff|employees|cooks|kitchen|waiters|servers|bartenders|cashiers|kids|students|customers|cleaners|help))`;
const LEAD = '[(and|so|but|because|well|yeah|turns out|looks like|apparently|supposedly)]';

const DONE_WITH_FOOD = new RegExp(
  `\\b(?:put|keep|use|sell|serve|save|restock|reload|load|eat|throw|toss|dump)\\b.*\\b(?:it|them|${namesOf(FOOD)})\\b`,
  'i',
);

/** What they left open was found so; we did not open it. */
const leftOpenByThem: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const words = frame.wordsOf(frame.span);
  return part === null ? null : { findings: [{ part, state: 'open', words }] };
};

/** "Somebody left the disconnect off": what breaks the power was found open, whoever turned it. */
const leftOff: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null || !BREAKS.includes(part) || !startsClause(frame)
    ? null
    : { findings: [{ part, state: 'open', words: frame.wordsOf(frame.span) }] };
};

/** "Chef wants to know if he can put the food back" asks what a colleague would answer. */
const asksForThem: Means = (tags, frame) => {
  const words = wordsAt(tags, frame);
  if (!DONE_WITH_FOOD.test(words) || ANSWERED.test(words)) return remark(tags, frame);
  if (!LOADS.test(words)) return ask({ ask: 'judge', about: 'food' });
  // What goes back in asks for the box, and the food's own state is another question.
  const isWhen = /\b(?:when|how (?:long|soon))\b/i.test(frame.wordsOf(frame.span));
  return ask({ ask: isWhen ? 'eta' : 'compare', about: 'boxTemp' });
};
const LOADS = /\b(?:load|reload|restock|put\b.*\bback)\b/i;

/** "…and I told him tomorrow morning" */
const ANSWERED = /\b(?:i|we) (?:just )?(?:told|said|says|tell|let)\b/i;

/** "Product was moved to the other cooler": whoever did it, what became of the food is told. */
const becameOf: Means = (tags, frame) => (startsClause(frame) ? remark(tags, frame) : null);

/** What is told of the people at the site, and for them: kept as it was said. */
export const PEOPLE_RULES: readonly Rule[] = [
  rule(
    `${LEAD} (i|we) (did not|have not) (throw|thrown|toss|tossed|dump|dumped) (anything|any of it|any [of (the|their)] ${FOOD}) [<clause>]`,
    remark,
    { unheard: true, only: startsClause, examples: ['i did not throw anything out'] },
  ),
  rule(
    `${LEAD} [(all [of]|most of|some of|half of)] (the|their|all the|all their|a lot of|some) [(bad|warm|spoiled|rest of the|whole)] ${FOOD} (is|are|was|were|has been|have been|got|had to be|has to be|had been|went|is being|are being) [(all|already|just)] (moved|thrown|tossed|dumped|trashed|discarded|pitched|transferred|shifted|taken|pulled|in|on|over|put|iced|packed|lost|spoiled|ruined|bad) [<clause>]`,
    becameOf,
    { examples: ['the product was moved to the other cooler'] },
  ),
  rule(
    `${LEAD} [(the|their|all the|all their|all of the)] (${KEPT}|beer|drinks) (is|are) [all] [still] (fine|ok|good|cold|all right|safe|frozen|solid|hard) [(so|and|there is|<pause>)] [(nothing (to (toss|throw (out|away)|dump|pitch)|lost|spoiled|thrown out)|no loss|no product loss)]`,
    remark,
    { unheard: true, alone: true, examples: ['milk is fine nothing to toss'] },
  ),
  rule(
    `${LEAD} (product|food) (is|was|has been|got|had to be|has to be|is being) [(all|already|just)] (moved|thrown|tossed|dumped|trashed|discarded|pitched|transferred|shifted|taken|pulled|iced|packed|lost|spoiled|ruined) [<clause>]`,
    becameOf,
    { examples: ['product was moved to the other cooler'] },
  ),
  rule(
    `${LEAD} (<who>|he|she|they|the kitchen) (wants to know|want to know|is asking|are asking|asked|asks|keeps asking|keep asking|wondering|is wondering) (if|whether|how|what|why|where|when) <clause>`,
    asksForThem,
    { examples: ['chef wants to know if he can put the food back in'] },
  ),
  rule(
    `${LEAD} (<who>|he|she|they|the kitchen) (wants to know|want to know|is asking|are asking|asked|asks|keeps asking|keep asking) [(me|us)] (is|are|does|do|can|could|should|will|would|did|was) <clause>`,
    asksForThem,
    { unheard: true, examples: ['she wants to know does she have to throw the milk out'] },
  ),
  rule(
    '(they|he|she|<who>|dispatch|the office|somebody) (called|phoned|wrote|sent|put) (it|this|this one|us|the call|the ticket) [(in|out|up)] (as|for|because|saying|with) <clause>',
    complaint,
    { examples: ['they called it in as running warm'] },
  ),
  rule(
    '[the] (call|ticket|work order|service call|request|dispatch) (is for|was for|says|said|came in (as|for|saying)|reads|was) <clause>',
    complaint,
    { examples: ['ticket says running warm'] },
  ),
  rule(
    '[(i am|we are)] (here|out here) (for|on|about|because of) (a|an|the) (cooler|freezer|box|unit|walk in|reach in|case|ice machine|warm|down|call|complaint|no cool|leak|leaking|noisy|iced up) <clause>',
    complaint,
    { examples: ['here for a cooler that will not hold'] },
  ),
  rule(
    `${LEAD} (tell|ask|told|asked|remind|reminded|warned|warn|showed|show|advised|advise|let|have|had) ${THEM} (to|not to|that|about|know|how|quit|stop|keep|watch|check|call) <clause>`,
    remark,
    { examples: ['ask them to quit stacking product against the back wall'] },
  ),
  rule('[the] (customer|contact|manager|owner|chef) is name is <clause>', remark, {
    examples: ['manager is name is dolores'],
  }),
  rule(
    '[the] (p o|po|purchase order|work order|w o|ticket|authorization|approval) [(number|code)] (is|was|says) <clause>',
    remark,
    { examples: ['purchase order is four four seven one'] },
  ),
  rule(
    '(write down|(put [me] down [for]|put in|log|mark [down]|charge [(them|him|it)] [for]|bill [(them|him|it)] [for]) [(about|like)]) (<number>|an) (hours|hour|minutes) [<clause>]',
    remark,
    { examples: ['put down two hours plus the parts run'] },
  ),
  rule(
    '(add|charge|bill|put (on|in)) [(them|him|her|it|the (customer|store))] [for] (a|the|one|another) [(full|second|double)] (trip|service|diagnostic|travel|truck|fuel|disposal|recovery|overtime|emergency) [(call|service)] (charge|fee|surcharge|rate)',
    remark,
    { examples: ['add a trip charge'] },
  ),
  rule(
    'bill (it|this|that|this one|them|the (district|office|store|owner)) [to] <clause>',
    remark,
    {
      examples: ['bill it to the district'],
    },
  ),
  rule(
    `${LEAD} [(i|we|they)] (nothing (lost|was lost|got lost|spoiled|thrown out|~~to (toss|throw (out|away)|dump|pitch)|~~(had|has|needs|needed) to (be (thrown (out|away)|tossed|dumped|pitched)|go in the (trash|garbage|dumpster)))|~~(do not|did not) have to (toss|throw (out|away)|dump) (anything|any of it)|no (product|food) (lost|loss|was lost|spoiled)|did not lose (anything|any [(product|food)])|no product loss|(lost|threw out|tossed|dumped) <clause>)`,
    (tags, frame) => (isOfFood(tags, frame) ? remark(tags, frame) : null),
    { examples: ['no product lost', 'lost all the dairy'] },
  ),
  rule(
    `${LEAD} ${PEOPLE} [(had|has|have|keep|keeps|kept|always|just|been|are|is)] (propped|left|leave|leaves|leaving|prop|props|propping|blocked|wedged|had|keep|keeps|holding|hold|hold) <the> <part> [wide] (open|propped) [(all (day|morning|night|the time)|overnight|for <clause>|during <clause>|while <clause>|with <clause>)]`,
    leftOpenByThem,
    { examples: ['he left the door open'] },
  ),
  rule(
    `${LEAD} ${PEOPLE} [(had|has|have|keep|keeps|kept|always|just|went and)] (left|leave|leaves|turned|turns|shut|shuts|switched|switches|flipped|threw|kicked|cut|knocked|had) (<the> <part> off|off <the> <part>) [on (me|us|it)]`,
    leftOff,
    { unheard: true, examples: ['somebody left the disconnect off'] },
  ),
  rule(
    `${LEAD} ${PEOPLE} (is|are) (going to|supposed to|coming [out] to|about to|planning to) <clause>`,
    theirPlan,
    {
      examples: ['the plumber is going to replace the drain line tomorrow'],
    },
  ),
  rule(`${LEAD} ${PEOPLE} <clause>`, toldOfPeople, {
    only: startsClause,
    examples: ['somebody propped the door with a keg'],
  }),
  rule(
    '(go with|use|trust|believe|i trust|i believe|i would go with|going with) (the|my|mine|my own) [(probe|thermometer|meter|gun|stick|gages|one)]',
    nothing,
    { alone: true, examples: ['go with the probe'] },
  ),
];
