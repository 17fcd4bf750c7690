import { describe, expect, it } from 'vitest';
import { listCalculations, runCalculation } from '../../core/calculations/catalogue.ts';
import { WORKED_EXAMPLES } from './worked-examples.ts';
import type { Check } from './worked-examples.ts';

const OWN_EXAMPLES: readonly Check[] = listCalculations().map(({ name, example }) => ({
  name,
  ...example,
}));
const CHECKS = [...OWN_EXAMPLES, ...WORKED_EXAMPLES];

describe('values worked outside the project', () => {
  it.each(CHECKS)('$standing: $name $inputs', ({ name, inputs, gives, within }) => {
    const result = runCalculation(name, inputs);
    expect(result).toMatchObject({ name, unit: gives.unit });
    if ('value' in result) {
      expect(Math.abs(result.value - gives.value)).toBeLessThanOrEqual(within);
    }
  });

  it('leave no calculation of the catalogue without one', () => {
    const checked = new Set(CHECKS.map(({ name }) => name));
    expect(listCalculations().filter(({ name }) => !checked.has(name))).toEqual([]);
  });
});
