import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { nitrogenDensity, nitrogenPressure } from '../../core/calculations/nitrogen-pressure.ts';
import { nitrogenTest } from '../../core/calculations/nitrogen-test.ts';
import { pressureClass, recoveryLevel } from '../../core/calculations/recovery-level.ts';
import { vacuumDecay } from '../../core/calculations/vacuum-decay.ts';
import { microns } from '../../core/calculations/vacuum-defaults.ts';
import { dryingVacuum, vacuumReading } from '../../core/calculations/vacuum.ts';
import { waterBoilingPoint, waterVapourPressure } from '../../core/calculations/water-vapour.ts';
import { REFRIGERANTS } from '../../core/terms/refrigerants.ts';
import { STANDARD_ATMOSPHERE } from '../../core/units/atmosphere.ts';
import {
  absolutePressure,
  degreesF,
  differencePsi,
  mass,
  temperature,
} from '../../core/units/quantity-values.ts';
import { cautionsOf, knownValue } from './known-value.ts';

const schema = z.object({ points: z.array(z.array(z.number())) });
function points(name: string): readonly (readonly number[])[] {
  const url = new URL(`../checks/reference/${name}.json`, import.meta.url);
  return schema.parse(JSON.parse(readFileSync(url, 'utf8'))).points;
}

const PSI = 6.894757293168;

describe('sealed nitrogen', () => {
  it('keeps within 0.02 % of the equation of state along each isochore', () => {
    for (const [psig = NaN, from = NaN, to = NaN, , , after = NaN] of points('nitrogen')) {
      const found = knownValue(
        nitrogenPressure({
          pressure: absolutePressure((psig + 14.69595) * PSI),
          from: degreesF(from),
          to: degreesF(to),
        }),
      );
      expect(Math.abs(found.pressure / PSI / (after + 14.69595) - 1)).toBeLessThan(2e-4);
    }
  });

  it('has the compressibility of the equation of state to 0.01 % over its whole range', () => {
    for (const [tempC = NaN, kPa = NaN, compressibility = NaN] of points(
      'nitrogen-compressibility',
    )) {
      const density = nitrogenDensity(absolutePressure(kPa), temperature(tempC));
      const found = kPa / (density * 8.314462618 * (tempC + 273.15));
      expect(Math.abs(found - compressibility)).toBeLessThan(1e-4);
    }
  });

  it('goes back to where it came from', () => {
    const degrees = fc.double({ min: -40, max: 60, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 100, max: 5000, noNaN: true }),
        degrees,
        degrees,
        (kPa, a, b) => {
          const [from, to] = [temperature(a), temperature(b)];
          const there = nitrogenPressure({ pressure: absolutePressure(kPa), from, to });
          if (there.kind === 'refused') return;
          const back = nitrogenPressure({ pressure: there.value.pressure, from: to, to: from });
          if (back.kind === 'refused') return;
          expect(Math.abs(back.value.pressure / kPa - 1)).toBeLessThan(1e-6);
        },
      ),
    );
  });

  it('is told from a leak only beyond what gauge and thermometer leave open', () => {
    const test = (found: number, gauge: number) =>
      knownValue(
        nitrogenTest({
          pressure: absolutePressure(164.7 * PSI),
          from: degreesF(70),
          to: degreesF(70),
          found: absolutePressure(found * PSI),
          instruments: { gaugeError: differencePsi(gauge) },
        }),
      );
    expect(test(163.7, 1).verdict).toBe('holds');
    expect(test(161, 1).verdict).toBe('leaks');
    expect(test(161, 5).verdict).toBe('holds');
    // √2 · √(1² + (164.7 / 529.67 · 2)²) psi by hand.
    expect(test(164.7, 1).uncertainty / PSI).toBeCloseTo(1.665, 2);
  });

  it('warns above the lowest rating', () => {
    const input = {
      pressure: absolutePressure(300 * PSI),
      from: degreesF(70),
      to: degreesF(70),
      found: absolutePressure(300 * PSI),
    };
    const rating = absolutePressure(164.7 * PSI);
    expect(cautionsOf(nitrogenTest(input))).toContain('pressureTest');
    expect(cautionsOf(nitrogenTest(input))).not.toContain('testAboveRating');
    expect(cautionsOf(nitrogenTest({ ...input, rating }))).toContain('testAboveRating');
  });
});

describe('water and ice', () => {
  it('agree with IAPWS-95 to 0.01 % and with both equations over ice to 0.05 %', () => {
    for (const [tempC = NaN, kPa = NaN] of points('water')) {
      const found = knownValue(waterVapourPressure(temperature(tempC)));
      expect(Math.abs(found / kPa - 1)).toBeLessThan(1e-4);
    }
    for (const [tempC = NaN, iapws = NaN, murphyKoop = NaN] of points('ice')) {
      const found = knownValue(waterVapourPressure(temperature(tempC)));
      expect(Math.abs(found / iapws - 1)).toBeLessThan(2e-6);
      expect(Math.abs(found / murphyKoop - 1)).toBeLessThan(5e-4);
    }
  });

  it('boil and sublime back at the same temperature, rising all the way', () => {
    const degrees = fc.double({ min: -89, max: 199, noNaN: true });
    fc.assert(
      fc.property(degrees, (tempC) => {
        const at = temperature(tempC);
        const pressure = knownValue(waterVapourPressure(at));
        expect(Math.abs(knownValue(waterBoilingPoint(pressure)) - tempC)).toBeLessThan(1e-6);
        expect(knownValue(waterVapourPressure(temperature(tempC + 0.01)))).toBeGreaterThan(
          pressure,
        );
      }),
    );
  });

  it('are refused beyond the range, with the limit', () => {
    expect(waterVapourPressure(temperature(-100))).toMatchObject({
      reason: 'belowLimit',
      limit: -90,
    });
    expect(waterBoilingPoint(absolutePressure(1e5))).toMatchObject({ reason: 'aboveLimit' });
  });

  it('stay in a cold spot under a vacuum that is not deep enough there', () => {
    const in1000 = (degF: number) =>
      knownValue(dryingVacuum({ vacuum: microns(1000), coldest: degreesF(degF) })).moisture;
    expect(in1000(40)).toBe('sublimes');
    expect(in1000(0)).toBe('stays');
    const warm = dryingVacuum({ vacuum: microns(5000), coldest: degreesF(70) });
    expect(knownValue(warm).moisture).toBe('boils');
    expect(cautionsOf(warm)).not.toContain('iceInSystem');
  });
});

describe('a vacuum', () => {
  it('is off the dial when it is deep', () => {
    const reading = (micron: number) =>
      vacuumReading({ pressure: microns(micron), atmosphere: STANDARD_ATMOSPHERE });
    expect(knownValue(reading(500)).inches).toBeCloseTo(29.9, 1);
    expect(cautionsOf(reading(500))).toEqual(['useMicronGauge', 'noPowerInVacuum']);
    expect(cautionsOf(reading(100_000))).toEqual([]);
  });

  const rise = (minutes: number, micron: (minute: number) => number) =>
    [0, 1, 2, 3, 4, 5, 6].map((step) => ({
      minutes: (step * minutes) / 6,
      pressure: microns(micron((step * minutes) / 6)),
    }));

  it('that lets air in rises straight, whatever the rate', () => {
    fc.assert(
      fc.property(fc.double({ min: 60, max: 5000, noNaN: true }), (rate) => {
        const readings = rise(20, (minute) => 400 + rate * minute);
        expect(knownValue(vacuumDecay({ readings })).verdict).toBe('leak');
      }),
    );
  });

  it('with water in it levels off at the vapour pressure of the coldest spot', () => {
    const coldest = degreesF(50);
    const readings = rise(30, (minute) => 300 + 8900 * (1 - Math.exp(-minute / 6)));
    expect(knownValue(vacuumDecay({ readings, coldest })).verdict).toBe('moisture');
    expect(knownValue(vacuumDecay({ readings })).verdict).toBe('moistureOrOffGassing');
  });

  it('over warm oil levels off low', () => {
    const readings = rise(30, (minute) => 300 + 450 * (1 - Math.exp(-minute / 6)));
    expect(knownValue(vacuumDecay({ readings })).verdict).toBe('offGassing');
  });

  it('is called tight only after long enough', () => {
    expect(knownValue(vacuumDecay({ readings: rise(5, () => 300) })).verdict).toBe('readLonger');
    expect(knownValue(vacuumDecay({ readings: rise(10, () => 300) })).verdict).toBe('tight');
  });

  it('needs three readings in order', () => {
    const [first, second] = rise(10, () => 300);
    if (first === undefined || second === undefined) throw new Error('two readings');
    expect(vacuumDecay({ readings: [first, second] })).toMatchObject({ reason: 'tooFewReadings' });
    expect(vacuumDecay({ readings: [first, first, second] })).toMatchObject({
      reason: 'readingsDoNotFit',
    });
  });
});

describe('recovery before opening', () => {
  it('has a class for every refrigerant, and a caution with each level', () => {
    for (const refrigerant of REFRIGERANTS) {
      const { pressureClass: of } = knownValue(pressureClass(refrigerant));
      const level = recoveryLevel({
        pressureClass: of,
        charge: mass(50_000),
        machine: 'since1993Nov15',
        minorRepair: false,
      });
      expect(cautionsOf(level)).toEqual(['recoverFirst', 'verifyWithAuthority']);
    }
    expect(knownValue(pressureClass('R-744')).pressureClass).toBe('veryHigh');
  });

  it('says what the archived table prints where the two differ', () => {
    const level = (pounds: number) =>
      knownValue(
        recoveryLevel({
          pressureClass: 'medium',
          charge: mass(pounds * 453.59237),
          machine: 'since1993Nov15',
          minorRepair: false,
        }),
      ).otherSource;
    expect(level(200)).toContain('10 inHg');
    expect(level(199)).toBeNull();
  });
});
