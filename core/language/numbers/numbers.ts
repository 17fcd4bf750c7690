import {
  choice,
  greedy,
  named,
  type Node,
  optional,
  sequence,
  shortly,
  summed,
  tag,
  tokenClass,
  unheard,
  word,
  written,
} from '../../grammar/nodes.ts';
import { parseShape } from '../../grammar/shape.ts';
import { AND_PARTS, ONLY_PARTS, POINT } from './fractions.ts';
import { BARE_SCALE, FIGURES_IN_SCALES, IN_SCALES } from './large-numbers.ts';
import {
  andUnderHundred,
  anyDigit,
  digit,
  hundreds,
  nought,
  ONES,
  pair,
  pairInWords,
  plus,
  plusEach,
  TEENS,
  tens,
  underHundred,
  unevenPairInWords,
} from './number-words.ts';

/** Ordinary words that are digits only at the end of a number begun: "one forty to". */
const LATE_HOMOPHONES: readonly (readonly [string, number])[] = [
  ['to', 2],
  ['too', 2],
  ['for', 4],
  ['fore', 4],
];

const lateDigit = choice(...plusEach(LATE_HOMOPHONES));

/** "one sixteen", "two ten" */
const droppedHundred = sequence(digit(100), pair(1));
/** "too twelve": before a number of two figures it is the two of two hundred and twelve. */
const tooHundred = sequence(plus('too', 200), pair(1));
/** "a buck eighty five" */
const buck = sequence(word('a'), plus('buck', 100), pair(1));
/** "one oh four" */
const ohInside = sequence(digit(100), nought, digit(1));
/** "one forty to", "one oh for", "a hundred and twenty to": nothing more of the number can follow. */
const endingLate = choice(
  sequence(
    optional(
      choice(
        digit(100),
        sequence(choice(digit(100), plus('a', 100)), word('hundred'), optional(word('and'))),
      ),
    ),
    tens(1),
    lateDigit,
  ),
  sequence(digit(100), nought, lateDigit),
);
/** More figures than these are no number but a serial number's beginning. */
const MOST_FIGURES = 12;
/** Each figure moves those before it one place up; all that follow belong to the number. */
const moreFigures = (count: number): Node => {
  const next = sequence(tag({ times: 10 }), anyDigit(1));
  return count === 1 ? next : sequence(next, greedy(moreFigures(count - 1)));
};
/** "one four six" */
const digitByDigit = sequence(digit(1), moreFigures(MOST_FIGURES - 1));
/** "double four", "one double six" */
const doubled = choice(
  sequence(word('double'), digit(11)),
  sequence(digit(1), tag({ times: 100 }), word('double'), choice(digit(11), nought)),
);
/** "twelve hundred", "fifteen fifty", "twelve oh five" */
const inHundreds = choice(
  sequence(
    pairInWords(100),
    choice(sequence(word('hundred'), optional(andUnderHundred)), sequence(nought, digit(1))),
  ),
  sequence(unevenPairInWords(100), pair(1)),
);
const writtenInParts = sequence(tokenClass('round'), digit(1));

const zero = choice(word('zero'), unheard(choice(word('nought'), word('naught'), word('nil'))));

/** The whole numbers that are listened for, no figure written out where it can be shared. */
const heardWhole = parseShape(
  '([(<ones>|a) hundred [and]|<ones>] <pair>|(<ones>|a) hundred [[and] <ones>]|<ones> [oh <ones>]|zero)',
  { ones: choice(...ONES.map(word)), pair: pairInWords(1) },
);

const whole = shortly(
  [
    sequence(
      choice(
        hundreds,
        droppedHundred,
        ohInside,
        underHundred,
        unheard(
          choice(
            written(choice(tooHundred, doubled)),
            buck,
            inHundreds,
            digitByDigit,
            writtenInParts,
          ),
        ),
      ),
      optional(unheard(IN_SCALES)),
    ),
    zero,
    unheard(choice(tokenClass('integer'), BARE_SCALE, FIGURES_IN_SCALES)),
  ],
  heardWhole,
);

/** A number as spoken or written: its worth is under `number`. */
export const NUMBER = summed(
  'number',
  choice(
    sequence(whole, optional(choice(sequence(POINT, optional(unheard(IN_SCALES))), AND_PARTS))),
    ONLY_PARTS,
    // "12.5 point two" is two numbers.
    unheard(choice(tokenClass('decimal'), written(endingLate))),
  ),
);

/** As clamps show amps: one figure behind the point at most, so that the next leg's begins behind it. */
export const TENTHS = summed(
  'tenths',
  choice(
    sequence(
      underHundred,
      optional(choice(sequence(word('point'), anyDigit(0.1)), written(AND_PARTS))),
    ),
    sequence(word('point'), anyDigit(0.1)),
    plus('zero', 0),
    tokenClass('decimal'),
    tokenClass('integer'),
  ),
);

/** Of three figures at most, as pressures and temperatures are. */
export const SHORT_NUMBER = summed(
  'shortNumber',
  choice(hundreds, droppedHundred, ohInside, underHundred, unheard(tokenClass('integer'))),
);

const BELOW = tag({ negative: true });

/** A number with its sign, as it is asked about where no rule claims it. */
export const SIGNED_NUMBER = named(
  'signedNumber',
  choice(
    sequence(NUMBER, optional(parseShape('(below|under) zero <below>', { below: BELOW }))),
    parseShape('(minus|negative) <below> <number>', { number: NUMBER, below: BELOW }),
  ),
);

/** A number that is not parts alone: "fifteen and three quarters" holds no "and" between two numbers. */
export const COUNTED_NUMBER = summed(
  'countedNumber',
  choice(sequence(whole, optional(choice(POINT, AND_PARTS))), unheard(tokenClass('decimal'))),
);

/** Ounces behind pounds: sixteen of them would be a pound. */
export const UNDER_SIXTEEN = summed(
  'underSixteen',
  choice(
    ...[...ONES, ...TEENS.slice(0, 6)].map((text, index) => plus(text, index + 1)),
    tokenClass('digit'),
    tokenClass('teen'),
  ),
);

/** Grams behind kilos: fewer than a hundred of them would be said with their unit. */
export const HUNDREDS_OF_GRAMS = summed(
  'hundredsOfGrams',
  choice(hundreds, droppedHundred, tokenClass('integer')),
);

/** A number without anything behind its point. */
export const WHOLE_NUMBER = summed('wholeNumber', whole);

/** What a can is marked: under a hundred, so that the "and" of its two figures is no part of either. */
export const RATING = summed(
  'rating',
  choice(
    sequence(
      underHundred,
      optional(choice(POINT, parseShape('and a <half>', { half: plus('half', 0.5) }))),
    ),
    unheard(choice(tokenClass('decimal'), tokenClass('integer'))),
  ),
);

/** How many doors: few enough to be heard apart from other numbers. */
export const COUNT = named(
  'count',
  choice(
    summed('oneToSix', choice(...ONES.slice(0, 6).map((text, index) => plus(text, index + 1)))),
    unheard(
      summed('singleToTriple', choice(plus('single', 1), plus('double', 2), plus('triple', 3))),
    ),
    unheard(NUMBER),
  ),
);

/** Which of several: few enough that a reading may follow in the same breath. */
export const NTH = summed(
  'nth',
  choice(
    ...ONES.slice(0, 6).map((text, index) => plus(text, index + 1)),
    unheard(tokenClass('digit')),
  ),
);

/** The lengths that timers are set to, before any other number. */
export const MINUTES = named(
  'minutes',
  choice(
    summed(
      'roundMinutes',
      choice(
        ...plusEach([
          ['five', 5],
          ['ten', 10],
          ['fifteen', 15],
          ['twenty', 20],
          ['thirty', 30],
        ]),
      ),
    ),
    unheard(NUMBER),
  ),
);
