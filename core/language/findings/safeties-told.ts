import { remark } from '../plain-means.ts';
import type { PartId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { startsClause, wordBefore } from '../words/clause-start.ts';
import { settingByKind } from '../facts/controls.ts';
import { TURNS } from '../words/fans.ts';
import { finding } from './finding-of.ts';
import { amountIn } from '../numbers/measure.ts';
import { reading } from '../readings/reading-means.ts';
import { type Frame, heardRule, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, quantityId, stateId } from '../slots.ts';
import type { Finding } from '../utterance.ts';

type PressureSwitch = 'highPressureSwitch' | 'lowPressureSwitch';
type State = Finding['state'];

const SIDE_OF: Record<PressureSwitch, QuantityId> = {
  highPressureSwitch: 'headPressure',
  lowPressureSwitch: 'suctionPressure',
};

/** "It's off on high pressure": the control of that side opened, whatever else is known. */
const isOffOn =
  (part: PressureSwitch): Means =>
  (_tags, frame) => ({ findings: [finding(part, 'tripped', frame)] });

/** Of the control that was spoken of, else of the only one that opens there. */
function switchThatOpens(tags: Parameters<Means>[0], frame: Frame): PressureSwitch | null {
  const { lastPart, lastPlace, lastQuantity } = frame.context;
  const last = [lastPart, lastPlace];
  if (last.includes('highPressureSwitch')) return 'highPressureSwitch';
  if (last.includes('lowPressureSwitch')) return 'lowPressureSwitch';
  if (lastQuantity === 'highCutoutPressure') return 'highPressureSwitch';
  if (lastQuantity === 'lowCutoutPressure') return 'lowPressureSwitch';
  const [kind] = settingByKind(tags, null, frame)?.readings ?? [];
  if (kind === undefined) return null;
  return kind.quantity === 'highCutoutPressure' ? 'highPressureSwitch' : 'lowPressureSwitch';
}

/** "It just tripped again at four oh five": what its side stood at in that moment. */
const trippedAgain: Means = (tags, frame) => {
  if (!startsClause(frame) && !OF_PRESSURE.test(wordBefore(frame))) return null;
  const { unit, value } = amountIn(tags);
  if (value === null || (unit !== null && unit !== 'psi' && unit !== 'pounds' && unit !== 'bar'))
    return null;
  const part = switchThatOpens(tags, frame);
  const found = part === null ? null : reading(SIDE_OF[part], amountIn(tags), frame);
  if (part === null || found === null) return { unclaimed: [String(value)] };
  const readings: Meaning['readings'] = [{ ...found, event: 'tripped' }];
  if (endsPumpDown(part, frame)) return { readings, remarks: [frame.wordsOf(frame.span)] };
  return {
    readings,
    findings: [{ part, state: 'tripped', words: found.words }],
  };
};

/** "Solenoid closed and it's pumping down. Cut out at eleven": so it ought to, and nothing was found wrong. */
const endsPumpDown = (part: PartId, { context }: Frame): boolean =>
  part === 'lowPressureSwitch' && context.lastPart === 'liquidLineSolenoid';

/** "The fan delay opened at twenty five": no pressure opens it, nor most of what opens. */
const OF_PRESSURE =
  /^(?:it|she|he|and|then|switch|control|cutout|out|pressure|side|head|suction|just|finally|both|that|this|thing|which|lpc|hpc|psc)$/i;

/** What its side stood at as a control opened. */
const asItTrips: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const isSide = quantity === 'headPressure' || quantity === 'suctionPressure';
  const found = isSide ? reading(quantity, amountIn(tags), frame) : null;
  if (found?.quantity !== quantity) return null;
  return { readings: [{ ...found, event: 'tripped' }] };
};

/** "Went off on high pressure at three ninety five" */
const offAt =
  (part: PressureSwitch): Means =>
  (tags, frame) => {
    const found = reading(SIDE_OF[part], amountIn(tags), frame);
    if (found?.quantity !== SIDE_OF[part]) return null;
    return {
      readings: [{ ...found, event: 'tripped' }],
      findings: [finding(part, 'tripped', frame)],
    };
  };
const tellsIt = (frame: Frame): boolean =>
  frame.endsAtPause && (startsClause(frame) || /^(?:and|then)$/i.test(wordBefore(frame)));

/** "High pressure's made": the control of that side, since no pressure is made or open. */
const sideIs =
  (part: PressureSwitch): Means =>
  (tags, frame) => {
    const state = stateId(tags['state']);
    return state !== null && SWITCHED.includes(state)
      ? { findings: [finding(part, state, frame)] }
      : null;
  };
const SWITCHED: readonly State[] = ['open', 'closed', 'tripped'];

/** "Both safeties are made" */
const bothAre: Means = (tags, frame) => {
  const high = sideIs('highPressureSwitch')(tags, frame)?.findings ?? [];
  const low = sideIs('lowPressureSwitch')(tags, frame)?.findings ?? [];
  return high.length + low.length === 0 ? null : { findings: [...high, ...low] };
};

/** What trips on its overload is told by its name; else it is the compressor's that opens. */
const overload: Means = (tags, frame) => {
  const part = partId(tags['part']);
  if (part !== null && !TURNS.includes(part)) return null;
  return { findings: [finding(part ?? 'overload', 'tripped', frame)] };
};

/** What has a coil of wire: "the coil's open", said of one of them, is no condenser. */
const WOUND: readonly (PartId | null)[] = ['contactor', 'liquidLineSolenoid', 'startRelay'];

/** A coil of wire that ohms open is burnt through, and what it pulls has failed. */
const coilOpen: Means = (_tags, frame) => {
  const { lastPart, lastPlace } = frame.context;
  const last = partId(lastPlace ?? undefined);
  const part = WOUND.includes(last) ? last : lastPart;
  const of = (each: PartId): Meaning => ({ findings: [finding(each, 'failed', frame)] });
  if (part !== null && WOUND.includes(part)) return of(part);
  const means = (each: PartId): Meaning | null => (WOUND.includes(each) ? of(each) : null);
  return { ofIt: { means, inSentence: false, otherwise: {} } };
};

/** "Compressor isn't", behind what is: only of what turns, and where nothing follows. */
const isNot: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part !== null && TURNS.includes(part) && frame.endsAtPause
    ? { findings: [finding(part, 'notRunning', frame)] }
    : null;
};

/** "The motor's burnt up": of the motor that was spoken of or metered last. */
const motorIs: Means = (tags, frame) => {
  const state = stateId(tags['state']);
  if (state === null || state === 'running') return null;
  const of = (part: PartId): Meaning => ({ findings: [finding(part, state, frame)] });
  const means = (part: PartId): Meaning | null => (TURNS.includes(part) ? of(part) : null);
  return { ofIt: { means, inSentence: false, otherwise: of('fan') } };
};

const OFF =
  '(off|out|down|tripped|tripping|locked out|kicked out|cut out|going out|shut down|shut off|tripped out|kicking out|cutting out|dropping out)';
const SAYS =
  '[(it|she|unit|the unit|compressor|the compressor|this thing|that one|it all)] [(is|was|went|keeps|has|got|just|is still)] [(just|been|back)]';
const THE_SIDE = '[(the|it is)]';
const HIGH = '(high (pressure|head|side)|head pressure|high [side] pressure)';
const LOW = '(low (pressure|side|suction)|suction pressure|low [side] pressure)';
const SWITCH = '[(switch|control|safety|cut out|again|now)]';
const TRIPS =
  '(opens|trips|kicks out|drops out|cuts out|goes out|goes open|pops|opened [up]|tripped|kicked out|dropped out|cut out|went out)';
const PASSES = '(is|are|was|were|shows|reads|checks|has)';

/** What the safeties did, told as it is told on a call: by their side, and by what went out on them. */
export const SAFETY_RULES: readonly Rule[] = [
  heardRule('[it is] off on high pressure', isOffOn('highPressureSwitch'), {
    examples: ['it is off on high pressure'],
  }),
  ...(
    [
      ['highPressureSwitch', 'high'],
      ['lowPressureSwitch', 'low'],
    ] as const
  ).map(([part, side]) =>
    rule(
      `(it|she|unit|the unit) is (off|out|down|tripped|locked out) on [the] ${side} [side]`,
      isOffOn(part),
      {
        unheard: true,
        examples: [`it is off on the ${side}`],
      },
    ),
  ),
  heardRule('[it is] off on low pressure', isOffOn('lowPressureSwitch'), {
    examples: ['off on low pressure'],
  }),
  heardRule('high pressure is made', sideIs('highPressureSwitch'), {
    tags: { state: 'closed' },
    examples: ['high pressure is made'],
  }),
  heardRule('low pressure is made', sideIs('lowPressureSwitch'), {
    tags: { state: 'closed' },
    examples: ['low pressure is made'],
  }),
  rule(`${SAYS} ${OFF} [again] on ${THE_SIDE} ${HIGH} ${SWITCH}`, isOffOn('highPressureSwitch'), {
    examples: ['tripped out on high head'],
  }),
  rule(`${SAYS} ${OFF} [again] on ${THE_SIDE} ${LOW} ${SWITCH}`, isOffOn('lowPressureSwitch'), {
    examples: ['it went off on low pressure', 'kicked out on low suction'],
  }),
  rule(
    `${SAYS} ${OFF} [again] on ${THE_SIDE} ${HIGH} ${SWITCH} at <amount>`,
    offAt('highPressureSwitch'),
    {
      unheard: true,
      examples: [],
    },
  ),
  rule(
    `${SAYS} ${OFF} [again] on ${THE_SIDE} ${LOW} ${SWITCH} at <amount>`,
    offAt('lowPressureSwitch'),
    {
      unheard: true,
      examples: [],
    },
  ),
  rule(
    `[(and|then|and then)] [the] high pressure [(just|finally|always|then)] ${TRIPS} [(every time|again|on me|right away)]`,
    isOffOn('highPressureSwitch'),
    {
      only: tellsIt,
      unheard: true,
      examples: ['then the high pressure opens'],
    },
  ),
  rule(
    `[(and|then|and then)] [the] low pressure [(just|finally|always|then)] ${TRIPS} [(every time|again|on me|right away)]`,
    isOffOn('lowPressureSwitch'),
    {
      only: tellsIt,
      unheard: true,
      examples: ['then the low pressure opens'],
    },
  ),
  rule(
    '(when|every time) (it|she|the compressor) (trips|tripped|kicks out|kicks off|cuts out|goes off|opens) [out] ([the] <quantity> <link> <amount>|(i have got|i have|i see|i am (seeing|reading)) <amount> (on|at) <the> <quantity>)',
    asItTrips,
    { unheard: true, examples: ['when it trips i see three ninety five on the high side'] },
  ),
  rule(
    '[(it|she|and|then|and it|it has)] [just] (tripped|kicked out|cut out|went out|went off|opened|opened up|popped|shut down|kicks out|kicks off|trips|pops) [(again|out|on me)] at <amount> [(every time|every single time|each time|now|again)]',
    trippedAgain,
    { examples: ['it just tripped again at four oh five'] },
  ),
  rule(
    `[(and|then|now|but)] ([(it|she|[the] motor|<the> <part>)] [(just|still|then)] (trips|tripped|kicks|kicked|cuts|cut|goes|went|drops|dropped)|(it|she|[the] motor) (is|was) (cutting|tripping|kicking|going)|~~[(it|she)] [is] (off|out|tripped|open)) [(out|off|right out)] on [(the|it is)] (overload|klixon|thermal|internal [overload]|o l) [[(after|in)] [(about|maybe|like)] <duration>]`,
    overload,
    { examples: ['then trips on the klixon after about ten seconds'] },
  ),
  rule(`[the] ${HIGH} ${PASSES} <very> <state>`, sideIs('highPressureSwitch'), {
    examples: ['high side is made'],
  }),
  rule(`[i] (found|got|caught|have) the ${HIGH} <state>`, sideIs('highPressureSwitch'), {
    examples: ['found the high pressure open'],
  }),
  rule(`[i] (found|got|caught|have) the ${LOW} <state>`, sideIs('lowPressureSwitch'), {
    examples: ['found the low pressure open'],
  }),
  rule(`[the] ${LOW} ${PASSES} <very> <state>`, sideIs('lowPressureSwitch'), {
    examples: ['low side is open'],
  }),
  rule(
    `both [(my|the|of the|of my)] ((pressure|safety) (switches|controls)|safeties|pressures|controls) ${PASSES} <very> <state>`,
    bothAre,
    { examples: ['both safeties are made'] },
  ),
  // Which ones there are, nobody says.
  rule(
    '[(so|and|yep)] [all [of]] [(the|my)] safeties (are|look|check) [all] [(out|ok and)] (made|closed|good|ok|fine)',
    remark,
    { unheard: true, apart: true, examples: ['so the safeties are all made'] },
  ),
  rule(
    '[the] coil ((has|has got|is got|shows) no continuity|(is|(ohms|ohmed|reads|checks|tests|meters|read) [out]) [wide] (open|infinite|burnt|burned up|ol|o l))',
    coilOpen,
    { examples: [] },
  ),
  rule('<pause> [(and|but)] <the> <part> (is|are|does|do|will) not', isNot),
  rule(
    '(the|that|this) motor (is|was|feels|looks|smells|sounds|keeps|has) <very> <state>',
    motorIs,
    { examples: ['the motor is burnt up'] },
  ),
  rule('[(so|and|well|ok)] motor (is|was|feels|looks|sounds|tests) <very> <state>', motorIs, {
    unheard: true,
    apart: true,
    only: ({ context }) => context.lastFan !== null,
    examples: [],
  }),
  rule(
    '(so|then|and|well|ok|yeah|yep) (it is|that is|it is just) (the|a|that) [(bad|dead|burnt|burnt up|failed|seized)] [fan] motor [itself]',
    motorIs,
    { unheard: true, apart: true, tags: { state: 'failed' }, examples: ['so it is the motor'] },
  ),
];
