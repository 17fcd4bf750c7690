import { describe, expect, it } from 'vitest';
import { saturationTemperature } from '../../core/calculations/saturation.ts';
import { subcooling, superheat } from '../../core/calculations/superheat.ts';
import {
  absolutePressure,
  degreesF,
  differenceF,
  raise,
} from '../../core/units/quantity-values.ts';
import { cautionsOf, knownValue } from './known-value.ts';

const refrigerant = 'R-404A';
const pressure = absolutePressure(400);
const dew = knownValue(saturationTemperature({ refrigerant, pressure, phase: 'dew' }));
const bubble = knownValue(saturationTemperature({ refrigerant, pressure, phase: 'bubble' }));

const superheatAt = (degF: number) =>
  superheat({ refrigerant, suction: pressure, suctionLine: raise(dew, differenceF(degF)) });
const subcoolingAt = (degF: number) =>
  subcooling({ refrigerant, head: pressure, liquidLine: raise(bubble, differenceF(-degF)) });

describe('superheat', () => {
  it('is counted from dew', () => {
    expect(knownValue(superheatAt(10))).toBeCloseTo(differenceF(10), 6);
  });

  it.each([-3, -1, 0])('%d °F is within the instruments: zero, and liquid may return', (degF) => {
    const found = superheatAt(degF);
    expect(knownValue(found)).toBeCloseTo(0, 6);
    expect(cautionsOf(found)).toContain('liquidMayReturn');
  });

  it('of two degrees is itself, still with the caution; of four it has none', () => {
    expect(knownValue(superheatAt(2))).toBeCloseTo(differenceF(2), 6);
    expect(cautionsOf(superheatAt(2))).toContain('liquidMayReturn');
    expect(cautionsOf(superheatAt(4))).not.toContain('liquidMayReturn');
  });

  it('below the instruments is refused with how far', () => {
    const found = superheatAt(-3.1);
    expect(found).toMatchObject({ kind: 'refused', reason: 'belowZeroSuperheat', unit: 'dC' });
    if (found.kind === 'refused' && 'value' in found) {
      expect(found.value).toBeCloseTo(differenceF(-3.1), 6);
    }
  });

  it('has no answer below no pressure at all', () => {
    const suction = absolutePressure(-1);
    expect(superheat({ refrigerant, suction, suctionLine: degreesF(30) })).toEqual({
      kind: 'refused',
      reason: 'impossibleVacuum',
      value: -1,
      unit: 'kPaa',
    });
  });
});

describe('subcooling', () => {
  it('is counted from bubble', () => {
    expect(knownValue(subcoolingAt(8))).toBeCloseTo(differenceF(8), 6);
  });

  it('near zero warns of flash gas; far below is refused', () => {
    expect(subcoolingAt(-2)).toMatchObject({ value: 0 });
    expect(cautionsOf(subcoolingAt(-2))).toContain('flashGas');
    expect(subcoolingAt(-4)).toMatchObject({ kind: 'refused', reason: 'belowZeroSubcooling' });
  });

  it('does not exist for carbon dioxide above critical', () => {
    const head = absolutePressure(9750); // 1,400 psig
    expect(subcooling({ refrigerant: 'R-744', head, liquidLine: degreesF(95) })).toMatchObject({
      kind: 'refused',
      reason: 'aboveCritical',
    });
  });
});
