import {
  choice,
  type Node,
  optional,
  sequence,
  tag,
  tokenClass,
  word,
} from '../../grammar/nodes.ts';
import { hundreds, plus, times, underHundred } from './number-words.ts';

interface Scale {
  readonly name: string;
  /** What its name does to the figures before it, and which smaller groups may follow. */
  readonly tail: Node;
}

/** What a group of three figures is counted in, smallest first. */
const NAMES: readonly (readonly [string, number])[] = [
  ['thousand', 1e3],
  ['million', 1e6],
  ['billion', 1e9],
  ['trillion', 1e12],
  ['quadrillion', 1e15],
  ['quintillion', 1e18],
];

const inside = choice(hundreds, underHundred);

const counted = (scales: readonly Scale[]): Node =>
  choice(...scales.map(({ name, tail }) => sequence(choice(word(name), word(`${name}s`)), tail)));

/** "thousand and six", "million two hundred thousand and six": groups follow in ever smaller scales. */
const SCALES = NAMES.reduce<readonly Scale[]>((smaller, [name, factor]) => {
  const group = smaller.length === 0 ? inside : sequence(inside, optional(counted(smaller)));
  const rest = optional(sequence(optional(word('and')), group));
  return [...smaller, { name, tail: sequence(tag({ aside: factor }), rest) }];
}, []);

/** What may follow a group of figures and makes it a larger number. */
export const IN_SCALES = choice(
  counted(SCALES),
  sequence(choice(word('dozen'), word('dozens')), tag({ times: 12 })),
);

/** "a million", "a dozen", and where the one was left unsaid, "thousand nine hundred". */
export const BARE_SCALE = choice(
  sequence(
    choice(plus('a', 1), tag({ plus: 1 })),
    choice(...SCALES.map(({ name, tail }) => sequence(word(name), tail))),
  ),
  sequence(plus('a', 1), times('dozen', 12)),
);

/** "5 hundred", "1.5 million" */
export const FIGURES_IN_SCALES = sequence(
  tokenClass('number'),
  choice(IN_SCALES, times('hundred', 100)),
);
