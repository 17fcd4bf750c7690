import { describe, expect, it } from 'vitest';
import { runCalculation } from '../../core/calculations/catalogue.ts';
import { ALL_CHECKS } from './all-checks.ts';
import { isCatalogueCheck, isRefusalCheck, isValueCheck } from './check-row.ts';

describe('values from outside the project', () => {
  it.each(ALL_CHECKS.filter(isCatalogueCheck))('$standing: $name $inputs', (row) => {
    const { name, inputs, gives, also = {}, findings = {}, within } = row;
    const result = runCalculation(name, inputs);
    expect(result).toMatchObject({ name, unit: gives.unit });
    if (!('value' in result)) return;
    expect(result.findings ?? {}).toMatchObject(findings);
    expect(Math.abs(result.value - gives.value)).toBeLessThanOrEqual(within);
    for (const [key, value] of Object.entries(also)) {
      expect(Math.abs((result.also?.[key] ?? NaN) - value)).toBeLessThanOrEqual(within);
    }
  });

  it.each(ALL_CHECKS.filter(isRefusalCheck))('$standing: $name $inputs refused', (row) => {
    expect(runCalculation(row.name, row.inputs)).toMatchObject({
      name: row.name,
      refused: { reason: row.refused },
    });
  });

  it.each(ALL_CHECKS.filter(isValueCheck))('$standing: $title, $source', (row) => {
    expect(Math.abs(row.found() - row.gives)).toBeLessThanOrEqual(row.within);
  });
});
