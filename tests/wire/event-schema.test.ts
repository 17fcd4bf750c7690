import { describe, expect, expectTypeOf, it } from 'vitest';
import type { z } from 'zod';
import { ALTITUDE_RANGE_M, BAROMETER_RANGE_KPA } from '../../core/units/atmosphere.ts';
import { DEFAULT_SETTINGS, type VisitEvent } from '../../core/visit/events.ts';
import { pushRequestSchema, visitEventSchema } from '../../core/wire/event-schema.ts';
import { createStamp, DEVICE } from '../support/stamp.ts';
import { psi } from '../support/utterances.ts';

const taken = (): VisitEvent =>
  createStamp()({ type: 'readingTaken', v: 1, reading: psi('headPressure', 192) });

describe('the schema of a visit event', () => {
  it('accepts every event the visit can make, as the compiler sees it', () => {
    expectTypeOf<VisitEvent['type']>().toEqualTypeOf<z.infer<typeof visitEventSchema>['type']>();
    expect(visitEventSchema.parse(taken())).toEqual(taken());
  });

  it.each([
    [
      'an unknown quantity',
      { reading: { ...psi('headPressure', 192), quantity: 'headPresure' } },
      ['reading', 'quantity'],
    ],
    [
      'a value that is not a number',
      { reading: { ...psi('headPressure', 192), value: Number.NaN } },
      ['reading', 'value'],
    ],
    [
      'a field nobody knows',
      { reading: { ...psi('headPressure', 192), colour: 'red' } },
      ['reading'],
    ],
    ['an id that is no ULID', { id: 'one' }, ['id']],
    ['a place before the first', { seq: 0 }, ['seq']],
    ['another version', { v: 2 }, ['v']],
  ])('refuses %s and names its path', (_what, change, path) => {
    const result = visitEventSchema.safeParse({ ...taken(), ...change });
    expect(result.error?.issues[0]?.path).toEqual(path);
  });

  it('takes every height and barometer the page takes, and none beyond', () => {
    const opened = (settings: object) =>
      visitEventSchema.safeParse({
        ...createStamp()({ type: 'visitOpened', v: 1, settings: DEFAULT_SETTINGS }),
        settings,
      }).success;
    const at = (altitudeM: number) => opened({ units: 'us', altitudeM });
    const by = (barometerKpa: number) => opened({ units: 'us', altitudeM: 0, barometerKpa });
    expect([at(ALTITUDE_RANGE_M.low), at(ALTITUDE_RANGE_M.high)]).toEqual([true, true]);
    expect([at(ALTITUDE_RANGE_M.low - 1), at(ALTITUDE_RANGE_M.high + 1)]).toEqual([false, false]);
    expect([by(BAROMETER_RANGE_KPA.low), by(BAROMETER_RANGE_KPA.high)]).toEqual([true, true]);
    expect([by(BAROMETER_RANGE_KPA.low - 1), by(BAROMETER_RANGE_KPA.high + 1)]).toEqual([
      false,
      false,
    ]);
  });

  it('takes what timers make, and names the path of what makes none', () => {
    const stamp = createStamp();
    const started = stamp({ type: 'timerStarted', v: 1, minutes: 10, about: 'vacuum hold' });
    const target = started.id;
    const made = [
      started,
      stamp({ type: 'timerStarted', v: 1, minutes: 0.5, about: null }),
      stamp({ type: 'timerExtended', v: 1, target, minutes: 5 }),
      stamp({ type: 'timerStopped', v: 1, target }),
      stamp({ type: 'timerRang', v: 1, target }),
    ];
    for (const each of made) expect(visitEventSchema.parse(each)).toEqual(each);
    const pathOf = (change: object) =>
      visitEventSchema.safeParse({ ...started, ...change }).error?.issues[0]?.path;
    expect(pathOf({ minutes: 0 })).toEqual(['minutes']);
    expect(pathOf({ minutes: Infinity })).toEqual(['minutes']);
    expect(pathOf({ about: undefined })).toEqual(['about']);
    expect(pathOf({ type: 'timerRang' })).toEqual(['target']);
    expect(pathOf({ type: 'timerExtended', target: 'the first' })).toEqual(['target']);
  });

  it('refuses an empty push and one of more than 500 events', () => {
    expect(pushRequestSchema.safeParse({ device: DEVICE, events: [] }).success).toBe(false);
    const many = Array.from({ length: 501 }, taken);
    expect(pushRequestSchema.safeParse({ device: DEVICE, events: many }).success).toBe(false);
  });
});
