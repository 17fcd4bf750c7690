import type { QuantityId } from '../../terms/quantities.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { tagsIn } from '../slots.ts';
import type { Tags } from '../../grammar/nodes.ts';
import { type Amounted, amountIn } from '../numbers/measure.ts';
import { canBeColdBox } from '../numbers/plausible.ts';
import { startsClause } from '../words/clause-start.ts';
import { reading } from './reading-means.ts';
import type { Reading } from '../utterance.ts';

/** Ours: from one look at a gauge to the next it moves no further, as a share of what it showed. */
const MOST_MOVED = 0.12;

type Side = 'headPressure' | 'suctionPressure';
const SIDES: readonly Side[] = ['headPressure', 'suctionPressure'];

const isNear = ({ value, unit }: Amounted, side: Side, { context }: Frame): boolean => {
  const last = context[side];
  if (value === null || unit !== null || last === null) return false;
  return Math.abs(value - last.value) <= Math.abs(last.value) * MOST_MOVED;
};

/** The one of the two gauges that a number lies near; `null` where it lies near both, or near neither. */
function gaugeNear(amount: Amounted, frame: Frame): Side | null {
  const [side, ...others] = SIDES.filter((each) => isNear(amount, each, frame));
  return side === undefined || others.length > 0 ? null : side;
}

const GAUGES: ReadonlySet<QuantityId | null> = new Set<QuantityId | null>(SIDES);
/** Both were told before, and one of them last. */
const areWatched = (frame: Frame): boolean =>
  GAUGES.has(frame.context.lastQuantity) && frame.context.asked === null && startsClause(frame);
const WATCHED = { unheard: true, only: areWatched, examples: [] } as const;

function shown(tags: Tags | null, frame: Frame): Reading | null {
  const amount = amountIn(tags ?? {});
  const side = gaugeNear(amount, frame);
  return side === null ? null : reading(side, amount, frame);
}

/** "Two eighty two and fifty four now": of the two gauges by what they showed last. */
const both: Means = (tags, frame) => {
  const one = shown(tagsIn(tags['one']), frame);
  const other = shown(tagsIn(tags['other']), frame);
  if (one === null || other === null || one.quantity === other.quantity) return null;
  return { readings: [one, other] };
};

/** "Two forty seven, suction fifty": what stands before the low side is the high one. */
const aboveSuction: Means = (tags, frame) => {
  const [above, below] = [amountIn(tags), amountIn(tagsIn(tags['beside']) ?? {})];
  if (above.value === null || below.value === null || above.value <= below.value) return null;
  if (above.unit !== null || frame.context.headPressure === null) return null;
  const [head, suction] = [
    reading('headPressure', above, frame),
    reading('suctionPressure', below, frame),
  ];
  return head === null || suction === null ? null : { readings: [head, suction] };
};

/** "Head's coming down, it's two ninety." "Two seventy.": near the gauge that was looked at last, and no box is so warm. */
const sameAgain: Means = (tags, frame) => {
  const { value } = amountIn(tags);
  if (value === null || canBeColdBox(value, frame.context.units)) return null;
  const found = shown(tags, frame);
  return found?.quantity === frame.context.lastQuantity ? { readings: [found] } : null;
};

/** "It's been at two eighty for ten minutes or so" */
const either: Means = (tags, frame) => {
  const found = shown(tags, frame);
  return found && { readings: [found], remarks: [frame.wordsOf(frame.span)] };
};

/** "Two fifteen now": of the one that it lies near. */
const one: Means = (tags, frame) => {
  const found = shown(tags, frame);
  return found && MOVED_ON.test(frame.wordsOf(frame.span)) ? { readings: [found] } : null;
};
const MOVED_ON = /\b(?:now|settl\w+|level\w+|holding|steady|not moving|sitting)\b/i;

/** What the two gauges show when they are looked at again, told without their names. */
export const GAUGES_AGAIN_RULES: readonly Rule[] = [
  rule(
    '[(ok|and|now|so|it is|we are|i am|i have got|down to|up to|it is down to)] [(at|down to|up to|around)] <amount> [now] [(and|<pause>)] ([the] suction [(is|at|is at)] <amount:beside>|<amount:beside> on [the] suction)',
    aboveSuction,
    WATCHED,
  ),
  rule(
    '[(ok|and|now|so)] (it is [(now|still)] (sitting|holding|hanging|settled|at|down to|up to|leveled off|leveling off)|sitting|holding|settled|down to|up to) [(in|out|right|there)] [(at|around)] <amount> [now]',
    sameAgain,
    WATCHED,
  ),
  rule(
    '[(ok|and|now)] <amount> [(now|and (dropping|climbing|falling|still (dropping|climbing|coming down)))]',
    sameAgain,
    {
      ...WATCHED,
      alone: true,
    },
  ),
  rule(
    '[(ok|it is|we are|i am|i have|i have got|they are|now|now it is|down to|it is down to|we are down to)] [(settling|settling (in|out|down)|leveling (off|out)|settled [(in|out|down)]|running|holding|sitting)] [(at|down to|up to|around)] <amount:one> [now] (and|over|<pause>) <amount:other> [(now|and holding|holding|and steady)]',
    both,
    { ...WATCHED, apart: true },
  ),
  rule(
    '[(it|that|she|ok it)] (is been|has been|has stayed|stayed|is [still] (sitting|holding|hanging)|has held|held|has sat|sat|hung) [(right|steady|there|right there)] [(at|around|about|on)] <amount> (for|over|the last|these last) [(about|like|a good)] <duration:after> [(or so|now|straight)]',
    either,
    WATCHED,
  ),
  rule(
    '[(and|ok)] [(it is|she is|we are|that is)] [(settling|settling (in|out|down)|leveling (off|out)|settled [(in|out|down)]|holding|sitting)] [(at|down to|up to|around)] <amount> [(now|right now)] [<pause>] [(and|it is)] [(holding|steady|not moving|holding steady)]',
    one,
    { ...WATCHED, alone: true },
  ),
];
