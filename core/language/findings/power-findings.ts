import type { FindingStateId, PartId } from '../../terms/names.ts';
import { startsClause, wordBefore, wordBehind } from '../words/clause-start.ts';
import { TURNS } from '../words/fans.ts';
import { finding } from './finding-of.ts';
import { stateOf } from './state-of.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, stateId, tagsIn, workId } from '../slots.ts';
import { nothing, remark, remarkWithoutNumber } from '../plain-means.ts';

const found = (part: PartId, state: FindingStateId, frame: Frame): Meaning => ({
  findings: [finding(part, state, frame)],
});

const foundAt =
  (state: FindingStateId): Means =>
  (tags, frame) => {
    const part = partId(tags['part']);
    return part === null ? null : found(part, state, frame);
  };

const isFound =
  (part: PartId, state: FindingStateId): Means =>
  (_tags, frame) =>
    found(part, state, frame);

/** What a blow out or a trip leaves behind; nothing else of ours pops or kicks. */
const LEFT: Partial<Record<PartId, FindingStateId>> = {
  breaker: 'tripped',
  disconnect: 'tripped',
  overload: 'tripped',
  highPressureSwitch: 'tripped',
  lowPressureSwitch: 'tripped',
  fuse: 'failed',
};

/** "Twenty amp breaker's kicked", "the control fuse popped again" */
const popped: Means = (tags, frame) => {
  // "Hit the reset on the high side, kicked off like a mule" is of what it started.
  if (/^(?:on|at|of|to|for)$/i.test(wordBefore(frame))) return null;
  const part = partId(tags['part']);
  const state = part === null ? undefined : LEFT[part];
  return part === null || state === undefined ? null : found(part, state, frame);
};

/** "Flipped the breaker back on and it popped right away" */
const itPopped: Means = (_tags, frame) => {
  const means = (part: PartId): Meaning | null => {
    const state = LEFT[part];
    return state === undefined ? null : found(part, state, frame);
  };
  return { ofIt: { means, inSentence: true } };
};

/** "… on the line side of the disconnect, good there" */
const goodThere: Means = (_tags, frame) => ({
  ofIt: { means: (part) => found(part, 'ok', frame), inSentence: true },
});

/** Nothing but the switch of it is put back: the breaker. */
const setAgain: Means = (_tags, frame) => ({
  work: [{ did: 'restore', part: 'breaker', words: frame.wordsOf(frame.span) }],
});

/** What switches: "got continuity on the overload" shows it to be closed. */
const SWITCHES: ReadonlySet<PartId> = new Set<PartId>([
  ...(['highPressureSwitch', 'lowPressureSwitch', 'temperatureControl', 'overload'] as const),
  ...(['doorSwitch', 'fanControl', 'defrostTermination', 'contactor', 'startRelay'] as const),
]);
/** What current goes through besides: a coil that is named so may be one of pipes. */
const WIRED: ReadonlySet<PartId> = new Set<PartId>([
  ...SWITCHES,
  ...(['fuse', 'breaker', 'disconnect', 'transformer', 'wiring', 'plug', 'compressor'] as const),
  ...(['defrostHeater', 'doorHeater', 'drainHeater', 'crankcaseHeater', 'defrostTimer'] as const),
  ...(['liquidLineSolenoid', 'hotGasValve', 'condenserFanMotor', 'evaporatorFanMotor'] as const),
  ...(['sensor', 'controller', 'light'] as const),
]);
const lets: Means = (tags, frame) => {
  const part = partId(tags['part']);
  if (part === null || !WIRED.has(part)) return null;
  return found(part, SWITCHES.has(part) ? 'closed' : 'ok', frame);
};

/** What lets nothing through: a switch is open, a fuse is blown. */
const letsNone: Means = (tags, frame) => {
  const part = partId(tags['part']);
  if (part === null || !WIRED.has(part)) return null;
  return found(part, SWITCHES.has(part) ? 'open' : 'failed', frame);
};

/** "Fuse clips are loose": of the part that the bit belongs to. */
const bitIs: Means = (tags, frame) => {
  const state = stateId(tags['state']);
  return state === null || state === 'running' ? null : stateOf('state')(tags, frame);
};

/** "Both evap fans are going, no compressor": behind what runs or is fed, and nothing behind it. */
const notThatOne: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const before = frame.wordsOf({ from: 0, to: frame.span.from });
  const isBehind = /\b(?:run|runs|running|going|on|power|fans?|turning|lights?)\b/i.test(before);
  return part !== null &&
    TURNS.includes(part) &&
    isBehind &&
    frame.span.from > 0 &&
    frame.endsAtPause
    ? found(part, 'notRunning', frame)
    : null;
};

/** "I got fans but no pump": the fans that run are not told apart. */
const fansButNo: Means = (_tags, frame) => found('compressor', 'notRunning', frame);

const fedAndStill: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part !== null && TURNS.includes(part) ? found(part, 'notRunning', frame) : null;
};

/** What has windings: the compressor, unless a fan was spoken of. */
const windingIs: Means = (tags, frame) => {
  const state = stateId(tags['state']);
  if (state === null || state === 'running') return null;
  const meant = state === 'ok' || state === 'burnt' || state === 'grounded' ? state : 'failed';
  const of = (part: PartId): Meaning => found(part, meant, frame);
  const means = (part: PartId): Meaning | null => (TURNS.includes(part) ? of(part) : null);
  // Sound windings clear the motor of nothing else.
  const otherwise: Meaning =
    meant === 'ok' ? { remarks: [frame.wordsOf(frame.span)] } : of('compressor');
  return {
    ofIt: { means: meant === 'ok' ? () => otherwise : means, inSentence: false, otherwise },
  };
};

/** "Middle fuse blown, other two are good": which of them nobody can tell, and what they are is told beside it. */
const others = remark;

/** "New defrost clock going in": by whoever says so. */
const goesIn: Means = (tags, frame) => {
  const part = partId(tags['part']);
  if (
    /^(?:tomorrow|next|later|monday|tuesday|wednesday|thursday|friday|when|on|this)$/.test(
      wordBehind(frame),
    )
  )
    return null;
  const words = frame.wordsOf(frame.span);
  const second = partId(tagsIn(tags['second'])?.['part']);
  const parts = [part, second].filter((each) => each !== null);
  return part === null
    ? null
    : { work: parts.map((each) => ({ did: 'replace', part: each, words })) };
};

const windingOk: Means = (tags, frame) => windingIs({ ...tags, state: 'ok' }, frame);

/** "Relay isn't dropping out", "contactor won't drop out": its contacts hang. */
const HANGS: readonly (PartId | null)[] = ['startRelay', 'contactor', 'liquidLineSolenoid'];
const hangsIn: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part !== null && HANGS.includes(part) ? found(part, 'closed', frame) : null;
};

/** "Bearing's gone in the condenser fan" is no fan that is missing. */
const wornIn = foundAt('failed');

/** "Loose neutral at the terminal strip" */
const wireIs: Means = (tags, frame) => {
  const state = stateId(tags['state']);
  const isState = state === 'loose' || state === 'burnt' || state === 'failed';
  return isState ? found('wiring', state, frame) : null;
};

/** "Two wires off the block": nobody took them off where the clause begins with them. */
const wiresOff: Means = (_tags, frame) =>
  startsClause(frame) ? found('wiring', 'loose', frame) : null;

const tightenedAll: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const did = workId(tags['work']);
  return part === null || did === null
    ? null
    : { work: [{ did, part, words: frame.wordsOf(frame.span) }] };
};

const BLEW = '(popped|pops|kicked|kicks|blew|blows|blown|tripped|trips|let go|let loose)';
const KEEPS =
  '(keeps|keeps on|kept|is|was|just) (popping|kicking|blowing|tripping|popped|kicked|blown|tripped)';
const THEN =
  '[(off|out|open)] [(again|right away|on me|right (off|out)|instantly|every time|right back [off]|as soon as i (reset|set) it|a second time)]';
const BIT =
  '(handle|toggle|lever|clip|clips|holder|holders|ears|ferrule|button|spring|armature|plunger|pins|trippers|stabs|jaws|screw|screws|base|block|housing|prong|prongs|blades|end|ends)';
const IS = '(is|are|was|were|looks|look|feels|feel|has been|is getting|got)';
const CRITTERS = '(mice|rats|mouse|rat|rodents|something)';
const GOT_IN =
  '(bugs|ants|an ant|a bug|roaches|insects|a roach|spiders|a spider|ant|bug) [(is|are|was|were)] [(got|get|getting|stuck|crawled|all|caught|smashed|fried|squished)]';
const WATER = '[(the|some|rain)] (water|moisture|condensation|rain|rainwater)';
const CONT = '(continuity|a path|a circuit)';
const I_GOT =
  '[(i|we)] [(have|got|have got|get|read|am getting|am reading|there is|see|still have|still got)]';
const WIRE =
  '((neutral|ground|hot) [leg]|wire|lead|leg|conductor|common wire|neutral wire|ground wire|hot wire|control wire|line wire|spade|wire nut|lug|connection)';
const OUT_OF =
  '[(i have|i have got|i got|there is|we have|got|it has|i see)] (power|voltage|juice) (to|at|on|going to|getting to|into) <the> <part>';

/** What is found between the panel and the motors: what popped, hangs, lets nothing through, came loose, or was got at. */
export const POWER_FINDING_RULES: readonly Rule[] = [
  rule(
    `<the> [<size>] [(control|main|line)] <part> (${BLEW}|${KEEPS}|is ${BLEW}) ${THEN}`,
    popped,
    {
      unheard: true,
      examples: ['the breaker kicked again', 'control fuse popped again'],
    },
  ),
  rule(
    `(and|but|then|and then|<pause>) (it|she|that) [(just|right away|instantly)] (${BLEW}|${KEEPS}) ${THEN}`,
    itPopped,
    { unheard: true, examples: [] },
  ),
  rule('<pause> [(it is|that is|so it is|so)] (good|fine|ok) there', goodThere, {
    unheard: true,
    examples: [],
  }),
  rule(
    '<byUs> (flipped|threw|pushed|turned|switched|kicked|put|clicked) the [<size>] breaker back (on|in)',
    setAgain,
    { unheard: true, examples: ['flipped the breaker back on'] },
  ),
  rule(
    '<the> [<size>] <part> (will not|would not|does not|did not|can not|is not) (reset|stay (on|in|set|reset)|latch|resetting|staying (in|on|set)|hold)',
    foundAt('failed'),
    { unheard: true, examples: ['breaker will not reset'] },
  ),
  rule(
    `<byUs> [(found|had|see|saw)] <the> (disconnect|breaker|isolator) ([was] (in the off position|(turned|switched|shut|pulled|thrown|flipped) off|in the off)|was (pulled|off|thrown|out)|(was|has been|is been|had been|got) [been] left (off|open|pulled|out|in the off position))`,
    (_tags, frame) =>
      found(/breaker/i.test(frame.wordsOf(frame.span)) ? 'breaker' : 'disconnect', 'open', frame),
    { unheard: true, examples: ['found the disconnect in the off position'] },
  ),
  rule(`<the> [<size>] <part> [is] ${BIT} ${IS} <very> <state>`, bitIs, {
    unheard: true,
    examples: ['fuse clips are loose'],
  }),
  rule(`${I_GOT} ${CONT} (on|across|through|at) <the> <part> [now]`, lets, {
    unheard: true,
    examples: ['got continuity on the overload now'],
  }),
  rule(`${I_GOT} (no|zero) ${CONT} (on|across|through|at) <the> <part>`, letsNone, {
    unheard: true,
    examples: ['no continuity through the overload'],
  }),
  rule('<the> <part> (has|has got|is got|got|shows|have) (no|zero) continuity', letsNone, {
    unheard: true,
    examples: ['overload has no continuity'],
  }),
  rule('<the> <part> (has|has got|is got|got|shows|have) continuity', lets, {
    unheard: true,
    examples: ['overload has continuity'],
  }),
  rule(
    '(<pause> [(and|but)]|and|but) [the] other (ones|<nth:count>) [(of them)] (is|are|was|were|reads|read|checks|check|look|looks|test|tests) [out] <very> <state>',
    others,
    { unheard: true, examples: [] },
  ),
  rule('<pause> [out] of [(the|all)] <nth:count> [of them]', nothing, {
    unheard: true,
    examples: [],
  }),
  rule(
    '<the> <part> (is|went|was|tripped|tripped out|is out|went out|is tripped|popped) [(out|off)] on [the] manual [reset]',
    foundAt('tripped'),
    { unheard: true, examples: ['high pressure switch is out on manual reset'] },
  ),
  rule(
    '[(a|the|that|one|two|three|four)] (new|replacement|other) <part> (is going|are going|going|goes|go) in [(now|too|as well|also)] [[<pause>] (and|with) [(a|one|two|three|four)] [new] <part:second>]',
    goesIn,
    {
      unheard: true,
      only: startsClause,
      examples: ['new defrost clock going in', 'new contactor going in and three new fuses'],
    },
  ),
  ...(
    [
      ['compressor', 'compressor|pump'],
      ['condenserFan', 'condenser (fan|fans|fan motor)'],
      ['evaporatorFan', '(evap|evaporator|box) (fan|fans|fan motor)'],
    ] as const
  ).map(([part, names]) =>
    rule(`(and|but|so|<pause>) no (${names})`, notThatOne, {
      unheard: true,
      tags: { part },
      examples: [],
    }),
  ),

  rule(
    '(i|we) (got|have|have got) [the] [(both|evap|condenser)] fans [(running|going)] [(and|but|<pause>)] no (compressor|pump)',
    fansButNo,
    { unheard: true, examples: ['i got fans but no pump'] },
  ),
  rule(
    `${OUT_OF} [<pause>] [(but|and)] [(it|she)] (no run|no start|will not (run|start|turn|spin|go|do anything)|is not (running|starting|turning|spinning|doing anything)|does not (run|start|turn|spin)|nothing|just sits there|dead|it is dead)`,
    fedAndStill,
    { unheard: true, examples: ['power to the compressor but no run'] },
  ),
  rule(
    `[(there is|i have|i got|it has|got|found)] [(a|an|one|the)] (winding|windings|motor winding) [(is|are)] <very> <state>`,
    windingIs,
    { unheard: true, examples: ['there is a winding shorted'] },
  ),
  rule(
    `[(there is|i have|i got|it has|got|found)] [(a|an|one|the)] <state> (winding|windings)`,
    windingIs,
    { unheard: true, examples: ['it has a shorted winding'] },
  ),
  rule(
    '[(the|all|my|all the|all three)] [(compressor|motor)] windings (ohm|ohmed|ohms|check|checked|test|tested|read|look|measure) [out] (good|fine|ok|right|all right|even|balanced) [(too|and no ground|no ground|nothing to ground|and nothing to ground|and no grounds)]',
    windingOk,
    { unheard: true, examples: ['windings ohm out fine and no ground'] },
  ),
  rule(
    '<the> <part> (is not|will not|does not|did not|never|is never) (dropping out|drop out|dropped out|letting go|let go|releasing|release|open up|opening up)',
    hangsIn,
    { unheard: true, examples: ['relay is not dropping out'] },
  ),
  rule(
    `[(the|a)] (bearing|bearings|bushing|bushings|shaft|winding|windings) (is|are) (gone|shot|wiped out|going|done|toast) (in|on|of) <the> <part>`,
    wornIn,
    { unheard: true, examples: ['bearing is gone in the condenser fan'] },
  ),
  rule(
    `[(there is|i have|i got|got|found)] [(a|an|the|some)] <state> ${WIRE} (at|on|in|inside|behind|by|under) (the|that) [(terminal (strip|block|board)|junction box|panel|block|disconnect|contactor|box|plug|breaker|compressor|unit|lug)]`,
    wireIs,
    { unheard: true, examples: ['loose neutral at the terminal strip'] },
  ),
  rule(`[(a|the)] (neutral|hot|ground) ${IS} <very> <state>`, wireIs, {
    unheard: true,
    examples: ['the neutral is loose'],
  }),
  rule(
    `[(there is|i have|i got|got|found)] [(a|an|the|some|one)] [<state>] (wire|wires|lead|terminal|lug|spade) (at|on|off) (t|l|terminal|pin) <nth:which> [(is|was)] [<very> <state:behind>]`,
    (tags, frame) => wireIs({ ...tags, state: tags['state'] ?? '' }, frame),
    { unheard: true, examples: ['burnt wire at t two'] },
  ),
  rule(
    '[(there is|i have|i got|found)] [(a|some|<nth:many>|a couple)] (wire|wires|lead|leads) (off|came off|fell off|hanging off|pulled off|have come off|popped off) [(of|off)] (the|that) (block|terminal block|terminal strip|strip|board|contactor|relay|terminal|terminals)',
    wiresOff,
    { unheard: true, examples: ['two wires off the block'] },
  ),
  rule(
    `${CRITTERS} (chewed|ate|got into|got to|have chewed|have been chewing [on]|chewed [up] [through]|been chewing [on]|chewing on|have eaten|gnawed) [(up|through|on|into)] <the> <part> [(up|in two|through)]`,
    foundAt('failed'),
    { unheard: true, examples: ['mice chewed the wiring'] },
  ),
  rule(
    `[(i have|i got|there is|there are|found|got)] ${GOT_IN} (in|into|in between|between|on|all over|across|inside) <the> <part>`,
    foundAt('dirty'),
    { unheard: true, examples: ['bugs got in between the contacts'] },
  ),
  rule(
    `${WATER} (got|gets|is getting|has gotten|ran|running|dripped|dripping|leaked|leaking|been getting|is) [down] (in|into|inside|on|onto|all over) <the> <part>`,
    foundAt('wet'),
    { unheard: true, examples: ['water got in the disconnect'] },
  ),
  rule(
    `[(there is|it is|i see|i have|i got|found|got|i can see)] [(some|a|an|a lot of|bad)] (arcing|arced|sparking|sparks|smoke|smoking|arc marks) [(coming|out)] (at|on|in|across|inside|from|off|off of|of|out of) <the> <part>`,
    foundAt('failed'),
    { unheard: true, examples: ['arcing at the disconnect'] },
  ),
  rule(`<the> <part> (is|was|keeps) (arcing|sparking|smoking|arced|arced out)`, foundAt('failed'), {
    unheard: true,
    examples: ['contactor is arcing'],
  }),
  rule(
    `[(there is|i see|i have|i got|found|got)] [(some|a|an|bad)] (burn (mark|marks|spot|spots)|scorch (mark|marks)|burnt (spot|spots)|char marks) (at|on|in|inside|around|by) <the> <part>`,
    foundAt('burnt'),
    { unheard: true, examples: ['burn marks on the contactor'] },
  ),
  rule(
    `[(the|some)] ${BIT} ${IS} (missing|gone|broken|bent|broke off) (on|from|off|off of|in) <the> <part>`,
    (tags, frame) =>
      foundAt(/\b(?:missing|gone)\b/i.test(frame.wordsOf(frame.span)) ? 'missing' : 'failed')(
        tags,
        frame,
      ),
    { unheard: true, examples: ['pins are missing on the time clock'] },
  ),
  rule(
    `<byUs> <done> (everything|all [of] the (lugs|screws|connections|terminals|wires)|every (lug|screw|connection|terminal)) (in|on|at|inside) <the> <part>`,
    tightenedAll,
    { unheard: true, examples: ['tightened everything in the disconnect'] },
  ),
  rule(
    '<byUs> (re crimped|recrimped|crimped|restripped|stripped|cut back|cleaned up|re terminated|reterminated) (the|a|that|my) [(wire|new|bad|burnt)] (end|ends|wire|spade|lug|terminal|connector)',
    (_tags, frame) => ({
      work: [{ did: 'repair', part: 'wiring', words: frame.wordsOf(frame.span) }],
    }),
    { unheard: true, examples: ['re crimped the end'] },
  ),
  rule(
    '[(the|my)] (gfi|gfci|ground fault|arc fault) (is|has|was|keeps|kept|will not|just|tripped|popped) <clause>',
    remarkWithoutNumber,
    { unheard: true, examples: ['ground fault is tripped out'] },
  ),
  rule(
    '[(the|my|that)] scroll is (running|spinning|turning) (backwards|backward|in reverse|the wrong way)',
    isFound('compressor', 'failed'),
    { unheard: true, examples: ['scroll is running backwards'] },
  ),
  rule('[(the|my)] (dome|shell) (is|feels) <very> <state>', isFoundHot, {
    unheard: true,
    examples: ['dome is too hot to touch'],
  }),
  rule('[(the|that)] (pump|dome) is hot enough to <clause>', isFound('compressor', 'hot'), {
    unheard: true,
    examples: ['pump is hot enough to fry an egg'],
  }),
  rule(
    '[(the|it is)] [internal] (thermal|thermals) (is|are|was) <very> <state> [on the (compressor|comp|motor)]',
    overloadIs,
    {
      unheard: true,
      examples: ['thermal is open on the compressor'],
    },
  ),
];

function isFoundHot(tags: Parameters<Means>[0], frame: Frame): ReturnType<Means> {
  const state = stateId(tags['state']);
  return state === 'hot' || state === 'cold' || state === 'warm'
    ? found('compressor', state, frame)
    : null;
}

function overloadIs(tags: Parameters<Means>[0], frame: Frame): ReturnType<Means> {
  const state = stateId(tags['state']);
  const isSwitched = state === 'open' || state === 'closed' || state === 'tripped';
  return isSwitched ? found('overload', state, frame) : null;
}
