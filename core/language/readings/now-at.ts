import type { PlaceId } from '../../terms/names.ts';
import { QUANTITIES, type QuantityId } from '../../terms/quantities.ts';
import { isTwoFigures } from '../numbers/dropped-points.ts';
import { QUANTITY_OF } from '../electrical/electrical.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { type Amounted, amountIn, readingOf } from '../numbers/measure.ts';
import { isPlausible } from '../numbers/plausible.ts';
import { isOnlyNumber } from '../words/own-reading.ts';
import { startsClause, wordBefore } from '../words/clause-start.ts';
import { reading } from './reading-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import type { Reading } from '../utterance.ts';
import type { SpokenUnit } from '../vocabulary/unit-names.ts';

const OF_ANYTHING: readonly SpokenUnit[] = ['degrees', 'pounds', 'psi', 'bar', 'degF', 'degC'];

/** "Set point thirty six, it's at forty seven": what is set is not at anything, what it is set for is. */
const HELD: Partial<Record<QuantityId, QuantityId>> = {
  setpointTemp: 'boxTemp',
  highCutoutPressure: 'headPressure',
  lowCutoutPressure: 'suctionPressure',
  lowCutinPressure: 'suctionPressure',
  tareWeight: 'cylinderWeight',
};

/** "Oil's back to half", "number two's down to ten": of what no rule reads, and not of "it". */
const isOfOther = (frame: Frame): boolean =>
  LACKS_SUBJECT.test(frame.wordsOf(frame.span)) &&
  !startsClause(frame) &&
  !/^(?:it|she|he|that|this)$/i.test(wordBefore(frame));
const LACKS_SUBJECT = /^(?:'s|is|came|dropped|went|climbed|pulled)\b/i;

/** "Now it is at two twelve": of what was read before in the same sentence; alone it is asked about. */
export const nowAt: Means = (tags, frame) => {
  if (isOfOther(frame)) return null;
  const amount = amountIn(tags);
  const metered = amount.unit === null ? undefined : QUANTITY_OF[amount.unit];
  // What a meter shows names its quantity, and has the place of another of it; microns name their own.
  if (amount.unit !== null && metered === undefined && !OF_ANYTHING.includes(amount.unit))
    return null;
  const numbers = [amount.value, amount.low, amount.high].filter((value) => value !== null);
  const elsewhere =
    metered === undefined ? null : readingOf(metered, amount, { place: null, frame });
  const otherwise =
    elsewhere === null
      ? (ofLastMost(amount, frame) ?? { unclaimed: numbers.map(String) })
      : { readings: [elsewhere] };
  const means = (quantity: QuantityId, place: PlaceId | null): Meaning | null => {
    const at = HELD[quantity] ?? quantity;
    const found = isElectrical(at)
      ? readingOf(at, amount, { place, frame })
      : reading(at, amount, frame);
    return found === null ? null : { readings: [found] };
  };
  return { ofThat: { means, otherwise } };
};

/** A sentence later it is most likely of what was read last: asked by its name. */
function ofLastMost(amount: Amounted, frame: Frame): Meaning | null {
  const { lastQuantity, refrigerant } = frame.context;
  if (lastQuantity === null) return null;
  if (isElectrical(lastQuantity)) return meteredAgain(amount, frame);
  const found = reading(HELD[lastQuantity] ?? lastQuantity, amount, frame);
  if (found?.value === undefined || found.unit === null) return null;
  if (isWatched(found, frame)) return { readings: [found] };
  const { quantity, value, unit } = found;
  return isPlausible(quantity, { value, unit }, refrigerant)
    ? { doubts: [{ ...found, why: 'expected' }] }
    : null;
}

/** Ours: so many times more or less a meter shows that was left where it was. */
const MOST_TIMES: Partial<Record<QuantityId, number>> = { current: 4, voltage: 1.5 };

/** "Compressor's pulling six point two." "Now it's four one.": right behind it, and near it, the leads are where they were. */
function meteredAgain(amount: Amounted, frame: Frame): Meaning | null {
  const [last] = frame.context.told;
  if (last?.told.of !== 'reading' || amount.value === null) return null;
  const { quantity, value: before, unit, place } = last.told.reading;
  const times = MOST_TIMES[quantity];
  if (times === undefined || before === undefined || unit === null) return null;
  const { value } = amount;
  const said = isTwoFigures(frame.wordsOf(frame.span)) ? [value, value / 10] : [value];
  const [near, ...others] = said.filter((each) => each <= before * times && each >= before / times);
  if (near === undefined || others.length > 0) return null;
  const found = readingOf(quantity, { ...amount, value: near, unit }, { place, frame });
  return found === null ? null : { readings: [{ ...found, unitFrom: 'implied' }] };
}

/** Ours: so many degrees a box or a line moves from one look at its thermometer to the next. */
const MOST_DEGREES = 25;

/** "Box is down to twenty six and dropping." "Eighteen now.": right behind it, and near it, it is the same thermometer. */
function isWatched({ quantity, value, unit }: Reading, { context }: Frame): boolean {
  const [last] = context.told;
  if (last?.told.of !== 'reading' || value === undefined) return false;
  const { reading: before } = last.told;
  return (
    (unit === 'degF' || unit === 'degC') &&
    before.quantity === quantity &&
    before.unit === unit &&
    before.value !== undefined &&
    Math.abs(value - before.value) <= MOST_DEGREES
  );
}

/** "Head's coming up, one ten." "One twenty five." "One forty.": what was told to move is read on by figures alone. */
function wasMoving({ context }: Frame): boolean {
  const first = context.told.find((each) => each === null || !isOnlyNumber(each.words));
  return first?.told.of === 'reading' && MOVED.test(first.words);
}
const MOVED =
  /\b(?:coming|going|climbing|dropping|falling|rising|creeping|heading|pulling)\b|\b(?:up|down) to\b|\bnow\b/i;

/** Ours: a gauge that is watched moves by so much of what it showed, from one look to the next. */
const MOST_MOVED = 1.5;

/** The same gauge, and in the same unit, not far from where it stood. */
function isNextOnGauge({ quantity, value, unit }: Reading, { context }: Frame): boolean {
  const [last] = context.told;
  if (last?.told.of !== 'reading' || value === undefined) return false;
  const { reading: before } = last.told;
  if (before.quantity !== quantity || before.unit !== unit || before.value === undefined)
    return false;
  const [low, high] = [Math.min(value, before.value), Math.max(value, before.value)];
  return low > 0 && high <= low * MOST_MOVED;
}

/** Nothing stands in it that is watched on a gauge, and something was read that runs. */
const readsOn = ({ context: { holding, lastQuantity } }: Frame): boolean =>
  holding === null && lastQuantity !== null;

/** "Box is fifty one." "Forty four.": without its "now" it is asked about, by the name of what was read right before it. */
const againAlone: Means = (tags, frame) => {
  const { lastQuantity } = frame.context;
  const found = lastQuantity === null ? null : reading(lastQuantity, amountIn(tags), frame);
  if (found === null) return null;
  const isOnThermometer = QUANTITIES[found.quantity].dimension === 'temperature';
  if (wasMoving(frame))
    return (isOnThermometer ? isWatched : isNextOnGauge)(found, frame)
      ? { readings: [found] }
      : null;
  return isOnThermometer && isWatched(found, frame)
    ? { doubts: [{ ...found, why: 'expected' }] }
    : null;
};

const mayGoOn = ({ context: { asked, askedAbout, lastQuantity } }: Frame): boolean =>
  asked === null &&
  askedAbout === null &&
  lastQuantity !== null &&
  (QUANTITIES[lastQuantity].dimension === 'temperature' || GAUGES.has(lastQuantity));
const GAUGES: ReadonlySet<QuantityId> = new Set<QuantityId>(['headPressure', 'suctionPressure']);

const MOVES =
  '(dropping|falling|coming (down|up)|going (down|up)|pulling down|climbing|rising|holding|steady|still (dropping|falling|climbing|rising|going|coming (down|up)|pulling down)) [(now|slow|slowly|fast|nice|good)]';

/** What is read again with no name, and nothing else said. */
export const NOW_AT_RULES: readonly Rule[] = [
  rule(
    `[(and|so|ok)] [(it is|we are|she is|that is|that one is)] [(at|down|up|down to|up to|back to|already|already at)] <amount> (now|right now|already|[(now|already)] [<pause>] and ${MOVES})`,
    nowAt,
    {
      alone: true,
      unheard: true,
      only: ({ context: { asked, lastQuantity } }) =>
        asked === null &&
        lastQuantity !== null &&
        QUANTITIES[lastQuantity].dimension === 'temperature',
      examples: [],
    },
  ),
  rule(
    '[(about|after|another|so)] <duration:after> (later|in|and|now|more|after) [<pause>] [(and|but)] (it is|she is|we are|that is|i am|i have [got]|got) [(now|still|only|just)] [(at|down|up|down at|down to|up to|to|reading|showing)] <amount> [now]',
    nowAt,
    { unheard: true, only: readsOn, examples: [] },
  ),
  rule('[(and|ok|then)] <amount>', againAlone, {
    alone: true,
    unheard: true,
    only: mayGoOn,
    examples: [],
  }),
];
