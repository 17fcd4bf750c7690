import type { UnitFrom } from '../language/utterance.ts';
import type { Amount } from '../units/amount.ts';
import { formatAmount, formatNumber, sayAmount } from '../units/format-amount.ts';
import { SHOWN_UNITS, type UnitHabit } from '../units/shown-unit.ts';
import { unitRow, type UnitId } from '../units/units.ts';
import { join, line, plain, type Said } from './said.ts';

/** A computed or shown value: rounded as its unit is, with the unit. */
export function figure(amount: Amount): Said {
  return { text: figureText(amount), spoken: sayAmount(amount) };
}

export function figureText(amount: Amount): string {
  const { digits, symbol } = formatAmount(amount);
  return withSymbol(digits, symbol);
}

/** Ratio and percent signs stand against their number, other units a space apart. */
export function withSymbol(digits: string, symbol: string): string {
  return /^[:%]/.test(symbol) ? `${digits}${symbol}` : `${digits} ${symbol}`;
}

/** The number as it was said: nothing said is rounded away, so 12.34 stays 12.34. */
export function heardNumber(value: number): string {
  return formatNumber(value, 6);
}

interface Heard {
  readonly value: number;
  readonly unit: UnitId | null;
}

/**
 * A value said back for checking. The visit's own pressure and temperature units go unsaid, as a colleague
 * leaves them out; any other is said, since "head 12.8" in psi would not be noticed as a slip for bar.
 */
export function readBack({ value, unit }: Heard, units: UnitHabit): Said {
  const digits = heardNumber(value);
  if (unit === null || isHabitual(unit, units)) return { text: digits, spoken: checkable(digits) };
  const { symbol, spoken } = unitRow(unit);
  const words = Math.abs(value) === 1 ? spoken.one : spoken.many;
  return { text: withSymbol(digits, symbol), spoken: `${checkable(digits)} ${words}` };
}

const OUNCES_A_POUND = 16;

interface Worded {
  readonly value?: number;
  readonly unit: UnitId | null;
  readonly words: string;
  readonly unitFrom?: UnitFrom;
}

/** "Seven pounds eight ounces" is kept as 120 ounces, and said back and written down as it was said. */
export function poundsAndOunces({ value, unit, words, unitFrom }: Worded): Said | null {
  if (unit !== 'oz' || value === undefined) return null;
  // "Thirty six twelve" has no unit of its own.
  const isCompound = unitFrom === 'implied' || /pound|\blbs?\b/i.test(words);
  return isCompound ? inPounds(value) : null;
}

/** A weight of a pound and more, as a scale shows it. */
export function inPounds(ounces: number): Said {
  const pounds = Math.trunc(ounces / OUNCES_A_POUND);
  const rest = Number((ounces - pounds * OUNCES_A_POUND).toFixed(2));
  const each = [
    ...(pounds === 0 ? [] : [figure({ value: pounds, unit: 'lb' })]),
    ...(rest === 0 && pounds !== 0 ? [] : [figure({ value: rest, unit: 'oz' })]),
  ];
  return join(each, ' ');
}

/** A pound and more as a scale shows it; under that, and in metric, the plain figure. */
export function weight(amount: Amount): Said {
  const isPounds = amount.unit === 'oz' && Math.abs(amount.value) >= OUNCES_A_POUND;
  return isPounds ? inPounds(amount.value) : figure(amount);
}

export const weightText = (amount: Amount): string => weight(amount).text;

export function isHabitual(unit: UnitId, units: UnitHabit): boolean {
  const { gaugePressure, temperature, temperatureDifference } = SHOWN_UNITS[units];
  return [gaugePressure, temperature, temperatureDifference].some((own) => own === unit);
}

export function heardDigits(digits: string): Said {
  return { text: digits, spoken: checkable(digits) };
}

export function counted(count: number, noun: string): Said {
  return line`${String(count)} ${plain(count === 1 ? noun : `${noun}s`)}`;
}

const DIGIT_NAMES: Readonly<Record<string, string>> = {
  '0': 'zero',
  '1': 'one',
  '2': 'two',
  '3': 'three',
  '4': 'four',
  '5': 'five',
  '6': 'six',
  '7': 'seven',
  '8': 'eight',
  '9': 'nine',
  '.': 'point',
};

/** "Fifteen" and "fifty" differ by a breath, in a fan's noise by nothing: 13 to 19 and 30 to 90 in tens. */
const TEEN_OR_TY = /(1[3-9]|[3-9]0)$/;

/** A number as a synthesiser should say it so that a slip of hearing is noticed: "one five, 15". */
export function checkable(digits: string): string {
  const size = digits.replace(/^-/, '');
  const sign = size === digits ? '' : 'minus ';
  const confusable = TEEN_OR_TY.test(size) || size.includes('.');
  if (!confusable) return `${sign}${size}`;
  return `${sign}${spelled(size)}, ${sign}${size}`;
}

function spelled(digits: string): string {
  return Array.from(digits, (digit) => DIGIT_NAMES[digit] ?? digit).join(' ');
}
