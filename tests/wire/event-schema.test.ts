import { describe, expect, expectTypeOf, it } from 'vitest';
import type { z } from 'zod';
import type { VisitEvent } from '../../core/visit/events.ts';
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

  it('refuses an empty push and one of more than 500 events', () => {
    expect(pushRequestSchema.safeParse({ device: DEVICE, events: [] }).success).toBe(false);
    const many = Array.from({ length: 501 }, taken);
    expect(pushRequestSchema.safeParse({ device: DEVICE, events: many }).success).toBe(false);
  });
});
