import { glassCleared, isOnSomething } from './findings-of-last.ts';
import { isSwitched, startsInWords, wordBefore, wordBehind } from '../words/clause-start.ts';
import type { PartId } from '../../terms/names.ts';
import { type Frame, heardRule, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { LAST_NAMED_RULES } from './findings-of-last.ts';
import { TURNS } from '../words/fans.ts';
import { BULB_RULES } from '../electrical/bulb-tests.ts';
import { CYCLE_RULES, ofWhatTurns } from './cycle-findings.ts';
import { ofOneOfFew, onlyFrosts, stateOf } from './state-of.ts';
import { finding, onlyOf } from './finding-of.ts';
import { NOT_FITTED_RULES } from './not-fitted.ts';
import { lifeless } from './lifeless.ts';
import { mayBeGrounded } from './may-be-grounded.ts';
import { wasMeteredDead } from '../settle/spoken-last.ts';
import { BREAKS, LETS_RUN, stateAt } from '../words/state-at.ts';
import { partId, placeId, stateId, tagsIn } from '../slots.ts';
import type { Finding } from '../utterance.ts';
import { DIRT, LIFELESS } from '../vocabulary/state-names.ts';

/** "Dirty evaporator, really matted": what opens a sentence so is seen; "clean condenser" may be an order. */
const badAtStart: Means = (tags, frame) =>
  frame.span.from === 0 && BAD.some((state) => state === tags['state'])
    ? stateOf('state')(tags, frame)
    : null;
const BAD: readonly Finding['state'][] = [
  ...(['dirty', 'plugged', 'iced', 'leaking', 'burnt', 'failed', 'loose', 'tripped'] as const),
  'noisy',
];

/** "Condenser and evaporator are dirty" */
const bothAre: Means = (tags, frame) => {
  const second = partId(tagsIn(tags['second'])?.['part']);
  const first = stateOf('state')(tags, frame);
  if (second === null || first?.findings === undefined) return null;
  const other = stateOf('state')({ ...tags, part: second }, frame);
  return { findings: [...first.findings, ...(other?.findings ?? [])] };
};

/** "Compressor's running and the fan isn't" */
const runsButOtherNot: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const other = partId(tagsIn(tags['other'])?.['part']);
  if (part === null || other === null || !TURNS.includes(part) || !TURNS.includes(other))
    return null;
  return { findings: [finding(part, 'running', frame), finding(other, 'notRunning', frame)] };
};

/** What is fed and hums does not start. */
const fedBut: Means = (tags, frame) =>
  /\b(?:humming|buzzing)$/i.test(frame.wordsOf(frame.span))
    ? stateIs('humming')(tags, frame)
    : stateOf('state')(tags, frame);

const noneRuns: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null || !TURNS.includes(part)
    ? null
    : { findings: [finding(part, 'notRunning', frame)] };
};

/** What "it" may be said to be, a sentence after its part was named; "it's cold" and "it's running" may be of anything. */
const OF_A_PART: readonly Finding['state'][] = [
  ...(['dirty', 'plugged', 'iced', 'noisy', 'loose', 'burnt', 'tripped', 'oily'] as const),
  ...(['failed', 'notRunning', 'grounded'] as const),
];
const NOT_OF_A_PART: readonly Finding['state'][] = ['warm', 'cold'];

/** Whatever was named before: "relay's open, it's in defrost". */
const ONLY_OF: Partial<Record<Finding['state'], PartId>> = {
  defrosting: 'evaporator',
  defrosted: 'evaporator',
  shortCycling: 'compressor',
};

const itIs =
  (slot: 'state' | 'doing', inSentence: boolean): Means =>
  (tags, frame) => {
    const said = stateId(tags[slot]);
    if (said === null || NOT_OF_A_PART.includes(said)) return null;
    const isOfMetered = said === 'failed' && wasMeteredDead(frame.context);
    if (!inSentence && !OF_A_PART.includes(said) && !isOfMetered) return null;
    if (isOnSomething(frame)) return null;
    const means = (last: PartId): Meaning | null => {
      if (said === 'grounded' && !mayBeGrounded(last, frame.context)) return null;
      // "Overload clicked back in and she's running": what it lets run.
      const runs = said === 'running' && LETS_RUN.has(last) ? 'compressor' : last;
      const cleared = glassCleared(last, frame);
      if (cleared !== null) return cleared;
      const part = ONLY_OF[said] ?? runs;
      // "Killed the disconnect. Okay it's off": by us, and not found so.
      if (said === 'notRunning' && BREAKS.includes(part) && frame.context.powerIsOff) return {};
      const state = stateAt(part, said);
      return state === null ? null : { findings: [finding(part, state, frame)] };
    };
    return { ofIt: { means, inSentence, otherwise: ofNothingNamed(said, frame) } };
  };

/** What nothing was named for: a leak is worth the note wherever it is. */
function ofNothingNamed(state: Finding['state'], frame: Frame): Meaning {
  if (state === 'grounded') return { findings: [finding('compressor', state, frame)] };
  return state === 'leaking' ? { remarks: [frame.wordsOf(frame.span)] } : {};
}

/** "It won't pull in" is of the contactor, whatever was named. */
const itDoes: Means = (tags, frame) => {
  if (/\bpull(?:ed|ing)? in$/i.test(frame.wordsOf(frame.span))) return null;
  // "Jumped the stat and she fired right up": the unit did.
  const isStart = STARTED.test(frame.wordsOf(frame.span)) && wordBehind(frame) !== 'to';
  return stateId(tags['doing']) === 'running' && isStart
    ? ofWhatTurns('running')(tags, frame)
    : itIs('doing', true)(tags, frame);
};

const STARTED = /\b(?:fired|started|took|kicked|came|lit)\b/i;

/** What asks of a switch whether it is open, where its part is named. */
const OPENNESS: readonly Finding['state'][] = ['open', 'closed', 'tripped'];

/** "So they're good" concludes from what was read, and "put a new drier on it while it was open" tells when. */
const LEADS_OFF = /^(?:so|while|when|once)$/i;
/** Behind the part, without a pause: "it's hot" and "it's running" are of the box as often. */
const TOLD_OF_IT: readonly Finding['state'][] = [...OF_A_PART, 'open', 'closed', 'ok', 'leaking'];

/** "Is the condenser dirty?" asks somebody: nothing has been found. */
const asked: Means = (tags) => {
  const place = placeId(tags['part']);
  const state = stateId(tags['state']);
  const isOfSwitch = place !== null && state !== null && OPENNESS.includes(state);
  return isOfSwitch ? { questions: [{ ask: 'switch', about: place }] } : {};
};

/** What was looked for and is not there: worth the note, and no fault. */
const seenClear: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const remarks = [frame.wordsOf(frame.span)];
  // "No leaks on the condenser or the line set" is broken off in the middle.
  return part === null || !frame.endsAtPause ? null : { remarks, names: onlyFrosts(part, frame) };
};

const stateIs =
  (state: Finding['state']): Means =>
  (tags, frame) => {
    const part = partId(tags['part']);
    return part === null ? null : { findings: [finding(part, state, frame)] };
  };

const COIL_FANS = { condenser: 'condenserFan', evaporator: 'evaporatorFan' } as const;

/** The answer to "which fan": only while that is open. */
const whichFan: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const { openFan } = frame.context;
  if (openFan === null || (part !== 'condenser' && part !== 'evaporator')) return null;
  return { findings: [finding(COIL_FANS[part], openFan, frame)] };
};

/** "Both of them" */
const bothAnswer: Means = (_tags, frame) => {
  const { openFan } = frame.context;
  if (openFan === null) return null;
  return { findings: Object.values(COIL_FANS).map((part) => finding(part, openFan, frame)) };
};

/** "Soapy water on every joint" and "hot water on the coil" found none wet: somebody put it there. */
const PUT_THERE = /^(?:soapy|soap|soaped|bubble|hot|warm|cold|clean|fresh)$/i;

const SEEN =
  '[(there is|there was|i have|i found|found|i have got|i see|we have|got|it has|seeing)]';
const MUCH = '(a lot of|lots of|some|heavy|a ton of|a bunch of|a little|a bit of|thick|tons of)';
const ON =
  '[(right|everywhere|all|[all the way] (back|up|down|out))] (at|on|along|in|by|around|round|all over|over|all around|all round|inside|under|on top of|caked on|stuck in|stuck to|covering|packed in|[all the way] back to|built up on|built up in|behind)';

const IS =
  '(is|are|~smells|~looks|~look|~was|~were|~seems|~feels|~sounds|~looks like it is|~has been|~is been|~is getting|~looks to be|~seems to be|~must be|~got|~is all|~came up|~(is|was|were) found|~(is|has) gone|~appears [to be])';

/** What was found at a part. */
export const FINDING_RULES: readonly Rule[] = [
  ...['condenser', 'evaporator'].map((part) =>
    heardRule(`[~the] ${part} [(fan|~one|~side)]`, whichFan, { tags: { part }, alone: true }),
  ),
  rule('[the] both [of (them|the fans|those)]', bothAnswer, { unheard: true, alone: true }),
  heardRule(`<the> <part> ${IS} <state>`, stateOf('state'), {
    examples: ['condenser is plugged', 'evaporator is a block of ice', 'fan is not running'],
  }),
  rule(
    `<the> <part> (is|was|looks|are) [(about|like|maybe|around|probably|at least|a good|over)] <number> percent <state>`,
    stateOf('state'),
    { examples: ['condenser is about sixty percent plugged'] },
  ),
  rule(`<the> <part> ${IS} <very> <state>`, stateOf('state'), {
    examples: ['condenser is really dirty'],
  }),
  rule(
    '<the> <part> (half|partly|partially|completely|all|really|pretty|totally|mostly|badly) <state>',
    stateOf('state'),
    { examples: ['evaporator half frosted'] },
  ),
  rule(
    '<the> <part> [[(right|over)] (here|there)] (it is|they are) <very> <state>',
    stateOf('state'),
    {
      examples: ['evaporator fan motor it is bad'],
    },
  ),
  rule(`<the> <part> [number] <count:which> ${IS} <very> <state>`, ofOneOfFew, {
    examples: ['evap fan two is noisy'],
  }),
  rule('<the> <part> [number] <count:which> <state>', ofOneOfFew, {
    unheard: true,
    examples: ['fuse one good'],
  }),
  rule(`<the> <part> <spot> [${IS}] <very> <state>`, stateOf('state'), {
    examples: ['door of the walk in is propped', 'gasket on the left door is torn'],
  }),
  rule('<the> <part> <spot> <doing>', stateOf('doing'), {
    unheard: true,
    examples: ['light in the back corner went out'],
  }),
  rule(
    `(found|i found|there is|i have|i have got|we have|we have got|it has|it has got|got) <the> <part> <spot> <very> <state>`,
    stateOf('state'),
    {
      examples: ['i have got the door of the walk in propped'],
    },
  ),
  rule('<the> <part> <doing>', stateOf('doing'), {
    examples: ['condenser fan motor has failed', 'compressor will not start'],
  }),
  rule(`${SEEN} [${MUCH}] ${DIRT} ${ON} <the> [<bit>] <part>`, stateIs('dirty'), {
    examples: ['grease all over the condenser'],
  }),
  rule(
    `${SEEN} [${MUCH}] (ice|frost|ice buildup|ice building up|ice build up) ${ON} <the> [<bit>] <part>`,
    stateIs('iced'),
    { examples: ['ice on the suction line', 'there is ice on the evaporator'] },
  ),
  rule(
    `${SEEN} [(a|an|${MUCH})] (oil|oily spot|oil spot|oil stain|oil residue|oily residue|oil film|oil trace|traces of oil) ${ON} <the> [<bit>] <part>`,
    stateIs('oily'),
    { examples: ['oily spot on the suction line', 'there is oil around the service valve'] },
  ),
  rule(
    `${SEEN} [${MUCH}] [standing] water [(standing|sitting|pooled)] ${ON} <the> [<bit>] <part>`,
    (tags, frame) => (PUT_THERE.test(wordBefore(frame)) ? null : stateIs('wet')(tags, frame)),
    {
      examples: ['water in the drain pan', 'there is water in the drain pan'],
    },
  ),
  rule(
    `[(there is|i see|i have|we have|i have got|and|still|(i|we) (do not|can not|did not|am not) (see|seeing|find|have|got|getting)|~~(did not|could not|can not|do not) (see|find|notice|spot|get))] (no|zero|any|hardly any|barely any|not any|not much|very little|not seeing any|without [any]|almost no) [(more|sign of|signs of|real|visible)] (ice|frost|oil|water|leak|leaks|sweat|condensation|snow|slush|${DIRT}) ${ON} <the> [<bit>] <part> [(at all|whatsoever|yet|anymore|any more|anywhere)]`,
    seenClear,
    { examples: ['no ice on the evaporator'] },
  ),
  rule(
    `<the> (motor|bearing|bearings|winding|windings|contacts|fins|terminals) ${IS} <very> <state> (on|in|of|at) <the> <part>`,
    stateOf('state'),
    { examples: ['motor is locked up on the condenser fan'] },
  ),
  rule(
    `${SEEN} [(a|some)] (kink|restriction|blockage|clog|obstruction) ${ON} <the> <part>`,
    stateIs('plugged'),
    {
      examples: ['there is a kink in the liquid line'],
    },
  ),
  rule(
    `${SEEN} (a|some) [(big|small|bad)] (crack|hole|split|tear|rip|rub through|rub out|chafe|dent|pinch|worn spot) ${ON} <the> [<bit>] <part>`,
    stateIs('failed'),
    {
      examples: ['there is a crack in the drain pan'],
    },
  ),
  rule('[the] <part> [is] (missing a blade|missing blades)', stateIs('failed')),
  ...NOT_FITTED_RULES,
  rule('[there is] no <part> (running|turning|spinning|working)', noneRuns, {
    examples: ['no fan running'],
  }),
  rule(
    '[(there is|i see|i found|found)] (nothing wrong|no (problem|problems|issue|issues|trouble)) (with|on|at|in) <the> <part>',
    stateIs('ok'),
    { examples: ['nothing wrong with the condenser fan'] },
  ),
  rule(
    '[(the|a)] ((cap|caps) (is|are) (missing|gone|off) (from|off|on|off of) <the> <part>|(valve|stem|schrader) (cap|caps) (is|are) (missing|gone))',
    onlyOf('caps', 'missing'),
    { examples: ['cap is missing off the service valve'] },
  ),
  rule('(missing|no) (valve|stem|schrader) (cap|caps)', onlyOf('caps', 'missing')),
  rule('<the> <part> <state>', stateOf('state'), {
    only: (frame) => !isSwitched(frame),
    examples: ['condenser plugged', 'condenser fan not running'],
  }),
  rule(
    `(found|i found|there is|i have|i have got|we have|got|has|it has|see|i see|it has got|we have got) [(a|an|the|some)] <very> <state> <part>`,
    stateOf('state'),
    {
      examples: ['found a dirty condenser', 'it has a torn door gasket'],
    },
  ),
  rule('[a] <state> <part>', stateOf('state'), { apart: true, examples: ['dirty condenser'] }),
  rule('<state> <part>', badAtStart),
  rule(
    '[(a|the|some)] <state> <part> (at|on|in|of|inside|behind) <the> <part:where>',
    stateOf('state'),
    {
      examples: ['loose terminal on the contactor'],
    },
  ),
  rule(
    `<the> <part> [[number] <count:which>] (is|are|was|were|looks|has been|been) ${LIFELESS}`,
    lifeless,
    {
      examples: ['transformer is dead'],
    },
  ),
  rule(
    '(neither|none|neither one|none of) [of] [(the|my|them)] <part> (is|are|was) (running|turning|spinning|on|working)',
    noneRuns,
    {
      examples: ['neither fan is running'],
    },
  ),
  rule(`<the> <part> ${LIFELESS}`, lifeless, { apart: true, examples: ['transformer dead'] }),
  // "Bulb's come off the suction line and condenser coil is full of grease" tells two things of two parts.
  rule(`<the> <part> and <the> <part:second> ${IS} both <very> <state>`, bothAre, {
    unheard: true,
    examples: ['hinge and gasket are both shot'],
  }),
  rule(`<the> <part> and <the> <part:second> ${IS} <very> <state>`, bothAre, {
    only: startsInWords,
    examples: ['condenser and evaporator are dirty'],
  }),
  rule(
    '<the> <part> (is|are) running [(and|but)] <the> <part:other> (is|are) not',
    runsButOtherNot,
    { examples: ['compressor is running and the condenser fan is not'] },
  ),
  ...LAST_NAMED_RULES,
  ...CYCLE_RULES,
  ...BULB_RULES,
  rule(`(<pause> [(and|but)]|and|but|because) (it|they|she) <doing>`, itDoes, {
    unheard: true,
    examples: [],
  }),
  rule(
    `((<pause> [(and|but)]|and|but|because) (it|they|she)|(<pause> [(and|but)]|and|but|so) (that|this) one|so it) (is|are|was|were) <very> <state>`,
    itIs('state', true),
    {
      examples: [],
    },
  ),
  rule(
    '[(i|we)] [(just|have|then|am|are)] (ohmed|looking at|checking|ohm|tested|checked|metered|looked at|inspected|tapped [on]|touched|pulled|shook|pulled apart|opened up|swung|spun|felt|megged) [(out|up)] <the> <part>',
    (tags) => {
      const part = partId(tags['part']);
      return part === null ? null : { names: part };
    },
    { examples: ['ohmed out the defrost heater'] },
  ),
  rule(
    '(checked|tested|went over|looked at|inspected) [all] [of] <the> <part> <pause> [(it is|they are|all|all of them)] <very> <state>',
    stateOf('state'),
    { examples: [] },
  ),
  rule(
    `[~~(no|nope|yeah|yep)] (it|that|they) (is|are|was|were) <very> <state>`,
    itIs('state', false),
    {
      apart: true,
      examples: ['it is really dirty'],
    },
  ),
  rule('[(no|nope|yeah|yep)] (that|this) one (is|was) <very> <state>', itIs('state', false), {
    unheard: true,
    apart: true,
    only: ({ context }) => wasMeteredDead(context),
    examples: [],
  }),
  rule(
    '(it|they) (is|are|was|were) <very> <state>',
    (tags, frame) =>
      TOLD_OF_IT.some((state) => state === tags['state']) ? itIs('state', true)(tags, frame) : null,
    { only: (frame) => frame.endsAtPause && !LEADS_OFF.test(wordBefore(frame)), examples: [] },
  ),
  // "Twenty six across the high pressure control so that's open"
  rule(
    '(<pause> [(so|and|but)]|and|but|so) that is <very> <state>',
    (tags, frame) =>
      OPENNESS.some((state) => state === tags['state']) ? itIs('state', true)(tags, frame) : null,
    { unheard: true, only: (frame) => frame.endsAtPause, examples: [] },
  ),
  rule(
    '<the> <part> (is [reading]|reads|is showing|shows) [about] <number> [degrees] (off|too high|too low|high|low|out|warm|cold)',
    (tags, frame) => {
      const part = partId(tags['part']);
      const tells =
        part === 'temperatureControl' ||
        part === 'sensor' ||
        part === 'thermometer' ||
        part === 'controller';
      // By how much, whoever reads it next has to know.
      return tells
        ? { findings: [finding(part, 'failed', frame)], remarks: [frame.wordsOf(frame.span)] }
        : null;
    },
    { examples: ['thermostat is reading four degrees off'] },
  ),
  rule(
    '<the> (noise|rattle|racket|squeal|grinding|sound|vibration|humming|knocking) (is|was|seems to be) (coming from|from|at|in) <the> <part>',
    stateIs('noisy'),
    { examples: ['noise is coming from the evaporator fan'] },
  ),
  rule(
    `<the> <part> (has|has got|is got|is getting|have|have got) (power|voltage|juice|volts) (but|and|and it|but it) (it is|is|they are|are) <very> <state>`,
    fedBut,
    { examples: ['the fan has got power but it is just humming'] },
  ),
  rule('<the> valve is hunting', onlyOf('expansionValve', 'hunting'), {
    examples: ['the valve is hunting'],
  }),
  rule(`(is|are|was|were) <the> <part> <very> <state>`, asked, {
    examples: ['is the condenser dirty'],
  }),
  rule(
    '(found|i found|we found|there is|i have|i have got|we have|we have got|it has|it has got|what (i|we) found (is|was)) <the> <part> [to be] <state>',
    stateOf('state'),
    {
      examples: ['i found the condenser fan not running'],
    },
  ),
  rule(
    '(there is|i have|i found|found|i have got|i see|we have|got|it has) (a|some) (leak|refrigerant leak|gas leak|oil leak) (at|on|in|by|around) <the> <part>',
    stateIs('leaking'),
    {
      examples: ['found a leak at the access fitting'],
    },
  ),
  rule(
    '(leak|leaking|it is leaking) (at|on|in|by|from) <the> <part> (on|of|in|at|by|near|before|after|off) <the> <part:where>',
    stateIs('leaking'),
    { unheard: true, examples: ['leak at a joint on the suction line'] },
  ),
  rule('(leak|leaking|it is leaking) (at|on|in|by|from) <the> [<bit>] <part>', stateIs('leaking'), {
    examples: ['leaking at the service valve'],
  }),
];
