import type { PartId } from '../../terms/names.ts';
import { opensSentence, startsClause, wordBefore, wordBehind } from '../words/clause-start.ts';
import { electrical, GOT, one } from '../electrical/electrical.ts';
import { fanPlace, settledFan, TURNS } from '../words/fans.ts';
import { finding } from './finding-of.ts';
import { amountIn } from '../numbers/measure.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, placeId, stateId, tagsIn } from '../slots.ts';
import { stateAt } from '../words/state-at.ts';
import type { Finding } from '../utterance.ts';
import { DIRT } from '../vocabulary/state-names.ts';
import { remark } from '../plain-means.ts';

const foundAs =
  (state: Finding['state'], only?: ReadonlySet<PartId>): Means =>
  (tags, frame) => {
    const part = partId(tags['part']);
    const isOther = part !== null && only?.has(part) === false;
    return part === null || isOther ? null : { findings: [finding(part, state, frame)] };
  };

/** "Bulb's strapped on good": so it was found, and nobody strapped it. */
const foundSound = foundAs('ok');

/** A door of the building is open for the air; "back door's open on the reach-in" is of the unit. */
const airing: Means = (tags, frame) =>
  /^(?:on|of|to|in|at)$/i.test(wordBehind(frame)) ? null : remark(tags, frame);

const COILS: ReadonlySet<PartId> = new Set<PartId>(['condenser', 'evaporator', 'filter']);
const TURNING: ReadonlySet<PartId> = new Set<PartId>(TURNS);

/** "Can't see daylight through her": of the coil that was told of. */
const noDaylight: Means = (tags, frame) => {
  // Told behind what it is choked with, it is the same dirt.
  if (IS_CHOKED.test(frame.wordsOf({ from: 0, to: frame.span.from }))) return {};
  const named = partId(tags['part']);
  const of = (part: PartId): Meaning => ({ findings: [finding(part, 'dirty', frame)] });
  if (named !== null) return COILS.has(named) ? of(named) : null;
  const means = (part: PartId): Meaning | null => (COILS.has(part) ? of(part) : null);
  return { ofIt: { means, inSentence: false, otherwise: of('condenser') } };
};

const IS_CHOKED =
  /\b(?:chok\w*|smother\w*|buried|drowning|dirty|plugged|matted|caked|packed|loaded|clogged|filthy|full of)\b/i;

/** What has poles: "the middle pole's burnt" is of the contactor, unless a breaker or a relay was told of. */
const poleIs: Means = (tags, frame) => {
  const said = stateId(tags['state']);
  if (said === null || said === 'running' || said === 'ok') return null;
  const of = (part: PartId): Meaning => ({ findings: [finding(part, said, frame)] });
  const means = (part: PartId): Meaning | null => (POLED.has(part) ? of(part) : null);
  return { ofIt: { means, inSentence: false, otherwise: of('contactor') } };
};
const POLED: ReadonlySet<PartId> = new Set<PartId>([
  ...(['contactor', 'breaker', 'disconnect', 'startRelay', 'fuse'] as const),
]);

/** "… but only two legs are coming out the bottom": it loses one. */
const losesALeg: Means = (_tags, frame) => {
  const means = (part: PartId): Meaning | null =>
    POLED.has(part) ? { findings: [finding(part, 'failed', frame)] } : null;
  const otherwise = { remarks: [frame.wordsOf(frame.span)] };
  return { ofIt: { means, inSentence: false, otherwise } };
};

/** "So that's no good, that's junk": the part that was tried. */
const soItIs: Means = (_tags, frame) => {
  const means = (part: PartId): Meaning => ({ findings: [finding(part, 'failed', frame)] });
  return { ofIt: { means, inSentence: true, otherwise: {} } };
};

/** A motor without its name is the fan's that was spoken of, or of one that nobody named. */
const motorIs: Means = (tags, frame) => {
  const said = stateId(tags['state']);
  if (said === null || said === 'running') return null;
  const of = (part: PartId): Meaning => ({ findings: [finding(part, said, frame)] });
  const means = (part: PartId): Meaning | null => (TURNS.includes(part) ? of(part) : null);
  const otherwise = of(settledFan('fan', frame.context));
  return { ofIt: { means, inSentence: false, otherwise } };
};

/** "Two forty to the motor" */
const atMotor: Means = (tags, frame) => {
  const found = electrical(tags, fanPlace(frame.context), frame);
  return found?.quantity === 'voltage' && (found.value ?? 0) >= LEAST_MAINS ? one(found) : null;
};
/** Ours: less is no supply's. */
const LEAST_MAINS = 90;

const TERMINALS = ['terminalOneTwo', 'terminalTwoThree', 'terminalOneThree'] as const;
/** The three windings of a motor on three phases, one after the other. */
const threeWindings: Means = (tags, frame) => {
  const readings = ['ab', 'bc', 'ca'].flatMap((slot, at) => {
    const amount = tagsIn(tags[slot]);
    const isOhms = amount !== null && (amountIn(amount).value ?? MOST_OHMS) < MOST_OHMS;
    return isOhms
      ? (electrical({ ...amount, unit: 'ohm' }, TERMINALS[at] ?? null, frame) ?? [])
      : [];
  });
  return readings.length === TERMINALS.length ? { readings } : null;
};
/** Ours: no winding of these has so many. */
const MOST_OHMS = 100;

/** "Threw a start relay and cap at it" */
const thrownAt: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const named = [tags['part'], tagsIn(tags['second'])?.['part']].map(partId);
  // Beside a relay it is the start cap.
  const parts = named.map((part) =>
    part === 'runCapacitor' && named.includes('startRelay') ? 'startCapacitor' : part,
  );
  const work = parts.flatMap((part) =>
    part === null
      ? []
      : [{ did: 'replace' as const, part: settledFan(part, frame.context), words }],
  );
  return work.length === 0 ? null : { work };
};

/** "New compressor in, new drier": what is new stands in the same list. */
const newBehind: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const before = frame.wordsOf({ from: 0, to: frame.span.from });
  if (part === null || !frame.endsAtPause || !PUT_IN.test(before)) return null;
  const words = frame.wordsOf(frame.span);
  return { work: [{ did: 'replace', part: settledFan(part, frame.context), words }] };
};
const PUT_IN =
  /\bnew (?:\S+ ){1,3}(?:in|on|installed|fitted|brazed in|wired in)\b|\b(?:replaced|changed|swapped|put in|installed)\b/i;

/** "Brushed the face of it": of what has one. */
const faceOfIt: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const did = /\bbrush/i.test(words)
    ? 'brush'
    : /\b(?:wash|hos|rins)/i.test(words)
      ? 'wash'
      : 'clean';
  const means = (part: PartId): Meaning | null =>
    COILS.has(part) || part === 'fanBlade' ? { work: [{ did, part, words }] } : null;
  return { ofIt: { means, inSentence: false, otherwise: { remarks: [words] } } };
};

/** "That's your compressor gone then" */
const thatIsGone = foundAs('failed');

const partIs: Means = (tags, frame) => {
  const [part, said] = [partId(tags['part']), stateId(tags['state'])];
  const state = part === null || said === null ? null : stateAt(part, said);
  return part === null || state === null ? null : { findings: [finding(part, state, frame)] };
};

/** "Clicking off on the overload" */
const offOnOverload: Means = (_tags, frame) => ({
  findings: [finding('overload', 'tripped', frame)],
});
const begins = (frame: Frame): boolean => startsClause(frame);

/** "Compressors don't start", "lid don't seal": said of one as of several. */
const doesNot =
  (said: Finding['state']): Means =>
  (tags, frame) => {
    const part = partId(tags['part']);
    const state = part === null ? null : stateAt(part, said);
    return part === null || state === null ? null : { findings: [finding(part, state, frame)] };
  };
const DOES_NOT = [
  ['(run|start|turn|spin|come on|work)', 'notRunning'],
  ['(seal|latch|shut|close) [(right|tight|all the way|anymore|good)]', 'failed'],
  ['(make|pull in)', 'open'],
  ['(open|drop out)', 'closed'],
] as const;
const DRAINS: ReadonlySet<PartId> = new Set<PartId>(['drainLine', 'drainPan']);

const THROUGH = '(her|it|him|that|them|this thing)';
const WHICH = '[(left|right|middle|center|outside|first|second|third|one|hot|bottom|top|a)]';
const GONE =
  '(gone|shot|done|done for|finished|dead|toast|knackered|kaput|had it|cooked|fried|junk|scrap)';

/** What was found, in figures of speech that a trade has for it. */
export const FOUND_SO_RULES: readonly Rule[] = [
  rule(
    '[(<the> <part>|it)] [(is|are|reads|read|shows|show|tests|test)] (open|closed|shorted) (upside down|right side up|upright|flipped over|inverted) [<pause>] [(and|but)] [(is|are|reads|read|shows|show|it is)] (open|closed|shorted) (upside down|right side up|upright|flipped over|inverted|the other way)',
    remark,
    { unheard: true, examples: ['contacts read open upside down and closed right side up'] },
  ),
  rule(
    '<the> <part> is [(strapped|clamped|mounted|bolted|screwed|plugged|wired)] (on|in) [(there|nice and)] (good|tight|right|fine|snug|solid) [(and|<pause>) [(it is|is)] [(well|still)] (insulated|wrapped|tight)] [(so|<pause> so) (it is|that is) not (that|it)]',
    foundSound,
    { unheard: true, only: startsClause, examples: ['bulb is strapped on good and insulated'] },
  ),
  rule(
    `[(the|a|my|both|all the)] (window|windows|(back|side|kitchen|outside|loading|dock) (door|doors)) (is|are) (propped [open]|[wide] open|cracked [open]) [[<pause>] [and] [the] (window|windows|(back|side|kitchen|outside|loading|dock) (door|doors)) (is|are) (propped [open]|[wide] open|cracked [open])]`,
    airing,
    { unheard: true, only: startsClause, examples: ['window is open back door is propped'] },
  ),
  rule(
    `<the> <part> is [just] (choking|choked|smothering|smothered|suffocating|buried|drowning|fixing to choke|about to choke|starting to choke|chock full|choked up) [(out|up|to death)] (on|with|in|under|of) [(all|the|this|that)] ${DIRT} [and ${DIRT}]`,
    foundAs('dirty', COILS),
    { unheard: true, examples: ['condenser is choking on grease'] },
  ),
  rule(
    `[(i|you)] (can not|could not|can hardly|could hardly|can barely) see [(any|the)] (daylight|light) through (${THROUGH}|<the> <part>)`,
    noDaylight,
    { unheard: true, examples: ['can not see daylight through the condenser'] },
  ),
  rule(
    `${DIRT} [(is|was|all|had)] (packed|caked|matted|plastered|stuck|built up|piled up|stacked up|blown|pasted|laying) [(up|solid|tight|thick)] (on|in|into|all over|against|across|over) <the> [<bit>] <part>`,
    foundAs('dirty'),
    { unheard: true, examples: ['cottonwood is packed on the condenser'] },
  ),
  rule(
    `<the> ${WHICH} (pole|poles|set of (points|contacts)) (is|are|was|were|looks|look) <very> <state> [to a crisp]`,
    poleIs,
    { unheard: true, examples: ['the middle pole is burnt'] },
  ),
  rule(
    '[(but|and)] [(i have|i got|there is|i only have)] only (one|two) [of the] (leg|legs|phase|phases|pole|poles|line|lines) [(is|are)] (coming|getting|making it|going|passing|showing up|leaving) [(out|through)] [of] [(the|at the)] [(bottom|load side|it|other side)]',
    losesALeg,
    { unheard: true, examples: ['only two legs are coming out the bottom'] },
  ),
  rule(
    '(<pause> [(and|but)]|and|so|<pause> so) (that|it|this|she) is (no good|junk|shot|toast|garbage|trash|scrap|kaput|cooked|done for|no damn good) [(now|then|too)] [<pause> (that|it) is (junk|shot|trash|no good|garbage)]',
    soItIs,
    { unheard: true, examples: [] },
  ),
  rule(
    '<the> <part> is (hitting|rubbing|scraping|ticking|slapping|brushing|catching|banging|smacking) [(on|against|into|in)] [(the|some|a|it is)] (ice|frost|shroud|guard|housing|something|side|wire|cage|screen|cabinet)',
    foundAs('noisy', TURNING),
    { unheard: true, examples: ['evap fan is hitting ice'] },
  ),
  rule(
    '[(and|so|but)] <the> <part:on> (has|has got|is got|have|had) (no|not got a|not got any) <part> [(at all|left|on it|on there|whatsoever)]',
    foundAs('missing'),
    { unheard: true, examples: ['the lid has no gasket at all'] },
  ),
  rule(
    '[the] [(old|original|bad)] <part> had (a|an|some) [(big|small|little|nasty|bad|long|hairline)] (crack|hole|split|tear|rip|bend|chip|chunk|piece) [(out|missing|running|in it|broken (out|off)) [<clause>]]',
    foundAs('failed'),
    { unheard: true, examples: ['the old blade had a crack'] },
  ),
  rule(
    '[(i|we|and)] (ohmed|metered|tested|checked|ohm) [out] the motor [<pause>] [and] [(it is|it reads|it was|got)] <very> <state>',
    motorIs,
    { unheard: true, examples: ['ohmed the motor and it is wide open'] },
  ),
  rule(
    `${GOT} <amount> (at|to|on|across|into|going to|at) the motor [(leads|terminals|plug)]`,
    atMotor,
    { unheard: true, examples: ['two forty to the motor'] },
  ),
  rule(
    '[(and|but)] [(i have|i got|i am getting)] ((sod|bugger|naff) all|nada|[a] goose egg) (at|on|across|to|into) <the> <place>',
    (tags, frame) => one(electrical({ number: 0, unit: 'V' }, placeId(tags['place']), frame)),
    { unheard: true, examples: ['sod all at the compressor'] },
  ),
  rule(
    '[(there is|i have|i got|and)] ((neither|none|neither one|none of) [of] [(the|my|them)] <part> (is|are|was)|(not [even] (one|a|a single) [of (the|my|them)]|nary a|no) <part> [(is|was|in there)]) (running|turning|spinning|on|working|going|coming on|moving|left running)',
    foundAs('notRunning', TURNING),
    { unheard: true, examples: ['not one compressor going'] },
  ),
  ...DOES_NOT.map(([does, state]) =>
    rule(`<the> <part> do not ${does}`, doesNot(state), {
      unheard: true,
      only: (frame) => !/^(?:i|we|you|they)$/i.test(wordBefore(frame)),
      examples: [],
    }),
  ),
  rule(
    '<the> <part> ((does|do|did) not|will not|is not|was not|is hardly|barely) (drain|draining|drains)',
    foundAs('plugged', DRAINS),
    { unheard: true, examples: ['drain does not drain'] },
  ),
  ...(['tenths', 'dropped'] as const).map((figure) =>
    rule(
      `<the> [(compressor|motor|compressor motor|three)] windings (are|read|ohm|ohmed|measure|measured|come in|came in|show|check) [(out|at|in at|out at)] <${figure}:ab> [(ohms|ohm)] [and] <${figure}:bc> [(ohms|ohm)] [and] <${figure}:ca> [(ohms|ohm)]`,
      threeWindings,
      { unheard: true, examples: [] },
    ),
  ),
  rule(
    '[(i|we|and|just|so i)] (threw|put|tossed|slapped|hung|stuck|chucked) (a|an|another) [new] <part> [and [(a|an)] [new] <part:second>] at (it|her|that|them)',
    thrownAt,
    { unheard: true, examples: ['threw a start relay and start cap at it'] },
  ),
  rule('(<pause> [(and|plus)] [(a|another)]|and (a|another)) new <part>', newBehind, {
    unheard: true,
    only: (frame) => frame.endsAtPause && !opensSentence(frame),
    examples: [],
  }),
  rule(
    '[(i|we|and|then|and then)] (brushed|washed|rinsed|hosed|cleaned|wiped|blew|vacuumed) [(off|down|out)] (the|its|it is) (face|front|back|fins|top|bottom|inlet side|outside|inside) [(side)] (of|on) (it|them|that)',
    faceOfIt,
    { unheard: true, examples: ['brushed the face of it'] },
  ),
  rule(
    `[(so|well|and|yeah|yep)] that is (your|the|my|our) <part> ${GONE} [then] [(mate|boss|folks)]`,
    thatIsGone,
    { unheard: true, examples: ['that is your compressor gone then'] },
  ),
  rule(
    '[(it is|that is|looks like|smells like|had)] [(a|an)] (proper|real|full|full blown|bad|classic|nasty|major|compressor) (burnout|burn out)',
    (_tags, frame) => ({ findings: [finding('compressor', 'burnt', frame)] }),
    { unheard: true, only: begins, examples: ['proper burnout'] },
  ),
  rule(
    '[(i|we|and|just|then)] (cut|pulled|took|yanked|sweated) (the|that) [(old|dead|bad)] pot [(out|off)]',
    (_tags, frame) => ({
      work: [{ did: 'remove', part: 'compressor', words: frame.wordsOf(frame.span) }],
    }),
    { unheard: true, examples: ['cut the old pot out'] },
  ),
  rule('<the> <part> <pause> (i mean it is|it is|i mean) [just] <very> <state>', partIs, {
    unheard: true,
    only: begins,
    examples: [],
  }),
  rule(
    '[(and|but|then)] [(it|she|compressor|the compressor|the pump|then|just|keeps)] [(is|keeps|just|keeps on|still)] (clicking|kicking|cutting|tripping|dropping|going|shutting|cycling|trips|tripped|kicks|kicked|goes|went|cuts|cut) [right] [back] [(off|out)] on [(the|it is)] [(internal|thermal|motor)] (overload|klixon|thermal|overloads)',
    offOnOverload,
    { unheard: true, only: startsClause, examples: ['clicking off on the overload'] },
  ),
  rule(
    '[(and|but|then|<pause>)] (it|she) [(is|keeps|just|keeps on|is still)] (tripping|popping|kicking|tripped|popped|opening) [(off|out)] (the|it is) [(internal|thermal|motor)] (overload|klixon|overloads) [out]',
    offOnOverload,
    { unheard: true, examples: ['it is tripping the overload'] },
  ),
  rule(
    '[(and|but)] (nothing|none|none of (them|the windings)|no path|no continuity) (down to|to) earth [(on any of them|anywhere)]',
    remark,
    { unheard: true, examples: ['nothing down to earth'] },
  ),
  rule(
    'none of (them|the windings|the three) [(is|are)] [(going|shorted|down)] to (ground|earth)',
    remark,
    {
      unheard: true,
      examples: ['none of them to ground'],
    },
  ),
];
