import type { Amount } from './amount.ts';
import { unitRow } from './units.ts';

/** Binary fractions of a tenth are off by about 1e-16 of themselves; a converted value by a little more. */
const SAME = 1e-9;

function hasOneDecimal(value: number): boolean {
  return Math.abs(value * 10 - Math.round(value * 10)) < SAME * Math.max(1, Math.abs(value));
}

/** Psi are whole, unless one was said to the tenth: a dial is read to the pound, a digital gauge to the tenth. */
function decimalsFor({ value, unit }: Amount): number {
  if (unit === 'psi') return hasOneDecimal(value) ? 1 : 0;
  // A plate of a small charge gives it to the hundredth.
  if (unit === 'oz' && hasOneDecimal(value * 10)) return 2;
  return unitRow(unit).decimals;
}

/** The digits alone, rounded half away from zero, without trailing zeros and never "-0". */
export function formatNumber(value: number, decimals: number): string {
  const scale = 10 ** decimals;
  const rounded = (Math.sign(value) * Math.round(Math.abs(value) * scale + SAME)) / scale;
  return String(rounded === 0 ? 0 : rounded);
}

/** For the screen and the note: the unit's own rounding, and its symbol. Vacuum keeps its minus sign. */
export function formatAmount(amount: Amount): { digits: string; symbol: string } {
  return {
    digits: formatNumber(amount.value, decimalsFor(amount)),
    symbol: unitRow(amount.unit).symbol,
  };
}

/** Whether it is told as nothing at all, as 0.3 psi is where pressures are told in whole ones. */
export const readsNothing = (amount: Amount): boolean => Number(formatAmount(amount).digits) === 0;

/** For a speech synthesiser: "106.7 degrees", "4 inches of vacuum", "minus 3 degrees", "1 pound". */
export function sayAmount(amount: Amount): string {
  const { digits } = formatAmount(amount);
  const size = digits.replace('-', '');
  const { one, many } = unitRow(amount.unit).spoken;
  const words = `${size} ${size === '1' ? one : many}`;
  if (!digits.startsWith('-')) return words;
  return amount.unit === 'inHg' ? `${words} of vacuum` : `minus ${words}`;
}
