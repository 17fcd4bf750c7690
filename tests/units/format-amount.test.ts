import { describe, expect, it } from 'vitest';
import { formatAmount, sayAmount } from '../../core/units/format-amount.ts';

describe('formatAmount', () => {
  it.each([
    [{ value: 191.7634, unit: 'psi' }, '192', 'psi'],
    [{ value: 188.5, unit: 'psi' }, '188.5', 'psi'],
    [{ value: 188.49999999999997, unit: 'psi' }, '188.5', 'psi'],
    [{ value: -0.2, unit: 'kPa' }, '0', 'kPa'],
    [{ value: 106.72, unit: 'degF' }, '106.7', '°F'],
    [{ value: 106.96, unit: 'degF' }, '107', '°F'],
    [{ value: -4.2, unit: 'inHg' }, '-4.2', 'inHg'],
    [{ value: 12.3, unit: 'A' }, '12.3', 'A'],
    [{ value: 7.94126, unit: 'ratio' }, '7.9', ':1'],
    [{ value: 20.2778, unit: 'percent' }, '20.3', '%'],
  ] as const)('%o', (amount, digits, symbol) => {
    expect(formatAmount(amount)).toEqual({ digits, symbol });
  });
});

describe('sayAmount', () => {
  it.each([
    [{ value: 192, unit: 'psi' }, '192 P S I'],
    [{ value: -4, unit: 'inHg' }, '4 inches of vacuum'],
    [{ value: -1, unit: 'inHg' }, '1 inch of vacuum'],
    [{ value: 106.72, unit: 'degF' }, '106.7 degrees'],
    [{ value: 1, unit: 'dF' }, '1 degree'],
    [{ value: -4, unit: 'degF' }, 'minus 4 degrees'],
    [{ value: 0, unit: 'degF' }, '0 degrees'],
    [{ value: 1, unit: 'lb' }, '1 pound'],
    [{ value: 7.94126, unit: 'ratio' }, '7.9 to one'],
  ] as const)('%o', (amount, words) => {
    expect(sayAmount(amount)).toBe(words);
  });
});
