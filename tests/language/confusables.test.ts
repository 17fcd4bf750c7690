import { describe, expect, it } from 'vitest';
import { confusables } from '../../core/language/numbers/confusables.ts';

describe('numbers that are misheard for one another', () => {
  it.each([
    [15, [50]],
    [50, [15]],
    [16, [60]],
    [19, [90]],
    [106, [116, 160]],
    [160, [116, 106]],
    [116, [160, 106]],
    [215, [250, 205]],
    [1350, [1315, 1305]],
    [15_000, [50_000]],
    [15.5, [50.5]],
    [-14, [-40]],
    [40, [14]],
  ])('%d is near %j', (value, near) => {
    expect(confusables(value)).toEqual(near);
  });

  it.each([0, 1, 6, 9, 10, 11, 12, 20, 42, 100, 101, 102, 146, 200, 300, 0.5, 1500])(
    '%d sounds like no other',
    (value) => {
      expect(confusables(value)).toEqual([]);
    },
  );

  it('is a relation that holds both ways, from −1,000 to 9,999', () => {
    const values = Array.from({ length: 11_000 }, (_, index) => index - 1000);
    const oneSided = values.filter((value) =>
      confusables(value).some((near) => !confusables(near).includes(value)),
    );
    expect(oneSided).toEqual([]);
  });
});
