import { describe, expect, it } from 'vitest';
import {
  afterKey,
  isNumber,
  type Key,
  keyedQuantities,
  wordsOf,
} from '../../../client/screens/keypad-model.ts';
import { EMPTY_CONTEXT } from '../../../core/language/context.ts';
import { understand } from '../../../core/language/understand.ts';
import { QUANTITIES, type QuantityId } from '../../../core/terms/quantities.ts';
import type { UnitSystem } from '../../../core/units/units.ts';
import { DEFAULT_SETTINGS } from '../../../core/visit/events.ts';
import type { VisitState } from '../../../core/visit/state.ts';
import { freshVisit } from '../../../client/state/session.ts';

const keyed = (keys: readonly Key[]): string =>
  keys.reduce<string>((entered, key) => afterKey(entered, key), '');

describe('the keys', () => {
  it.each([
    [['1', '9', '2'], '192'],
    [['1', '2', '.', '5', '.', '5'], '12.55'],
    [['.', '5'], '0.5'],
    [['−', '8'], '-8'],
    [['8', '−', '−'], '8'],
    [['1', '2', '3', '4', '5', '6', '7'], '123456'],
  ] as const)('%j give %s', (keys, entered) => {
    expect(keyed(keys)).toBe(entered);
  });

  it('keep nothing that is no number yet', () => {
    expect(['', '-', '12.', '-.'].filter(isNumber)).toEqual([]);
    expect(['0', '-8', '12.5', '192'].every(isNumber)).toBe(true);
  });
});

const visitIn = (units: UnitSystem): VisitState => freshVisit({ ...DEFAULT_SETTINGS, units });

describe('what is entered', () => {
  const usual = keyedQuantities(visitIn('us')).map(({ quantity }) => quantity);

  it.each(usual)('is read as said: %s', (quantity) => {
    const words = wordsOf(visitIn('us'), quantity, '42.5');
    const { readings, unclaimed } = understand(words, EMPTY_CONTEXT);
    expect(readings).toMatchObject([{ quantity, value: 42.5, unitFrom: 'said' }]);
    expect([readings.length, unclaimed]).toEqual([1, []]);
  });

  const timed = new Set<QuantityId>(['sinceLastCharge']);
  const asked = Object.keys(QUANTITIES).filter((id): id is QuantityId => id in QUANTITIES);

  it.each(asked.filter((quantity) => !timed.has(quantity)))(
    'answers what was asked for, in either system: %s',
    (quantity) => {
      for (const units of ['us', 'si'] as const) {
        const visit: VisitState = { ...visitIn(units), wanted: quantity };
        const context = { ...EMPTY_CONTEXT, units, asked: quantity };
        const { readings, doubts } = understand(wordsOf(visit, quantity, '12'), context);
        const told = [...readings, ...doubts].map((each) => [each.quantity, each.value]);
        expect(told).toEqual([[quantity, 12]]);
      }
    },
  );

  it('is offered with what was asked for first', () => {
    const visit: VisitState = { ...visitIn('us'), wanted: 'dischargeLineTemp' };
    expect(keyedQuantities(visit)[0]).toMatchObject({ quantity: 'dischargeLineTemp' });
    expect(new Set(usual).size).toBe(usual.length);
  });
});
