import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convert, toBase } from '../../core/units/convert.ts';
import { UNIT_IDS } from '../../core/units/parse-amount.ts';
import type { Amount } from '../../core/units/amount.ts';
import { type UnitId, unitRow } from '../../core/units/units.ts';

/** Between units of one dimension there is always a way. */
function amountIn(amount: Amount, unit: UnitId): Amount {
  const converted = convert(amount, unit);
  if (converted === null) throw new Error(`${amount.unit} does not become ${unit}`);
  return converted;
}

describe('convert', () => {
  it.each([
    // NIST SP 811, appendix B.8 and section B.9 factors, worked by hand
    [{ value: 212, unit: 'degF' }, 'degC', 100],
    [{ value: -40, unit: 'degF' }, 'degC', -40],
    [{ value: 9, unit: 'dF' }, 'dC', 5],
    [{ value: 1, unit: 'psi' }, 'kPa', 6.894757],
    [{ value: 29.921, unit: 'inHg' }, 'kPa', 101.32415],
    [{ value: 1000, unit: 'micron' }, 'kPaa', 0.1333224],
    [{ value: 1, unit: 'lb' }, 'oz', 16],
    [{ value: 5000, unit: 'ft' }, 'm', 1524],
    [{ value: 0.5, unit: 'Mohm' }, 'ohm', 500_000],
    [{ value: 1, unit: 'mmHg' }, 'micron', 1000],
    [{ value: 1, unit: 'ft3' }, 'L', 28.31685],
    [{ value: 1, unit: 'lbPerMcf' }, 'gPerM3', 16.01846],
    [{ value: 4, unit: 'inch' }, 'mm', 101.6],
    [{ value: 1.5, unit: 'h' }, 'min', 90],
  ] as const)('%o to %s', (amount, unit, value) => {
    expect(convert(amount, unit)?.value).toBeCloseTo(value, 4);
  });

  it('refuses to cross a dimension', () => {
    expect(convert({ value: 20, unit: 'psi' }, 'psia')).toBeNull();
    expect(convert({ value: 20, unit: 'degF' }, 'dF')).toBeNull();
  });

  it('is closed: through any third unit of the dimension, the same value comes back', () => {
    const unit = fc.constantFrom(...UNIT_IDS);
    fc.assert(
      fc.property(fc.double({ min: -1e4, max: 1e4, noNaN: true }), unit, unit, (value, a, b) => {
        const there = convert({ value, unit: a }, b);
        expect(there !== null).toBe(unitRow(a).dimension === unitRow(b).dimension);
        if (there === null) return;
        const back = convert(there, a);
        expect(back?.value).toBeCloseTo(value, 6);
      }),
    );
  });

  it('is closed under composition: by way of a third unit it is the same as straight', () => {
    const alike = (id: UnitId): readonly UnitId[] =>
      UNIT_IDS.filter((other) => unitRow(other).dimension === unitRow(id).dimension);
    const ways = fc.constantFrom(...UNIT_IDS).chain((from) => {
      const unit = fc.constantFrom(...alike(from));
      const value = fc.double({ min: -1e4, max: 1e4, noNaN: true });
      return fc.tuple(value, fc.constant(from), unit, unit);
    });
    fc.assert(
      fc.property(ways, ([value, from, by, to]) => {
        const straight = amountIn({ value, unit: from }, to);
        const second = amountIn(amountIn({ value, unit: from }, by), to);
        // A point's offset is added before it is taken away again: 460 of the last places are lost with it.
        const scale = Math.max(1, Math.abs(straight.value), Math.abs(toBase(straight)));
        expect(Math.abs(second.value - straight.value) / scale).toBeLessThan(1e-9);
      }),
      { numRuns: 20_000 },
    );
  });

  it('has one unit in every dimension whose value is the base value itself', () => {
    const dimensions = [...new Set(UNIT_IDS.map((id) => unitRow(id).dimension))];
    const isBase = (id: (typeof UNIT_IDS)[number]): boolean =>
      unitRow(id).factor === 1 && unitRow(id).offset === 0;
    const without = dimensions.filter(
      (each) => !UNIT_IDS.some((id) => unitRow(id).dimension === each && isBase(id)),
    );
    expect(without).toEqual([]);
  });
});
