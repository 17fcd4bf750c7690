/**
 * Ways to make a right sentence wrong. Each gives only sentences that say something else than the one it was
 * given, or nothing where it finds nothing to spoil: what is left the same would prove nothing.
 */
export type Spoiler = (sentence: string) => readonly string[];

const NUMBER = /(?<![\w.-])-?\d+(?:\.\d+)?(?![\w-]|\.\d)/g;

interface Found {
  readonly at: number;
  readonly written: string;
}

const numbersIn = (sentence: string): readonly Found[] =>
  Array.from(sentence.matchAll(NUMBER), ({ index, 0: written }) => ({ at: index, written }));

/** The sentence with the found piece written otherwise. */
const put = (sentence: string, { at, written }: Found, otherwise: string): string =>
  sentence.slice(0, at) + otherwise + sentence.slice(at + written.length);

/** Another number that the sentence does not hold already, so that it cannot be right by luck. */
const eachNumber =
  (otherwise: (written: string) => string): Spoiler =>
  (sentence) => {
    const numbers = numbersIn(sentence);
    return numbers.flatMap((found) => {
      const other = otherwise(found.written);
      return numbers.some(({ written }) => written === other) ? [] : [put(sentence, found, other)];
    });
  };

const otherDigit = (digit: string): string => String((Number(digit) + 1) % 10);

function swappedDigits(written: string): string {
  const at = Array.from(written).findIndex(
    (digit, index) =>
      /\d/.test(digit) && /\d/.test(written[index + 1] ?? '') && digit !== written[index + 1],
  );
  if (at < 0) return written;
  return (
    written.slice(0, at) + (written[at + 1] ?? '') + (written[at] ?? '') + written.slice(at + 2)
  );
}

const ONES = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const spelled = (written: string): string =>
  Array.from(written, (digit) => ONES[Number(digit)] ?? (digit === '.' ? 'point' : 'minus')).join(
    ' ',
  );

const UNITS: readonly (readonly [string, string])[] = [
  ['psi', 'bar'],
  ['psi', 'psia'],
  ['°F', '°C'],
  ['°F', 'K'],
  ['min', 'h'],
  ['min', 's'],
  ['oz', 'lb'],
  ['lb', 'kg'],
  ['V', 'A'],
  ['A', 'V'],
  ['MΩ', 'kΩ'],
  ['Ω', 'kΩ'],
  ['µF', 'A'],
  ['micron', 'psi'],
];

const unitChanged: Spoiler = (sentence) =>
  UNITS.flatMap(([unit, other]) => {
    const at = sentence.search(new RegExp(`(?<=\\d )${unit}(?![\\w/])`));
    return at < 0 ? [] : [put(sentence, { at, written: unit }, other)];
  });

/** Two different numbers, with their units, in each other's place. */
const numbersExchanged: Spoiler = (sentence) => {
  const amounts = Array.from(
    sentence.matchAll(
      /(?<![\w.-])-?\d+(?:\.\d+)?(?: (?:psi|°F|oz|lb|V|A|Ω|MΩ|µF|micron|min)(?![\w/]))/g,
    ),
    ({ index, 0: written }) => ({ at: index, written }),
  );
  const [first, second] = amounts;
  if (!first || !second || first.written === second.written) return [];
  return [put(put(sentence, second, first.written), first, second.written)];
};

/** Words for their opposite, or for something weaker or stronger: whole words, one at a time. */
const WORDS: readonly (readonly [string, string])[] = [
  ['over', 'under'],
  ['under', 'over'],
  ['above', 'below'],
  ['below', 'above'],
  ['inside', 'past'],
  ['past', 'inside'],
  ['up', 'down'],
  ['down', 'up'],
  ['rose', 'fell'],
  ['fell', 'rose'],
  ['higher', 'lower'],
  ['lower', 'higher'],
  ['high', 'low'],
  ['low', 'high'],
  ['early', 'late'],
  ['late', 'early'],
  ['lost', 'gained'],
  ['gained', 'lost'],
  ['more', 'less'],
  ['less', 'more'],
  ['open', 'closed'],
  ['closed', 'open'],
  ['passes', 'fails'],
  ['fails', 'passes'],
  ['weak', 'good'],
  ['good', 'weak'],
  ['steady', 'moving'],
  ['leak', 'moisture'],
  ['moisture', 'leak'],
  ['tight', 'leaking'],
  ['start winding', 'run winding'],
  ['run winding', 'start winding'],
  ['most likely', 'certainly'],
  ['most likely', 'surely'],
  ['may be', 'is surely'],
  ['can be', 'is surely'],
  ['could be', 'is surely'],
  ['must', 'may'],
  ['must', 'should'],
  ['has to', 'may'],
  ['has to', 'could'],
  ['never', 'seldom'],
  ['at most', 'at least'],
  ['at least', 'at most'],
  ['no more than', 'no less than'],
  ['not before', 'before'],
  ['before', 'after'],
  ['after', 'before'],
  ['within', 'beyond'],
  ['cannot', 'can'],
  ['should be', 'reads'],
  ['left', 'gone'],
  ['nothing', 'something'],
  ['neither', 'both'],
  ['condenser', 'evaporator'],
  ['evaporator', 'condenser'],
  ['compressor', 'condenser'],
  ['suction', 'liquid'],
  ['head', 'suction'],
  ['superheat', 'subcooling'],
  ['subcooling', 'superheat'],
  ['high-pressure', 'low-pressure'],
  ['low-pressure', 'high-pressure'],
  ['line', 'load'],
  ['dirty', 'clean'],
  ['air', 'water'],
  ['frozen', 'thawed'],
  ['recover', 'vent'],
  ['dry nitrogen', 'oxygen'],
  ['lock out', 'switch on'],
  ['leave it off', 'leave it on'],
  ['keep it off', 'keep it on'],
  ['shut it down', 'keep it running'],
  ['shut it down', 'think about shutting it down'],
  ['replace it', 'you could replace it'],
  ['find it', 'leave it'],
  ['read it again', 'never mind it'],
];

const wordChanged: Spoiler = (sentence) =>
  WORDS.flatMap(([word, other]) => {
    const found = new RegExp(`\\b${word}\\b`, 'i').exec(sentence);
    return found ? [put(sentence, { at: found.index, written: found[0] }, other)] : [];
  });

/** "Not" and "no" left out. "No more than" and "no air" turn round; "Nothing" is a word of its own. */
const negationDropped: Spoiler = (sentence) =>
  Array.from(sentence.matchAll(/\b(?:do not|does not|don't|not|no|never|neither) /gi), (found) =>
    put(sentence, { at: found.index, written: found[0] }, ''),
  );

const negationAdded: Spoiler = (sentence) =>
  Array.from(sentence.matchAll(/\b(?:is|are|has|reads|holds|be) /g), ({ index, 0: written }) =>
    put(sentence, { at: index, written }, `${written}not `),
  );

/** Cyrillic letters, a letter for a digit, a dash, a space that does not break. */
const LOOK_ALIKES: readonly (readonly [string, string])[] = [
  ['a', '\u0430'],
  ['e', '\u0435'],
  ['o', '\u043e'],
  ['1', 'l'],
  ['0', 'O'],
  ['-', '\u2013'],
  [' ', '\u00a0'],
];

const lookAlike: Spoiler = (sentence) =>
  LOOK_ALIKES.flatMap(([letter, other]) => {
    const at = sentence.indexOf(letter);
    return at < 0 ? [] : [put(sentence, { at, written: letter }, other)];
  });

const EXTRA: readonly string[] = [
  'That is safe.',
  'It is safe to run.',
  'You can leave it.',
  'No need to check.',
  'Replace the compressor.',
  'It is fine.',
  'Do not worry.',
  'That is 4321 psi.',
  'Add gas.',
  'Vent it.',
  'Bypass the switch.',
  'It may be the compressor.',
  'Most likely a bad board.',
];

const claimAdded: Spoiler = (sentence) =>
  EXTRA.filter((claim) => !sentence.includes(claim)).flatMap((claim) => [
    `${sentence} ${claim}`,
    `${claim} ${sentence}`,
  ]);

const HEDGES: readonly (readonly [string, string])[] = [
  [' is ', ' is hardly '],
  [' is ', ' may be '],
  [' is ', ' is only '],
  [' is ', ' is almost '],
  [': ', ': maybe '],
  ['. ', '. If you like, '],
  ['. ', '. Unless it is late, '],
  [' and ', ' or '],
  [' or ', ' and '],
];

const hedged: Spoiler = (sentence) =>
  HEDGES.flatMap(([from, to]) =>
    sentence.includes(from) ? [sentence.replace(from, () => to)] : [],
  );

const asked: Spoiler = (sentence) => [sentence.replace(/\.$/, '?')];

export const SPOILERS: Readonly<Record<string, Spoiler>> = {
  digitChanged: eachNumber((written) => written.replace(/\d(?=\D*$)/, otherDigit)),
  digitAdded: eachNumber((written) => `${written}0`.replace(/^(-?\d+)\.(\d+)0$/, '$1$2')),
  digitsSwapped: eachNumber(swappedDigits),
  signChanged: eachNumber((written) =>
    Number(written) === 0 ? written : written.startsWith('-') ? written.slice(1) : `-${written}`,
  ),
  numberSpelled: eachNumber(spelled),
  numberDropped: (sentence) =>
    numbersIn(sentence).map((found) => put(sentence, found, '').replaceAll('  ', ' ')),
  unitChanged,
  numbersExchanged,
  wordChanged,
  negationDropped,
  negationAdded,
  lookAlike,
  claimAdded,
  hedged,
  asked,
};
