import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runCalculation } from '../../core/calculations/catalogue.ts';
import { floodedShare, heldHead } from '../../core/calculations/head-control.ts';
import { highPressureWindow } from '../../core/calculations/high-pressure-window.ts';
import { nonCondensables } from '../../core/calculations/non-condensables.ts';
import { coldStart, controlTrip } from '../../core/calculations/pressure-controls.ts';
import { saturationPressure } from '../../core/calculations/saturation.ts';
import { steadyState } from '../../core/calculations/steady-state.ts';
import { STANDARD_ATMOSPHERE } from '../../core/units/atmosphere.ts';
import {
  absolutePressure,
  degreesF,
  difference,
  differenceF,
  differencePsi,
  duration,
  raise,
} from '../../core/units/quantity-values.ts';
import { cautionsOf, knownValue } from './known-value.ts';

const psig = (psi: number) => absolutePressure(differencePsi(psi) + STANDARD_ATMOSPHERE);

describe('a low-pressure control', () => {
  it('set into a vacuum says so: an R-134a freezer’s cut-out', () => {
    const inputs = { refrigerant: 'R-134a', boxTemp: '-10F', temperatureDifference: '10dF' };
    const found = runCalculation('lowPressureCutOut', inputs);
    if (!('value' in found)) throw new Error('no value');
    expect(found.cautions).toContain('pullsVacuum');
    expect(found.value).toBeLessThan(0);
  });

  it('knows the local air: the same coil reads higher on a dial at altitude', () => {
    const inputs = { refrigerant: 'R-134a', coilTemp: '38F' };
    const at = (altitude: string) => runCalculation('lowPressureCutIn', { ...inputs, altitude });
    const [sea, mountain] = [at('0ft'), at('5000ft')];
    if (!('value' in sea) || !('value' in mountain)) throw new Error('no value');
    // 14.696 less 12.23 psia of air.
    expect(mountain.value - sea.value).toBeCloseTo(2.466, 2);
  });

  it('is never reached by a unit colder than its cut-in’s saturation', () => {
    const start = (coldestF: number) =>
      knownValue(coldStart({ refrigerant: 'R-134a', cutIn: psig(33), coldest: degreesF(coldestF) }))
        .start;
    expect(start(37)).toBe('staysOff');
    expect(start(39)).toBe('starts');
  });

  it('refuses a cut-out above the cut-in', () => {
    const inputs = { cutIn: '10psi', cutOut: '30psi' };
    expect(runCalculation('controlDifferential', inputs)).toMatchObject({
      refused: { reason: 'notPositive' },
    });
  });
});

describe('a tripped control', () => {
  const trip = (side: 'high' | 'low', setting: number, opened: number) =>
    controlTrip({ side, setting: psig(setting), opened: psig(opened) });

  it.each([
    { side: 'high', setting: 400, opened: 392, verdict: 'whereSet' },
    { side: 'high', setting: 400, opened: 350, verdict: 'early' },
    { side: 'high', setting: 400, opened: 430, verdict: 'late' },
    { side: 'low', setting: 15, opened: 30, verdict: 'early' },
    { side: 'low', setting: 15, opened: 5, verdict: 'late' },
  ] as const)('$side set at $setting, opened at $opened: $verdict', (row) => {
    const { side, setting, opened, verdict } = row;
    expect(knownValue(trip(side, setting, opened)).verdict).toBe(verdict);
  });

  it('goes with its cautions', () => {
    expect(cautionsOf(trip('high', 400, 400))).toEqual(['repeatedReset']);
    expect(cautionsOf(trip('high', 400, 430))).toEqual(['repeatedReset', 'tripsLate']);
    expect(cautionsOf(trip('low', 15, 15))).toEqual([]);
  });
});

describe('the window of a high-pressure cut-out', () => {
  const window = (ratingPsi: number, reliefPsi?: number) =>
    highPressureWindow({
      refrigerant: 'R-448A',
      hottest: degreesF(110),
      split: differenceF(20),
      rating: psig(ratingPsi),
      ...(reliefPsi === undefined ? {} : { relief: psig(reliefPsi) }),
    });

  it('ends at nine tenths of the relief setting, gauge, where that is lower', () => {
    expect(knownValue(window(450, 450)).highest).toBeCloseTo(psig(405), 6);
    expect(knownValue(window(400, 450)).highest).toBeCloseTo(psig(400), 6);
  });

  it('is reported empty, with both ends, and nothing is picked', () => {
    const found = knownValue(window(300));
    expect(found.window).toBe('empty');
    expect(found.lowest).toBeGreaterThan(found.highest);
  });

  it('goes with the caution against resetting and raising it', () => {
    expect(cautionsOf(window(450))).toEqual(
      expect.arrayContaining(['repeatedReset', 'pressureLimit']),
    );
  });
});

describe('head held in cold weather', () => {
  const held = (ambientF: number) =>
    heldHead({
      refrigerant: 'R-404A',
      setting: psig(180),
      ambient: degreesF(ambientF),
      split: differenceF(15),
    });

  it('is ruled by the valve below its balance point, with the high split to expect', () => {
    const { ruledBy, split } = knownValue(held(20));
    expect(ruledBy).toBe('headControl');
    expect(split / differenceF(1)).toBeCloseTo(62, 0);
    expect(cautionsOf(held(20))).toContain('winterCharge');
    expect(cautionsOf(held(95))).not.toContain('winterCharge');
  });

  it('floods more of the condenser the colder it gets, and never all of it', () => {
    const flooded = (ambientF: number) =>
      knownValue(
        floodedShare({
          held: degreesF(90),
          ambient: degreesF(ambientF),
          split: differenceF(15),
        }),
      );
    expect(flooded(80)).toBe(0);
    fc.assert(
      fc.property(fc.integer({ min: -40, max: 74 }), (ambientF) => {
        expect(flooded(ambientF)).toBeGreaterThan(flooded(ambientF + 1));
        expect(flooded(ambientF)).toBeLessThan(1);
      }),
    );
  });
});

describe('a condenser at rest', () => {
  const excessOf = (refrigerant: 'R-404A' | 'R-600a', excessF: number) => {
    const coil = degreesF(80);
    const at = { refrigerant, temperature: raise(coil, differenceF(excessF)), phase: 'bubble' };
    const standing = knownValue(saturationPressure({ ...at, phase: 'bubble' }));
    return knownValue(nonCondensables({ refrigerant, standing, coil })).verdict;
  };

  it.each([
    [2, 'none'],
    [4, 'suspected'],
    [8, 'present'],
    [-5, 'testFailed'],
  ])('%s °F off: %s, whatever the refrigerant', (excessF, verdict) => {
    expect(excessOf('R-404A', excessF)).toBe(verdict);
    expect(excessOf('R-600a', excessF)).toBe(verdict);
  });

  it('is judged in degrees: 5 psi suspects R-600a and leaves R-404A alone', () => {
    const verdict = (refrigerant: 'R-404A' | 'R-600a') => {
      const coil = degreesF(80);
      const at = { refrigerant, temperature: coil, phase: 'bubble' } as const;
      const standing = absolutePressure(knownValue(saturationPressure(at)) + differencePsi(5));
      return knownValue(nonCondensables({ refrigerant, standing, coil }));
    };
    expect(verdict('R-404A').verdict).toBe('none');
    expect(verdict('R-600a').verdict).toBe('suspected');
  });
});

describe('a series', () => {
  const settled = (degF: readonly number[], everyMin = 5) =>
    steadyState({
      readings: degF.map((value, index) => ({
        at: duration(index * everyMin),
        value: degreesF(value),
      })),
    });

  it.each([
    { degF: [40, 40.3, 40, 40.2], everyMin: 5, state: 'steady' },
    { degF: [44, 43, 42, 41], everyMin: 5, state: 'drifting' },
    { degF: [40, 43, 40, 43, 40], everyMin: 5, state: 'swinging' },
    { degF: [40, 40, 40], everyMin: 2, state: 'tooShort' },
  ])('$degF every $everyMin min is $state', ({ degF, everyMin, state }) => {
    expect(knownValue(settled(degF, everyMin)).state).toBe(state);
  });

  it('changes by its slope times its span, wherever it starts', () => {
    const lines = fc.record({
      start: fc.double({ min: -20, max: 60, noNaN: true }),
      step: fc.double({ min: -2, max: 2, noNaN: true }),
      count: fc.integer({ min: 3, max: 12 }),
    });
    fc.assert(
      fc.property(lines, ({ start, step, count }) => {
        const degF = Array.from({ length: count }, (_, index) => start + step * index);
        const found = knownValue(settled(degF));
        const whole = difference(degreesF(start + step * (count - 1)), degreesF(start));
        expect(found.change).toBeCloseTo(whole, 9);
        expect(found.swing).toBeCloseTo(0, 9);
      }),
    );
  });

  it('needs three readings in the order of their times', () => {
    expect(settled([40, 40])).toMatchObject({ reason: 'ruleDoesNotApply' });
    expect(settled([40, 40, 40], 0)).toMatchObject({ reason: 'notPositive' });
  });
});
