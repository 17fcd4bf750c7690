import type { Tags } from '../../grammar/nodes.ts';
import type { PlaceId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { wordBehind, wordsBehind } from '../words/clause-start.ts';
import { electrical, GOT } from './electrical.ts';
import { nameplate } from '../facts/facts.ts';
import { amountIn } from '../numbers/measure.ts';
import { leftToAsk } from '../readings/reading-means.ts';
import { remark } from '../plain-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, placeId, tagsIn } from '../slots.ts';

/** "Rated load says eight point seven, she's drawing eleven": amps behind amps, and of what they are rated for. */
const drawnBesidePlate: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  const before = frame.wordsOf({ from: 0, to: frame.span.from });
  if ((unit !== null && unit !== 'A') || !RATED_AMPS.test(before)) return null;
  const found = electrical({ ...tags, unit: 'A' }, 'compressor', frame);
  return found === null ? null : { readings: [found] };
};
const RATED_AMPS =
  /\b(?:rla|lra|fla|r\.? ?l\.? ?a|l\.? ?r\.? ?a|f\.? ?l\.? ?a|(?:rated|full) load|locked? rotor|(?:rated|plate|nameplate) amps?|amps? on the (?:plate|tag)|(?:plate|tag|sticker) (?:says|reads|shows|calls for|has|is)\b[^.;]*\bamps?)\b/i;

const PAIRS: readonly PlaceId[] = ['lineOneTwo', 'lineTwoThree', 'lineOneThree'];
const LINES: readonly PlaceId[] = ['lineOne', 'lineTwo', 'lineThree'];

/** "Two to three is only three ninety, the other two are four seventy": what the third of them was not. */
const otherTwo: Means = (tags, frame) => {
  const of = (quantity: QuantityId | null, place: PlaceId | null): Meaning | null =>
    othersOf({ quantity, place }, tags, frame);
  const { lastQuantity, lastPlace } = frame.context;
  return { ofThat: { means: of, otherwise: of(lastQuantity, lastPlace) ?? leftToAsk(tags) } };
};

interface ReadLast {
  readonly quantity: QuantityId | null;
  readonly place: PlaceId | null;
}

function othersOf({ quantity, place }: ReadLast, tags: Tags, frame: Frame): Meaning | null {
  const three = [PAIRS, LINES].find((each) => place !== null && each.includes(place));
  const unit = UNIT_OF[quantity ?? ''];
  if (three === undefined || unit === undefined) return null;
  const readings = three
    .filter((each) => each !== place)
    .flatMap((each) => electrical({ ...tags, unit: tags['unit'] ?? unit }, each, frame) ?? []);
  return readings.length < 2 ? null : { readings };
}
const UNIT_OF: Readonly<Record<string, string>> = { voltage: 'V', current: 'A' };

/** "Leg one's at eight point two, the other two are at twelve" */
const legAndOthers: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const [first, other] = [tagsIn(tags['first']), tagsIn(tags['other'])];
  if (place === null || first === null || other === null) return null;
  const { value } = amountIn(first);
  const isVolts = amountIn(first).unit === 'V' || (value ?? 0) >= LEAST_MAINS;
  const quantity = isVolts ? 'voltage' : 'current';
  const unit = isVolts ? 'V' : 'A';
  const one = electrical({ ...first, unit: first['unit'] ?? unit }, place, frame);
  const others = othersOf({ quantity, place }, other, frame)?.readings ?? [];
  return one === null || others.length === 0 ? null : { readings: [one, ...others] };
};
/** Ours: no motor here draws so many amps. */
const LEAST_MAINS = 90;

/** A hot leg of a supply on one phase, or each leg of one on three, against ground. */
const toGround: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  if ((unit !== null && unit !== 'V') || value === null) return null;
  if (
    unit === null &&
    value !== 0 &&
    !SUPPLIES.some(([low, high]) => value >= low && value <= high)
  )
    return null;
  const isOfThree = /\ball (?:three|of)\b/i.test(frame.wordsOf(frame.span));
  const places = isOfThree ? LINES : [null];
  const volts = { ...tags, unit: 'V' };
  const readings = places.flatMap((place) => electrical(volts, place, frame) ?? []);
  return readings.length === places.length ? { readings } : null;
};
/** Ours: what a leg of a supply has against ground, in volts; megohms are said with their unit or of a winding. */
const SUPPLIES = [
  [90, 135],
  [195, 290],
] as const;

/** What a breaker is built for, said of it alone. */
const sized: Means = (tags, frame) => {
  const part = partId(tags['part']);
  if (!/\b(?:plate|tag|supposed|should)\b/i.test(wordsBehind(frame, 8))) return null;
  return part === 'breaker' || part === 'fuse' || part === 'disconnect'
    ? { remarks: [frame.wordsOf(frame.span)], names: part }
    : null;
};

/** "… and the plate wants a fifteen": behind a breaker or a fuse it is the largest that may feed it. */
const plateWants: Means = (tags, frame) => {
  const isFed = /\b(?:breakers?|fuses?)\b/i.test(frame.wordsOf({ from: 0, to: frame.span.to }));
  return isFed ? nameplate('maximumFuse')({ ...tags, unit: 'A' }, frame) : null;
};

const LEGS =
  '[(on|at|from|off) ([(both|each|either|every|the|my|all three|all of the|one)] [(hot|my)] (hots|hot|legs|leg|lines|line|phase|phases|side|sides|wire)|both|each|each one|either one|all three [of them])]';
const ARE =
  '(are|is|read|reads|show|were|have|pull|draw|come in at|came in at|sit at|got) [(both|each|up|down|right|all|sitting|only|still|reading|just|pulling|drawing|good)] [at]';
const APIECE = '[(each|apiece|even)]';
const EVEN = '[(even|flat|on the nose|on the dot|right now|now|amps even|steady)]';
const PLATE = '(plate|nameplate|name plate|tag|data plate|data tag)';

/** Values told beside those they are held against. */
export const BESIDE_PLATE_RULES: readonly Rule[] = [
  rule(
    `[(<pause> [(and|but)]|and|but)] (i am|she is|it is|we are|and it is|<the> (compressor|pump|motor) is|i have|i have got|i got|(it|she|compressor|pump) (draws|pulls)) [(seeing|getting|reading|drawing|pulling|running|at|showing|only|drawing only|right at)] <amount> ${EVEN}`,
    drawnBesidePlate,
    { unheard: true, examples: [] },
  ),
  rule(
    `(<pause> [(and|but)]|and|but) [the] other two [(legs|lines|phases|pairs|ones)] ${ARE} <amount> ${APIECE}`,
    otherTwo,
    { unheard: true, examples: [] },
  ),
  rule(
    `[the] <leg> (is|has|reads|shows|has got|is got|draws|pulls) [(at|only|just|drawing|pulling|reading|drawing only)] [at] <amount:first> [<pause>] [(and|but)] [the] other two [(legs|lines|phases)] ${ARE} <amount:other> ${APIECE}`,
    legAndOthers,
    { unheard: true, examples: ['leg one is at eight point two the other two are at twelve'] },
  ),
  rule(`${GOT} <amount> to ground ${LEGS} [is what i am (seeing|getting|reading)]`, toGround, {
    unheard: true,
    only: (frame) => !/^(?:level|floor|zero|up|out)$/.test(wordBehind(frame)),
    examples: ['one twenty to ground on both legs'],
  }),
  rule(
    `${GOT} <amount:wrong> to ground ${LEGS} [is what i am (seeing|getting|reading)] [<pause>] [[and] that can not be right] [<pause>] <correction> [<pause>] [(hang|hold) on] [(it is|i mean|that is)] <amount>`,
    toGround,
    { unheard: true, examples: ['two forty to ground no wait it is one twenty'] },
  ),
  rule(
    `<the> <part> (is|was) [(only|just)] (a|an) [<number:poles> pole] <number> [(amp|amper|amps)] [(breaker|one|fuse)]`,
    sized,
    { unheard: true, examples: [] },
  ),
  rule(
    '[(and|but)] (it is|(that|this) is|they are) [(a|an)] (<number> (amp|amps) <number:poles> pole|<number:poles> pole <number> [(amp|amps)]) [(breaker|fuse|contactor|disconnect|one)]',
    remark,
    { unheard: true, examples: ['it is a forty amp three pole'] },
  ),
  rule(
    '[(and|but)] (it is|(that|this) is|they are|<the> <part> (is|are)) [all] [(a|an)] <size> (time delay|time delays|slow blow|slow blows|fast acting|dual element|class (j|r|c c|cc|t|g)) [(fuse|fuses|one|ones|type)]',
    remark,
    { unheard: true, examples: ['they are sixty amp time delays'] },
  ),
  rule(
    `[(<pause> [(and|but)]|and|but)] [the] ${PLATE} (wants|calls for|says|asks for|only wants) [(a|an)] [max [of]] <number> [(amp|amps)] [(breaker|fuse|max)]`,
    plateWants,
    { unheard: true, examples: ['plate calls for a fifteen amp breaker'] },
  ),
];
