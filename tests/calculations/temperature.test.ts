import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitExponential } from '../../core/calculations/exponential-fit.ts';
import { coldHolding, foodCooling, timeControl } from '../../core/calculations/food-times.ts';
import { platinumResistance, platinumTemperature } from '../../core/calculations/platinum.ts';
import { pullDownFit, pullDownTime } from '../../core/calculations/pull-down.ts';
import { steinhartHart, thermistorResistance } from '../../core/calculations/thermistor.ts';
import { thermistorTemperature } from '../../core/calculations/thermistor.ts';
import { boilingPointCheck, iceBathCheck } from '../../core/calculations/thermometer-checks.ts';
import { atmosphereAt } from '../../core/units/atmosphere.ts';
import {
  degreesF,
  duration,
  resistance,
  temperature,
  temperatureDifference,
} from '../../core/units/quantity-values.ts';
import { cautionsOf, knownValue } from './known-value.ts';

describe('a platinum sensor', () => {
  it('comes back from its resistance to a millionth of a degree, rising all the way', () => {
    fc.assert(
      fc.property(fc.double({ min: -200, max: 849, noNaN: true }), (tempC) => {
        const ohms = (at: number) => knownValue(platinumResistance({ at: temperature(at) }));
        const back = knownValue(platinumTemperature({ resistance: ohms(tempC) }));
        expect(Math.abs(back - tempC)).toBeLessThan(1e-6);
        expect(ohms(tempC + 0.01)).toBeGreaterThan(ohms(tempC));
      }),
    );
  });
});

describe('a thermistor', () => {
  const sensor = { rated: resistance(10_000), beta: temperatureDifference(3435) };

  it('comes back from its resistance', () => {
    fc.assert(
      fc.property(fc.double({ min: -60, max: 150, noNaN: true }), (tempC) => {
        const ohms = knownValue(thermistorResistance({ ...sensor, at: temperature(tempC) }));
        const back = knownValue(thermistorTemperature({ ...sensor, resistance: ohms }));
        expect(Math.abs(back - tempC)).toBeLessThan(1e-9);
      }),
    );
  });

  it('by beta is what three points of that same curve give', () => {
    const point = (tempC: number) => ({
      at: temperature(tempC),
      resistance: knownValue(thermistorResistance({ ...sensor, at: temperature(tempC) })),
    });
    const points = [point(-20), point(0), point(25)];
    fc.assert(
      fc.property(fc.double({ min: -20, max: 25, noNaN: true }), (tempC) => {
        const found = knownValue(steinhartHart({ points, ...point(tempC) }));
        expect(Math.abs(found.temperature - tempC)).toBeLessThan(1e-6);
      }),
    );
    expect(knownValue(steinhartHart({ points, ...point(40) })).points).toBe('beyond');
  });

  it('refuses points that rise with temperature', () => {
    const points = [
      { at: temperature(0), resistance: resistance(100) },
      { at: temperature(50), resistance: resistance(119.4) },
      { at: temperature(100), resistance: resistance(138.5) },
    ];
    expect(steinhartHart({ points, resistance: resistance(110) })).toMatchObject({
      reason: 'readingsDoNotFit',
    });
  });
});

describe('a pull-down', () => {
  const boxAt = (minutes: number) => 35 + 25 * Math.exp(-minutes / 180);
  const readings = (minutes: readonly number[]) =>
    minutes.map((at) => ({ minutes: at, box: degreesF(boxAt(at)) }));

  it('is found back from exact readings, whatever they are', () => {
    const constants = fc.double({ min: 30, max: 600, noNaN: true });
    const ends = fc.double({ min: -20, max: 38, noNaN: true });
    fc.assert(
      fc.property(constants, ends, (constant, end) => {
        const samples = [0, 0.3, 0.7, 1.1, 1.6].map((share) => ({
          x: share * constant,
          y: end + 30 * Math.exp(-share),
        }));
        const fit = fitExponential(samples);
        expect(Math.abs((fit?.constant ?? NaN) / constant - 1)).toBeLessThan(1e-3);
        expect(Math.abs((fit?.end ?? NaN) - end)).toBeLessThan(0.05);
      }),
    );
  });

  it('agrees with the time worked from the constant', () => {
    const fitted = knownValue(
      pullDownFit({ readings: readings([0, 60, 120, 180]), target: degreesF(41) }),
    );
    const worked = knownValue(
      pullDownTime({
        start: degreesF(60),
        final: degreesF(35),
        target: degreesF(41),
        timeConstant: duration(180),
      }),
    );
    expect(fitted.toTarget + 180).toBeCloseTo(worked, 1);
  });

  it('is the less certain the further the target, and the more so with the end known', () => {
    const uncertainty = (targetF: number, final?: number) =>
      knownValue(
        pullDownFit({
          readings: readings([0, 90, 180, 270, 360]),
          target: degreesF(targetF),
          error: temperatureDifference(0.1),
          ...(final === undefined ? {} : { final: degreesF(final) }),
        }),
      ).uncertainty;
    const [near, far, known] = [uncertainty(40), uncertainty(37), uncertainty(37, 35)];
    if (near === null || far === null || known === null) throw new Error('bounded');
    expect(far).toBeGreaterThan(near);
    expect(known).toBeLessThan(far);
  });

  it('that will never get there is refused with where it levels off', () => {
    expect(
      pullDownFit({ readings: readings([0, 60, 120, 180]), target: degreesF(30) }),
    ).toMatchObject({ reason: 'belowLimit', unit: 'degC' });
  });

  it('on a straight line or a plateau has no time constant', () => {
    const line = [0, 60, 120, 180].map((minutes) => ({
      minutes,
      box: degreesF(60 - minutes / 10),
    }));
    expect(pullDownFit({ readings: line, target: degreesF(41) })).toMatchObject({
      reason: 'readingsDoNotFit',
    });
    const rising = [0, 60, 120].map((minutes) => ({ minutes, box: degreesF(40 + minutes / 10) }));
    expect(pullDownFit({ readings: rising, target: degreesF(36) })).toMatchObject({
      reason: 'readingsDoNotFit',
    });
  });
});

describe('food', () => {
  it('leaves the verdict on the food to the operator, every time', () => {
    const cold = coldHolding(degreesF(39));
    expect(cautionsOf(cold)).toEqual(['probeTheProduct', 'operatorDecides', 'verifyWithAuthority']);
    expect(knownValue(cold).verdict).toBe('within');
    expect(knownValue(coldHolding(degreesF(41))).verdict).toBe('within');
  });

  it('has four hours once it has been above 70 °F, six otherwise', () => {
    const limit = (highestF: number) =>
      knownValue(
        timeControl({
          start: degreesF(41),
          highest: degreesF(highestF),
          elapsed: duration(0),
          procedureBefore: true,
        }),
      ).limit;
    expect([limit(70), limit(71)]).toEqual([360, 240]);
  });

  it('that has neither cooled nor run out of time is open', () => {
    const cooling = knownValue(
      foodCooling({
        readings: [
          { minutes: 0, product: degreesF(135) },
          { minutes: 90, product: degreesF(90) },
        ],
        from: 'cooked',
      }),
    );
    expect(cooling).toEqual({ taken: 90, firstStep: 'open', whole: 'open' });
  });
});

describe('a thermometer', () => {
  it('is off in an ice bath beyond its tolerance only', () => {
    const verdict = (tempC: number) =>
      knownValue(iceBathCheck({ reading: temperature(tempC) })).verdict;
    expect([verdict(-1), verdict(1), verdict(1.1)]).toEqual(['within', 'within', 'off']);
  });

  it('boils lower the higher, with a word on steam', () => {
    const at = (metres: number) => boilingPointCheck({ atmosphere: atmosphereAt(metres) });
    expect(knownValue(at(1524)).expected).toBeLessThan(knownValue(at(0)).expected);
    expect(knownValue(at(0)).verdict).toBe('notRead');
    expect(cautionsOf(at(0))).toEqual(['steamBurns']);
  });
});
