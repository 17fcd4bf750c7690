import type { QuantityId } from '../../terms/quantities.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, tagsIn } from '../slots.ts';
import { amountIn } from '../numbers/measure.ts';
import { startsClause } from '../words/clause-start.ts';
import { isTimeOfDay } from '../words/time-of-day.ts';
import { goesOn, ofGauge, roseTo } from './gauge-talk.ts';
import { fixed, leftToAsk } from './reading-means.ts';
import { ofLastTest } from './vacuum-and-test.ts';

/** A vacuum is pulled or nitrogen stands in it: of that gauge is what is told without a name. */
const isWatched = (frame: Frame): boolean =>
  frame.context.holding !== null && startsClause(frame) && asWatched(frame) !== null;

/** With the air told in between, the gauge is still the one that stands there. */
const BETWEEN: ReadonlySet<QuantityId> = new Set<QuantityId>(['ambientTemp', 'outdoorTemp']);

function asWatched(frame: Frame): Frame | null {
  const { holding, lastQuantity } = frame.context;
  if (holding === null || lastQuantity === null) return null;
  if (lastQuantity === holding.quantity) return frame;
  if (!BETWEEN.has(lastQuantity)) return null;
  const context = { ...frame.context, lastQuantity: holding.quantity };
  const { span, endsAtPause, startsAtPause = false } = frame;
  return { context, span, endsAtPause, startsAtPause, wordsOf: (of) => frame.wordsOf(of) };
}
const WATCHED = { unheard: true, only: isWatched, examples: [] } as const;

/** Ours: what still stands is not half of what it was read at, nor twice as much; a vacuum moves further. */
const MOST_MOVED = 2;
/** Ours: behind a temperature it is so near. */
const MOST_MOVED_BEHIND = 1.1;
function canBeNext(value: number | null, { context: { holding, lastQuantity } }: Frame): boolean {
  if (value === null || holding === null) return false;
  const isBehind = lastQuantity !== holding.quantity;
  if (holding.quantity === 'vacuum') return !isBehind || value >= LEAST_BEHIND;
  const most = isBehind ? MOST_MOVED_BEHIND : MOST_MOVED;
  return value <= holding.value * most && value * most >= holding.value;
}
/** Ours: no air is so hot. */
const LEAST_BEHIND = 200;

const withGauge =
  (means: Means): Means =>
  (tags, frame) => {
    const watched = asWatched(frame);
    if (watched === null || !canBeNext(amountIn(tags).value, frame)) return null;
    return ofGauge(tags, watched) === null ? null : means(tags, watched);
  };

/** "Stuck around seven fifty", "four twenty now" */
const next = withGauge(goesOn);

/** "Four ten", and nothing else said: what a pump pulls down is watched. */
const nextAlone: Means = (tags, frame) =>
  frame.context.holding?.quantity === 'vacuum' && frame.context.asked === null
    ? next(tags, frame)
    : null;

/** "Ten minutes and it came up to three ninety and sat there" */
const nextAfter = withGauge(roseTo);

/** "Hasn't moved in fifteen minutes": at what it stood at. */
const unmoved: Means = (tags, frame) => {
  const { holding } = frame.context;
  return holding === null ? null : nextAfter({ ...tags, number: holding.value }, frame);
};

/** Ours: no gas that stands under a test is hotter, so that more is the time. */
const HOTTEST_GAS = 140;
/** "One forty nine and a half at two forty": a standing test, and the time of day. */
const atTime: Means = (tags, frame) => {
  const clock = tagsIn(tags['clock']) ?? {};
  const isTime =
    clock['number'] === undefined ||
    (isTimeOfDay(clock) && (amountIn(clock).value ?? 0) > HOTTEST_GAS);
  const found = isTime ? next(tags, frame) : null;
  return found && { ...found, remarks: [frame.wordsOf(frame.span)] };
};

/** "One fifty at seventy two": with how warm its gas is. */
const withGas: Means = (tags, frame) =>
  (amountIn(tagsIn(tags['gas']) ?? {}).value ?? HOTTEST_GAS) < HOTTEST_GAS && next(tags, frame)
    ? ofLastTest(tags, frame)
    : null;

/** "Started at two forty five": when a pump or a test began, and no vacuum that it began at. */
const began: Means = (tags) => {
  const number = numberIn(tags['number']) ?? 0;
  return isTimeOfDay(tags) && number > HOUR && number % HOUR !== 0 ? {} : null;
};
const HOUR = 100;

/** Ours: less than that is a trickle, or so many bottles. */
const LEAST_TEST = 80;
const nitrogenIn: Means = (tags, frame) => {
  const { value, unit } = amountIn(tags);
  return unit !== null || (value !== null && value >= LEAST_TEST)
    ? fixed('testPressure')(tags, frame)
    : leftToAsk(tags);
};

const IT =
  '[(it is|it has|she is|that is|gage is|i am|we are|it|and it is|but it is|ok it is)] [(just|only|been|still|kind of|about)]';
const HUNG =
  '(stuck|hung up|hanging|hung|stalled|parked|sitting|sat|bottomed out|bottoming out|leveled off|leveled out|flattened out|stopped|stops|stalls|holding|holds|settled)';
const AT = '[(right|out|in|there)] (at|around|near|about|right around|right at|at about)';
const CAME =
  '(came|comes|rose|crept|went|climbed|jumped|drifted|bumped|is|was) [(back|right back|only|just)] [up] [(only|just)] [(to|at)]';
const AND_STOPPED =
  '[<pause>] [(and|then|and then|but)] [it] [(just|has)] (stopped|sat there|stayed there|stayed|held there|held|quit|hung there|settled|flattened out|leveled off|leveled out|sat|parked there|stopped there|quit moving|stopped moving|never moved [again]|has not moved) [there]';

/** What the gauge of a vacuum or of a standing test shows as it is watched, told without its name. */
export const WATCHED_GAUGE_RULES: readonly Rule[] = [
  rule(`${IT} ${HUNG} ${AT} <amount>`, next, WATCHED),
  rule(
    `[(it is|she is|we are|i am|that is)] [(at|down|up|down to|up to|back to|down at|up at)] <amount> (now|already|and ([still] (dropping|falling|pulling|coming|moving|going|crawling|creeping)|not moving) [(down|up)] [(now|slow|slowly|fast|good|nice|a little)])`,
    next,
    WATCHED,
  ),
  rule(
    '[ok] (it is|she is|we are|i am|gage is|gage says|i have|i have got) [(now|down|up|back|still)] (at|to|down to|up to|back to) <amount> [now]',
    next,
    WATCHED,
  ),
  rule('(down|back down|up|back up) (to|at|around|past|under|below) <amount> [now]', next, {
    ...WATCHED,
    apart: true,
  }),
  rule(
    `[(and|but|then)] [(it|she|that)] ${CAME} <amount> ${AND_STOPPED} [(for|after) <duration:after>]`,
    next,
    WATCHED,
  ),
  rule(
    `[(about|after|in|it has been)] <duration:after> [(later|in|and|now|went by and|and then)] [<pause>] [(and|but)] [(it|she|that)] ${CAME} <amount> [${AND_STOPPED}]`,
    nextAfter,
    WATCHED,
  ),
  rule(
    '[(about|after)] <duration:after> [(later|in|and|now)] [<pause>] [(and|but)] ((it is|she is|i am|i have|i have got|that is|we are) [(still|only|down|up|right)]|still) [(at|to|holding|sitting|reading|holding at|sitting at)] <amount>',
    nextAfter,
    WATCHED,
  ),
  rule(
    '[(it|she|needle|the needle|gage|the gage|pressure)] [has] (not (moved|budged|dropped)|did not (move|budge|drop)) [(a (bit|pound|hair|lick)|at all|any)] (in|for|over|after) [(about|like|the last)] <duration:after>',
    unmoved,
    WATCHED,
  ),
  rule('[(at|about|down to)] <amount>', nextAlone, { ...WATCHED, alone: true }),
  rule(
    '[(ok|and)] it is (<number:clock>|<clock>) [(am|pm|a m|p m)] [now] [<pause>] [(and|it is|and it is|and i am)] still [(at|holding|sitting at|right at)] <amount>',
    atTime,
    WATCHED,
  ),
  rule(
    '[(call it|say|it is|now|still|i have|i have got|reading|it was|i am|we are|let us say)] [(at|still|about)] <amount> at (<number:clock>|<clock>) [(am|pm|a m|p m)] [<pause>] [(same|at the same) (temp|temperature)]',
    atTime,
    WATCHED,
  ),
  rule('[(call it|still|now)] <amount> (at|with) <amount:gas> [degrees]', withGas, WATCHED),
  rule(
    `${IT} (will not|can not|could not|would not|does not want to|did not want to) (go|get|pull|come|drop) [(it|her)] [down] [any] (below|under|past|lower than) <amount>`,
    next,
    WATCHED,
  ),
  rule('[(it|pump|the [vacuum] pump)] started at <number> [(am|pm|a m|p m)]', began, {
    unheard: true,
    only: startsClause,
    examples: ['started at two forty five'],
  }),
  rule(
    '[(ok|i have|i have got|got)] [(the|my)] (nitrogen|nitro|n two) [is] (in|on|in there|going) [<pause>] [(at|to|up to|i have|i am at|it is at|we are at|with|about|brought it [up] to|took it [up] to)] <amount>',
    nitrogenIn,
    { unheard: true, only: startsClause, examples: ['nitrogen is in one fifty'] },
  ),
];
