import { ONES, TEENS, TENS } from '../terms/number-words.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import type { Said } from './said.ts';

const UNDER_TWENTY = ['oh', ...ONES, ...TEENS];

/** The way the trade says a designation: R-134a is "R one thirty four A", R-404A "R four oh four A". */
export function designation(refrigerant: RefrigerantId): Said {
  const [, digits = '', letters = ''] = /^R-(\d+)(\w*)$/.exec(refrigerant) ?? [];
  const spelled = Array.from(letters.toUpperCase()).join(' ');
  return { text: refrigerant, spoken: ['R', sayDigits(digits), spelled].join(' ').trim() };
}

function sayDigits(digits: string): string {
  if (digits.endsWith('00')) return `${sayPair(digits.slice(0, -2))} hundred`;
  const head = digits.slice(0, -2);
  const tail = digits.slice(-2);
  const pair = tail.startsWith('0') && head !== '' ? `oh ${sayPair(tail.slice(1))}` : sayPair(tail);
  return head === '' ? pair : `${sayPair(head)} ${pair}`;
}

function sayPair(digits: string): string {
  const value = Number(digits);
  if (value < 20) return UNDER_TWENTY[value] ?? '';
  const tens = TENS[Math.floor(value / 10) - 2] ?? '';
  return value % 10 === 0 ? tens : `${tens} ${UNDER_TWENTY[value % 10] ?? ''}`;
}
