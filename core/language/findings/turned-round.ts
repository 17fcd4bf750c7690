import type { FindingStateId } from '../../terms/names.ts';
import { startsClause } from '../words/clause-start.ts';
import { onlyOf } from './finding-of.ts';
import { stateOf } from './state-of.ts';
import { holdsNumber } from '../words/own-reading.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';

const ASKS = /\b(?:is|are|was|were|does|do|did|has)(?:n't| not)? (?:it|she|that|they)$/i;

/** A clause of its own up to the pause behind the part: "dirty, the condenser fan is running" tells something else. */
function isWhole(frame: Frame): boolean {
  const { from } = frame.span;
  const before = frame.wordsOf({ from: Math.max(0, from - 2), to: from });
  return frame.endsAtPause && startsClause(frame) && !ASKS.test(before);
}

/** Where and when it is so may stand between, but no number: that is not lost in words. */
const unnumbered =
  (means: Means): Means =>
  (tags, frame) =>
    holdsNumber(frame.wordsOf(frame.span)) ? null : means(tags, frame);

/** "Sight glass is clear" tells of the charge, and nothing of the glass. */
const notOfTheGlass =
  (means: Means): Means =>
  (tags, frame) =>
    tags['part'] === 'sightGlass' ? null : means(tags, frame);

/** "Hot at the condenser" is the air there, and "cold in the box" the box. */
const SEEN_AT: readonly FindingStateId[] = [
  ...(['oily', 'wet', 'iced', 'burnt', 'loose', 'plugged', 'noisy', 'dirty'] as const),
];
const ofWhere: Means = (tags, frame) =>
  SEEN_AT.some((state) => state === tags['state']) ? stateOf('state')(tags, frame) : null;

const IT =
  '[(it is|she is|that is|they are|it was|it looks|looks|it feels|feels|it seems|it does|still)]';
const HOW = '[(nice and|good and|just|all)]';
const MUCH =
  '[(as (can be|anything|hell|ice|the room|a rock|all get out)|(pretty|real|really) (bad|badly|good)|bad|badly|at all|again|every (minute|few (seconds|minutes)))]';
const THAT = '(the|this|that|my|your|these|those|both)';
const ONE_OF =
  '(left|right|top|bottom|middle|back|front|lower|upper|inside|outside|far|other|first|second|third|center|main)';
/** Not any spot: a door is one, and a part that something is at. */
const AT = `[((on|of|in|to|for|at|by|from) (the|this|that) ([${ONE_OF}] [hand] (side|one|section|corner|half|drawer|end|wall|walk in|cooler|freezer|box|case|unit|reach in|prep table|machine|system|roof|shelf|display case|condensing unit|circuit|bank)|${ONE_OF} [hand] (door|doors)|${ONE_OF})|(in|up|out|down|over|back) (there|here)|(at|on|in|of|inside|behind|under|by|for) <the> (<part:where>|panel|cover))]`;
const WHERE =
  '(on|in|at|around|by|behind|under|over|through|from|when|where|every|up against|right|enough)';

/** What was found first, and the part behind a pause: "not spinning, the evaporator fan". */
export const TURNED_ROUND_RULES: readonly Rule[] = [
  rule(
    `${IT} ${HOW} <very> <state> ${MUCH} <pause> ${THAT} <part> ${AT}`,
    notOfTheGlass(stateOf('state')),
    { only: isWhole, examples: [] },
  ),
  rule(
    `[(it|she|that|they)] <doing> ${MUCH} <pause> ${THAT} <part> ${AT}`,
    notOfTheGlass(stateOf('doing')),
    { only: isWhole, examples: [] },
  ),
  rule(
    `${IT} ${HOW} <very> <state> ${WHERE} <clause> <pause> ${THAT} <part>`,
    unnumbered(notOfTheGlass(stateOf('state'))),
    { only: isWhole, examples: [] },
  ),
  rule(`(it|she|they) (does|do) (run|turn|spin|start) <pause> ${THAT} <part>`, stateOf('state'), {
    tags: { state: 'running' },
    only: isWhole,
    examples: [],
  }),
  rule(
    `(it is|that is) <the> <part> (that|which|who) (is|are|was|looks|has) <very> <state>`,
    stateOf('state'),
    { only: isWhole, unheard: true, examples: ['it is the filter dryer that is plugged'] },
  ),
  rule(`(it is|that is) <the> <part> (that|which|who) <doing>`, stateOf('doing'), {
    only: isWhole,
    unheard: true,
    examples: ['it is the breaker that tripped'],
  }),
  rule(
    `[(it is|it looks|looks)] <very> <state> (at|on|around|by|all over|down at|over at) <the> [<bit>] <part>`,
    ofWhere,
    { only: isWhole, unheard: true, examples: ['oily at the joint'] },
  ),
  rule('(stuck|hung [up]|locked) in [a] defrost', onlyOf('evaporator', 'stuckInDefrost'), {
    only: isWhole,
    unheard: true,
    examples: ['hung up in defrost'],
  }),
  rule(
    'all (it|she) does is (hum|buzz) [<pause> <the> compressor]',
    onlyOf('compressor', 'humming'),
    { unheard: true, examples: ['all it does is hum'] },
  ),
];
