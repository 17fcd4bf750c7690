import type { Tags } from '../../grammar/nodes.ts';
import { startsClause, wordBefore, wordBehind } from '../words/clause-start.ts';
import { isCutShort } from '../numbers/cut-numbers.ts';
import { drawn, electrical, OHMS_AT, one } from '../electrical/electrical.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { plateItem } from '../facts/facts.ts';
import { amountIn } from '../numbers/measure.ts';
import { holdsNumber } from '../words/own-reading.ts';
import { isSetting } from '../../terms/quantities.ts';
import { isPlausible } from '../numbers/plausible.ts';
import { NAME_WORDS } from '../names/name-words.ts';
import { ONES, TEENS, TENS, TO_TWELVE } from '../../terms/number-words.ts';
import { asReading, reading } from './reading-means.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { placeId, quantityId, tagsIn } from '../slots.ts';
import type { Reading } from '../utterance.ts';
import { WordSet } from '../words/word-set.ts';

const FIGURE = new RegExp(
  `^(?:\\d|-\\d|(?:zero|${TO_TWELVE.join('|')})$|\\w+teen$|\\w+ty$|minus$)`,
  'i',
);

/** Behind a quantity a number is that quantity's, and before one it may be the last one's. */
function standsAlone(frame: Frame): boolean {
  const { to } = frame.span;
  const next = frame.wordsOf({ from: to, to: to + 1 });
  return startsClause(frame) && (frame.endsAtPause || !FIGURE.test(next));
}

function readAs(amount: Tags | null, quantity: Tags | null, frame: Frame): Reading | null {
  const named = quantityId(quantity?.['quantity']);
  if (amount === null || named === null || isElectrical(named)) return null;
  const found = reading(named, amountIn(amount), frame);
  if (found?.value === undefined || found.unit === null) return null;
  const { value, unit } = found;
  return isPlausible(named, { value, unit }, frame.context.refrigerant) ? found : null;
}

/** "Ninety one liquid one ten condensing": each value before its quantity, from the first to the last. */
const eachBefore: Means = (tags, frame) => {
  if (!standsAlone(frame)) return null;
  const one = readAs(tagsIn(tags['one']), tagsIn(tags['first']), frame);
  const two = readAs(tagsIn(tags['two']), tagsIn(tags['second']), frame);
  return one === null || two === null ? null : { readings: [one, two] };
};

/** "One ninety head": a clause of its own, or the number may be what stands before it. */
const before: Means = (tags, frame) => {
  const found = COOLER.test(frame.wordsOf(frame.span)) ? null : readAs(tags, tags, frame);
  return found === null ? null : { readings: [found] };
};
/** "It's two degrees cooler" */
const COOLER = /\bdegrees? cooler$/i;

const HAVE =
  '[(i have|i got|i have got|i am (getting|reading|seeing|showing|running|holding)|we are (getting|seeing|running|showing)|i see|we have|we got|we have got|there is|reading|getting|seeing|showing|got|pulling|holding|running|carrying|pushing|making|it (pulls|holds|runs))] [(a|an|only|about a)]';

/** What may stand behind all that is told: "is what the head should be", "is what the supply house had" tell more. */
const GOES_ON =
  /^(?:and|but|with|when|while|so|then|or|because|since|after|before|on|at|in|off|here|there|now|right|today|this|again|still|just|it|i|we|the|my|plus|only)?$/;
const isAll = (frame: Frame): boolean => {
  const next = wordBehind(frame);
  return GOES_ON.test(next) || STARTS.test(next) || holdsNumber(next) || NAMES.hasWord(next);
};
/** What else may be told or asked right behind it. */
const STARTS =
  /^(?:what|where|how|why|recommend|needs?|replaced|cleaned|changed|added|start|remind|unit|site)$/;
const NAMES = new WordSet(NAME_WORDS);
const BEFORE_VALUES =
  'is at was are reads about around than of to the a an for on in from by or not point half hundred had have has got get getting i we it see';
/** A value may be of what ends so. */
const NOT_BEFORE = new WordSet([
  ...NAME_WORDS,
  ...ONES,
  ...TEENS,
  ...TENS,
  ...BEFORE_VALUES.split(' '),
]);

/** Nothing that a value may be of: "topped up the charge" is told, and so is what stands behind it. */
const endsBefore = (word: string): boolean =>
  word !== '' && !/\d/.test(word) && !NOT_BEFORE.hasWord(word.replace(/['’]s$/, ''));

/** What a number is, told behind it: where one begins that goes on from another it is that one's. */
const begins = (frame: Frame): boolean => {
  const word = wordBefore(frame).toLowerCase();
  return startsClause(frame) || /^(?:and|but|so|then|with|or)$/.test(word) || endsBefore(word);
};

/** "One is the freezer": which of them, and nowhere near so many degrees. */
const isOneOfThem = (tags: Tags): boolean => {
  const { unit, value } = amountIn(tags);
  const isFigure = unit === null && value !== null && value > 0 && value < 10;
  return isFigure && tags['quantity'] !== 'superheat' && tags['quantity'] !== 'subcooling';
};

/** "We have one walk in" */
const beforeItsName: Means = (tags, frame) => (isOneOfThem(tags) ? null : before(tags, frame));

/** "Thirty eight, that's the box" */
const thatIs: Means = (tags, frame) => (frame.endsAtPause ? beforeItsName(tags, frame) : null);

const told: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  if (quantity === null || isElectrical(quantity) || isOneOfThem(tags)) return null;
  return begins(frame) && isAll(frame) ? asReading()(tags, frame) : null;
};

const boils: Means = (tags, frame) =>
  tags['quantity'] === 'condensingTemp' || tags['quantity'] === 'evaporatingTemp'
    ? told(tags, frame)
    : null;

/** At a place only what its unit or the place itself tells, as behind it. */
const metered: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const { unit, overlimit } = amountIn(tags);
  const isToldSo = unit !== null || overlimit || (place !== null && OHMS_AT[place] !== undefined);
  if ((unit === null && !begins(frame)) || !isAll(frame) || isCutShort(frame)) return null;
  return isToldSo || tags['across'] === true ? one(electrical(tags, place, frame)) : null;
};

const pulled: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  // With its unit it is of nothing that stands before it.
  if ((unit === null && !begins(frame)) || !isAll(frame)) return null;
  return unit === null || unit === 'A' || unit === 'W' || unit === 'kW'
    ? one(drawn(tags, placeId(tags['place']), frame))
    : null;
};

const plated: Means = (tags, frame) => (begins(frame) ? plateItem(tags, frame) : null);

const platedBoth: Means = (tags, frame) => {
  const other = { ...tagsIn(tags['other']), ...tagsIn(tags['item']) };
  const [first, second] = [plated(tags, frame), plateItem(other, frame)];
  if (first === null || second === null) return null;
  return { facts: [...(first.facts ?? []), ...(second.facts ?? [])] };
};

const WHAT = '<isWhat>';
const I_READ = '<iRead>';
const STANDS =
  '[(is|was|are|reads|says|shows|sits|runs|weighs|measures|stands|settled|settles|holds|stays|comes in|came in|comes out|has [got])] [(reading|showing|sitting|running|holding|set|weighing|coming in|got)] [(now|right now|today)] [(at|to|for)] [(now|right now|today)]';
const ITS = '(my|the|our|your)';
const NOW = '[(now|right now|today|at the moment)]';

/** Values told before what they are of. */
export const VALUE_FIRST_RULES: readonly Rule[] = [
  rule('<amount:one> <quantity:first> [and] <amount:two> <quantity:second>', eachBefore, {
    examples: ['ninety one liquid one ten condensing'],
  }),
  rule(
    `${HAVE} <amount:one> <quantity:first> [(and|with)] [(a|an|about a)] <amount:two> <quantity:second>`,
    eachBefore,
    {
      unheard: true,
      examples: ['i have a one sixty five head and an eighteen suction'],
    },
  ),
];

/** One value, told before what it is of or behind who reads it. */
export const FIGURE_FIRST_RULES: readonly Rule[] = [
  rule(`${HAVE} <amount> <quantity>`, beforeItsName, {
    apart: true,
    unheard: true,
    examples: ['one ninety head', 'i have one ninety head'],
  }),
  rule(
    '[(it is|i have|i got|got|at)] <amount> [(and|still|and still)] [(dropping|falling|going (down|up)|climbing|coming (down|up)|holding|steady)] [now] <pause> (that is|that was) [(on|for|off|at)] [(the|my|our)] <quantity>',
    thatIs,
    { unheard: true, only: startsClause, examples: [] },
  ),
  rule(
    '(that is|this is|here is) [(on|for|off)] [(the|my|our)] <quantity> <pause> [(it is|at|reading)] <amount>',
    thatIs,
    { unheard: true, only: startsClause, examples: [] },
  ),
  rule(
    '[(for|on)] [the] <quantity> (i|we) (got|read|see|have got|am getting|am reading|am seeing|are getting|are reading|are seeing) [a] <amount>',
    before,
    { unheard: true, examples: ['suction i got thirty eight'] },
  ),
  rule(
    `<amount> (is|was) ${ITS} [actual] [(temp|temperature|pressure|reading) (of|on|in|at|for) <the>] <quantity> ${NOW}`,
    told,
    {
      examples: ['ninety six is my liquid line'],
    },
  ),
  rule(`<amount> ${WHAT} ${I_READ} (on|for|at|with|off|in) <the> <quantity>`, told, {
    examples: ['one ninety is what i am getting on the head'],
  }),
  rule(`<amount> ${WHAT} ${ITS} <quantity> ${STANDS}`, told, {
    examples: ['two sixty is what the head comes in at'],
  }),
  rule(`<amount> ${WHAT} (it is|we are|i am|she is) <quantity> [at]`, boils, {
    examples: ['a hundred and twelve is where it is condensing'],
  }),
  rule(
    `<amount> ${WHAT} ${I_READ} (across|at|on|from|between|through|over|to) <the> <place>`,
    metered,
    {
      tags: { across: true },
      examples: ['a hundred and twenty volts is what i have got across the thermostat'],
    },
  ),
  rule(
    `<amount> ${WHAT} <the> <place> (is (pulling|drawing|running)|pulls|draws|drew|pulled|runs) [at] [right now]`,
    pulled,
    { examples: ['six hundred watts is what the defrost heater is pulling'] },
  ),
  // What is wanted there was read by nobody.
  rule(
    `<amount> ${WHAT} <the> <place> (should|ought to|is supposed to|has to|needs to|would) [be] [(pulling|drawing|pull|draw|read|reading|have|run|running|hold|show|at)]`,
    () => ({}),
    { examples: ['seven amps is what the compressor should pull'] },
  ),
  rule(
    `<amount> ${WHAT} <the> <place> (measures|reads|shows|tests|ohms|megs|has [got]|is (reading|showing|getting)|gets|comes in|checks) [out] [at]`,
    metered,
    { examples: ['eighteen ohms is what the defrost heater measures'] },
  ),
  rule(`<amount> (is|was) ${ITS} <plateItem>`, plated, {
    examples: ['twenty five is the max fuse'],
  }),
  rule(
    `<amount> (is|was) ${ITS} <plateItem> [<pause>] and <amount:other> [is] [${ITS}] <plateItem:item>`,
    platedBoth,
    { examples: ['twelve point eight is the rla and sixty four the lra'] },
  ),
];

/** "Amb was eighty eight, I had it eighty": behind a reading it is what was written there before. */
const hadIt: Means = (tags, frame) => {
  const { value } = amountIn(tags);
  const otherwise = value === null ? {} : { unclaimed: [String(value)] };
  const words = frame.wordsOf({ from: 0, to: frame.span.from });
  const isPutRight = /\b(?:was|were)\b/i.test(words);
  return { ofThat: { means: () => (isPutRight ? {} : null), otherwise } };
};

/** "Put the head in at one ninety nine": what is set is adjusted so, and no box is written down. */
const putIn: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  return quantity === null || quantity === 'boxTemp' || isSetting(quantity)
    ? null
    : before(tags, frame);
};

/** What is dictated: no memo, as it has a row of its own. */
export const DICTATED_RULES: readonly Rule[] = [
  rule(
    '[(i|we|you can|go ahead and|just)] (put|write|log|mark|enter|stick|jot|note|got) [(the|my|our)] <quantity> (in|down) (at|as|for) <amount>',
    putIn,
    { unheard: true, only: startsClause, examples: ['put the head in at one ninety nine'] },
  ),
  rule(
    '[(and|but)] (i|we|you) (had|have|put|got|wrote) it [(down|in|written down|marked|logged)] [(as|at|for)] <amount> [(before|earlier|wrong|by mistake)]',
    hadIt,
    { unheard: true, examples: [] },
  ),
  rule(
    '((write|jot|mark|note|put|take) down|write in|log|record) [me] (<amount> (for|on|as) [the] <quantity>|[the] <quantity> [(is|at|as|of)] <amount>)',
    before,
    {
      alone: true,
      unheard: true,
      examples: ['write down one ninety for head', 'log suction at thirty eight'],
    },
  ),
];
