import { describe, expect, it } from 'vitest';
import { listCalculations, runCalculation } from '../../core/calculations/catalogue.ts';
import { EVACUATION_ENTRIES } from '../../core/calculations/catalogue-evacuation.ts';
import { REFRIGERANT_ENTRIES } from '../../core/calculations/catalogue-refrigerant.ts';
import { SAFETY_ENTRIES } from '../../core/calculations/catalogue-safety.ts';
import { TEMPERATURE_ENTRIES } from '../../core/calculations/catalogue-temperature.ts';

/** Nobody is hurt by these: a conversion, a property, a sensor’s table, an ice bath, a line on paper. */
const HARMLESS = new Set([
  ...['waterVapourPressure', 'waterBoilingPoint', 'vacuumReading', 'pressureClass'],
  ...['specificGravity', 'iceBathCheck', 'steinhartHart'],
  ...['platinumResistance', 'platinumTemperature', 'platinumTolerance'],
  ...['thermistorResistance', 'thermistorTemperature'],
]);

const ids = [
  ...EVACUATION_ENTRIES,
  ...REFRIGERANT_ENTRIES,
  ...SAFETY_ENTRIES,
  ...TEMPERATURE_ENTRIES,
].map(({ formula }) => formula.id);
const examples = listCalculations().filter(({ name }) => ids.includes(name) && !HARMLESS.has(name));

describe('a number that could hurt someone', () => {
  it.each(examples)('$name never comes alone', ({ name, example }) => {
    const result = runCalculation(name, example.inputs);
    expect('cautions' in result ? result.cautions.length : 0).toBeGreaterThan(0);
  });

  it('a deep vacuum, even as a conversion, comes with the gauge it needs', () => {
    expect(runCalculation('vacuumReading', { pressure: '500micron' })).toMatchObject({
      cautions: ['useMicronGauge', 'noPowerInVacuum'],
    });
  });
});
