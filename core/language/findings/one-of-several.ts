import type { PartId } from '../../terms/names.ts';
import type { Meaning, Means, Rule } from '../rule.ts';
import { rule } from '../rule.ts';
import { partId, stateId } from '../slots.ts';
import { LIFELESS } from '../vocabulary/state-names.ts';
import { isStuckFan, stateAt } from '../words/state-at.ts';
import { FANS } from '../words/fans.ts';
import { finding } from './finding-of.ts';
import { stateOf } from './state-of.ts';

/** What stands in a row, and is told apart by which one it is. */
const IN_A_ROW: ReadonlySet<PartId> = new Set<PartId>([
  ...(['fuse', 'breaker', 'terminal', 'wiring', 'sensor', 'defrostHeater', 'doorHeater'] as const),
  ...(['light', 'fan', 'condenserFan', 'condenserFanMotor', 'evaporatorFan'] as const),
  ...(['evaporatorFanMotor', 'drainHeater', 'contactor', 'doorGasket', 'hinge'] as const),
  'doorSwitch',
]);

/** "The middle one's blown", "two of the three are open", of those that were spoken of: which and how many is in the words. */
export const ofThose: Means = (tags, frame) => {
  const said = stateId(tags['state']);
  if (said === null) return null;
  const means = (part: PartId): Meaning | null => {
    if (isStuckFan(part, frame.wordsOf(frame.span))) return null;
    const state = IN_A_ROW.has(part) ? stateAt(part, said) : null;
    return state === null ? null : { findings: [finding(part, state, frame)] };
  };
  return {
    ofIt: { means, inSentence: false, otherwise: { remarks: [frame.wordsOf(frame.span)] } },
  };
};

/** "So the air probe's off and the coil one's good": the sensor there; the fan, where fans were spoken of. */
const ofKind: Means = (tags, frame) => {
  const said = stateId(tags['state']) ?? 'notRunning';
  const fan = partId(tags['fan']);
  const found = (part: PartId): Meaning | null => {
    const state = stateAt(part, said);
    return state === null ? null : { findings: [finding(part, state, frame)] };
  };
  const means = (part: PartId): Meaning | null => {
    if (part === 'sensor') return found('sensor');
    return fan !== null && TURNING.has(part) ? found(fan) : null;
  };
  const otherwise = { remarks: [frame.wordsOf(frame.span)] };
  return { ofIt: { means, inSentence: false, otherwise } };
};
const TURNING: ReadonlySet<PartId> = new Set<PartId>([...FANS, 'fan']);

/** What carries a current, and is brown where it was hot. */
const CONDUCTS: ReadonlySet<PartId> = new Set<PartId>([
  ...(['terminal', 'wiring', 'fuse', 'breaker', 'contactor', 'disconnect', 'plug'] as const),
]);
const browned: Means = (tags, frame) => {
  const part = partId(tags['part']);
  if (part === null || !CONDUCTS.has(part)) return null;
  const said = stateId(tags['state']);
  const state = said === null ? null : stateAt(part, said);
  const burnt = finding(part, 'burnt', frame);
  return { findings: state === null ? [burnt] : [finding(part, state, frame), burnt] };
};

const WHICH = '(left|right|middle|center|top|bottom|first|second|third|last|outside|inside|other)';
const ONE = `([the] ${WHICH} [hand] one|one (of (them|the three|those)|on [the] ${WHICH}))`;
const IS = '(is|are|was|were|looks|looked)';

/** One of what stands in a row, and connections by their colour. */
export const ONE_OF_SEVERAL_RULES: readonly Rule[] = [
  rule(
    `(checked|looked at|tested|ohmed|metered|pulled) [all] <the> <part> [<pause>] [(and|but)] ${ONE} ${IS} <very> <state>`,
    stateOf('state'),
    { unheard: true, examples: ['checked the fuses and the middle one is blown'] },
  ),
  rule(`[(and|but|so)] ${ONE} ${IS} <very> <state>`, ofThose, {
    apart: true,
    unheard: true,
    examples: [],
  }),
  ...(
    [
      ['(air|box|cabinet|coil|return|supply|discharge|defrost)', {}],
      ['(condenser|cond)', { fan: 'condenserFan' }],
      ['(evaporator|evap)', { fan: 'evaporatorFan' }],
    ] as const
  ).map(([kind, tags]) =>
    rule(`[(and|but|so)] the ${kind} one ${IS} <very> (<state>|${LIFELESS})`, ofKind, {
      unheard: true,
      tags,
      examples: [],
    }),
  ),
  rule(
    `<the> <part> ${IS} [<very> <state> [and]] <very> [(kinda|turned|gone|a little)] (brown|browned|heat discolored)`,
    browned,
    { unheard: true, examples: ['terminal was loose and brown'] },
  ),
];
