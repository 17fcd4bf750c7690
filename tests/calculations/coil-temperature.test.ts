import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  coilPressure,
  condensingTemperature,
  evaporatingTemperature,
} from '../../core/calculations/coil-temperature.ts';
import { saturationPressure, saturationTemperature } from '../../core/calculations/saturation.ts';
import { FLUIDS } from '../../core/fluids/fluids.ts';
import { REFRIGERANTS } from '../../core/terms/refrigerants.ts';
import {
  absolutePressure,
  degreesF,
  difference,
  differenceF,
  temperature,
} from '../../core/units/quantity-values.ts';
import { cautionsOf, knownValue } from './known-value.ts';

describe('a coil', () => {
  it('of a blend stands at the middle of bubble and dew, and says so', () => {
    const refrigerant = 'R-455A';
    const pressure = absolutePressure(600);
    const at = (phase: 'bubble' | 'dew') =>
      knownValue(saturationTemperature({ refrigerant, pressure, phase }));
    const found = condensingTemperature({ refrigerant, head: pressure });
    expect(knownValue(found)).toBeCloseTo((at('bubble') + at('dew')) / 2, 9);
    expect(cautionsOf(found)).toEqual(['flammable', 'chartsDiffer', 'glideBasis']);
  });

  it.each([
    // Five-point interpolation of the equation of state's own values, apart from the fits.
    ['R-448A', 11.12],
    ['R-454C', 14.93],
    ['R-455A', 23.54],
  ] as const)('of %s glides %s °F under 20 °F of dew', (refrigerant, glideF) => {
    const at = { refrigerant, temperature: degreesF(20), phase: 'dew' } as const;
    const pressure = knownValue(saturationPressure(at));
    const bubble = knownValue(saturationTemperature({ refrigerant, pressure, phase: 'bubble' }));
    expect(difference(degreesF(20), bubble) / differenceF(1)).toBeCloseTo(glideF, 1);
  });

  it('of a pure refrigerant has no glide to speak of', () => {
    const found = evaporatingTemperature({
      refrigerant: 'R-290',
      suction: absolutePressure(300),
    });
    expect(found).toMatchObject({ kind: 'known', cautions: ['flammable'] });
  });

  it('returns to its temperature from its pressure', () => {
    const anywhere = fc.record({
      refrigerant: fc.constantFrom(...REFRIGERANTS),
      share: fc.double({ min: 0.2, max: 0.8, noNaN: true }),
    });
    fc.assert(
      fc.property(anywhere, ({ refrigerant, share }) => {
        const { low, high } = FLUIDS[refrigerant].range;
        const wanted = temperature(low + (high - low) * share);
        const head = knownValue(coilPressure({ refrigerant, temperature: wanted }));
        const back = knownValue(condensingTemperature({ refrigerant, head }));
        expect(Math.abs(back - wanted)).toBeLessThan(0.002);
      }),
      { numRuns: 2000 },
    );
  });

  it('has no condensing temperature above critical', () => {
    expect(coilPressure({ refrigerant: 'R-744', temperature: degreesF(95) })).toMatchObject({
      kind: 'refused',
      reason: 'aboveCritical',
    });
  });
});
