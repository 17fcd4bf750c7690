import type { PartId, WorkKindId } from '../../terms/names.ts';
import { startsClause, wordBefore, wordBehind } from '../words/clause-start.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';

const did =
  (work: WorkKindId, part: PartId): Means =>
  (_tags, frame) => ({ work: [{ did: work, part, words: frame.wordsOf(frame.span) }] });

/** "Turned it back up", with the power on all the while: a control. */
export const isPowered = (frame: Frame): boolean =>
  frame.context.powerIsOff || !/\bturned it back up$/i.test(frame.wordsOf(frame.span));

/** "Plugged it in she fired right up": what it did then is told in the same breath. */
const isBeforeIt = (frame: Frame): boolean =>
  startsClause(frame) && /^(?:she|it|and|then|he)$/i.test(wordBehind(frame));

const I = '[(i|we|i just|just|and|so|then|also|and i|ok|have|i have|we have)]';
const NOW = '[(now|again|all the way|for now)]';

const PLUGGED_IN = `(${I} (plugged|plug) (it|her|the unit|the thing|this thing|the box) [back] in|${I} plugged (back in|in again)|it is plugged (back in|in again))`;

/** Power that was taken from a unit, and given back, in the short ways that it is told in. */
export const POWERED_AGAIN_RULES: readonly Rule[] = [
  rule(
    `${I} (starting|started|start|firing|fired|kicking|kicked|cranking|cranked) (it|her|the (unit|compressor|thing|box)|this thing) [back] [(up|on|off|over)] ${NOW}`,
    did('restore', 'disconnect'),
    {
      unheard: true,
      apart: true,
      beforeTold: true,
      only: ({ context }) => context.powerIsOff,
      examples: [],
    },
  ),
  rule(`${PLUGGED_IN} ${NOW}`, did('restore', 'plug'), {
    unheard: true,
    apart: true,
    examples: ['plugged it in', 'plugged back in'],
  }),
  rule(PLUGGED_IN, did('restore', 'plug'), { unheard: true, only: isBeforeIt, examples: [] }),
  rule(
    `[(the|my|its|it is)] (plug|cord|power cord) is [back] [plugged] in ${NOW}`,
    did('restore', 'plug'),
    { unheard: true, apart: true, beforeTold: true, examples: ['plug is in'] },
  ),
  rule(
    `[(the|my|that)] (disconnect|main|main switch|pull out) is (in|back in|pushed [back] in) ${NOW}`,
    did('restore', 'disconnect'),
    { unheard: true, apart: true, beforeTold: true, examples: ['disconnect is in'] },
  ),
  rule(
    `[(the|my|all the)] power (is [all] [back] on|back on) [[(i am|we are|and|and i am)] (starting|firing|kicking|cranking|lighting) (it|her|this thing|the unit) [back] [(up|off|on)]] ${NOW}`,
    did('restore', 'disconnect'),
    {
      unheard: true,
      apart: true,
      beforeTold: true,
      only: (frame) => !/^(?:is|was)$/.test(wordBefore(frame)),
      examples: ['power is on'],
    },
  ),
  rule(
    `(${I} (took|pulled|got|have|cut|taken) (my|the|our) (lock|locks|tag|lock and tag|lock out|lockout|tags and locks|locks and tags) [back] off ${NOW}|[(the|my|our)] (lock|locks|lock and tag|lockout) [(is|are)] [back] off [[<pause>] [and] [(the|my)] (tag|tags) [(is|are)] off] ${NOW}|${I} (removed|pulled) (my|the|our) (lock|locks|lockout|lock and tag) ${NOW})`,
    did('restore', 'disconnect'),
    {
      unheard: true,
      apart: true,
      beforeTold: true,
      examples: ['took my lock off', 'lock and tag are off'],
    },
  ),
  rule(
    `${I} (shut|turned|switched) (it|her|the unit|the thing) (off|down) and unplugged (it|her)`,
    did('disable', 'plug'),
    { unheard: true, examples: ['shut it off and unplugged it'] },
  ),
];
