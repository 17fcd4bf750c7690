import type { PartId } from '../../terms/names.ts';
import { TURNS } from '../words/fans.ts';
import { finding } from './finding-of.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, stateId } from '../slots.ts';
import { LETS_RUN, stateAt } from '../words/state-at.ts';
import type { Finding } from '../utterance.ts';
import { remark } from '../plain-means.ts';

/** What a part is besides: "rusted through and weeping at the bottom". */
const ALSO: readonly Finding['state'][] = [
  ...(['dirty', 'plugged', 'iced', 'noisy', 'loose', 'burnt', 'oily', 'failed'] as const),
  ...(['leaking', 'hot', 'wet', 'shortCycling'] as const),
];
/** Of a part that was said to be something in the words right before. */
const isTold = (frame: Frame): boolean =>
  frame.endsAtPause &&
  /(?:['’]s|\b(?:is|are|was|were|looks|feels|sounds|been)) (?!not\b)(?:[\w'’-]+ ?){1,5}$/i.test(
    frame.wordsOf({ from: 0, to: frame.span.from }),
  );

const alsoIs: Means = (tags, frame) => {
  const said = stateId(tags['state']);
  if (said === null || !ALSO.includes(said)) return null;
  const means = (part: PartId): Meaning | null => {
    const state = stateAt(part, said);
    return state === null ? null : { findings: [finding(part, state, frame)] };
  };
  return { ofIt: { means, inSentence: true, otherwise: {} } };
};

/** "Away she goes", behind what was done at it: nobody else is leaving. */
const startsUp: Means = (_tags, frame) => {
  const of = (part: PartId): Meaning => ({ findings: [finding(part, 'running', frame)] });
  const means = (part: PartId): Meaning | null =>
    TURNS.includes(part) ? of(part) : LETS_RUN.has(part) ? of('compressor') : null;
  return { ofIt: { means, inSentence: true, otherwise: {} } };
};

/** The screen of what has one: of that which was spoken of. */
const screenIs: Means = (tags, frame) => {
  const state = tags['state'] === undefined ? 'dirty' : stateId(tags['state']);
  if (state === null || state === 'running') return null;
  const means = (part: PartId): Meaning | null =>
    SCREENED.has(part) ? { findings: [finding(part, state, frame)] } : null;
  return { ofIt: { means, inSentence: false, otherwise: remark({}, frame) ?? {} } };
};
const SCREENED: ReadonlySet<PartId> = new Set<PartId>([
  ...(['expansionValve', 'filterDrier', 'waterValve', 'liquidLineSolenoid'] as const),
  ...(['oilSeparator', 'accumulator', 'filter', 'capillaryTube'] as const),
]);

/** "Took the valve apart": what is told next is of it. */
const tookApart: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null ? null : { remarks: [frame.wordsOf(frame.span)], names: part };
};

/** "Magnet test on the solenoid, got pull": what is told next of "the coil" is of that one. */
const pulls: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null || !WOUND.has(part)
    ? null
    : { remarks: [frame.wordsOf(frame.span)], names: part };
};
const WOUND: ReadonlySet<PartId> = new Set<PartId>([
  ...(['liquidLineSolenoid', 'hotGasValve', 'waterValve', 'contactor', 'startRelay'] as const),
]);

/** A wire without its name, at what it should be on. */
const wireOff: Means = (_tags, frame) => {
  const state = /\bburn/i.test(frame.wordsOf(frame.span)) ? 'burnt' : 'loose';
  return { findings: [finding('wiring', state, frame)] };
};

/** "Door's sagging, don't seal at the bottom" */
const doesNotSeal: Means = (_tags, frame) => {
  const means = (part: PartId): Meaning | null =>
    part === 'door' || part === 'doorGasket' || part === 'hinge'
      ? { findings: [finding(part === 'hinge' ? 'door' : part, 'failed', frame)] }
      : null;
  return { ofIt: { means, inSentence: true, otherwise: {} } };
};

/** "Nine out of nine" of what a knob can be turned to: where it stands, and nothing that was measured. */
const outOf: Means = (_tags, frame) =>
  /\b(?:knob|dial|stat|thermostat|control|set(?:ting)?|notch)\b/i.test(
    frame.wordsOf({ from: 0, to: frame.span.to }),
  )
    ? { remarks: [frame.wordsOf(frame.span)] }
    : null;

/** How long it runs and rests: no figure of any instrument of ours. */
const onAndOff: Means = (tags, frame) =>
  /\b(?:seconds?|minutes?|over and over|again and again)\b/i.test(frame.wordsOf(frame.span))
    ? remark(tags, frame)
    : null;

const PLACE =
  '[(at|on|in|along|around|near|from|by) the (bottom|top|side|sides|edge|edges|back|front|corner|corners|inlet|outlet|end|ends|seam|seams|weld|base|middle|left|right|u bends|header|fitting|flare)]';

/** What is told of a part beside the first thing that was told of it, and what shows but has no name of ours. */
export const TOLD_BESIDE_RULES: readonly Rule[] = [
  rule(
    '(<the> <part>|it|she|that) is [(pretty|a little|kind of|running|getting)] <state> but not (crazy|bad|too bad|that bad|terrible|terribly|crazy hot|alarming|unusual|out of line|excessive|excessively)',
    remark,
    { unheard: true, examples: ['the compressor is hot but not crazy'] },
  ),
  rule(
    `and [(also|still|even)] <very> <state> ${PLACE} [like (a|an|the|it|crazy|mad) [<clause>]]`,
    alsoIs,
    {
      unheard: true,
      only: isTold,
      examples: [],
    },
  ),
  rule(
    '(<pause> [and]|and) ((away|off) (she|it) (goes|went|ran|runs)|now (she|it) (goes|runs|starts|takes off|fires up|purrs)|(she|it) (took|takes) (right|straight) off)',
    startsUp,
    { unheard: true, examples: [] },
  ),
  rule(
    `[(and|so|but)] (the|it is|its) [(inlet|little)] (screen|strainer) (is|was) (<very> <state>|(full of|packed (with|full of)|loaded with|plugged with|nothing but) (muck|mud|rust|junk|flux|copper|shavings|black stuff|wax))`,
    screenIs,
    {
      unheard: true,
      examples: ['the screen was plugged solid'],
    },
  ),
  rule('[(i|we|and|then|so i)] (took|pulled|broke|tore) <the> <part> (apart|down)', tookApart, {
    unheard: true,
    examples: ['took the txv apart'],
  }),
  rule(
    '[(i|we|did|did a|ran a|a|quick)] (magnet|pull|screwdriver|magnetic) test on <the> <part> [<pause>] [[and] [(i|it)] [have] [(got|has|felt|feels|has got|it is got)] [(a|good|a good|some|plenty of|strong|no)] pull]',
    pulls,
    { unheard: true, examples: ['magnet test on the liquid line solenoid got pull'] },
  ),
  rule(
    '[(a|the|one [of the]|some|another|both|two)] (lead|leads|spade|wire|connector|wire nut) (is|was|are|fell|came|popped|slid|vibrated|worked|broke|burnt|burned|has come|had come|had fallen) [(right|clean|all the way)] off [(of|from)] <the> [<bit>] <part>',
    wireOff,
    { unheard: true, examples: ['lead fell off the start capacitor'] },
  ),
  rule(
    `(<pause> [(and|it|so it|and it)]|and [it]|so it|it) (do|does|will|would) not (seal|close|latch|shut|pull shut|sit flush|line up) [(right|tight|good|flush|all the way|anymore|up)] ${PLACE}`,
    doesNotSeal,
    { unheard: true, examples: [] },
  ),
  rule(
    '[<the> (knob|dial|<part>) (is|was) [(set|sitting|turned|up|all the way up|cranked)] (at|on|to)|<pause>] <number> out of <number> [(on (it|the (dial|knob|stat|thermostat)))]',
    outOf,
    { unheard: true, examples: ['thermostat is at seven out of ten'] },
  ),
  rule(
    '[(i|we|and|then)] (ran|run|running|cycled) [(it|her)] [through] [(a|another|about|like)] <number> [(full|complete|good|clean|more|whole|test)] (cycles|batches|harvests|freezes|freeze cycles|harvest cycles|rinses|rinse cycles|cycle)',
    remark,
    { unheard: true, examples: ['ran two cycles'] },
  ),
  rule(
    '[(the|this|it|she|machine|ice machine|the ice machine|the machine)] [is] [(only|just|barely)] (dropping|making|putting out|harvesting|dropped|makes|drops|throwing) [(about|like|only|maybe)] (half|a quarter|a third|<nth:slabs>|a couple [of]|one and a half) [(a|of a|of the)] (slab|slabs|sheet|sheets|waffle|batch|bridge)',
    remark,
    { unheard: true, examples: ['ice machine is only dropping half a slab'] },
  ),
  rule(
    '[(put|log|call it|write|charge)] labor [(is|was|of|at|about|for|comes to|on this one)] <number> (hours|hour|hrs) [<pause>] [and <clause>]',
    remark,
    { unheard: true, examples: ['labor two hours and a mile of wire'] },
  ),
  rule(
    '[the] [(box|case|store|other)] lights (go|went|get|got|are|were|keep) [(real|really|kind of|all|way)] (dim|dimming|flickering|dimmer) [(when|every time|as|whenever|each time) <clause>]',
    remark,
    { unheard: true, examples: ['the lights go dim when it tries to start'] },
  ),
  rule(
    '(<pause>|and|and then) [(it|she|the compressor)] kicked (off|over|on) like <clause>',
    remark,
    { unheard: true, examples: [] },
  ),
  rule(
    '(nothing is|nothing|not a thing is|none of it is) lit up [<pause> no display] [<pause> no lights] [<pause> no fans]|no display [on it] [<pause> no lights] [<pause> no fans]|[(the|my)] (display|screen) (is|was) (blank|dead|dark|out|black|gone)',
    remark,
    { unheard: true, examples: ['no display'] },
  ),
  rule(
    '[(i|we|and|so i)] (swapped|switched|reversed|flipped|moved|crossed) [the] [two] (leads|wires|legs|phases|taps|connections) [around] (on|at) <the> <part>',
    tookApart,
    { unheard: true, examples: ['swapped the leads on the relay'] },
  ),
  rule(
    '(it|she|the motor|<the> compressor) (is [just] sitting|sits) there (humming|buzzing)',
    (_tags, frame) => ({ findings: [finding('compressor', 'humming', frame)] }),
    { unheard: true, examples: ['it is just sitting there humming'] },
  ),
  rule(
    'she (is short cycling|short cycles|keeps short cycling|was short cycling) [on [the] (high|low) pressure [(switch|control)]]',
    (_tags, frame) => ({ findings: [finding('compressor', 'shortCycling', frame)] }),
    { unheard: true, examples: ['she short cycles'] },
  ),
  rule(
    '[(it|she|compressor|the compressor|unit)] [(is|runs|comes|kicks|it is)] on [for] [(about|maybe|like)] <number> [(seconds|second|minutes|minute)] [<pause>] [(and|then|and then)] [(it is|back|goes|kicks)] off [for] [(about|maybe|like)] <number:off> [(seconds|second|minutes|minute)] [<pause>] [(over and over|again and again|all day [long]|and repeat|back and forth|on and on)]',
    onAndOff,
    { unheard: true, examples: ['on ten seconds off thirty over and over'] },
  ),
  rule(
    '[(i|we|and)] (proved|verified|tested|checked|confirmed) [(it|her|that|everything)] [(is|was|as)] dead [(at|on|with) <clause>]',
    remark,
    { unheard: true, examples: ['proved it dead'] },
  ),
];
