import { choice, named } from '../../grammar/nodes.ts';
import { parseShape } from '../../grammar/shape.ts';
import { ONES_IN_ROW, TEENS_IN_ROW, TENS, TENS_IN_ROW } from '../../terms/number-words.ts';
import { NUMBER } from './numbers.ts';

const FIRST_TO_NINTH = `(${ONES_IN_ROW.join('|')})`;
const TENTH_ON = `(${[...TEENS_IN_ROW, ...TENS_IN_ROW].join('|')})`;

/** A place in a row behind a number's beginning, which alone would be taken for an amount: "twenty first". */
export const ORDINAL = named(
  'ordinal',
  choice(
    parseShape('<number> (st|nd|rd|th)', { number: NUMBER }),
    parseShape(`(${TENS.join('|')}) ${FIRST_TO_NINTH}`),
    parseShape(
      `[<number>] (hundred|thousand) [and] [(${TENS.join('|')})] (${FIRST_TO_NINTH}|${TENTH_ON})`,
      { number: NUMBER },
    ),
    parseShape('<number> (hundredth|thousandth)', { number: NUMBER }),
  ),
);
