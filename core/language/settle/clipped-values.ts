import type { Context } from '../context.ts';
import { clippedOunces } from '../numbers/clipped-weight.ts';
import { withMore } from '../numbers/measure.ts';
import { isPlausible } from '../numbers/plausible.ts';
import { isOnScale, type QuantityId } from '../../terms/quantities.ts';
import type { UnitId } from '../../units/units.ts';
import type { Doubt, Reading } from '../utterance.ts';
import { both, type DraftUtterance } from './told.ts';

const WEIGHED: ReadonlySet<QuantityId> = new Set<QuantityId>([
  'cylinderWeight',
  'refrigerantAdded',
  'refrigerantCharge',
  'refrigerantRecovered',
  'tareWeight',
]);
/** Ours: no motor that starts draws more times what its plate says. */
const MOST_DRAWN = 6;
/** Ours: nor does one that runs. */
const MOST_RUNNING = 2;

/** "Amps seven one": 7.1, where the plate says that no 71 can be; `null` where either may. */
function drawn({ quantity, value, or, why }: Doubt, rated: number | null): number | null {
  if (quantity !== 'current' || why !== 'saidTwoWays' || rated === null) return null;
  if (value === undefined || or === undefined) return null;
  const [less, more] = [Math.min(value, or), Math.max(value, or)];
  return more > rated * MOST_DRAWN && less <= rated * MOST_RUNNING ? less : null;
}

/** Ours: what is weighed in is no further from what the plate says, by the plate's unit. */
const MOST_OFF_PLATE = 1 / 3;

/** "Weighed in fourteen point five", where the plate says 14.5 oz: in that unit; `null` where it may be in another. */
function chargedBy({ quantity, value }: Doubt, plate: Context['plateCharge']): UnitId | null {
  if (quantity !== 'refrigerantAdded' || value === undefined) return null;
  if (plate === null || Math.abs(value - plate.value) > plate.value * MOST_OFF_PLATE) return null;
  return plate.unit;
}

/**
 * "Tare is sixteen and a half pounds", and later "it's at twenty two four": in pounds as well, and in tenths where tenths
 * were told; `null` where it may be another.
 */
function onScale({ quantity, value, words }: Doubt, { scaleShows }: Context): UnitId | null {
  if (scaleShows === null || value === undefined || !isOnScale(quantity)) return null;
  const { unit, tenths } = scaleShows;
  const isSure = clippedOunces(value, words) === null || (tenths && !Number.isInteger(value));
  return isSure && isPlausible(quantity, { value, unit }, null) ? unit : null;
}

type Settled = { readonly reading: Reading } | { readonly doubt: Doubt };

function settled(doubt: Doubt, context: Context): Settled {
  const { why, or, ...read } = doubt;
  const amps = drawn(doubt, context.ratedLoadAmps);
  if (amps !== null) return { reading: withMore(read, { value: amps }) };
  if (why !== 'noUnit') return { doubt };
  const unit = chargedBy(doubt, context.plateCharge) ?? onScale(doubt, context);
  if (unit !== null) return { reading: { ...read, unit, unitFrom: 'implied' } };
  if (read.value === undefined || !WEIGHED.has(read.quantity)) return { doubt };
  // "Twenty two four" may be as many pounds and four tenths.
  if (!context.weighsInOunces && !Number.isInteger(read.value)) return { doubt };
  const ounces = clippedOunces(read.value, read.words);
  if (ounces === null) return { doubt };
  const weight = { ...read, value: ounces, unit: 'oz', unitFrom: 'implied' } as const;
  return context.weighsInOunces ? { reading: weight } : { doubt: { ...weight, why: 'soundsLike' } };
}

const PUT_IN =
  /^(?:(?:i|we|and|then|just|ok|okay|so)[ ,]+)*(?:put in|put|added|charged|in went)\b/i;

/** "Put in four ten", behind what was weighed in pounds and ounces: asked about, for it names a refrigerant as well. */
function putIn({ unclaimed, text }: DraftUtterance, { weighsInOunces }: Context): Doubt | null {
  const [digits, ...others] = unclaimed;
  if (!weighsInOunces || digits === undefined || others.length > 0 || !PUT_IN.test(text))
    return null;
  const ounces = clippedOunces(Number(digits), text);
  const weight = { unit: 'oz', unitFrom: 'implied', place: null, words: text } as const;
  return ounces === null
    ? null
    : { quantity: 'refrigerantAdded', value: ounces, ...weight, why: 'soundsLike' };
}

/** Values said in fewer words than they have: as what was told before, or what a plate says, tells them to be. */
export function tellClipped(all: DraftUtterance, context: Context): void {
  const told = all.doubts.map((doubt) => settled(doubt, context));
  const put = putIn(all, context);
  const doubts = told.flatMap((each) => ('doubt' in each ? each.doubt : []));
  all.readings = both(
    all.readings,
    told.flatMap((each) => ('reading' in each ? each.reading : [])),
  );
  all.doubts = put === null ? doubts : [...doubts, put];
  if (put !== null) all.unclaimed = [];
}
