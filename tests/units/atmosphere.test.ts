import { describe, expect, it } from 'vitest';
import {
  ALTITUDE_RANGE_M,
  BAROMETER_RANGE_KPA,
  atmosphereAt,
  inchesOfVacuum,
  localAtmosphere,
  vacuumOfInches,
} from '../../core/units/atmosphere.ts';
import { toAbsolutePressure, toAnyPressure, toTemperature } from '../../core/units/branding.ts';
import { absolutePressure, gaugePressure } from '../../core/units/quantity-values.ts';
import { dialAmount } from '../../core/units/shown-unit.ts';

const PSI = 6.894757293168;

describe('atmosphereAt', () => {
  it.each([
    // ISO 2533:1975 table values, metres and kPa (from memory of the printed table, to its five figures)
    [0, 101.325],
    [1000, 89.876],
    [2000, 79.501],
    [3000, 70.121],
  ])('%d m is %d kPa', (altitude, kPa) => {
    expect(Math.abs(atmosphereAt(altitude) - kPa)).toBeLessThan(0.002);
  });

  it.each([
    [5000, 12.23],
    [7000, 11.34],
    [10000, 10.11],
  ])('%d ft is %d psia', (feet, psia) => {
    expect(atmosphereAt(feet * 0.3048) / PSI).toBeCloseTo(psia, 2);
  });
});

describe('localAtmosphere', () => {
  it('is what the altitude usually has, or what the barometer reads', () => {
    expect(localAtmosphere({ by: 'altitude', altitudeM: 1000 })).toBe(atmosphereAt(1000));
    const pressure = absolutePressure(99.2);
    expect(localAtmosphere({ by: 'barometer', pressure })).toBe(pressure);
  });

  it('lets a barometer show 4 % either way of every altitude that can be set', () => {
    const { low, high } = ALTITUDE_RANGE_M;
    expect(atmosphereAt(high) * 0.96).toBeGreaterThan(BAROMETER_RANGE_KPA.low);
    expect(atmosphereAt(low) * 1.04).toBeLessThan(BAROMETER_RANGE_KPA.high);
  });

  it('makes 17 kPa of a forecast that is reduced to sea level, at 5,000 ft', () => {
    expect(atmosphereAt(0) - atmosphereAt(1524)).toBeCloseTo(17, 0);
  });
});

describe('vacuum', () => {
  it('ten inches below a standard atmosphere leave 9.78 psia, fifteen 7.33', () => {
    const left = (inches: number) =>
      toAbsolutePressure(vacuumOfInches(inches), atmosphereAt(0)) / PSI;
    expect(left(10)).toBeCloseTo(9.78, 2);
    expect(left(15)).toBeCloseTo(7.33, 2);
  });

  it('is counted in inches, and there is none above the atmosphere', () => {
    expect(inchesOfVacuum(vacuumOfInches(4))).toBeCloseTo(4);
    expect(inchesOfVacuum(gaugePressure(5))).toBe(0);
  });

  it('is what a US dial shows below the atmosphere; a bar gauge goes on below zero', () => {
    expect(dialAmount(vacuumOfInches(4), 'us')).toEqual({ value: -4, unit: 'inHg' });
    expect(dialAmount(gaugePressure(-50), 'si')).toEqual({ value: -0.5, unit: 'bar' });
  });
});

describe('branding', () => {
  it('takes no amount of another dimension', () => {
    expect(toTemperature({ value: 10, unit: 'dF' })).toBeNull();
    expect(toAnyPressure({ value: 10, unit: 'degF' }, atmosphereAt(0))).toBeNull();
  });

  it('reads a gauge against the local air and an absolute unit as it is', () => {
    expect(toAnyPressure({ value: 0, unit: 'psi' }, atmosphereAt(1000))).toBe(atmosphereAt(1000));
    expect(toAnyPressure({ value: 100, unit: 'kPaa' }, atmosphereAt(1000))).toBe(100);
  });
});
