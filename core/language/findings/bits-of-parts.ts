import { startsClause } from '../words/clause-start.ts';
import { finding, onlyOf } from './finding-of.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { partId, stateId, tagsIn } from '../slots.ts';
import { stateAt } from '../words/state-at.ts';
import { LIFELESS } from '../vocabulary/state-names.ts';
import { TURNS } from '../words/fans.ts';
import { isTakenOutByFault } from '../words/taken-out.ts';
import { HAS_CAP } from '../words/caps.ts';

/** "Fan blade's missing a tip": the blade is there, and no good. */
const lacksBit: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null ? null : { findings: [finding(part, 'failed', frame)] };
};

/** "Condenser fan's missing a blade": of two parts that are named the second one is gone. */
const lacksPart: Means = (tags, frame) => {
  const gone = partId(tagsIn(tags['gone'])?.['part']);
  return gone === null ? null : { findings: [finding(gone, 'missing', frame)] };
};

/** A cap that is gone from what has one to screw on; of a motor it is a can. */
const lacksCap: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return HAS_CAP.has(part) ? onlyOf('caps', 'missing')(tags, frame) : null;
};

/** "Oil on the joint by the compressor" is seen at the joint, and not on what it is by. */
const oilyJoint: Means = onlyOf('joint', 'oily');

const MISSES = '(is|are|was|were|has been|got|have|has) missing';
const SOME =
  '(a|an|one|some|half|two|three|a couple [of]|a few|several|most of the|part of the|it is) [(big|little|small|whole|good)]';
const BIT =
  '(tip|tips|piece|pieces|chunk|chunks|corner|end|tooth|teeth|tab|tabs|lug|ear|leg|prong|pin|pins|fin|fins|edge|side|bite|ring|strip|section|inch|inches)';
const IN = '[(out of it|off it|from it|there|up top|on (it|one side|the (end|side|top|bottom)))]';

const SEEN =
  '[(there is|there was|i have|i found|found|i have got|i see|we have|got|it has|seeing|still)]';
const MUCH = '[(a|an|a lot of|lots of|some|heavy|a little|a bit of|fresh|thick|signs of)]';
const ON =
  '[(right|all)] (on|at|in|around|round|all over|over|under|below|near|all around|all round|everywhere on)';
const BY =
  '(at|on|by|near|in|of|off|behind|under|above|below|next to|beside|before|after|coming out of|going into|coming off)';

/** Sweat on a pipe is as often a joint that somebody makes. */
const sweats: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null || part === 'sightGlass'
    ? null
    : { findings: [finding(part, 'wet', frame)] };
};

/** "Blew a fuse": what broke the circuit is found, whatever made it. */
const blew: Means = (tags, frame) => {
  const part = partId(tags['part']);
  if (!startsClause(frame) || (part !== 'fuse' && part !== 'breaker')) return null;
  return { findings: [finding(part, part === 'fuse' ? 'failed' : 'tripped', frame)] };
};

/** "A loose lug burnt up and took out the fuse": what went with it. */
const tookOut: Means = (tags, frame) => {
  const part = partId(tags['part']);
  if (part === null || frame.span.from === 0 || !isTakenOutByFault(frame)) return null;
  return { findings: [finding(part, part === 'breaker' ? 'tripped' : 'failed', frame)] };
};

/** What was behind it was found; what may be behind it is a guess. */
const behindIt: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const before = frame.wordsOf({ from: 0, to: frame.span.from });
  if (part === null || part === 'sightGlass' || UNSURE.test(before)) return null;
  const said = stateId(tags['state']);
  const lifeless = TURNS.includes(part) ? 'notRunning' : 'failed';
  const state = said === null ? lifeless : stateAt(part, said);
  return state === null ? null : { findings: [finding(part, state, frame)] };
};
const UNSURE =
  /\b(?:could|might|may|maybe|probably|if|would|usually|normally|sometimes|why|is it|isn't|not|think|guess|bet|says?|said|when|whenever|never|can)\b/i;

/** What is gone from a part, and what is seen at its joints: told of the bit, and not of the whole. */
export const BIT_RULES: readonly Rule[] = [
  rule(
    `<the> <part> ((is|are|was|were) missing (a|the|it is|both|all it is|some) (cap|caps)|(has|have) no (cap|caps)|has (lost|got) no (cap|caps))`,
    lacksCap,
    { unheard: true, examples: ['access fitting is missing it is cap'] },
  ),
  rule(
    `<the> <part> (has|had|has got|is got|have|got) ${SOME} ${BIT} [(that is|that was)] (missing|gone|broken off|broke off|snapped off|torn off|ripped off)`,
    lacksBit,
    { unheard: true, examples: ['fan blade has a tip missing'] },
  ),
  rule(`<the> <part> ${MISSES} ${SOME} ${BIT} ${IN}`, lacksBit, {
    unheard: true,
    examples: ['fan blade is missing a tip'],
  }),
  rule(
    `<the> <part> ${MISSES} (a|an|one|some|it is|two|the) [(front|back|left|right|top|bottom|new|old)] <part:gone>`,
    lacksPart,
    {
      unheard: true,
      examples: ['condenser fan is missing a fan blade'],
    },
  ),
  rule(
    '[(there is|there are|i see|found|it is|is|still)] (no|missing [(a|the|it is|both|some)]) (cap|caps) (on|for|at|over|off) <the> <part>',
    (tags, frame) => (startsClause(frame) ? lacksCap(tags, frame) : null),
    { unheard: true, examples: ['no cap on the access fitting'] },
  ),
  rule(
    `${SEEN} ${MUCH} (oil|oily spot|oil spot|oil stain|oil residue|oily residue|oil film|traces of oil|oil spots) ${ON} <the> [(brazed|braze|solder|soldered|flare|first|last|top|bottom)] (joint|joints) ${BY} <the> [<bit>] <part:where>`,
    oilyJoint,
    { unheard: true, examples: ['oil all over the joint at the accumulator'] },
  ),
  rule(
    `(there is|there was|i have|i found|found|i have got|i see|we have|got|it has|seeing|still) ${MUCH} [heavy] (sweat|condensation|moisture|condensate|dew|water beads|beads of water) [(running|dripping|beading|building) [(up|down)]] ${ON} <the> [<bit>] <part>`,
    sweats,
    { unheard: true, examples: ['there is sweat on the door'] },
  ),
  rule(
    '[(and|so|but|then)] [(it|she|the unit|unit|compressor|the compressor|something|whatever it was|that|it just)] [(has|keeps|just)] (blew|blown|blowing|popped|popping|took out|kicked|threw|smoked) (a|the|another|my|it is|that|one of the|both|the main|a control|the control) <part>',
    blew,
    { unheard: true, examples: ['blew a fuse'] },
  ),
  rule(
    '[(and|then|and then)] [(that|it)] [(has|had)] (took|takes|taken|taking) out <the> <part>',
    tookOut,
    {
      unheard: true,
      examples: [],
    },
  ),
  rule(
    `(on account of|because of|due to|thanks to|owing to|caused by) (a|an|the|that|my|this|some|two) <very> (<state>|${LIFELESS}) <part>`,
    behindIt,
    { unheard: true, examples: ['tripped on account of a dead fan motor'] },
  ),
];
