import type { Tags } from '../../grammar/nodes.ts';
import type { PlaceId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import type { SpokenUnit } from '../vocabulary/unit-names.ts';
import { isCutShort } from '../numbers/cut-numbers.ts';
import { droppedIn } from '../numbers/dropped-points.ts';
import { electrical, GOT, one } from './electrical.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { nowAt } from '../readings/now-at.ts';
import { asReading } from '../readings/reading-means.ts';
import { withMore } from '../numbers/measure.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, placeId, quantityId, tagsIn } from '../slots.ts';

/** The amount with its point where it is dropped, for rules that take either. */
export function pointed(tags: Tags): Tags {
  const dropped = droppedIn(tags);
  return dropped === null ? tags : { ...tags, number: dropped.value };
}

/** Asked about where the figures without their point are another value that was as likely said. */
function shown(tags: Tags, place: PlaceId | null, frame: Frame): Meaning | null {
  const dropped = droppedIn(tags);
  if (dropped !== null && isCutShort(frame)) return null;
  const found = electrical(pointed(tags), place, frame);
  if (dropped === null || found === null) return null;
  return dropped.or === null
    ? one(found)
    : { doubts: [withMore(found, { why: 'saidTwoWays', or: dropped.or })] };
}

const amps: Means = (tags, frame) => shown({ ...tags, unit: 'A' }, placeId(tags['place']), frame);

/** "Amps." "Seven one.": of what was named, or asked for, in the sentence before. */
const askedAmps: Means = (tags, frame) => {
  const { asked, askedPlace } = frame.context;
  return asked === 'current' ? shown({ ...tags, unit: 'A' }, askedPlace, frame) : null;
};

const ohms: Means = (tags, frame) => shown({ ...tags, unit: 'ohm' }, placeId(tags['place']), frame);

/** Without "ohms", only the ends of a winding tell what was metered. */
const ofWinding: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const found = place === null ? null : electrical(pointed(tags), place, frame);
  return found?.quantity === 'resistance' ? shown(tags, place, frame) : null;
};

const offInstrument: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  if (quantity === null || isElectrical(quantity) || isCutShort(frame)) return null;
  const weight = poundsAndOunces(quantity, tags, frame);
  if (weight === null) return asReading()(pointed(tags), frame);
  // Neither pounds nor ounces were said.
  const readings = asReading()(weight, frame)?.readings ?? [];
  return { readings: readings.map((each) => withMore(each, { unitFrom: 'implied' })) };
};

const WEIGHED: readonly (QuantityId | null)[] = [
  ...(['cylinderWeight', 'refrigerantAdded', 'refrigerantRecovered', 'tareWeight'] as const),
];

/** "Scale says twenty two four", once something was weighed: the scales of this trade show ounces behind the pounds. */
function poundsAndOunces(quantity: QuantityId, tags: Tags, frame: Frame): Tags | null {
  const { lastQuantity, units, scaleShows } = frame.context;
  const isScale = quantity === 'cylinderWeight' && WEIGHED.includes(lastQuantity);
  if (!isScale || units !== 'us' || tags['unit'] !== undefined || scaleShows?.tenths) return null;
  const { whole, tenth } = tags;
  return whole === undefined || tenth === undefined
    ? null
    : { ...tags, pounds: whole, ounces: tenth };
}

const UNIT_OF: Partial<Record<QuantityId, SpokenUnit>> = {
  capacitance: 'uF',
  ratedCapacitance: 'uF',
  current: 'A',
  resistance: 'ohm',
};

/** Of what was read before in the same sentence; a can's rating is read against what it holds. */
const ofThatFigure: Means = (tags, frame) => {
  const dropped = droppedIn(tags);
  if (dropped === null) return null;
  const means = (quantity: QuantityId, place: PlaceId | null): Meaning | null => {
    const unit = UNIT_OF[quantity];
    if (unit === undefined) return null;
    return shown({ ...tags, unit }, unit === 'uF' ? (place ?? 'runCapacitor') : place, frame);
  };
  return { ofThat: { means, otherwise: { unclaimed: [String(dropped.or ?? dropped.value)] } } };
};

const isLittle = (leg: Tags): boolean => (numberIn(pointed(leg)['number']) ?? 0) < MOST_AMPS;
const isByTenths = ({ number }: Tags): boolean =>
  typeof number === 'number' && !Number.isInteger(number);
/** Ours: motors of this trade draw less. */
const MOST_AMPS = 100;

/** Amps or volts by the unit that one of the legs has for all; three figures without any are volts. */
function unitOf(legs: readonly Tags[], words: string): 'A' | 'V' | 'other' | null {
  const units = legs.flatMap(({ unit }) => unit ?? []);
  const [unit] = units;
  if (units.some((each) => each !== unit)) return 'other';
  if (unit !== undefined && unit !== 'V') return unit === 'A' ? unit : 'other';
  const isThreeFigures = ({ number }: Tags): boolean => typeof number === 'number' && number >= 100;
  if (/\b(?:pull|draw|amp)/i.test(words)) return 'A';
  if (legs.every((leg) => isThreeFigures(pointed(leg)))) return 'V';
  // No supply is metered by tenths of so little.
  if (legs.length > 1 && legs.some(isByTenths) && legs.every(isLittle)) return 'A';
  // "Line one twenty volts" is no leg at twenty.
  return unit === 'V' ? 'other' : null;
}

/** What was metered on each leg; without a unit, twelve on one of them may be anything. */
const onLegs: Means = (tags, frame) => {
  const legs = [tags, tagsIn(tags['second']), tagsIn(tags['third'])].filter((leg) => leg !== null);
  const unit = unitOf(legs, frame.wordsOf(frame.span));
  if (unit === 'other') return null;
  if (unit === null)
    return { unclaimed: legs.flatMap((leg) => numberIn(pointed(leg)['number']) ?? []).map(String) };
  const each = legs.flatMap((leg) => onLeg({ ...leg, unit }, frame) ?? []);
  if (each.length < legs.length) return null;
  return {
    readings: each.flatMap(({ readings = [] }) => readings),
    doubts: each.flatMap(({ doubts = [] }) => doubts),
  };
};

function onLeg(leg: Tags, frame: Frame): Meaning | null {
  const place = placeId(leg['place']);
  const isDropped = droppedIn(leg) !== null;
  return isDropped ? shown(leg, place, frame) : one(electrical(leg, place, frame));
}

/** The same told with the leg behind its figure. */
const onLegsBehind: Means = (tags, frame) => {
  const [second, third] = [tagsIn(tags['second']), tagsIn(tags['third'])];
  const told = {
    ...tags,
    ...(second === null ? {} : { second: { ...tagsIn(tags['next']), ...second } }),
    ...(third === null ? {} : { third: { ...tagsIn(tags['last']), ...third } }),
  };
  return onLegs(told, frame);
};

/** "Line one twenty volts" is the line side at 120: which leg it is nobody tells so. */
const onLine: Means = (tags, frame) => {
  const found = electrical(tags, 'lineSide', frame);
  return tags['unit'] === 'V' ? one(found) : null;
};

const atLine: Means = (tags, frame) => {
  const found = electrical(tags, 'lineSide', frame);
  return found?.quantity === 'voltage' ? one(found) : null;
};

const AMPS = '(amps|amp)';
const FIGURES_ON: readonly ((slot: string) => string)[] = [
  (slot) => `<dropped${slot}> [${AMPS}] (on|at) [the]`,
  (slot) => `(<amount${slot}>|<droppedSurely${slot}> [${AMPS}]) [(on|at) [the]]`,
];
const CURRENT =
  '(amps|current|amperage|amp draw|current draw|draw|running amps|amp reading|running current)';
const DRAWS = '(pulling|drawing|pulls|draws)';
const ON = '(on|at|of|for|to)';

/** What a meter or a scale shows, said without its point: "amps eight two", "superheat eleven four". */
export const METER_FIGURE_RULES: readonly Rule[] = [
  rule('[(it is|at|about|now|only|pulling|drawing)] <dropped>', askedAmps, {
    unheard: true,
    alone: true,
    examples: [],
  }),
  rule(
    `<the> <place> [(is|are)] [only] (${DRAWS}|[the] ${CURRENT} [(is|are|at)]) <dropped> [${AMPS}]`,
    amps,
    {
      examples: ['compressor is pulling six three'],
    },
  ),
  rule(`<the> <place> <link> <dropped> ${AMPS}`, amps, {
    examples: ['compressor is at fourteen two amps'],
  }),
  rule(
    `[the] ${CURRENT} [${ON} <the> <place>] <link> <dropped> [${AMPS}] [(on|at|for) <the> <place>]`,
    amps,
    { examples: ['amps eight two', 'amp draw on the compressor is six three'] },
  ),
  rule(`${GOT} [${DRAWS}] <dropped> ${AMPS} [${ON} <the> <place>]`, amps, {
    examples: ['pulling nine one amps'],
  }),
  rule(`[it is] ${DRAWS} <dropped> [${AMPS}] [${ON} <the> <place>]`, amps, {
    examples: ['it is drawing eight two'],
  }),
  rule(`${GOT} <dropped> (ohms|ohm) [(on|at|across|from|between|for) <the> <place>]`, ohms, {
    examples: ['two one ohms across common to run'],
  }),
  rule('<the> <place> <link> <dropped> [(ohms|ohm)]', ofWinding, {
    examples: ['common to start is four six'],
  }),
  rule('[the] <quantity> (<link>|<loose>) <droppedSurely> [<unit>]', offInstrument, {
    examples: ['superheat is eleven four'],
  }),
  rule(
    '[(and|but|so|then)] (now (it is|we are|i am)|it is now|it is (down|back|up) to|now) [(at|down to|up to)] <droppedSurely> [<unit>]',
    (tags, frame) => nowAt(pointed(tags), frame),
    { examples: ['now it is twenty one six'] },
  ),
  rule(
    '[(and|but|so)] it is [(only|still|up|down|back)] [(at|to|up to|down to)] <droppedSurely> [<unit>] (now|right now|at the moment|currently)',
    (tags, frame) => nowAt(pointed(tags), frame),
    { examples: ['it is twenty two one now'] },
  ),
  rule(
    '[(and|but)] (it is|i am|it) [only] (reading|reads|getting|measures|measuring|pulling|drawing) <dropped>',
    ofThatFigure,
    { examples: ['and it is reading five two'] },
  ),
  rule('<legDropped> [[and] <legDropped:second> [[and] <legDropped:third>]]', onLegs, {
    examples: ['line one is eight two line two is eight four'],
  }),
  rule('<legShown> [[and] <legShown:second> [[and] <legShown:third>]]', onLegs, {
    examples: ['line one twelve amps line two eleven five'],
  }),
  ...FIGURES_ON.map((figureOn) =>
    rule(
      `${GOT} [${DRAWS}] ${figureOn('')} <leg> [and] ${figureOn(':next')} <leg:second> [[and] ${figureOn(':last')} <leg:third>]`,
      onLegsBehind,
      {
        examples: figureOn('').startsWith('<')
          ? ['pulling thirteen nine on line two and fourteen one on line three']
          : ['twelve amps on line one and eleven five on line two'],
      },
    ),
  ),
  rule('[the] line <link> <amount>', onLine, { examples: ['line one twenty volts'] }),
  rule(`${GOT} <amount> (at|on|across|to|into|from|off) the line`, atLine, {
    examples: ['one twenty at the line'],
  }),
];
