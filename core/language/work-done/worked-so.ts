import { wordBehind } from '../words/clause-start.ts';
import { isDoneTo } from '../words/done-to.ts';
import { settledFan } from '../words/fans.ts';
import { finding, partSwapped } from '../findings/finding-of.ts';
import { isNotDone } from '../words/not-done.ts';
import { unlessNameGoesOn } from '../findings/part-lists.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, stateId, tagsIn, workId } from '../slots.ts';
import { stateAt } from '../words/state-at.ts';
import type { PartId, WorkKindId } from '../../terms/names.ts';
import { DIRT } from '../vocabulary/state-names.ts';
import { remark } from '../plain-means.ts';

const did = (kind: WorkKindId, only?: ReadonlySet<PartId>): Means =>
  unlessNameGoesOn((tags, frame) => {
    const named = partId(tags['part']);
    if (named === null || only?.has(named) === false) return null;
    if (isNotDone(frame)) return {};
    const words = frame.wordsOf(frame.span);
    const swapped = kind === 'replace' ? partSwapped(named, frame) : named;
    const coil = kind === 'defrost' && swapped === 'condenser' ? 'evaporator' : swapped;
    return { work: [{ did: kind, part: settledFan(coil, frame.context), words }] };
  });

/** The same at the part that was spoken of. */
const didIt =
  (kind: WorkKindId, only?: ReadonlySet<PartId>): Means =>
  (_tags, frame) => {
    if (isNotDone(frame)) return {};
    const words = frame.wordsOf(frame.span);
    const means = (part: PartId): Meaning | null => {
      if (only?.has(part) === false) return null;
      return isDoneTo(part, { did: kind, words })
        ? { work: [{ did: kind, part: settledFan(part, frame.context), words }] }
        : { remarks: [words] };
    };
    // Nothing but a drain is snaked.
    const otherwise: Meaning = SNAKED.test(words)
      ? { work: [{ did: kind, part: 'drainLine', words }] }
      : { remarks: [words] };
    return { ofIt: { means, inSentence: false, otherwise } };
  };
const SNAKED = /\b(?:snaked|rodded|jetted|augered|rooted)\b/i;

/** "Brushed and washed the condenser" */
const didBoth: Means = (tags, frame) => {
  const kinds = [workId(tags['work']), workId(tagsIn(tags['then'])?.['work'])];
  const [first, then] = kinds.map((kind) => kind && did(kind)(tags, frame));
  // What is pulled to be cleaned goes back in.
  if (first == null || then == null || kinds[0] === 'remove') return null;
  return kinds[0] === kinds[1]
    ? first
    : { ...first, work: [...(first.work ?? []), ...(then.work ?? [])] };
};

/** "Put some bubbles on it, yep, there she goes": the looking, and what was found by it in its words. */
const soaped: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const work: Meaning = { work: [{ did: 'leakCheck', part: null, words }] };
  return /\b(?:there|found|bubbling)\b(?!$)|\b(?:found it|bubbling)$/i.test(words)
    ? { ...work, remarks: [words] }
    : work;
};

const didThis =
  (kind: WorkKindId, part: PartId | null): Means =>
  (_tags, frame) => ({ work: [{ did: kind, part, words: frame.wordsOf(frame.span) }] });

/** "Pulled the valve's screen and cleaned it": the valve stays where it is. */
const screenCleaned: Means = (tags, frame) =>
  /\b(?:screen|strainer)\b/i.test(frame.wordsOf(frame.span)) ? did('clean')(tags, frame) : null;

/** "Dropped a tablet in the pan, after I scrubbed it" */
const tablet: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null ? null : { ...remark(tags, frame), names: part };
};

/** "Heater rods two of three were open": how many it were is in the words. */
const someOf: Means = (tags, frame) => {
  const [part, said] = [partId(tags['part']), stateId(tags['state'])];
  const state = part === null || said === null ? null : stateAt(part, said);
  return part === null || state === null ? null : { findings: [finding(part, state, frame)] };
};

/** "Rodded out the drain, plugged solid": what was done, and what it was done for. */
const cleanedOf: Means = (tags, frame) => {
  const found = someOf(tags, frame)?.findings ?? [];
  const isDirt = found.some(({ state }) => DIRTY.has(state));
  const cleaned = isDirt ? did('clean')(tags, frame) : null;
  return cleaned && { ...cleaned, findings: found };
};
const DIRTY: ReadonlySet<string> = new Set(['dirty', 'plugged', 'iced', 'oily']);

const dirtOn: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null ? null : { findings: [finding(part, 'dirty', frame)] };
};

/** "Moved the bulb to a better spot": all of it is kept as told. */
const endsThere = (frame: Frame): boolean => /^(?:|and|then|so|but)$/.test(wordBehind(frame));

const SENSING: ReadonlySet<PartId> = new Set<PartId>([
  ...(['expansionValveBulb', 'sensor', 'temperatureControl', 'defrostTermination'] as const),
  ...(['thermometer', 'controller'] as const),
]);
const HUNG: ReadonlySet<PartId> = new Set<PartId>([
  ...(['door', 'hinge', 'fanBlade', 'doorGasket', 'doorSwitch', 'drainPan', 'drainLine'] as const),
  ...(['light', 'condenserFanMotor', 'evaporatorFanMotor', 'compressor'] as const),
]);
const DIALED: ReadonlySet<PartId> = new Set<PartId>([
  ...(['temperatureControl', 'expansionValve', 'highPressureSwitch', 'lowPressureSwitch'] as const),
  ...(['evaporatorPressureRegulator', 'headPressureValve', 'fanControl', 'waterValve'] as const),
  'defrostTimer',
]);

const I = '[(i|we|just|i just|have|i have|we have|went ahead and|also|i also|and|then|so i|so we)]';
const IT = '(it|them|that|her|all of (it|them)|both [of them])';
const WAY = '[(out|off|down|up|clean|clear|free|back|good)]';
const CLEANED =
  '(rodded|jetted|augered|snaked|rooted|shop vac would|shop vacked|shop vacced|shop vacuumed|wet vacced|wet vac would|(co|c o) two d|(co|c o) two would|polished|burnished|sanded|filed|dusted|scraped|descaled|de scaled|delimed|de limed|foamed|scoured|swabbed)';
const TOOK =
  '(vacuumed|brushed|pulled|cleared|blew|got|took|cleaned|scraped|wiped|swept|dug|picked|knocked|washed|rinsed|hosed|combed|peeled|fished|flushed|sucked)';
const HOW_MUCH =
  '[(all|about|like|a good)] [(the|a|an|some|all the|all that|that|most of the|a whole)] [([<number>] (pounds|pound|ounces|handfuls|handful|inch|inches|bucket|buckets|bag)|ton|bunch|lot|load|mat|pile|carpet|blanket|wad|layer|chunk|ball|glob)] [of] [(solid|old|nasty|thick|loose)]';
const STUFF = `(${DIRT}|cottonwood seed|(mouse|rat|bird|birds|bird is|wasp|mud dauber) nest|nest|shop towel|towel|(shop|old) rag|rag|glove|plastic bag|bag|sock|slime|paper|plastic|cardboard|napkins|jelly|labels|trash)`;
const NEW = '(new|brand new|fresh|replacement|rebuilt|reman|remanufactured|used|different)';
const CLEANER =
  '[(some|a little|a bit of|a can of)] [(foam|foaming|coil|acid|alkaline|evap|evaporator|condenser|self rinsing|no rinse|nonacid)] (cleaner|foam|degreaser|brightener|acid|soap|simple cleaner|chemical|chemicals)';
const SET_IN =
  '(set|in|in place|mounted|hung|installed|on|((brazed|sweated|welded|wired|piped|bolted|screwed|soldered|hooked|strapped|plumbed) [(in|up|on|down)]))';
const SINK = '(dish machine|dishwasher|dish washer|dish pit|dish sink|sink|mop sink|pot sink)';
const SHIFTED =
  '(moved|relocated|repositioned|rotated|slid|shifted|remounted|re mounted|reclocked)';
const SQUARED = '(rehung|re hung|shimmed|leveled|aligned|realigned|squared|trued|rebalanced)';
const NOTCHES =
  '[by] [about] (a|another|<number>|a couple [of]|a few) (notch|notches|click|clicks|hair|touch|tad|smidge|number|numbers|turn|turns)';

/** What was done, in the words that a trade has for it beside the everyday ones. */
/** Which service valve it is, its name tells. */
const SIDE_OF_VALVE = /\b(?:suction|liquid|discharge)\b/i;

/** "Found a leak at the flare, which I repaired": what was named right before it. */
const doneToThat: Means = (tags, frame) => {
  const did = workId(tags['work']);
  const words = frame.wordsOf(frame.span);
  const means = (part: PartId): Meaning => ({ work: did === null ? [] : [{ did, part, words }] });
  return did === null ? null : { ofIt: { means, inSentence: true } };
};

/** Off which coil it came nobody need say. */
const iceOff: Means = (_tags, frame) =>
  isNotDone(frame)
    ? null
    : { work: [{ did: 'defrost', part: null, words: frame.wordsOf(frame.span) }] };

export const WORKED_SO_RULES: readonly Rule[] = [
  // Bubbles that were put there are none that were seen.
  rule(
    `${I} (put|sprayed|squirted|threw|dabbed|brushed|slapped|shot|poured) [(some|a few|a little|a bit of|my|more)] (bubbles|bubble|soap|suds|soap bubbles|leak (spray|soap|bubbles)) [(on|around|over|all over) (it|that|there|them|everything|<the> [<bit>] <part>)] [[<pause>] [(and|yep|yeah|then)] (there (she|it) (goes|blows|is)|there is (the|my|our|your) leak|found (it|her|the leak)|(it|she) is bubbling)]`,
    soaped,
    { unheard: true, examples: ['put some bubbles on it'] },
  ),
  rule(
    '[(the|my)] (recovery|reclaim) (is|looks) [all] (done|finished|complete|over)|[(i am|we are|i)] [all] (done|finished) (recovering|reclaiming) [(it|her|the (charge|gas|refrigerant))]',
    didThis('recover', null),
    { unheard: true, examples: ['recovery is done'] },
  ),
  // What was clamped on to get at the gas, where there are no ports.
  rule(
    `${I} (pulled|took|removed|unscrewed|unbolted|pulled off|took off) <the> [line] (tap|taps) [(off|out|back off)] [(of it|it)]`,
    didThis('remove', 'accessFitting'),
    { unheard: true, examples: ['pulled the taps'] },
  ),
  rule(
    '[(the|my|both)] [line] taps (are|is) [back] off [(it|of it)]',
    didThis('remove', 'accessFitting'),
    { unheard: true, examples: ['taps are off'] },
  ),
  rule(
    '(which|that) (i|we) [(just|have|then|also|already)] <done> [(already|myself|too)]',
    doneToThat,
    {
      unheard: true,
      examples: [],
    },
  ),
  rule(`${I} <done> and <done:then> [(off|out|down|up)] <the> <part>`, didBoth, {
    unheard: true,
    examples: ['brushed and washed the condenser'],
  }),
  rule(
    `${I} (got|put|ran|poured|used|threw|took) [(the|a|my) (hose|bucket) and] [(some|a bucket of)] (hot|warm) water (on|over|to|at) <the> <part>`,
    did('defrost', new Set<PartId>(['condenser', 'evaporator'])),
    { unheard: true, examples: ['got the hose and some warm water on the evaporator'] },
  ),
  rule(`${I} ${CLEANED} ${WAY} <the> [<bit>] <part> ${WAY}`, did('clean'), {
    unheard: true,
    examples: ['rodded out the condensate line', 'polished up the contacts'],
  }),
  rule(
    `${I} (${CLEANED}|(cleaned|cleared|flushed|snaked|unplugged|blew|vacuumed) [(out|off)]|brushed|washed) ${WAY} <the> <part> ${WAY} <pause> [(it|they) (was|were|is)] <very> <state>`,
    cleanedOf,
    { unheard: true, examples: [] },
  ),
  rule(
    `${I} ${CLEANED} ${WAY} <the> <part> ${WAY} <pause> [(it|that|all of it|slime|clog|the clog)] (came|broke|let|popped|busted) (loose|free|clear|out|go) [on the (first|second|third|fourth|last) (shot|try|blast|time|go)]`,
    did('clean'),
    { unheard: true, examples: [] },
  ),
  rule(
    `<the> <part> (had [some]|(had|has|have|is got|has got) [(about|like|at least|a good|easily)] (<number> [of (a|an)] (inch|inches)|(a|an) [(solid|thick|whole|good)] (inch|layer|coat|coating|mat|blanket|bunch|lot|ton)) of) ${STUFF} [(all|built up|caked|packed)] (on|over|in|all over) (it|them|there)`,
    dirtOn,
    { unheard: true, examples: ['fan blades had a quarter inch of crud on them'] },
  ),
  rule(`${I} ${CLEANED} ${IT} ${WAY}`, didIt('clean'), {
    unheard: true,
    examples: ['scraped them clean'],
  }),
  rule(`<the> <part> (is|was|got|has been|is been) [all] ${CLEANED} ${WAY}`, did('clean'), {
    unheard: true,
    examples: ['the drain was rodded out'],
  }),
  rule(
    `${I} (hit|soaked|sprayed|doused|treated|foamed|blasted|coated|covered) <the> [<bit>] <part> [(down|up|good)] with ${CLEANER}`,
    did('clean'),
    { unheard: true, examples: ['hit the condenser with foam cleaner'] },
  ),
  rule(
    `${I} (hit|blew|shot|blasted|flushed|cleared) <the> [<bit>] <part> ${WAY} with [(some|dry|compressed|a shot of|a blast of)] (nitrogen|nitro|co 2|c o 2|c o two|co two|air|compressed air)`,
    did('clean'),
    { unheard: true, examples: ['blew the drain with co 2'] },
  ),
  rule(
    `${I} ${TOOK} ${HOW_MUCH} ${STUFF} (off|off of|out of|out from|from|out from under) <the> [<bit>] <part>`,
    did('clean'),
    { unheard: true, examples: ['vacuumed a pound of lint off the front of the condenser'] },
  ),
  rule(
    `${I} ((combed|straightened) [out] <the> <part> fins|combed out <the> [<bit>] <part> [fins])`,
    did('repair'),
    { unheard: true, examples: ['combed out the condenser fins'] },
  ),
  rule(
    `${I} [(am|was|just)] [(finished|done|got done|started|just finished)] [(chemical|chemically|acid|pressure|power)] (washing|washed) <the> <part>`,
    did('wash'),
    { unheard: true, examples: ['finished chemical washing the evaporator'] },
  ),
  rule(
    `${I} (ran|put|sent|threw|soaked|washed) <the> <part> (through|in) the ${SINK}`,
    did('wash'),
    {
      unheard: true,
      examples: ['ran the filter through the dishwasher'],
    },
  ),
  rule(`${I} (ran|put|sent|threw|soaked|washed) ${IT} (through|in) the ${SINK}`, didIt('wash'), {
    unheard: true,
    examples: ['so i ran it through the dish machine'],
  }),
  rule(
    `${I} (steamed|melted|thawed|defrosted|heated) <the> [<bit>] <part> [all] (free|clear|loose) [[<pause>] [and] [(free|clear)] of ice]`,
    did('defrost'),
    { unheard: true, examples: ['steamed the evaporator free and clear of ice'] },
  ),
  rule(
    `${I} (chipped|knocked|broke|scraped|melted|steamed|thawed|got|cleared|beat|hosed|washed|sprayed|blew|rinsed) [all] [(the|some)] ice (away from|off|off of|out of|out from under|from around|out from around|from|loose from) <the> [<bit>] <part>`,
    did('defrost'),
    { unheard: true, examples: ['chipped ice away from the drain pan heater'] },
  ),
  rule(
    '[(a|the|my)] (manual|forced) defrost (started|is (running|going|on|started)|initiated|going|running)',
    didThis('defrost', null),
    { unheard: true, examples: ['manual defrost started'] },
  ),
  rule(
    `${I} (dumped|dropped|threw|put|tossed|stuck) [(a|an|some|two|another|new)] [new] [(pan|drain|condensate|slime|algae)] (tablet|tablets|tab|tabs|strip|strips) in <the> <part>`,
    tablet,
    { unheard: true, examples: ['dumped a pan tablet in the drain pan'] },
  ),
  rule(
    `${I} (pulled|took out|removed|took|popped out) <the> <part> [out] and (cleaned|washed|brushed|rinsed|blew|soaked|wiped|scrubbed|flushed) (it|them) ${WAY}`,
    screenCleaned,
    { unheard: true, examples: ['pulled the txv screen and cleaned it'] },
  ),
  rule(
    `${I} (put|hung|stuck|got|slapped|mounted|installed|brazed|threw|dropped|ran|popped|screwed|wired|bolted|plumbed) [(in|on|up)] [(a|an|some|the|all|two|three|four)] ${NEW} <part> [(in|on|up|back in)] [on (the|both|all|all the|that) (door|doors|drawers|lids|lid|unit|box)]`,
    did('replace'),
    { unheard: true, examples: ['put a fresh filter dryer in', 'hung new gaskets on both doors'] },
  ),
  rule(
    `[(a|an|the|my)] ${NEW} <part> (went|is going|got put|was put) [back] (in|on)`,
    did('replace'),
    { unheard: true, examples: ['new run cap went in'] },
  ),
  rule(
    `[(i|we|have|i have|we have)] (got|have got|have) <the> ${NEW} <part> [all] ${SET_IN} [[<pause>] and ${SET_IN}]`,
    did('replace'),
    { unheard: true, examples: ['i have got the new compressor set and brazed in'] },
  ),
  rule(`<the> ${NEW} <part> is [all] ${SET_IN} [[<pause>] and ${SET_IN}]`, did('replace'), {
    unheard: true,
    examples: ['the new compressor is set and piped in'],
  }),
  rule(
    `${I} (installed|put in|put|mounted|wired in|used) [(a|an|the)] [(universal|${NEW})] <part> (in place of|to replace|where) <the> [(old|bad|original)] <part:old> [was]`,
    did('replace'),
    {
      unheard: true,
      examples: ['installed a universal thermostat in place of the old thermostat'],
    },
  ),
  rule(
    `${I} (put|installed|brazed|cut|sweated|stuck) [in] (a|an) [new] [(burnout|burn out|acid|clean up|cleanup|suction|oversized|bigger)] <part> (in|on|into) the (suction|liquid|discharge) line`,
    did('add'),
    { unheard: true, examples: ['put a burnout dryer in the suction line'] },
  ),
  rule(
    `[(so|and)] (a|an) [(new|burnout|burn out|acid|clean up|cleanup|suction|bigger)] <part> is in the (suction|liquid|discharge) line`,
    did('add'),
    { unheard: true, examples: ['a burnout dryer is in the suction line'] },
  ),
  rule(
    `${I} ((ripped|tore|yanked|pried|hauled|dug|sweated|unsweated|snipped|torched) (out|off) <the> [(old|bad|burnt)] <part>|(ripped|tore|yanked|pried|hauled|dug|sweated|unsweated|snipped|torched) <the> [(old|bad|burnt)] <part> (out|off)|yanked <the> [(old|bad|burnt)] <part>)`,
    did('remove'),
    { unheard: true, examples: ['ripped out the cap tube'] },
  ),
  rule(
    `${I} (brazed|rebrazed|soldered|welded|sweated) [(up|over|shut|in)] <the> [(suction line|liquid line|discharge line|suction|liquid|drain)] <part> [(up|shut)] [with [<number> percent] [(rod|solder|stick|sticks)]]`,
    (tags, frame) =>
      /\b(?:with|up|line (?:joint|fitting|connection))\b/i.test(frame.wordsOf(frame.span)) &&
      !SIDE_OF_VALVE.test(tags['part'] === 'serviceValve' ? frame.wordsOf(frame.span) : '')
        ? did('repair')(tags, frame)
        : null,
    { unheard: true, examples: ['brazed up the suction line joint with fifteen percent rod'] },
  ),
  rule(
    `${I} ${SHIFTED} <the> [(sensing|txv|control)] <part> [(up|down|over|around|back|closer|away)] [(to|on|off|from|near|by) (<number> oclock|(the|its|it is) [(top|side|bottom|other|far|back|outlet|inlet|return air|supply air|return|supply)] [(end|side|of the line|of the pipe|of the coil|wall|line|pipe)])]`,
    did('adjust', SENSING),
    { unheard: true, only: endsThere, examples: ['moved the sensing bulb up to ten oclock'] },
  ),
  rule(
    `${I} (strapped|insulated|wrapped|taped|clamped|tied) [down] [(back|up)] and (insulated|strapped|wrapped|taped|clamped) (it|<the> <part>) [(up|down|back|tight)]`,
    (tags, frame) =>
      tags['part'] === undefined
        ? didIt('tighten', SENSING)(tags, frame)
        : did('tighten')(tags, frame),
    { unheard: true, examples: ['strapped and insulated it'] },
  ),
  rule(
    `${I} ${SQUARED} [up] <the> [(top|bottom|left|right)] <part> [(up|square)]`,
    did('adjust', HUNG),
    {
      unheard: true,
      examples: ['rehung the door', 'shimmed the top hinge'],
    },
  ),
  rule(
    `${I} (turned|bumped|dialed|backed|cranked|moved|set|nudged|knocked) <the> <part> (up|down|back|in|out|colder|warmer|over) ${NOTCHES}`,
    did('adjust', DIALED),
    { unheard: true, examples: ['turned the thermostat up a notch'] },
  ),
  rule(
    `${I} (jumpered|jumped|bypassed|(ran|put|threw|stuck) (a|my) (jumper|wire)) (across|over|around|past) <the> <part>`,
    did('bypass'),
    { unheard: true, examples: ['jumpered across the low pressure control'] },
  ),
  rule(
    `${I} (crimped|put|installed|stuck|soldered) [on] [(new|some|fresh|<number>)] [new] (ends|spades|lugs|crimps|connectors|terminals|spade connectors|forks|rings) (on|onto|on to) <the> [<part>] (leads|lead)`,
    didThis('repair', 'terminal'),
    { unheard: true, examples: ['crimped new spades onto the compressor leads'] },
  ),
  rule(
    '<the> <part> [(rods|elements|number)] <number> [out] of [the] <number:all> (is|are|was|were) <very> <state>',
    someOf,
    { unheard: true, examples: ['heater rods two of three were open'] },
  ),
  rule(
    `${I} (replaced|changed|swapped|changed out|swapped out|put in) (all (two|three|four|five|six|of them)|both [of them]|the (pair|set|lot)|the whole set) [out]`,
    (tags, frame) => (wordBehind(frame) === '' ? didIt('replace')(tags, frame) : null),
    { unheard: true, examples: ['replaced all three'] },
  ),
  rule(
    '[(it is|took|about|same length|put in)] [<pause>] <number> (foot|feet|ft) of (oh (two|three|four|five|six|seven|eight) (oh|one|two|three|four|five|six|seven|eight|nine)|<number:bore>) [(cap tube|tube|tubing|copper|line|pipe|id|soft copper)]',
    remark,
    { unheard: true, examples: ['nine foot of oh four two'] },
  ),
  rule(
    `${I} (got|have got|have) (all [of] the|all that|the last of the) (ice|frost) (off|out|melted|cleared [(off|out)]|gone|melted off|thawed) [(of|off) (it|there|the coil)]`,
    iceOff,
    { unheard: true, apart: true, examples: ['got all the ice off'] },
  ),
];
