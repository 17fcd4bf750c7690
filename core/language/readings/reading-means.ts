import type { Tags } from '../../grammar/nodes.ts';
import type { EquipmentId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import type { Context } from '../context.ts';
import { wordBehind } from '../words/clause-start.ts';
import { breaksOff } from '../numbers/cut-numbers.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { type Amounted, amountIn, readingOf, withMore } from '../numbers/measure.ts';
import type { Frame, Meaning, Means } from '../rule.ts';
import { quantityId } from '../slots.ts';
import { isOfColdRoom, NAMES_AMBIENT } from './cold-rooms.ts';
import type { Reading } from '../utterance.ts';

type Extras = Partial<Pick<Reading, 'when' | 'event' | 'afterMinutes' | 'gasTemp' | 'refrigerant'>>;

export function reading(quantity: QuantityId, amount: Amounted, frame: Frame): Reading | null {
  const found = readingOf(quantity, amount, { place: null, frame });
  return found !== null && isOfColdRoom(found, frame.context, WALK_INS)
    ? { ...found, quantity: 'boxTemp' }
    : found;
}
const WALK_INS: readonly (EquipmentId | null)[] = ['walkInCooler', 'walkInFreezer'];

/** "Box is set at thirty six" is no reading of the box. */
function settable(named: QuantityId, frame: Frame): QuantityId {
  const isSet = named === 'boxTemp' && /\bset (?:at|to|for)\b/i.test(frame.wordsOf(frame.span));
  return isSet ? 'setpointTemp' : named;
}

function meantQuantity(tags: Tags, frame: Frame): QuantityId | null {
  const named = quantityId(tags['quantity']);
  if (named === 'headPressure' && isThermal(tags) && OF_DISCHARGE.test(frame.wordsOf(frame.span)))
    return 'dischargeLineTemp';
  if (named === 'suctionPressure' && mayBeThermal(tags) && AT_BULB.test(frame.wordsOf(frame.span)))
    return 'suctionLineTemp';
  return named === null ? null : settable(named, frame);
}

/** "Discharge two ten degrees" is no pressure said by its saturation, as "head a hundred and ten degrees" is. */
const OF_DISCHARGE = /\bdischarge\b(?! pressure)/i;
const isThermal = (tags: Tags): boolean => {
  const { unit } = amountIn(tags);
  return unit === 'degrees' || unit === 'degF' || unit === 'degC';
};

/** Of the quantity that was named. */
export const asReading = (extras?: Extras): Means => readBy(meantQuantity, extras);

/** Of a quantity that the rule itself knows. */
export const fixed = (quantity: QuantityId, extras?: Extras): Means =>
  readBy((_tags, frame) => settable(quantity, frame), extras);

const readBy =
  (quantityOf: (tags: Tags, frame: Frame) => QuantityId | null, extras?: Extras): Means =>
  (tags, frame) => {
    const quantity = quantityOf(tags, frame);
    const found = quantity === null ? null : reading(quantity, amountIn(tags), frame);
    if (found === null) return null;
    if (isOfColdRoom(found, frame.context, [null])) return whichRoom(found, tags, frame);
    if (tags['pounds'] !== undefined && breaksOff(frame)) return null;
    if (isElsewhere(found, frame)) return leftToAsk(tags);
    return { readings: [extras === undefined ? found : withMore(found, extras)] };
  };

/** "Suction at the bulb is forty": no gauge sits there, and what a bulb feels is how warm its line is. */
const AT_BULB = /^(?!.*\bpressure\b).*\bbulb\b/i;
const mayBeThermal = (tags: Tags): boolean => amountIn(tags).unit === null || isThermal(tags);

/** "Their room has two beds" tells no number of ours. */
const ENDS = /^(?:|and|but|now|so|with|in|here|today)$/;
/** Its number is asked about; the scale that it was told on is taken for the answer too. */
function whichRoom({ unit, unitFrom }: Reading, tags: Tags, frame: Frame): Meaning | null {
  if (!ENDS.test(wordBehind(frame))) return null;
  const units = unitFrom === 'said' && unit !== null ? [unit] : [];
  const commands = units.length === 0 ? [] : [{ do: 'useUnits', units } as const];
  return { ...leftToAsk(tags), commands };
}

/** Their condensing units stand on roofs and in back rooms, where a reach-in breathes the kitchen that it stands in. */
const CONDENSED_ELSEWHERE: readonly (EquipmentId | null)[] = [
  'walkInCooler',
  'walkInFreezer',
  'remoteCondensingUnit',
];

const isCondensedElsewhere = ({ equipment, isRemote }: Context): boolean =>
  isRemote || CONDENSED_ELSEWHERE.includes(equipment);

/** "Kitchen's ninety four": of a walk-in it is asked, rather than taken for its condenser's air. */
function isElsewhere({ quantity, words }: Reading, { context }: Frame): boolean {
  const isRoom =
    quantity === 'ambientTemp' && /\b(?:kitchen|room|store|shop|warehouse|hallway)\b/i.test(words);
  return isRoom && isCondensedElsewhere(context) && !NAMES_AMBIENT.test(words)
    ? context.asked !== 'ambientTemp'
    : false;
}

/** The numbers of an amount that nothing tells what they are of. */
export function leftToAsk(tags: Tags): Meaning {
  const { value, low, high } = amountIn(tags);
  return { unclaimed: [value, low, high].filter((number) => number !== null).map(String) };
}

/** "It's eighty four out", behind the temperature of a box. */
export const isWeather = (frame: Frame): boolean =>
  /^it(?:'s| is) .*\bout$/i.test(frame.wordsOf(frame.span)) &&
  frame.context.lastQuantity !== null &&
  !isElectrical(frame.context.lastQuantity);
