import {
  choice,
  type Node,
  optional,
  sequence,
  tag,
  tokenClass,
  unheard,
  word,
  written,
} from '../../grammar/nodes.ts';
import { ONES, TEENS, TENS } from '../../terms/number-words.ts';

export { ONES, TEENS, TENS };

/** Words that sound like a digit and are seldom anything else in this trade. */
const SURE_HOMOPHONES: readonly (readonly [string, number])[] = [
  ['won', 1],
  ['ate', 8],
];

export const plus = (text: string, value: number): Node =>
  sequence(word(text), tag({ plus: value }));
export const plusEach = (
  pairs: readonly (readonly [string, number])[],
  scale = 1,
): readonly Node[] => pairs.map(([text, value]) => plus(text, value * scale));
export const times = (text: string, factor: number): Node =>
  sequence(word(text), tag({ times: factor }));

export const digit = (scale: number): Node =>
  choice(
    ...ONES.map((text, index) => plus(text, (index + 1) * scale)),
    written(choice(...plusEach(SURE_HOMOPHONES, scale), tokenClass('digit', scale))),
  );
export const nought = choice(
  word('oh'),
  unheard(choice(word('zero'), written(word('o')), tokenClass('nought'))),
);
export const anyDigit = (scale: number): Node => choice(digit(scale), nought);
const teenWords = (scale: number): readonly Node[] =>
  TEENS.map((text, index) => plus(text, (index + 10) * scale));
export const teen = (scale: number): Node =>
  choice(...teenWords(scale), unheard(tokenClass('teen', scale)));
const tensWords = (scale: number): readonly Node[] =>
  TENS.map((text, index) => plus(text, (index + 2) * 10 * scale));
export const tens = (scale: number): Node =>
  choice(
    ...tensWords(scale),
    written(choice(plus('fourty', 40 * scale), tokenClass('tens', scale))),
  );
/** 10 to 99 */
export const pair = (scale: number): Node =>
  choice(
    sequence(tens(scale), optional(digit(scale))),
    teen(scale),
    unheard(tokenClass('pair', scale)),
  );
/** 10 to 99 in words: "15 50" is two numbers, "fifteen fifty" is one. */
export const pairInWords = (scale: number): Node =>
  choice(sequence(choice(...tensWords(scale)), optional(digit(scale))), ...teenWords(scale));
/** The same without the round ones: "fifty sixty" is two numbers, "fifty two sixty" is one. */
export const unevenPairInWords = (scale: number): Node =>
  choice(sequence(choice(...tensWords(scale)), digit(scale)), ...teenWords(scale));
export const underHundred = choice(pair(1), digit(1));
export const andUnderHundred = sequence(optional(word('and')), underHundred);

/** "two hundred and six"; and where the hundreds' figure was swallowed, "hundred and six". */
export const hundreds = sequence(
  choice(
    sequence(choice(digit(100), plus('a', 100)), word('hundred')),
    unheard(plus('hundred', 100)),
  ),
  optional(andUnderHundred),
);
