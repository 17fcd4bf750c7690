import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FLUIDS } from '../../core/fluids/fluids.ts';
import type { Phase } from '../../core/fluids/fluid.ts';
import { saturationPressure, saturationTemperature } from '../../core/fluids/saturation.ts';
import type { Saturation } from '../../core/fluids/saturation.ts';
import { REFRIGERANTS } from '../../core/terms/refrigerants.ts';
import { absolutePressure, temperature } from '../../core/units/quantity-values.ts';
import { isFitted, loadReference } from '../checks/reference.ts';

const PHASES: readonly Phase[] = ['bubble', 'dew'];

function valueOf<Value>(found: Saturation<Value>): Value {
  if (found.kind === 'refused') throw new Error(`refused: ${found.reason} ${found.refrigerant}`);
  return found.value;
}

const percentOff = (value: number, from: number): number => Math.abs(100 * (value / from - 1));

describe.each(REFRIGERANTS)('%s against its equation of state', (id) => {
  const { points, critical } = loadReference(id);
  const { range, maxError } = FLUIDS[id];
  const unseen = points.filter((_, index) => !isFitted(index, points.length));

  it.each(PHASES)('holds 0.05 %% and 0.02 K on the %s points kept from the fit', (phase) => {
    expect(unseen.length).toBeGreaterThan(15);
    for (const point of unseen) {
      const pressure = valueOf(saturationPressure(id, temperature(point.tempC), phase));
      expect(percentOff(pressure, point[phase])).toBeLessThan(0.05);
      const found = valueOf(saturationTemperature(id, absolutePressure(point[phase]), phase));
      expect(Math.abs(found - point.tempC)).toBeLessThan(0.02);
    }
  });

  it.each(PHASES)('stays within the error it states on every %s point', (phase) => {
    for (const point of points.slice(1, -1)) {
      const pressure = valueOf(saturationPressure(id, temperature(point.tempC), phase));
      expect(percentOff(pressure, point[phase])).toBeLessThanOrEqual(maxError.pressurePercent);
      const found = valueOf(saturationTemperature(id, absolutePressure(point[phase]), phase));
      expect(Math.abs(found - point.tempC)).toBeLessThanOrEqual(maxError.temperature);
    }
  });

  it('covers the whole reference', () => {
    expect([range.low, range.high]).toEqual([points[0]?.tempC, points.at(-1)?.tempC]);
    expect(critical.tempC - range.high).toBeLessThan(4.6);
  });

  it.each(PHASES)('rises all the way along the %s line', (phase) => {
    const steps = [...new Array<undefined>(2000).keys()].map((step) =>
      temperature(range.low + ((range.high - range.low) * step) / 1999),
    );
    const pressures = steps.map((at) => valueOf(saturationPressure(id, at, phase)));
    expect(pressures.every((p, step) => step === 0 || p > (pressures[step - 1] ?? p))).toBe(true);
    const { low, high } = FLUIDS[id].lines[phase];
    const climbs = [...new Array<undefined>(2000).keys()].map((step) =>
      valueOf(
        saturationTemperature(id, absolutePressure(low + ((high - low) * step) / 1999), phase),
      ),
    );
    expect(climbs.every((t, step) => step === 0 || t > (climbs[step - 1] ?? t))).toBe(true);
  });

  it('never has its dew line above its bubble line', () => {
    for (const { tempC } of points) {
      const [bubble, dew] = PHASES.map((phase) =>
        valueOf(saturationPressure(id, temperature(tempC), phase)),
      );
      // Azeotropes touch: there the two fits may cross by their errors.
      expect(dew).toBeLessThanOrEqual((bubble ?? 0) * (1 + maxError.pressurePercent / 50));
    }
  });
});

describe('there and back', () => {
  it('returns to the pressure within twice the stated error', () => {
    const anywhere = fc.record({
      id: fc.constantFrom(...REFRIGERANTS),
      phase: fc.constantFrom(...PHASES),
      share: fc.double({ min: 0.001, max: 0.999, noNaN: true }),
    });
    fc.assert(
      fc.property(anywhere, ({ id, phase, share }) => {
        const { lines, maxError } = FLUIDS[id];
        const { low, high } = lines[phase];
        const pressure = absolutePressure(low * (high / low) ** share);
        const back = saturationPressure(
          id,
          valueOf(saturationTemperature(id, pressure, phase)),
          phase,
        );
        expect(percentOff(valueOf(back), pressure)).toBeLessThan(2 * maxError.pressurePercent);
      }),
      { numRuns: 20_000 },
    );
  });
});

describe('beyond the range', () => {
  it.each(REFRIGERANTS)('%s is refused with the limit that was passed', (id) => {
    const { range, critical, lines } = FLUIDS[id];
    const refused = { kind: 'refused', refrigerant: id };
    expect(saturationPressure(id, temperature(range.low - 0.1), 'dew')).toEqual({
      ...refused,
      reason: 'belowRange',
      limit: range.low,
      unit: 'degC',
    });
    expect(saturationPressure(id, temperature(range.high + 0.1), 'dew')).toMatchObject({
      ...refused,
      reason: 'aboveRange',
    });
    expect(saturationPressure(id, critical.temperature, 'bubble')).toEqual({
      ...refused,
      reason: 'aboveCritical',
      limit: critical.temperature,
      unit: 'degC',
    });
    expect(saturationTemperature(id, absolutePressure(0), 'dew')).toEqual({
      ...refused,
      reason: 'belowRange',
      limit: lines.dew.low,
      unit: 'kPaa',
    });
    expect(
      saturationTemperature(id, absolutePressure(critical.pressure * 1.01), 'bubble'),
    ).toMatchObject({ ...refused, reason: 'aboveCritical', limit: critical.pressure });
  });

  it('has no condensing for carbon dioxide at 95 °F', () => {
    expect(saturationPressure('R-744', temperature(35), 'bubble')).toMatchObject({
      reason: 'aboveCritical',
      limit: 30.9782,
    });
  });

  it('does not take what is not a number for a temperature', () => {
    expect(saturationPressure('R-134a', temperature(NaN), 'dew').kind).toBe('refused');
  });
});
