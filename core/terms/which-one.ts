import { PARTS, type PartId } from './names.ts';

/** What tells one of several alike from the others, as a regular expression's source. */
export const SIDE =
  '(?:left|right|top|bottom|upper|lower|front|back|rear|middle|other|outside|inside|first|second|third|fourth|last)(?:[- ]hand)?';
export const NUMBER = '(?:one|two|three|four|[1-4])';

/** What a sensor is in or on. */
export const SENSED =
  '(?:air|box|cabinet|coil|evap|evaporator|return|supply|discharge|suction|liquid|defrost|condenser|product)';
const SENSOR = new RegExp(
  `\\b(${SENSED})\\s+(?:temp\\s+|temperature\\s+)?(?:one|probe|sensor|thermistor)\\b`,
  'i',
);
/** What a contactor switches. */
export const SWITCHED = '(?:defrost|heater|compressor|fan)';
const CONTACTOR = new RegExp(`\\b(${SWITCHED})\\s+contactor\\b`, 'i');
/** Of what there are several kinds, by what stands before their name. */
const KINDS: Partial<Record<PartId, RegExp>> = { sensor: SENSOR, contactor: CONTACTOR };

const LEAD = '(?:(?:and|but|so)\\s+)?';
const SIDE_FIRST = new RegExp(`^${LEAD}(?:the\\s+)?(${SIDE})\\s`, 'i');
const NUMBER_BEHIND = new RegExp(
  `^(?:[a-z]+\\s+){1,3}?(?:number\\s+)?(${NUMBER})(?='s\\b|\\s+(?:is|isn't|was|wasn't|does|doesn't|won't|will|keeps|has|looks|running|runs|not|dead|bad|open|burnt|shorted|tripped)\\b)`,
  'i',
);

const POINTS_AT_ONE = new RegExp(
  `\\b(?:that|this|${SIDE}|the\\s+(?:[a-z]+\\s+)?(?!number)[a-z]+)\\s+one\\b`,
  'i',
);
/** "That one's closed" and "the coil one's good" point at one, and number none. */
export const pointsAtOne = (words: string): boolean => POINTS_AT_ONE.test(words);

/** "Left condenser fan", "condenser fan two": the part, and which of several alike the words tell of. */
export function namedAsFound(part: PartId, words: string): string {
  const side = SIDE_FIRST.exec(words)?.[1];
  if (side !== undefined) return `${side.toLowerCase()} ${PARTS[part]}`;
  const kind = KINDS[part]?.exec(words)?.[1];
  if (kind !== undefined) return `${kind.toLowerCase()} ${PARTS[part]}`;
  if (pointsAtOne(words)) return PARTS[part];
  const number = NUMBER_BEHIND.exec(words)?.[1];
  return number === undefined ? PARTS[part] : `${PARTS[part]} ${number.toLowerCase()}`;
}
