import { describe, expect, it } from 'vitest';
import { parseAmount, UNIT_IDS, unitsWritten } from '../../core/units/parse-amount.ts';
import { unitRow } from '../../core/units/units.ts';

describe('parseAmount', () => {
  it.each([
    ['20psi', 20, 'psi'],
    ['20 psig', 20, 'psi'],
    ['20PSI', 20, 'psi'],
    ['-4inHg', -4, 'inHg'],
    ['30F', 30, 'degF'],
    ['−4°F', -4, 'degF'],
    ['14.7psia', 14.7, 'psia'],
    ['10dF', 10, 'dF'],
    ['5000ft', 5000, 'ft'],
    ['.5Mohm', 0.5, 'Mohm'],
    ['60Hz', 60, 'Hz'],
    ['180days', 180, 'day'],
  ] as const)('reads %s', (text, value, unit) => {
    expect(parseAmount(text)).toEqual({ kind: 'amount', amount: { value, unit } });
  });

  it.each([
    ['psi', 'begin with a number'],
    ['', 'begin with a number'],
    ['20', 'has no unit'],
    ['20 bananas', '"bananas" is no unit'],
    ['1e3psi', '"e3psi" is no unit'],
    [`${'9'.repeat(400)}psi`, 'too large'],
  ])('says what to do with "%s"', (text, part) => {
    const parsed = parseAmount(text);
    expect(parsed.kind === 'bad' && parsed.message).toContain(part);
  });

  it('gives a bare number the unit its key has', () => {
    expect(parseAmount('180', 'day')).toEqual({
      kind: 'amount',
      amount: { value: 180, unit: 'day' },
    });
  });

  it('has no two units written alike, whatever the case', () => {
    const names = UNIT_IDS.flatMap((id) => unitRow(id).written.map((name) => name.toLowerCase()));
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
  });

  it('names the units a dimension accepts', () => {
    expect(unitsWritten(['gaugePressure'])).toBe('psi, inHg, kPa, bar');
  });
});
