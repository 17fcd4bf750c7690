import {
  choice,
  named,
  type Node,
  optional,
  sequence,
  summed,
  tag,
  tokenClass,
  unheard,
  word,
} from '../grammar/nodes.ts';
import { parseShape } from '../grammar/shape.ts';

const ONES = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const TEENS = [
  ...['ten', 'eleven', 'twelve', 'thirteen', 'fourteen'],
  ...['fifteen', 'sixteen', 'seventeen', 'eighteen', 'nineteen'],
];
const TENS = ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

/** Words that sound like a digit and are seldom anything else in this trade. */
const SURE_HOMOPHONES: readonly (readonly [string, number])[] = [
  ['won', 1],
  ['ate', 8],
];
/** Ordinary words that are digits only at the end of a number begun: "one forty to". */
const LATE_HOMOPHONES: readonly (readonly [string, number])[] = [
  ['to', 2],
  ['too', 2],
  ['for', 4],
  ['fore', 4],
];

const plus = (text: string, value: number): Node => sequence(word(text), tag({ plus: value }));
const plusEach = (pairs: readonly (readonly [string, number])[], scale: number): readonly Node[] =>
  pairs.map(([text, value]) => plus(text, value * scale));
const times = (text: string, factor: number): Node => sequence(word(text), tag({ times: factor }));

const digit = (scale: number): Node =>
  choice(
    ...ONES.map((text, index) => plus(text, (index + 1) * scale)),
    unheard(choice(...plusEach(SURE_HOMOPHONES, scale), tokenClass('digit', scale))),
  );
const lateDigit = choice(...plusEach(LATE_HOMOPHONES, 1));
const nought = choice(word('oh'), unheard(choice(word('zero'), word('o'), tokenClass('nought'))));
const anyDigit = (scale: number): Node => choice(digit(scale), nought);
const teen = (scale: number): Node =>
  choice(
    ...TEENS.map((text, index) => plus(text, (index + 10) * scale)),
    unheard(tokenClass('teen', scale)),
  );
const tens = (scale: number): Node =>
  choice(
    ...TENS.map((text, index) => plus(text, (index + 2) * 10 * scale)),
    unheard(choice(plus('fourty', 40 * scale), tokenClass('tens', scale))),
  );
/** 10 to 99 */
const pair = (scale: number): Node =>
  choice(
    sequence(tens(scale), optional(digit(scale))),
    teen(scale),
    unheard(tokenClass('pair', scale)),
  );
const underHundred = choice(pair(1), digit(1));
const andUnderHundred = sequence(optional(word('and')), underHundred);

const hundreds = sequence(
  choice(digit(100), plus('a', 100)),
  word('hundred'),
  optional(andUnderHundred),
);
/** "one sixteen", "two ten" */
const droppedHundred = sequence(digit(100), pair(1));
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
const digitByDigit = choice(
  sequence(digit(1000), anyDigit(100), anyDigit(10), anyDigit(1)),
  sequence(digit(100), anyDigit(10), anyDigit(1)),
  sequence(digit(10), anyDigit(1)),
);
/** "twelve hundred", "fifteen fifty", "twelve oh five" */
const inHundreds = sequence(
  choice(teen(100), pair(100)),
  choice(sequence(word('hundred'), optional(andUnderHundred)), pair(1), sequence(nought, digit(1))),
);
const thousands = sequence(
  choice(hundreds, pair(1), digit(1), plus('a', 1)),
  times('thousand', 1000),
  optional(choice(hundreds, andUnderHundred)),
);
const writtenInParts = sequence(tokenClass('round'), digit(1));

const whole = choice(
  hundreds,
  droppedHundred,
  ohInside,
  underHundred,
  word('zero'),
  unheard(
    choice(
      tokenClass('number'),
      thousands,
      digitByDigit,
      inHundreds,
      writtenInParts,
      sequence(tokenClass('number'), choice(times('hundred', 100), times('thousand', 1000))),
    ),
  ),
);

const decimals = choice(
  sequence(anyDigit(0.1), optional(sequence(anyDigit(0.01), optional(anyDigit(0.001))))),
  unheard(choice(pair(0.01), word('zero'))),
);
const point = sequence(choice(word('point'), unheard(word('dot'))), decimals);
const parts = choice(
  parseShape('and a <half>', { half: plus('half', 0.5) }),
  unheard(
    choice(
      parseShape('(and a|a|and one) <quarter>', { quarter: plus('quarter', 0.25) }),
      parseShape('and three <quarters>', { quarters: plus('quarters', 0.75) }),
      parseShape('a <half>', { half: plus('half', 0.5) }),
      parseShape('[and] <fraction>', { fraction: tokenClass('fraction') }),
    ),
  ),
);
const onlyParts = choice(
  sequence(optional(unheard(word('oh'))), point),
  unheard(
    choice(
      tokenClass('fraction'),
      parseShape('[a] <half> [(a|an)]', { half: plus('half', 0.5) }),
      parseShape('three <quarters>', { quarters: plus('quarters', 0.75) }),
    ),
  ),
);

/** A number as spoken or written: its worth is under `number`. */
export const NUMBER = summed(
  'number',
  choice(sequence(whole, optional(choice(point, parts))), onlyParts, unheard(endingLate)),
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

/** A number without anything behind its point. */
export const WHOLE_NUMBER = summed('wholeNumber', whole);

/** How many doors: few enough to be heard apart from other numbers. */
export const COUNT = named(
  'count',
  choice(
    summed('oneToSix', choice(...ONES.slice(0, 6).map((text, index) => plus(text, index + 1)))),
    unheard(NUMBER),
  ),
);

/** The lengths that timers are set to, before any other number. */
export const MINUTES = named(
  'minutes',
  choice(
    summed(
      'roundMinutes',
      choice(
        ...plusEach(
          [
            ['five', 5],
            ['ten', 10],
            ['fifteen', 15],
            ['twenty', 20],
            ['thirty', 30],
          ],
          1,
        ),
      ),
    ),
    unheard(NUMBER),
  ),
);
