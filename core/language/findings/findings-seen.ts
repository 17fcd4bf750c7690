import type { Tags } from '../../grammar/nodes.ts';
import type { FindingStateId, PartId } from '../../terms/names.ts';
import { finding } from './finding-of.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, stateId } from '../slots.ts';
import { DIRT, LIFELESS } from '../vocabulary/state-names.ts';
import { nothing, remarkWithoutNumber } from '../plain-means.ts';

const foundAt =
  (state: FindingStateId): Means =>
  (tags, frame) => {
    const part = partId(tags['part']);
    return part === null ? null : { findings: [finding(part, state, frame)] };
  };

const found =
  (part: PartId, state: FindingStateId): Means =>
  (_tags, frame) => ({ findings: [finding(part, state, frame)] });

/** What no air goes through is plugged; that none comes off an evaporator may be its fans or its ice. */
const noAir: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  return tags['part'] === 'evaporator' && /\b(?:off|out of)\b/i.test(words)
    ? { remarks: [words], names: 'evaporator' }
    : foundAt('plugged')(tags, frame);
};

/** Switches that the line's whole voltage across them shows to be open. */
const SWITCHES: ReadonlySet<PartId> = new Set<PartId>([
  'highPressureSwitch',
  'lowPressureSwitch',
  'temperatureControl',
  'overload',
  'doorSwitch',
]);

const openUnderVoltage: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part !== null && SWITCHES.has(part) ? foundAt('open')(tags, frame) : null;
};

const stateOfBit: Means = (tags, frame) => {
  const state = stateId(tags['state']);
  return state === null || state === 'running' ? null : foundAt(state)(tags, frame);
};

const stateOfAll: Means = (tags, frame) => {
  const state = stateId(tags['state']);
  return state === null ? null : foundAt(state)(tags, frame);
};

const GOT =
  '[(i have|i have got|i got|i am getting|i am seeing|getting|seeing|found|i found|there is|there are|we have|got|i see|it has|showing|it is|still)]';
const AT =
  '(at|on|around|near|by|in|under|behind|along|inside|off|from|out of|coming (from|out of|off)|over (at|by|on))';
const ALARMS =
  '(is going off|goes off|went off|is alarming|alarms|is screaming|is beeping|hits|hit|is hitting|is picking up [(something|a leak|gas)]|picks up [(something|a leak|gas)]|picked up [(something|a leak|gas)]|lit up|lights up|is lighting up)';
const LITTLE =
  '[(a|an|some|a lot of|lots of|a few|tiny|small|big|large|little|slow|steady|a little|a bit of|fresh)]';

const SOAP =
  '([the] (soap|soap test|bubble test|soap bubbles|bubbles|leak detector spray|leak check|soap and water|big blue|soap solution))';
const SHOWS = '(shows|showed|is showing|showing|found|finds|turned up|says|has|gave me)';
const LEAK = '(bubbles|bubbling|a leak|leak|a leaker|foam|leaking|a hit|it leaking|it)';

/** Where nothing says what leaks, what was spoken of last does. */
const leaksThere: Means = (_tags, frame) => ({
  ofIt: {
    means: (part) => ({ findings: [finding(part, 'leaking', frame)] }),
    inSentence: false,
    otherwise: { findings: [finding('joint', 'leaking', frame)] },
  },
});

/** "Wiring is rubbed through at the compressor terminals": no wire leaks. */
const isOfNoWire = (frame: Frame): boolean => {
  const { from } = frame.span;
  return !OF_WIRES.test(frame.wordsOf({ from: Math.max(0, from - 2), to: from }));
};
const OF_WIRES = /\b(?:wir(?:e|es|ing)|leads?|cord|cable|insulation) (?:is|are|was|were)$/i;

/** What eyes, soap and the detector find, where the words for it are no state of the part. */
export const SEEN_RULES: readonly Rule[] = [
  rule(
    `[(i|we)] [(found|got|there is) (a|the|my) [small] leak] [<pause>] [(it|it is|where it)] (rubbed|worn|chafed|rubbing|rubs|wore|vibrated|cracked|corroded) [(a hole|right|clean)] through (on|at|in) <the> [<bit>] <part>`,
    foundAt('leaking'),
    { only: isOfNoWire, examples: ['rubbed through on the liquid line'] },
  ),
  rule(`${SOAP} ${SHOWS} ${LITTLE} ${LEAK} ${AT} <the> [<bit>] <part>`, foundAt('leaking'), {
    examples: ['soap test shows bubbles at the flare'],
  }),
  rule(
    `(there is|that is|found|i found|got|here is) (my|the|our|your) (leak|leaker) [(right there|there|right here)]`,
    leaksThere,
    { unheard: true, apart: true, examples: ['there is my leak'] },
  ),
  rule(`${SOAP} ${SHOWS} ${LITTLE} ${LEAK} [(there|right there|at it)]`, leaksThere, {
    examples: ['soap test shows bubbles'],
  }),
  rule(
    `[(i|we|have|i have|we have)] (found|got|located|spotted) (the|a|my|that|another) [(small|big|pinhole|bad|slow)] (leak|leaker|pinhole) <pause> [(it is|right)] (at|on|in|by|right at) <the> [<bit>] <part>`,
    foundAt('leaking'),
    { examples: [] },
  ),
  rule(
    `${GOT} ${LITTLE} [(small|tiny|big|little|slow|steady|steady stream of|stream of)] (bubbles|soap bubbles|bubbling|foam) [coming] ${AT} <the> [<bit>] <part>`,
    foundAt('leaking'),
    { examples: ['bubbles at the flare nut on the king valve'] },
  ),
  rule(
    `[(the|my)] (sniffer|leak detector|detector|electronic detector|h ten) ${ALARMS} [right] ${AT} <the> [<bit>] <part>`,
    foundAt('leaking'),
    { examples: ['sniffer is going off at the u bends on the evaporator'] },
  ),
  rule(
    `${GOT} (a|an|the|your|my|our|another) [(small|tiny|big|little|slow|bad|pinhole|refrigerant|gas)] (leak|leaker|pinhole) ${AT} <the> <bit> <part>`,
    foundAt('leaking'),
    { examples: ['there is a pinhole in the bottom of the evaporator'] },
  ),
  rule(
    '[(the|your|my|our)] (leak|pinhole) (is|was) (at|on|in|by|near|around|under|coming from) <the> [<bit>] <part>',
    foundAt('leaking'),
    { examples: ['the leak is at the inlet of the receiver'] },
  ),
  rule(
    '<the> [<bit>] <part> (bubbled|bubbles|is bubbling|bubbles up|is hissing|hisses|is spitting [oil]|is blowing bubbles|is seeping|seeps|weeps|is weeping|is spraying)',
    (tags, frame) => (tags['part'] === 'sightGlass' ? null : foundAt('leaking')(tags, frame)),
    { examples: ['the access fitting is bubbling'] },
  ),
  rule(
    `<the> <part> (has|has got|is got|got|have) [(a lot of|lots of|some|a bunch of|a ton of|a little|a layer of|tons of|a mat of)] ${DIRT} [(built up|caked|packed|stuck)] [(on|in|all over|through) (it|them)]`,
    foundAt('dirty'),
    { examples: ['evaporator has got scale on it'] },
  ),
  rule(
    `<the> <part> is (motor|coil|bearing|bearings|winding|windings|shaft|handle|housing|fins|contacts|points|wire|wires|stem|face|frame|tip) (is|are|was|looks|has) <very> <state>`,
    stateOfBit,
    { examples: ['defrost timer is motor is burnt'] },
  ),
  rule(
    `<the> <part> is (motor|coil|bearing|winding|windings|contacts) (is|are|was) ${LIFELESS}`,
    foundAt('failed'),
    { examples: ['defrost timer is motor is dead'] },
  ),
  rule(
    `(<number:which>|some) of (the|my|those|them) [<number:all>] <part> (is|are|was|looks|sounds) <very> <state>`,
    stateOfBit,
    { examples: ['one of the two condenser fans is short cycling'] },
  ),
  rule(
    '(all <number:all> [(of the|of my|the|my)] <part>|<the> <part> all <nth:all>) [(is|are|were)] <very> <state>',
    stateOfAll,
    {
      examples: ['all four evap fans running'],
    },
  ),
  rule(
    `(<number:which>|some) of (the|my|those|them) [<number:all>] <part> (is|are) [all] (${LIFELESS}|not (running|turning|working|spinning)|off|stopped)`,
    foundAt('notRunning'),
    { examples: ['two of the three condenser fans are out'] },
  ),
  rule(
    `(<number:which>|some) of (the|my|those|them) [<number:all>] <part> (is|are) not [even] (moving|going|turning|spinning) [(round|around|at all)]`,
    foundAt('notRunning'),
    { unheard: true, examples: ['two of the three evap fans are not going round'] },
  ),
  rule(
    `${GOT} (no|zero|hardly any|barely any|very little|not much|almost no|next to no) (airflow|air flow|air|flow) (across|through|over|coming (through|out of|off|across)|moving (through|across)|going through|off|out of) <the> <part>`,
    noAir,
    { examples: ['there is no airflow across the condenser'] },
  ),
  rule(
    '(you|i|we) can not [(even|hardly)] see [any] (light|daylight|anything|a thing) (through|thru) <the> <part>',
    foundAt('plugged'),
    { examples: ['you can not even see light through the condenser'] },
  ),
  rule(
    `${GOT} ((full|line|supply|source|all my|the full|full line|incoming) (voltage|volts)|my voltage) (across|over) <the> <part>`,
    openUnderVoltage,
    { examples: ['reading line voltage across the high pressure switch'] },
  ),
  rule(
    '(it|she|that) [~~(is still|still)] (will not|is not|does not|would not|did not|never|~~not) (pull in|pulling in|pulled in)',
    found('contactor', 'open'),
    { examples: ['it will not pull in'] },
  ),
];

/** "Thermostat isn't calling": its contacts are open. */
const isNotCalling = (tags: Tags, frame: Frame): boolean =>
  tags['state'] === 'closed' &&
  tags['part'] === 'temperatureControl' &&
  /\bcalling\b/i.test(frame.wordsOf(frame.span));

/** What no longer runs stands still; of what else it is not, nothing is told. */
const notSo: Means = (tags, frame) => {
  if (isNotCalling(tags, frame)) return foundAt('open')(tags, frame);
  if (tags['state'] !== 'running') return {};
  const part = partId(tags['part']);
  if (part !== null) return foundAt('notRunning')(tags, frame);
  const means = (last: PartId): Meaning => ({ findings: [finding(last, 'notRunning', frame)] });
  return { ofIt: { means, inSentence: true, otherwise: {} } };
};

/** What was looked for and is not there, or no longer: nothing was found. Behind the states that a "not" makes. */
export const UNSEEN_RULES: readonly Rule[] = [
  rule(
    '(no|no more|not any|not a|zero|without [any]) (leaks|leak|bubbles|sign of a leak|signs of a leak|hits) (on|at|in|around|anywhere on|near) <the> [<bit>] <part> [(or|and|nor) <the> [<bit>] <part:other>]',
    nothing,
    { examples: ['no leaks on the condenser or the suction line'] },
  ),
  rule(
    '(it|that|they|she|<the> <part>) (is|are|was|were) (not|no longer|never|hardly) <very> <state> [(anymore|any more|yet|at all)]',
    notSo,
    { examples: ['it is not short cycling anymore'] },
  ),
  rule(
    '(it|that|they|she|<the> <part>) [(has|have|finally)] (stopped|quit) (leaking|icing [up]|tripping|short cycling|hunting|dripping|making noise|rattling|humming|squealing|cycling)',
    nothing,
    { examples: ['it quit short cycling'] },
  ),
  rule(
    `[(the|my)] (sniffer|leak detector|electronic detector|detector) ${ALARMS} [right] ${AT} <clause>`,
    remarkWithoutNumber,
    { examples: ['sniffer hits at the distributor'] },
  ),
];
