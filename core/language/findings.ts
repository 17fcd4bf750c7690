import type { PartId } from '../terms/names.ts';
import { type Frame, heardRule, type Means, type Rule, rule } from './rule.ts';
import { partId, stateId } from './slots.ts';
import type { Finding } from './utterance.ts';

const FANS: readonly PartId[] = [
  'condenserFan',
  'condenserFanMotor',
  'evaporatorFan',
  'evaporatorFanMotor',
];

function finding(part: PartId, state: Finding['state'], frame: Frame): Finding {
  const words = frame.wordsOf(frame.span);
  if (part !== 'fan') return { part, state, words };
  const { lastPart } = frame.context;
  return lastPart !== null && FANS.includes(lastPart)
    ? { part: lastPart, state, words }
    : { part, state, unresolved: true, words };
}

const stateOf =
  (slot: 'state' | 'doing'): Means =>
  (tags, frame) => {
    const part = partId(tags['part']);
    const state = stateId(tags[slot]);
    return part === null || state === null ? null : { findings: [finding(part, state, frame)] };
  };

const stateIs =
  (state: Finding['state']): Means =>
  (tags, frame) => {
    const part = partId(tags['part']);
    return part === null ? null : { findings: [finding(part, state, frame)] };
  };

const VERY =
  '[(really|pretty|very|all|completely|totally|kind of|half|partially|a little|a bit|super|still|so|now|also|just|mostly)]';
const IS =
  '(is|are|~looks|~look|~was|~were|~seems|~feels|~sounds|~looks like it is|~has been|~is been|~is getting|~looks to be|~seems to be|~must be|~got|~is all|~came up|~appears)';

/** What was found at a part. */
export const FINDING_RULES: readonly Rule[] = [
  heardRule(`<the> <part> ${IS} <state>`, stateOf('state'), {
    examples: ['condenser is plugged', 'evaporator is a block of ice', 'fan is not running'],
  }),
  rule(`<the> <part> ${IS} ${VERY} <state>`, stateOf('state'), {
    examples: ['condenser is really dirty'],
  }),
  rule('<the> <part> <doing>', stateOf('doing'), {
    examples: ['condenser fan motor has failed', 'compressor will not start'],
  }),
  rule('<the> <part> <state>', stateOf('state'), {
    examples: ['condenser plugged', 'condenser fan not running'],
  }),
  rule(
    `(found|i found|there is|i have|i have got|we have|got|has|it has|see|i see|it has got|we have got) [(a|an|the|some)] ${VERY} <state> <part>`,
    stateOf('state'),
    {
      examples: ['found a dirty condenser', 'it has a torn door gasket'],
    },
  ),
  rule('[a] <state> <part>', stateOf('state'), { alone: true, examples: ['dirty condenser'] }),
  rule(
    '(found|i found|there is|i have|i have got|we have|we have got|it has|it has got) <the> <part> <state>',
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
  rule('(leak|leaking|it is leaking) (at|on|in|by|from) <the> <part>', stateIs('leaking'), {
    examples: ['leaking at the service valve'],
  }),
  rule(
    '[(there is|i have|i found|found|i have got|i see|we have|got)] (oil|some oil) (at|on|in|by|around) <the> <part>',
    stateIs('oily'),
    {
      examples: ['there is oil around the service valve'],
    },
  ),
  rule(
    '(there is|i have|i found|found|i have got|i see|we have|got) [some] (ice|frost|ice building up|ice buildup) (at|on|in|by|around|all over) <the> <part>',
    stateIs('iced'),
    {
      examples: ['there is ice on the evaporator'],
    },
  ),
  rule(
    '(there is|i found|found|i see|we have|got) [some] (water|standing water) (at|on|in|by|around) <the> <part>',
    stateIs('wet'),
    {
      examples: ['there is water in the drain pan'],
    },
  ),
];
