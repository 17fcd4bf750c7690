import type { Tags } from '../../grammar/nodes.ts';
import { bareAmount } from './readings.ts';
import { fixed } from './reading-means.ts';
import { electrical, onCan, one } from '../electrical/electrical.ts';
import { minutesIn } from '../numbers/durations.ts';
import { amountIn, readingOf, withMore } from '../numbers/measure.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { placeId, quantityId, tagsIn } from '../slots.ts';
import { isTimeOfDay } from '../words/time-of-day.ts';

/** What stands around the number tells nothing of it. */
const wasAsked = ({ context }: Frame): boolean => context.asked !== null;
const ONLY_ANSWERS = { alone: true, only: wasAsked, examples: [] };

/** Further apart, two figures are two answers. */
const NEAR = 10;

/** "Eighteen, maybe nineteen": between the two. */
const between: Means = (tags, frame) => {
  const low = amountIn(tagsIn(tags['low']) ?? {}).value;
  const high = amountIn(tagsIn(tags['high']) ?? {}).value;
  const isNear = low !== null && high !== null && high > low && high - low <= NEAR;
  return isNear ? bareAmount(tags, frame) : null;
};

/** "It's four ten after ten minutes": with how long it took. */
const answeredAfter: Means = (tags, frame) => timed(bareAmount(tags, frame), tags);

function timed(meaning: Meaning | null, tags: Tags): Meaning | null {
  const afterMinutes = minutesIn(tagsIn(tags['after']));
  if (meaning?.readings === undefined || afterMinutes === null) return meaning;
  return { ...meaning, readings: meaning.readings.map((each) => withMore(each, { afterMinutes })) };
}

/** "Eighty four at the condenser": the air there, where that was asked for. */
const atCondenser: Means = (tags, frame) =>
  frame.context.asked === 'ambientTemp' ? bareAmount(tags, frame) : null;

/** Ours: what still stands is not half of what it was read at, nor twice as much. */
const MOST_MOVED = 2;

/** "Still two fifty" with the nitrogen on it: of the test that is running, whatever else was asked. */
const stillHolds: Means = (tags, frame) => {
  const { holding } = frame.context;
  const { value } = amountIn(tags);
  if (holding === null || value === null) return null;
  const isNear = value <= holding.value * MOST_MOVED && value * MOST_MOVED >= holding.value;
  return isNear ? timed(fixed(holding.quantity)(tags, frame), tags) : null;
};

/** "Held ten minutes, no change": where it stood, so long after. */
const heldAsItWas: Means = (tags, frame) => {
  const { holding } = frame.context;
  return holding === null
    ? null
    : timed(fixed(holding.quantity)({ number: holding.value }, frame), tags);
};

/** "Still three hundred at eleven ten": of the same, at that hour. */
const stillHoldsAt: Means = (tags, frame) => {
  const held = isTimeOfDay(tagsIn(tags['clock']) ?? {}) ? stillHolds(tags, frame) : null;
  return held === null ? null : { ...held, remarks: [frame.wordsOf(frame.span)] };
};

/** "It's ten forty", with the nitrogen on: when the test began, where a gauge that held cannot stand so high or low. */
const timeHeldAt: Means = (tags, frame) => {
  const { holding } = frame.context;
  const isTest = holding?.quantity === 'testPressure';
  if (!isTest || !isTimeOfDay(tags) || stillHolds(tags, frame) !== null) return null;
  return { remarks: [frame.wordsOf(frame.span)] };
};

const ONLY_HOLDING = {
  alone: true,
  only: ({ context }: Frame): boolean => context.holding !== null,
  examples: [],
};
const AFTER = '(after|for|over|at) <duration:after>';
const BY_CLOCK = '(at|by|as of) <number:clock> [o clock]';
const SO =
  '[<pause>] [(and|so)] [(it is|that is|looks|~~she|~~it|~~she has|~~it has)] (good|fine|ok|solid|tight|holding|holding good|steady|held|no (drop|change|rise|leak|movement|leaks)|no (drop|change|rise|movement) at all|not moving|not a hair|has not moved|never moved|did not move|did not budge|has not budged)';

const LEAD =
  '[(still|well|about|call it|let us say|let us call it|say|only|just|maybe|now|i am at|i have|i got|looks like|it is|it is at|it is still|sitting at|right at|right around)] [(at|about|around|right at|only|just|still|like)]';
const GOING =
  '(climbing|rising|dropping|falling|holding|steady|holding steady|coming (up|down)|going (up|down)|still (climbing|rising|dropping|falling|moving|coming (up|down)|going (up|down))|it is (climbing|rising|dropping|falling|still moving))';

/** "Seventy? Say what that is of." "That's the ambient." */
const namesIt: Means = (tags, frame) => {
  const { openNumber } = frame.context;
  const quantity = quantityId(tags['quantity']);
  if (openNumber === null || quantity === null) return null;
  const found = readingOf(quantity, amountIn({ ...tags, number: openNumber }), {
    place: null,
    frame,
  });
  return found?.quantity === quantity ? { readings: [found] } : null;
};

const placesIt: Means = (tags, frame) => {
  const { openNumber } = frame.context;
  const place = placeId(tags['place']);
  if (openNumber === null || place === null) return null;
  const told = { ...tags, number: openNumber };
  return onCan(told, frame) ?? one(electrical(told, place, frame));
};

const ONLY_NAMES = {
  alone: true,
  only: ({ context }: Frame): boolean => context.openNumber !== null,
  examples: [],
};
const OF =
  '[(that is|it is|that was|it was|that would be|that one is|of|that number is)] [(of|for|on|from|at|across)]';

/** A number that was asked for, with more around it than the number. */
export const ANSWER_RULES: readonly Rule[] = [
  rule(
    '[(it|she|that|and it|test|pressure)] (held|has held|sat|stayed|been|has been) [(for|there)] [(a good|about|the full)] <duration:after> [<pause>] [(and|with)] (no (change|drop|loss|movement)|not a (pound|hair|needle)|did not (move|drop|budge|change)|never (moved|dropped|budged)|[rock] (solid|steady)|dead (on|steady))',
    heldAsItWas,
    { ...ONLY_HOLDING, unheard: true },
  ),
  rule(
    `[(it is|that is|she is|we are|gauge is|gage is)] (still|holding|still holding|sitting|still sitting|still reading) [(at|on)] <amount> [${AFTER}] [${SO}]`,
    stillHolds,
    { ...ONLY_HOLDING, unheard: true },
  ),
  rule(
    `[(it is|that is|she is|we are|gauge is|gage is)] (still|holding|still holding|sitting|still sitting|still reading) [(on|at|right at)] <amount> ${BY_CLOCK} [${SO}]`,
    stillHoldsAt,
    { ...ONLY_HOLDING, unheard: true },
  ),
  rule('[(and|ok|so|right|well)] it is [now] [(about|just|right at)] <number> [now]', timeHeldAt, {
    ...ONLY_HOLDING,
    unheard: true,
  }),
  rule(`${OF} <the> <quantity>`, namesIt, ONLY_NAMES),
  rule(`${OF} <the> <place>`, placesIt, ONLY_NAMES),
  rule(
    `${LEAD} <amount> [<pause>] [(and|but)] ${GOING} [(now|slow|slowly|fast|a little)]`,
    bareAmount,
    ONLY_ANSWERS,
  ),
  rule(
    `${LEAD} <amount> [(right now|now|at the moment|i think|i guess|maybe|i would say|if that|tops|on the nose|exactly|even|last i looked|on my (gage|meter|thermometer|gages))]`,
    bareAmount,
    ONLY_ANSWERS,
  ),
  rule(`${LEAD} <amount> ${AFTER} [${SO}]`, answeredAfter, { ...ONLY_ANSWERS, unheard: true }),
  rule(`${LEAD} <amount> ${SO}`, bareAmount, { ...ONLY_ANSWERS, unheard: true }),
  rule(
    `${LEAD} <amount> (at|by|on|near|going into|into|entering|in front of) <the> condenser`,
    atCondenser,
    { ...ONLY_ANSWERS, unheard: true },
  ),
  rule(
    `${LEAD} <number:low> (or|to|maybe|or maybe|<pause> [(or|maybe|or maybe)]) <number:high>`,
    between,
    ONLY_ANSWERS,
  ),
];
