import { describe, expect, it } from 'vitest';
import { saturationTemperature } from '../../core/fluids/saturation.ts';
import { absolutePressure } from '../../core/units/quantity-values.ts';
import { PUBLISHED_SATURATION } from './published-saturation.ts';

const FIRST_FIVE = ['R-134a', 'R-404A', 'R-448A', 'R-449A', 'R-290'] as const;

describe('saturation pairs printed elsewhere', () => {
  describe.each(PUBLISHED_SATURATION)('$standing: $source', ({ pairs, withinK }) => {
    const rows = pairs.map(([refrigerant, phase, tempC, kPa]) => ({
      refrigerant,
      phase,
      tempC,
      kPa,
    }));
    it.each(rows)('$refrigerant $phase $tempC °C at $kPa kPa', (row) => {
      const { refrigerant, phase, tempC, kPa } = row;
      const found = saturationTemperature(refrigerant, absolutePressure(kPa), phase);
      expect(found.kind).toBe('known');
      if (found.kind === 'known') expect(Math.abs(found.value - tempC)).toBeLessThan(withinK);
    });
  });

  it.each(FIRST_FIVE)('has %s among the published ones, not only remembered', (id) => {
    const published = PUBLISHED_SATURATION.filter(({ standing }) => standing === 'published');
    expect(published.flatMap(({ pairs }) => pairs).some(([each]) => each === id)).toBe(true);
  });
});
