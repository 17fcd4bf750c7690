import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bleedWait, capacitorTolerance } from '../../core/calculations/capacitors.ts';
import { runCalculation } from '../../core/calculations/catalogue.ts';
import { imbalanceDerating, imbalanceOrigin } from '../../core/calculations/imbalance.ts';
import { insulationFloor } from '../../core/calculations/insulation.ts';
import { power } from '../../core/calculations/power.ts';
import { motorVoltage, supplyVoltage } from '../../core/calculations/supply-voltage.ts';
import {
  capacitance,
  current,
  ratio,
  resistance,
  voltage,
} from '../../core/units/quantity-values.ts';
import { cautionsOf, knownValue } from './known-value.ts';

describe('current imbalance', () => {
  const lines = (one: number, two: number, three: number) => ({
    one: current(one),
    two: current(two),
    three: current(three),
  });

  it('stays with the line when it is the supply’s and goes with the lead when it is the motor’s', () => {
    const legs = fc.uniqueArray(fc.integer({ min: 10, max: 60 }), {
      minLength: 3,
      maxLength: 3,
    });
    fc.assert(
      fc.property(legs, ([a = 1, b = 2, c = 3]) => {
        const before = lines(a, b, c);
        const origin = (after: typeof before) => knownValue(imbalanceOrigin({ before, after }));
        expect(origin(lines(a, b, c))).toBe('supply');
        // Every lead moved on by one: line 1 feeds what line 3 fed.
        expect(origin(lines(c, a, b))).toBe('motor');
        expect(origin(lines(b, c, a))).toBe('undetermined');
      }),
    );
  });

  it('decides nothing from two lines alike or a dead one', () => {
    const after = lines(50, 48, 52);
    for (const before of [lines(50, 50, 53), lines(0, 48, 52)]) {
      expect(knownValue(imbalanceOrigin({ before, after }))).toBe('undetermined');
    }
  });
});

describe('derating', () => {
  it('never rises with the imbalance, and stops at 5 %', () => {
    const load = (share: number) => knownValue(imbalanceDerating({ imbalance: ratio(share) }));
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.049, noNaN: true }), (share) => {
        expect(load(share)).toBeGreaterThanOrEqual(load(share + 0.001));
      }),
    );
    expect(load(0)).toBe(1);
    expect(imbalanceDerating({ imbalance: ratio(0.051) })).toMatchObject({ kind: 'refused' });
  });
});

describe('voltage', () => {
  it.each([
    [120, 'a'],
    [112, 'b'],
    [109, 'below'],
    [128, 'above'],
  ])('%s V at a 120 V service is in range %s', (measured, range) => {
    const found = supplyVoltage({
      nominal: voltage(120),
      point: 'service',
      measured: voltage(measured),
    });
    expect(knownValue(found).range).toBe(range);
    expect(cautionsOf(found).includes('outsideNameplateVoltage')).toBe(
      range === 'below' || range === 'above',
    );
  });

  it('of a dual plate runs from the lower less ten percent to the higher and ten', () => {
    const at = (measured: number) =>
      knownValue(
        motorVoltage({
          rated: voltage(208),
          ratedHigh: voltage(230),
          measured: voltage(measured),
        }),
      ).verdict;
    expect([186, 188, 220, 252, 254].map(at)).toEqual([
      'low',
      'within',
      'within',
      'within',
      'high',
    ]);
  });

  it('between two ratings is off neither', () => {
    const found = motorVoltage({
      rated: voltage(208),
      ratedHigh: voltage(230),
      measured: voltage(220),
    });
    expect(knownValue(found).off).toBe(0);
  });
});

describe('a capacitor', () => {
  const verdict = (measured: number, rated: number, kind: 'run' | 'start') =>
    knownValue(
      capacitorTolerance({ measured: capacitance(measured), rated: capacitance(rated), kind }),
    ).verdict;

  it('for running may be 6 % either way, for starting a fifth above and nothing below', () => {
    expect([9.3, 9.5, 10.5, 10.7].map((each) => verdict(each, 10, 'run'))).toEqual([
      'low',
      'within',
      'within',
      'high',
    ]);
    expect([99, 100, 120, 121].map((each) => verdict(each, 100, 'start'))).toEqual([
      'low',
      'within',
      'within',
      'high',
    ]);
  });

  it('bleeds through a resistor long enough to be safe to measure', () => {
    const minutes = knownValue(bleedWait({ capacitance: capacitance(400) }));
    const [farads, ohms] = [400e-6, 20_000];
    // What is left of 370 V after that wait.
    expect(370 / Math.exp((minutes * 60) / (ohms * farads))).toBeLessThan(3);
    expect(cautionsOf(bleedWait({ capacitance: capacitance(400) }))).toEqual(['capacitorCharge']);
  });
});

describe('insulation', () => {
  it('below its maker’s floor keeps the power off', () => {
    const at = (ohms: number) =>
      insulationFloor({
        measured: resistance(ohms),
        rated: voltage(230),
        build: 'smallHermetic',
      });
    expect(cautionsOf(at(1e6))).toEqual(['insulationTest', 'groundFault']);
    expect(cautionsOf(at(3e6))).toEqual(['insulationTest']);
  });

  it('names the other makers’ floors beside the one it used', () => {
    const inputs = { measured: '1Mohm', voltage: '230V', build: 'smallHermetic' };
    const found = runCalculation('insulationFloor', inputs);
    if (!('value' in found)) throw new Error('no value');
    expect(found.source).toContain('2 MΩ');
    expect(found.otherSource).toContain('50 MΩ');
  });
});

describe('where sources conflict', () => {
  it.each([
    ['ratedLoadCurrent', { maximumContinuous: '31.2A' }, '1.44'],
    ['voltageImbalance', { ab: '230V', bc: '231V', ca: '229V' }, '1 %'],
    ['currentImbalance', { one: '30A', two: '31A', three: '29A' }, '5 %'],
    ['capacitorTolerance', { measured: '10uF', rated: '10uF', kind: 'run' }, '±10 %'],
    ['motorVoltage', { rated: '208V', ratedHigh: '230V' }, '197 V'],
    ['windingTerminals', { oneTwo: '6ohm', oneThree: '2ohm', twoThree: '4ohm' }, 'rotary'],
    ['superheatTarget', { equipment: 'walkInCooler' }, '3 to 5 °F'],
    ['fanCycle', { refrigerant: 'R-134a', on: '124psi', off: '87psi' }, '120 to 130 °F'],
    ['nonCondensables', { refrigerant: 'R-134a', pressure: '90psi', coilTemp: '80F' }, 'low'],
    ['insulationRatio', { after10s: '60Mohm', after60s: '70Mohm' }, 'IEEE 43'],
  ])('%s says what the other has', (name, inputs, words) => {
    const found = runCalculation(name, inputs);
    expect('otherSource' in found && found.otherSource).toContain(words);
  });
});

describe('power', () => {
  it('is not worked out with a power factor that cannot be', () => {
    const at = (share: number) =>
      power({
        voltage: voltage(230),
        current: current(5),
        phases: 'single',
        powerFactor: ratio(share),
      });
    expect(at(1.2)).toMatchObject({ reason: 'ruleDoesNotApply' });
    expect(at(0)).toMatchObject({ reason: 'ruleDoesNotApply' });
    expect(knownValue(at(1))).toBe(1150);
  });
});
