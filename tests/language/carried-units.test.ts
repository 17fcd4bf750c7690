import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { understand } from '../../core/language/understand.ts';
import { shortForm } from '../corpus/short-form.ts';

// Both gauges of a manifold are read by one scale, whatever the visit's habit is.

const IN_BAR = { ...EMPTY_CONTEXT, suctionPressure: { value: 1.8, unit: 'bar' } } as const;
const IN_PSI = {
  ...EMPTY_CONTEXT,
  units: 'si',
  suctionPressure: { value: 26, unit: 'psi' },
} as const;

describe('a pressure without a unit', () => {
  it.each([
    ["suction's one point eight bar, head's twelve", 'headPressure 12 bar;suctionPressure 1.8 bar'],
    ['head nine hundred kpa and the suction thirty', 'headPressure 900 kPa;suctionPressure 30 kPa'],
    ["head one ninety, suction's four inches", 'headPressure 190 psi;suctionPressure -4 inHg'],
    ['low side two bar, high side two hundred', 'headPressure 200 psi;suctionPressure 2 bar'],
  ])('%s', (said, meant) => {
    const { readings, doubts } = understand(said, EMPTY_CONTEXT);
    const inOrder = shortForm(understand(said, EMPTY_CONTEXT)).split(';').sort().join(';');
    expect(readings).toHaveLength(2);
    expect(doubts).toEqual([]);
    expect(inOrder).toBe(meant);
  });

  it('takes the unit that the other side was told in, where its habit would be doubted', () => {
    expect(shortForm(understand('head twelve', IN_BAR))).toBe('headPressure 12 bar');
    expect(shortForm(understand('head one ninety', IN_PSI))).toBe('headPressure 190 psi');
  });

  it('keeps its habit where that can be', () => {
    expect(shortForm(understand('head one ninety', IN_BAR))).toBe('headPressure 190 psi');
    expect(shortForm(understand('head twelve', IN_PSI))).toBe('headPressure 12 bar');
  });
});
