import { choice, named } from '../../grammar/nodes.ts';
import { parseShape } from '../../grammar/shape.ts';
import { TENS } from './number-words.ts';
import { NUMBER } from './numbers.ts';

const FIRST_TO_NINTH = '(first|second|third|fourth|fifth|sixth|seventh|eighth|ninth)';
const TENTH_ON =
  '(tenth|eleventh|twelfth|thirteenth|fourteenth|fifteenth|sixteenth|seventeenth|eighteenth|nineteenth|twentieth|thirtieth|fortieth|fiftieth|sixtieth|seventieth|eightieth|ninetieth)';

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
