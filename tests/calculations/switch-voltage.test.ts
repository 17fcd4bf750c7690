import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  hopscotch,
  loadVoltage,
  switchAcross,
  switchToGround,
} from '../../core/calculations/switch-voltage.ts';
import { voltage, voltageToGround } from '../../core/units/quantity-values.ts';
import { cautionsOf, knownValue } from './known-value.ts';

const across = (supply: number, read: number) =>
  switchAcross({ supply: voltage(supply), across: voltage(read) });
const volts = fc.double({ min: 0, max: 600, noNaN: true });

describe('voltage across a switch', () => {
  it.each([
    { share: 'all of it', supply: 24, read: 24, possible: ['open'] },
    { share: 'a low supply’s', supply: 208, read: 195, possible: ['open'] },
    { share: 'none', supply: 24, read: 0, possible: ['closed', 'openElsewhere'] },
    {
      share: 'a few percent',
      supply: 24,
      read: 1,
      possible: ['badContact', 'ghostVoltage', 'openElsewhere'],
    },
    {
      share: 'half',
      supply: 120,
      read: 60,
      possible: ['open', 'badContact', 'ghostVoltage', 'loadInSeries'],
    },
    {
      share: 'none without a supply',
      supply: 0,
      read: 0,
      possible: ['noSupply', 'open', 'closed', 'openElsewhere'],
    },
  ])('$share: $supply V supply, $read V read', ({ supply, read, possible }) => {
    expect(knownValue(across(supply, read)).possible).toEqual(possible);
  });

  it('never leaves closed alone', () => {
    fc.assert(
      fc.property(volts, volts, (supply, read) => {
        const { possible } = knownValue(across(supply, read));
        expect(possible).not.toEqual(['closed']);
        if (possible.includes('closed')) expect(possible).toContain('openElsewhere');
      }),
    );
  });

  it('says of a zero what it proves, and that the work is live', () => {
    expect(cautionsOf(across(24, 0))).toEqual(['liveWork', 'zeroProvesNothing']);
    expect(cautionsOf(across(0, 0))).toContain('notProvenDead');
    expect(cautionsOf(across(230, 230))).toEqual(['liveWork']);
  });
});

describe('voltage to ground on both sides of a switch', () => {
  const ground = (before: number, after: number) =>
    switchToGround({ before: voltageToGround(before), after: voltageToGround(after) });

  it.each([
    [115, 115, 'closedOrFedBack'],
    [115, 0, 'open'],
    [0, 0, 'offOrFloating'],
    [0, 115, 'fedFromBeyond'],
    [115, 60, 'partial'],
  ])('%s V before, %s V after: %s', (before, after, finding) => {
    expect(knownValue(ground(before, after))).toBe(finding);
  });

  it('never proves it dead', () => {
    fc.assert(
      fc.property(volts, volts, (before, after) => {
        expect(cautionsOf(ground(before, after))).toContain('notProvenDead');
      }),
    );
  });
});

describe('hopscotch', () => {
  const walk = (lineToLine: number, ...readings: number[]) =>
    hopscotch({ lineToLine: voltage(lineToLine), readings: readings.map(voltage) });

  it.each([
    {
      where: 'the second switch',
      read: [120, 120, 120, 0, 0],
      state: 'openBetween',
      between: [1, 2],
      lost: 120,
    },
    {
      where: 'a contact that drops a tenth',
      read: [120, 120, 107, 107],
      state: 'dropBetween',
      between: [0, 1],
      lost: 13,
    },
    { where: 'the load', read: [115, 115, 115, 115], state: 'loadSide', between: null, lost: 0 },
    {
      where: 'an open neutral',
      read: [120, 0, 0, 0],
      state: 'referenceOpen',
      between: null,
      lost: 0,
    },
    { where: 'no supply', read: [0, 0, 0], state: 'noSupply', between: null, lost: 0 },
    {
      where: 'fed from elsewhere',
      read: [120, 120, 0, 120],
      state: 'voltageReturns',
      between: [0, 1],
      lost: 120,
    },
  ])('$where: $read', ({ read: [lineToLine = 0, ...readings], state, between, lost }) => {
    expect(knownValue(walk(lineToLine, ...readings))).toEqual({ state, between, lost });
  });

  it('finds an open switch wherever it stands', () => {
    const rung = fc.record({
      live: fc.integer({ min: 1, max: 5 }),
      dead: fc.integer({ min: 1, max: 5 }),
    });
    fc.assert(
      fc.property(rung, ({ live, dead }) => {
        const readings = [...Array<number>(live).fill(24), ...Array<number>(dead).fill(0)];
        const found = knownValue(walk(24, ...readings));
        expect(found).toMatchObject({ state: 'openBetween', between: [live - 1, live] });
      }),
    );
  });

  it('needs two points', () => {
    expect(walk(120, 120)).toMatchObject({ kind: 'refused', reason: 'ruleDoesNotApply' });
  });
});

describe('voltage at a load', () => {
  const at = (measured: number, isRunning: boolean) =>
    knownValue(loadVoltage({ rated: voltage(230), measured: voltage(measured), isRunning }));

  it.each([
    [230, false, 'loadOrStartGear'],
    [0, false, 'controls'],
    [160, false, 'lowVoltage'],
    [230, true, 'running'],
  ])('%s V, running %s: %s', (measured, isRunning, finding) => {
    expect(at(measured, isRunning).finding).toBe(finding);
  });
});
