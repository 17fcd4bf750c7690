import type { PartId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { startsInWords } from '../words/clause-start.ts';
import { TURNS } from '../words/fans.ts';
import { finding } from './finding-of.ts';
import { amountIn } from '../numbers/measure.ts';
import { reading } from '../readings/reading-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, stateId } from '../slots.ts';
import { stateAt } from '../words/state-at.ts';
import type { Finding } from '../utterance.ts';
import { nothing, remark } from '../plain-means.ts';

/** What opens of itself, and the pressure that it stands at as it does. */
const SIDE_OF: Partial<Record<PartId, QuantityId>> = {
  highPressureSwitch: 'headPressure',
  lowPressureSwitch: 'suctionPressure',
};
const TRIPS: ReadonlySet<PartId> = new Set<PartId>([
  ...(['highPressureSwitch', 'lowPressureSwitch', 'overload', 'breaker'] as const),
]);

/** "Low pressure switch cut it out at seven", "the overload drops her out" */
const stopsIt: Means = (tags, frame) => {
  const part = partId(tags['part']);
  if (part === null || !TRIPS.has(part)) return null;
  const findings = [finding(part, 'tripped', frame)];
  if (amountIn(tags).value === null) return { findings };
  const side = SIDE_OF[part];
  const found = side === undefined ? null : reading(side, amountIn(tags), frame);
  return found === null ? null : { readings: [{ ...found, event: 'tripped' }], findings };
};

/** What trips and is pushed back in by hand. */
const SET_BY_HAND: ReadonlySet<PartId> = new Set<PartId>([
  ...(['highPressureSwitch', 'lowPressureSwitch', 'overload', 'breaker'] as const),
  ...(['defrostTermination', 'controller', 'plug', 'disconnect'] as const),
]);

/** "Reset button was out on the high side, and I pushed it back in" */
const poppedAndReset: Means = (tags, frame) => {
  const part = partId(tags['part']);
  if (part === null || !SET_BY_HAND.has(part)) return null;
  const words = frame.wordsOf(frame.span);
  return { findings: [finding(part, 'tripped', frame)], work: [{ did: 'reset', part, words }] };
};

const buttonOut: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null || !SET_BY_HAND.has(part)
    ? null
    : { findings: [finding(part, 'tripped', frame)] };
};

/** "It's a manual reset one, pushed it in and it clicked": what was spoken of last. */
const resetIt: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const means = (part: PartId): Meaning | null =>
    SET_BY_HAND.has(part) ? { work: [{ did: 'reset', part, words }] } : null;
  const otherwise = { work: [{ did: 'reset', part: null, words }] } as const;
  return { ofIt: { means, inSentence: false, otherwise } };
};

const pushedIn: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const words = frame.wordsOf(frame.span);
  return part === null || !SET_BY_HAND.has(part) ? null : { work: [{ did: 'reset', part, words }] };
};

/** "Put it back, and it held": what had tripped. */
const setAndHeld: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const means = (part: PartId): Meaning | null => {
    if (part !== 'breaker' && !TRIPS.has(part)) return null;
    const isSet = part !== 'breaker' || /\breset\b/i.test(words);
    return { work: [{ did: isSet ? 'reset' : 'restore', part, words }] };
  };
  return { ofIt: { means, inSentence: false, otherwise: { remarks: [words] } } };
};

/** "Overload clicked back in after forty minutes" */
const backIn: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null || !TRIPS.has(part) ? null : { findings: [finding(part, 'closed', frame)] };
};

const SWITCHED: readonly Finding['state'][] = ['open', 'closed', 'tripped', 'failed', 'ok'];
const PRESSURES: ReadonlySet<PartId> = new Set<PartId>(['highPressureSwitch', 'lowPressureSwitch']);

/** "High pressure switch is open, low one's made": of the other of the two. */
const thatOneIs =
  (part: PartId): Means =>
  (tags, frame) => {
    const state = stateId(tags['state']);
    if (state === null || !SWITCHED.includes(state)) return null;
    const of: Meaning = { findings: [finding(part, state, frame)] };
    const means = (last: PartId): Meaning | null => (PRESSURES.has(last) ? of : null);
    return { ofIt: { means, inSentence: false } };
  };

/** "So it's the low that's open": no pressure is. */
const itIsThat =
  (part: PartId): Means =>
  (tags, frame) => {
    const state = stateId(tags['state']);
    const isSwitch = state === 'open' || state === 'closed' || state === 'tripped';
    return isSwitch ? { findings: [finding(part, state, frame)] } : null;
  };

/** "… for a couple of seconds, and then drops out": what turned has tripped; a contactor only lets go. */
const dropsOut: Means = (_tags, frame) => {
  const means = (part: PartId): Meaning | null =>
    TURNS.includes(part) ? { findings: [finding(part, 'tripped', frame)] } : null;
  return { ofIt: { means, inSentence: true, otherwise: remark({}, frame) ?? {} } };
};

/** "Compressor ain't running, but both fans are" */
const othersRun: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const before = frame.wordsOf({ from: 0, to: frame.span.from });
  return part !== null && TURNS.includes(part) && frame.endsAtPause && STANDS.test(before)
    ? { findings: [finding(part, 'running', frame)] }
    : null;
};
const STANDS =
  /(?:n['’]?t|\bnot|\bain['’]?t|\bnever) (?:run|runn?in[g']?|turn|turning|spin|spinning|start|starting|coming on|kicking on|going)\b/i;

/** "Controller's throwing a P1 code", "board says alarm E4": worth the note, whatever it stands for there. */
const shows: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part !== null && SHOWS.has(part) ? remark(tags, frame) : null;
};
const SHOWS: ReadonlySet<PartId> = new Set<PartId>(['controller', 'temperatureControl', 'sensor']);

/** "L two's fuse is blown": which of three. */
const ofLeg: Means = (tags, frame) => {
  const [part, said] = [partId(tags['part']), stateId(tags['state'])];
  const state = part === null || said === null ? null : stateAt(part, said);
  return part === null || state === null ? null : { findings: [finding(part, state, frame)] };
};

/** No pause that was only found: "thirty eight locked rotor then it drops out" is one breath. */
const saysPause = (frame: Frame): boolean =>
  /^(?:and|but)\b/i.test(frame.wordsOf(frame.span)) || startsInWords(frame);

const HER =
  '(it|her|him|she|them|(the|this|that) (compressor|pump|unit|whole thing|thing)|everything|me)';
const OUT = '(out|off|down)';
const STOPS = `(cut|cuts|kicked|kicks|dropped|drops|knocked|knocks|shut|shuts|took|takes|threw|throws|pulled|pulls) ${HER} [right] ${OUT}`;
const PUSHED = '(pushed|pressed|punched|popped|clicked|snapped|put|shoved|poked|set)';
const POPPED =
  '(popped [(out|up)]|tripped [out]|out|kicked [out]|up|sticking (out|up)|had popped [out])';
const RESET = '[the] [manual] (reset [button]|button)';
const BACK_IN =
  '[(finally|just)] (clicked|kicked|snapped|popped|dropped|came|closed|set|reset) (back [(in|closed|on|itself)]|itself [back in])';
const AFTER = '[(after|in) [(about|maybe|like|only)] <duration>]';
const EACH_TIME = '[(again|every time|each time|on me|right away|right after|instantly)]';

/** What safeties do to what they watch, and how they are put back in. */
export const SAFETY_ACT_RULES: readonly Rule[] = [
  rule(
    `[(and|then|and then|but)] <the> <part> [(just|always|then|finally)] ${STOPS} ${EACH_TIME}`,
    stopsIt,
    { unheard: true, examples: ['overload drops her out'] },
  ),
  rule(
    `[(and|then|and then|but)] <the> <part> [(just|always|then|finally)] ${STOPS} (at|right at) <amount> ${EACH_TIME}`,
    stopsIt,
    { unheard: true, examples: ['low pressure switch cut it out at seven'] },
  ),
  rule(
    `[(it|she|that|and it|then it)] [just] (popped|tripped|kicked|opened|blew|knocked out|kicked out|kicked off|went out on|cut out on) <the> <part> [(out|off)] at <amount> [(even|on the nose|on the dot|on the button)]`,
    stopsIt,
    { unheard: true, examples: ['popped the high pressure switch at three ninety five'] },
  ),
  rule(
    `${RESET} (was|is|had) ${POPPED} [<pause>] [(and|so|so and)] [(i|we)] [just] ${PUSHED} it [right] [back] in [(on|at|for) <the> <part>]`,
    poppedAndReset,
    {
      unheard: true,
      examples: ['reset button was popped out and i pushed it back in on the high pressure switch'],
    },
  ),
  rule(
    `[and] [(it|that) is] [a] manual reset [(one|type|control)] [<pause>] [(and|so)] [(i|we)] [just] ${PUSHED} it [right] [back] in [[<pause>] and (it|she) (clicked|set|reset|took|held|caught|snapped|stayed [in])]`,
    resetIt,
    { unheard: true, examples: [] },
  ),
  rule(`${RESET} (on|for|at) <the> <part> (was|is|had) ${POPPED}`, buttonOut, {
    unheard: true,
    examples: ['reset button on the high pressure switch was popped'],
  }),
  rule(`${RESET} (was|is|had) ${POPPED} (on|for|at) <the> <part>`, buttonOut, {
    unheard: true,
    examples: ['reset was out on the low pressure switch'],
  }),
  rule(
    `[(i|we|and|then|so|and i|so i)] [just] ${PUSHED} (it|the (reset [button]|button)) [right] [back] in (on|at|for) <the> <part>`,
    pushedIn,
    { unheard: true, examples: ['pushed it back in on the high pressure switch'] },
  ),
  rule(
    `[(i|we|and|then|so|and i|so i)] [just] (put|flipped|set|threw|pushed|turned|switched|reset|clicked) it [right] [back] [(in|on|up)] [<pause>] [(and|but)] (it|she) [(has|is)] (held|holding|stayed (in|on|put)|stayed|hung in|holds|been holding) [(so far|fine|this time|ever since)]`,
    setAndHeld,
    { unheard: true, examples: ['put it back and it held'] },
  ),
  rule(`<the> <part> ${BACK_IN} ${AFTER}`, backIn, {
    unheard: true,
    examples: ['overload clicked back in'],
  }),
  ...(['high', 'low'] as const).flatMap((side) => {
    const part = `${side}PressureSwitch` as const;
    return [
      rule(
        `[(and|then|and then|but)] [the] ${side} (pressure|side|head) [(just|always|then|finally)] ${STOPS} [[right] at <amount>] ${EACH_TIME}`,
        stopsIt,
        { unheard: true, tags: { part }, examples: [`${side} pressure cut it out`] },
      ),
      rule(
        `(<pause> [(and|but|the)]|and|but|and the|but the) ${side} [side] (one|one side) (is|was|checks|reads|shows) <very> <state>`,
        thatOneIs(part),
        { unheard: true, examples: [] },
      ),
      rule(
        `[(so|then|and|but)] it is [the] ${side} [(side|pressure)] [(one|switch|control)] (that is|that has|which is) <very> <state>`,
        itIsThat(part),
        { unheard: true, examples: [`it is the ${side} that is open`] },
      ),
    ];
  }),
  rule(
    `(<pause> [(and|but)]|and|but) then [(it|she|the thing)] [just] (drops|kicks|cuts|clicks|goes|trips|falls|dropped|kicked|cut|went) [(right|back|right back)] (out|off) ${EACH_TIME}`,
    dropsOut,
    { unheard: true, only: saysPause, examples: [] },
  ),
  rule('(<pause> [(and|but)]|and|but) <the> <part> (is|are|does|do|will)', othersRun, {
    unheard: true,
    only: (frame) => frame.endsAtPause,
    examples: [],
  }),
  rule(
    '<the> <part> (is|says|shows|reads|has|has got|is got|got|throws|threw|flashes|flashed|gave me|gives me) [(throwing|flashing|showing|giving|giving me|blinking|displaying|reading|up|kicking out|spitting out)] [(a|an|the)] [(alarm|error|fault|code|error code|fault code)] [(code|number)] (e|p|a|f|h|l|c|d|er|al|err) <number> [(code|alarm|error|fault|on (it|the display|the screen))]',
    shows,
    { unheard: true, examples: ['controller is throwing a p one code'] },
  ),
  rule(
    '<leg> [is] [(line|hot|control)] <part> (is|was|looks|has|has got|came up) <very> <state>',
    ofLeg,
    { unheard: true, examples: ['l two is fuse is blown'] },
  ),
  rule(
    '[hey] (is|was) (that|this|the|my|your) <part> (a|an|on) (auto|automatic|manual) [reset] [(one|type|switch|or (not|manual|auto|automatic)|or (do|does|did|am|is) <clause>)]',
    nothing,
    { unheard: true, examples: ['is that high pressure switch an auto'] },
  ),
];
