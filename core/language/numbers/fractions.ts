import {
  choice,
  type Node,
  optional,
  sequence,
  tag,
  tokenClass,
  unheard,
  word,
} from '../../grammar/nodes.ts';
import { parseShape } from '../../grammar/shape.ts';
import { anyDigit, digit, pair, plus, teen, times } from './number-words.ts';

/** More than three figures behind a point are read and not listened for. */
const HEARD_PLACES = 3;
const PLACES = 9;

/** Figures one by one, each a tenth of the one before it. */
function figuresFrom(place: number): Node {
  const figure = anyDigit(10 ** -place);
  if (place === PLACES) return figure;
  const more = figuresFrom(place + 1);
  return sequence(figure, optional(place < HEARD_PLACES ? more : unheard(more)));
}

const decimals = choice(figuresFrom(1), unheard(choice(pair(0.01), word('zero'))));

/** "point oh five" */
export const POINT = sequence(choice(word('point'), unheard(word('dot'))), decimals);

/** Named by the place in a row that they share, but for half and quarter. */
const DENOMINATORS: readonly (readonly [one: string, many: string, parts: number])[] = [
  ['half', 'halves', 2],
  ['third', 'thirds', 3],
  ['quarter', 'quarters', 4],
  ['fourth', 'fourths', 4],
  ['fifth', 'fifths', 5],
  ['sixth', 'sixths', 6],
  ['seventh', 'sevenths', 7],
  ['eighth', 'eighths', 8],
  ['ninth', 'ninths', 9],
  ['tenth', 'tenths', 10],
  ['twelfth', 'twelfths', 12],
  ['sixteenth', 'sixteenths', 16],
];

const onePart = choice(...DENOMINATORS.map(([one, , parts]) => times(one, 1 / parts)));
const parts = choice(...DENOMINATORS.map(([, many, parts]) => times(many, 1 / parts)));

/** "two thirds", "one eighth": "a third" by itself is a place in a row. */
export const FRACTION = choice(
  sequence(choice(pair(1), digit(1)), parts),
  sequence(plus('one', 1), onePart),
);

/** Less than a whole: "a hundred and thirty fifths" is not a hundred and six. */
const lessThanWhole = choice(
  sequence(choice(digit(1), teen(1)), parts),
  // "nine and three quarter ounces"
  sequence(plus('three', 3), times('quarter', 1 / 4)),
  sequence(choice(plus('one', 1), plus('a', 1), plus('an', 1)), onePart),
);

const half = plus('half', 0.5);
const quarter = plus('quarter', 0.25);

/** What may follow a whole number: "and a half", "and two thirds". */
export const AND_PARTS = choice(
  parseShape('and a <half>', { half }),
  unheard(
    choice(
      parseShape('and <aside> <lessThanWhole>', { aside: tag({ aside: 1 }), lessThanWhole }),
      parseShape('a (<half>|<quarter>)', { half, quarter }),
      parseShape('[and] <fraction>', { fraction: tokenClass('fraction') }),
    ),
  ),
);

/** A number below one, by itself. */
export const ONLY_PARTS = choice(
  sequence(optional(unheard(word('oh'))), POINT),
  unheard(
    choice(
      tokenClass('fraction'),
      FRACTION,
      parseShape('[a] <half> [(a|an|a <dozen>)]', { half, dozen: times('dozen', 12) }),
      parseShape('a <quarter>', { quarter }),
      // "Three quarter pound"
      sequence(plus('three', 3), times('quarter', 1 / 4)),
    ),
  ),
);
