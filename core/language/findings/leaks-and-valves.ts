import { startsClause, wordBehind } from '../words/clause-start.ts';
import { finding } from './finding-of.ts';
import { settledFan } from '../words/fans.ts';
import { isNotDone } from '../words/not-done.ts';
import { VALVES } from '../work-done/left-open.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, stateId, tagsIn } from '../slots.ts';
import { stateAt } from '../words/state-at.ts';
import type { PartId, WorkKindId } from '../../terms/names.ts';
import type { Tags } from '../../grammar/nodes.ts';
import type { Finding, Work } from '../utterance.ts';
import { remark } from '../plain-means.ts';

/** "Leaking by the stem" is at the stem; a valve that leaks by does not hold. */
const leaksThere: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null
    ? null
    : { findings: [finding(settledFan(part, frame.context), 'leaking', frame)] };
};

const oily: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null ? null : { findings: [finding(part, 'oily', frame)] };
};

/** Where it leaks: at a part, or at a joint that has no name but its shape; what feeds the coil is the coil's. */
function leakAt(tags: Tags, frame: Frame): PartId {
  const part = partId(tags['part']);
  if (part !== null) return settledFan(part, frame.context);
  return /\b(?:distributor|feeder)\b/i.test(frame.wordsOf(frame.span)) ? 'evaporator' : 'joint';
}

const leaks: Means = (tags, frame) =>
  isNotDone(frame) ? {} : { findings: [finding(leakAt(tags, frame), 'leaking', frame)] };

/** "Dye at the suction port" is seen there; "put dye in at the suction port" is not. */
const leaksAtStart: Means = (tags, frame) => (startsClause(frame) ? leaks(tags, frame) : null);

/** What rubbed through and is not said to leak has failed all the same. */
const rubbed: Means = (tags, frame) => {
  if (/\b(?:leak|seep|weep)/i.test(frame.wordsOf(frame.span))) return leaks(tags, frame);
  return startsClause(frame) ? { findings: [finding(leakAt(tags, frame), 'failed', frame)] } : null;
};

const worked =
  (did: WorkKindId, part: PartId | null): Means =>
  (_tags, frame) =>
    isNotDone(frame) ? {} : { work: [{ did, part, words: frame.wordsOf(frame.span) }] };

const checked: Means = (tags, frame) => ({
  ...worked('leakCheck', leakAt(tags, frame))(tags, frame),
  ...(/\b(?:nothing|none)$/i.test(frame.wordsOf(frame.span)) ? {} : remark(tags, frame)),
});

/** What feeds the coil is near much else: what a detector tells there is kept as told. */
const sniffed: Means = (tags, frame) =>
  tags['part'] === undefined && /\b(?:distributor|feeder)\b/i.test(frame.wordsOf(frame.span))
    ? null
    : leaks(tags, frame);

const atValve =
  (did: WorkKindId): Means =>
  (tags, frame) => {
    const part = partId(tags['part']);
    if (part === null ? !/\bking\b/i.test(frame.wordsOf(frame.span)) : !VALVES.has(part))
      return null;
    return worked(did, part ?? 'kingValve')(tags, frame);
  };

/** Valves that are back seated, and their caps on. */
const allBack: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const work: Work[] = [{ did: 'restore', part: 'serviceValve', words }];
  if (/\bcaps?\b/i.test(words)) work.push({ did: 'restore', part: 'caps', words });
  return { work };
};

const valveOf = (tags: Tags): PartId => {
  const part = partId(tags['part']) ?? partId(tagsIn(tags['on'])?.['part']);
  return part !== null && VALVES.has(part) ? part : 'serviceValve';
};

/** "The stem packing's weeping": what is found at a valve's own bits is found at the valve. */
const packing: Means = (tags, frame) => {
  const said = stateId(tags['state']);
  const part = valveOf(tags);
  const state: Finding['state'] | null = said === null ? 'failed' : stateAt(part, said);
  return state === null || !startsClause(frame)
    ? null
    : { findings: [finding(part, state, frame)] };
};

const glandNut: Means = (tags, frame) => worked('tighten', valveOf(tags))(tags, frame);

const noSeat: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null || !VALVES.has(part) ? null : { findings: [finding(part, 'failed', frame)] };
};

const kingStands = (frame: Frame): Meaning => {
  const state = /\b(?:closed|shut)\b/i.test(frame.wordsOf(frame.span)) ? 'closed' : 'open';
  return { findings: [finding('kingValve', state, frame)] };
};

const badValves: Means = (_tags, frame) =>
  startsClause(frame) ? { findings: [finding('compressor', 'failed', frame)] } : null;

const I = '[(i|we|just|i just|have|i have|and|then|so i|so we|also)]';
const SNIFFER =
  '[(the|my|our)] [(electronic|electric|heated diode|infrared|ultrasonic)] (sniffer|detector|leak detector|halide torch|leak torch|halide|ultrasonic|bug)';
const WENT =
  '((went|goes|is going) (off|crazy|nuts|wild)|hit|hits|is hitting|alarmed|alarms|beeped|beeps|is beeping|(is|was|starts|started) (singing|chirping|squealing|hollering|wailing|ringing|ticking fast)|sings|chirps|hollers|screamed|screams|is screaming|lit up|found it|pegged [out]|picked (it|one|something|a leak) up|picked up [(a leak|it|one|something)]|(turned|went|burned|burns) green|(shows|showed|got) a (leak|hit))';
const AT = '[(right|all|just)] (at|on|near|by|around|in|over|under|at about|off of|from)';
const FITTING =
  '(the|a|one|that|this|my) [(top|bottom|left|right|back|front|first|second|last|lower|upper|same|one of the)] [(of the)] (u bend|return bend|u bends|return bends|elbow|tee|coupling|braze|weld|union|distributor|distributor tube|feeder tube)';
const PACKING_ON = [
  ['leaking', '(leaking|weeping|seeping|dripping|bubbling|leaky)'],
  ['loose', '(loose|backed (out|off))'],
  ['failed', '(bad|shot|worn [out]|gone|dry|dried out|stripped|cracked|bent|broken|rounded [off])'],
] as const;
const STEM =
  '[(stem|shaft|body|cap|core|nut|flange|bonnet|tee|packing|elbow|end|port|seat|threads)]';
const SPOT = `(<the> [<bit>] <part> ${STEM}|${FITTING} [(in|on|of|at) <the> <part>]) [right (by|at|near|around|under|behind|before|after) the (distributor|compressor|condenser|evaporator|receiver|dryer|valve|bend|header|fan|pan)]`;
const DYE = '[(uv|u v|the|some|got|there is|i see|i have|i have got)] [(uv|u v)] dye';
const LEAKS = '(the|a|any|that|my|her)';
const DETECTOR =
  '([(the|my|an|a)] [(electronic|electric|ultrasonic|halide)] (detector|leak detector|sniffer|torch|soap|bubbles|soap bubbles|dye|uv light|black light))';
const TURNS = '[(about|like|another|maybe)] (<number> [of a]|a|a couple [of]) (turn|turns)';
const KING = '[the] king';

/** What holds refrigerant, and bubbles where it gets out. */
export const HOLDS_GAS: ReadonlySet<PartId> = new Set<PartId>([
  ...(['evaporator', 'condenser', 'joint', 'accessFitting', 'serviceValve', 'kingValve'] as const),
  ...(['filterDrier', 'receiver', 'accumulator', 'expansionValve', 'liquidLine'] as const),
  ...(['suctionLine', 'dischargeLine', 'capillaryTube', 'liquidLineSolenoid', 'hose'] as const),
  ...(['compressor', 'caps', 'headPressureValve', 'reliefValve', 'checkValve'] as const),
]);

/** "Bubbles on it too": of the part that was found oily just before. */
const bubblesOnIt: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  if (OTHER_ONE.test(words)) return remark(tags, frame);
  const means = (part: PartId): Meaning =>
    HOLDS_GAS.has(part) ? { findings: [finding(part, 'leaking', frame)] } : { remarks: [words] };
  return { ofIt: { means, inSentence: false, otherwise: { remarks: [words] } } };
};

/** Which that is nobody knows but the hands. */
const OTHER_ONE = /\bother one\b/i;

/** "It went off at the suction line": a detector did; at the compressor it may be a switch. */
const wentOffThere: Means = (tags, frame) => {
  const part = leakAt(tags, frame);
  return HOLDS_GAS.has(part) && part !== 'compressor' ? leaks(tags, frame) : null;
};

/** "Two leaks, one at the flare and one at the braze" */
const leaksHere: Means = (tags, frame) => {
  const parts = ['first', 'second'].map((slot) => partId(tagsIn(tags[slot])?.['part']) ?? 'joint');
  const found = [...new Set<PartId>(parts)].map((part) => finding(part, 'leaking', frame));
  return { findings: found, remarks: [frame.wordsOf(frame.span)] };
};

/** "Put bubbles on it and nothing" */
const noneOnIt: Means = (tags, frame) => ({
  ...worked('leakCheck', null)(tags, frame),
  ...remark(tags, frame),
});

/** Where it leaks, told by what showed it, and how the valves of a system stand. */
export const LEAK_AND_VALVE_RULES: readonly Rule[] = [
  rule(
    `[(and|but|so|yeah|yep)] it ((went|goes|is going) off|beeped|beeps|alarmed|lit up) [again] ${AT} ${SPOT} [(though|too|also|again)]`,
    wentOffThere,
    { unheard: true, only: startsClause, examples: ['it went off at the suction line'] },
  ),
  rule(
    `[(and|so|ok|yeah)] [(i have|i have got|i got|got|we have|we have got|there is|there are|that is|found|i found|that makes|makes)] (two|a couple [of]|2) [(different|separate|small|little|bad)] (leaks|leakers) [<pause>] [(one|first one|the first one)] [is] ${AT} (<the> [<bit>] <part:first> ${STEM}|${FITTING}) [<pause>] [and] [(one|the other|the other one|another|another one|the second [one])] [is] [${AT}] (<the> [<bit>] <part:second> ${STEM}|${FITTING})`,
    leaksHere,
    { unheard: true, examples: ['i got two leaks one at the flare and one at the braze joint'] },
  ),
  rule(
    `[(and|so|ok|yeah)] [(i have|i have got|i got|got|we have|we have got|there is|there are|that is|found|i found|that makes|makes)] (two|a couple [of]) [(different|separate|small|little|bad)] (leaks|leakers) [(on|in) (it|here|there|this one)]`,
    remark,
    { unheard: true, apart: true, examples: ['i got two leaks'] },
  ),
  rule(
    `${I} ((put|got|brushed|sprayed|squirted|dabbed) [(the|my|some)] (soap bubbles|bubbles|soap|soap and water|bubble solution|bubble juice|leak soap|suds|foam|leak detector) (on|over|around) (it|that|that one|this one|them|the other one|everything)|(soaped|bubbled|sniffed|re soaped) (it|that|that one|this one|them|the other one|everything) [(up|down|again|too)]) [<pause>] [(and|but)] [(i (got|see|have|have got)|it is|there is|they are|got|shows|still)] (nothing|no (leak|leaks|bubbles|hits)|none|clean|dry|not a (bubble|thing)|(all [are]|it is|they are|they all are) (good|clear|tight)) [(there|on it|at all)]`,
    noneOnIt,
    { unheard: true, apart: true, examples: ['put bubbles on it and nothing'] },
  ),
  rule(
    '[(and|so|yeah|i think|looks like|sounds like)] [(it has|it has got|it is got|there is|there has to be|we have|we have got|i have|i have got|got|found|i found)] [definitely] a [(small|big|slow|bad|little|pinhole)] leak [(somewhere [(in|on) (it|here|there|the system)]|(in|on) (it|here|there|the (system|circuit)))] [for sure]',
    remark,
    { unheard: true, apart: true, examples: ['there is a leak'] },
  ),
  rule(
    '[(and|also|yeah|yep)] [(got|i got|i have got|i see|there is|there are|found|with|getting|i am getting)] [(some|a few|lots of|little|tiny|steady|soap|big)] [soap] bubbles [coming] (on|at|from|around|out of|off) (it|that|them|(that|this|the other) one) [<pause>] [(and|yeah|yep)] [(it|that|she) is (blowing|bubbling|foaming) [(a|some|them)] [(nice|good|steady|real)] [(big|good|little)] [(one|ones|bubbles|bubble)]] [(too|also|as well|now|there)]',
    bubblesOnIt,
    { unheard: true, only: startsClause, examples: [] },
  ),
  rule(
    '[(and|yeah|yep|so)] [(it|that|this|(that|this|the other) one)] (is bubbling|bubbles|blows bubbles|is (blowing|foaming|making) [(a|some)] [(nice|good|steady|real)] [(big|good|little)] (one|ones|bubbles|bubble)|is a (pinhole|pin hole|leaker)|is where it is leaking) [(too|also|as well|there|right there)]',
    bubblesOnIt,
    {
      alone: true,
      unheard: true,
      examples: [],
    },
  ),
  rule(
    '<the> <part> (is|was|are) [(a little|slightly|just|also)] (leaking|weeping|seeping) (by|at|around|from|behind|under|past) <the> [(valve|packing|gland|outlet|inlet|top|bottom|service|brass)] (stem|packing|gland|flange|union|nut|base|schrader|core|bonnet|seam|body|flare|coupling|elbow|header|u bend)',
    leaksThere,
    { unheard: true, examples: ['the king valve is leaking by the stem'] },
  ),
  rule(
    '<the> [<bit>] <part> (is|was|are|looks|feels) [(all|just|good and)] (wet|damp|shiny|slick|coated|covered) (with|in) oil',
    oily,
    {
      unheard: true,
      examples: ['the king valve is wet with oil'],
    },
  ),
  rule(
    `(${SNIFFER}|${I} (put|ran|waved|took|passed|stuck|swept) ${SNIFFER} (round|around|on|over|along|by|to) (it|everything|them|the (joints|fittings|coil|unit|pipework|lines)) [<pause>] [(and|so)] it) ${WENT} ${AT} ${SPOT}`,
    sniffed,
    {
      unheard: true,
      only: startsClause,
      examples: ['ultrasonic lit up at the suction schrader'],
    },
  ),
  rule(
    `[(it|she|and it|there is [(another [one]|one|a second one|two)])] [(is|was)] (bubbling|bubbled|foaming|foamed|fizzing|seeping|weeping|hissing) [(up|good|like crazy|a little)] ${AT} ${SPOT}`,
    leaks,
    { unheard: true, only: startsClause, examples: ['foaming at the flare nut'] },
  ),
  rule(`(it|she) is leaking [(oil|gas|a little|bad|slow)] ${AT} ${SPOT}`, leaks, {
    unheard: true,
    examples: ['it is leaking at the distributor'],
  }),
  rule(
    `${DYE} [(is|was)] [(showing|shows|showed|glowing|glows|bright|visible|found|lit up|all over|coming out|streaming|leaking)] [(up|good)] ${AT} ${SPOT}`,
    leaksAtStart,
    { unheard: true, examples: ['uv dye showing at the king valve stem'] },
  ),
  rule(
    `[(i|we|and|finally)] [(found|there is|got|it has|have|i see|it is)] [(her|it|him|the leak|my leak|that leak)] [<pause>] [it is] [(a|one)] [(small|little|tiny|good)] (pinhole|pin hole|leak|leaker|crack leaking) ${AT} ${SPOT}`,
    leaksAtStart,
    { unheard: true, examples: ['found her pinhole in a return bend'] },
  ),
  rule(
    `(found|got|there is|leak is|the leak is|my leak is) [(the leak|it|her|the leaker)] ${AT} ${FITTING} [(in|on|of|at) <the> <part>]`,
    leaksAtStart,
    { unheard: true, examples: ['leak is at the u bend'] },
  ),
  rule(
    `[(a|there is a|got a|have a|found a)] [(small|bad|little|good)] (rub out|rub through|rubbed spot|rub spot|chafe|worn spot|rub|wear spot) (on|in|through|at) <the> <part> [where (it|they) (crosses|cross|rubs|rub|touches|touch|hits|hit|passes|goes through) <the> (frame|base|panel|bracket|compressor|cabinet|wall|pan|other line|suction line|liquid line|housing|clamp|rail|sheet metal)] [<pause> [and] [it is] (leaking|seeping|weeping) [(slow|bad|a little|good|oil|gas)]]`,
    rubbed,
    {
      unheard: true,
      examples: ['rub out on the discharge line where it crosses the frame leaking slow'],
    },
  ),
  rule(
    `[(i|we|and)] [(still|just)] (found no (leak|leaks)|(did not|could not|can not|never|have not) (find|found|locate) ${LEAKS} (leak|leaks)) [(anywhere|at all|yet|for the life of me|anywhere else)] [(with|using) ${DETECTOR}] [(after|in) <duration:after> [(looking|of looking|searching|of searching|hunting)]]`,
    remark,
    {
      unheard: true,
      only: startsClause,
      examples: ['could not find the leak for the life of me after two hours looking'],
    },
  ),
  rule(
    `${I} (re soaped|resoaped|soaped [up]|bubbled|soap tested|sniffed|rechecked|re checked|leak checked) (${SPOT}|the braze|my braze) [again] [<pause>] [(and|it is|with)] ((all|it is|looks) (good|tight|clean|clear)|good|tight|no (leak|leaks|bubbles|hits)|nothing) [(no (leak|leaks|bubbles)|now)]`,
    checked,
    {
      unheard: true,
      only: (frame) => wordBehind(frame) === '',
      examples: ['re soaped the braze all good no leak'],
    },
  ),
  rule(
    `[(put|got|brushed|no|there are no)] [(the|my|some)] (soap bubbles|bubbles|soap|soap and water|bubble solution|bubble juice|leak soap|suds|foam) ${AT} (${SPOT}|the braze|my braze) [again] [<pause>] [(and|shows|it shows|showed|got|i got|with|it is|still)] (nothing|no (leak|leaks|bubbles|hits)|none|clean|dry|not a (bubble|thing)|all (good|clear|tight))`,
    checked,
    { unheard: true, examples: ['soap bubbles on the flare nothing'] },
  ),
  rule(
    `${I} (cracked|opened|closed|backed|turned|ran|screwed|cranked|seated) (<the> <part>|${KING}) [(in|out|open|down|off|up)] ${TURNS} [(off|from|out from|past|off of) [the] (back|front) seat]`,
    atValve('adjust'),
    { unheard: true, examples: ['cracked the king valve two turns off the back seat'] },
  ),
  rule(
    `${I} (front seated|shut|closed|closed off|valved off|shut off|shut down|isolated|seated) (${KING}|the receiver (outlet|valve|outlet valve)|the outlet (on|of) the receiver)`,
    worked('isolate', 'kingValve'),
    { unheard: true, examples: ['front seated the receiver outlet'] },
  ),
  rule(
    `${I} (back seated|opened|opened up|opened back up|reopened|cracked open) (${KING}|the receiver (outlet|outlet valve)|the outlet (on|of) the receiver) [(back up|back open|up)]`,
    worked('restore', 'kingValve'),
    { unheard: true, examples: ['opened the king back up'] },
  ),
  rule(
    `((the|my) king [valve] is [(still|back|cracked)]|[(the|my)] king [valve] is (full|fully|wide|all the way)) (open|closed|shut)`,
    (_tags, frame) => kingStands(frame),
    { unheard: true, examples: ['the king is full open'] },
  ),
  rule(
    `[(the|my|both|all|all the|all my|service)] [service] valves [(are|is)] [(all|both)] back seated [[<pause>] [and] [(the|all|my|all the)] caps [(are|is)] [(all|back)] on [[and] (snug|tight)]]`,
    allBack,
    { unheard: true, examples: ['valves all back seated caps on and snug'] },
  ),
  rule(
    `[(the|that)] [(<part>|valve)] (stem packing|packing|packing gland|packing nut|gland nut|stem|valve stem) (is|was|looks|has been) [(<very>)] <state> [(of|at) <the> <part:on>]`,
    packing,
    { unheard: true, examples: ['stem packing was weeping'] },
  ),
  // "Going out on the klixon" is a state of its own.
  ...PACKING_ON.map(([state, said]) =>
    rule(
      `[(the|that)] [(<part>|valve)] (stem packing|packing|packing gland|packing nut|gland nut|stem|valve stem) (is|was|looks|has been) [(<very>)] ${said} on <the> <part:on>`,
      packing,
      { tags: { state }, unheard: true, examples: [] },
    ),
  ),
  rule(
    `[(the|that)] [(<part>|valve)] (stem|valve stem) [(is|was|has)] (stripped|rounded [off]|snapped|broke off|broken off|twisted off) [(on|of|at) <the> <part:on>]`,
    packing,
    { unheard: true, examples: ['valve stem stripped'] },
  ),
  rule(
    `${I} (nipped|nipped up|snugged|snugged up|tightened|tightened up|cinched|cinched down|cranked down|torqued) (the|that|a) (gland|packing|packing gland) [nut] [(up|down)] [(on|of|at) <the> <part:on>]`,
    glandNut,
    { unheard: true, examples: ['nipped the gland nut'] },
  ),
  rule(
    '<the> <part> [stem] (will not|would not|does not|did not) (front|back) [seat] [(all the way|fully)]',
    noSeat,
    { unheard: true, examples: ['service valve will not front seat'] },
  ),
  rule(
    '([(the|my|these|those)] (compressor valves|valves in the compressor|valves on the compressor) (are|is|were) [(all|pretty|really)] (bad|shot|leaking|leaking by|leaking through|broken|gone|not holding|bent|broke)|[(the|my)] valves are (bad|shot|leaking by|leaking|broken|gone|not holding) in (the|this|that|my) compressor|[(has|got|it has)] [(bad|broken|leaking|bent)] (bad|broken|leaking) valves in (the|this|that) compressor|[(the|this|that)] compressor (has|has got|is got|got) (bad|broken|leaking|bent|broke) valves)',
    badValves,
    { unheard: true, examples: ['valves are bad in the compressor'] },
  ),
  rule(
    `${I} (trapped|locked|stored|captured|parked|pumped|got|ran|pulled) ((the|my) (charge|gas|refrigerant|freon)|it all|everything|all (the|of the) (gas|charge|refrigerant)|all of it|it) [(down|up)] (in|into|back in|back into) the receiver [with [the] [receiver] (outlet|king [valve]|valve|king shut) [(shut|closed|front seated)]]`,
    worked('pumpDown', null),
    { unheard: true, examples: ['trapped the charge in the receiver with the outlet shut'] },
  ),
];
