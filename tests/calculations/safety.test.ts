import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carbonDioxide } from '../../core/calculations/carbon-dioxide.ts';
import { runCalculation } from '../../core/calculations/catalogue.ts';
import { CONCENTRATION_LIMITS, EXPOSURE_LEVELS } from '../../core/calculations/exposure-limits.ts';
import { LOWER_FLAMMABLE_LIMITS } from '../../core/calculations/exposure-limits.ts';
import { flammableChargeLimit } from '../../core/calculations/flammable-charge.ts';
import { gasExposure, roomConcentration } from '../../core/calculations/gas-in-air.ts';
import {
  absolutePressure,
  mass,
  ratio,
  temperature,
  volume,
} from '../../core/units/quantity-values.ts';
import { cautionsOf, knownValue } from './known-value.ts';

describe('a flammable charge', () => {
  const limit = { refrigerant: 'R-290', rule: 'usListed', cabinet: 'closed' } as const;

  it('carries fire, the nameplate and the authority with its number', () => {
    expect(cautionsOf(flammableChargeLimit(limit))).toEqual([
      'flammable',
      'chargeByNameplate',
      'verifyWithAuthority',
    ]);
  });

  it('has no cap where none is known', () => {
    expect(flammableChargeLimit({ ...limit, refrigerant: 'R-600a' })).toMatchObject({
      reason: 'noTargetKnown',
    });
    expect(flammableChargeLimit({ ...limit, refrigerant: 'R-717' })).toMatchObject({
      reason: 'ruleDoesNotApply',
    });
  });

  it('stands on no more than the limit it was worked from', () => {
    const by = (refrigerant: string) =>
      runCalculation('flammableChargeLimit', { refrigerant, rule: 'iec2019', cabinet: 'open' });
    expect(by('R-600a')).toMatchObject({ value: 559, standing: 'from memory' });
    expect(by('R-32')).toMatchObject({ value: 1200, standing: 'published' });
  });
});

describe('gas in a room', () => {
  it('fails by a hair where the table prints the limit rounded', () => {
    const found = roomConcentration({
      refrigerant: 'R-404A',
      charge: mass(20 * 453.59237),
      room: volume(640 * 28.316846592),
      institutional: false,
    });
    expect(knownValue(found).verdict).toBe('over');
    expect(cautionsOf(found)).toContain('gasPoolsLow');
  });

  it('has a quarter of the lower flammable limit as its limit, for what burns', () => {
    for (const refrigerant of ['R-290', 'R-32'] as const) {
      const [limit, flammable] = [
        CONCENTRATION_LIMITS[refrigerant],
        LOWER_FLAMMABLE_LIMITS[refrigerant],
      ];
      expect((limit?.gPerM3 ?? NaN) / (flammable?.gPerM3 ?? NaN)).toBeCloseTo(0.25, 2);
    }
  });

  it('does not pool low when it is ammonia', () => {
    const found = roomConcentration({
      refrigerant: 'R-717',
      charge: mass(10),
      room: volume(30_000),
      institutional: false,
    });
    expect(cautionsOf(found)).not.toContain('gasPoolsLow');
    expect(cautionsOf(found)).toContain('toxicAmmonia');
  });

  it('passes the levels of exposure in their order', () => {
    for (const levels of Object.values(EXPOSURE_LEVELS)) {
      const ppm = levels.map((level) => level.ppm);
      expect(ppm).toEqual([...ppm].sort((a, b) => a - b));
    }
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.2, noNaN: true }), (share) => {
        const { passed, next } = knownValue(
          gasExposure({ refrigerant: 'R-717', share: ratio(share) }),
        );
        expect(passed?.ppm ?? 0).toBeLessThanOrEqual(share * 1e6 + 1e-6);
        if (next !== null) expect(next.ppm).toBeGreaterThan(share * 1e6);
      }),
    );
  });
});

describe('carbon dioxide', () => {
  const at = (kPa: number, tempC?: number) =>
    carbonDioxide({
      pressure: absolutePressure(kPa),
      ...(tempC === undefined ? {} : { temperature: temperature(tempC) }),
    });

  it('is no liquid below its triple point, however cold', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 517.9, noNaN: true }), (kPa) => {
        expect(knownValue(at(kPa, -70)).state).toBe('noLiquid');
        expect(cautionsOf(at(kPa))).toContain('dryIce');
      }),
    );
  });

  it('does not condense above 31 °C', () => {
    expect(knownValue(at(9000, 31)).state).toBe('transcritical');
    expect(knownValue(at(6000, 40)).state).toBe('transcritical');
    expect(knownValue(at(9000, 30)).state).toBe('liquid');
  });

  it('is told apart by temperature, and left open without one', () => {
    // 20 °C boils at 5,729 kPa.
    expect(knownValue(at(5800, 20)).state).toBe('liquid');
    expect(knownValue(at(5600, 20)).state).toBe('vapour');
    expect(knownValue(at(3000)).state).toBe('liquidOrVapour');
  });
});
